// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "assess/assessment.h"
#include "rules/facts.h"

namespace shoalwright {

/// Every margin that the plan has, the one with least to spare for its scale first: the width of the tolerated window for water, what is
/// needed or allowed for the rest. A margin that an unknown value withholds is left out. In a layer that has room fish spread until no
/// depth is over, so there the tightest depth is never past its room.
std::vector<Tightest> tightest_margins(const Facts& facts);

}  // namespace shoalwright
