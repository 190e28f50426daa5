// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tank/detail/shape.h"
#include "tank/volume.h"
#include "units/power.h"

namespace shoalwright {

namespace {

/// Area and moment of the part of one slice between two depths that lie in it.
Moments slice_moments(const Slice& slice, double from, double to) {
  if (slice.radius > 0) {
    const double r = slice.radius;
    const auto area = [r](double u) {
      return u * std::sqrt(std::max(0.0, r * r - u * u)) + r * r * std::asin(std::clamp(u / r, -1.0, 1.0));
    };
    const auto lever = [r](double u) { return -2.0 / 3.0 * raised(std::max(0.0, r * r - u * u), 1.5); };
    const double u0 = from - slice.centre, u1 = to - slice.centre;
    const double a = area(u1) - area(u0);
    return {a, slice.centre * a + lever(u1) - lever(u0)};
  }
  const double slope = (slice.w1 - slice.w0) / (slice.z1 - slice.z0);
  const double w0 = slice.w0 + slope * (from - slice.z0), w1 = slice.w0 + slope * (to - slice.z0), d = to - from;
  return {(w0 + w1) / 2 * d, from * (w0 + w1) / 2 * d + d * d * (w0 + 2 * w1) / 6};
}

double widest_cm(const Slice& slice) {
  if (slice.radius > 0 && slice.z0 <= slice.centre && slice.centre <= slice.z1) return 2 * slice.radius;
  return std::max(slice.w0, slice.w1);
}

}  // namespace

Moments moments(const std::vector<Slice>& slices, double from_cm, double to_cm) {
  Moments sum;
  for (const Slice& slice : slices) {
    const double from = std::max(from_cm, slice.z0), to = std::min(to_cm, slice.z1);
    if (!(from < to)) continue;
    const Moments part = slice_moments(slice, from, to);
    sum.area_cm2 += part.area_cm2;
    sum.moment_cm3 += part.moment_cm3;
  }
  return sum;
}

void add_arc(std::vector<Point>& outline, double x, double z, double radius, double from_rad, double to_rad, int steps) {
  const double turn = (to_rad - from_rad) / (2 * std::numbers::pi);
  const int chords = std::max(1, static_cast<int>(std::ceil(turn * std::max(steps, 3) - 1e-9)));
  for (int i = 0; i <= chords; ++i) {
    const double angle = from_rad + (to_rad - from_rad) * i / chords;
    outline.push_back({x + radius * std::cos(angle), z + radius * std::sin(angle)});
  }
}

std::vector<Slice> slices_of(const Tank& tank) {
  switch (tank.shape) {
    case Shape::rectangular: return rectangular_slices(tank);
    case Shape::bow_front: return bow_front_slices(tank);
    case Shape::cylinder: return cylinder_slices(tank);
    case Shape::half_cylinder: return half_cylinder_slices(tank);
    case Shape::quarter_cylinder: return quarter_cylinder_slices(tank);
    case Shape::hexagon: return hexagon_slices(tank);
    case Shape::pentagon_corner: return pentagon_corner_slices(tank);
    case Shape::prism: return prism_slices(tank);
  }
  return {};
}

std::vector<Point> inside_outline(const Tank& tank, int steps) {
  if (slices_of(tank).empty()) return {};
  switch (tank.shape) {
    case Shape::rectangular: return rectangular_outline(tank);
    case Shape::bow_front: return bow_front_outline(tank, steps);
    case Shape::cylinder: return cylinder_outline(tank, steps);
    case Shape::half_cylinder: return half_cylinder_outline(tank, steps);
    case Shape::quarter_cylinder: return quarter_cylinder_outline(tank, steps);
    case Shape::hexagon: return hexagon_outline(tank);
    case Shape::pentagon_corner: return pentagon_corner_outline(tank);
    case Shape::prism: return prism_outline(tank);
  }
  return {};
}

double inside_area_cm2(const Tank& tank) {
  const std::vector<Slice> slices = slices_of(tank);
  return slices.empty() ? 0 : moments(slices, 0, slices.back().z1).area_cm2;
}

double inside_length_cm(const Tank& tank) {
  double length = 0;
  if (tank.shape == Shape::prism) {  // its slices add up what lies side by side; the extent does not
    for (const Point& p : prism_outline(tank)) length = std::max(length, p.x_cm);
    return length;
  }
  for (const Slice& slice : slices_of(tank)) length = std::max(length, widest_cm(slice));
  return length;
}

double inside_width_cm(const Tank& tank) {
  const std::vector<Slice> slices = slices_of(tank);
  return slices.empty() ? 0 : slices.back().z1;
}

}  // namespace shoalwright
