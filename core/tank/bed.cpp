// SPDX-License-Identifier: MIT
#include "tank/detail/bed.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "tank/detail/shape.h"
#include "tank/detail/wedge.h"
#include "tank/terrain.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// Keeps what of an outline has value >= 0 of a function that is linear in x and z.
template <class Value>
std::vector<Point> kept(const std::vector<Point>& points, const Value& value) {
  std::vector<Point> out;
  out.reserve(points.size() + 2);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point &p = points[i], &q = points[i + 1 < points.size() ? i + 1 : 0];
    const double dp = value(p), dq = value(q);
    if (dp >= 0) out.push_back(p);
    if ((dp > 0 && dq < 0) || (dp < 0 && dq > 0)) {
      const double t = dp / (dp - dq);
      out.push_back({p.x_cm + (q.x_cm - p.x_cm) * t, p.z_cm + (q.z_cm - p.z_cm) * t});
    }
  }
  return out;
}

/// Area of an outline and its first moments about x = 0 and z = 0.
struct Sums {
  double area = 0, x = 0, z = 0;
};

Sums sums_of(const std::vector<Point>& points) {
  Sums sums;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point &p = points[i], &q = points[i + 1 < points.size() ? i + 1 : 0];
    const double cross = p.x_cm * q.z_cm - q.x_cm * p.z_cm;
    sums.area += cross / 2;
    sums.x += cross * (p.x_cm + q.x_cm) / 6;
    sums.z += cross * (p.z_cm + q.z_cm) / 6;
  }
  return sums;
}

double ground_at(const Facet& facet, const Point& p) { return facet.ground_cm + facet.by_x * p.x_cm + facet.by_z * p.z_cm; }

double integral_of_ground(const Facet& facet, const Sums& sums) {
  return facet.ground_cm * sums.area + facet.by_x * sums.x + facet.by_z * sums.z;
}

bool all_below(const Facet& facet, double height_cm) {
  return std::all_of(facet.outline.begin(), facet.outline.end(),
                     [&](const Point& p) { return ground_at(facet, p) <= height_cm; });
}

/// What lacks to a plane where the ground, not held at 0, is below it, cm3.
double lacking_cm3(const Bed& bed, double height_cm) {
  double sum = 0;
  for (const Facet& facet : bed.facets) {
    const Sums sums = sums_of(all_below(facet, height_cm) ? facet.outline : below(facet, height_cm));
    sum += height_cm * sums.area - integral_of_ground(facet, sums);
  }
  for (const Sliver& sliver : bed.slivers) sum += sliver.area_cm2 * std::max(0.0, height_cm - sliver.ground_cm);
  return sum;
}

/// The slivers outside the chords of a curved pane, with the ground there.
void add_slivers(const Plan& plan, const std::vector<Point>& outline, int steps, Bed& bed) {
  double radius = 0, centre_z = 0, centre_x = 0;
  for (const Slice& slice : slices_of(plan.tank))
    if (slice.radius > 0) radius = slice.radius, centre_z = slice.centre;
  if (!(radius > 0)) return;
  centre_x = inside_length_cm(plan.tank) / 2;  // every curved pane is the same to the left and to the right
  const double slack = 1e-9 * radius, longest = 2 * radius * std::sin(std::numbers::pi / std::max(steps, 3)) + slack;
  const auto on_pane = [&](const Point& p) {
    return std::abs(std::hypot(p.x_cm - centre_x, p.z_cm - centre_z) - radius) <= slack;
  };
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point &p = outline[i], &q = outline[i + 1 < outline.size() ? i + 1 : 0];
    const double x = q.x_cm - p.x_cm, z = q.z_cm - p.z_cm, chord = std::hypot(x, z);
    if (!(chord > 0 && chord <= longest && on_pane(p) && on_pane(q))) continue;
    const double to_chord = std::sqrt(std::max(0.0, radius * radius - chord * chord / 4));
    const double area = radius * radius * std::asin(std::min(1.0, chord / 2 / radius)) - chord / 2 * to_chord;
    if (!(area > 0)) continue;
    const double out = chord * chord * chord / (12 * area) - to_chord;  // its centroid from the chord
    const Point centroid{(p.x_cm + q.x_cm) / 2 + z / chord * out, (p.z_cm + q.z_cm) / 2 - x / chord * out};
    bed.slivers.push_back({area, slope_cm(plan, centroid.z_cm) + rise_at(plan.substrate.line_cm, centroid.x_cm)});
  }
}

}  // namespace

std::vector<Point> below(const Facet& facet, double height_cm) {
  return kept(facet.outline, [&](const Point& p) { return height_cm - ground_at(facet, p); });
}

Bed bed_of(const Plan& plan, int steps) {
  Bed bed;
  const std::vector<Point> outline = inside_outline(plan.tank, steps);
  if (outline.empty()) return bed;
  const Substrate substrate = settled_substrate(plan);
  const double by_z = (substrate.back_cm - substrate.front_cm) / inside_width_cm(plan.tank);
  std::vector<Point> rest = outline;
  const std::vector<LinePoint>& line = substrate.line_cm;
  for (std::size_t i = 0; i <= line.size() && !rest.empty(); ++i) {
    Facet facet{.outline = rest, .ground_cm = substrate.front_cm, .by_x = 0, .by_z = by_z};
    if (i > 0 && i < line.size()) {
      const LinePoint &p = line[i - 1], &q = line[i];
      facet.by_x = (q.rise_cm - p.rise_cm) / (q.x_cm - p.x_cm);
      facet.ground_cm += p.rise_cm - facet.by_x * p.x_cm;
    } else if (!line.empty()) {
      facet.ground_cm += i == 0 ? line.front().rise_cm : line.back().rise_cm;
    }
    if (i < line.size()) {
      const double at = line[i].x_cm;
      facet.outline = kept(rest, [at](const Point& p) { return at - p.x_cm; });
      rest = kept(rest, [at](const Point& p) { return p.x_cm - at; });
    }
    if (facet.outline.size() >= 3) bed.facets.push_back(std::move(facet));
  }
  add_slivers(plan, outline, steps, bed);
  return bed;
}

double space_over_cm3(const Bed& bed, double height_cm) {
  // Where the ground would lie under the bottom, the water ends at the bottom.
  return height_cm > 0 ? std::max(0.0, lacking_cm3(bed, height_cm) - lacking_cm3(bed, 0)) : 0;
}

double area_over_cm2(const Bed& bed, double height_cm) {
  if (!(height_cm > 0)) return 0;
  double sum = 0;
  for (const Facet& facet : bed.facets) sum += sums_of(below(facet, height_cm)).area;
  for (const Sliver& sliver : bed.slivers)
    if (sliver.ground_cm < height_cm) sum += sliver.area_cm2;
  return sum;
}

double mean_cm(const Bed& bed) {
  double area = 0, ground = lacking_cm3(bed, 0);
  for (const Facet& facet : bed.facets) {
    const Sums sums = sums_of(facet.outline);
    area += sums.area;
    ground += integral_of_ground(facet, sums);
  }
  for (const Sliver& sliver : bed.slivers) {
    area += sliver.area_cm2;
    ground += sliver.area_cm2 * sliver.ground_cm;
  }
  return area > 0 ? ground / area : 0;
}

}  // namespace shoalwright
