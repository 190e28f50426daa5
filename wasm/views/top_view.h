// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The plan's name while it is typed.
struct TopState {
  std::string name, name_of_plan;
};

/// The strip along the top: name, size, undo, redo, units, theme, file, share. Spots: `top.*`.
void draw_top(Ui& ui, const Look& look, const Box& box, TopState& mine, Actions& out);

}  // namespace shoalwright
