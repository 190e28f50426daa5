// SPDX-License-Identifier: MIT
#include <cmath>
#include <numbers>

#include "tank/detail/shape.h"

namespace shoalwright {

// Stands in a corner of the room and is looked at across it: the round pane in front, the two flat ones meet at the back. Along
// the middle line, v is the distance from the outer corner: the inner corner lies at sqrt(2) panes, the round pane at the radius.

namespace {

struct Corner {
  double radius = 0, pane = 0;
  double end_v = 0;       ///< where the round pane meets the flat ones
  double half_width = 0;  ///< there, from the middle line
};

Corner corner_of(const Tank& tank) {
  Corner c{.radius = tank.diameter_cm / 2, .pane = tank.glass_mm / 10};
  const double reach = std::sqrt(std::fmax(0, c.radius * c.radius - c.pane * c.pane));
  c.end_v = (reach + c.pane) / std::numbers::sqrt2;
  c.half_width = (reach - c.pane) / std::numbers::sqrt2;
  return c;
}

}  // namespace

std::vector<Slice> quarter_cylinder_slices(const Tank& tank) {
  const Corner c = corner_of(tank);
  if (!(c.radius > 0 && c.pane >= 0 && c.half_width > 0)) return {};
  const double end_z = c.radius - c.end_v;
  return {{.z0 = 0, .z1 = end_z, .w0 = 0, .w1 = 2 * c.half_width, .radius = c.radius, .centre = c.radius},
          {.z0 = end_z, .z1 = c.radius - std::numbers::sqrt2 * c.pane, .w0 = 2 * c.half_width, .w1 = 0}};
}

std::vector<Point> quarter_cylinder_outline(const Tank& tank, int steps) {
  const Corner c = corner_of(tank);
  constexpr double front = -1.5707963267948966;
  const double half_angle = std::atan2(c.half_width, c.end_v);
  std::vector<Point> outline;
  add_arc(outline, c.half_width, c.radius, c.radius, front - half_angle, front + half_angle, steps);
  outline.front() = {0, c.radius - c.end_v};
  outline.back() = {2 * c.half_width, c.radius - c.end_v};
  outline.push_back({c.half_width, c.radius - std::numbers::sqrt2 * c.pane});
  return outline;
}

}  // namespace shoalwright
