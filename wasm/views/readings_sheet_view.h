// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "advice/first_help.h"
#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

struct ReadingsSheetState {
  bool begun = false;    ///< false: it opens with this frame
  std::string sentence;  ///< why the last number changed nothing; empty when it did
  Plan helped;           ///< the plan that `help` is for
  FirstHelp help;
  bool help_known = false;
};

/// What swims already and what the tank reads, in a card over `box`, and under them the first steps where a filter does not carry
/// its animals yet. Spots: `readings.*`.
[[gnu::noinline]] void draw_readings_sheet(Ui& ui, const Look& look, const Box& box, ReadingsSheetState& mine, Actions& out);

}  // namespace shoalwright
