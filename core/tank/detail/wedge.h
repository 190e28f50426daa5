// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

namespace shoalwright {

/// Depths of the substrate as they count: none when bare, never negative.
Substrate settled_substrate(const Plan& plan);

/// Height of the slope alone at the centroid of the floor, cm.
double mean_slope_cm(const Plan& plan);

/// Space between the substrate and a level plane at `height_cm` above the inside bottom, cm3; the rim is not looked at.
double space_over_substrate_cm3(const Plan& plan, double height_cm);

/// Area of that plane where the substrate lies below it, cm2.
double area_over_substrate_cm2(const Plan& plan, double height_cm);

}  // namespace shoalwright
