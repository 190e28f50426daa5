// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "catalog/species.h"

namespace shoalwright {

/// What one adult asks of a tank's measures, whatever the numbers. Inside measures, cm. 0: this kind has no such rule.
struct LeastTank {
  double run_cm = 0;                                 ///< lane of the life style x adult length: from here on nothing is said
  double run_least_cm = 0;                           ///< an empty tank with a shorter run than this hurts
  double width_cm = 0;                               ///< front to back, from here on nothing is said
  double width_least_cm = 0;                         ///< narrower than this it cannot turn
  std::optional<double> height_cm, height_least_cm;  ///< water over the substrate, for tall fish only
  std::optional<double> length_cm, volume_l;         ///< the catalogue's own least tank: length, and volume inside to the rim
};

LeastTank least_tank_of(const Species& species);

/// Lane wanted, cm: of the life style x adult total length; eel shapes four lengths; 0 for invertebrates.
double lane_needed_cm(const Species& species);

/// Run, cm, that a kind bears, so that a shorter one is a strain: a share of its lane, but never more than most of the least tank
/// of its card gives empty, which is what keepers of the kind go by (a lane is of the life style alone).
double bearable_lane_cm(const Species& species);

/// A run in body lengths; 0 where the length is not above 0.
double run_in_lengths(double run_cm, double length_cm);

}  // namespace shoalwright
