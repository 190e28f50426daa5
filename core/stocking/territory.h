// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "plan/plan.h"
#include "scape/body_room.h"
#include "stocking/stock.h"

namespace shoalwright {

/// Ground that one holder, a pair or a male with his females keeps.
struct Territory {
  std::string species;
  double x_cm = 0, z_cm = 0;  ///< its middle on the floor
  double across_cm = 0;       ///< diameter of the round floor that floor_need_cm2() asks for
  bool operator==(const Territory&) const = default;
};

/// Two territories, and whether something stands between the eyes of their holders.
struct SightLine {
  std::size_t a = 0, b = 0;  ///< indices into Territories::homes, a < b
  bool broken = false;
  bool operator==(const SightLine&) const = default;
};

struct Territories {
  std::vector<Territory> homes;
  std::vector<SightLine> lines;  ///< one for every pair
  double broken_share = 0;       ///< broken lines over all, 0 to 1; 0 without pairs
  bool operator==(const Territories&) const = default;
};

/// More territories than this are not worked out. Display and a share only: the floor is judged by every holder.
inline constexpr std::size_t most_homes = 12;
/// Part of its floor that a holder does without where it sees none of the others: out of sight, rivals live closer together.
/// Common practice, no source.
inline constexpr double sight_break_relief = 0.4;

/// Where the holders of the stock would settle at adult size: an estimate, common practice, no source. The kinds with the largest
/// ground first, each as far from those before it as the floor lets it, and rather by a hiding place. A mirrored tank has
/// mirrored homes, but for those that may as well be on either side, and the same broken share. `bodies` are of the plan's scape.
/// None where the measures span no tank.
Territories territories_of(const Plan& plan, const std::vector<Kept>& stock, const BodyRooms& bodies);

/// What the floor that holders want is multiplied by: 1 where all see each other, less with every line that is broken.
double sight_factor(const Territories& territories);

}  // namespace shoalwright
