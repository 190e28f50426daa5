// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The card that tells more of a kind on the shelf, over everything, to the right of `row` (left where the window ends): ranges
/// of water with what the tank has, company, food, one caution.
[[gnu::noinline]] void draw_kind_card(const Ui& ui, const Look& look, const Species& species, const Box& row);

/// "Shoal of 6 or more, good from 10"; "Lives alone"; "Pair".
std::string said_company(const Species& species);
/// "Omnivore: micro pellets, small frozen, small live".
std::string said_food(const Species& species);
/// The one thing to know before buying: brackish water, a tank still too young, else the note of the card. Empty when there is
/// none.
std::string said_caution(const Species& species, const Plan& plan);

}  // namespace shoalwright
