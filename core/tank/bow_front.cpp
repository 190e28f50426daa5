// SPDX-License-Identifier: MIT
#include <cmath>

#include "tank/detail/shape.h"

namespace shoalwright {

namespace {

/// Radius of the front pane, from chord and bow: (L^2/4 + s^2) / 2s.
double bow_radius_cm(const Tank& tank) {
  return (tank.length_cm * tank.length_cm / 4 + tank.bow_cm * tank.bow_cm) / (2 * tank.bow_cm);
}

}  // namespace

std::vector<Slice> bow_front_slices(const Tank& tank) {
  if (!(tank.length_cm > 0 && tank.width_cm > 0 && tank.bow_cm >= 0 && tank.bow_cm <= tank.length_cm / 2)) return {};
  if (tank.bow_cm == 0) return rectangular_slices(tank);
  const double radius = bow_radius_cm(tank);
  return {{.z0 = 0, .z1 = tank.bow_cm, .w0 = 0, .w1 = tank.length_cm, .radius = radius, .centre = radius},
          {.z0 = tank.bow_cm, .z1 = tank.bow_cm + tank.width_cm, .w0 = tank.length_cm, .w1 = tank.length_cm}};
}

std::vector<Point> bow_front_outline(const Tank& tank, int steps) {
  if (tank.bow_cm == 0) return rectangular_outline(tank);
  const double radius = bow_radius_cm(tank), middle = tank.length_cm / 2;
  const double half_angle = std::atan2(middle, radius - tank.bow_cm);
  constexpr double front = -1.5707963267948966;  // minus a quarter turn: straight to the front
  std::vector<Point> outline;
  add_arc(outline, middle, radius, radius, front - half_angle, front + half_angle, steps);
  outline.front() = {0, tank.bow_cm};
  outline.back() = {tank.length_cm, tank.bow_cm};
  outline.push_back({tank.length_cm, tank.bow_cm + tank.width_cm});
  outline.push_back({0, tank.bow_cm + tank.width_cm});
  return outline;
}

Tank bow_front_grown(Tank tank, double by_cm) {
  if (!(tank.bow_cm > 0)) return rectangular_grown(tank, by_cm);
  // The centre of the bow stays where it is; back and side panes move away from it.
  const double centre_to_back = tank.width_cm + tank.bow_cm - bow_radius_cm(tank);
  const double radius = bow_radius_cm(tank) + by_cm;
  tank.length_cm += 2 * by_cm;
  const double reach = std::sqrt(std::fmax(0, radius * radius - tank.length_cm * tank.length_cm / 4));
  tank.width_cm = centre_to_back + by_cm + reach;
  tank.bow_cm = radius - reach;
  return tank;
}

}  // namespace shoalwright
