// SPDX-License-Identifier: MIT
#include "tank/outline.h"

#include <algorithm>

namespace shoalwright {

void crossings(const std::vector<Point>& outline, double z_cm, std::vector<double>& at) {
  at.clear();
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point &p = outline[i], &q = outline[i + 1 < outline.size() ? i + 1 : 0];
    if ((p.z_cm <= z_cm) == (q.z_cm <= z_cm)) continue;
    at.push_back(p.x_cm + (q.x_cm - p.x_cm) * (z_cm - p.z_cm) / (q.z_cm - p.z_cm));
  }
  std::sort(at.begin(), at.end());
}

}  // namespace shoalwright
