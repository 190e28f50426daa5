// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The strip keeps nothing from frame to frame.
struct TopState {};

/// The strip along the top: name, size, undo, redo, units, theme, file, share. Spots: `top.*`.
void draw_top(Ui& ui, const Look& look, const Box& box, TopState& mine, Actions& out);

}  // namespace shoalwright
