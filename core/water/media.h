// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "units/range.h"

namespace shoalwright {

// How much ammonia filter media turn over. Glass, gravel, plants and wood do too: what a filter can do is the least that a
// settled tank can. Nitrogen in mg.

/// Nitrogen that a clean film of bacteria takes up, mg a day for each m2 at 27.2 degrees C, with so much total ammonia nitrogen
/// in the water; 0 up to 0.07 mg/L. Zhu, S. & Chen, S. 1999. Aquacultural Engineering 20: 245-259.
double film_uptake_mg_m2_d(double tan_mg_l);

/// What temperature makes of it: 4.3 % for each degree C as long as ammonia, not oxygen, is short (Zhu & Chen 2002); carried on
/// as a power beyond their measurements. Held within 5 to 30 degrees C. 1 at 27.2.
inline constexpr Range film_temperature_c{5, 30};
double film_temperature_factor(double temperature_c);

/// What a settled tank should stay below, mg/L of total ammonia nitrogen. Common practice, no source.
inline constexpr double film_target_tan_mg_l = 0.2;
/// What mud and other bacteria leave of a clean film: 30 to 50 % are lost (Michaud et al. 2006); clean: 1.
inline constexpr double film_left_by_mud = 0.5;
/// Surface of media that are not named, m2 in a m3. Common practice, no source.
inline constexpr double media_unnamed_m2_m3 = 500;

/// Surface, m2, that takes up so much a day and leaves the water at so much; `left` of a clean film. Empty where no surface does:
/// uptake 0, `left` not above 0.
std::optional<double> film_needed_m2(double n_mg_d, double tan_mg_l, double left);

/// Litres of media that have that surface; empty where they have none.
std::optional<double> media_needed_l(double surface_m2, double media_m2_m3);

/// Nitrogen that so many litres take up in a day with so much in the water, mg.
double media_uptake_mg_d(double media_l, double media_m2_m3, double tan_mg_l, double left);

/// Surface of a bed of round grains, m2 in a m3 of bed; `porosity` 0 to 1 is the water between them. Geometry. Much of fine
/// gravel clogs. Empty for grains without size.
std::optional<double> round_grains_m2_m3(double grain_mm, double porosity);

}  // namespace shoalwright
