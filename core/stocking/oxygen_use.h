// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "plan/plan.h"
#include "stocking/burden.h"
#include "stocking/stock.h"

namespace shoalwright {

// Oxygen that fish, bacteria and plants take from the water.

/// Oxygen that a resting fish uses, mg/h. A line across 69 species between 0 and 30 degrees C, drawn on to 40 and held there:
/// Clarke, A. & Johnston, N.M. 1999. Scaling of metabolic rate with body mass and temperature in teleost fish. Journal of Animal
/// Ecology 68: 893-905 (rate of a 50 g fish; joining it to their general power of mass, 0.80, is ours). 0 where the mass is not
/// above 0. Probably high for tropical fish at rest: 489 mg/kg/h for a zebrafish of 0.49 g at 24 degrees C, where Lucas & Priede
/// 1992, Journal of Fish Biology, measured 364 at rest and 560 in groups, and Barrionuevo & Burggren 1999 128 to 160 in adults at
/// 28 degrees C: hence the band below.
double resting_oxygen_mg_h(double mass_g, double temperature_c);

/// What the use of fish is known within, as a share of the above.
inline constexpr double fish_use_low = 0.5, fish_use_high = 1.5;

/// Times the resting rate: asleep; on an ordinary day (by the zebrafish in groups); for hours after a full meal, chasing or on
/// arrival; at most (1223 mg/kg/h, Lucas & Priede 1992).
inline constexpr double use_asleep = 1.0, use_by_day = 1.25, use_after_meal = 2.0, use_at_most = 2.5;

/// One rate over a resting one; 0 where that is not above 0.
double over_resting(double rate, double resting);

/// By what a rate grows over 10 degrees when it is `low` at `low_c` and `high` at `high_c`. 1.83 between species by the line
/// above from 0 to 30 degrees C; 2.40, the median within one species (same source), for fish that are warmed. Not a number where
/// the temperatures are the same.
double growth_over_10_c(double low, double low_c, double high, double high_c);

/// Oxygen that fish use for a gram of dry food, g/g: gross energy, kJ/g (18 to 20), share of it that can be used (0.65 to 0.75),
/// share of that which is laid down as growth (0 in adults, 0.35 in fast growers). 13.6 kJ for a gram of oxygen: Elliott, J.M. &
/// Davison, W. 1975. Energy equivalents of oxygen consumption in animal energetics. Oecologia 19: 195-201 (from memory). A
/// cross-check.
double oxygen_for_feed_g_g(double gross_energy_kj_g = 19, double usable_share = 0.70, double growth_share = 0);

/// Oxygen for turning the ammonia nitrogen of a day into nitrate, mg/h.
double nitrification_oxygen_mg_h(double n_mg_d);

/// Oxygen for the decay of faeces and what is not eaten, mg/h, a quarter of the dry food of the day (0.1 to 0.5). Common
/// practice, no source.
double decay_oxygen_mg_h(double feed_g_d);

/// Oxygen that plants use in the dark, mg/h: 1 mg for each gram of dry plant (0.5 to 3; from memory). Ten grams dry weigh about
/// 150 g fresh.
double dark_plant_oxygen_mg_h(double dry_g);

/// Dry plant on a square metre of floor by the word of the plan, g. Common practice, no source.
double planting_dry_g_m2(Planting planting);

/// Dry plant in the water of a plan, g: by the word, and drawn pieces as medium stands on their outline, as full as their kind.
/// Floating ones breathe above the water. Never more than a dense stand over the whole floor. Empty where the planting is not
/// known.
std::optional<double> plants_dry_g(const Plan& plan);
/// Oxygen that they use in the dark, mg/h.
std::optional<double> plants_dark_oxygen_mg_h(const Plan& plan);

/// What uses oxygen, mg/h.
struct OxygenUse {
  double fish_mg_h = 0;  ///< animals of the stock
  double nitrification_mg_h = 0, decay_mg_h = 0;
  double plants_mg_h = 0;
  double total_mg_h(double fish_factor = 1) const {
    return fish_factor * fish_mg_h + nitrification_mg_h + decay_mg_h + plants_mg_h;
  }
  bool operator==(const OxygenUse&) const = default;
};

/// Animals that rest at `resting_mg_h` together, times `activity`, and the bacteria that live on `feed_g_d` of dry food with that
/// share of protein, spread evenly over the day. No plants.
OxygenUse oxygen_use(double resting_mg_h, double activity, double feed_g_d, double protein_share);

/// The whole stock at adult size asleep in the dark, after a day on which it was fed. Empty where a species is not known, or food
/// of a stock, or the planting.
std::optional<OxygenUse> night_oxygen_use(const Plan& plan, const std::vector<Kept>& stock, double temperature_c);
std::optional<OxygenUse> night_oxygen_use(const Plan& plan, std::optional<double> plants_mg_h,
                                          const std::optional<Burden>& burden);

/// The same stock after a full meal with the lamps on, when plants use none.
OxygenUse after_meal(OxygenUse night);

}  // namespace shoalwright
