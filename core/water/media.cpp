// SPDX-License-Identifier: MIT
#include "water/media.h"

#include <algorithm>

#include "units/power.h"
#include "water/held.h"

namespace shoalwright {

double film_uptake_mg_m2_d(double tan_mg_l) {
  constexpr double least_tan_mg_l = 0.07;
  return tan_mg_l > least_tan_mg_l ? 1859 * (tan_mg_l - least_tan_mg_l) / (tan_mg_l + 1.93) : 0;
}

double film_temperature_factor(double temperature_c) {
  return raised(1.043, held_within(temperature_c, film_temperature_c) - 27.2);
}

std::optional<double> film_needed_m2(double n_mg_d, double tan_mg_l, double left) {
  const double uptake = film_uptake_mg_m2_d(tan_mg_l);
  if (!(uptake > 0 && left > 0)) return std::nullopt;
  return n_mg_d > 0 ? n_mg_d / (left * uptake) : 0;
}

std::optional<double> media_needed_l(double surface_m2, double media_m2_m3) {
  if (!(media_m2_m3 > 0)) return std::nullopt;
  return surface_m2 > 0 ? 1000 * surface_m2 / media_m2_m3 : 0;
}

double media_uptake_mg_d(double media_l, double media_m2_m3, double tan_mg_l, double left) {
  if (!(media_l > 0 && media_m2_m3 > 0 && left > 0)) return 0;
  return left * film_uptake_mg_m2_d(tan_mg_l) * media_l / 1000 * media_m2_m3;
}

std::optional<double> round_grains_m2_m3(double grain_mm, double porosity) {
  if (!(grain_mm > 0)) return std::nullopt;
  return 6 * (1 - held_within(porosity, {0, 1})) / (grain_mm / 1000);
}

}  // namespace shoalwright
