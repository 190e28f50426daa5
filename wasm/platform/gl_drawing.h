// SPDX-License-Identifier: MIT
// Puts what Dear ImGui has drawn on the canvas, by WebGL 2. Nothing else draws there: its state is set once and stays.
#pragma once

#include "imgui.h"

namespace shoalwright::platform {

/// Makes everything ready in the context that is current now: at the start, and anew when a lost one has come back.
void begin_gl_drawing();

/// One frame on a ground of one colour; `width_px` and `height_px` of the canvas, in device pixels.
void draw_by_gl(const ImDrawData& frame, int width_px, int height_px, const ImVec4& ground);

}  // namespace shoalwright::platform
