// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "advice/recipe_card.h"

namespace shoalwright {

/// FORMATS section 6. Salts by the ids of the plan, which name their water of crystallisation, in grams for `for_l`. An entry of
/// `missed` has the key of its quantity, `by` how much (reached less aimed at) and a sentence; where the tap's value is not known
/// `by` is null and so is what rests on it, the RO fraction too when neither GH nor KH is. `reached.ph`: after standing in a room
/// that is lived in; `ph_in_tank`: at the usual CO2 of a tank.
std::string recipe_json(const RecipeCard& card);

}  // namespace shoalwright
