// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

// A pincer that points along `turn`: a palm with a fixed finger and a thumb, both bent inwards.
void add_claw(Mesh& mesh, Vec wrist, float turn, float size, bool fine, ImU32 colour, ImU32 edge) {
  const Vec along{std::cos(turn), std::sin(turn)}, across{-along.y, along.x};
  const auto at = [&](float out, float side) { return wrist + along * (out * size) + across * (side * size); };
  const Vec finger[4] = {at(0, 0.02f), at(0.3f, 0.1f), at(0.65f, 0.13f), at(1, 0.02f)};
  const float widths[4] = {0.1f * size, 0.2f * size, 0.1f * size, 0.012f * size};
  add_limb(mesh, finger, widths, fine ? 10 : 4, edge, colour, colour);
  const Vec thumb[3] = {at(0.34f, -0.08f), at(0.62f, -0.17f), at(0.9f, -0.05f)};
  const float thumb_widths[3] = {0.1f * size, 0.075f * size, 0.012f * size};
  add_limb(mesh, thumb, thumb_widths, fine ? 7 : 3, colour, colour, edge);
}

}  // namespace

Mesh crayfish_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2;
  const ImU32 leg = coat.flat ? coat.fin : mix(coat.flank, coat.back, 0.5f),
              claw = coat.flat ? coat.flank : mix(coat.flank, coat.bright, wears(look, Mark::head_patch) ? 0.85f : 0.12f);
  const ImU32 claw_edge = coat.flat ? coat.flank : coat.rim_top;
  const Vec feelers[2][4] = {{{0.1f, 0.04f}, {-0.08f, 0.16f}, {-0.26f, 0.24f}, {-0.46f, 0.2f}},
                             {{0.1f, 0.02f}, {-0.1f, 0.1f}, {-0.3f, 0.13f}, {-0.44f, 0.05f}}};
  for (const auto& one : feelers) add_stroke(mesh, smooth_even(one, fine ? 12 : 4), 0.016f, 0.006f, leg);
  // The far arm is shorter; the near one lies in front of the head.
  const Vec far_arm[3] = {{0.2f, -0.02f}, {0.08f, 0.08f}, {-0.02f, 0.06f}};
  const float arm_half[3] = {0.022f, 0.026f, 0.028f};
  add_limb(mesh, far_arm, arm_half, fine ? 8 : 3, leg, leg, leg);
  add_claw(mesh, {-0.02f, 0.06f}, 2.95f, 0.3f, fine, coat.flat ? coat.flank : mix(claw, coat.back, 0.35f), claw_edge);
  for (int i = 0; i < 4; ++i) {
    const float x = 0.22f + 0.06f * static_cast<float>(i), out = -0.05f + 0.05f * static_cast<float>(i);
    const Vec line[4] = {{x, -0.05f}, {x + out * 0.6f, -0.1f}, {x + out, -0.14f}, {x + out * 1.5f - 0.02f, -0.215f}};
    add_stroke(mesh, line, 0.032f, 0.012f, leg);
  }
  // Tail fan, rings, carapace.
  for (int i = 0; i < 4; i += fine ? 1 : 3) {
    const float turn = -0.75f + 0.34f * static_cast<float>(i);
    const Vec root{0.88f, -0.05f}, along{std::cos(turn), std::sin(turn)}, across{-along.y, along.x};
    const Vec blade[4] = {root + across * 0.02f, root + along * 0.11f + across * 0.05f, root + along * 0.15f,
                          root + along * 0.11f - across * 0.05f};
    add_fan(mesh, blade, root + along * 0.06f, coat.fin_edge, coat.fin_root);
  }
  const Vec spine[5] = {{0.32f, 0.02f}, {0.5f, 0.025f}, {0.66f, 0.015f}, {0.8f, -0.015f}, {0.93f, -0.06f}};
  const float half[5] = {0.1f, 0.105f, 0.095f, 0.075f, 0.045f};
  add_limb(mesh, spine, half, fine ? 20 : 7, coat.rim_top, coat.flank, coat.rim_bottom);
  const std::vector<Vec> rings = smooth_even(spine, 13);
  if (!coat.flat) {
    for (size_t i = 3; i < 12; i += fine ? 1 : 4) {
      const Vec along = unit(rings[i + 1] - rings[i]), across{-along.y, along.x};
      const float w = height_at(std::vector<Vec>{{0, 0.1f}, {6, 0.1f}, {12, 0.045f}}, static_cast<float>(i));
      const Vec seam[3] = {rings[i] + across * w, rings[i] + along * 0.018f, rings[i] - across * w};
      add_stroke(mesh, seam, 0.012f, 0.008f, coat.line);
    }
  }
  const Vec top[5] = {{0.02f, 0.06f}, {0.12f, 0.085f}, {0.24f, 0.125f}, {0.36f, 0.135f}, {0.46f, 0.115f}};
  const Vec bottom[5] = {{0.02f, 0.05f}, {0.1f, -0.03f}, {0.22f, -0.085f}, {0.34f, -0.095f}, {0.45f, -0.075f}};
  const int count = fine ? 18 : 6;
  const std::vector<Vec> upper = smooth_even(top, count), lower = smooth_even(bottom, count);
  std::vector<Vec> middle;
  for (size_t i = 0; i < upper.size(); ++i) middle.push_back(lerp(upper[i], lower[i], 0.45f));
  const Rail shield[3] = {rail(upper, coat.rim_top), rail(middle, coat.flank), rail(lower, coat.rim_bottom)};
  add_sheet(mesh, shield);
  const auto speckle = [&](float radius, int step, ImU32 colour) {
    for (int i = 1; i < count - 1; i += fine ? step : step * 2) {
      for (const float v : {0.22f, 0.5f, 0.76f})
        add_ellipse(mesh, lerp(upper[static_cast<size_t>(i)], lower[static_cast<size_t>(i)], v) + Vec{v == 0.5f ? 0.012f : 0, 0},
                    {radius, radius}, fine ? 7 : 4, colour, false);
    }
    for (size_t i = 4; i < 12; i += 2) add_ellipse(mesh, rings[i] + Vec{0, 0.03f}, {radius, radius}, fine ? 7 : 4, colour, false);
  };
  if (wears(look, Mark::dots)) speckle(0.011f, 2, coat.mark);
  if (wears(look, Mark::spangles)) speckle(0.011f, 2, coat.bright);
  if (wears(look, Mark::lateral_stripe)) add_stroke(mesh, rings, 0.04f, 0.025f, coat.mark);
  if (wears(look, Mark::marbling) || wears(look, Mark::reticulate)) {
    for (int i = 1; i < count - 2; i += fine ? 3 : 2) {
      const auto k = static_cast<size_t>(i);
      const Vec line[3] = {lerp(upper[k], lower[k], 0.12f), lerp(upper[k + 1], lower[k + 1], 0.45f),
                           lerp(upper[k], lower[k], 0.85f)};
      add_stroke(mesh, smooth_even(line, fine ? 7 : 3), 0.02f, 0.014f, coat.mark);
    }
    for (size_t i = 3; i < 12; i += 2)
      add_ellipse(mesh, rings[i] + Vec{0, 0.03f}, {0.026f, 0.02f}, fine ? 9 : 5, coat.mark, fine);
  }
  if (!coat.flat) {
    const Vec seam[3] = {{0.3f, 0.125f}, {0.26f, 0.03f}, {0.31f, -0.08f}};
    add_stroke(mesh, smooth_even(seam, fine ? 7 : 3), 0.012f, 0.008f, coat.line);
  }
  const Vec near_arm[4] = {{0.22f, -0.05f}, {0.12f, -0.09f}, {0.04f, -0.05f}, {-0.04f, -0.05f}};
  add_limb(mesh, near_arm, arm_half, fine ? 12 : 4, claw_edge, claw, claw);
  add_claw(mesh, {-0.04f, -0.05f}, 3.3f, 0.4f, fine, claw, claw_edge);
  add_ellipse(mesh, {0.075f, 0.072f}, {0.02f, 0.02f}, fine ? 12 : 6, coat.flat ? coat.eye : coat.pupil);
  // From the tip of the head to the tail fan, as crayfish are measured.
  settle(mesh, 0.0f, 1.03f, 0.02f);
  return mesh;
}

Mesh crab_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2;
  const ImU32 leg = coat.flat ? coat.fin : mix(coat.flank, coat.back, 0.35f), claw = coat.flat ? coat.flank : coat.bright;
  // As it faces us: four legs to either side, the pincers raised before the shield; measured across the shield.
  for (int side = -1; side <= 1; side += 2) {
    const auto s = static_cast<float>(side);
    for (int i = 0; i < 4; ++i) {
      const auto k = static_cast<float>(i);
      const Vec line[4] = {{s * (0.42f - 0.05f * k), -0.04f - 0.045f * k},
                           {s * (0.66f - 0.07f * k), 0.06f - 0.1f * k},
                           {s * (0.8f - 0.08f * k), -0.1f - 0.09f * k},
                           {s * (0.84f - 0.1f * k), -0.28f - 0.07f * k}};
      const float half[4] = {0.045f, 0.034f, 0.024f, 0.006f};
      if (fine) {
        add_limb(mesh, line, half, coat.flat ? 7 : 10, leg, leg, coat.flat ? leg : mix(leg, coat.pupil, 0.25f));
      } else {
        add_stroke(mesh, line, 0.1f, 0.03f, leg);
      }
    }
    const Vec stalk[2] = {{s * 0.13f, 0.16f}, {s * 0.15f, 0.3f}};
    add_stroke(mesh, stalk, 0.05f, 0.045f, coat.flat ? coat.flank : leg);
  }
  std::vector<Vec> rim;
  const int corners = fine ? 36 : 16;
  for (int i = 0; i < corners; ++i) {
    const float angle = 6.2831853f * static_cast<float>(i) / static_cast<float>(corners), c = std::cos(angle),
                n = std::sin(angle);
    // Broad shoulders, a narrower rear.
    const float across = (n > 0 ? 0.5f : 0.5f - 0.1f * n * n) * (c < 0 ? -1.0f : 1.0f) * std::pow(std::abs(c), 0.75f);
    rim.push_back({across, (n > 0 ? 0.22f : 0.27f) * (n < 0 ? -1.0f : 1.0f) * std::pow(std::abs(n), 0.85f)});
  }
  add_fan(mesh, rim, {-0.08f, 0.06f}, coat.flat ? coat.flank : coat.rim_top,
          coat.flat ? coat.flank : mix(coat.flank, coat.pale, 0.12f));
  if (wears(look, Mark::collar)) {
    // The pale rear of a two-coloured shield.
    const Vec back[5] = {{-0.3f, -0.14f}, {-0.16f, -0.2f}, {0, -0.21f}, {0.16f, -0.2f}, {0.3f, -0.14f}};
    const float half[3] = {0.02f, 0.05f, 0.02f};
    add_limb(mesh, back, half, fine ? 12 : 4, coat.pale, coat.pale, coat.pale);
  }
  if (wears(look, Mark::dots)) {
    for (int i = 0; i < 14; i += fine ? 1 : 2) {
      const float angle = 2.4f * static_cast<float>(i), out = 0.06f + 0.022f * static_cast<float>(i);
      add_ellipse(mesh, Vec{std::cos(angle) * out, std::sin(angle) * out * 0.5f - 0.03f}, {0.022f, 0.019f}, fine ? 8 : 4,
                  coat.mark, fine);
    }
  }
  if (!coat.flat) {
    const Vec mouth[3] = {{-0.1f, 0.09f}, {0, 0.06f}, {0.1f, 0.09f}};
    add_stroke(mesh, smooth_even(mouth, fine ? 7 : 3), 0.014f, 0.014f, with_alpha(coat.pupil, 0.4f));
  }
  for (int side = -1; side <= 1; side += 2) {
    const auto s = static_cast<float>(side);
    const Vec arm[3] = {{s * 0.36f, 0.08f}, {s * 0.56f, 0.12f}, {s * 0.6f, 0.24f}};
    const float half[3] = {0.06f, 0.055f, 0.05f};
    add_limb(mesh, arm, half, fine ? 8 : 3, leg, leg, coat.flat ? leg : mix(leg, coat.pupil, 0.25f));
    add_claw(mesh, {s * 0.6f, 0.22f}, side < 0 ? 1.25f : 3.1416f - 1.25f, 0.36f, fine, claw,
             coat.flat ? claw : mix(claw, coat.pupil, 0.3f));
    const Vec eye{s * 0.155f, 0.31f};
    add_ellipse(mesh, eye, {0.045f, 0.045f}, fine ? 12 : 6, coat.flat || !wears(look, Mark::bright_eye) ? coat.eye : coat.mark);
    if (!coat.flat) add_ellipse(mesh, eye, {0.028f, 0.028f}, fine ? 12 : 6, coat.pupil, fine);
  }
  settle(mesh, -0.5f, 0.5f, -0.03f);
  return mesh;
}

}  // namespace shoalwright
