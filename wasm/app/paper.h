// SPDX-License-Identifier: MIT
// What goes on paper, as lines of platform::print_page: what to do first, in order, then what to expect, the days, the cautions.
#pragma once

#include <string>

#include "advice/first_help.h"
#include "advice/recipe_card.h"
#include "app/look.h"

namespace shoalwright {

/// The recipe of a change: the conditioner before all else. `first_day`: of the first change, as units/day.h counts;
/// `steps`: how many sentences of the card, from the first, are things to do.
std::string recipe_paper(const Look& look, const RecipeCard& card, std::size_t steps, int first_day);

/// First help from `today` on: the conditioner before all other steps.
std::string first_help_paper(const Look& look, const FirstHelp& help, int today);

}  // namespace shoalwright
