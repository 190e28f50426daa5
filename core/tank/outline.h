// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"

namespace shoalwright {

/// Where a line from left to right at depth `z_cm` goes in and out of an outline, rising and in pairs; `at` is overwritten. A
/// corner belongs to one of its sides, so that a line through it still crosses in pairs.
void crossings(const std::vector<Point>& outline, double z_cm, std::vector<double>& at);

}  // namespace shoalwright
