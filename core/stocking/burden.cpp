// SPDX-License-Identifier: MIT
#include "stocking/burden.h"

#include "stocking/body.h"
#include "stocking/oxygen_use.h"
#include "stocking/ration.h"

namespace shoalwright {

Burden burden_of(const Species& species, double water_c) {
  const double mass_g = adult_mass_g(species);
  return {.feed_g_d = daily_feed_g(1, mass_g, adult_ration_pct(mass_g), water_c),
          .resting_oxygen_mg_h = resting_oxygen_mg_h(mass_g, water_c)};
}

std::optional<Burden> burden_of(const std::vector<Kept>& stock, std::optional<double> water_c) {
  if (stock.empty()) return Burden{};
  if (!water_c) return std::nullopt;
  Burden all;
  for (const Kept& kept : stock) {
    if (!kept.species) return std::nullopt;
    const Burden one = burden_of(*kept.species, *water_c);
    all.feed_g_d += kept.count * one.feed_g_d;
    all.resting_oxygen_mg_h += kept.count * one.resting_oxygen_mg_h;
  }
  return all;
}

}  // namespace shoalwright
