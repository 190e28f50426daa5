// SPDX-License-Identifier: MIT
#include "stocking/cover.h"

#include <algorithm>
#include <vector>

#include "stocking/limits.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

struct UnitPoint {
  double u = 0, v = 0;
};

double turn(const UnitPoint& a, const UnitPoint& b, const UnitPoint& c) {
  return (b.u - a.u) * (c.v - a.v) - (b.v - a.v) * (c.u - a.u);
}

/// Area of the convex hull (Andrew's monotone chain).
double hull_area(std::vector<UnitPoint> points) {
  std::sort(points.begin(), points.end(),
            [](const UnitPoint& a, const UnitPoint& b) { return a.u < b.u || (a.u == b.u && a.v < b.v); });
  std::vector<UnitPoint> hull;
  for (int side = 0; side < 2; ++side) {
    const std::size_t start = hull.size();
    for (const UnitPoint& point : points) {
      while (hull.size() >= start + 2 && !(turn(hull[hull.size() - 2], hull.back(), point) > 0)) hull.pop_back();
      hull.push_back(point);
    }
    if (!hull.empty()) hull.pop_back();  // the first of the other side
    std::reverse(points.begin(), points.end());
  }
  double twice = 0;
  for (std::size_t i = 0; i < hull.size(); ++i) {
    const UnitPoint &p = hull[i], &q = hull[(i + 1) % hull.size()];
    twice += p.u * q.v - q.u * p.v;
  }
  return twice / 2;
}

/// Of a piece 1 long and 1 deep.
double unit_outline(const PieceKind& kind) {
  std::vector<UnitPoint> points;
  for (const Prism& prism : kind.prisms)
    for (const Spot& spot : prism.outline) {
      const double u = static_cast<double>(prism.u), v = static_cast<double>(prism.v);
      const double du = static_cast<double>(spot.u) * prism.length, dv = static_cast<double>(spot.v) * prism.depth;
      points.push_back({u + du, v + dv});
      points.push_back({u + prism.lean_u + du * prism.top, v + prism.lean_v + dv * prism.top});
    }
  for (const Limb& limb : kind.limbs)
    for (const LimbPoint& point : limb.points) points.push_back({point.u, point.v});
  return points.size() < 3 ? 0 : hull_area(std::move(points));
}

}  // namespace

double outline_cm2(const PieceKind& kind, double length_cm, double depth_cm) {
  // Reckoned once for each kind: rules ask for it again for every count that is tried.
  static const std::vector<double> units = [] {
    std::vector<double> all;
    for (const PieceKind& one : piece_kinds()) all.push_back(unit_outline(one));
    return all;
  }();
  for (std::size_t i = 0; i < units.size(); ++i)
    if (&piece_kinds()[i] == &kind) return units[i] * length_cm * depth_cm;
  return unit_outline(kind) * length_cm * depth_cm;
}

double planting_shelter(Planting planting) {
  switch (planting) {
    case Planting::none: return 0;
    case Planting::light: return shelter_light;
    case Planting::medium: return shelter_medium;
    case Planting::dense: return shelter_dense;
  }
  return 0;
}

Cover cover_of(const Plan& plan) {
  Cover cover;
  double sheltered_cm2 = 0;
  for (const Piece& piece : plan.pieces) {
    const PieceKind& kind = piece_kind(piece.kind);
    cover.hides += kind.hides;
    if (kind.shelter > 0) sheltered_cm2 += kind.shelter * outline_cm2(kind, piece.length_cm, piece.depth_cm);
  }
  const double floor_cm2 = inside_area_cm2(plan.tank);
  if (!(floor_cm2 > 0)) return cover;
  cover.pieces_share = std::min(sheltered_cm2 / floor_cm2, 1.0);
  if (plan.planting) cover.share = std::min(cover.pieces_share + planting_shelter(*plan.planting), 1.0);
  return cover;
}

}  // namespace shoalwright
