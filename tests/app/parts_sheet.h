// SPDX-License-Identifier: MIT
// Every part of the kit in each of its states on one sheet of 1440 x 900, to be looked at and to be aimed at.
#pragma once

#include "draw/widgets.h"

namespace shoalwright {

/// What the sheet remembers between frames, and what happened on it.
struct PartsSheet {
  bool chip_on = false, crowding = false, lane = true;
  int group = 8, shelf = 0, light = 0;
  double change_l = 40, tap_gh = 13;
  std::string search = "barb", name = "Riverbank, reading room";
  int rule_size = 8;
  bool why_open = false;
  Toast toast;
  int shares = 0, remedies = 0, undone = 0, lifted = 0, entered = 0;
  std::string previewed;  ///< remedy under the pointer or the keyboard
};

/// Draws it into the whole of the screen. Between ImGui::NewFrame and Render.
void draw_parts_sheet(Ui& ui, PartsSheet& sheet);

}  // namespace shoalwright
