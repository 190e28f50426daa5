// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

struct StockState {
  std::string menu;  ///< species whose row menu is open
};

/// What is in the tank: one row a kind with its number, what swims already and the group advice, and the pieces by their letters.
/// Spots: `stock.row/<species>`, `stock.count/<species>` (+ /less /more), `stock.menu/<species>`, `stock.fill`; in the open menu
/// `stock.have`, `stock.males`, `stock.females` (+ /less /more), `stock.out`.
void draw_stock(Ui& ui, const Look& look, const Box& box, StockState& mine, Actions& out);

}  // namespace shoalwright
