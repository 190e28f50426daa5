// SPDX-License-Identifier: MIT
#include "stocking/work.h"

#include <cmath>

namespace shoalwright {

std::optional<ChangeWork> change_work(const Plan& plan, const Volume& volume) {
  if (!plan.upkeep || !(plan.upkeep->change_fraction > 0) || !(plan.upkeep->every_days > 0) || !(volume.net_l > 0))
    return std::nullopt;
  ChangeWork work;
  work.litres = plan.upkeep->change_fraction * volume.net_l;
  work.buckets = static_cast<int>(std::ceil(work.litres / bucket_l - 1e-9));
  const double a_week = 7 / plan.upkeep->every_days;
  work.litres_a_week = work.litres * a_week;
  work.minutes_a_week = (minutes_besides + minutes_a_bucket * work.buckets) * a_week;
  return work;
}

}  // namespace shoalwright
