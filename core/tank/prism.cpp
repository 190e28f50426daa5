// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "tank/detail/shape.h"

namespace shoalwright {

namespace {

double signed_area_cm2(const std::vector<Point>& points) {
  double twice = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point &p = points[i], &q = points[(i + 1) % points.size()];
    twice += p.x_cm * q.z_cm - q.x_cm * p.z_cm;
  }
  return twice / 2;
}

/// Without points that repeat their neighbour, counter-clockwise.
std::vector<Point> clean(std::vector<Point> points) {
  points.erase(std::unique(points.begin(), points.end()), points.end());
  while (points.size() > 1 && points.front() == points.back()) points.pop_back();
  if (points.size() < 3 || !(std::abs(signed_area_cm2(points)) > 0)) return {};
  if (signed_area_cm2(points) < 0) std::reverse(points.begin(), points.end());
  return points;
}

}  // namespace

std::vector<Point> prism_outline(const Tank& tank) {
  std::vector<Point> points = clean(tank.outline_cm);
  if (points.empty()) return points;
  double left = points[0].x_cm, front = points[0].z_cm;
  for (const Point& p : points) {
    left = std::min(left, p.x_cm);
    front = std::min(front, p.z_cm);
  }
  for (Point& p : points) p = {p.x_cm - left, p.z_cm - front};
  return points;
}

std::vector<Slice> prism_slices(const Tank& tank) {
  const std::vector<Point> points = prism_outline(tank);
  std::vector<double> levels;
  for (const Point& p : points) levels.push_back(p.z_cm);
  std::sort(levels.begin(), levels.end());
  levels.erase(std::unique(levels.begin(), levels.end()), levels.end());
  std::vector<Slice> slices;
  for (std::size_t k = 0; k + 1 < levels.size(); ++k) {
    const double z0 = levels[k], z1 = levels[k + 1];
    struct Side {
      double x0, x1;
    };
    std::vector<Side> sides;  // the sides that cross this slab, where they enter and leave it
    for (std::size_t i = 0; i < points.size(); ++i) {
      const Point &p = points[i], &q = points[(i + 1) % points.size()];
      if (!(std::min(p.z_cm, q.z_cm) <= z0 && std::max(p.z_cm, q.z_cm) >= z1)) continue;
      const double slope = (q.x_cm - p.x_cm) / (q.z_cm - p.z_cm);
      sides.push_back({p.x_cm + slope * (z0 - p.z_cm), p.x_cm + slope * (z1 - p.z_cm)});
    }
    std::sort(sides.begin(), sides.end(), [](const Side& a, const Side& b) { return a.x0 + a.x1 < b.x0 + b.x1; });
    Slice slice{.z0 = z0, .z1 = z1};
    for (std::size_t i = 0; i + 1 < sides.size(); i += 2) {
      slice.w0 += sides[i + 1].x0 - sides[i].x0;
      slice.w1 += sides[i + 1].x1 - sides[i].x1;
    }
    slices.push_back(slice);
  }
  return slices;
}

Tank prism_grown(Tank tank, double by_cm) {
  const std::vector<Point> points = clean(tank.outline_cm);
  const std::size_t n = points.size();
  const auto outward = [&](std::size_t i) {
    const Point &p = points[i % n], &q = points[(i + 1) % n];
    const double length = std::hypot(q.x_cm - p.x_cm, q.z_cm - p.z_cm);
    return Point{(q.z_cm - p.z_cm) / length, -(q.x_cm - p.x_cm) / length};
  };
  tank.outline_cm.clear();
  for (std::size_t i = 0; i < n; ++i) {
    const Point before = outward(i + n - 1), after = outward(i);
    // Where the two moved panes meet; a spike is held to ten times the shift.
    const double scale = by_cm / std::max(0.1, 1 + before.x_cm * after.x_cm + before.z_cm * after.z_cm);
    tank.outline_cm.push_back(
        {points[i].x_cm + scale * (before.x_cm + after.x_cm), points[i].z_cm + scale * (before.z_cm + after.z_cm)});
  }
  // Shrunk past itself an outline turns over: its sides run backwards, and nothing is left inside.
  double along_cm = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Point normal = outward(i), &p = tank.outline_cm[i], &q = tank.outline_cm[(i + 1) % n];
    along_cm += (q.z_cm - p.z_cm) * normal.x_cm - (q.x_cm - p.x_cm) * normal.z_cm;
  }
  if (n > 0 && !(along_cm > 0 && signed_area_cm2(tank.outline_cm) > 0)) tank.outline_cm.clear();
  return tank;
}

}  // namespace shoalwright
