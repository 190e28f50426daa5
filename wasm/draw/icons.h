// SPDX-License-Identifier: MIT
#pragma once

#include "draw/text.h"

namespace shoalwright {

enum class Icon {
  undo,
  redo,
  search,
  clear,
  sun,
  moon,
  chevron,
  share,
  plus,
  minus,
  folder,
  save,
  sheet,
  close,
  plate,
  print,
  grip,
  tick
};

/// A line drawing on a grid of 18, scaled to `size`, its top left at `at`.
void draw_icon(const Pen& pen, Icon icon, ImVec2 at, float size, ImU32 colour);

}  // namespace shoalwright
