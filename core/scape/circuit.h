// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "scape/swim_slice.h"

namespace shoalwright {

/// A way all round an island, cell by cell (x, z).
struct Circuit {
  std::vector<std::pair<int, int>> cells;
  double length = 0;  ///< in cells
};

/// The longest way round an island of closed cells on which every middle keeps `clearance` cells (to faces) from what is closed
/// in the slice. Empty where no island is left all round by so much. Its length is estimated from its chain of steps: Vossepoel,
/// A.M. & Smeulders, A.W.M. 1982. Vector code probability and metrication error in the representation of straight lines of finite
/// length. Computer Graphics and Image Processing 20: 347-364 (weights from memory).
std::optional<Circuit> longest_circuit(const SwimSlice& slice, double clearance);

}  // namespace shoalwright
