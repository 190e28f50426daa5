// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

namespace shoalwright {

/// What a substrate is made of. Both 0 for a bare bottom.
struct SubstrateFacts {
  double porosity = 0;     ///< share of the bulk volume between the grains, filled with water
  double grain_kg_m3 = 0;  ///< density of the grains
};

/// Quartz at 2650 kg/m3 with porosity 0.40 for sand (0.25 to 0.50) and 0.38 for gravel (0.25 to 0.40), freshly poured beds at the
/// high end: Freeze, R.A. & Cherry, J.A. 1979. Groundwater (ranges from memory). Baked planting soil 0.55 and 2100 kg/m3: common
/// practice, no source.
SubstrateFacts substrate_facts(SubstrateKind kind);

}  // namespace shoalwright
