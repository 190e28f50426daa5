// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "stocking/stock.h"

namespace shoalwright {

/// What animals ask of their water at adult size.
struct Burden {
  double feed_g_d = 0;             ///< dry food at a normal ration, ration.h
  double resting_oxygen_mg_h = 0;  ///< oxygen_use.h
};

/// Of one of a kind.
Burden burden_of(const Species& species, double water_c);

/// Of all of a stock. Nothing of no animals; else empty where a species or the temperature is not known.
std::optional<Burden> burden_of(const std::vector<Kept>& stock, std::optional<double> water_c);

}  // namespace shoalwright
