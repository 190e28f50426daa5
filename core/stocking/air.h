// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "plan/plan.h"
#include "stocking/oxygen_use.h"
#include "stocking/stock.h"
#include "tank/volume.h"

namespace shoalwright {

/// Oxygen where a night ends, mg/L, as if the night were long enough for it to settle: an estimate on the safe side. 0 where the
/// use exceeds what comes in: say that instead of a number.
double dawn_oxygen_mg_l(double saturation_mg_l, double supply_l_h, const OxygenUse& night, double fish_factor = 1);

/// The same for the highest and the lowest use that fish may have (oxygen_use.h).
Range dawn_band_mg_l(double saturation_mg_l, double supply_l_h, const OxygenUse& night);

/// Oxygen that the stock wants at all times, mg/L: the most that a card asks for, 5 for a kind whose card does not say ("no
/// effect" in general; original source not known), never under 4, which the bacteria of a filter want also where fish breathe
/// air. Common practice, no source. Empty without animals that are known.
std::optional<double> oxygen_wanted_mg_l(const std::vector<Kept>& stock);

/// Dissolved oxygen, lowest before dawn. Empty: not known because an input was not given.
struct Air {
  std::optional<double> saturation_mg_l, dawn_mg_l, dawn_low_mg_l, limit_mg_l, demand_mg_h;
  bool operator==(const Air&) const = default;
};

/// What a tank does to its oxygen whoever lives in it. Empty as in Air.
struct AirOfTank {
  std::optional<double> saturation_mg_l, supply_l_h, plants_mg_h;
};
AirOfTank air_of_tank(const Plan& plan, const Volume& volume, std::optional<double> water_c);

/// Saturation at sea level; before dawn, with the lower end of the band of fish; what the stock wants; use in the dark. The whole
/// stock at adult size after a day on which it was fed. Unknown species, food or planting leave use and dawn empty, unknown
/// surface and flow the dawn, an unknown temperature all but the limit. Another temperature than the plan's tells of a heat wave.
Air air_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume, std::optional<double> water_c);
Air air_of(const Plan& plan, const std::vector<Kept>& stock, const AirOfTank& tank, const std::optional<Burden>& burden);

}  // namespace shoalwright
