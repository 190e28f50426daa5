// SPDX-License-Identifier: MIT
#pragma once

#include "units/range.h"

namespace shoalwright {

// Food by weight and by the mouth that takes it.

/// Dry matter of flake and granules, and of frozen bloodworm, brine shrimp and daphnia (0.06 to 0.14), as a share. Common
/// practice, no source.
inline constexpr double dry_food_dry_matter = 0.93, frozen_food_dry_matter = 0.10;

/// Frozen or fresh food, g, with as much dry matter as `dry_g` of dry food; 0 where it has none.
double frozen_for_dry_g(double dry_g, double dry_matter_dry = dry_food_dry_matter,
                        double dry_matter_frozen = frozen_food_dry_matter);

/// Width of a mouth, mm, from its share of the body's length.
double gape_mm(double gape_share, double length_cm);

/// Best diameter of a pellet for a mouth, mm: 0.4 of it. Accepted from a quarter to a half: guidance on weaning feeds as given
/// out by extension services.
double pellet_mm(double gape_mm);
Range accepted_pellet_mm(double gape_mm);

/// Best width of a first food for a larva's mouth of that width, micrometres: 0.40 of it, as turbot larvae choose (0.40 +- 0.04
/// of mouth width: Cunha & Planas 1999, authors from memory). Accepted from 0.2 to 0.6; wider than 0.9 does not pass.
double first_food_um(double mouth_um);
Range accepted_first_food_um(double mouth_um);

}  // namespace shoalwright
