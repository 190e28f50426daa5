// SPDX-License-Identifier: MIT
#include "stocking/course.h"

#include <algorithm>

#include "water/change.h"

namespace shoalwright {

std::vector<CoursePoint> nitrate_course(const Plan& plan, const Load& load, const Volume& volume, double days) {
  constexpr std::size_t most_points = 4000;
  const std::optional<double> rise = nitrate_rise_mg_l_d(load, volume);
  if (!load.nitrate_peak_mg_l || !load.nitrate_trough_mg_l || !rise || !plan.upkeep || !plan.source.nitrate_mg_l) return {};
  days = std::clamp(days, 0.0, 3650.0);
  const double every = plan.upkeep->every_days, source = *plan.source.nitrate_mg_l;
  double now = *load.nitrate_trough_mg_l;
  if (plan.measured && plan.measured->nitrate_mg_l) now = *plan.measured->nitrate_mg_l;
  std::vector<CoursePoint> course{{0, now}};
  double day = 0;
  while (day + every <= days && course.size() < most_points) {
    day += every;
    now += *rise * every;
    course.push_back({day, now});
    now = after_changes(now, source, {plan.upkeep->change_fraction});
    course.push_back({day, now});
  }
  if (day < days) course.push_back({days, now + *rise * (days - day)});
  return course;
}

}  // namespace shoalwright
