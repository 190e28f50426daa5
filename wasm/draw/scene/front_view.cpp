// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/scene/build.h"

namespace shoalwright {

namespace {

Placement placed(const FrontView& view, const Scene& scene) {
  return {.origin = front_point(view, scene, 0, 0), .scale = view.px_per_cm};
}

// Lines and small parts keep their strength on a phone, but never outgrow the glass.
float part_scale(const FrontView& view) { return std::clamp(view.px_per_cm / 6.67f, 0.55f, 1.3f); }

void clip_to_inside(ImDrawList* list, const FrontView& view, const SceneCache& cache, float above_cm) {
  const Scene& scene = cache.built_for;
  list->PushClipRect(front_point(view, scene, 0, scene.height_cm + static_cast<double>(above_cm)),
                     front_point(view, scene, static_cast<double>(cache.length_cm), 0), true);
}

void emit_pieces(ImDrawList* list, const SceneCache& cache, const FrontView& view, PieceLayer layer, Mesh PieceMeshes::*mesh,
                 TimeOfDay time) {
  for (const PieceMeshes& piece : cache.pieces)
    if (piece.layer == layer) emit(list, piece.*mesh, placed(view, cache.built_for), tint_of(time));
}

}  // namespace

Tint tint_of(TimeOfDay time) {
  switch (time) {
    case TimeOfDay::day: return {};
    case TimeOfDay::dusk: return {.mix_to = rgb(0x33233A), .mix_amount = 0.26f};
    case TimeOfDay::night: return {.mix_to = rgb(0x04101F), .mix_amount = 0.58f};
  }
  return {};
}

ImU32 toned(ImU32 colour, TimeOfDay time) {
  const Tint tint = tint_of(time);
  return (mix(colour, tint.mix_to, tint.mix_amount) & ~IM_COL32_A_MASK) | (colour & IM_COL32_A_MASK);
}

ImU32 water_colour(const Palette& colours, TimeOfDay time, float depth_share) {
  const ImU32 plain = depth_share < 0.4f ? mix(colours.waterTop, colours.waterMid, depth_share / 0.4f)
                                         : mix(colours.waterMid, colours.waterBot, (depth_share - 0.4f) / 0.6f);
  return toned(plain, time);
}

void draw_front_stand(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time) {
  const Scene& scene = cache.built_for;
  if (cache.outline.size() < 3) return;
  const Palette& c = palette(scene.theme);
  const float k = part_scale(view), s = view.px_per_cm, x0 = view.corner.x, y0 = view.corner.y;
  const Vec size = front_size_cm(scene) * s;
  if (scene.lamp) {
    const float left = x0 + size.x * 0.1f, right = x0 + size.x * 0.905f, low = y0 - 20 * k;
    if (time == TimeOfDay::day) {
      const ImVec2 glow[4] = {{left + size.x * 0.012f, low},
                              {right - size.x * 0.012f, low},
                              {right + size.x * 0.035f, y0 - 2 * k},
                              {left - size.x * 0.035f, y0 - 2 * k}};
      list->AddConvexPolyFilled(glow, 4, with_alpha(c.ray, scene.theme == Theme::dark ? 0.05f : 0.5f));
    }
    list->AddRectFilled({left, y0 - 28 * k}, {right, low}, c.lamp, 2);
    for (const float share : {0.1f, 0.9f}) {
      const float x = left + (right - left) * share;
      list->AddLine({x, low}, {x, y0}, c.lamp, 2 * k);
    }
  }
  list->AddRectFilled({x0 - 6 * k, y0 + size.y}, {x0 + size.x + 6 * k, y0 + size.y + 7 * k}, c.lamp);
  list->AddRectFilled({x0 + 2 * k, y0 + size.y + 7 * k}, {x0 + size.x - 2 * k, y0 + size.y + 19 * k}, with_alpha(c.lamp, 0.35f));
}

void draw_front_back(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time) {
  if (cache.outline.size() < 3) return;
  clip_to_inside(list, view, cache, 1.5f);
  emit(list, cache.front_far, placed(view, cache.built_for), tint_of(time));
  emit_pieces(list, cache, view, PieceLayer::standing, &PieceMeshes::front, time);
  emit(list, cache.front_near, placed(view, cache.built_for), tint_of(time));
  emit_pieces(list, cache, view, PieceLayer::over_sand, &PieceMeshes::front, time);
  list->PopClipRect();
}

void draw_front_roots(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time) {
  if (cache.outline.size() < 3) return;
  clip_to_inside(list, view, cache, 0);
  emit_pieces(list, cache, view, PieceLayer::floating, &PieceMeshes::roots, time);
  list->PopClipRect();
}

void draw_front_glass(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time) {
  const Scene& scene = cache.built_for;
  if (cache.outline.size() < 3) return;
  const Palette& c = palette(scene.theme);
  const float k = part_scale(view), s = view.px_per_cm, x0 = view.corner.x, y0 = view.corner.y,
              glass = static_cast<float>(scene.glass_mm) / 10 * s;
  const double length = static_cast<double>(cache.length_cm);
  const Vec size = front_size_cm(scene) * s;
  const auto at = [&](double x, double h) { return front_point(view, scene, x, h); };
  clip_to_inside(list, view, cache, 2);
  emit_pieces(list, cache, view, PieceLayer::floating, &PieceMeshes::front, time);
  emit(list, cache.front_pads, placed(view, scene), tint_of(time));
  emit(list, cache.front_glass, placed(view, scene), tint_of(time));
  const bool dark = scene.theme == Theme::dark;
  // The light in the left pane, which fades downwards.
  const double shine_x = length * 0.026, shine_w = length * 0.022;
  const ImU32 shine = with_alpha(c.ray, time == TimeOfDay::night ? 0.05f : dark ? 0.08f : 0.3f), gone = shine & ~IM_COL32_A_MASK;
  list->AddRectFilledMultiColor(at(shine_x, scene.height_cm * 0.97), at(shine_x + shine_w, scene.height_cm * 0.3), shine, shine,
                                gone, gone);
  list->PopClipRect();

  const ImVec2 water_left = at(0, scene.fill_cm), water_right = at(length, scene.fill_cm);
  list->AddLine(water_left, water_right, c.glassEdge, 1.2f);
  list->AddLine({water_left.x, water_left.y + 2.5f * k}, {water_right.x, water_right.y + 2.5f * k},
                with_alpha(toned(c.ray, time), 0.5f), 1);
  list->AddRectFilled({x0, y0}, {x0 + glass, y0 + size.y - glass}, with_alpha(c.glass, 0.45f));
  list->AddRectFilled({x0 + size.x - glass, y0}, {x0 + size.x, y0 + size.y - glass}, with_alpha(c.glass, 0.45f));
  list->AddRectFilled({x0, y0 + size.y - glass}, {x0 + size.x, y0 + size.y}, with_alpha(c.glass, 0.6f));
  const ImVec2 outer[4] = {{x0, y0}, {x0, y0 + size.y}, {x0 + size.x, y0 + size.y}, {x0 + size.x, y0}};
  list->AddPolyline(outer, 4, c.glassEdge, 0, 1.5f);
  const ImVec2 inner[4] = {
      {x0 + glass, y0}, {x0 + glass, y0 + size.y - glass}, {x0 + size.x - glass, y0 + size.y - glass}, {x0 + size.x - glass, y0}};
  list->AddPolyline(inner, 4, with_alpha(c.glassEdge, 0.7f), 0, 1);

  if (scene.lid) {
    // Two panes with a gap between them; the right one ends before the corner where pipes and cables come up.
    const float low = y0 - 0.1f * s, high = low - std::max(0.8f * s, 3.0f);
    const float corner = scene.filter ? std::min(5.6f * s, size.x * 0.14f) : 0;
    const auto pane = [&](float from, float to) {
      list->AddRectFilled({from, high}, {to, low}, with_alpha(c.glass, 0.55f), 1);
      list->AddRect({from, high}, {to, low}, c.glassEdge, 1, 0, 1);
      const float knob = (from + to) / 2;
      list->AddRectFilled({knob - 1.5f * s, high - std::max(0.7f * s, 2.5f)}, {knob + 1.5f * s, high}, c.lamp, 1);
    };
    if (cache.length_cm < 35) {
      pane(x0 + 2, x0 + size.x - corner);
    } else {
      const float middle = x0 + size.x * 0.5f;
      pane(x0 + 2, middle - 0.3f * s);
      pane(middle + 0.3f * s, x0 + size.x - corner);
    }
  }
}

void draw_depth_scale(ImDrawList* list, const SceneCache& cache, const FrontView& view, bool inches, float font_px) {
  const Scene& scene = cache.built_for;
  if (cache.outline.size() < 3) return;
  const Palette& c = palette(scene.theme);
  const double unit_cm = inches ? 2.54 : 1.0, fine = inches ? 1 : 2;
  const int coarse = inches ? 4 : 10;
  // Figures keep clear of each other when the tank is drawn small.
  const int step =
      static_cast<double>(view.px_per_cm) * unit_cm * coarse < static_cast<double>(font_px) * 1.6 ? coarse * 2 : coarse;
  const float x = view.corner.x;
  const auto y_at = [&](double depth) { return front_point(view, scene, 0, scene.fill_cm - depth * unit_cm).y; };
  const auto figure = [&](const char* text, float y) {
    const ImVec2 size = list->_Data != nullptr && ImGui::GetCurrentContext() != nullptr && ImGui::GetFont() != nullptr
                            ? ImGui::GetFont()->CalcTextSizeA(font_px, 1e6f, 0, text)
                            : ImVec2{0, font_px};
    list->AddText(ImGui::GetFont(), font_px, {std::round(x - 11 - size.x), std::round(y - size.y / 2)}, c.ink3, text);
  };
  const double deepest = scene.fill_cm / unit_cm;
  for (double depth = 0; depth <= deepest; depth += fine) {
    const bool long_tick = std::fmod(depth, coarse) < 0.01;
    list->AddLine({x - (long_tick ? 7.0f : 4.0f), y_at(depth)}, {x - 1, y_at(depth)}, c.edge, long_tick ? 1.2f : 1.0f);
  }
  for (int depth = 0; depth <= deepest - 1; depth += step) {
    figure(std::to_string(depth).c_str(), y_at(depth));
  }
  figure(inches ? "in" : "cm", y_at(0) - font_px * 1.3f);
}

void outline_piece_front(ImDrawList* list, const Scene& scene, const FrontView& view, const Piece& piece, ImU32 colour,
                         float thickness) {
  const Extent box = front_extent(scene, piece);
  const ImVec2 from = front_point(view, scene, static_cast<double>(box.x0), static_cast<double>(box.y1)),
               to = front_point(view, scene, static_cast<double>(box.x1), static_cast<double>(box.y0));
  dashed_rect(list, {from.x - 3, from.y - 3}, {to.x + 3, to.y + 3}, dash_ghost_outline(), colour, thickness);
}

}  // namespace shoalwright
