// SPDX-License-Identifier: MIT
#pragma once

#include "scape/scape.h"

namespace shoalwright {

/// Growth through which an animal still sees another, cm along the line in all. Common practice, no source. A lower figure makes
/// thinner planting a sight break.
inline constexpr double seen_through_growth_cm = 6;

/// Whether two spots of the water see each other: no solid and no substrate, glass or air between them, and no more growth than
/// that. Looked at every half cell, so what is thinner than a cell may be looked past. Neither the order of the spots nor
/// mirroring the tank with them changes the answer. A spot that lies in something closed does not even see itself. Without pieces
/// there are no cells, and everything sees everything.
bool sees(const Scape& scape, const TankPoint& a, const TankPoint& b);

}  // namespace shoalwright
