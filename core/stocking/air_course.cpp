// SPDX-License-Identifier: MIT
#include "stocking/air_course.h"

#include "stocking/air.h"
#include "units/power.h"

namespace shoalwright {

std::vector<AirPoint> air_course(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume,
                                 std::optional<double> water_c) {
  std::vector<AirPoint> points;
  const AirOfTank tank = air_of_tank(plan, volume, water_c);
  const std::optional<OxygenUse> night = night_oxygen_use(plan, tank.plants_mg_h, burden_of(stock, water_c));
  if (!night || !tank.saturation_mg_l || !tank.supply_l_h || !(*tank.supply_l_h > 0) || !(volume.net_l > 0)) return points;
  OxygenUse day = *night;
  day.fish_mg_h *= use_by_day / use_asleep;
  day.plants_mg_h = 0;
  const auto settled = [&](const OxygenUse& use) { return dawn_oxygen_mg_l(*tank.saturation_mg_l, *tank.supply_l_h, use); };
  const double by_night = settled(*night), by_day = settled(day), a_turn = *tank.supply_l_h / volume.net_l;
  const auto left = [&](double hours) { return natural_power(-a_turn * hours); };
  // The day after a day like it begins where that one began.
  constexpr double lit_h = lamps_off_hour - lamps_on_hour, dark_h = 24 - lit_h;
  const double at_dawn = (by_night * (1 - left(dark_h)) + by_day * (1 - left(lit_h)) * left(dark_h)) / (1 - left(24));
  const double at_dusk = by_day + (at_dawn - by_day) * left(lit_h);
  for (int hour = 0; hour <= 24; ++hour) {
    double oxygen = 0;
    if (hour >= lamps_on_hour && hour <= lamps_off_hour)
      oxygen = by_day + (at_dawn - by_day) * left(hour - lamps_on_hour);
    else
      oxygen = by_night + (at_dusk - by_night) * left(hour < lamps_on_hour ? hour + 24 - lamps_off_hour : hour - lamps_off_hour);
    points.push_back({static_cast<double>(hour), oxygen});
  }
  return points;
}

}  // namespace shoalwright
