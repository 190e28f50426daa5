// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "draw/buttons.h"

namespace shoalwright {

/// A short note that something happened, with one action. Stays 8 s, waits while pointed at or focused; the newest replaces.
struct Toast {
  std::string text;
  std::string action;  ///< words of the button, empty for none
  double left_s = 0;   ///< 0: none is shown
  double seen_s = 0;
};

void show_toast(Ui& ui, Toast& toast, std::string_view text, std::string_view action);
/// Draws it with its bottom middle at `bottom_middle`, at most `width` wide. True when its action was pressed (it then goes).
/// Spots: `toast`, `toast/action`.
bool draw_toast(Ui& ui, Toast& toast, ImVec2 bottom_middle, float width = 328);

/// The look alone, in a given box: for the sheet of parts.
bool toast_in(Ui& ui, std::string_view id, const Box& box, std::string_view text, std::string_view action);
/// Height that a text needs in that width, 44 or more.
float toast_height(const Ui& ui, float width, std::string_view text, std::string_view action);

}  // namespace shoalwright
