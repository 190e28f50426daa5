// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace shoalwright {

/// What a command says: one JSON value (or, of `check`, lines) for stdout, or one sentence for stderr.
struct Answer {
  int code = 0;  ///< 0 answered, 2 bad input, 1 our fault or a failed row
  std::string out, error;
};

/// `arguments` are those after the name of the program.
Answer run_command(const std::vector<std::string>& arguments);

}  // namespace shoalwright
