// SPDX-License-Identifier: MIT
// Lines over the rows of the shelf, in the second file of the program, and what a row gains while kinds are ticked.
#pragma once

#include "app/look.h"
#include "draw/layout.h"
#include "views/shelf_view.h"

namespace shoalwright {

/// The menu of groups where it is open (it hangs from `mine.group_at`); what the keeper's shop has, and the way to tick it; and
/// where the typed word is a label of several kinds, a line that opens it. Returns what is left of the box. Spots:
/// `shelf.group/<group>`, `shelf.shop`, `shelf.shop/tick`, `shelf.label`.
[[gnu::noinline]] Box draw_shelf_lines(Ui& ui, const Look& look, Box box, ShelfState& mine, Actions& out);

/// The box to tick of a row, and what a press on the row does. So small that the optimiser folds it into the row.
void draw_shop_tick(Ui& ui, const Look& look, const Box& row, const Species& species, const Item& of, Actions& out);

}  // namespace shoalwright
