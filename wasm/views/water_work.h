// SPDX-License-Identifier: MIT
// The recipe that the Water page shows, worked out once for a plan and the page's own choices.
#pragma once

#include <memory>
#include <optional>
#include <string_view>
#include <vector>

#include "advice/recipe_card.h"
#include "advice/roads.h"
#include "app/look.h"
#include "stocking/stock.h"
#include "views/water_sheet_view.h"

namespace shoalwright {

struct WaterWork {
  Plan of;               ///< as it is
  WaterChoices choices;  ///< as they are
  Plan plan;             ///< `of` with the tap that is dragged
  Windows windows;
  std::vector<Kept> stock;            ///< of `of`
  Towards towards = Towards::middle;  ///< what the choice comes to: no own aim where the plan has none
  RecipeCard card;
  std::optional<double> usual_ro_fraction;  ///< as the recipe would have it without the keeper's hand
  std::optional<double> least_ro_fraction;  ///< by which GH and KH suit all; empty: by none
  std::shared_ptr<const Roads> roads;       ///< null where the tap is not too hard
  double net_l = 0;
};

/// Whether the keeper has a salt.
bool has_salt(const Plan& plan, std::string_view id);

/// Whether a plan aims at a hardness of its own.
bool has_own_hardness(const Plan& plan);

/// Works it out where plan or choices have changed since; else `before`.
std::shared_ptr<const WaterWork> water_work(const Look& look, const WaterChoices& choices,
                                            const std::shared_ptr<const WaterWork>& before);

/// The water of the bucket as an aim of the plan, in figures that a test can tell; empty where the tap's hardness is not known.
std::optional<WaterAim> aim_of_bucket(const WaterWork& work);

/// How many of RecipeCard::says, from the first, are things to do; the others are what to expect.
std::size_t steps_to_do(const RecipeCard& card);

}  // namespace shoalwright
