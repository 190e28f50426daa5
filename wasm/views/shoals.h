// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "plan/plan.h"
#include "stocking/stock.h"

namespace shoalwright {

/// One animal where the drawing shows it: cm from the left inside glass and below the water line, at adult size.
struct DrawnAnimal {
  double x_cm = 0, depth_cm = 0, length_cm = 0;
  float facing = -1;  ///< to the left; 1 to the right, between where it is turning
  float tilt = 0;     ///< radians, nose up is positive
};

struct Shoal {
  std::string species;
  const Species* card = nullptr;
  std::vector<DrawnAnimal> animals;  ///< at most 60 are drawn of a kind
};

/// Where the animals of each group swim in the drawing: at the depths of their kind, around a place of their own along the tank,
/// clear of those placed before. The same plan always gives the same picture, and one animal more moves none of the others.
std::vector<Shoal> place_shoals(const Plan& plan, const std::vector<Kept>& stock);

/// Whether that picture is the same for two plans: tank, substrate and stock make it, pieces do not.
bool same_places(const Plan& a, const Plan& b);

/// The same for a kind in hand, around `x_cm`, clear of `others`.
Shoal place_held(const Plan& plan, const Species& species, int count, double x_cm, const std::vector<Shoal>& others);

/// Depths between which a kind spends most of its time, cm below the water line: the levels drawn while it is held.
struct SwimBand {
  double from_cm = 0, to_cm = 0;
};
SwimBand swim_band(const Plan& plan, const Species& species);

}  // namespace shoalwright
