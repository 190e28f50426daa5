// SPDX-License-Identifier: MIT
#pragma once

#include "draw/ui.h"

namespace shoalwright {

/// How much nearer a view of the tank is drawn than fits its area, and which spot of the fitted drawing is in the middle.
struct Zoom {
  float times = 1;  ///< 1 to 8
  ImVec2 focus;
  bool pans = false;  ///< the drawing is being drawn along
};

/// From where the fitted drawing stands to where it stands now.
void apply_zoom(const Zoom& zoom, const Box& area, ImVec2& corner, float& px_per_cm);

/// Wheel, pinch and the keys Z and Shift Z bring it nearer or farther about the pointer or, by keys, the middle; a drag that
/// begins on `open_water`, or anywhere by the middle button or two fingers, moves it; a double click there, or the button that
/// stands in the area while it is near, fits it again. Spot: `id`.fit.
void follow_zoom(Ui& ui, Zoom& zoom, std::string_view id, const Box& area, bool hovered, bool open_water, bool keys);

}  // namespace shoalwright
