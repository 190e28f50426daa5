// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The list of units that hangs from its button in the top strip: how lengths and warmth, hardness and nitrate are counted.
/// Spots: `top.units/metric`, `top.units/us`, `top.units/hardness/0..2`, `top.units/nitrate/no3|n`.
[[gnu::noinline]] void draw_units_menu(Ui& ui, const Look& look, const Box& button, Actions& out);

}  // namespace shoalwright
