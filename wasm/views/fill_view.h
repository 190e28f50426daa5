// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"
#include "fill/fill.h"
#include "views/slices.h"

namespace shoalwright {

/// What could go into the tank, while the sheet is open.
struct FillDesk {
  SlicedSearch<FillSearch> work;
  bool stopped = false;  ///< by the keeper, over the plan that it is of
  Filled found;
};

/// Wishes, and lists of kinds that fit beside what there is, in a card over `box`. Spots: `fill`, `fill.kinds` (+ /less /more),
/// `fill.easy`, `fill.level/0..3`, `fill.colour/0..8`, `fill.wish/<species>` (taken back by a press), `fill.stop`, `fill.state`;
/// of each list `fill.list/<n>`, `fill.list/<n>/take`, `fill.list/<n>/keep/<species>`, `fill.list/<n>/never/<species>`.
[[gnu::noinline]] void draw_fill(Ui& ui, const Look& look, const Box& box, FillDesk& mine, Actions& out);

}  // namespace shoalwright
