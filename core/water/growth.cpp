// SPDX-License-Identifier: MIT
#include "water/growth.h"

#include <algorithm>

#include "units/power.h"
#include "water/ammonia.h"
#include "water/held.h"

namespace shoalwright {

namespace {

constexpr double ammonia_oxygen_half_mg_l = 1.3, nitrite_oxygen_half_mg_l = 0.5;
constexpr double nitrite_nh3_n_half_mg_l = 0.64;

/// How much of full speed there is with so much of what is wanted.
double share_of_full(double amount, double half) { return amount > 0 ? amount / (half + amount) : 0; }

double held_temperature(double temperature_c) { return held_within(temperature_c, growth_temperature_c); }

}  // namespace

double ammonia_oxidisers_fastest_d(double temperature_c) {
  return 0.47 * natural_power(0.098 * (held_temperature(temperature_c) - 15));
}

double nitrite_oxidisers_fastest_d(double temperature_c) {
  return 1.1 * natural_power(0.069 * (held_temperature(temperature_c) - 20));
}

double ammonia_half_mg_l(double temperature_c) { return raised(10, 0.051 * held_temperature(temperature_c) - 1.158); }

double growth_left_by_acid(double ph) { return held_within(1 - 0.833 * std::max(7.2 - ph, 0.0), {0, 1}); }

Growth growth_in(double temperature_c, double oxygen_mg_l, double ph) {
  const double oxygen = held_within(oxygen_mg_l, growth_oxygen_mg_l), left = growth_left_by_acid(ph);
  return {
      .ammonia_fastest_d = ammonia_oxidisers_fastest_d(temperature_c) * share_of_full(oxygen, ammonia_oxygen_half_mg_l) * left,
      .ammonia_half_mg_l = ammonia_half_mg_l(temperature_c),
      .nitrite_fastest_d = nitrite_oxidisers_fastest_d(temperature_c) * share_of_full(oxygen, nitrite_oxygen_half_mg_l) * left,
      .nh3_share = nh3_share(temperature_c, ph)};
}

double ammonia_oxidisers_growth_d(const Growth& growth, double tan_mg_l) {
  return growth.ammonia_fastest_d * share_of_full(tan_mg_l, growth.ammonia_half_mg_l);
}

double nitrite_oxidisers_growth_d(const Growth& growth, double nitrite_n_mg_l, double tan_mg_l) {
  const double nh3_n_mg_l = tan_mg_l > 0 ? tan_mg_l * growth.nh3_share : 0;
  return growth.nitrite_fastest_d * share_of_full(nitrite_n_mg_l, nitrite_half_mg_l) / (1 + nh3_n_mg_l / nitrite_nh3_n_half_mg_l);
}

std::optional<double> tan_at_balance_mg_l(const Growth& growth) {
  if (!(growth.ammonia_fastest_d > bacteria_die_d)) return std::nullopt;
  return growth.ammonia_half_mg_l * bacteria_die_d / (growth.ammonia_fastest_d - bacteria_die_d);
}

}  // namespace shoalwright
