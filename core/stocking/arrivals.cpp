// SPDX-License-Identifier: MIT
#include "stocking/arrivals.h"

#include <algorithm>

namespace shoalwright {

double arrival_feed_g_d(double all_g_d, int stage) { return std::clamp(stage_share * stage, 0.0, 1.0) * all_g_d; }

std::optional<double> weeks_lived_in(const Plan& plan) {
  std::optional<double> weeks = plan.running_weeks;
  for (const Group& line : plan.stock)
    if (line.have > 0 && line.since_weeks) weeks = std::max(weeks.value_or(0), static_cast<double>(*line.since_weeks));
  return weeks;
}

std::optional<double> weeks_at_arrival(const Plan& plan, const Group& line) {
  const std::optional<double> now = weeks_lived_in(plan);
  if (!now || !line.arrives_week) return now;
  return std::max(*now, static_cast<double>(*line.arrives_week));
}

}  // namespace shoalwright
