// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "plan/plan.h"
#include "stocking/burden.h"
#include "stocking/stock.h"
#include "tank/volume.h"
#include "water/window.h"

namespace shoalwright {

/// Nitrogen that feeding puts into the water, and where it goes. Empty: not known because an input was not given.
struct Load {
  std::optional<double> feed_g_d, tan_mg_d;
  std::optional<double> nitrate_peak_mg_l, nitrate_trough_mg_l;  ///< settled saw-tooth under the present changes, as NO3
  std::optional<double> change_needed_fraction;  ///< smallest at the present rhythm that keeps the peak at the limit
  std::optional<double> kh_drift_dkh_week;       ///< what its oxidation takes in a week, below 0; net, since it came from food
  std::optional<double> media_needed_l;    ///< filter media that nobody has named, half clogged, to hold 0.2 mg/L of ammonia
  std::optional<double> ammonia_nh3_mg_l;  ///< un-ionised, as NH3, of what was measured
  bool operator==(const Load&) const = default;
};

/// The load of the whole stock at adult size. An unknown species, ration, temperature, rhythm of changes or nitrate of the source
/// leaves empty what it would enter. No stock feeds nothing: 0. `change_needed_fraction` is also empty where not even a whole
/// change at the present rhythm would do.
Load load_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume, const Windows& water);
Load load_of(const Plan& plan, const std::optional<Burden>& burden, const Volume& volume, const Windows& water);

/// Nitrate made in a day, mg/L as NO3, when all ammonia of `load` becomes nitrate. Empty without a load or without water.
std::optional<double> nitrate_rise_mg_l_d(const Load& load, const Volume& volume);

/// What nitrate comes to under the plan's changes, mg/L as NO3: the settled peak; without changes it never settles, and what a
/// year comes to stands for it. Empty when the stock's load or the tap's nitrate is not known.
std::optional<double> nitrate_reached_mg_l(const Plan& plan, const Load& load, const Volume& volume);
/// True when the plan says that no water is changed.
bool never_changed(const Plan& plan);

/// The weekly change, as a share of the water, that would hold nitrate 50 mg/L above the source: waste per litre that depends
/// neither on the changes made nor on the tap. Above 1 not even a whole change a week would do. Bands: stocking/limits.h.
double load_index(double nitrate_rise_mg_l_d);

/// The ceiling that the plan works to, mg/L as NO3: the keeper's own, else by strictness.
double nitrate_limit_mg_l(const Plan& plan);

}  // namespace shoalwright
