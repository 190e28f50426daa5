// SPDX-License-Identifier: MIT
#pragma once

#include <limits>
#include <optional>

#include "scape/swim_slice.h"

namespace shoalwright {

/// A straight run in one horizontal slice: its first and its last cell, counted from the left and from the front.
struct StraightRun {
  int from_x = 0, from_z = 0, to_x = 0, to_z = 0;
  double length = 0;  ///< from the outer face of the first cell to that of the last, growth counted in part
};

/// Part of its length that a run counts for among growth which the body passes through. Common practice, no source.
inline constexpr double slow_share = 0.7;

/// The longest straight run for a body whose nose reaches `nose` cells before its middle, in any of 100 horizontal directions,
/// never more than 1.2 degrees from the best. A mirrored slice has a run of the same length. Of equally long ones the first
/// found, along the tank before across it. Empty where none is longer than `longer_than`; the search ends with the first that is
/// at least `enough`. A run may pass between two closed cells that touch by a corner only, so `clear` should already keep the
/// clearance that the body needs.
std::optional<StraightRun> longest_straight_run(const SwimSlice& slice, int nose = 0, double longer_than = 0,
                                                double enough = std::numeric_limits<double>::infinity());

}  // namespace shoalwright
