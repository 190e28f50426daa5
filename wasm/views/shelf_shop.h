// SPDX-License-Identifier: MIT
// Lines over the rows of the shelf, and what a row gains while kinds are ticked. All in the second file of the program.
#pragma once

#include "app/look.h"
#include "draw/layout.h"
#include "views/shelf_view.h"

namespace shoalwright {

/// Where the typed word is a label of several kinds, a line that opens it; returns what is left of the box. Spot: `shelf.label`.
[[gnu::noinline]] Box draw_label_line(Ui& ui, const Look& look, Box box, ShelfState& mine, Actions& out);

/// What the keeper's shop has, and the way to tick it; returns what is left of the box. Spots: `shelf.shop`, `shelf.shop/tick`,
/// `shelf.shop/clear`.
[[gnu::noinline]] Box draw_shop_line(Ui& ui, const Look& look, Box box, ShelfState& mine, Actions& out);

/// The box to tick of a row, and what a press on the row does.
[[gnu::noinline]] void draw_shop_tick(Ui& ui, const Look& look, const Box& row, const Species& species, const Item& of,
                                      Actions& out);

/// The groups of the catalogue, in a menu that hangs from `button`. Spots: `shelf.group/<group>`.
[[gnu::noinline]] void draw_group_menu(Ui& ui, const Box& button, ShelfState& mine);

}  // namespace shoalwright
