// SPDX-License-Identifier: MIT
#include "stocking/load.h"

#include "plan/defaults.h"
#include "stocking/limits.h"
#include "stocking/ration.h"
#include "units/convert.h"
#include "water/ammonia.h"
#include "water/change.h"
#include "water/media.h"
#include "water/nitrogen.h"

namespace shoalwright {

namespace {

/// Dry food a day, the mean of a week.
std::optional<double> feed_of(const Plan& plan, const std::optional<Burden>& burden) {
  if (!burden) return std::nullopt;
  if (burden->feed_g_d == 0) return 0;
  if (!plan.feeding) return std::nullopt;
  return burden->feed_g_d * ration_factor(plan.feeding->ration) * (7 - plan.feeding->fasting_days) / 7;
}

}  // namespace

double nitrate_limit_mg_l(const Plan& plan) {
  return plan.limits.nitrate_mg_l.value_or(default_nitrate_mg_l[static_cast<int>(plan.strictness)]);
}

std::optional<double> nitrate_rise_mg_l_d(const Load& load, const Volume& volume) {
  if (!load.tan_mg_d || !(volume.net_l > 0)) return std::nullopt;
  return nitrate_from_tan_mg_l(*load.tan_mg_d, volume.net_l);
}

bool never_changed(const Plan& plan) { return plan.upkeep && plan.upkeep->change_fraction == 0; }

std::optional<double> nitrate_reached_mg_l(const Plan& plan, const Load& load, const Volume& volume) {
  const std::optional<double> rise = nitrate_rise_mg_l_d(load, volume);
  if (never_changed(plan) && rise && plan.source.nitrate_mg_l) return *plan.source.nitrate_mg_l + *rise * unchanged_days;
  return load.nitrate_peak_mg_l;
}

double load_index(double nitrate_rise_mg_l_d) { return 7 * nitrate_rise_mg_l_d / load_nitrate_mg_l; }

namespace {

/// Un-ionised ammonia of the measured sum, at the measured pH and temperature, else at those aimed at.
std::optional<double> nh3_of(const Plan& plan, const Windows& water) {
  if (!plan.measured || !plan.measured->ammonia_mg_l) return std::nullopt;
  const Measured& measured = *plan.measured;
  const std::optional<double> temperature_c = measured.temperature_c ? measured.temperature_c : water.temperature_c.now,
                              ph = measured.ph ? measured.ph : water.ph.now;
  if (!temperature_c || !ph) return std::nullopt;
  return nh3_from_n(nh3_n_from_tan_mg_l(*measured.ammonia_mg_l, *temperature_c, *ph));
}

}  // namespace

Load load_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume, const Windows& water) {
  return load_of(plan, burden_of(stock, water.temperature_c.now), volume, water);
}

Load load_of(const Plan& plan, const std::optional<Burden>& burden, const Volume& volume, const Windows& water) {
  Load load;
  load.ammonia_nh3_mg_l = nh3_of(plan, water);
  load.feed_g_d = feed_of(plan, burden);
  if (!load.feed_g_d) return load;
  load.tan_mg_d = tan_from_feed_mg(*load.feed_g_d, dry_food_protein_share);
  if (volume.net_l > 0) load.kh_drift_dkh_week = -kh_drop_dkh(7 * *load.tan_mg_d / volume.net_l, 1);
  if (water.temperature_c.now)
    if (const std::optional<double> film_m2 = film_needed_m2(*load.tan_mg_d, film_target_tan_mg_l, film_left_by_mud))
      load.media_needed_l = media_needed_l(*film_m2 / film_temperature_factor(*water.temperature_c.now), media_unnamed_m2_m3);
  const std::optional<double> rise = nitrate_rise_mg_l_d(load, volume);
  if (!rise || !plan.upkeep || !plan.source.nitrate_mg_l) return load;
  const SawTooth changes{.rise_per_day = *rise,
                         .every_days = plan.upkeep->every_days,
                         .fraction = plan.upkeep->change_fraction,
                         .source = *plan.source.nitrate_mg_l};
  load.nitrate_peak_mg_l = settled_peak(changes);
  load.nitrate_trough_mg_l = settled_trough(changes);
  load.change_needed_fraction = fraction_for_peak(changes, nitrate_limit_mg_l(plan));
  if (load.change_needed_fraction && *load.change_needed_fraction > 1) load.change_needed_fraction.reset();
  return load;
}

}  // namespace shoalwright
