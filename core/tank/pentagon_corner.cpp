// SPDX-License-Identifier: MIT
#include <numbers>

#include "tank/detail/shape.h"

namespace shoalwright {

// Stands in a corner of the room and is looked at across it: the slanting pane is the front, the two long back sides meet behind,
// a short side joins each of them to the front pane.

std::vector<Slice> pentagon_corner_slices(const Tank& tank) {
  const double back = tank.side_cm, side = tank.front_cm;
  if (!(side > 0 && side < back)) return {};
  const double front_width = std::numbers::sqrt2 * (back - side), widest = std::numbers::sqrt2 * back;
  const double widest_z = side / std::numbers::sqrt2, corner_z = (back + side) / std::numbers::sqrt2;
  return {{.z0 = 0, .z1 = widest_z, .w0 = front_width, .w1 = widest}, {.z0 = widest_z, .z1 = corner_z, .w0 = widest, .w1 = 0}};
}

std::vector<Point> pentagon_corner_outline(const Tank& tank) {
  const double back = tank.side_cm / std::numbers::sqrt2, side = tank.front_cm / std::numbers::sqrt2;
  return {{side, 0}, {2 * back - side, 0}, {2 * back, side}, {back, back + side}, {0, side}};
}

Tank pentagon_corner_grown(Tank tank, double by_cm) {
  tank.side_cm += 2 * by_cm;
  tank.front_cm += std::numbers::sqrt2 * by_cm;  // the front pane moves straight out, its ends along the short sides
  return tank;
}

}  // namespace shoalwright
