// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

struct LabelState {
  std::string word;
  std::string opened_from;  ///< where the keyboard was
  bool begun = false;       ///< false: it opens with this frame
};

/// What is sold under a word, in a card over `box`: the animals side by side, grown, at one scale, and what tells each from the
/// others. Spots: `label`, `label.scale`, `label.kind/<species>`, which opens that kind's page.
[[gnu::noinline]] void draw_label(Ui& ui, const Look& look, const Box& box, LabelState& mine, Actions& out);

}  // namespace shoalwright
