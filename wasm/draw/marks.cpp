// SPDX-License-Identifier: MIT
#include "draw/marks.h"

#include <algorithm>
#include <cmath>

#include "draw/ui.h"

namespace shoalwright {
namespace {

void stroke(const Pen& pen, std::initializer_list<ImVec2> points, ImU32 colour, float thickness, bool closed = false) {
  for (const ImVec2& p : points) pen.dl->PathLineTo(p);
  pen.dl->PathStroke(colour, closed ? ImDrawFlags_Closed : 0, thickness);
}

void diamond_path(const Pen& pen, ImVec2 c, float half) {
  pen.dl->PathLineTo({c.x, c.y - half});
  pen.dl->PathLineTo({c.x + half, c.y});
  pen.dl->PathLineTo({c.x, c.y + half});
  pen.dl->PathLineTo({c.x - half, c.y});
}

/// One head of a dimension arrow, its point at `tip`, `back` pointing into the line.
void head(const Pen& pen, ImVec2 tip, ImVec2 back, ImU32 colour) {
  const ImVec2 side{-back.y, back.x};
  pen.dl->AddTriangleFilled(tip, {tip.x + back.x * 5 + side.x * 2.6f, tip.y + back.y * 5 + side.y * 2.6f},
                            {tip.x + back.x * 5 - side.x * 2.6f, tip.y + back.y * 5 - side.y * 2.6f}, colour);
}

}  // namespace

const char* grade_word(Severity severity) {
  switch (severity) {
    case Severity::harm: return "Fix";
    case Severity::strain: return "Strain";
    case Severity::watch: return "Watch";
    case Severity::note: return "Note";
  }
  return "";
}

bool loud(Severity severity) { return severity == Severity::harm || severity == Severity::strain; }

void draw_grade(const Pen& pen, Severity severity, ImVec2 c, float size) {
  const float k = size / 14, half = 6.1f * k;
  const ImU32 colour = loud(severity) ? pen.palette->call : pen.palette->ink2;
  if (loud(severity)) {
    diamond_path(pen, c, half);
    pen.dl->PathFillConvex(colour);
  }
  diamond_path(pen, c, half);
  pen.dl->PathStroke(colour, ImDrawFlags_Closed, 1.5f * k);
  if (severity == Severity::watch) pen.dl->AddTriangleFilled({c.x, c.y - half}, {c.x + half, c.y}, {c.x, c.y + half}, colour);
  if (severity == Severity::harm) {
    pen.dl->AddLine({c.x, c.y - 3 * k}, {c.x, c.y + 0.6f * k}, pen.palette->onCall, 1.7f * k);
    pen.dl->AddLine({c.x, c.y + 2 * k}, {c.x, c.y + 3.4f * k}, pen.palette->onCall, 1.7f * k);
  }
}

void draw_filled_diamond(const Pen& pen, ImVec2 centre, float half, ImU32 colour) {
  diamond_path(pen, centre, half);
  pen.dl->PathFillConvex(colour);
}

void draw_open_diamond(const Pen& pen, ImVec2 centre, float half, ImU32 fill, ImU32 line, float thickness) {
  diamond_path(pen, centre, half);
  pen.dl->PathFillConvex(fill);
  diamond_path(pen, centre, half);
  pen.dl->PathStroke(line, ImDrawFlags_Closed, thickness);
}

void draw_plate(const Pen& pen, int number, ImVec2 centre, float radius) {
  pen.dl->AddCircleFilled(centre, radius, key_colour(*pen.palette, number));
  const Type t{Face::semibold, number > 9 || radius < 7 ? 9.0f : 11.0f, 14};
  const float base = snapped(pen, centre.y + t.size * 0.36f);
  draw_text_on(pen, t, {centre.x, base}, pen.palette->onKey, std::to_string(number), Align::centre);
}

float draw_plates(const Pen& pen, std::span<const int> numbers, ImVec2 left_middle, float radius, float gap) {
  float x = 0;
  for (const int n : numbers) {
    if (x > 0) x += gap;
    draw_plate(pen, n, {left_middle.x + x + radius, left_middle.y}, radius);
    x += 2 * radius;
  }
  return x;
}

void draw_letter(const Pen& pen, std::string_view letter, ImVec2 centre, float size) {
  const Box box{centre.x - size / 2, centre.y - size / 2, size, size};
  draw_panel(pen, box, pen.palette->raised, pen.palette->edge, 2);
  draw_text_on(pen, {Face::semibold, 11, 14}, {centre.x, centre.y + 4}, pen.palette->ink, letter, Align::centre);
}

ImVec2 free_place(std::vector<ImVec2>& taken, ImVec2 at, float apart) {
  const float touch = apart - 0.5f;
  for (bool moved = true; moved;) {  // beside one it may meet another; it only moves right, so that this ends
    moved = false;
    for (const ImVec2& other : taken) {
      if (!(std::abs(at.x - other.x) < touch && std::abs(at.y - other.y) < touch)) continue;
      at.x = other.x + apart;
      moved = true;
    }
  }
  taken.push_back(at);
  return at;
}

std::string piece_letter(int index) {
  std::string letters;
  for (int i = std::max(0, index); i >= 0; i = i / 26 - 1) letters.insert(letters.begin(), static_cast<char>('a' + i % 26));
  return letters;
}

void draw_dimension(const Pen& pen, ImVec2 a, ImVec2 b, ImU32 colour, float thickness) {
  const float dx = b.x - a.x, dy = b.y - a.y, length = std::sqrt(dx * dx + dy * dy);
  const bool upright = std::fabs(dy) > std::fabs(dx);
  const ImVec2 cross = upright ? ImVec2(4, 0) : ImVec2(0, 4);
  pen.dl->AddLine(a, b, colour, thickness);
  for (const ImVec2& end : {a, b})
    pen.dl->AddLine({end.x - cross.x, end.y - cross.y}, {end.x + cross.x, end.y + cross.y}, colour, thickness);
  if (!(length > 14)) return;
  head(pen, a, {dx / length, dy / length}, colour);
  head(pen, b, {-dx / length, -dy / length}, colour);
}

void draw_hatching(const Pen& pen, const Box& box, ImU32 colour, float gap, float thickness) {
  for (float x = box.x + 1; x < box.right() - 1; x += gap) {
    const float run = std::min(gap, box.right() - x);
    pen.dl->AddLine({x, box.bottom() - 1}, {x + run, box.bottom() - 1 - (box.h - 2) * run / gap}, colour, thickness);
  }
}

void draw_fit(const Pen& pen, Fit fit, ImVec2 at) {
  const float x = snapped(pen, at.x), y = snapped(pen, at.y);
  const ImU32 edge = fit == Fit::over ? pen.palette->call : pen.palette->bandEdge, ink = pen.palette->ink;
  const float bar = fit == Fit::spare ? 4.5f : fit == Fit::just ? 12.0f : 6.0f, upright = fit == Fit::over ? 6.0f : 12.0f;
  pen.dl->AddRectFilled({x, y + 5}, {x + bar, y + 9}, edge);
  pen.dl->AddRectFilled({x + upright, y + 2}, {x + upright + 2, y + 12}, edge);
  if (fit == Fit::spare) {
    pen.dl->AddLine({x + 5, y + 7}, {x + 12, y + 7}, ink, 1.2f);
    stroke(pen, {{x + 8, y + 4.8f}, {x + 5.2f, y + 7}, {x + 8, y + 9.2f}}, ink, 1.1f);
    stroke(pen, {{x + 9.8f, y + 4.8f}, {x + 12.2f, y + 7}, {x + 9.8f, y + 9.2f}}, ink, 1.1f);
  }
  if (fit == Fit::over) {
    pen.dl->AddLine({x + 8.4f, y + 10.2f}, {x + 11, y + 3.8f}, edge, 1.4f);
    pen.dl->AddLine({x + 10.6f, y + 10.2f}, {x + 13.2f, y + 3.8f}, edge, 1.4f);
  }
}

void draw_levels(const Pen& pen, const Levels& levels, ImVec2 at) {
  const bool on[] = {levels.surface, levels.upper, levels.middle, levels.floor};
  for (int i = 0; i < 4; ++i)
    draw_panel(pen, {at.x, at.y + 5 * static_cast<float>(i), 14, 4}, on[i] ? pen.palette->ink2 : 0, pen.palette->edge, 1);
}

void draw_emblem(const Pen& pen, ImVec2 at, float size) {
  const float k = size / 26;
  const auto p = [&](float x, float y) { return ImVec2(at.x + x * k, at.y + y * k); };
  const ImU32 ink = pen.palette->ink, act = pen.palette->act;
  pen.dl->PathLineTo(p(1.5f, 13));
  pen.dl->PathBezierCubicCurveTo(p(5.3f, 9.6f), p(9.2f, 9.6f), p(13, 13));
  pen.dl->PathBezierCubicCurveTo(p(16.8f, 16.4f), p(20.7f, 16.4f), p(24.5f, 13));
  pen.dl->PathStroke(act, 0, 2.4f * k);
  pen.dl->AddCircleFilled(p(1.5f, 13), 1.2f * k, act);
  pen.dl->AddCircleFilled(p(24.5f, 13), 1.2f * k, act);
  pen.dl->AddLine(p(17, 3), p(17, 23), ink, 1.7f * k);
  pen.dl->AddLine(p(13, 3), p(21, 3), ink, 1.7f * k);
  pen.dl->AddLine(p(13, 23), p(21, 23), ink, 1.7f * k);
  pen.dl->AddTriangleFilled(p(14.6f, 7.4f), p(17, 3.4f), p(19.4f, 7.4f), ink);
  pen.dl->AddTriangleFilled(p(14.6f, 18.6f), p(17, 22.6f), p(19.4f, 18.6f), ink);
}

Box draw_tip(const Pen& pen, ImVec2 at, std::string_view text, ImU32 border, ImU32 ink, Align align) {
  const Type t = medium(type::small);
  const float w = std::ceil(text_width(pen, t, text)) + 14;
  const float x = align == Align::left ? at.x : align == Align::centre ? at.x - w / 2 : at.x - w;
  const Box box{snapped(pen, x), snapped(pen, at.y), w, 20};
  draw_panel(pen, box, pen.palette->raised, border, 3);
  draw_text(pen, t, {box.x + w / 2, box.y + 2}, ink, text, Align::centre);
  return box;
}

}  // namespace shoalwright
