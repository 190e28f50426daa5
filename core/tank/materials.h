// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "plan/plan.h"

namespace shoalwright {

/// What has to be bought of one kind of piece.
struct MaterialLine {
  std::string kind;   ///< as the plan has it: an id of catalog/pieces.json, or one that is not known
  int count = 0;      ///< pieces
  double litres = 0;  ///< their solids
  double kg = 0;      ///< 0: bought by the piece, not by weight
  bool operator==(const MaterialLine&) const = default;
};

/// What has to be bought for the scape of a plan.
struct Materials {
  double substrate_l = 0;            ///< bulk, pores and grains
  double substrate_kg = 0;           ///< dry
  std::vector<MaterialLine> pieces;  ///< a kind each, in the order in which they come first in the plan
  double stone_kg = 0;               ///< of all that is weighed among the pieces
  bool operator==(const Materials&) const = default;
};

/// By the measures as they are; nothing is added for what is lost in washing or left over.
Materials materials_of(const Plan& plan);

}  // namespace shoalwright
