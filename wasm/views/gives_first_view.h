// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The strip keeps nothing: a press sends the keyboard to the section that tells more, and that scrolls into view.
struct GivesFirstState {};

/// "What gives first": up to six margins, most pressing first. Spots: `first/<margin>`.
void draw_gives_first(Ui& ui, const Look& look, const Box& box, GivesFirstState& mine, Actions& out);

}  // namespace shoalwright
