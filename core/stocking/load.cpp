// SPDX-License-Identifier: MIT
#include "stocking/load.h"

#include "plan/defaults.h"
#include "stocking/body.h"
#include "stocking/limits.h"
#include "stocking/ration.h"
#include "water/change.h"
#include "water/nitrogen.h"

namespace shoalwright {

namespace {

/// Dry food a day, the mean of a week, at adult size.
std::optional<double> feed_of(const Plan& plan, const std::vector<Kept>& stock, const Windows& water) {
  if (stock.empty()) return 0;
  if (!plan.feeding || !water.temperature_c.now) return std::nullopt;
  double feed_g_d = 0;
  for (const Kept& kept : stock) {
    if (!kept.species) return std::nullopt;
    const double mass_g = adult_mass_g(*kept.species);
    feed_g_d += daily_feed_g(kept.count, mass_g, adult_ration_pct(mass_g), *water.temperature_c.now);
  }
  return feed_g_d * ration_factor(plan.feeding->ration) * (7 - plan.feeding->fasting_days) / 7;
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

Load load_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume, const Windows& water) {
  Load load;
  load.feed_g_d = feed_of(plan, stock, water);
  if (!load.feed_g_d) return load;
  load.tan_mg_d = tan_from_feed_mg(*load.feed_g_d, dry_food_protein_share);
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
