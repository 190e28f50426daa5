// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The strip keeps nothing from frame to frame.
struct TopState {};

/// The strip along the top: name, size, tabs for the tank and its water, undo, redo, units, theme, file, share. Narrow strips
/// have the tabs as rows of the file menu. Spots: `top.*`.
void draw_top(Ui& ui, const Look& look, const Box& box, TopState& mine, Actions& out);

}  // namespace shoalwright
