// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

// Large pieces of a marbled coat, placed by hand so that they look grown: x, v and half sizes.
void patches(const Painter& paint, ImU32 colour) {
  constexpr float pieces[][4] = {{0.12f, 0.3f, 0.12f, 0.34f}, {0.2f, 0.5f, 0.07f, 0.22f},  {0.48f, 0.16f, 0.15f, 0.3f},
                                 {0.56f, 0.38f, 0.08f, 0.2f}, {0.78f, 0.6f, 0.11f, 0.34f}, {0.86f, 0.32f, 0.06f, 0.24f}};
  for (const auto& p : pieces) paint.blotch(p[0], p[1], p[2], p[3], colour);
}

}  // namespace

void add_colour_marks(const Painter& paint, const AnimalLook& look) {
  const Coat& coat = paint.coat;
  const int points = paint.detail.fine_marks ? 12 : 5;
  const ImU32 bright = coat.bright;
  const auto gone = [](ImU32 colour) { return scale_alpha(colour, 0); };
  for (const Mark one : look.marks) {
    switch (one) {
      case Mark::rear_half: {
        const float x[4] = {0.4f, 0.62f, 0.8f, 1.0f};
        const ImU32 colours[4] = {gone(bright), with_alpha(bright, 0.85f), bright, bright};
        paint.columns(x, colours);
        break;
      }
      case Mark::head_patch: {
        const float gill = paint.shape.gill_x, x[3] = {0.004f, gill * 0.72f, gill * 1.12f};
        const ImU32 colours[3] = {bright, bright, gone(bright)};
        paint.columns(x, colours);
        break;
      }
      case Mark::collar: {
        const float x[4] = {0.32f, 0.36f, 0.48f, 0.52f};
        const ImU32 colours[4] = {gone(bright), bright, bright, gone(bright)};
        paint.columns(x, colours);
        break;
      }
      case Mark::throat: {
        // From under the eye along the breast.
        const Spot upper[4] = {{0.02f, 0.6f}, {0.14f, 0.52f}, {0.3f, 0.62f}, {0.56f, 0.93f}},
                   middle[4] = {{0.025f, 0.76f}, {0.15f, 0.74f}, {0.3f, 0.8f}, {0.56f, 0.96f}},
                   lower[4] = {{0.03f, 0.97f}, {0.16f, 0.985f}, {0.3f, 0.99f}, {0.57f, 0.985f}};
        if (!paint.detail.fine_marks) {
          paint.patch(upper, lower, bright, bright, points);
          break;
        }
        paint.patch(upper, middle, scale_alpha(bright, 0.25f), bright, points);
        paint.patch(middle, lower, bright, bright, points);
        break;
      }
      case Mark::belly_patch: {
        const Spot upper[4] = {{0.24f, 0.82f}, {0.36f, 0.52f}, {0.55f, 0.52f}, {0.72f, 0.84f}},
                   middle[4] = {{0.24f, 0.9f}, {0.36f, 0.76f}, {0.55f, 0.76f}, {0.72f, 0.92f}},
                   lower[4] = {{0.25f, 0.985f}, {0.36f, 0.99f}, {0.55f, 0.99f}, {0.72f, 0.985f}};
        paint.patch(upper, middle, gone(bright), with_alpha(bright, 0.9f), points);
        paint.patch(middle, lower, with_alpha(bright, 0.9f), bright, points);
        break;
      }
      case Mark::patches: patches(paint, bright); break;
      default: break;
    }
  }
}

}  // namespace shoalwright
