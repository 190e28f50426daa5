// SPDX-License-Identifier: MIT
#pragma once

#include <array>

#include "catalog/species.h"

namespace shoalwright {

/// How animals of one life style use a tank. Common practice, no source: tuned to trade rules of thumb.
struct StyleFacts {
  double room_bl3 = 0;            ///< personal volume of a 4.5 cm fish, body lengths cubed
  std::array<double, 3> depth{};  ///< share of its time in surface, mid, bottom
  double lane_bl = 0;             ///< run wanted between walls, body lengths; 0: none
  double floor_bl2 = 0;           ///< floor of one animal or territory, body lengths squared; 0: uses none
  bool holds_floor = false;       ///< a territory holder, not a shoaler
};

StyleFacts style_facts(Style style);

/// The species' own shares of depth, else those of its style; surface, mid, bottom.
std::array<double, 3> depth_shares(const Species& species);

/// The layer where it spends most of its time: 0 surface, 1 mid, 2 bottom; of equal ones the upper.
std::size_t main_layer(const std::array<double, 3>& depth);

}  // namespace shoalwright
