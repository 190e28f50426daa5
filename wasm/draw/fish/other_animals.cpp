// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

bool has(const AnimalLook& look, Mark mark) { return std::find(look.marks.begin(), look.marks.end(), mark) != look.marks.end(); }

// A body along a bent spine: half widths go with the points.
void add_limb(Mesh& mesh, std::span<const Vec> spine, std::span<const float> half, int count, ImU32 upper, ImU32 middle,
              ImU32 lower) {
  const std::vector<Vec> line = smooth_even(spine, count);
  std::vector<Vec> widths;
  for (size_t i = 0; i < half.size(); ++i)
    widths.push_back({static_cast<float>(i) / static_cast<float>(half.size() - 1), half[i]});
  const std::vector<Vec> width_line = smooth(widths, 6);
  Rail rails[3];
  for (size_t i = 0; i < line.size(); ++i) {
    const Vec along = unit(line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0]), across{-along.y, along.x};
    const float w = height_at(width_line, static_cast<float>(i) / static_cast<float>(line.size() - 1));
    rails[0].points.push_back(line[i] + across * w);
    rails[1].points.push_back(line[i]);
    rails[2].points.push_back(line[i] - across * w);
    rails[0].colours.push_back(upper);
    rails[1].colours.push_back(middle);
    rails[2].colours.push_back(lower);
  }
  add_sheet(mesh, rails);
}

}  // namespace

Mesh shrimp_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2;
  const ImU32 leg = coat.flat ? coat.flank : with_alpha(mix(coat.flank, coat.back, 0.4f), 0.9f);
  // Antennae, one up and one down, longer than the head.
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
  // Tail fan behind, then the bent body, then the shield of the head.
  for (int i = 0; i < 3; ++i) {
    const float turn = -0.62f + 0.34f * static_cast<float>(i);
    const Vec root{0.9f, -0.075f}, along{std::cos(turn), std::sin(turn)}, across{-along.y, along.x};
    const Vec blade[4] = {root + across * 0.018f, root + along * 0.09f + across * 0.034f, root + along * 0.125f,
                          root + along * 0.09f - across * 0.034f};
    add_fan(mesh, blade, root + along * 0.05f, coat.fin, coat.fin_root);
  }
  const Vec spine[6] = {{0.1f, 0.045f}, {0.3f, 0.075f}, {0.48f, 0.085f}, {0.66f, 0.055f}, {0.81f, -0.01f}, {0.92f, -0.085f}};
  const float half[6] = {0.035f, 0.08f, 0.088f, 0.074f, 0.052f, 0.024f};
  const float see_through = coat.flat ? 1.0f : 0.94f;
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
  const Rail shield[3] = {rail(top, coat.rim_top), rail(middle, coat.flat ? coat.flank : mix(coat.flank, look.accent, 0.25f)),
                          rail(bottom, coat.rim_bottom)};
  add_sheet(mesh, shield);
  const std::vector<Vec> line = smooth_even(spine, 30);
  if (has(look, Mark::dots) || has(look, Mark::spots)) {
    for (int row = 0; row < 2; ++row) {
      for (int i = 3; i < 28; i += fine ? 3 : 4) {
        const Vec at = line[static_cast<size_t>(i)];
        add_ellipse(mesh, at + Vec{0.0f, row == 0 ? 0.03f : -0.02f}, {fine ? 0.011f : 0.016f, fine ? 0.011f : 0.016f},
                    fine ? 6 : 4, coat.mark, fine);
      }
    }
  }
  if (has(look, Mark::lateral_stripe) || has(look, Mark::dark_band)) {
    add_stroke(mesh, line, 0.05f, 0.03f, coat.mark);
  }
  if (has(look, Mark::bands) || has(look, Mark::bars) || has(look, Mark::tiger_bars)) {
    for (int i = 2; i < 28; i += 5) {
      const Vec at = line[static_cast<size_t>(i)], along = unit(line[static_cast<size_t>(i + 1)] - at), side{-along.y, along.x};
      const Vec bar[2] = {at + side * 0.06f, at - side * 0.05f};
      add_stroke(mesh, bar, 0.04f, 0.035f, coat.mark);
    }
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

Mesh snail_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2;
  const ImU32 skin = coat.flat ? coat.fin : mix(coat.belly, rgb(0x6E655A), 0.45f);
  const ImU32 skin_dark = coat.flat ? coat.fin : mix(skin, coat.pupil, 0.3f);
  // Feelers, then the foot, then the shell over it.
  const Vec feeler_a[3] = {{-0.02f, -0.3f}, {-0.13f, -0.22f}, {-0.2f, -0.1f}},
            feeler_b[3] = {{0.0f, -0.31f}, {-0.16f, -0.29f}, {-0.26f, -0.22f}};
  add_stroke(mesh, smooth(feeler_a, 4), 0.035f, 0.014f, skin_dark);
  add_stroke(mesh, smooth(feeler_b, 4), 0.035f, 0.014f, skin_dark);
  const Vec foot[5] = {{-0.09f, -0.335f}, {0.1f, -0.345f}, {0.45f, -0.35f}, {0.8f, -0.355f}, {1.06f, -0.385f}};
  const float foot_half[5] = {0.05f, 0.075f, 0.075f, 0.055f, 0.008f};
  add_limb(mesh, foot, foot_half, fine ? 18 : 9, skin, skin, skin_dark);
  // The shell: a high rim with the spire behind; whorls as lines that turn in on the spire.
  const Vec rim_points[9] = {{0.02f, -0.27f}, {0.005f, -0.08f}, {0.09f, 0.14f},   {0.28f, 0.3f}, {0.52f, 0.345f},
                             {0.76f, 0.27f},  {0.94f, 0.08f},   {0.985f, -0.12f}, {0.9f, -0.29f}};
  std::vector<Vec> rim = smooth_even(rim_points, fine ? 34 : 13);
  std::vector<Vec> base;
  for (size_t i = 0; i < rim.size(); ++i) {
    base.push_back({lerp(0.06f, 0.88f, static_cast<float>(i) / static_cast<float>(rim.size() - 1)), -0.31f});
  }
  const Vec spire{0.72f, -0.02f};
  Rail outer = rail(rim, coat.rim_top), inner, low = rail(base, coat.rim_bottom);
  for (size_t i = 0; i < rim.size(); ++i) {
    inner.points.push_back(lerp(lerp(rim[i], base[i], 0.45f), spire, 0.12f));
    // Lit from above and the left.
    inner.colours.push_back(
        mix(coat.flank, coat.belly, coat.flat ? 0.0f : 0.5f * (1 - static_cast<float>(i) / static_cast<float>(rim.size() - 1))));
  }
  const Rail shell[3] = {outer, inner, low};
  add_sheet(mesh, shell);
  if (has(look, Mark::shell_stripes) || has(look, Mark::bands) || has(look, Mark::bars) || has(look, Mark::lateral_stripe)) {
    // Along the growth of the shell, from the crown down to the rim, each bent towards the mouth.
    for (int i = 0; i < 7; ++i) {
      const float t = (static_cast<float>(i) + 1.0f) / 8.2f;
      const auto k = static_cast<size_t>(t * static_cast<float>(rim.size() - 1));
      const Vec crown = lerp(rim[k], base[k], 0.03f), hem = lerp(rim[k], base[k], 0.97f);
      const Vec bend = lerp(crown, hem, 0.5f) + Vec{-0.075f + 0.012f * static_cast<float>(i), 0.02f};
      const Vec line[3] = {crown, bend, hem};
      add_stroke(mesh, smooth(line, fine ? 5 : 1), 0.05f, 0.03f, coat.mark);
    }
  }
  if (has(look, Mark::dots) || has(look, Mark::spots) || has(look, Mark::tiger_bars)) {
    for (int i = 1; i < static_cast<int>(rim.size()) - 1; i += fine ? 3 : 2) {
      for (int ring = 0; ring < 3; ++ring) {
        const Vec at = lerp(rim[static_cast<size_t>(i)], spire, 0.14f + 0.27f * static_cast<float>(ring));
        if (at.y > -0.24f) add_ellipse(mesh, at, {0.024f, 0.02f}, fine ? 8 : 4, coat.mark, fine);
      }
    }
  }
  // The seam turns in on the spire; below it the last whorl swells to the mouth.
  std::vector<Vec> whorl;
  for (int i = 0; i <= (fine ? 34 : 9); ++i) {
    const float t = static_cast<float>(i) / (fine ? 34.0f : 9.0f), angle = -2.15f + 10.2f * t, radius = 0.3f * std::pow(0.16f, t);
    whorl.push_back(spire + Vec{std::cos(angle) * radius, std::sin(angle) * radius * 0.9f});
  }
  const ImU32 seam = coat.flat ? coat.mark : mix(coat.back, coat.pupil, 0.55f);
  add_stroke(mesh, whorl, 0.034f, 0.012f, coat.flat ? seam : with_alpha(seam, 0.75f));
  if (!coat.flat) {
    // Light catches the shoulder of each turn, just outside its seam.
    std::vector<Vec> light;
    for (size_t i = whorl.size() / 5; i < whorl.size() * 2 / 3; ++i) light.push_back(lerp(spire, whorl[i], 1.16f));
    add_stroke(mesh, light, 0.022f, 0.008f, with_alpha(mix(coat.flank, IM_COL32(255, 255, 255, 255), 0.5f), 0.5f));
    if (fine) {
      for (int i = 1; i < 9; ++i) {
        const auto k = static_cast<size_t>(static_cast<float>(i) / 10.5f * static_cast<float>(rim.size() - 1));
        const Vec crown = lerp(rim[k], base[k], 0.03f), hem = lerp(rim[k], base[k], 0.97f);
        const Vec growth[3] = {crown, lerp(crown, hem, 0.5f) + Vec{-0.07f, 0.02f}, hem};
        add_stroke(mesh, smooth(growth, 5), 0.008f, 0.006f, scale_alpha(coat.line, 0.7f));
      }
    }
  }
  if (!coat.flat) {
    const Vec shine[3] = {{0.17f, 0.1f}, {0.29f, 0.21f}, {0.45f, 0.265f}};
    add_stroke(mesh, smooth(shine, 4), 0.03f, 0.045f, with_alpha(coat.pale, 0.5f));
    add_ellipse(mesh, {-0.035f, -0.295f}, {0.016f, 0.016f}, 6, coat.pupil);
  }
  settle(mesh, 0, 1, -0.03f);
  return mesh;
}

Mesh frog_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2;
  const int count = fine ? 16 : 6;
  const ImU32 far = coat.flat ? coat.fin : mix(coat.back, coat.pupil, 0.25f),
              near = coat.flat ? coat.flank : mix(coat.back, coat.flank, 0.5f);
  const auto leg = [&](std::span<const Vec> line, std::span<const float> half, ImU32 colour) {
    add_limb(mesh, line, half, count, colour, colour, coat.flat ? colour : mix(colour, coat.pupil, 0.2f));
  };
  const auto foot = [&](Vec root, float turn, float size, int toes, ImU32 colour) {
    std::vector<Vec> rim{root};
    for (int i = 0; i < toes; ++i) {
      const float angle = turn + (static_cast<float>(i) / static_cast<float>(toes - 1) - 0.5f) * 1.0f;
      const Vec tip = root + Vec{std::cos(angle), std::sin(angle)} * size;
      if (i > 0) rim.push_back(lerp(lerp(rim.back(), tip, 0.5f), root, 0.28f));
      rim.push_back(tip);
    }
    add_fan(mesh, rim, root + Vec{std::cos(turn), std::sin(turn)} * (size * 0.45f), scale_alpha(colour, 0.85f), colour);
  };
  // Far legs first.
  const float thigh[3] = {0.085f, 0.1f, 0.05f}, shin[3] = {0.055f, 0.06f, 0.03f}, arm[3] = {0.04f, 0.035f, 0.02f};
  const Vec far_thigh[3] = {{0.86f, 0.04f}, {1.02f, 0.13f}, {1.14f, 0.06f}},
            far_shin[3] = {{1.14f, 0.06f}, {1.24f, 0.0f}, {1.33f, 0.1f}};
  leg(far_thigh, thigh, far);
  leg(far_shin, shin, far);
  foot({1.32f, 0.09f}, 0.55f, 0.24f, 4, far);
  const Vec far_arm[3] = {{0.3f, -0.06f}, {0.22f, -0.16f}, {0.1f, -0.17f}};
  leg(far_arm, arm, far);
  // Trunk: flat pointed head, pear-shaped belly.
  const Vec top[6] = {{0, 0.01f}, {0.12f, 0.095f}, {0.3f, 0.145f}, {0.55f, 0.19f}, {0.82f, 0.165f}, {1, 0.04f}};
  const Vec bottom[6] = {{0, -0.015f}, {0.14f, -0.07f}, {0.32f, -0.115f}, {0.58f, -0.19f}, {0.84f, -0.16f}, {1, 0.0f}};
  const std::vector<Vec> upper = smooth_even(top, count + 2), lower = smooth_even(bottom, count + 2);
  std::vector<Vec> middle;
  for (size_t i = 0; i < upper.size(); ++i) middle.push_back(lerp(upper[i], lower[i], 0.55f));
  const Rail trunk[3] = {rail(upper, coat.rim_top), rail(middle, coat.flank), rail(lower, coat.rim_bottom)};
  add_sheet(mesh, trunk);
  if (has(look, Mark::dots) || has(look, Mark::spots) || has(look, Mark::reticulate) || has(look, Mark::honeycomb)) {
    for (int i = 0; i < 16; ++i) {
      const float t = 0.14f + 0.05f * static_cast<float>(i), v = 0.14f + 0.2f * static_cast<float>((i * 5) % 4);
      const auto k = static_cast<size_t>(t * static_cast<float>(upper.size() - 1));
      add_ellipse(mesh, lerp(upper[k], lower[k], v), {0.017f, 0.015f}, fine ? 8 : 4, coat.mark, fine);
    }
  }
  // Near legs over the trunk.
  const Vec near_thigh[3] = {{0.82f, -0.06f}, {1.02f, -0.02f}, {1.13f, -0.14f}},
            near_shin[3] = {{1.13f, -0.14f}, {1.2f, -0.24f}, {1.33f, -0.2f}};
  leg(near_thigh, thigh, near);
  leg(near_shin, shin, near);
  foot({1.31f, -0.2f}, -0.3f, 0.26f, 5, near);
  const Vec near_arm[4] = {{0.36f, -0.08f}, {0.33f, -0.2f}, {0.24f, -0.25f}, {0.14f, -0.23f}};
  leg(near_arm, arm, near);
  foot({0.15f, -0.23f}, 3.25f, 0.1f, 4, near);
  add_ellipse(mesh, {0.115f, 0.082f}, {0.026f, 0.026f}, fine ? 12 : 8, coat.eye);
  if (!coat.flat) add_ellipse(mesh, {0.115f, 0.082f}, {0.017f, 0.017f}, fine ? 10 : 6, coat.pupil);
  settle(mesh, 0, 1, 0);
  return mesh;
}

}  // namespace shoalwright
