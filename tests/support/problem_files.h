// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace shoalwright {

/// A problem of tests/problems with its proven optimum.
struct StoredProblem {
  std::string name;
  double optimum = 0;
};

/// The lines of tests/problems/optima.csv.
std::vector<StoredProblem> stored_problems();

/// The text of a stored problem; empty when it is not there or damaged.
std::string problem_text(const std::string& name);

}  // namespace shoalwright
