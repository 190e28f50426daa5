// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "assess/assessment.h"
#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// What stands behind one entry of `tightest`: wanted against there is, and whose animals it is counted in.
struct MarginFacts {
  double wanted = 0, there_is = 0;  ///< in the unit of the margin; there_is - wanted is its value
  std::optional<double> depth_cm;   ///< crowding: the tightest depth, below the water line
  std::string kind;                 ///< species that `animals` counts; empty when none
  std::optional<int> animals;       ///< how many more of it, negative when over, rounded down
};

/// Key and facts of all margins that have any: lane, crowding by depth, floor, nitrate and dawn; water has none. Without
/// `in_hand` the kind is that of the margin's `animals`: the largest part, for nitrate the largest group. With it (a species id)
/// spare is counted in that kind wherever it has a part in the sum. `assessment` must be that of `plan`.
using MarginTable = std::vector<std::pair<std::string, MarginFacts>>;
MarginTable margin_table(const Plan& plan, const Catalog& catalog, const Assessment& assessment, std::string_view in_hand = {});
MarginTable margin_table(const Plan& plan, const Catalog& catalog, const Assessment& assessment, std::string_view in_hand,
                         BodyRooms& bodies);

/// Facts of one margin; null when the table has none.
const MarginFacts* find_margin(const MarginTable& table, std::string_view margin);

}  // namespace shoalwright
