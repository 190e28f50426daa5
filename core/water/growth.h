// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "units/range.h"

namespace shoalwright {

// How nitrifying bacteria grow. Ammonia oxidisers turn ammonia into nitrite: US EPA 1975 and 1993. Nitrogen control manual,
// EPA/625/R-93/010 (0.47 a day at 15 degrees C and 1.3 mg/L of oxygen from memory). Nitrite oxidisers turn nitrite into nitrate:
// after Reichert, P. et al. 2001. River Water Quality Model No. 1 (from memory), slowed by NH3 as Park, S. & Bae, W. 2009.
// Process Biochemistry 44: 631-640 have it, simplified. Nitrogen in mg/L as nitrogen, growth a day, bacteria as volatile solids.
//
// In range: 5 to 30 degrees C, held there; up to 33 the value at 30 stands. Oxygen 0 to 20 mg/L. pH: ammonia.h.

inline constexpr Range growth_temperature_c{5, 30}, growth_oxygen_mg_l{0, 20};

/// mg of bacteria that grow on 1 mg of nitrogen turned over (from memory), and the share of them that dies a day.
inline constexpr double ammonia_oxidisers_per_n = 0.15, nitrite_oxidisers_per_n = 0.04, bacteria_die_d = 0.05;

/// Half saturation of nitrite oxidisers with nitrite (from memory), mg/L.
inline constexpr double nitrite_half_mg_l = 0.5;

/// Fastest growth, with all they want.
double ammonia_oxidisers_fastest_d(double temperature_c);
double nitrite_oxidisers_fastest_d(double temperature_c);

/// Total ammonia nitrogen at which ammonia oxidisers grow half as fast as they could; it rises with temperature, so that in a
/// tank, far below it, they turn over nearly in proportion to what there is.
double ammonia_half_mg_l(double temperature_c);

/// What acid water leaves of growth: 1 from pH 7.2 up, 0 from pH 6 down. Measured on bacteria that were not used to it; films
/// that are work on below pH 6.5. Say "slow and unreliable", never "none".
double growth_left_by_acid(double ph);

/// All that temperature, oxygen and pH decide.
struct Growth {
  double ammonia_fastest_d = 0, ammonia_half_mg_l = 0;
  double nitrite_fastest_d = 0;
  double nh3_share = 0;  ///< of the total ammonia nitrogen
};
Growth growth_in(double temperature_c, double oxygen_mg_l, double ph);

/// Growth a day, deaths not taken off; less than nothing counts as nothing.
double ammonia_oxidisers_growth_d(const Growth& growth, double tan_mg_l);
double nitrite_oxidisers_growth_d(const Growth& growth, double nitrite_n_mg_l, double tan_mg_l);

/// Total ammonia nitrogen at which as many ammonia oxidisers grow as die: what a settled filter leaves, whatever the load. Empty
/// where they die faster than they can grow.
std::optional<double> tan_at_balance_mg_l(const Growth& growth);

}  // namespace shoalwright
