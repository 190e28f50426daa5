// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "assess/largest.h"
#include "assess/reckoned.h"
#include "fill/wishes.h"

namespace shoalwright {

/// What is shared among all kinds in a tank and adds up over their animals: crowding of the three layers and of the floor (wanted
/// over open), food in g a day, oxygen at night in mg an hour.
inline constexpr std::size_t shared_count = 6;
using Shared = std::array<double, shared_count>;

/// One kind that fits beside the stock of a plan.
struct FillOffer {
  const Species* species = nullptr;
  int least = 1, most = 1;
  int for_kind = 0, for_each = 0;  ///< of the score, tenths
  Shared takes{};                  ///< by each animal
  Shared takes_at_least{};         ///< less where others may have to leave it out of account
  bool must = false;
  bool show = false;                    ///< a fish that a tank has one kind of
  std::vector<std::string> stopped_by;  ///< rules that one more than the largest group alone would raise
  int largest = 0;                      ///< that group
};

/// A plan that is to be filled.
struct FillPlan {
  const Plan& plan;
  const Catalog& catalog;
  FillWishes wishes;
  Reckoned now;               ///< the plan's own stock and what it comes to
  Shared taken{};             ///< by that stock
  std::vector<Grade> before;  ///< what there is to say of it
  BodyRooms bodies;
};
FillPlan fill_plan(const Plan& plan, const Catalog& catalog, BodyRooms known);

/// Harms and strains of the plan with these groups beside its own stock that are not there, or not as grave, without them.
std::vector<Grade> raised_by(FillPlan& fill, const std::vector<std::pair<const Species*, int>>& groups);

/// A fish that is kept alone, in a pair or in a trio to be looked at, no grazer: a tank has one such kind as a rule (common
/// practice, no source).
bool is_show_fish(const Species& species);

/// What a kind offers; empty where fewer than its least group fit beside the stock. The score of a list is the sum over its
/// kinds, in points: 2 for a fish or frog, 1 for shrimp and crayfish, none for a snail; up to 1 for water near the middle of what
/// it lives in; 1 each where it swims at a wished level, shows a wished colour, uses a level that nobody in the plan does; 2 for
/// a show fish where the plan has none; and 3 for a group of its good size, less in proportion. No group is larger than is good.
/// Our own measure, no source; it is never shown.
std::optional<FillOffer> offer_of(FillPlan& fill, LargestSearch& largest, const Species& species);

/// How much of what is shared there is at the most, as far as the offers tell: each was let grow alone until a rule spoke. The
/// limit of a rule lies between what the largest group of all took and the least that was too much; the latter is given.
/// Infinite where no rule was met.
std::vector<std::pair<std::size_t, double>> capacities_of(const FillPlan& fill, const std::vector<FillOffer>& offers);

/// What a rule limits alike whoever takes it; empty for a rule that has another limit beside some kinds, or none.
std::optional<std::size_t> same_for_all(std::string_view rule);

}  // namespace shoalwright
