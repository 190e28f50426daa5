// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "scape/grid.h"

namespace shoalwright {

/// Water that hangs together: cells that touch by a face. A corner that is cut off is a region of its own.
struct Regions {
  std::vector<std::int32_t> of_cell;  ///< number of each cell's region from 0, -1 where the cell is not open
  std::vector<std::size_t> cells;     ///< how many cells each region has
};

/// `open` has one mark a cell. Regions are numbered in the order of their first cells.
Regions regions_of(const GridSize& size, const Cells& open);

/// The cells in which a body can be whose middle keeps `clearance` cells or more from everything taken.
Cells cells_clear_by(const std::vector<std::int32_t>& squared_distances, double clearance);

}  // namespace shoalwright
