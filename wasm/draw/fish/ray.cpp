// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

Mesh ray_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2;
  // Seen from above and behind a little, so that the round disc and what it wears show: it swims to the left.
  const Vec tail[4] = {{0.9f, -0.02f}, {1.12f, 0.0f}, {1.34f, 0.05f}, {1.6f, 0.04f}};
  add_stroke(mesh, smooth_even(tail, fine ? 18 : 7), 0.075f, 0.012f, coat.flat ? coat.fin : mix(coat.back, coat.flank, 0.5f));
  const Vec sting[2] = {{1.22f, 0.03f}, {1.38f, 0.085f}};
  add_stroke(mesh, sting, 0.022f, 0.006f, coat.flat ? coat.fin : coat.pale);
  for (const float side : {-1.0f, 1.0f}) {
    const Vec lobe[4] = {{0.82f, 0.1f * side}, {0.98f, 0.14f * side}, {1.04f, 0.07f * side}, {0.92f, 0.02f * side}};
    add_fan(mesh, lobe, {0.92f, 0.08f * side}, coat.fin, coat.fin_root);
  }
  const int corners = fine ? 40 : 16;
  std::vector<Vec> rim, inner;
  for (int i = 0; i <= corners; ++i) {
    const float angle = 6.2831853f * static_cast<float>(i) / static_cast<float>(corners);
    // A disc with a blunt point in front and a wavy hem.
    const float wave = coat.flat ? 0 : 0.008f * std::sin(angle * 11), nose = std::cos(angle) < -0.92f ? 0.012f : 0;
    rim.push_back({0.48f + (0.48f + nose + wave) * std::cos(angle), (0.33f + wave) * std::sin(angle)});
    inner.push_back({0.48f + 0.36f * std::cos(angle), 0.02f + 0.23f * std::sin(angle)});
  }
  const Rail rails[2] = {rail(rim, coat.flat ? coat.flank : mix(coat.rim_top, coat.back, 0.5f)), rail(inner, coat.flank)};
  add_sheet(mesh, rails, false);
  rim.pop_back();
  inner.pop_back();
  add_fan(mesh, rim, {0.48f, 0.02f}, coat.flat ? coat.flank : with_alpha(coat.back, 0.0f),
          coat.flat ? coat.flank : with_alpha(coat.back, 0.0f));
  add_fan(mesh, inner, {0.42f, 0.03f}, coat.flank, coat.flat ? coat.flank : mix(coat.flank, coat.back, 0.4f), false);
  const auto rings = [&](auto draw) {
    for (int ring = 0; ring < (fine ? 3 : 2); ++ring) {
      const int count = ring == 0 ? 5 : ring == 1 ? 10 : 16;
      const float out = 0.34f + 0.27f * static_cast<float>(ring);
      for (int i = 0; i < count; ++i) {
        const float angle = 6.2831853f * (static_cast<float>(i) + 0.4f * static_cast<float>(ring)) / static_cast<float>(count);
        const Vec at{0.48f + 0.48f * out * std::cos(angle), 0.33f * out * std::sin(angle) + 0.01f};
        if (at.x > 0.16f && at.x < 0.34f && std::abs(at.y) < 0.1f) continue;  // the eyes
        draw(at, ring);
      }
    }
  };
  if (wears(look, Mark::ocelli)) {
    rings([&](Vec at, int ring) {
      const float r = 0.03f - 0.005f * static_cast<float>(ring);
      add_ellipse(mesh, at, {r * 1.2f, r}, fine ? 10 : 4, coat.mark, false);
      if (!coat.flat) add_ellipse(mesh, at, {r * 0.8f, r * 0.64f}, fine ? 8 : 4, coat.bright, false);
    });
  }
  if (wears(look, Mark::dots)) {
    rings([&](Vec at, int ring) {
      const float r = 0.028f - 0.005f * static_cast<float>(ring);
      add_ellipse(mesh, at, {r * 1.2f, r}, fine ? 9 : 4, coat.flat ? coat.mark : coat.bright, false);
    });
  }
  if (wears(look, Mark::reticulate)) {
    rings([&](Vec at, int ring) {
      const float r = 0.036f - 0.003f * static_cast<float>(ring);
      if (!fine) {
        add_ellipse(mesh, at, {r * 1.1f, r * 0.9f}, 4, scale_alpha(coat.mark, 0.7f), false);
        return;
      }
      std::vector<Vec> cell;
      for (int i = 0; i <= (coat.flat ? 5 : 7); ++i) {
        const float angle = 6.2831853f * static_cast<float>(i) / (coat.flat ? 5.0f : 7.0f);
        cell.push_back(at + Vec{r * 1.3f * std::cos(angle), r * std::sin(angle)});
      }
      add_stroke(mesh, cell, 0.012f, 0.012f, coat.mark);
    });
  }
  for (const float side : {-1.0f, 1.0f}) {
    const Vec eye{0.25f, 0.02f + 0.06f * side};
    add_ellipse(mesh, eye, {0.034f, 0.028f}, fine ? 14 : 7, coat.flat ? coat.eye : mix(coat.back, coat.flank, 0.3f));
    if (!coat.flat) {
      add_ellipse(mesh, eye + Vec{-0.004f, 0.003f}, {0.02f, 0.017f}, fine ? 12 : 6, coat.eye, false);
      add_ellipse(mesh, eye + Vec{-0.006f, 0.003f}, {0.012f, 0.012f}, fine ? 10 : 5, coat.pupil, false);
      const Vec hole = eye + Vec{0.055f, 0.008f * side};
      add_ellipse(mesh, hole, {0.018f, 0.013f}, fine ? 10 : 5, mix(coat.back, coat.pupil, 0.5f), false);
    }
  }
  // A ray is measured across its disc.
  settle(mesh, 0, 0.96f, 0);
  return mesh;
}

}  // namespace shoalwright
