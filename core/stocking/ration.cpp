// SPDX-License-Identifier: MIT
#include "stocking/ration.h"

#include <algorithm>
#include <cmath>

#include "stocking/limits.h"
#include "units/power.h"

namespace shoalwright {

double adult_ration_pct(double mass_g) {
  if (!(mass_g > 0)) return 0;
  return std::clamp(ration_at_1_g_pct * raised(mass_g, ration_mass_power), ration_least_pct, ration_most_pct);
}

double appetite_factor(double temperature_c) {
  return std::clamp(raised(2, (temperature_c - 25) / 10), appetite_least, appetite_most);
}

double daily_feed_g(double count, double mass_g, double ration_pct, double temperature_c) {
  return count * mass_g * ration_pct / 100 * appetite_factor(temperature_c);
}

double ration_factor(Ration ration) {
  switch (ration) {
    case Ration::light: return ration_light;
    case Ration::normal: return 1;
    case Ration::heavy: return ration_heavy;
  }
  return 1;
}

}  // namespace shoalwright
