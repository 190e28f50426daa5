// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"
#include "stocking/load.h"
#include "tank/volume.h"

namespace shoalwright {

/// Nitrate on one day, mg/L as NO3. A change gives two points on its day, before and after.
struct CoursePoint {
  double day = 0, nitrate_mg_l = 0;
  bool operator==(const CoursePoint&) const = default;
};

/// How nitrate rises and falls from today under the present changes, for drawing: straight pieces between points, from what was
/// measured, else from the settled low, over `days` (0 to 3650, held there). Empty where the settled peak of `load` is. Mass
/// balance.
std::vector<CoursePoint> nitrate_course(const Plan& plan, const Load& load, const Volume& volume, double days);

}  // namespace shoalwright
