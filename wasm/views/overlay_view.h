// SPDX-License-Identifier: MIT
// What is laid over the drawn tank: crowding, clearance or cover as a field with contours, and what is in the spot under the
// pointer.
#pragma once

#include <string>
#include <vector>

#include "app/actions.h"
#include "app/look.h"
#include "draw/scene/field.h"
#include "draw/ui.h"

namespace shoalwright {

/// One view's field made ready.
struct OverlayState {
  FieldCache cache;
  int version = -1;
  Overlay overlay = Overlay::none;
  bool us = false;
};

/// A view's side, where its water starts on the screen (the left pane and the surface, or the left and the back pane), and pixels
/// a cm.
struct OverlayStage {
  bool above = false;
  ImVec2 corner;
  float px_per_cm = 1;
  Box water;
};

/// The words of the choices, in the order of `Overlay`.
std::span<const std::string_view> overlay_words();

/// What the contours stand for: "litres wanted of each litre open".
std::string overlay_legend(const Look& look);

// Both only where the spread is known.
[[gnu::noinline]] void draw_overlay(const Pen& pen, const Look& look, const OverlayStage& stage, OverlayState& mine);
/// The words on its contours, clear of plates and letters at `marks`.
[[gnu::noinline]] void draw_overlay_words(const Pen& pen, const Look& look, const OverlayStage& stage, const OverlayState& mine,
                                          std::vector<ImVec2> marks);

/// Who is in the spot under the pointer, how crowded and how clear it is: at once while something is laid over, else when the
/// pointer has rested. Nothing outside the water.
struct PointerRest {
  ImVec2 at;
  double since_s = 0;
};
void follow_spot(Ui& ui, const Look& look, const OverlayStage& stage, PointerRest& rest, Actions& out);
/// Words of the lane stand about `middle`: no other words are to cover them.
inline void take_for_words(const Pen& pen, std::string_view words, ImVec2 middle, std::vector<ImVec2>& taken) {
  const float half = text_width(pen, medium(type::small), words) / 2;
  for (const float x : {-half, 0.0f, half}) taken.push_back({middle.x + x, middle.y});
}

[[gnu::noinline]] void draw_spot_words(Ui& ui, const Look& look, const OverlayStage& stage, ImVec2 pointer);

}  // namespace shoalwright
