// SPDX-License-Identifier: MIT
#pragma once

#include "assess/assessment.h"
#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// All that follows from a plan. Pure: the same plan and catalogue give the same assessment. Any valid plan is answered.
Assessment assess(const Plan& plan, const Catalog& catalog);

/// Whether findings come with the remedies that need a search ("move the stone 6 cm back"), which takes up to a tenth of a
/// second.
enum class Remedies { at_once, searched };

/// The same for whoever asks again and again: the grid of the tank and its distances are kept in `bodies` and only what has
/// changed is worked out anew.
Assessment assess(const Plan& plan, const Catalog& catalog, BodyRooms& bodies, Remedies remedies = Remedies::searched);

}  // namespace shoalwright
