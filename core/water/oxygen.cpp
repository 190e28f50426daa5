// SPDX-License-Identifier: MIT
#include "water/oxygen.h"

#include "units/convert.h"
#include "units/power.h"
#include "water/constants.h"
#include "water/held.h"

namespace shoalwright {

bool oxygen_valid(double temperature_c, double pressure_atm) {
  return is_within(temperature_c, oxygen_temperature_c) && is_within(pressure_atm, oxygen_pressure_atm);
}

double oxygen_saturation_mg_l(double temperature_c, double pressure_atm) {
  const double t = held_within(temperature_c, oxygen_temperature_c), p = held_within(pressure_atm, oxygen_pressure_atm);
  const double k = t + kelvin_at_0_c;
  const double at_1_atm = natural_power(-139.34411 + (1.575701e5 + (-6.642308e7 + (1.243800e10 - 8.621949e11 / k) / k) / k) / k);
  const double vapour_atm = natural_power(11.8571 - (3840.70 + 216961 / k) / k);
  const double theta = 0.000975 - 1.426e-5 * t + 6.436e-8 * t * t;  // oxygen is no ideal gas
  return at_1_atm * (p - vapour_atm) * (1 - theta * p) / ((1 - vapour_atm) * (1 - theta));
}

double oxygen_percent(double oxygen_mg_l, double temperature_c, double pressure_atm) {
  return oxygen_mg_l > 0 ? 100 * oxygen_mg_l / oxygen_saturation_mg_l(temperature_c, pressure_atm) : 0;
}

double pressure_at_altitude_atm(double altitude_m) {
  return raised(1 - 2.25577e-5 * held_within(altitude_m, pressure_altitude_m), 5.25588);
}

double oxygen_for_nitrification_mg(double n_mg) { return n_mg * 4 * molar_o / molar_n; }

}  // namespace shoalwright
