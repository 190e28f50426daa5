// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "water/carbonate.h"

namespace shoalwright {

/// Saturation index of calcite: decimal logarithm of what dissolved lime comes to over what the water can hold. 0: just
/// saturated; above 0.3 scale is likely on glass and heater, below -1 the water slowly takes lime from stones (common practice,
/// no source). `calcium_share` of the general hardness, 0 to 1. pH and CO2 are taken as measured, whatever the carbonate
/// hardness. Plummer & Busenberg 1982 (equilibrium.h); pairs of ions are left out, within 0.08 of PHREEQC, which has them. Empty
/// where there is no calcium or no CO2. Ranges: carbonate.h.
std::optional<double> calcite_index(const CarbonateWater& water, double calcium_share, double ph, double co2_mg_l);

}  // namespace shoalwright
