// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

struct WaterSheetState {
  bool begun = false;    ///< false: it opens with this frame
  std::string sentence;  ///< why the last number changed nothing; empty when it did
};

/// Tap, aim, limits, strictness, planting, feeding and place in a card over `box`. Spots: `water_sheet.*`.
void draw_water_sheet(Ui& ui, const Look& look, const Box& box, WaterSheetState& mine, Actions& out);

}  // namespace shoalwright
