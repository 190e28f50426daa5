// SPDX-License-Identifier: MIT
#include "stocking/top_off.h"

#include "water/change.h"

namespace shoalwright {

std::optional<TopOff> top_off(const Plan& plan, double net_l, const std::optional<double>& evaporation_l_d) {
  if (!evaporation_l_d || !(*evaporation_l_d > 0) || !(net_l > 0)) return std::nullopt;
  const double share_a_day = *evaporation_l_d / net_l;
  TopOff adds;
  adds.share_a_month = share_a_day * month_days;
  const auto month = [&](const std::optional<double>& tap) {
    return tap && *tap > 0 ? std::optional(*tap * adds.share_a_month) : std::nullopt;
  };
  adds.gh_dgh_month = month(plan.source.gh_dgh);
  adds.kh_dkh_month = month(plan.source.kh_dkh);
  adds.nitrate_mg_l_month = month(plan.source.nitrate_mg_l);
  if (plan.upkeep && adds.gh_dgh_month)
    adds.settles_gh_dgh = settled_peak({.rise_per_day = share_a_day * *plan.source.gh_dgh,
                                        .every_days = plan.upkeep->every_days,
                                        .fraction = plan.upkeep->change_fraction,
                                        .source = *plan.source.gh_dgh});
  return adds;
}

}  // namespace shoalwright
