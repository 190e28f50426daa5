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

}  // namespace

FieldCache ready(Field field, const FieldLook& look) {
  FieldCache cache{.field = std::move(field), .look = look, .lines = {}, .hatch = {}};
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
  const Field& field = cache.field;
  if (!whole(field)) return;
  const Grid grid{field};
  const float first = cache.look.steps[0] * shaded_from, last = cache.look.steps[3];
  list->PushClipRect(clip.min(), clip.max(), true);
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
      const float share = cache.look.falls ? (last - value) / last : (value - first) / (last - first);
      const float alpha = std::isfinite(value) ? std::clamp(share * alpha_at_last, 0.0f, alpha_most) : 0.0f;
      list->PrimWriteVtx(place.at(grid.place({static_cast<float>(column), static_cast<float>(row)})), white,
                         with_alpha(colour, alpha));
    }
  }
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
