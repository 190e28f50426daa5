// SPDX-License-Identifier: MIT
#include <cmath>

#include "tank/detail/shape.h"

namespace shoalwright {

// A round pane in front, a flat one behind. The flat pane stands across the circle's centre line, so that inside it takes its own
// thickness from the half circle.

std::vector<Slice> half_cylinder_slices(const Tank& tank) {
  const double radius = tank.diameter_cm / 2, pane = tank.glass_mm / 10;
  if (!(radius > 0 && pane >= 0 && pane < radius)) return {};
  const double back = 2 * std::sqrt(radius * radius - pane * pane);
  return {{.z0 = 0, .z1 = radius - pane, .w0 = 0, .w1 = back, .radius = radius, .centre = radius}};
}

std::vector<Point> half_cylinder_outline(const Tank& tank, int steps) {
  const double radius = tank.diameter_cm / 2, pane = tank.glass_mm / 10;
  const double half_back = std::sqrt(radius * radius - pane * pane);
  constexpr double front = -1.5707963267948966;
  const double half_angle = std::acos(pane / radius);
  std::vector<Point> outline;
  add_arc(outline, half_back, radius, radius, front - half_angle, front + half_angle, steps);
  outline.front() = {0, radius - pane};
  outline.back() = {2 * half_back, radius - pane};
  return outline;
}

}  // namespace shoalwright
