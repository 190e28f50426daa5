// SPDX-License-Identifier: MIT
#include "draw/bars.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/fields.h"
#include "draw/geometry.h"

namespace shoalwright {
namespace {

constexpr float left_w = 16, right_w = 6, top = 24;

float rows_height(const WaterBar& bar) { return static_cast<float>(std::max<size_t>(1, bar.rows.size())) * bar.row_height; }

struct Plot {
  const Pen& pen;
  const Palette& p;
  float x0, x1, y0;  ///< ends of the axis, top of the rows
  double from, to;

  float x(double v) const {
    const double share = std::clamp((v - from) / (to - from), 0.0, 1.0);
    return x0 + static_cast<float>(share) * (x1 - x0);
  }
};

void draw_row(const Plot& plot, const WaterBarRow& row, float y) {
  const ImU32 key = key_colour(plot.p, row.number);
  ImDrawList* dl = plot.pen.dl;
  const float a = plot.x(row.tolerated[0]), b = plot.x(row.tolerated[1]);
  draw_text_on(plot.pen, {Face::semibold, 11, 14}, {plot.x0 - 6, y + 4}, key, std::to_string(row.number), Align::right);
  dl->AddLine({a, y}, {b, y}, key, 1.6f);
  // An end beyond the axis has no stop: it goes on.
  if (row.tolerated[0] >= plot.from) dl->AddLine({a, y - 2.5f}, {a, y + 2.5f}, key, 1.6f);
  if (row.tolerated[1] <= plot.to) dl->AddLine({b, y - 2.5f}, {b, y + 2.5f}, key, 1.6f);
  const float c = plot.x(row.ideal[0]), d = plot.x(row.ideal[1]);
  if (d > c) dl->AddRectFilled({c, y - 2.6f}, {d, y + 2.6f}, key);
}

void draw_band(Ui& ui, std::string_view id, const Plot& plot, const std::pair<double, double>& shared, float height) {
  const std::string name(id);
  const float a = snapped(plot.pen, eased(ui, name + "/low", plot.x(shared.first)));
  const float b = snapped(plot.pen, eased(ui, name + "/high", plot.x(shared.second)));
  ImDrawList* dl = plot.pen.dl;
  dl->AddRectFilled({a, plot.y0}, {b, plot.y0 + height}, plot.p.band);
  for (const float edge : {a, b}) dl->AddLine({edge, plot.y0}, {edge, plot.y0 + height}, plot.p.bandEdge, 1.5f);
}

}  // namespace

float water_bar_height(const WaterBar& bar) { return top + rows_height(bar) + 1 + (bar.message.empty() ? 16.0f : 33.0f); }

float water_bar_x(ImVec2 at, float width, const WaterBar& bar, double value) {
  const double share = std::clamp((value - bar.from) / std::max(bar.to - bar.from, 1e-9), 0.0, 1.0);
  return at.x + left_w + static_cast<float>(share) * (width - left_w - right_w);
}

double water_bar_value(ImVec2 at, float width, const WaterBar& bar, float x) {
  const double share = static_cast<double>((x - at.x - left_w) / std::max(width - left_w - right_w, 1.0f));
  return bar.from + std::clamp(share, 0.0, 1.0) * (bar.to - bar.from);
}

float water_bar(Ui& ui, std::string_view id, ImVec2 at, float width, const WaterBar& bar) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  at = snapped(pen, at);
  const std::string name(id);
  const Plot plot{
      pen, p, at.x + left_w, at.x + width - right_w, at.y + top - 2, bar.from, bar.to > bar.from ? bar.to : bar.from + 1};
  const float rows = rows_height(bar), height = rows + 3, bottom = at.y + top + rows + 1;
  const bool out = bar.grade && loud(*bar.grade);

  // A narrow bar sets both smaller, and then cuts the name, never the window.
  constexpr float apart = 4;
  const bool narrow =
      text_width(pen, semibold(type::small), bar.name) + apart + text_width(pen, medium(type::small), bar.window) > width;
  const Type t_name = semibold(narrow ? type::axis : type::small), t_window = medium(narrow ? type::axis : type::small);
  const float window_w = draw_text_on(pen, t_window, {at.x + width, at.y + 11}, p.ink, bar.window, Align::right);
  draw_text_on(pen, t_name, {at.x, at.y + 11}, p.ink, elided(pen, t_name, bar.name, width - window_w - apart));
  pen.dl->AddRectFilled({plot.x0, plot.y0}, {plot.x1, plot.y0 + height}, p.sunk, 2);
  if (bar.shared) draw_band(ui, id, plot, *bar.shared, height);
  if (bar.shared_now && bar.shared_now != bar.shared)
    dashed_rect(pen.dl, {plot.x(bar.shared_now->first), plot.y0}, {plot.x(bar.shared_now->second), plot.y0 + height}, dash_aim(),
                p.bandEdge, 1);
  if (bar.gap && !bar.shared) {
    const float a = plot.x(bar.gap->first), b = plot.x(bar.gap->second);
    draw_hatching(pen, {a, plot.y0, b - a, height}, out ? p.call : p.ink3);
  }
  for (size_t i = 0; i < bar.rows.size(); ++i)
    draw_row(plot, bar.rows[i], at.y + top + (static_cast<float>(i) + 0.5f) * bar.row_height);

  const bool aimed = bar.aim && bar.aim != bar.today;
  if (aimed) {
    const ImU32 ink = out ? p.call : p.ink;
    const float x = eased(ui, name + "/aim", plot.x(*bar.aim));
    const ImVec2 line[] = {{x, at.y + top - 4}, {x, bottom}};
    dashed_line(pen.dl, line, dash_aim(), ink, 1.4f);
    draw_open_diamond(pen, {x, at.y + top - 4}, 4.5f, p.raised, ink);
  }
  if (bar.today) {
    const ImU32 ink = out && !aimed ? p.call : p.ink;
    const float x = eased(ui, name + "/today", plot.x(*bar.today));
    pen.dl->AddLine({x, at.y + top - 4}, {x, bottom}, ink, 2);
    draw_filled_diamond(pen, {x, at.y + top - 4.5f}, 5.5f, ink);
  }
  for (const double tick : bar.ticks) {
    const float x = snapped_to_middle(pen, plot.x(tick));
    pen.dl->AddLine({x, bottom}, {x, bottom + 3}, p.edge, 1);
    draw_text_on(pen, type::axis, {x, bottom + 13}, p.ink3, number_text(tick, bar.tick_decimals), Align::centre);
  }
  if (!bar.message.empty()) {
    const Type t = bar.grade ? medium(type::small) : type::small;
    if (bar.grade) draw_grade(pen, *bar.grade, {at.x + 6, bottom + 24}, 12);
    // Under the axis where it fits, else from the left edge.
    const float room = at.x + width - plot.x0;
    const bool wide = !bar.grade && text_width(pen, t, bar.message) > room;
    const float x = wide ? at.x : plot.x0;
    draw_text_on(pen, t, {x, bottom + 28},
                 out         ? p.call
                 : bar.grade ? p.ink
                             : p.ink2,
                 elided(pen, t, bar.message, at.x + width - x));
  }
  const float full = water_bar_height(bar);
  add_spot(
      ui, id, {at.x, at.y, width, full},
      name.empty() ? std::string() : std::string(bar.name) + " " + std::string(bar.window) + ". " + std::string(bar.message));
  return full;
}

}  // namespace shoalwright
