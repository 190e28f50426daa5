// SPDX-License-Identifier: MIT
#include "water/equilibrium.h"

#include <algorithm>
#include <cmath>

#include "units/convert.h"
#include "water/constants.h"
#include "water/held.h"

namespace shoalwright {

namespace {

struct Fit {
  double constant, linear, inverse, logarithmic, inverse_square;
};

double log10_of(const Fit& fit, double temperature_c) {
  const double k = held_within(temperature_c, equilibrium_temperature_c) + kelvin_at_0_c;
  return fit.constant + fit.linear * k + (fit.inverse + fit.inverse_square / k) / k + fit.logarithmic * std::log10(k);
}

}  // namespace

double log10_k1(double temperature_c) { return log10_of({-356.3094, -0.06091964, 21834.37, 126.8339, -1684915}, temperature_c); }

double log10_k2(double temperature_c) { return log10_of({-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9}, temperature_c); }

double log10_k_gas(double temperature_c) { return log10_of({108.3865, 0.01985076, -6919.53, -40.45154, 669365}, temperature_c); }

double log10_k_water(double temperature_c) {
  return log10_of({-283.9710, -0.05069842, 13323.00, 102.24447, -1119669}, temperature_c);
}

double log10_k_calcite(double temperature_c) { return log10_of({-171.9065, -0.077993, 2839.319, 71.595, 0}, temperature_c); }

double ionic_strength_of_hardness_mol_l(double kh_dkh, double gh_dgh) {
  const double alkaline = meq_l_from_degrees(std::max(kh_dkh, 0.0)) / 1000,
               hard = meq_l_from_degrees(std::max(gh_dgh, 0.0)) / 1000;
  const double beyond = hard - alkaline;
  return held_within(hard + alkaline / 2 + 0.75 * std::max(beyond, 0.0) + 0.5 * std::max(-beyond, 0.0), ionic_strength_mol_l);
}

double ionic_strength_of_conductivity_mol_l(double conductivity_us_cm) {
  return held_within(1.4e-5 * conductivity_us_cm, ionic_strength_mol_l);
}

double log10_activity(double temperature_c, double ionic_strength) {
  const double ionic = held_within(ionic_strength, ionic_strength_mol_l), root = std::sqrt(ionic);
  const double a = 0.4883 + 8.074e-4 * held_within(temperature_c, equilibrium_temperature_c);
  return -a * (root / (1 + root) - 0.3 * ionic);
}

}  // namespace shoalwright
