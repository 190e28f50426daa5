// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "app/look.h"
#include "draw/ui.h"
#include "swim/school.h"
#include "views/shoals.h"

namespace shoalwright {

/// The fish that swim, while Swim is on.
struct SwimState {
  bool on = false;
  School school;
  Plan of;
};

/// Moves the animals of `shoals` to where they swim now, and asks for the next frame. Nothing while Swim is off, the keeper's
/// device asks for less motion, or the page is hidden. `plan` is what the shoals are of; after a change of it each fish goes on
/// from where it was, where that is still water. In the midst of a drag the old tank is swum in.
void swim(const Ui& ui, const Look& look, const Plan& plan, SwimState& mine, std::vector<Shoal>& shoals);
/// What it does while they swim.
[[gnu::noinline]] void swim_on(const Look& look, const Plan& plan, SwimState& mine, std::vector<Shoal>& shoals);

}  // namespace shoalwright
