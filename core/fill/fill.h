// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "scape/body_room.h"

namespace shoalwright {

/// A list that fits a plan: its own stock, which stays as it is, and new groups beside it.
struct FilledStock {
  double score = 0;                                ///< of the new groups, in points (fill/offers.h); only orders
  std::vector<std::pair<std::string, int>> fresh;  ///< species id and count, in the order of the shelf
};

struct Filled {
  std::vector<FilledStock> stocks;  ///< at most three; each differs from every earlier one in two kinds, where there are so many
  bool proven = false;   ///< the search ended by itself: no list that could stand in one of the places has a better score
  std::string why_none;  ///< one sentence where nothing can be added; else empty
};

struct FillState;

/// Looks for the best lists by their score under the wishes that stand in the plan (fill/wishes.h). A list fits when it raises no
/// harm and no strain that is not there, as grave and as much, without it, by all rules. Kinds that nearly double each other, or
/// one of the plan, are not both chosen unless both are wished for; nor are two show fish.
///
/// Method: the exact search of core/search over a problem that has every list which fits and some that do not: what adds up has
/// limits as far as single kinds tell them, pairs that were found not to go together are in conflict. Its best list is judged by
/// all rules. Where it fits it is the best of all; where it does not, the smallest part that fails is cut out, once for all where
/// it is a pair at its least numbers, else by branching into problems of which each has one of its groups smaller (or larger,
/// where more animals can mend what is wrong), and the problem with the best list of all goes on.
class FillSearch {
 public:
  /// Plan and catalogue are kept by reference and must outlive the search.
  FillSearch(const Plan& plan, const Catalog& catalog, BodyRooms known = {});
  FillSearch(FillSearch&&) noexcept;
  FillSearch& operator=(FillSearch&&) noexcept;
  ~FillSearch();

  /// Goes on by a millisecond's work or so; true when the search has ended. The answer does not depend on how it is cut.
  bool step();
  /// The best so far.
  Filled found() const;

 private:
  std::unique_ptr<FillState> state_;
};

/// The search to its end.
Filled fill(const Plan& plan, const Catalog& catalog);

/// The plan with a list's new groups at the end of its stock.
Plan with_stock(Plan plan, const FilledStock& list);

}  // namespace shoalwright
