// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <vector>

#include "stocking/crowding.h"

namespace shoalwright {

/// Where the animals of a group are once full levels have spilled.
struct Spilled {
  std::array<double, 3> count{};  ///< in surface, mid, bottom; sums to the group's number
  double without_room = 0;        ///< how many of them find no room in any level that they use
};

/// Where a level is full, what is over goes to the others that a group uses, the one it likes best first, as far as there is
/// room; what finds none stays. One for each demand, in their order.
std::vector<Spilled> spilled(const std::vector<Demand>& stock, const LayerWater& water);

/// Crowding of a level with them: wanted over open.
double crowding_of(const std::vector<Demand>& stock, const std::vector<Spilled>& spilled, const LayerWater& water,
                   std::size_t level);

}  // namespace shoalwright
