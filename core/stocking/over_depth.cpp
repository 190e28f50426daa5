// SPDX-License-Identifier: MIT
#include "stocking/over_depth.h"

#include <cmath>

#include "stocking/limits.h"

namespace shoalwright {

std::vector<double> over_depth(const std::array<double, 3>& shares, int per_level) {
  const int strips = 3 * per_level;
  std::vector<double> all(static_cast<std::size_t>(strips), 0);
  for (int level = 0; level < 3; ++level) {
    double sum = 0;
    for (int strip = level * per_level; strip < (level + 1) * per_level; ++strip) {
      double& here = all[static_cast<std::size_t>(strip)];
      for (int middle = 0; middle < 3; ++middle) {
        const double away = ((strip + 0.5) / strips - (middle + 0.5) / 3) / depth_spread;
        here += shares[static_cast<std::size_t>(middle)] * static_cast<double>(std::exp(static_cast<float>(-away * away / 2)));
      }
      sum += here;
    }
    for (int strip = level * per_level; strip < (level + 1) * per_level; ++strip)
      all[static_cast<std::size_t>(strip)] *= sum > 0 ? shares[static_cast<std::size_t>(level)] / sum : 0;
  }
  return all;
}

}  // namespace shoalwright
