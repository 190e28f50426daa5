// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// In the menu of a group: how many of it were lost, while some swim. Spot `stock.lost` (+ /less /more). Call it once the second
/// file is there.
[[gnu::noinline]] void losses_menu(Ui& ui, const Look& look, const Kept& kept, Actions& out);

/// Below the row of a group that lost some: how many are left, and what may become of them. Returns its height, 0 where nothing
/// is open. Spots `stock.loss/<species>` (+ /top_up /run_out /re_home). Call it once the second file is there.
[[gnu::noinline]] float draw_losses(Ui& ui, const Look& look, const Box& box, const Kept& kept, Actions& out);

}  // namespace shoalwright
