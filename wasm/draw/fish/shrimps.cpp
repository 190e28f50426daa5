// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

Mesh shrimp_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2;
  const ImU32 leg = coat.flat ? coat.flank : with_alpha(mix(coat.flank, coat.back, 0.4f), 0.9f);
  // Antennae, one up and one down, longer than the head.
  const bool fans = look.form == Form::fan_shrimp, arms = look.form == Form::long_arm_shrimp;
  const Vec feeler_up[4] = {{0.06f, 0.035f}, {-0.12f, 0.13f}, {-0.3f, 0.16f}, {-0.44f, 0.1f}};
  const Vec feeler_down[4] = {{0.05f, 0.0f}, {-0.12f, 0.02f}, {-0.28f, -0.05f}, {-0.38f, -0.13f}};
  const int chords = fine ? 6 : 3;
  add_stroke(mesh, smooth(feeler_up, chords), 0.016f, 0.006f, leg);
  add_stroke(mesh, smooth(feeler_down, chords), 0.016f, 0.006f, leg);
  // Walking legs under the head, swimming legs under the tail.
  for (int i = 0; i < 4; ++i) {
    const float x = 0.17f + 0.065f * static_cast<float>(i);
    const Vec line[3] = {{x, -0.03f}, {x - 0.035f, -0.1f}, {x - 0.06f + 0.02f * static_cast<float>(i), -0.175f}};
    add_stroke(mesh, line, 0.02f, 0.009f, leg);
  }
  for (int i = 0; i < 4; ++i) {
    const float x = 0.5f + 0.085f * static_cast<float>(i), y = -0.005f - 0.018f * static_cast<float>(i);
    const Vec line[2] = {{x, y}, {x - 0.01f, y - 0.095f}};
    add_stroke(mesh, line, 0.034f, 0.014f, leg);
  }
  if (fans) {
    // Two pairs of brushes, spread into the current.
    for (int i = 0; i < 2; ++i) {
      const Vec root{0.1f - 0.01f * static_cast<float>(i), -0.02f - 0.03f * static_cast<float>(i)};
      for (int hair = 0; hair < (fine ? 7 : 3); ++hair) {
        const float turn = 2.5f + 0.42f * static_cast<float>(i) * 1.6f + 1.0f * static_cast<float>(hair) / (fine ? 6.0f : 2.0f);
        const Vec line[2] = {root + Vec{-0.06f, -0.02f},
                             root + Vec{-0.06f + 0.13f * std::cos(turn), -0.02f + 0.13f * std::sin(turn)}};
        add_stroke(mesh, line, 0.012f, 0.02f, leg);
      }
      const Vec arm[2] = {root, root + Vec{-0.06f, -0.02f}};
      add_stroke(mesh, arm, 0.035f, 0.03f, leg);
    }
  }
  if (arms) {
    // Arms as long as the body, with a narrow pincer at the end.
    for (int i = 0; i < 2; ++i) {
      const float drop = 0.09f * static_cast<float>(i);
      const Vec elbow{-0.02f, 0.04f - 0.16f * static_cast<float>(i)}, hand{-0.24f, -0.02f - drop}, tip{-0.38f, -0.07f - drop};
      const Vec line[4] = {{0.16f, -0.02f}, elbow, hand, tip}, thumb[2] = {hand, tip + Vec{0.02f, 0.05f}};
      add_stroke(mesh, smooth_even(line, fine ? 12 : 6), 0.026f, 0.02f, leg);
      add_stroke(mesh, thumb, 0.024f, 0.012f, leg);
    }
  }
  if (look.fins == Fins::longer) {
    // A rostrum as long as the head, tilted up.
    const Vec beak[3] = {{0.08f, 0.105f}, {-0.1f, 0.12f}, {-0.27f, 0.175f}};
    add_stroke(mesh, smooth_even(beak, fine ? 7 : 3), 0.035f, 0.01f, coat.flat ? coat.flank : coat.bright);
  }
  // Tail fan behind, then the bent body, then the shield of the head.
  for (int i = 0; i < 3; ++i) {
    const float turn = -0.62f + 0.34f * static_cast<float>(i);
    const Vec root{0.9f, -0.075f}, along{std::cos(turn), std::sin(turn)}, across{-along.y, along.x};
    const Vec blade[4] = {root + across * 0.018f, root + along * 0.09f + across * 0.034f, root + along * 0.125f,
                          root + along * 0.09f - across * 0.034f};
    add_fan(mesh, blade, root + along * 0.05f, coat.fin, coat.fin_root);
  }
  const Vec spine[6] = {{0.1f, 0.045f}, {0.3f, 0.075f}, {0.48f, 0.085f}, {0.66f, 0.055f}, {0.81f, -0.01f}, {0.92f, -0.085f}};
  const float stout = fans ? 1.18f : arms ? 0.84f : 1.0f;
  const float half[6] = {0.035f * stout, 0.08f * stout, 0.088f * stout, 0.074f * stout, 0.052f * stout, 0.024f * stout};
  const float see_through = coat.flat ? 1.0f : wears(look, Mark::glass) ? 0.5f : 0.94f;
  add_limb(mesh, spine, half, fine ? 22 : 11, with_alpha(coat.rim_top, see_through), with_alpha(coat.flank, see_through),
           with_alpha(coat.rim_bottom, see_through));
  if (!coat.flat && level > 0) {
    const std::vector<Vec> line = smooth_even(spine, 40);
    for (int i = 0; i < (fine ? 6 : 4); ++i) {
      const Vec at = line[static_cast<size_t>(17 + i * (fine ? 4 : 5))],
                next = line[static_cast<size_t>(18 + i * (fine ? 4 : 5))];
      const Vec along = unit(next - at), across{-along.y, along.x};
      const Vec seam[3] = {at + across * 0.075f, at + along * 0.014f, at - across * 0.06f};
      add_stroke(mesh, seam, 0.009f, 0.006f, coat.line);
    }
  }
  const Vec shield_top[4] = {{-0.005f, 0.1f}, {0.1f, 0.105f}, {0.26f, 0.155f}, {0.43f, 0.168f}};
  const Vec shield_bottom[4] = {{0.0f, 0.088f}, {0.08f, 0.0f}, {0.24f, -0.045f}, {0.42f, -0.005f}};
  const int across = fine ? 10 : 6;
  std::vector<Vec> top = smooth_even(shield_top, across), bottom = smooth_even(shield_bottom, across), middle;
  for (size_t i = 0; i < top.size(); ++i) middle.push_back(lerp(top[i], bottom[i], 0.5f));
  const Rail shield[3] = {
      rail(top, coat.rim_top),
      rail(middle, coat.flat ? coat.flank : mix(coat.flank, look.accent, wears(look, Mark::head_patch) ? 0.9f : 0.25f)),
      rail(bottom, coat.rim_bottom)};
  add_sheet(mesh, shield);
  const std::vector<Vec> line = smooth_even(spine, 30);
  if (wears(look, Mark::dots) || wears(look, Mark::spots)) {
    for (int row = 0; row < 2; ++row) {
      for (int i = 3; i < 28; i += fine ? 3 : 4) {
        const Vec at = line[static_cast<size_t>(i)];
        add_ellipse(mesh, at + Vec{0.0f, row == 0 ? 0.03f : -0.02f}, {fine ? 0.011f : 0.016f, fine ? 0.011f : 0.016f},
                    fine ? 6 : 4, coat.mark, fine);
      }
    }
  }
  if (wears(look, Mark::spangles)) {
    for (int i = 3; i < 28; i += fine ? 3 : 5)
      add_ellipse(mesh, line[static_cast<size_t>(i)] + Vec{0, i % 2 != 0 ? 0.035f : -0.01f}, {0.015f, 0.015f}, fine ? 8 : 4,
                  coat.bright, fine);
  }
  if (wears(look, Mark::back_stripe)) {
    std::vector<Vec> ridge;
    for (const Vec p : line) ridge.push_back(p + Vec{0.01f, 0.055f});
    add_stroke(mesh, ridge, 0.045f, 0.02f, coat.flat ? coat.mark : coat.bright);
  }
  if (wears(look, Mark::lateral_stripe) || wears(look, Mark::dark_band)) {
    add_stroke(mesh, line, 0.05f, 0.03f, coat.mark);
  }
  if (wears(look, Mark::bands) || wears(look, Mark::bars) || wears(look, Mark::tiger_bars)) {
    for (int i = 2; i < 28; i += 5) {
      const Vec at = line[static_cast<size_t>(i)], along = unit(line[static_cast<size_t>(i + 1)] - at), side{-along.y, along.x};
      const Vec bar[2] = {at + side * 0.06f, at - side * 0.05f};
      // A bee's bands are broad and cover what lies between; a tiger's are lines.
      const bool broad = wears(look, Mark::bands);
      const float wide = broad ? 0.034f : 0.013f, half_bar[2] = {wide, wide * 0.85f};
      add_limb(mesh, bar, half_bar, 2, coat.mark, coat.mark, coat.mark);
    }
  }
  if (wears(look, Mark::patches) || wears(look, Mark::blotches)) {
    for (const Vec p : {Vec{0.22f, 0.09f}, Vec{0.46f, 0.1f}, Vec{0.62f, 0.04f}, Vec{0.79f, 0.01f}})
      add_ellipse(mesh, p, {0.055f, 0.036f}, fine ? 12 : 7, coat.mark, fine);
  }
  const Vec eye{0.075f, 0.095f};
  if (coat.flat) {
    add_ellipse(mesh, eye, {0.024f, 0.024f}, 8, coat.eye);
  } else {
    add_ellipse(mesh, eye, {0.024f, 0.024f}, fine ? 12 : 6, coat.pupil);
    if (fine) add_ellipse(mesh, eye + Vec{-0.007f, 0.007f}, {0.006f, 0.006f}, 6, IM_COL32(255, 255, 255, 220));
  }
  settle(mesh, -0.005f, 1.03f, 0.02f);
  return mesh;
}

}  // namespace shoalwright
