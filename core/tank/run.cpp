// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <vector>

#include "tank/open_water.h"

namespace shoalwright {

namespace {

/// Longest chord along one direction (a unit vector), found between neighbouring corners, where chords change evenly.
double longest_chord_cm(const std::vector<Point>& outline, Point along) {
  struct Turned {
    double s, t;  // along the direction, and across it
  };
  std::vector<Turned> points;
  std::vector<double> levels;
  for (const Point& p : outline) {
    points.push_back({p.x_cm * along.x_cm + p.z_cm * along.z_cm, p.z_cm * along.x_cm - p.x_cm * along.z_cm});
    levels.push_back(points.back().t);
  }
  std::sort(levels.begin(), levels.end());
  double longest = 0;
  std::vector<Turned> ends;  // where the sides that cross this band stand at its lower and its upper edge
  for (std::size_t k = 0; k + 1 < levels.size(); ++k) {
    const double t0 = levels[k], t1 = levels[k + 1];
    if (!(t1 - t0 > 1e-9)) continue;
    ends.clear();
    for (std::size_t i = 0; i < points.size(); ++i) {
      const Turned &p = points[i], &q = points[(i + 1) % points.size()];
      if (!(std::min(p.t, q.t) <= t0 && std::max(p.t, q.t) >= t1)) continue;
      const double slope = (q.s - p.s) / (q.t - p.t);
      ends.push_back({p.s + slope * (t0 - p.t), p.s + slope * (t1 - p.t)});
    }
    std::sort(ends.begin(), ends.end(), [](const Turned& a, const Turned& b) { return a.s + a.t < b.s + b.t; });
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2)
      longest = std::max({longest, ends[i + 1].s - ends[i].s, ends[i + 1].t - ends[i].t});
  }
  return longest;
}

}  // namespace

double longest_run_cm(const std::vector<Point>& outline) {
  if (outline.size() < 3) return 0;
  Point along{1, 0};
  double side_cm = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point &p = outline[i], &q = outline[(i + 1) % outline.size()];
    const double length = std::hypot(q.x_cm - p.x_cm, q.z_cm - p.z_cm);
    if (!(length > side_cm)) continue;
    side_cm = length;
    along = {(q.x_cm - p.x_cm) / length, (q.z_cm - p.z_cm) / length};
  }
  return std::max({longest_chord_cm(outline, {1, 0}), longest_chord_cm(outline, {0, 1}), longest_chord_cm(outline, along),
                   longest_chord_cm(outline, {-along.z_cm, along.x_cm})});
}

}  // namespace shoalwright
