// SPDX-License-Identifier: MIT
#include "stocking/food.h"

namespace shoalwright {

double frozen_for_dry_g(double dry_g, double dry_matter_dry, double dry_matter_frozen) {
  return dry_matter_frozen > 0 ? dry_g * dry_matter_dry / dry_matter_frozen : 0;
}

double gape_mm(double gape_share, double length_cm) { return gape_share * length_cm * 10; }

double pellet_mm(double gape_mm) { return 0.4 * gape_mm; }

Range accepted_pellet_mm(double gape_mm) { return {0.25 * gape_mm, 0.5 * gape_mm}; }

double first_food_um(double mouth_um) { return 0.40 * mouth_um; }

Range accepted_first_food_um(double mouth_um) { return {0.2 * mouth_um, 0.6 * mouth_um}; }

}  // namespace shoalwright
