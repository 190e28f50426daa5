// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "rules/found.h"
#include "stocking/air.h"
#include "stocking/burden.h"
#include "stocking/room.h"
#include "stocking/stock.h"
#include "tank/volume.h"
#include "water/window.h"

namespace shoalwright {

/// The most of a kind that may swim with the others as they are, and what stops the next one.
struct Largest {
  std::optional<int> count;  ///< of this species in all; empty where a sum is not known, so that nothing can be promised
  std::vector<std::string>
      stopped_by;  ///< rules that the next one raises or worsens to harm or strain; at count 0: its least group
};

/// The largest count that raises no `harm` and no `strain` that is not there, and as grave, without the species. 0 where even its
/// least group raises one. `species` need not be in the plan.
Largest largest_count(const Plan& plan, const Catalog& catalog, const Species& species);

/// The same search for many species over one plan: what does not depend on them is reckoned once.
class LargestSearch {
 public:
  /// All must outlive the search. `room` and `bodies` are those of the plan as it is.
  LargestSearch(const Plan& plan, const Catalog& catalog, std::vector<Kept> stock, const Volume& volume, const Room& room,
                BodyRooms& bodies);
  Largest find(const Species& species);

 private:
  /// What depends on the kinds of a stock alone, worked out when first asked.
  struct OfKinds {
    std::optional<Windows> water;
    AirOfTank air;
    std::vector<Burden> burdens;              ///< of one of each kind
    std::vector<std::vector<Raised>> raised;  ///< by rules of_kinds_only, in the order of the table
  };

  void look_at_kinds(const std::vector<const Species*>& species, OfKinds& kinds) const;
  std::vector<Raised> raised(const std::vector<Kept>& stock, OfKinds& kinds);

  const Plan& plan_;
  const Catalog& catalog_;
  const Volume& volume_;
  BodyRooms& bodies_;
  std::vector<Kept> stock_;
  OfKinds kinds_;  ///< of the stock as it is
  Room room_;      ///< layers, lanes, floor; the crowding is that of the state last looked at
  double load_index_ = 0;
  double oxygen_used_ = 0;  ///< of what may be used before it is a strain
};

}  // namespace shoalwright
