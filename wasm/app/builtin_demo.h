// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace shoalwright {

/// The plan that the app opens with: tests/plans/riverbank.json, built in.
std::string_view builtin_demo_plan();

/// Where a new plan begins: an empty tank of a usual size on tap water that nobody has measured.
std::string_view builtin_fresh_plan();

}  // namespace shoalwright
