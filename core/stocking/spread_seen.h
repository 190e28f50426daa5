// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "stocking/spread.h"

namespace shoalwright {

/// What is seen in one place from one side.
struct SpotSeen {
  float crowding = -1;  ///< of all the water behind it (or below it); below 0 where there is none
  float clear_cm = 0;   ///< the most of it
  float cover_cm = no_cover_cm;
};
/// The same from the front (rows from the surface down) or from above (rows from the back), columns from the left.
struct SpreadSeen {
  int columns = 0, rows = 0;
  std::vector<SpotSeen> spots;
};
SpreadSeen seen_from_front(const Spread& spread);
SpreadSeen seen_from_above(const Spread& spread);

/// How many of each group are behind (or below) one place, in the order of `groups`: `column` from the left, `row` as above.
std::vector<double> fish_behind(const Spread& spread, int column, int row);
std::vector<double> fish_below(const Spread& spread, int column, int row);

}  // namespace shoalwright
