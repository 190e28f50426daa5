// SPDX-License-Identifier: MIT
#include "tank/detail/wedge.h"

#include <algorithm>

#include "tank/detail/shape.h"
#include "tank/open_water.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// The stretch from front to back where the substrate lies below a height, and the tank's slices.
struct Stretch {
  std::vector<Slice> slices;
  double front_cm = 0, slope = 0;  ///< substrate height = front + slope z
  double from_cm = 0, to_cm = 0;   ///< empty when from >= to
};

Stretch open_stretch(const Plan& plan, double height_cm) {
  Stretch s{.slices = slices_of(plan.tank)};
  if (s.slices.empty()) return s;
  const double width = s.slices.back().z1;
  const Substrate substrate = settled_substrate(plan);
  s.front_cm = substrate.front_cm;
  s.slope = (substrate.back_cm - substrate.front_cm) / width;
  s.to_cm = width;
  if (s.slope == 0) {
    if (!(s.front_cm < height_cm)) s.to_cm = 0;
    return s;
  }
  const double meets = std::clamp((height_cm - s.front_cm) / s.slope, 0.0, width);
  (s.slope > 0 ? s.to_cm : s.from_cm) = meets;
  return s;
}

}  // namespace

Substrate settled_substrate(const Plan& plan) {
  Substrate s = plan.substrate;
  if (s.kind == SubstrateKind::bare) s.front_cm = s.back_cm = 0;
  s.front_cm = std::max(0.0, s.front_cm);
  s.back_cm = std::max(0.0, s.back_cm);
  return s;
}

double space_over_substrate_cm3(const Plan& plan, double height_cm) {
  const Stretch s = open_stretch(plan, height_cm);
  const Moments m = moments(s.slices, s.from_cm, s.to_cm);
  return std::max(0.0, (height_cm - s.front_cm) * m.area_cm2 - s.slope * m.moment_cm3);
}

double area_over_substrate_cm2(const Plan& plan, double height_cm) {
  const Stretch s = open_stretch(plan, height_cm);
  return moments(s.slices, s.from_cm, s.to_cm).area_cm2;
}

double open_water_below_l(const Plan& plan, double height_cm) {
  return space_over_substrate_cm3(plan, std::min(height_cm, water_line_cm(plan.tank))) / 1000;
}

std::vector<Point> open_outline(const Plan& plan, double height_cm, int steps) {
  const Stretch s = open_stretch(plan, height_cm);
  if (!(s.from_cm < s.to_cm)) return {};
  std::vector<Point> outline = inside_outline(plan.tank, steps);
  // Cut by one level line at a time: keep what lies behind `from`, then what lies before `to`.
  const auto cut = [](const std::vector<Point>& points, double at, double sign) {
    std::vector<Point> kept;
    for (std::size_t i = 0; i < points.size(); ++i) {
      const Point &p = points[i], &q = points[(i + 1) % points.size()];
      const double dp = sign * (p.z_cm - at), dq = sign * (q.z_cm - at);
      if (dp >= 0) kept.push_back(p);
      if ((dp > 0 && dq < 0) || (dp < 0 && dq > 0)) kept.push_back({p.x_cm + (q.x_cm - p.x_cm) * dp / (dp - dq), at});
    }
    return kept;
  };
  const double width = s.slices.back().z1;
  if (s.from_cm > 0) outline = cut(outline, s.from_cm, 1);
  if (s.to_cm < width) outline = cut(outline, s.to_cm, -1);
  return outline;
}

double substrate_height_cm(const Plan& plan, double z_cm) {
  const double width = inside_width_cm(plan.tank);
  const Substrate s = settled_substrate(plan);
  if (!(width > 0)) return s.front_cm;
  return s.front_cm + (s.back_cm - s.front_cm) * std::clamp(z_cm / width, 0.0, 1.0);
}

double mean_substrate_cm(const Plan& plan) {
  const std::vector<Slice> slices = slices_of(plan.tank);
  if (slices.empty()) return settled_substrate(plan).front_cm;
  const Moments m = moments(slices, 0, slices.back().z1);
  return substrate_height_cm(plan, m.moment_cm3 / m.area_cm2);
}

}  // namespace shoalwright
