// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "advice/tank_for.h"
#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The least tanks that were worked out, and for which plan.
struct LeastTankState {
  Plan of;
  std::optional<TanksFor> found;
};

/// A heading with a button that works the least tanks out, and then a row each, which takes that tank. Spots:
/// `tank_sheet.least`, `tank_sheet.least/<n>`.
void draw_least_tanks(Ui& ui, const Look& look, Stack& stack, LeastTankState& mine, Actions& out);

}  // namespace shoalwright
