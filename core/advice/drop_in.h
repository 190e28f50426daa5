// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "assess/assess.h"

namespace shoalwright {

/// What would be new if `count` more of a kind were dropped into the plan: findings that are not there, or not as grave, without
/// them, worst first. `now`: the assessment of the plan as it is. `known`: what bodies find in this plan or one like it. Nothing
/// for a count under 1.
std::vector<Finding> raised_by_dropping(const Plan& plan, const Catalog& catalog, const Species& species, int count,
                                        const Assessment& now, BodyRooms known = {}, Remedies remedies = Remedies::searched);

}  // namespace shoalwright
