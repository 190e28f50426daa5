// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "rules/found.h"
#include "stocking/air.h"
#include "stocking/load.h"
#include "stocking/room.h"
#include "stocking/stock.h"
#include "tank/volume.h"
#include "water/window.h"

namespace shoalwright {

/// Everything that a rule may look at: references only, valid while assess() runs.
struct Facts {
  const Plan& plan;
  const Catalog& catalog;
  const std::vector<Kept>& stock;
  const Volume& volume;
  const Windows& water;
  const Room& room;
  BodyRooms& bodies;  ///< what bodies of any size find in the plan's scape, kept as it is asked
  const Load& load;
  const Air& air;
};

/// A rule is a pure function that adds what it finds.
using Rule = void (*)(const Facts& facts, Found& out);

struct RuleRow {
  Rule rule = nullptr;
  bool of_kinds_only = false;  ///< finds the same however many there are of each kind, as long as there is one
};

/// Every rule there is.
std::span<const RuleRow> all_rules();

/// Those that judge a plan by this catalogue: all, or while it is not whole, the first ones (rules.cpp).
std::span<const RuleRow> rules_with(const Catalog& catalog);

}  // namespace shoalwright
