// SPDX-License-Identifier: MIT
#include "stocking/plant_growth.h"

#include <algorithm>
#include <numbers>

#include "stocking/oxygen_use.h"
#include "tank/volume.h"

namespace shoalwright {

double plant_nitrogen_mg_d(double dry_g, double growth_d, double nitrogen_mg_g) {
  return std::max(dry_g, 0.0) * std::max(growth_d, 0.0) * nitrogen_mg_g;
}

std::optional<double> plants_may_take_mg_d(const Plan& plan, double tan_mg_d) {
  const std::optional<double> dry_g = plants_dry_g(plan);
  if (!dry_g) return std::nullopt;
  return std::min({plant_nitrogen_mg_d(*dry_g, ordinary_growth_d),
                   plant_nitrogen_most_mg_m2_d * inside_area_cm2(plan.tank) * 1e-4, plants_take_most * tan_mg_d});
}

std::optional<double> nitrate_peak_with_plants(const Plan& plan, const Load& load, const Volume& volume) {
  if (!load.nitrate_peak_mg_l || !load.tan_mg_d || !(*load.tan_mg_d > 0) || !plan.source.nitrate_mg_l) return std::nullopt;
  const std::optional<double> taken = plants_may_take_mg_d(plan, *load.tan_mg_d);
  if (!taken || !(*taken > 0) || !(volume.net_l > 0)) return std::nullopt;
  // The saw-tooth is in proportion to what rises.
  const double over_tap = *load.nitrate_peak_mg_l - *plan.source.nitrate_mg_l;
  return *plan.source.nitrate_mg_l + over_tap * (1 - *taken / *load.tan_mg_d);
}

std::optional<double> doubling_days(double growth_d) {
  if (!(growth_d > 0)) return std::nullopt;
  return std::numbers::ln2 / growth_d;
}

}  // namespace shoalwright
