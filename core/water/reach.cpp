// SPDX-License-Identifier: MIT
#include "water/reach.h"

#include "water/carbonate.h"

namespace shoalwright {

Range reachable_ph(double temperature_c, const Range& kh_dkh, std::optional<double> gh_dgh, double co2_mg_l) {
  return {ph_with_co2({temperature_c, kh_dkh.low, gh_dgh}, co2_mg_l),
          ph_in_air({temperature_c, kh_dkh.high, gh_dgh}, co2_outdoors_atm)};
}

CarbonateReach carbonate_reach_of(const Windows& windows, double most_co2_mg_l) {
  CarbonateReach reach;
  const std::optional<double>& temperature_c = windows.temperature_c.now;
  if (!temperature_c) return reach;
  const std::optional<double>& gh_dgh = windows.gh_dgh.now;
  if (windows.ph.now && windows.kh_dkh.now)
    reach.co2_mg_l = co2_at_ph_mg_l({*temperature_c, *windows.kh_dkh.now, gh_dgh}, *windows.ph.now);
  if (windows.ph.tolerated && windows.kh_dkh.tolerated) {
    const Range ph = reachable_ph(*temperature_c, *windows.kh_dkh.tolerated, gh_dgh, most_co2_mg_l);
    reach.reachable = ph.low <= windows.ph.tolerated->high && ph.high >= windows.ph.tolerated->low;
  }
  return reach;
}

}  // namespace shoalwright
