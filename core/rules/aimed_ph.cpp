// SPDX-License-Identifier: MIT
#include "rules/aimed_ph.h"

#include "rules/limits.h"
#include "rules/tell.h"
#include "water/reach.h"

namespace shoalwright {

double co2_ceiling_mg_l(const Plan& plan) { return plan.limits.co2_mg_l.value_or(safe_co2_mg_l); }

std::optional<AimedPh> missed_ph_of(const Facts& facts) {
  if (!has_aim(facts.plan, "ph")) return std::nullopt;
  const Windows& now = facts.water;
  if (!now.temperature_c.now || !now.kh_dkh.now || !(*now.kh_dkh.now >= limits::unreachable_least_kh_dkh)) return std::nullopt;
  AimedPh aimed;
  aimed.water = {.temperature_c = *now.temperature_c.now, .kh_dkh = *now.kh_dkh.now, .gh_dgh = now.gh_dgh.now};
  aimed.ph = *now.ph.now;
  // CO2 from pH takes no search, pH from CO2 does.
  const double kh = aimed.water.kh_dkh, co2_mg_l = co2_at_ph_mg_l(aimed.water, aimed.ph);
  if (co2_mg_l <= co2_ceiling_mg_l(facts.plan) && co2_mg_l >= co2_in_air_mg_l(aimed.water.temperature_c, co2_outdoors_atm))
    return std::nullopt;
  aimed.reached = reachable_ph(aimed.water.temperature_c, {kh, kh}, aimed.water.gh_dgh, co2_ceiling_mg_l(facts.plan));
  return aimed;
}

bool wants_acid(const AimedPh& aimed) {
  return aimed.water.kh_dkh >= limits::acid_least_kh_dkh && grade(rounded(aimed.under()), limits::acid_ph).has_value();
}

double kh_for_ph_dkh(const AimedPh& aimed, double co2_mg_l) {
  // With the same CO2 pH rises with carbonate hardness.
  CarbonateWater water = aimed.water;
  double low = 0, high = aimed.water.kh_dkh;
  for (int halving = 0; halving < 30; ++halving) {
    water.kh_dkh = (low + high) / 2;
    (ph_with_co2(water, co2_mg_l) > aimed.ph ? high : low) = water.kh_dkh;
  }
  return low;
}

}  // namespace shoalwright
