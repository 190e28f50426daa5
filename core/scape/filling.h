// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "scape/scape.h"

namespace shoalwright {

/// How much of some water pieces fill: shares of it, 0 to 1.
struct Filling {
  double solid = 0, growth = 0;
};

/// Cells of one slice that water stands in, and how much of them pieces fill.
struct FilledCells {
  double water = 0, solid = 0, growth = 0;
};

/// Of each slice of a scape, from below; none where the scape has no cells.
std::vector<FilledCells> filled_cells(const Scape& scape);

/// Of the slices from `first` to before `end`.
Filling filling_of(const std::vector<FilledCells>& slices, int first, int end);

}  // namespace shoalwright
