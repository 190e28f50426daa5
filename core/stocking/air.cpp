// SPDX-License-Identifier: MIT
#include "stocking/air.h"

#include <algorithm>

#include "stocking/gas_transfer.h"
#include "water/oxygen.h"

namespace shoalwright {

namespace {

constexpr double bacteria_want_mg_l = 4, unsaid_wants_mg_l = 5;

}  // namespace

double dawn_oxygen_mg_l(double saturation_mg_l, double supply_l_h, const OxygenUse& night, double fish_factor) {
  return settled_oxygen_mg_l(saturation_mg_l, supply_l_h, night.total_mg_h(fish_factor)).value_or(0);
}

Range dawn_band_mg_l(double saturation_mg_l, double supply_l_h, const OxygenUse& night) {
  return {dawn_oxygen_mg_l(saturation_mg_l, supply_l_h, night, fish_use_high),
          dawn_oxygen_mg_l(saturation_mg_l, supply_l_h, night, fish_use_low)};
}

std::optional<double> oxygen_wanted_mg_l(const std::vector<Kept>& stock) {
  std::optional<double> wanted;
  for (const Kept& kept : stock)
    if (kept.species)
      wanted = std::max(wanted.value_or(bacteria_want_mg_l), kept.species->water.oxygen_least_mg_l.value_or(unsaid_wants_mg_l));
  return wanted;
}

AirOfTank air_of_tank(const Plan& plan, const Volume& volume, std::optional<double> water_c) {
  AirOfTank tank;
  if (!water_c) return tank;
  tank.saturation_mg_l = oxygen_saturation_mg_l(*water_c);
  tank.supply_l_h = oxygen_supply_l_h(plan, volume, *water_c);
  tank.plants_mg_h = plants_dark_oxygen_mg_h(plan);
  return tank;
}

Air air_of(const Plan& plan, const std::vector<Kept>& stock, const AirOfTank& tank, const std::optional<Burden>& burden) {
  Air air;
  air.limit_mg_l = oxygen_wanted_mg_l(stock);
  air.saturation_mg_l = tank.saturation_mg_l;
  const std::optional<OxygenUse> night = night_oxygen_use(plan, tank.plants_mg_h, burden);
  if (!night) return air;
  air.demand_mg_h = night->total_mg_h();
  if (!tank.saturation_mg_l || !tank.supply_l_h) return air;
  air.dawn_mg_l = dawn_oxygen_mg_l(*tank.saturation_mg_l, *tank.supply_l_h, *night);
  air.dawn_low_mg_l = dawn_band_mg_l(*tank.saturation_mg_l, *tank.supply_l_h, *night).low;
  return air;
}

Air air_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume, std::optional<double> water_c) {
  return air_of(plan, stock, air_of_tank(plan, volume, water_c), burden_of(stock, water_c));
}

}  // namespace shoalwright
