// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"
#include "views/least_tank_view.h"

namespace shoalwright {

/// The chooser's own numbers: outside measures, so that an impossible one can stand in its field beside its sentence.
struct TankSheetState {
  Tank outside;           ///< as shown in the fields; its fill is an inside measure
  Tank of;                ///< the plan's tank that they were taken from
  bool begun = false;     ///< false: to be taken from the plan
  bool scrolled = false;  ///< the list of sizes has come to the present one
  LeastTankState least;
  std::string sentence;  ///< why the last number changed nothing; empty when it did
};

/// Size, shape, glass, fill, lid and substrate in a card over `box`. Spots: `tank_sheet.*`.
[[gnu::noinline]] void draw_tank_sheet(Ui& ui, const Look& look, const Box& box, TankSheetState& mine, Actions& out);

/// A tank that comes by its size alone, with the keeper's own parts of the one before.
Tank with_lid_of(Tank tank, const Tank& before);

/// A tank of another shape, about as large as this one. Outside measures in and out.
Tank reshaped(const Tank& outside, Shape shape);

}  // namespace shoalwright
