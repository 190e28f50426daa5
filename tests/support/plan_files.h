// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// A whole file of the tests' folder, "plans/riverbank.json"; empty when it is not there.
std::string test_file(const std::string& path);

/// The names of the files of a folder of the tests that end so, in order: files_of("plans", ".json").
std::vector<std::string> files_of(const std::string& folder, const std::string& end);

struct NamedPlan {
  std::string name;
  Plan plan;
};

/// Every plan of tests/plans; a plan that cannot be read is missing, which PlanFiles.AllCanBeRead notices.
std::vector<NamedPlan> all_plans();

/// The built-in catalogue.
const Catalog& the_catalog();

}  // namespace shoalwright
