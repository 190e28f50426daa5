// SPDX-License-Identifier: MIT
#include "water/ammonia.h"

#include <algorithm>

#include "units/convert.h"
#include "units/power.h"
#include "water/constants.h"
#include "water/held.h"

namespace shoalwright {

namespace {

/// The criteria fall from `low_ph` to `high_ph` around a middle.
double over_ph(double ph, double middle, double high_ph, double low_ph) {
  const double p = held_within(ph, ammonia_ph);
  return high_ph / (1 + raised(10, middle - p)) + low_ph / (1 + raised(10, p - middle));
}

/// Invertebrates bear less the warmer it is.
double acute_of_invertebrates(double temperature_c) {
  return 23.12 * raised(10, 0.036 * (20 - held_within(temperature_c, ammonia_temperature_c)));
}

double acute_over_ph(double ph) { return 0.7249 * over_ph(ph, 7.204, 0.0114, 1.6181); }

}  // namespace

bool ammonia_valid(double temperature_c, double ph) {
  return is_within(temperature_c, ammonia_temperature_c) && is_within(ph, ammonia_ph);
}

double ammonium_pka(double temperature_c) {
  return 0.09018 + 2729.92 / (held_within(temperature_c, ammonia_temperature_c) + kelvin_at_0_c);
}

double nh3_share(double temperature_c, double ph) {
  return 1 / (1 + raised(10, ammonium_pka(temperature_c) - held_within(ph, ammonia_ph)));
}

double nh3_n_from_tan_mg_l(double tan_mg_l, double temperature_c, double ph) {
  return tan_mg_l > 0 ? tan_mg_l * nh3_share(temperature_c, ph) : 0;
}

double tan_for_nh3_mg_l(double nh3_mg_l, double temperature_c, double ph) {
  return nh3_mg_l > 0 ? n_from_nh3(nh3_mg_l) / nh3_share(temperature_c, ph) : 0;
}

double acute_tan_with_trout_mg_l(double temperature_c, double ph) {
  return std::min(over_ph(ph, 7.204, 0.275, 39.0), acute_over_ph(ph) * acute_of_invertebrates(temperature_c));
}

double acute_tan_without_trout_mg_l(double temperature_c, double ph) {
  return acute_over_ph(ph) * std::min(51.93, acute_of_invertebrates(temperature_c));
}

double chronic_tan_mg_l(double temperature_c, double ph) {
  const double t = held_within(temperature_c, ammonia_temperature_c);
  return 0.8876 * over_ph(ph, 7.688, 0.0278, 1.1994) * 2.126 * raised(10, 0.028 * (20 - std::max(t, 7.0)));
}

}  // namespace shoalwright
