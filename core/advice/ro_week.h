// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"
#include "units/range.h"
#include "water/window.h"

namespace shoalwright {

/// Reverse-osmosis water that a plan's changes take in a week, and what making it sends to the drain.
struct RoWeek {
  double ro_l = 0;
  Range drain_l;  ///< one figure where the keeper's own filter is known
};

/// `drain_l_per_l`: litres to the drain for each litre made; empty: the usual range (ro_reject_l_per_l, common practice, no
/// source). Empty where the plan aims at no hardness, changes no water, or the recipe takes no such water or is not known.
std::optional<RoWeek> ro_week(const Plan& plan, const Windows& windows, double net_l, std::optional<double> drain_l_per_l);

}  // namespace shoalwright
