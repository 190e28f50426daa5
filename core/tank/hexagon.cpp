// SPDX-License-Identifier: MIT
#include <numbers>

#include "tank/detail/shape.h"

namespace shoalwright {

// Regular, one side to the front.

std::vector<Slice> hexagon_slices(const Tank& tank) {
  const double side = tank.side_cm;
  if (!(side > 0)) return {};
  const double middle = std::numbers::sqrt3 / 2 * side;
  return {{.z0 = 0, .z1 = middle, .w0 = side, .w1 = 2 * side}, {.z0 = middle, .z1 = 2 * middle, .w0 = 2 * side, .w1 = side}};
}

std::vector<Point> hexagon_outline(const Tank& tank) {
  const double side = tank.side_cm, middle = std::numbers::sqrt3 / 2 * side;
  return {{side / 2, 0}, {1.5 * side, 0}, {2 * side, middle}, {1.5 * side, 2 * middle}, {side / 2, 2 * middle}, {0, middle}};
}

Tank hexagon_grown(Tank tank, double by_cm) {
  tank.side_cm += 2 * by_cm / std::numbers::sqrt3;
  return tank;
}

}  // namespace shoalwright
