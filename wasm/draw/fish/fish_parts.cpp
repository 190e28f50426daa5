// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

// Small separate blades that lean to the rear, as a bichir, a spiny eel or a sturgeon has them on the back.
void add_finlets(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat) {
  const float step = (shape.finlets.to - shape.finlets.from) / static_cast<float>(std::max(1, shape.finlets.count));
  for (int i = 0; i < shape.finlets.count; ++i) {
    const float x = shape.finlets.from + step * static_cast<float>(i), high = shape.finlets.height;
    const Vec root = trunk.at(x, 0.04f), rear = trunk.at(x + step * 0.85f, 0.04f);
    const std::uint32_t a = add_vertex(mesh, root, coat.fin_root),
                        b = add_vertex(mesh, root + Vec{step * 0.5f, high}, coat.fin_edge),
                        c = add_vertex(mesh, rear + Vec{step * 0.1f, high * 0.45f}, coat.fin),
                        d = add_vertex(mesh, rear, coat.fin_root);
    add_triangle(mesh, a, b, c);
    add_triangle(mesh, a, c, d);
  }
}

// Hooked scutes along the flank: pale little triangles.
void add_thorns(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat) {
  const float step = (shape.thorns.to - shape.thorns.from) / static_cast<float>(std::max(1, shape.thorns.count));
  const ImU32 colour = coat.flat ? coat.mark : mix(coat.flank, coat.pale, 0.55f);
  for (int i = 0; i < shape.thorns.count; ++i) {
    const Vec at = trunk.at(shape.thorns.from + step * static_cast<float>(i), 0.52f);
    const float half = shape.thorns.height * 0.5f;
    add_triangle(mesh, add_vertex(mesh, at + Vec{-step * 0.25f, half}, colour),
                 add_vertex(mesh, at + Vec{step * 0.5f, 0}, colour), add_vertex(mesh, at + Vec{-step * 0.25f, -half}, colour));
  }
}

// What shows through a glassy fish: the backbone with its ribs and the silver sack of the gut.
void add_bones(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat, const Detail& detail) {
  const ImU32 bone = with_alpha(mix(coat.pupil, coat.flank, 0.35f), 0.8f);
  std::vector<Vec> spine;
  for (int i = 0; i <= 8; ++i) spine.push_back(trunk.at(lerp(shape.gill_x, 1.0f, static_cast<float>(i) / 8), 0.36f));
  add_stroke(mesh, spine, 0.016f, 0.012f, coat.flat ? coat.mark : bone);
  if (detail.fine_marks && !coat.flat) {
    for (float x = shape.gill_x + 0.1f; x < 0.95f; x += 0.045f) {
      const Vec rib[2] = {trunk.at(x, 0.36f), trunk.at(x + 0.03f, 0.78f)};
      add_stroke(mesh, rib, 0.005f, 0.003f, scale_alpha(bone, 0.55f));
      const Vec spike[2] = {trunk.at(x, 0.36f), trunk.at(x + 0.03f, 0.1f)};
      add_stroke(mesh, spike, 0.005f, 0.003f, scale_alpha(bone, 0.45f));
    }
  }
  if (!coat.flat) {
    const float half = trunk.depth(shape.gill_x + 0.08f);
    add_ellipse(mesh, trunk.at(shape.gill_x + 0.05f, 0.66f), {half * 0.5f, half * 0.26f}, detail.eye_corners,
                with_alpha(mix(coat.belly, IM_COL32(255, 255, 255, 255), 0.6f), 0.75f));
  }
}

void add_eye(Mesh& mesh, const FishShape& shape, const Coat& coat, const Detail& detail) {
  add_ellipse(mesh, shape.eye, {shape.eye_radius, shape.eye_radius}, detail.eye_corners, coat.eye);
  if (coat.flat) return;
  add_ellipse(mesh, shape.eye, Vec{1, 1} * (shape.eye_radius * 0.64f), std::max(5, detail.eye_corners - 2), coat.pupil,
              detail.fine_marks);
  if (detail.fine_marks) {
    add_ellipse(mesh, shape.eye + Vec{-0.22f, 0.26f} * shape.eye_radius, Vec{1, 1} * (shape.eye_radius * 0.2f), 6,
                IM_COL32(255, 255, 255, 220));
  }
}

void add_plates(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat) {
  for (int i = 0; i < 16; ++i) {
    const float x = shape.gill_x + 0.04f + (0.96f - shape.gill_x) / 17 * static_cast<float>(i);
    const Vec line[3] = {trunk.at(x - 0.012f, 0.08f), trunk.at(x + 0.022f, 0.52f), trunk.at(x - 0.012f, 0.93f)};
    add_stroke(mesh, line, 0.005f, 0.005f, scale_alpha(coat.line, 0.7f));
  }
}

void add_bristles(Mesh& mesh, const Trunk& trunk, const Coat& coat) {
  for (int i = 0; i < 5; ++i) {
    const float t = static_cast<float>(i) / 4;
    const Vec root = trunk.at(0.012f + 0.1f * t, 0.02f);
    const Vec line[3] = {root, root + Vec{-0.02f + 0.01f * t, 0.03f}, root + Vec{-0.032f + 0.02f * t, 0.068f - 0.015f * t}};
    add_stroke(mesh, line, 0.017f, 0.009f, coat.flat ? coat.flank : coat.back);
  }
}

}  // namespace shoalwright
