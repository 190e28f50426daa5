// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "stocking/stock.h"

namespace shoalwright {

/// Whether the kind holds ground of its own, as against sharing the floor in a shoal.
bool holds_floor(const Species& species);

/// Floor that a group takes with `count` animals, cm2, holders in full view of each other; 0 for kinds that use none. Another
/// count than its own has no known sexes. The species must be known.
double floor_demand_cm2(const Kept& kept, int count);

/// The same of the group as it is, where `sight_factor` is what is left of the ground of holders whose sight of each other is
/// broken (territory.h).
double floor_taken_cm2(const Kept& kept, double sight_factor);

/// Floor that the whole stock takes, cm2. Every species must be known.
double floor_wanted_cm2(const std::vector<Kept>& stock, double sight_factor);

}  // namespace shoalwright
