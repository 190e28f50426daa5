// SPDX-License-Identifier: MIT
#include "water/mix_aim.h"

#include "plan/defaults.h"
#include "water/reach.h"

namespace shoalwright {

namespace {

std::optional<double> middle(const std::optional<Range>& best, const std::optional<Range>& else_this) {
  const std::optional<Range>& range = best ? best : else_this;
  if (!range) return std::nullopt;
  return (range->low + range->high) / 2;
}

}  // namespace

MixAim least_ro_aim(const Plan& plan, const Windows& windows) {
  MixAim aim;
  aim.gh_dgh.window = windows.gh_dgh.tolerated;
  aim.kh_dkh.window = windows.kh_dkh.tolerated;
  aim.ph.window = windows.ph.tolerated;
  aim.temperature_c = windows.temperature_c.now;
  aim.ca_mg_ratio = plan.ca_mg_ratio.value_or(default_ca_mg_ratio);
  aim.most_co2_mg_l = plan.limits.co2_mg_l.value_or(safe_co2_mg_l);
  return aim;
}

MixAim planned_aim(const Plan& plan, const Windows& windows) {
  MixAim aim = least_ro_aim(plan, windows);
  if (plan.water) {
    aim.gh_dgh.aim = plan.water->gh_dgh;
    aim.kh_dkh.aim = plan.water->kh_dkh;
    aim.ph.aim = plan.water->ph;
  }
  return aim;
}

MixAim middle_aim(const Plan& plan, const Windows& windows) {
  MixAim aim = least_ro_aim(plan, windows);
  aim.gh_dgh.aim = middle(windows.gh_dgh.ideal, windows.gh_dgh.tolerated);
  aim.kh_dkh.aim = middle(windows.kh_dkh.ideal, windows.kh_dkh.tolerated);
  return aim;
}

MixAim aim_for_kind(const Plan& plan, const Windows& windows, const Species& species) {
  MixAim aim = least_ro_aim(plan, windows);
  const Species::WaterNeeds& needs = species.water;
  aim.gh_dgh = {middle(needs.gh_dgh.ideal, needs.gh_dgh.tolerated), needs.gh_dgh.tolerated};
  aim.kh_dkh = {middle(needs.kh_dkh.ideal, needs.kh_dkh.tolerated), needs.kh_dkh.tolerated};
  aim.ph.window = needs.ph.tolerated;
  const std::optional<double> temperature_c = middle(needs.temperature_c.ideal, needs.temperature_c.tolerated);
  if (temperature_c && !(plan.water && plan.water->temperature_c)) aim.temperature_c = temperature_c;
  return aim;
}

}  // namespace shoalwright
