// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "rules/facts.h"
#include "tank/sizes.h"

namespace shoalwright {

/// Puts the smallest usual tank into the finding that is nowhere smaller than the present one and `clears` (given the outside size and
/// the same tank inside), as words and as an edit where the tank is rectangular and not pinned. Where no usual tank will do, the remedy
/// is to leave the kind out.
void remedy_by_larger_tank(const Facts& facts, const Kept& kept, Finding& finding,
                           const std::function<bool(const UsualSize&, const Tank&)>& clears);

}  // namespace shoalwright
