// SPDX-License-Identifier: MIT
#pragma once

#include "catalog/species.h"
#include "plan/plan.h"

namespace shoalwright {

/// The tank that an adviser gives a kind of its own, made from its card alone: of the card's least length and litres for the
/// least group, larger in the measure of the group asked for; water in the middle of its ideal ranges, which the tap has; its
/// floor, hides, wood and cover; planted where it leaves plants alone; a run-in filter that moves what it likes, a heater where
/// the room is too cool, a lid. `count` of them swim in it. Common practice, no source.
Plan own_tank(const Species& species, int count);

}  // namespace shoalwright
