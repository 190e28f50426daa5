// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "water/window.h"

namespace shoalwright {

/// Dissolved CO2 that fish without added CO2 live with for good, mg/L: the ceiling where the keeper has not set one. Common
/// practice, no source.
inline constexpr double safe_co2_mg_l = 20;

/// Every pH that water can have whose carbonate hardness lies in a range: from its low end with `co2_mg_l` to its high end in
/// balance with outdoor air. Hardness as in carbonate.h.
Range reachable_ph(double temperature_c, const Range& kh_dkh, std::optional<double> gh_dgh, double co2_mg_l);

/// What the carbonate system makes of the shared windows: CO2 of the water as it is, from its pH and carbonate hardness, and
/// whether some carbonate hardness that all take can have a pH that all take, without more than `most_co2_mg_l`. Each empty where
/// what it needs is not known; the second also where a shared window is.
struct CarbonateReach {
  std::optional<double> co2_mg_l;
  std::optional<bool> reachable;
};
CarbonateReach carbonate_reach_of(const Windows& windows, double most_co2_mg_l);

}  // namespace shoalwright
