// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/scene/build.h"
#include "draw/scene/piece.h"

namespace shoalwright {

/// Contours of hills and valleys, every so many cm as keep them apart, in short runs as a wedge has them.
[[gnu::noinline]] void add_terrain_contours(SceneCache& cache, ImU32 colour) {
  const Scene& scene = cache.built_for;
  constexpr int columns = 64, rows = 32;
  const float step_x = cache.length_cm / (columns - 1), step_z = cache.width_cm / (rows - 1);
  std::vector<float> nodes;
  float low = 1e9f, high = 0;
  for (int k = 0; k < rows; ++k)
    for (int i = 0; i < columns; ++i) {
      const Vec at{step_x * static_cast<float>(i), step_z * static_cast<float>(k)};
      nodes.push_back(static_cast<float>(ground_cm(scene, static_cast<double>(at.x), static_cast<double>(at.y))));
      low = std::min(low, nodes.back());
      high = std::max(high, nodes.back());
    }
  const float step = high - low > 16 ? 4.0f : 2.0f;
  for (float level = step * std::ceil(low / step + 1e-4f); level < high; level += step)
    for (const Contour& contour : contours(nodes, columns, rows, level)) {
      std::vector<Vec> run;
      int left = 0;  // points to leave out before the next run
      for (const Vec node : contour.points) {
        const Vec at{node.x * step_x, node.y * step_z};
        if (left-- > 0 || !inside(cache.outline, at)) {
          run.clear();
          continue;
        }
        run.push_back(at);
        if (run.size() < 8) continue;
        add_stroke(cache.plan_floor, run, 0.2f, 0.2f, colour);
        run.clear();
        left = 1;
      }
      if (run.size() > 2) add_stroke(cache.plan_floor, run, 0.2f, 0.2f, colour);
    }
}

void add_plan_floor(SceneCache& cache) {
  const Scene& scene = cache.built_for;
  const Palette& c = palette(scene.theme);
  const Ground ground = ground_of(scene);
  const bool bare = !has_bed(scene);
  const ImU32 floor = mix(bare ? c.glass : ground.face, c.waterMid, 0.42f);
  Mesh& mesh = cache.plan_floor;
  for (const Vec p : cache.outline) add_vertex(mesh, p, floor);
  const std::vector<std::uint32_t> corners = triangulate(cache.outline);
  for (size_t i = 0; i + 2 < corners.size(); i += 3) add_triangle(mesh, corners[i], corners[i + 1], corners[i + 2]);
  if (bare) return;
  // Contours of the bank every 2 cm of height: straight across for a wedge, with the wander of raked sand, in short runs.
  const double low = std::min(scene.front_cm, scene.back_cm), high = std::max(scene.front_cm, scene.back_cm);
  const auto slope = (scene.back_cm - scene.front_cm) / std::max(1.0, static_cast<double>(cache.width_cm));
  const ImU32 line_colour = with_alpha(ground.foot, 0.55f);
  if (!scene.line_cm.empty()) {
    if (scene.contours) add_terrain_contours(cache, line_colour);
  } else if (std::abs(slope) > 1e-6) {
    for (double level = 2 * std::ceil(low / 2 + 1e-6); level < high; level += 2) {
      const auto z = static_cast<float>((level - scene.front_cm) / slope);
      const auto wander = [&](float x) { return z + 0.55f * std::sin(x / 9.0f + z * 0.3f) + 0.3f * std::sin(x / 4.1f + z); };
      const std::vector<float> cuts = cuts_at_y(cache.outline, std::clamp(z, 0.05f, cache.width_cm - 0.05f));
      for (size_t i = 0; i + 1 < cuts.size(); i += 2) {
        for (float x = cuts[i] + 0.6f; x + 1.6f < cuts[i + 1]; x += 4.2f) {
          std::vector<Vec> run;
          for (int k = 0; k < 3; ++k) {
            const float at = std::min(x + 1.4f * static_cast<float>(k), cuts[i + 1] - 0.4f);
            run.push_back({at, std::clamp(wander(at), 0.2f, cache.width_cm - 0.2f)});
          }
          add_stroke(mesh, run, 0.2f, 0.2f, line_colour);
        }
      }
    }
  }
  Dice dice{7};
  // Sand as the hand leaves it: short raked runs, hardly darker than the rest.
  const int runs = std::clamp(static_cast<int>(cache.length_cm * 0.28f), 8, 30);
  for (int i = 0; i < runs; ++i) {
    const Vec at{dice.between(2, cache.length_cm - 6), dice.between(1.5f, cache.width_cm - 1.5f)};
    const float reach = dice.between(2.2f, 4.6f), bow = dice.between(-0.22f, 0.22f);
    const Vec run[3] = {at, at + Vec{reach * 0.5f, bow}, at + Vec{reach, 0}};
    if (inside(cache.outline, run[0]) && inside(cache.outline, run[2]) && inside(cache.outline, run[1]))
      add_stroke(mesh, run, 0.16f, 0.16f, with_alpha(ground.foot, 0.28f));
  }
  const int grains = std::clamp(static_cast<int>(cache.length_cm * 0.6f), 15, 60);
  for (int i = 0; i < grains; ++i) {
    const Vec at{dice.between(0.5f, cache.length_cm - 0.5f), dice.between(0.5f, cache.width_cm - 0.5f)};
    if (inside(cache.outline, at))
      add_ellipse(mesh, at, {0.16f, 0.12f}, 4, with_alpha(dice.next() < 0.5f ? ground.grain_dark : ground.grain_light, 0.5f),
                  false);
  }
}

void draw_plan_view(ImDrawList* list, const SceneCache& cache, const PlanView& view) {
  const Scene& scene = cache.built_for;
  if (cache.outline.size() < 3) return;
  const Palette& c = palette(scene.theme);
  const Placement place{.origin = plan_point(view, scene, 0, 0), .scale = view.px_per_cm};
  const auto glass = static_cast<float>(scene.glass_mm) / 10;
  const auto on_screen = [&](const std::vector<Vec>& line) {
    std::vector<ImVec2> out;
    for (const Vec p : line) out.push_back(plan_point(view, scene, static_cast<double>(p.x), static_cast<double>(p.y)));
    return out;
  };
  const std::vector<ImVec2> inner = on_screen(cache.outline), middle = on_screen(moved_out(cache.outline, glass / 2)),
                            outer = on_screen(moved_out(cache.outline, glass));
  list->PushClipRect(plan_point(view, scene, static_cast<double>(-glass), static_cast<double>(cache.width_cm + glass)),
                     plan_point(view, scene, static_cast<double>(cache.length_cm + glass), static_cast<double>(-glass)), true);
  emit(list, cache.plan_floor, place);
  for (const bool floating : {false, true})
    for (const std::size_t i : cache.from_above)
      if (const PieceMeshes& piece = cache.pieces[i]; (piece.layer == PieceLayer::floating) == floating)
        emit(list, piece.above, place);
  list->PopClipRect();
  list->AddPolyline(middle.data(), static_cast<int>(middle.size()), with_alpha(c.glass, 0.5f), ImDrawFlags_Closed,
                    glass * view.px_per_cm);
  list->AddPolyline(outer.data(), static_cast<int>(outer.size()), c.glassEdge, ImDrawFlags_Closed, 1.5f);
  list->AddPolyline(inner.data(), static_cast<int>(inner.size()), with_alpha(c.glassEdge, 0.7f), ImDrawFlags_Closed, 1);
}

void outline_piece_plan(ImDrawList* list, const Scene& scene, const PlanView& view, const Piece& piece, ImU32 colour,
                        float thickness) {
  const PieceFrame frame = frame_of(scene, piece);
  std::vector<ImVec2> line;
  for (const Vec corner : {Vec{-0.5f, -0.5f}, Vec{0.5f, -0.5f}, Vec{0.5f, 0.5f}, Vec{-0.5f, 0.5f}, Vec{-0.5f, -0.5f}}) {
    const Vec3 p = frame.at(corner.x * frame.length, corner.y * frame.depth, 0);
    line.push_back(plan_point(view, scene, static_cast<double>(p.x), static_cast<double>(p.z)));
  }
  dashed_line(list, line, dash_ghost_outline(), colour, thickness);
}

}  // namespace shoalwright
