// SPDX-License-Identifier: MIT
#include "tank/heat.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <vector>

#include "tank/glass.h"

namespace shoalwright {

namespace {

constexpr double stirred_water_m2_k_w = 0.005;
constexpr double underlay_m2_k_w = 0.010 / 0.035 + 0.018 / 0.13;  // foam, board
constexpr double lid_m2_k_w = 0.16 + 0.004 / glass_w_m_k;         // air under it, glass
constexpr double heater_reserve = 1.5;
constexpr double heater_sizes_w[] = {10, 25, 50, 75, 100, 150, 200, 300};
constexpr double single_heater_most_w = 200, heater_most_w = 300;
constexpr double heaters_most = 1e6;  // no tank wants so many
constexpr double water_j_kg_k = 4180;
constexpr double coolest_under_room_k = 40;
constexpr double s_per_h = 3600, s_per_day = 86400;

double outside_perimeter_cm(const Tank& inside) {
  const std::vector<Point> outline = inside_outline(outside_of(inside));
  double around_cm = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point &a = outline[i], &b = outline[(i + 1) % outline.size()];
    around_cm += std::sqrt((b.x_cm - a.x_cm) * (b.x_cm - a.x_cm) + (b.z_cm - a.z_cm) * (b.z_cm - a.z_cm));
  }
  return around_cm;
}

double open_evaporates(const Plan& plan) {
  if (!plan.gear) return evaporates_moving;
  const bool no_filter = plan.gear->filter_known && !plan.gear->filter;
  switch (plan.gear->surface.value_or(no_filter ? SurfaceMotion::still : SurfaceMotion::gentle)) {
    case SurfaceMotion::still:
    case SurfaceMotion::quiet: return evaporates_still;
    case SurfaceMotion::gentle: return evaporates_moving;
    case SurfaceMotion::rippled:
    case SurfaceMotion::vigorous: return evaporates_ruffled;
  }
  return evaporates_moving;
}

std::optional<WarmTank> warm_tank_of(const Plan& plan, const Volume& volume, std::optional<double> water_c) {
  if (!water_c || !plan.place.temperature_c || !plan.tank.lid || !(volume.net_l > 0)) return std::nullopt;
  return WarmTank{.around_m = outside_perimeter_cm(plan.tank) / 100,
                  .base_m2 = volume.footprint_cm2 * 1e-4,
                  .wetted_m = water_line_cm(plan.tank) / 100,
                  .glass_m = plan.tank.glass_mm / 1000,
                  .lid = *plan.tank.lid,
                  .water_c = *water_c,
                  .air_c = *plan.place.temperature_c,
                  .evaporates = *plan.tank.lid ? evaporates_under_glass : open_evaporates(plan)};
}

double evaporation_kg_d(const WarmTank& tank) {
  return evaporation_kg_d(WetSurface{.area_m2 = tank.base_m2,
                                     .water_c = tank.water_c,
                                     .air_c = tank.air_c,
                                     .humidity = tank.humidity,
                                     .share = tank.evaporates});
}

}  // namespace

double wall_loss_w_m2_k(double thickness_m, double conductivity_w_m_k, double outer_m2_k_w, double extra_m2_k_w) {
  return 1 / (stirred_water_m2_k_w + thickness_m / conductivity_w_m_k + extra_m2_k_w + outer_m2_k_w);
}

HeatLoss heat_loss_of(const WarmTank& tank) {
  const double warmer_k = tank.water_c - tank.air_c;
  HeatLoss loss;
  loss.wall_w = wall_loss_w_m2_k(tank.glass_m, glass_w_m_k, air_beside_m2_k_w) * tank.around_m * tank.wetted_m * warmer_k;
  loss.bottom_w = wall_loss_w_m2_k(tank.glass_m, glass_w_m_k, air_below_m2_k_w, underlay_m2_k_w) * tank.base_m2 * warmer_k;
  loss.top_w = tank.base_m2 * warmer_k / (air_above_m2_k_w + (tank.lid ? lid_m2_k_w : 0));
  loss.evaporation_w = evaporation_kg_d(tank) / s_per_day * vaporisation_kj_kg(tank.water_c) * 1000;
  return loss;
}

double unheated_c(WarmTank tank) {
  // What is lost grows with the water's temperature; at that of the room evaporation alone is left.
  double low_c = tank.air_c - coolest_under_room_k, high_c = tank.air_c;
  for (int halving = 0; halving < 40; ++halving) {
    tank.water_c = (low_c + high_c) / 2;
    (heat_loss_of(tank).total_w() > 0 ? high_c : low_c) = tank.water_c;
  }
  return high_c;
}

double heater_power_w(double loss_w, double gear_w) { return heater_reserve * std::max(0.0, loss_w - gear_w); }

Heaters heaters_for(double power_w) {
  if (!(power_w > 0 && power_w <= heaters_most * heater_most_w)) return {};
  const double count = std::max(power_w > single_heater_most_w ? 2.0 : 1.0, std::ceil(power_w / heater_most_w));
  return {static_cast<int>(count), *std::lower_bound(std::begin(heater_sizes_w), std::end(heater_sizes_w) - 1, power_w / count)};
}

std::optional<double> cooling_hours(double water_kg, double loss_w_k) {
  if (!(water_kg > 0 && loss_w_k > 0)) return std::nullopt;
  return water_kg * water_j_kg_k / loss_w_k / s_per_h;
}

std::optional<double> hours_until_cold(double cooling_hours, double from_c, double cold_c, double air_c) {
  if (from_c <= cold_c) return 0;
  if (!(cold_c > air_c)) return std::nullopt;
  return -cooling_hours * std::log1p(-(from_c - cold_c) / (from_c - air_c));
}

Heat heat_of(const Plan& plan, const Volume& volume, std::optional<double> water_c) {
  Heat heat;
  const std::optional<WarmTank> tank = warm_tank_of(plan, volume, water_c);
  if (!tank) return heat;
  heat.loss_w = heat_loss_of(*tank).total_w();
  heat.heater_needed_w = tank->air_c >= tank->water_c ? 0 : heaters_for(heater_power_w(*heat.loss_w, 0)).all_w();
  heat.evaporation_l_d = evaporation_kg_d(*tank);
  return heat;
}

std::optional<double> unheated_c(const Plan& plan, const Volume& volume) {
  const std::optional<WarmTank> tank = warm_tank_of(plan, volume, plan.place.temperature_c);
  if (!tank) return std::nullopt;
  return unheated_c(*tank);
}

std::optional<double> hours_until_cold(const Plan& plan, const Volume& volume, double water_c, double cold_c) {
  const std::optional<WarmTank> tank = warm_tank_of(plan, volume, water_c);
  if (!tank) return std::nullopt;
  const double warmer_k = tank->water_c - tank->air_c;
  if (!(warmer_k > 0)) return hours_until_cold(0, water_c, cold_c, tank->air_c);  // it does not cool: at once, or never
  const std::optional<double> hours = cooling_hours(volume.net_l, heat_loss_of(*tank).total_w() / warmer_k);
  return hours ? hours_until_cold(*hours, water_c, cold_c, tank->air_c) : std::nullopt;
}

}  // namespace shoalwright
