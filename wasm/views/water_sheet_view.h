// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// Keeps why the last number changed nothing.
struct WaterSheetState {
  std::string sentence;
};

/// Tap, aim, limits, strictness, planting, feeding and place in a card over `box`. Spots: `water_sheet.*`.
void draw_water_sheet(Ui& ui, const Look& look, const Box& box, WaterSheetState& mine, Actions& out);

}  // namespace shoalwright
