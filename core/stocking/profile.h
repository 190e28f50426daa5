// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "plan/plan.h"
#include "scape/body_room.h"
#include "stocking/stock.h"

namespace shoalwright {

/// Litres in a centimetre of depth that one group wants, one value a strip.
struct GroupProfile {
  std::string species;
  std::vector<double> wanted_l_cm;
};

/// Room over depth, for drawing. Strips of `step_cm` from the water line down; the lowest reaches the deepest open water.
/// Multiplied by `step_cm` and summed, `open_l_cm` gives the open water of the layers (strips below the mean substrate belong to
/// the bottom layer), and each group's `wanted_l_cm` its whole demand.
struct DepthProfile {
  double step_cm = 0;
  std::vector<double> open_l_cm;     ///< net of solids and plants
  std::vector<GroupProfile> groups;  ///< known species, in stock order
};

/// `strips_per_layer` >= 1. Nothing where there is no water over the substrate. Each group lies over depth as
/// over_depth() has it.
DepthProfile depth_profile_of(const Plan& plan, const std::vector<Kept>& stock, const BodyRooms& bodies,
                              int strips_per_layer = 12);
DepthProfile depth_profile_of(const Plan& plan, const std::vector<Kept>& stock, int strips_per_layer = 12);

}  // namespace shoalwright
