// SPDX-License-Identifier: MIT
// The shelf while it judges by the tap, which only the Water page begins: so what it needs is there by then.
#pragma once

#include "app/look.h"
#include "draw/layout.h"
#include "views/shelf_view.h"

namespace shoalwright {

/// The plan in its tap water: warmed as the plan has it, but neither softened nor hardened.
Plan in_tap_water(const Plan& plan);

/// A line that says so, and the way out of it; returns what is left of the box. Spots: `shelf.by_tap`, `shelf.by_plan`.
[[gnu::noinline]] Box draw_by_tap(Ui& ui, const Look& look, Box box, ShelfState& mine);

}  // namespace shoalwright
