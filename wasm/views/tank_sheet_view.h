// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The chooser's own numbers while they are typed: outer measures, so that an impossible one can stand beside its sentence.
struct TankSheetState {
  Tank outside;        ///< as shown in the fields
  Tank of;             ///< the plan's tank that they were taken from
  bool begun = false;  ///< false: to be taken from the plan
  std::string sentence;  ///< why the last number changed nothing; empty when it did
};

/// Size, shape, glass, fill, lid and substrate in a card over `box`. Spots: `tank_sheet.*`.
void draw_tank_sheet(Ui& ui, const Look& look, const Box& box, TankSheetState& mine, Actions& out);

}  // namespace shoalwright
