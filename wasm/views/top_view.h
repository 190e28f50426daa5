// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

struct TopState {
  bool units_wanted = false;  ///< the list of units was asked for once: it comes with the second file of the program
};

/// The strip along the top: name, size, tabs for the tank and its water, undo, redo, units, theme, file, share. Narrow strips
/// have the tabs as rows of the file menu. Spots: `top.*`.
void draw_top(Ui& ui, const Look& look, const Box& box, TopState& mine, Actions& out);

}  // namespace shoalwright
