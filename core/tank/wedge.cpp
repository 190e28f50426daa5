// SPDX-License-Identifier: MIT
#include "tank/detail/wedge.h"

#include <algorithm>

#include "tank/detail/bed.h"
#include "tank/detail/shape.h"
#include "tank/open_water.h"
#include "tank/terrain.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// The stretch from front to back where the substrate lies below a height, and the tank's slices.
struct Stretch {
  std::vector<Slice> slices;
  double front_cm = 0, slope = 0;  ///< substrate height = front + slope z
  double from_cm = 0, to_cm = 0;   ///< empty when from >= to
};

Stretch open_stretch(const Plan& plan, const Substrate& substrate, double height_cm) {
  Stretch s{.slices = slices_of(plan.tank)};
  if (s.slices.empty()) return s;
  const double width = s.slices.back().z1;
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
  if (s.kind == SubstrateKind::bare) {
    s.front_cm = s.back_cm = 0;
    s.line_cm.clear();
  }
  s.front_cm = std::max(0.0, s.front_cm);
  s.back_cm = std::max(0.0, s.back_cm);
  return s;
}

double space_over_substrate_cm3(const Plan& plan, double height_cm) {
  if (has_line(plan)) return space_over_cm3(bed_of(plan), height_cm);
  const Stretch s = open_stretch(plan, settled_substrate(plan), height_cm);
  const Moments m = moments(s.slices, s.from_cm, s.to_cm);
  return std::max(0.0, (height_cm - s.front_cm) * m.area_cm2 - s.slope * m.moment_cm3);
}

double area_over_substrate_cm2(const Plan& plan, double height_cm) {
  if (has_line(plan)) return area_over_cm2(bed_of(plan), height_cm);
  const Stretch s = open_stretch(plan, settled_substrate(plan), height_cm);
  return moments(s.slices, s.from_cm, s.to_cm).area_cm2;
}

double open_water_below_l(const Plan& plan, double height_cm) {
  return space_over_substrate_cm3(plan, std::min(height_cm, water_line_cm(plan.tank))) / 1000;
}

std::vector<double> open_water_below_l(const Plan& plan, const std::vector<double>& heights_cm) {
  std::vector<double> out;
  if (!has_line(plan)) {
    for (const double height_cm : heights_cm) out.push_back(open_water_below_l(plan, height_cm));
    return out;
  }
  const Bed bed = bed_of(plan);
  const double line_cm = water_line_cm(plan.tank);
  for (const double height_cm : heights_cm) out.push_back(space_over_cm3(bed, std::min(height_cm, line_cm)) / 1000);
  return out;
}

std::vector<Point> open_outline(const Plan& plan, double height_cm, int steps) {
  Substrate slope = settled_substrate(plan);
  if (has_line(plan)) {  // the slope alone, as high in the mean
    const double by_cm = mean_substrate_cm(plan) - mean_slope_cm(plan);
    slope.front_cm = std::max(0.0, slope.front_cm + by_cm);
    slope.back_cm = std::max(0.0, slope.back_cm + by_cm);
  }
  const Stretch s = open_stretch(plan, slope, height_cm);
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

bool has_line(const Plan& plan) { return !plan.substrate.line_cm.empty() && plan.substrate.kind != SubstrateKind::bare; }

double slope_cm(const Plan& plan, double z_cm) {
  const double width = inside_width_cm(plan.tank);
  const Substrate s = settled_substrate(plan);
  if (!(width > 0)) return s.front_cm;
  return s.front_cm + (s.back_cm - s.front_cm) * std::clamp(z_cm / width, 0.0, 1.0);
}

double substrate_height_cm(const Plan& plan, double x_cm, double z_cm) {
  const double slope = slope_cm(plan, z_cm);
  return has_line(plan) ? std::max(0.0, slope + rise_at(plan.substrate.line_cm, x_cm)) : slope;
}

double lowest_substrate_cm(const Plan& plan) {
  const double lower = std::min(slope_cm(plan, 0), slope_cm(plan, inside_width_cm(plan.tank)));
  if (!has_line(plan)) return lower;
  double rise = plan.substrate.line_cm.front().rise_cm;
  for (const LinePoint& point : plan.substrate.line_cm) rise = std::min(rise, point.rise_cm);
  return std::max(0.0, lower + rise);
}

double mean_slope_cm(const Plan& plan) {
  const std::vector<Slice> slices = slices_of(plan.tank);
  if (slices.empty()) return settled_substrate(plan).front_cm;
  const Moments m = moments(slices, 0, slices.back().z1);
  return slope_cm(plan, m.moment_cm3 / m.area_cm2);
}

double mean_substrate_cm(const Plan& plan) {
  if (!has_line(plan) || slices_of(plan.tank).empty()) return mean_slope_cm(plan);
  return mean_cm(bed_of(plan));
}

}  // namespace shoalwright
