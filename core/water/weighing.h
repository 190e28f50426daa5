// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "water/mix.h"

namespace shoalwright {

/// What a kitchen scale tells apart, g: a tenth under `weigh_whole_from_g`, whole grams from there on. Common practice, no
/// source.
inline constexpr double weigh_fine_g = 0.1, weigh_whole_from_g = 20;
/// Rounding may move GH and KH of the water by so much, degrees; where it would do more, the weights are told ten or a hundred
/// times finer, as for a jeweller's scale.
inline constexpr double weighed_within_dh = 0.1;

/// Grams of each dose for `water_l` litres as they are weighed, in the order of the doses; 0 where there is too little of one to
/// be weighed or missed.
std::vector<double> weighed_g(std::span<const SaltDose> doses, double water_l);

/// The step in which a weight is told and moved, g.
double weighing_step_g(double grams);

}  // namespace shoalwright
