// SPDX-License-Identifier: MIT
#include "tank/substrate.h"

namespace shoalwright {

SubstrateFacts substrate_facts(SubstrateKind kind) {
  switch (kind) {
    case SubstrateKind::bare: return {};
    case SubstrateKind::fine_sand:
    case SubstrateKind::coarse_sand: return {.porosity = 0.40, .grain_kg_m3 = 2650};
    case SubstrateKind::smooth_gravel:
    case SubstrateKind::sharp_gravel: return {.porosity = 0.38, .grain_kg_m3 = 2650};
    case SubstrateKind::planted_soil: return {.porosity = 0.55, .grain_kg_m3 = 2100};
  }
  return {};
}

}  // namespace shoalwright
