// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "scape/grid.h"

namespace shoalwright {

/// Stands for "no cell is taken at all".
inline constexpr std::int32_t far_away = std::int32_t{1} << 29;

/// Squared distance from the middle of each cell to the middle of the nearest taken cell, in cells: whole numbers, exact, 0 where
/// taken. `taken` has one mark a cell; at most 8192 cells along each axis. What lies outside the grid is not taken. Time linear
/// in the number of cells: one axis after the other, by lower envelopes of parabolas (Felzenszwalb, P. F. & Huttenlocher, D. P.
/// 2012. Distance transforms of sampled functions. Theory of Computing 8: 415-428; from memory).
std::vector<std::int32_t> squared_distances(const GridSize& size, const Cells& taken);

}  // namespace shoalwright
