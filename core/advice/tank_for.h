// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// A rectangular tank that is large enough for a stock. Outside measures, as tanks are sold.
struct TankFor {
  double length_cm = 0, width_cm = 0, height_cm = 0;
  double glass_mm = 0;
  double volume_l = 0;  ///< inside, to the rim
  std::string name;     ///< of a usual size; empty: free measures
  /// The rule that is raised where this measure gets too small for the stock, the other two as they are; empty: none down to
  /// the least side that is looked at.
  std::string length_set_by, width_set_by, height_set_by;
  bool operator==(const TankFor&) const = default;
};

/// By how much less each measure of a free tank is tried, and the least of each that is looked at, cm.
inline constexpr double tank_step_cm = 1, least_side_cm = 15;

/// That tank by its inside measures, filled to the usual gap.
Tank tank_of(const TankFor& found);

/// Whether a rule asks for more room than a tank has: one of those of the tank's measures, of room, ground and waste.
bool asks_for_room(std::string_view rule);

struct TanksFor {
  std::vector<TankFor> tanks;  ///< the smallest usual ones, then the free one among them: smallest volume first
  std::string why_none;        ///< one sentence, where no tank up to the largest usual one will do
};

/// The least tanks for the stock of a plan, in its water, with its gear, feeding, upkeep and planting. Tanks are judged with the
/// plan's substrate and without its pieces, which were drawn for another one. A tank will do when it raises no harm and no
/// strain, as grave and as much, that the largest usual tank does not raise too: so nothing is asked of a tank that no tank can
/// give. Of the free tank every measure is the least with the other two as they are.
TanksFor least_tanks(const Plan& plan, const Catalog& catalog);

}  // namespace shoalwright
