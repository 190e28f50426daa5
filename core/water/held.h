// SPDX-License-Identifier: MIT
#pragma once

#include "units/range.h"

namespace shoalwright {

// Formulas of this room hold within ranges that their headers name. Outside them they answer for the nearer edge, and whoever
// asks can see from `is_within` that they did.

/// `value` held within `range`; its low end where `value` is no number, so that no formula answers with one.
constexpr double held_within(double value, const Range& range) {
  if (!(value > range.low)) return range.low;
  return value < range.high ? value : range.high;
}

/// Whether held_within() leaves it alone.
constexpr bool is_within(double value, const Range& range) { return value >= range.low && value <= range.high; }

}  // namespace shoalwright
