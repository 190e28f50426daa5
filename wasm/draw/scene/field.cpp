// SPDX-License-Identifier: MIT
#include "draw/scene/field.h"

#include <algorithm>
#include <cmath>

#include "draw/palette.h"
#include "imgui_internal.h"

namespace shoalwright {

namespace {

// The look's steps of the field: each contour is heavier than the one before.
constexpr float strokes[4] = {1, 1.2f, 1.5f, 2.4f};
constexpr float shaded_from = 0.88f, alpha_at_last = 0.48f, alpha_most = 0.6f, hatch_gap_cm = 1.4f;

struct Grid {
  const Field& field;
  float x_step() const { return (field.x1_cm - field.x0_cm) / static_cast<float>(field.columns - 1); }
  float y_step() const { return (field.y1_cm - field.y0_cm) / static_cast<float>(field.rows - 1); }
  float node(int column, int row) const {
    return field.nodes[static_cast<size_t>(row) * static_cast<size_t>(field.columns) + static_cast<size_t>(column)];
  }
  Vec place(Vec node_units) const { return {field.x0_cm + node_units.x * x_step(), field.y0_cm + node_units.y * y_step()}; }
  /// Between the nodes; not a number where one of them is none.
  float at(float x_cm, float y_cm) const {
    const float x = (x_cm - field.x0_cm) / x_step(), y = (y_cm - field.y0_cm) / y_step();
    if (!(x >= 0) || !(y >= 0) || !(x <= static_cast<float>(field.columns - 1)) || !(y <= static_cast<float>(field.rows - 1)))
      return NAN;
    const int column = std::min(static_cast<int>(x), field.columns - 2), row = std::min(static_cast<int>(y), field.rows - 2);
    const float fx = x - static_cast<float>(column), fy = y - static_cast<float>(row);
    return lerp(lerp(node(column, row), node(column + 1, row), fx), lerp(node(column, row + 1), node(column + 1, row + 1), fx),
                fy);
  }
};

bool whole(const Field& field) {
  return field.columns >= 2 && field.rows >= 2 &&
         field.nodes.size() >= static_cast<size_t>(field.columns) * static_cast<size_t>(field.rows) &&
         field.x1_cm > field.x0_cm && field.y1_cm > field.y0_cm;
}

// One corner a node; a node that is no water is clear. Cells without shade, which are most in a sound tank, are left out.
void shade(const Grid& grid, FieldCache& cache) {
  const Field& field = cache.field;
  const float first = cache.look.steps[0] * shaded_from, last = cache.look.steps[3];
  std::vector<float> alpha(field.nodes.size());
  for (size_t i = 0; i < alpha.size(); ++i) {
    const float value = field.nodes[i], share = cache.look.falls ? (last - value) / last : (value - first) / (last - first);
    alpha[i] = std::isfinite(value) ? std::clamp(share * alpha_at_last, 0.0f, alpha_most) : 0.0f;
  }
  constexpr unsigned none = ~0u;
  std::vector<unsigned> corner_of(alpha.size(), none);
  const auto corner = [&](int column, int row) {
    const size_t node = static_cast<size_t>(row) * static_cast<size_t>(field.columns) + static_cast<size_t>(column);
    if (corner_of[node] == none) {
      corner_of[node] = static_cast<unsigned>(cache.shades.size());
      cache.shades.push_back({grid.place({static_cast<float>(column), static_cast<float>(row)}), alpha[node]});
    }
    return corner_of[node];
  };
  for (int row = 0; row + 1 < field.rows; ++row) {
    const float* above = alpha.data() + static_cast<size_t>(row) * static_cast<size_t>(field.columns);
    const float* under = above + field.columns;
    for (int column = 0; column + 1 < field.columns; ++column) {
      if (!(above[column] > 0 || above[column + 1] > 0 || under[column] > 0 || under[column + 1] > 0)) continue;
      const unsigned a = corner(column, row), b = corner(column + 1, row), c = corner(column + 1, row + 1),
                     d = corner(column, row + 1);
      cache.triangles.insert(cache.triangles.end(), {a, b, c, a, c, d});
    }
  }
}

}  // namespace

FieldCache ready(Field field, const FieldLook& look) {
  FieldCache cache{.field = std::move(field), .look = look, .lines = {}, .hatch = {}, .shades = {}, .triangles = {}};
  if (!whole(cache.field)) return cache;
  const Field& of = cache.field;
  const Grid grid{of};
  for (int step = 0; step < 4; ++step) {
    size_t longest = cache.lines.size();
    float most = 0;
    for (const Contour& contour : contours(of.nodes, of.columns, of.rows, look.steps[static_cast<size_t>(step)])) {
      FieldCache::Line line{step, {}};
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
    if (!(step == 3 && look.hatched) && most > 12) cache.longest[static_cast<size_t>(step)] = static_cast<int>(longest);
  }
  shade(grid, cache);
  for (float y = of.y0_cm + hatch_gap_cm / 2; look.hatched && y < of.y1_cm; y += hatch_gap_cm)
    for (float x = of.x0_cm + hatch_gap_cm / 2; x < of.x1_cm; x += hatch_gap_cm)
      if (grid.at(x, y) > look.steps[3]) cache.hatch.push_back({x, y});
  return cache;
}

std::optional<ImVec2> place_of_words(const FieldCache& cache, int step, const FieldPlace& place, ImVec2 half_px,
                                     std::vector<ImVec2>& taken) {
  const int line = cache.longest[static_cast<size_t>(step)];
  if (line < 0) return std::nullopt;
  const Vec middle{(cache.field.x0_cm + cache.field.x1_cm) / 2, (cache.field.y0_cm + cache.field.y1_cm) / 2};
  std::optional<ImVec2> best;
  float nearest = 0;
  for (const Vec p : cache.lines[static_cast<size_t>(line)].points) {
    const ImVec2 at = place.at(p);
    const float away = length(p - middle);
    if (best && away >= nearest) continue;
    if (std::any_of(taken.begin(), taken.end(),
                    [&](const ImVec2& one) { return std::abs(one.x - at.x) < half_px.x && std::abs(one.y - at.y) < half_px.y; }))
      continue;
    best = at;
    nearest = away;
  }
  if (best) taken.insert(taken.end(), {*best, {best->x - half_px.x / 2, best->y}, {best->x + half_px.x / 2, best->y}});
  return best;
}

void draw_field(ImDrawList* list, const FieldCache& cache, const FieldPlace& place, const Box& clip, ImU32 colour) {
  if (!whole(cache.field)) return;
  list->PushClipRect(clip.min(), clip.max(), true);
  list->PrimReserve(static_cast<int>(cache.triangles.size()), static_cast<int>(cache.shades.size()));
  const unsigned base = list->_VtxCurrentIdx;
  for (const unsigned corner : cache.triangles) list->PrimWriteIdx(static_cast<ImDrawIdx>(base + corner));
  const ImVec2 white = list->_Data->TexUvWhitePixel;
  for (const FieldCache::Shade& one : cache.shades) list->PrimWriteVtx(place.at(one.at), white, with_alpha(colour, one.alpha));
  std::vector<ImVec2> points;
  for (const FieldCache::Line& line : cache.lines) {
    points.clear();
    for (const Vec p : line.points) points.push_back(place.at(p));
    list->AddPolyline(points.data(), static_cast<int>(points.size()), colour, 0, strokes[line.step]);
  }
  const float half = 0.5f * place.x_px;
  for (const Vec p : cache.hatch) {
    const ImVec2 at = place.at(p);
    list->AddLine({at.x - half, at.y + half}, {at.x + half, at.y - half}, colour, 1.4f);
  }
  list->PopClipRect();
}

}  // namespace shoalwright
