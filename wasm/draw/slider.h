// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "draw/ui.h"

namespace shoalwright {

/// A value on a track, dragged by its knob or set by a press on the track; a finger drags it sideways, up and down it scrolls.
struct SliderLook {
  double least = 0, most = 1;
  double step = 1;        ///< what a drag is rounded to, and what an arrow key or + and − move it by
  double tick = 1;        ///< a stroke and a figure beneath at every such step
  std::string_view unit;  ///< read out behind the figures
  bool enabled = true;
};
inline constexpr float slider_height = 42;
/// True when `value` has changed, within least and most. One stop of the Tab key. Spot: `id`.
bool slider(Ui& ui, std::string_view id, ImVec2 at, float width, double& value, std::string_view label, const SliderLook& look);

/// Which way the arrow keys ask something that has the keyboard's ring to go, so many steps: x to the right, y up; 0, 0: none was
/// pressed. While it is called, arrows do not move the keyboard on to a neighbour; Tab does. Shift makes it five steps.
ImVec2 arrow_steps(const Item& of);

/// A thing in the plane under the pointer's hand: call it each frame after its item. True from the moment when the pointer has
/// moved on while it is held, by which a plain press moves nothing. A finger on it then scrolls no column.
bool hand_on(Ui& ui, std::string_view id, const Item& of);

}  // namespace shoalwright
