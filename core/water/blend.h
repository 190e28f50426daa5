// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "water/carbonate.h"

namespace shoalwright {

// Two waters mixed. Hardness, alkalinity, inorganic carbon and temperature mix by share; pH does not: it follows from them. Mass
// balance; elementary.

/// What a mix comes to in any quantity that mixes by share. `share_of_first` is held within 0 to 1.
double mixed(double share_of_first, double first, double second);

/// Share of `first` that brings the mix to `target`; below 0 or above 1 where no mix does. Empty where both are the same.
std::optional<double> share_for(double target, double first, double second);

/// What mixing conserves. Alkalinity is told as degrees of carbonate hardness. Values within the ranges of carbonate.h.
struct Conserved {
  double kh_dkh = 0, gh_dgh = 0;
  double carbon_mol_l = 0;  ///< inorganic
};

/// Of a water whose CO2 (mg/L) is known, whose pH is known, or that stands in air of so much CO2, as pure water from a filter
/// does. Unknown general hardness counts as much as carbonate hardness.
Conserved conserved_with_co2(const CarbonateWater& water, double co2_mg_l);
Conserved conserved_at_ph(const CarbonateWater& water, double ph);
Conserved conserved_in_air(const CarbonateWater& water, double air_co2_atm);

Conserved mixed(double share_of_first, const Conserved& first, const Conserved& second);

/// With sodium or potassium hydrogen carbonate for so many degrees dissolved in it: each brings one carbon for one of alkalinity.
Conserved with_bicarbonate(const Conserved& water, double added_dkh);

/// pH before any CO2 has come or gone: right after mixing, in a closed vessel.
double ph_closed(const Conserved& water, double temperature_c);

/// pH once it has come to balance with air of so much CO2; the carbon that it held no longer matters.
double ph_after_standing(const Conserved& water, double temperature_c, double air_co2_atm);

}  // namespace shoalwright
