// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <vector>

#include "plan/plan.h"
#include "scape/body_room.h"
#include "stocking/stock.h"

namespace shoalwright {

/// Where the animals of one group are, on average.
struct GroupSpread {
  std::string species;
  std::array<double, 3> in_level{};  ///< how many are in surface, mid, bottom once full levels have spilled; sums to the count
  double without_room = 0;           ///< how many of them find no room in any level that they use
  std::vector<double> fish;          ///< of each spot; sums to the count
};

/// The water of a tank in spots of about 2.5 cm with what is in each, on average over a day. `size` as for the grid: x left to
/// right, z front to back, y upward; `fish` and all below in its order.
struct Spread {
  GridSize size;
  double step_x_cm = 0, step_z_cm = 0, step_y_cm = 0;  ///< measures of a spot
  double left_cm = 0, front_cm = 0, floor_cm = 0;      ///< outer faces of the first spots, in the axes of the plan
  std::vector<float> water_l;                          ///< net of solids
  std::vector<float> crowding;                         ///< room wanted over room open; below 0 where no water is
  std::vector<float> clear_cm;                         ///< from there to the nearest glass, substrate, surface or solid
  std::vector<float> cover_cm;      ///< to the nearest spot that shelters, to about 1 cm in 5; `no_cover_cm`: there is none
  std::vector<GroupSpread> groups;  ///< known species, in stock order
};
inline constexpr float no_cover_cm = 1e6f;

/// Each group keeps the share of each level that its kind has, and in a level goes where it is open to it: evenly over the
/// water that it reaches, but most about the middles of the levels that it likes, more near cover where it is shy, and never to
/// a spot that is full while its level has room. Where a level is full, what is over goes to the others that the group uses,
/// the one it likes best first; what finds no room stays. Summed over a level and over its open water this is the crowding of
/// the layers. Nothing (no spots) without water over the substrate. `bodies` are of the plan.
Spread spread_of(const Plan& plan, const std::vector<Kept>& stock, BodyRooms& bodies);

}  // namespace shoalwright
