// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "units/range.h"
#include "water/getting_there.h"
#include "water/mix_aim.h"
#include "water/recipe.h"

namespace shoalwright {

/// Litres that run to the drain for each litre of reverse-osmosis water: from good filters at good pressure to small ones. From
/// memory, no source.
inline constexpr Range ro_reject_l_per_l{1, 4};

struct SaltGrams {
  const Salt* salt = nullptr;
  double grams = 0;      ///< for the whole of the new water
  double weighed_g = 0;  ///< the same as a scale tells it (water/weighing.h)
  bool operator==(const SaltGrams&) const = default;
};

/// The recipe of one water change of a plan, in litres and grams.
struct RecipeCard {
  MixAim aim;
  Recipe recipe;
  double for_l = 0;       ///< new water for one change: all of it is conditioned
  double fraction = 0.3;  ///< of the tank's water; the usual share where the plan names none or changes nothing
  double every_days = 7;
  std::optional<double> ro_l, tap_l;  ///< for one change
  std::optional<double> ro_l_week, ro_l_year;
  std::optional<Range> reject_l;  ///< to the drain for one change
  std::vector<SaltGrams> salts;
  MixedWater weighed;                        ///< what the weighed grams come to
  bool by_hand = false;                      ///< the grams are the keeper's own
  std::optional<Recipe> with_usual_salts;    ///< where those at hand miss GH or KH by more than the usual three would
  std::vector<std::string> salts_not_known;  ///< ids in the plan that no known salt has
  GettingThere way;
  std::vector<std::string> says;  ///< what to do and what to expect, in order; the conditioner first
  bool operator==(const RecipeCard&) const = default;
};

/// Towards the plan's own aim (planned_aim), or towards another. An empty list of salts means that the keeper has none: mixing is
/// then all there is, and `with_usual_salts` says what salts would do.
RecipeCard recipe_card(const Plan& plan, const Catalog& catalog);
RecipeCard recipe_card(const Plan& plan, const MixAim& aim);

/// Turns a card of the same plan to the keeper's own share of reverse-osmosis water, 0 to 1: only the salts are chosen.
void take_share(const Plan& plan, double ro_fraction, RecipeCard& card);

/// Turns it to the keeper's own grams in the bucket too, of known salts: nothing is solved, what comes of it is told.
void take_grams(const Plan& plan, double ro_fraction, std::span<const SaltGrams> grams, RecipeCard& card);

/// The shared windows over the plan's stock.
Windows windows_of(const Plan& plan, const Catalog& catalog);

/// The sentences of a card, metric.
std::vector<std::string> recipe_says(const Plan& plan, const RecipeCard& card);

/// One miss as a sentence: "GH comes out 0.5 °dH below the aim.", "The tap's GH is not known. Test it first."
std::string miss_says(const Miss& miss);

/// "chlorine" or "chloramine": what a conditioner has to treat. Unknown counts as chloramine. Null where the tap is said to hold
/// neither.
const char* to_condition(Disinfectant disinfectant);

}  // namespace shoalwright
