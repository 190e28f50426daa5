// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// What the card of the kind in hand keeps: where it stands, so that it does not jump while its height changes.
struct HeldState {
  std::string species;
  float top = 0;
  bool above = false;  ///< it stands over the row it came from, growing upwards
};

/// The card of what is in hand, docked over the shelf in `box`, clear of the row it was taken from: group size and what dropping
/// it would bring. Nothing where nothing is held. Call it after the shelf. Spots: `held.card`, `held.count`, `held.rule`, and
/// without a pointer that carries it `held.drop`, `held.back`.
[[gnu::noinline]] void draw_held(Ui& ui, const Look& look, const Box& box, HeldState& mine, Actions& out);

}  // namespace shoalwright
