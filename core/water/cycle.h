// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "units/range.h"

namespace shoalwright {

// How a new filter comes to work: ammonia, nitrite, nitrate and the bacteria that turn one into the next, day by day, a litre of
// tank at a time. Rates: growth.h. Nitrogen in mg/L as nitrogen; none of it goes into bacteria. Temperature, oxygen and pH stay
// as given. Nobody measures how many bacteria there are at the start, and the answer hangs on it: show what comes out with ten
// times as many and with a tenth as a range, never one date.

/// What water changes exchange.
struct CycleWater {
  double tan_mg_l = 0, nitrite_n_mg_l = 0, nitrate_n_mg_l = 0;
  double kh_dkh = 0;  ///< below 0 all of it is spent: the water turns sour, and the pH that was given no longer stands
};

/// Bacteria on glass, gravel and filter, mg of volatile solids for each litre of tank. Water changes leave them.
struct Bacteria {
  double ammonia_oxidisers_mg_l = 0, nitrite_oxidisers_mg_l = 0;
};

/// With nothing brought along: about four weeks at 26 degrees C, as most take three to six. Common practice, no source.
inline constexpr Bacteria unseeded{1e-5, 1e-7};
/// With a little mud or an old sponge squeezed out. Common practice, no source.
inline constexpr Bacteria lightly_seeded{1e-4, 1e-5};

/// What a share (0 to 1) of the media of a settled filter brings; `carried_mg_l_d`: nitrogen that this filter turns over a day
/// for each litre of the new tank. A settled filter grows as much as dies.
Bacteria seeded(double share_of_media, double carried_mg_l_d);

struct CycleState {
  CycleWater water;
  Bacteria bacteria = unseeded;
};

/// Ammonia given at the end of each day on which it is below the first, up to the second.
struct CycleDosing {
  double below_mg_l = 0.5, up_to_mg_l = 2;
};

/// A water change at the end of a day (1, 2, ...).
struct CycleChange {
  int day = 0;
  double fraction = 0;  ///< of the water, 0 to 1
};

struct Cycle {
  double temperature_c = 25, oxygen_mg_l = 7, ph = 7.5;
  double load_mg_l_d = 0;           ///< ammonia nitrogen from animals, a litre a day
  double equivalents_per_mole = 1;  ///< alkalinity that it brings: 1 as NH3 (gills, rot, ammonia water), 0 as ammonium salt
  CycleState start;                 ///< a first dose is in it, with the alkalinity that it brought
  std::optional<CycleDosing> dosing;
  std::vector<CycleChange> changes;  ///< in any order
  CycleWater fresh;                  ///< what replaces the water taken out
};

/// What the model takes: beyond 33 degrees C it does not predict; the rest is held at the nearer edge.
inline constexpr Range cycle_temperature_c{5, 33}, cycle_load_mg_l_d{0, 50}, cycle_nitrogen_mg_l{0, 1000},
    cycle_bacteria_mg_l{0, 200};
inline constexpr int cycle_most_days = 400;

/// Whether the model predicts and nothing is held at an edge.
bool cycle_valid(const Cycle& cycle);

/// A tank is ready on the first day that ends with ammonia and nitrite below this, mg/L, just a day after a dose. Common
/// practice, no source.
inline constexpr double cycle_ready_below_mg_l = 0.25;

struct CycleRun {
  std::vector<CycleState> day_ends;  ///< first the start, then each day: after its water change, before its dose
  double highest_tan_mg_l = 0, highest_nitrite_n_mg_l = 0;  ///< at any time
  std::optional<int> ready_day;                             ///< empty without dosing, and where it takes longer than the run
};

/// Empty outside `cycle_temperature_c` and for a number of days below 0 or above `cycle_most_days`.
std::optional<CycleRun> run_cycle(const Cycle& cycle, int days);

}  // namespace shoalwright
