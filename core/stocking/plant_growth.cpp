// SPDX-License-Identifier: MIT
#include "stocking/plant_growth.h"

#include <algorithm>
#include <numbers>

namespace shoalwright {

double plant_nitrogen_mg_d(double dry_g, double growth_d, double nitrogen_mg_g) {
  return std::max(dry_g, 0.0) * std::max(growth_d, 0.0) * nitrogen_mg_g;
}

std::optional<double> doubling_days(double growth_d) {
  if (!(growth_d > 0)) return std::nullopt;
  return std::numbers::ln2 / growth_d;
}

}  // namespace shoalwright
