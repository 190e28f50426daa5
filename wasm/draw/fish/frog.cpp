// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

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
  if (wears(look, Mark::dots) || wears(look, Mark::spots) || wears(look, Mark::reticulate) || wears(look, Mark::honeycomb)) {
    const bool large = wears(look, Mark::spots);
    for (int i = 0; i < 16; ++i) {
      const float t = 0.14f + 0.05f * static_cast<float>(i), v = 0.14f + 0.2f * static_cast<float>((i * 5) % 4);
      const auto k = static_cast<size_t>(t * static_cast<float>(upper.size() - 1));
      add_ellipse(mesh, lerp(upper[k], lower[k], v), large ? Vec{0.03f, 0.024f} : Vec{0.017f, 0.015f}, fine ? 9 : 4, coat.mark,
                  fine);
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
