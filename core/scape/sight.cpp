// SPDX-License-Identifier: MIT
#include "scape/sight.h"

#include <algorithm>
#include <cmath>

namespace shoalwright {

bool sees(const Scape& scape, const TankPoint& a, const TankPoint& b) {
  constexpr double slack = 1e-6;  // what rounding may do to mirrored measures
  const TankGrid& grid = scape.grid;
  if (grid.size.cells() == 0) return true;
  const double x = b.x_cm - a.x_cm, y = b.y_cm - a.y_cm, z = b.z_cm - a.z_cm, length_cm = std::sqrt(x * x + y * y + z * z);
  const int steps = 1 + static_cast<int>(2 * length_cm / grid.cell_cm + slack);
  const auto cell = [&](double at_cm, double face_cm, int count, double aside) {
    return std::clamp(static_cast<int>((at_cm - face_cm) / grid.cell_cm + aside), 0, count - 1);
  };
  int among = 0;
  for (int step = 0; step < steps; ++step) {
    // Written so that both ends enter alike.
    const double to_a = 2 * (steps - step) - 1, to_b = 2 * step + 1;
    const auto between = [&](double at_a, double at_b) { return (at_a * to_a + at_b * to_b) / (2 * steps); };
    const double at_x = between(a.x_cm, b.x_cm);
    const int j = cell(between(a.y_cm, b.y_cm), grid.floor_cm, grid.size.y, 0),
              k = cell(between(a.z_cm, b.z_cm), grid.front_cm, grid.size.z, 0);
    bool grown = false;
    // On a face between two cells both are looked at: mirrored, it would be the other one.
    for (const double aside : {-slack, slack}) {
      const std::size_t at = grid.size.at(cell(at_x, grid.left_cm, grid.size.x, aside), k, j);
      if (grid.taken[at] || scape.solid[at]) return false;
      grown = grown || scape.growth[at];
    }
    among += grown;
  }
  return among * length_cm / steps <= seen_through_growth_cm + slack;
}

}  // namespace shoalwright
