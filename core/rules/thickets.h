// SPDX-License-Identifier: MIT
#pragma once

#include "rules/facts.h"

namespace shoalwright {

/// Shelter as a share of the floor that is lacking, put in as the fewest pieces, and those no larger than needed; as many as one
/// remedy may add where no number gives it. Stems, or stone where somebody in the stock eats most plants.
void remedy_by_thickets(const Facts& facts, double lack_share, Finding& finding);

}  // namespace shoalwright
