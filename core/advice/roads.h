// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "advice/recipe_card.h"
#include "catalog/catalog.h"
#include "plan/plan.h"
#include "water/mix_aim.h"

namespace shoalwright {

// The three roads of a keeper with hard tap water and a wish for soft-water kinds, side by side.

/// A kind of the stock that does not live in the tap water. `by`: the tap less the edge of what it tolerates, above 0 when the
/// tap has too much.
struct KindMiss {
  std::string species;
  WaterQuantity quantity = WaterQuantity::gh;
  double by = 0;
  bool operator==(const KindMiss&) const = default;
};

/// Other animals that live in this tap as it is.
struct OtherAnimals {
  std::vector<KindMiss> misses;  ///< in stock order; by GH, KH, pH
  int kinds_that_suit = 0;       ///< of the catalogue: temperature, GH, KH and pH tolerated. What is not known does not suit
  int kinds = 0;                 ///< in the catalogue
  bool operator==(const OtherAnimals&) const = default;
};

/// A soft-water kind that takes harder water than the plan's aim.
struct TolerantKind {
  std::string species;
  double ro_fraction = 0;  ///< least share of reverse-osmosis water in its new water, 0 to 1
  bool in_plan = false;
  bool operator==(const TolerantKind&) const = default;
};

/// Hardest water that soft-water kinds bred in captivity are mixed for on this road, degrees. Common practice, no source.
inline constexpr double lesser_mix_most_dgh = 12;

struct TolerantKinds {
  double ro_fraction = 0;           ///< that brings the tap to `lesser_mix_most_dgh`; 0 where it is no harder
  double ro_l_week = 0;             ///< the same by the plan's changes
  std::vector<TolerantKind> kinds;  ///< least reverse-osmosis water first, then by id
  bool operator==(const TolerantKinds&) const = default;
};

struct Roads {
  OtherAnimals others;
  RecipeCard mixing;
  TolerantKinds tolerant;
  bool operator==(const Roads&) const = default;
};

/// Empty unless both GH and KH of the tap are known and some kind of the stock finds it too hard in GH or KH. The tolerant kinds
/// are those of the plan and of the groups (Species::group) of those that find the tap too hard, as far as they would live in the
/// water that the recipe reaches too: soft-water kinds, not their hard-water relatives.
std::optional<Roads> roads(const Plan& plan, const Catalog& catalog);

}  // namespace shoalwright
