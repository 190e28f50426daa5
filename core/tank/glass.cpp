// SPDX-License-Identifier: MIT
#include "tank/glass.h"

#include <algorithm>

#include "plan/defaults.h"
#include "tank/detail/shape.h"

namespace shoalwright {

namespace {

/// Every pane but the bottom moved outwards (inwards when negative).
Tank walls_moved(Tank tank, double by_cm) {
  switch (tank.shape) {
    case Shape::rectangular: tank = rectangular_grown(tank, by_cm); break;
    case Shape::bow_front: tank = bow_front_grown(tank, by_cm); break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: tank.diameter_cm += 2 * by_cm; break;
    case Shape::hexagon: tank = hexagon_grown(tank, by_cm); break;
    case Shape::pentagon_corner: tank = pentagon_corner_grown(tank, by_cm); break;
    case Shape::prism: tank = prism_grown(tank, by_cm); break;
  }
  for (double* measure : {&tank.length_cm, &tank.width_cm, &tank.diameter_cm, &tank.side_cm, &tank.front_cm})
    *measure = std::max(0.0, *measure);
  return tank;
}

}  // namespace

Tank inside_of(const Tank& outside) {
  const double pane_cm = std::max(0.0, outside.glass_mm / 10);
  Tank tank = walls_moved(outside, -pane_cm);
  tank.height_cm = std::max(0.0, outside.height_cm - pane_cm);
  if (!(tank.fill_cm > 0)) tank.fill_cm = std::max(0.0, tank.height_cm - default_fill_gap_cm);
  return tank;
}

Tank outside_of(const Tank& inside) {
  const double pane_cm = std::max(0.0, inside.glass_mm / 10);
  Tank tank = walls_moved(inside, pane_cm);
  tank.height_cm += pane_cm;
  return tank;
}

}  // namespace shoalwright
