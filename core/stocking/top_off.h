// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"

namespace shoalwright {

/// What topping up with tap water adds, since vapour leaves everything behind that was dissolved in it. Mass balance. Empty: not
/// known, or the tap has none of it.
struct TopOff {
  double share_a_month = 0;  ///< of the water that turns to vapour in 30 days
  std::optional<double> gh_dgh_month, kh_dkh_month, nitrate_mg_l_month;
  /// Where a tank that has tap water changed and topped up ends, just before a change; without changes it never ends.
  std::optional<double> settles_gh_dgh;
};

inline constexpr double month_days = 30;

/// Empty where evaporation or water is not known, or nothing evaporates.
std::optional<TopOff> top_off(const Plan& plan, double net_l, const std::optional<double>& evaporation_l_d);

}  // namespace shoalwright
