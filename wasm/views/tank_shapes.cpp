// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tank/volume.h"
#include "views/tank_sheet_view.h"

namespace shoalwright {

namespace {

double to_half_cm(double cm) { return std::max(1.0, std::round(cm * 2) / 2); }

}  // namespace

Tank reshaped(const Tank& outside, Shape shape) {
  if (shape == outside.shape) return outside;
  Tank bare = outside;
  bare.glass_mm = 0;  // the outline of the outside itself
  const double length = inside_length_cm(bare), width = inside_width_cm(bare), area = inside_area_cm2(bare);
  Tank tank = outside;
  tank.shape = shape;
  tank.length_cm = tank.width_cm = tank.bow_cm = tank.diameter_cm = tank.side_cm = tank.front_cm = 0;
  tank.outline_cm.clear();
  switch (shape) {
    case Shape::bow_front:
      tank.bow_cm = to_half_cm(std::min(length * 0.1, width * 0.25));
      tank.length_cm = to_half_cm(length);
      tank.width_cm = to_half_cm(width - tank.bow_cm);
      break;
    case Shape::rectangular:
      tank.length_cm = to_half_cm(length);
      tank.width_cm = to_half_cm(width);
      break;
    case Shape::cylinder: tank.diameter_cm = to_half_cm(2 * std::sqrt(area / std::numbers::pi)); break;
    case Shape::half_cylinder: tank.diameter_cm = to_half_cm(2 * std::sqrt(2 * area / std::numbers::pi)); break;
    case Shape::quarter_cylinder: tank.diameter_cm = to_half_cm(2 * std::sqrt(4 * area / std::numbers::pi)); break;
    case Shape::hexagon: tank.side_cm = to_half_cm(std::sqrt(2 * area / (3 * std::numbers::sqrt3))); break;
    case Shape::pentagon_corner:
      // A square of the back sides less the corner that the front pane cuts off; the short sides are half as long: 7/8 of it.
      tank.side_cm = to_half_cm(std::sqrt(area * 8 / 7));
      tank.front_cm = to_half_cm(tank.side_cm / 2);
      break;
    case Shape::prism:
      for (const Point& corner : inside_outline(bare, 24))
        tank.outline_cm.push_back({to_half_cm(corner.x_cm + 1) - 1, to_half_cm(corner.z_cm + 1) - 1});
      break;
  }
  return tank;
}

}  // namespace shoalwright
