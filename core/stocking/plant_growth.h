// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"
#include "stocking/load.h"

namespace shoalwright {

// Plants as a sink of nitrogen: it leaves the tank only with what is cut and taken out; dying leaves give it back, and low light
// stalls it.

/// Growth a day, as a share of what is there: slow rosettes, ordinary plants, fast stems, floating plants under light. Chosen
/// from 0.007 to 0.109 in 14 submerged species at 15 degrees C, rich in nutrients and carbon (Nielsen, S.L. & Sand-Jensen, K.
/// 1991. Aquatic Botany), and 0.019 for waterweed in the field.
inline constexpr double slow_growth_d = 0.01, ordinary_growth_d = 0.03, fast_growth_d = 0.06, floating_growth_d = 0.10;
/// Nitrogen in dry plant, mg/g: mean of three ditch species, Hill 1979 (15 to 40 are normal, from memory).
inline constexpr double plant_nitrogen_mg_g = 26.5;
/// The most that a whole planted water was seen to take, mg of nitrogen a day for a square metre: Liu et al. 2016, milfoil in
/// water rich in nutrients.
inline constexpr double plant_nitrogen_most_mg_m2_d = 158;

/// Nitrogen that growing plants take up, mg a day, from their dry mass (0.06 to 0.10 of the fresh mass); 0 for what does not
/// grow.
double plant_nitrogen_mg_d(double dry_g, double growth_d, double nitrogen_mg_g = plant_nitrogen_mg_g);

/// What the plants of a plan may take of its ammonia nitrogen, mg a day: ordinary growth of all that stands in the water, never
/// more than the whole planted water above over the floor, nor than half of what there is (common practice, no source). No
/// verdict counts on it. Empty where the planting is not known.
inline constexpr double plants_take_most = 0.5;
std::optional<double> plants_may_take_mg_d(const Plan& plan, double tan_mg_d);

/// The settled peak of nitrate, mg/L as NO3, where plants take what they may of the nitrogen and it is cut and taken out. Shown
/// beside the peak that verdicts rest on. Empty where that peak or the planting is not known, or nothing is planted.
std::optional<double> nitrate_peak_with_plants(const Plan& plan, const Load& load, const Volume& volume);

/// Days in which plants double. Empty for what does not grow.
std::optional<double> doubling_days(double growth_d);

}  // namespace shoalwright
