// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "scape/grid.h"

namespace shoalwright {

/// Neighbouring open cells of one row of a grid, both ends included.
struct OpenRun {
  int first = 0, last = 0;
  std::int32_t region = 0;
  bool operator==(const OpenRun&) const = default;
};

/// Water that hangs together: cells that touch by a face. A corner that is cut off is a region of its own.
struct Regions {
  std::vector<OpenRun> runs;            ///< row by row, as the cells of the grid lie
  std::vector<std::size_t> row_begins;  ///< first run of each row, and the end of the last one's
  std::vector<std::size_t> cells;       ///< how many cells each region has
};

/// `open` has one mark a cell. Regions are numbered from 0 in the order of their first cells.
Regions regions_of(const GridSize& size, const Cells& open);

/// The two steps of it. The open runs of one row of `count` cells, added to `runs`.
void add_open_runs(const std::uint8_t* open, int count, std::vector<OpenRun>& runs);
/// What hangs together within one horizontal slice, known until a cell of it changes.
struct SliceNumbers {
  std::vector<std::size_t> cells;                               ///< how many cells each number has
  std::vector<std::pair<std::int32_t, std::int32_t>> touching;  ///< numbers that touch, of this slice and of the next above
  std::vector<std::int32_t> regions;                            ///< the region of each number
};
/// Where `runs` and `row_begins` are there: `region` of each run becomes its number within its slice, and `cells` is worked out.
/// Of slices that have not `changed` (one mark each) numbers are kept.
void number_regions(const GridSize& size, Regions& regions, std::vector<SliceNumbers>& slices, const std::vector<char>& changed);

/// The cells in which a body can be whose middle keeps `clearance` cells or more from everything taken.
Cells cells_clear_by(const std::vector<std::int32_t>& squared_distances, double clearance);

}  // namespace shoalwright
