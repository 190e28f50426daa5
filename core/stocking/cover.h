// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "catalog/piece_kind.h"
#include "plan/plan.h"

namespace shoalwright {

/// Where animals can get out of sight.
struct Cover {
  double pieces_share = 0;      ///< shelter of the pieces, as a share of the floor seen from above, at most 1
  std::optional<double> share;  ///< the same with the planting beyond the pieces; empty where the planting is not known
  int hides = 0;                ///< hiding places, each for one animal or a pair
  bool operator==(const Cover&) const = default;
};

/// Each piece gives its outline seen from above times the shelter of its kind, wherever it stands: leaves over leaves count
/// twice, which the whole floor bounds. How much that is worth is common practice, no source. Empty shares where the measures
/// span no tank.
Cover cover_of(const Plan& plan);

/// Area that a piece of this kind covers seen from above, cm2: the hull of what is drawn, without the thickness of branches.
double outline_cm2(const PieceKind& kind, double length_cm, double depth_cm);

/// Shelter of a planting beyond the drawn pieces, as a share of the floor.
double planting_shelter(Planting planting);

}  // namespace shoalwright
