// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "plan/plan.h"
#include "stocking/stock.h"

namespace shoalwright {

/// The line under a name in the stock: "6 of 10 swim here; least 8", "least 5; 2 males, 4 females", "least 6; good group at 8".
std::string stock_advice(const Kept& kept);

/// "26 fish, 4 species"; "38 animals, 5 species" where not all are fish or not all are known.
std::string stock_sum(const std::vector<Kept>& stock);

/// What a piece is called by its kind: "branch-bank" is "Branch, bank", "stem-plants" is "Stem plants".
std::string piece_name(const std::string& kind);

/// What has to be bought for the scape, and what it gives to graze. Empty without substrate and pieces.
std::string materials_words(const Look& look);

}  // namespace shoalwright
