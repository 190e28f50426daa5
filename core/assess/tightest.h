// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "assess/assessment.h"
#include "rules/facts.h"

namespace shoalwright {

/// Every margin that the plan has, the one with least to spare for its scale first: the width of the tolerated window for water,
/// what is needed or allowed for the rest. A margin that an unknown value withholds is left out. Room is judged by whole layers:
/// fish spread over their level, so that a layer with room has as much spare at each of its depths, and never less than nothing.
std::vector<Tightest> tightest_margins(const Facts& facts);

/// Oxygen that may still be used in the dark until dawn is at what the stock wants, mg/h; below 0 where too much is used. Empty
/// where one of them is not known.
std::optional<double> spare_breath_mg_h(const Facts& facts);

/// The layer that is fullest for what is open there.
struct TightestLayer {
  std::size_t layer = 0;  ///< 0 surface, 1 mid, 2 bottom
  double open_l_cm = 0;   ///< open water over a centimetre of its depth
};

/// Empty where nothing wants room, or a sum is not known.
std::optional<TightestLayer> tightest_layer(const Facts& facts);

}  // namespace shoalwright
