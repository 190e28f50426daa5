// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

namespace shoalwright {

// Dry food by body mass. The slope of -0.25 stands between two published ones: maintenance energy at 26 degrees C of neon tetra
// and moonlight gourami (Sales, J. & Janssens, G.P.J. 2003. Nutrient requirements of ornamental fish. Aquatic Living Resources
// 16: 533-540) falls as mass^-0.27, resting metabolism (Clarke, A. & Johnston, N.M. 1999. Journal of Animal Ecology 68: 893-905)
// as mass^-0.20. The level, 2 % a day at 1 g and 25 degrees C, is common practice, no source.

/// Dry food of an adult of that mass at 25 degrees C, % of its wet mass a day, held within 0.3 to 3. 0 where the mass is not
/// above 0.
double adult_ration_pct(double mass_g);

/// How appetite changes from 25 degrees C: doubled by each 10 degrees, held within 0.5 to 1.5.
double appetite_factor(double temperature_c);

/// Dry food a day for `count` animals, g.
double daily_feed_g(double count, double mass_g, double ration_pct, double temperature_c);

/// How the words of the plan scale the adult ration: light is 1.1 times maintenance. Common practice, no source.
double ration_factor(Ration ration);

}  // namespace shoalwright
