// SPDX-License-Identifier: MIT
#include "draw/scene/crowding.h"

#include <algorithm>
#include <cmath>

#include "imgui_internal.h"

namespace shoalwright {

namespace {

// The look's steps of the field: each contour is heavier than the one before.
constexpr float levels[4] = {0.25f, 0.5f, 0.75f, 1};
constexpr float strokes[4] = {1, 1.2f, 1.5f, 2.4f};
constexpr float alpha_start = 0.22f, alpha_gain = 0.62f, alpha_most = 0.6f, hatch_gap_cm = 1.4f;

struct Grid {
  const CrowdingField& field;
  float x_step() const { return (field.x1_cm - field.x0_cm) / static_cast<float>(field.columns - 1); }
  float depth_step() const { return (field.depth1_cm - field.depth0_cm) / static_cast<float>(field.rows - 1); }
  float node(int column, int row) const {
    return field.nodes[static_cast<size_t>(row) * static_cast<size_t>(field.columns) + static_cast<size_t>(column)];
  }
  Vec place(Vec node_units) const {
    return {field.x0_cm + node_units.x * x_step(), field.depth0_cm + node_units.y * depth_step()};
  }
  /// Between the nodes; not a number where one of them is none.
  float at(float x_cm, float depth_cm) const {
    const float x = (x_cm - field.x0_cm) / x_step(), y = (depth_cm - field.depth0_cm) / depth_step();
    if (!(x >= 0) || !(y >= 0) || !(x <= static_cast<float>(field.columns - 1)) || !(y <= static_cast<float>(field.rows - 1)))
      return NAN;
    const int column = std::min(static_cast<int>(x), field.columns - 2), row = std::min(static_cast<int>(y), field.rows - 2);
    const float fx = x - static_cast<float>(column), fy = y - static_cast<float>(row);
    return lerp(lerp(node(column, row), node(column + 1, row), fx), lerp(node(column, row + 1), node(column + 1, row + 1), fx),
                fy);
  }
};

bool whole(const CrowdingField& field) {
  return field.columns >= 2 && field.rows >= 2 &&
         field.nodes.size() >= static_cast<size_t>(field.columns) * static_cast<size_t>(field.rows) &&
         field.x1_cm > field.x0_cm && field.depth1_cm > field.depth0_cm;
}

// Numbers that are none compare as different, which would build the cache in every frame; two of them count as the same here.
bool same(const CrowdingField& a, const CrowdingField& b) {
  if (a.columns != b.columns || a.rows != b.rows || a.x0_cm != b.x0_cm || a.x1_cm != b.x1_cm || a.depth0_cm != b.depth0_cm ||
      a.depth1_cm != b.depth1_cm || a.nodes.size() != b.nodes.size()) {
    return false;
  }
  for (size_t i = 0; i < a.nodes.size(); ++i) {
    if (a.nodes[i] != b.nodes[i] && !(std::isnan(a.nodes[i]) && std::isnan(b.nodes[i]))) return false;
  }
  return true;
}

// Words stand on the longest line of a level, near the middle of the tank, each a little aside from the one before.
void place_label(CrowdingCache& cache, const std::vector<Vec>& line, int step, float middle_cm) {
  const float want = middle_cm + (static_cast<float>(step) - 1) * 7;
  Vec best = line.front();
  for (const Vec p : line) {
    // Of the places at about that x the deepest, where less is drawn.
    if (std::abs(p.x - want) + 0.25f * (0 - p.y) < std::abs(best.x - want) + 0.25f * (0 - best.y)) best = p;
  }
  cache.labels.push_back({levels[step], best.x, best.y});
}

}  // namespace

bool update(CrowdingCache& cache, const CrowdingField& field) {
  if (cache.built && same(cache.built_for, field)) return false;
  cache = CrowdingCache{};
  cache.built = true;
  cache.built_for = field;
  if (!whole(field)) return true;
  const Grid grid{cache.built_for};
  for (int step = 0; step < 4; ++step) {
    size_t longest = cache.lines.size();
    float most = 0;
    for (const Contour& contour : contours(field.nodes, field.columns, field.rows, levels[step])) {
      CrowdingCache::Line line{step, {}};
      float run = 0;
      for (const Vec p : contour.points) {
        line.points.push_back(grid.place(p));
        if (line.points.size() > 1) run += length(line.points.back() - line.points[line.points.size() - 2]);
      }
      // The corners that cells leave in a line are evened out; ends stay on the glass.
      for (int round = 0; round < 3 && line.points.size() > 4; ++round) {
        const std::vector<Vec> from = line.points;
        const size_t count = from.size();
        for (size_t i = 0; i < count; ++i) {
          if (!contour.closed && (i == 0 || i + 1 == count)) continue;
          // A closed line repeats its first point at its end.
          const Vec before = i > 0 ? from[i - 1] : from[count - 2], after = i + 1 < count ? from[i + 1] : from[1];
          line.points[i] = lerp(from[i], lerp(before, after, 0.5f), 0.5f);
        }
      }
      // A ring of a few millimetres says nothing.
      if (run < 2.5f) continue;
      if (run > most) {
        most = run;
        longest = cache.lines.size();
      }
      cache.lines.push_back(std::move(line));
    }
    if (step < 3 && most > 12) place_label(cache, cache.lines[longest].points, step, (field.x0_cm + field.x1_cm) / 2);
  }
  for (float depth = field.depth0_cm + hatch_gap_cm / 2; depth < field.depth1_cm; depth += hatch_gap_cm) {
    for (float x = field.x0_cm + hatch_gap_cm / 2; x < field.x1_cm; x += hatch_gap_cm) {
      if (grid.at(x, depth) > 1) cache.hatch.push_back({x, depth});
    }
  }
  return true;
}

void draw_crowding(ImDrawList* list, const CrowdingCache& cache, const Scene& scene, const FrontView& view) {
  const CrowdingField& field = cache.built_for;
  if (!cache.built || !whole(field)) return;
  const Grid grid{field};
  const ImU32 plum = palette(scene.theme).crowd;
  const auto on_screen = [&](Vec p) {
    return front_point(view, scene, static_cast<double>(p.x), scene.fill_cm - static_cast<double>(p.y));
  };
  list->PushClipRect(front_point(view, scene, 0, scene.fill_cm),
                     {front_point(view, scene, static_cast<double>(front_size_cm(scene).x) - 0.2 * scene.glass_mm, 0).x,
                      front_point(view, scene, 0, 0).y},
                     true);
  // Shading: one corner a node; a node that is no water is clear, and borrows from its neighbours so that the edge does not pale.
  const int corners = field.columns * field.rows, cells = (field.columns - 1) * (field.rows - 1);
  list->PrimReserve(cells * 6, corners);
  const unsigned base = list->_VtxCurrentIdx;
  for (int row = 0; row + 1 < field.rows; ++row) {
    for (int column = 0; column + 1 < field.columns; ++column) {
      const auto a = base + static_cast<unsigned>(row * field.columns + column), b = a + static_cast<unsigned>(field.columns);
      for (const unsigned index : {a, a + 1, b + 1, a, b + 1, b}) list->PrimWriteIdx(static_cast<ImDrawIdx>(index));
    }
  }
  const ImVec2 white = list->_Data->TexUvWhitePixel;
  for (int row = 0; row < field.rows; ++row) {
    for (int column = 0; column < field.columns; ++column) {
      const float value = grid.node(column, row);
      const float alpha = std::isfinite(value) ? std::clamp((value - alpha_start) * alpha_gain, 0.0f, alpha_most) : 0.0f;
      list->PrimWriteVtx(on_screen(grid.place({static_cast<float>(column), static_cast<float>(row)})), white,
                         with_alpha(plum, alpha));
    }
  }
  std::vector<ImVec2> points;
  for (const CrowdingCache::Line& line : cache.lines) {
    points.clear();
    for (const Vec p : line.points) points.push_back(on_screen(p));
    list->AddPolyline(points.data(), static_cast<int>(points.size()), plum, 0, strokes[line.step]);
  }
  const float half = 0.5f * view.px_per_cm;
  for (const Vec p : cache.hatch) {
    const ImVec2 at = on_screen(p);
    list->AddLine({at.x - half, at.y + half}, {at.x + half, at.y - half}, plum, 1.4f);
  }
  list->PopClipRect();
}

}  // namespace shoalwright
