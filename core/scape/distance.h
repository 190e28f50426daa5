// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "scape/grid.h"

namespace shoalwright {

/// Stands for "no cell is taken at all".
inline constexpr std::int32_t far_away = std::int32_t{1} << 29;

/// Squared distance from the middle of each cell to the middle of the nearest taken cell, in cells: whole numbers, exact, 0 where
/// taken. `taken` has one mark a cell; at most 8192 cells along each axis. What lies outside the grid is not taken. One axis
/// after the other: where every cell is near a taken one, by looking as far as that; else in time linear in the number of cells,
/// by lower envelopes of parabolas (Felzenszwalb, P. F. & Huttenlocher, D. P.
/// 2012. Distance transforms of sampled functions. Theory of Computing 8: 415-428; from memory).
std::vector<std::int32_t> squared_distances(const GridSize& size, const Cells& taken);

/// The same kept for a grid whose cells change little by little. Distances are found along x first, then from row to row of a
/// slice, then from slice to slice; of each only what the one before has changed is looked at again.
struct Distances {
  GridSize size;
  Cells taken;
  std::vector<std::uint8_t> in_row;         ///< steps within each row, along x, 128 where it is that or more
  std::vector<std::int16_t> in_slice;       ///< squared distance within each horizontal slice; none where some are too large
  std::vector<std::int32_t> squared;        ///< in all directions, as squared_distances() gives it
  std::vector<std::uint8_t> near;           ///< the same, 255 where it is that or more
  std::uint32_t version = 0;                ///< counts updates
  std::vector<std::uint32_t> row_versions;  ///< the last that changed something in a row of cells
  std::vector<std::int16_t> slice_most;     ///< nothing of a row in a slice is larger
  std::vector<std::int16_t> row_most;       ///< nothing of a row in all directions is larger
};
void update(Distances& distances, const GridSize& size, const Cells& taken);

}  // namespace shoalwright
