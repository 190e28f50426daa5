// SPDX-License-Identifier: MIT
#include <numbers>

#include "tank/detail/shape.h"

namespace shoalwright {

std::vector<Slice> cylinder_slices(const Tank& tank) {
  if (!(tank.diameter_cm > 0)) return {};
  const double radius = tank.diameter_cm / 2;
  return {{.z0 = 0, .z1 = tank.diameter_cm, .radius = radius, .centre = radius}};
}

std::vector<Point> cylinder_outline(const Tank& tank, int steps) {
  const double radius = tank.diameter_cm / 2;
  std::vector<Point> outline;
  add_arc(outline, radius, radius, radius, 0, 2 * std::numbers::pi, steps);
  outline.pop_back();
  return outline;
}

}  // namespace shoalwright
