// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "rules/facts.h"
#include "units/range.h"
#include "water/carbonate.h"

namespace shoalwright {

/// Dissolved CO2 that the plan allows, mg/L: the keeper's own ceiling, else the one of water/reach.h.
double co2_ceiling_mg_l(const Plan& plan);

/// The pH that a plan aims at beside every pH that its carbonate hardness can have: from the CO2 that is allowed to balance with
/// outdoor air.
struct AimedPh {
  CarbonateWater water;
  double ph = 0;
  Range reached;
  double under() const { return reached.low - ph; }
  double over() const { return ph - reached.high; }
};

/// An aim that its carbonate hardness does not give. Empty where it does, where the plan aims at no pH, where temperature or
/// carbonate hardness are not known, and under limits::unreachable_least_kh_dkh. Kits' errors are not in it.
std::optional<AimedPh> missed_ph_of(const Facts& facts);

/// Whether so low a pH at so high a KH could only come from acid: rule `acid` speaks of it, no other does.
bool wants_acid(const AimedPh& aimed);

/// The highest carbonate hardness, degrees, at which the aimed pH needs no more CO2 than `co2_mg_l`; 0 where none does.
double kh_for_ph_dkh(const AimedPh& aimed, double co2_mg_l);

}  // namespace shoalwright
