// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "plan/plan.h"
#include "scape/body_room.h"
#include "stocking/crowding.h"
#include "stocking/stock.h"

namespace shoalwright {

/// The water over the substrate in equal thirds of its depth over the mean height of the substrate; surface, mid, bottom. The
/// bottom layer also has what lies lower, down to the substrate itself. All 0 where no water stands over it.
struct Layers {
  double depth_cm = 0;              ///< from the water line to the mean height of the substrate
  std::array<double, 3> water_l{};  ///< plants not taken off
  std::array<double, 3> run_cm{};   ///< longest straight run of the empty tank at the middle of the layer
};

Layers layers_of(const Plan& plan);

/// Brings up what bodies find to a plan with its layers.
void update(BodyRooms& bodies, const Plan& plan);
BodyRooms bodies_of(const Plan& plan);

/// What a group asks of the layers at adult size. `kept.species` must be known.
Demand demand_of(const Kept& kept);

}  // namespace shoalwright
