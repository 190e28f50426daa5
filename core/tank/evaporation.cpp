// SPDX-License-Identifier: MIT
#include "tank/evaporation.h"

#include <algorithm>

#include "units/power.h"

namespace shoalwright {

namespace {

constexpr double air_pressure_kpa = 101.325;
constexpr double s_per_day = 86400;

/// Dry air in a cubic metre of damp air, kg, by the ideal gas law.
double dry_air_kg_m3(double vapour_kpa, double temperature_c) {
  constexpr double gas_constant_j_kg_k = 287.055;
  return (air_pressure_kpa - vapour_kpa) * 1000 / (gas_constant_j_kg_k * (temperature_c + 273.15));
}

/// Vapour carried by a kilogram of dry air, kg.
double vapour_kg_kg(double vapour_kpa) {
  constexpr double vapour_over_air = 0.62198;  // of their molar masses
  return vapour_over_air * vapour_kpa / (air_pressure_kpa - vapour_kpa);
}

}  // namespace

double vapour_pressure_kpa(double temperature_c) {
  const double t = std::clamp(temperature_c, -40.0, 50.0);
  return 0.61094 * natural_power(17.625 * t / (t + 243.04));
}

double vaporisation_kj_kg(double temperature_c) { return 2501 - 2.361 * std::clamp(temperature_c, 0.0, 50.0); }

double evaporation_kg_d(const WetSurface& surface) {
  if (!(surface.area_m2 > 0)) return 0;
  const double humidity = std::clamp(surface.humidity, 0.0, 1.0);
  const double pull_kpa = vapour_pressure_kpa(surface.water_c) - humidity * vapour_pressure_kpa(surface.air_c);
  const double kw_m2_kpa = 0.089 + 0.0782 * std::max(surface.air_m_s, 0.0);
  const double kg_s = surface.area_m2 * pull_kpa * kw_m2_kpa / vaporisation_kj_kg(surface.water_c) * surface.share;
  return std::max(0.0, kg_s * s_per_day);
}

double still_evaporation_kg_m2_h(double water_c, double air_c, double humidity) {
  const double at_water_kpa = vapour_pressure_kpa(water_c);
  const double in_room_kpa = std::clamp(humidity, 0.0, 1.0) * vapour_pressure_kpa(air_c);
  const double at_water = dry_air_kg_m3(at_water_kpa, water_c), in_room = dry_air_kg_m3(in_room_kpa, air_c);
  if (!(in_room > at_water)) return 0;
  constexpr double measured = 35;
  const double carried = vapour_kg_kg(at_water_kpa) - vapour_kg_kg(in_room_kpa);
  return std::max(0.0, measured * at_water * raised(in_room - at_water, 1.0 / 3) * carried);
}

}  // namespace shoalwright
