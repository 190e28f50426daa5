// SPDX-License-Identifier: MIT
#include "stocking/ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace shoalwright {

double ground_across_cm(double floor_bl2, double length_cm) {
  return 2 * length_cm * std::sqrt(std::max(floor_bl2, 0.0) / std::numbers::pi);
}

}  // namespace shoalwright
