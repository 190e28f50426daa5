// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>

namespace shoalwright {

// Numbers that stand on no grid of their own measure, but on one that keepers read from: more decimals, or a US rule,
// thermometer, test kit or pump turned into metric. Part of link version 1: never changes.

enum class Scale { inch_16, fahrenheit_10, ppm_10, us_gallon_10, decimal };

struct OffGrid {
  Scale scale = Scale::decimal;
  int decimals = 0;  ///< 0 to 9, of `decimal`
  std::int64_t steps = 0;
};

/// What gives back exactly this number, and no other double. Empty when nothing does.
std::optional<OffGrid> off_grid_of(double value);

double value_of(const OffGrid& number);

}  // namespace shoalwright
