// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <span>

namespace shoalwright {

/// A straight run in one horizontal slice: its first and its last cell, counted from the left and from the front.
struct StraightRun {
  int from_x = 0, from_z = 0, to_x = 0, to_z = 0;
  double length = 0;  ///< in cells, from middle to middle
};

/// The longest straight run over open cells of a slice of `x` by `z` marks, x fastest, in any of 100 horizontal directions, never
/// more than 1.2 degrees from the best. A mirrored slice has a run of the same length. Of equally long ones the first found,
/// along the tank before across it. Empty where nothing is open. A run may pass between two taken cells that touch by a corner
/// only, so `open` should already keep the clearance that a body needs.
std::optional<StraightRun> longest_straight_run(int x, int z, std::span<const std::uint8_t> open);

}  // namespace shoalwright
