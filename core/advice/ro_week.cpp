// SPDX-License-Identifier: MIT
#include "advice/ro_week.h"

#include "advice/recipe_card.h"

namespace shoalwright {

std::optional<RoWeek> ro_week(const Plan& plan, const Windows& windows, double net_l, std::optional<double> drain_l_per_l) {
  if (!plan.water || !(plan.water->gh_dgh || plan.water->kh_dkh)) return std::nullopt;
  if (!plan.upkeep || !(plan.upkeep->change_fraction > 0) || !(plan.upkeep->every_days > 0)) return std::nullopt;
  const Recipe recipe = recipe_for(plan.source, planned_aim(plan, windows), plan.salts);
  if (!recipe.ro_fraction || !(*recipe.ro_fraction > 0)) return std::nullopt;
  const Range drain = drain_l_per_l ? Range{*drain_l_per_l, *drain_l_per_l} : ro_reject_l_per_l;
  RoWeek week;
  week.ro_l = *recipe.ro_fraction * plan.upkeep->change_fraction * net_l * 7 / plan.upkeep->every_days;
  week.drain_l = {drain.low * week.ro_l, drain.high * week.ro_l};
  return week;
}

}  // namespace shoalwright
