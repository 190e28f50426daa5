// SPDX-License-Identifier: MIT
#include "tank/detail/shape.h"

namespace shoalwright {

std::vector<Slice> rectangular_slices(const Tank& tank) {
  if (!(tank.length_cm > 0 && tank.width_cm > 0)) return {};
  return {{.z0 = 0, .z1 = tank.width_cm, .w0 = tank.length_cm, .w1 = tank.length_cm}};
}

std::vector<Point> rectangular_outline(const Tank& tank) {
  return {{0, 0}, {tank.length_cm, 0}, {tank.length_cm, tank.width_cm}, {0, tank.width_cm}};
}

Tank rectangular_grown(Tank tank, double by_cm) {
  tank.length_cm += 2 * by_cm;
  tank.width_cm += 2 * by_cm;
  return tank;
}

}  // namespace shoalwright
