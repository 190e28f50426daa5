// SPDX-License-Identifier: MIT
#include "draw/charts.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/fields.h"
#include "draw/geometry.h"
#include "draw/marks.h"

namespace shoalwright {

void draw_saw_tooth(Ui& ui, const Box& box, const SawToothChart& chart) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  constexpr float axis_w = 26;
  const double weeks = chart.weeks > 0 ? chart.weeks : 1, most = chart.most > 0 ? chart.most : 1;
  const float left = snapped(pen, box.x + axis_w), right = snapped(pen, box.right());
  const auto x_of = [&](double week) { return left + static_cast<float>(std::clamp(week / weeks, 0.0, 1.0)) * (right - left); };
  const auto y_of = [&](double v) { return box.y + 6 + static_cast<float>(1 - std::clamp(v / most, 0.0, 1.0)) * (box.h - 22); };
  const auto line = [&](const std::vector<SawToothChart::Point>& points) {
    std::vector<ImVec2> at;
    for (const SawToothChart::Point& point : points) at.push_back({x_of(point.week), y_of(point.value)});
    return at;
  };
  const float ceiling = snapped(pen, y_of(chart.ceiling));
  pen.dl->AddRectFilled({left, ceiling}, {right, snapped(pen, y_of(0))}, with_alpha(p.band, 0.55f));
  for (const double tick : chart.ticks) {
    draw_rule(pen, left, y_of(tick), right, p.line);
    draw_text_on(pen, type::axis, {left - 5, y_of(tick) + 4}, p.ink3, number_text(tick, 0), Align::right);
  }
  pen.dl->AddLine({left, ceiling}, {right, ceiling}, p.bandEdge, 1.8f);
  draw_text_on(pen, type::axis, {left + 4, ceiling - 4}, p.ink2, chart.ceiling_words);
  if (chart.source > 0) {
    constexpr float dots[] = {2, 3};
    const ImVec2 source[] = {{left, y_of(chart.source)}, {right, y_of(chart.source)}};
    dashed_line(pen.dl, source, dots, p.ink3, 1);
  }
  if (!chart.line_now.empty()) dashed_line(pen.dl, line(chart.line_now), dash_aim(), p.ink3, 1.2f);
  const std::vector<ImVec2> points = line(chart.line);
  if (points.size() > 1) pen.dl->AddPolyline(points.data(), static_cast<int>(points.size()), p.ink, 0, 1.7f);
  const float peak_x = x_of(chart.peak_week), peak_y = y_of(chart.peak);
  if (chart.over) {
    for (float x = peak_x - 14; x < peak_x + 10; x += 4)
      if (ceiling - peak_y > 3) pen.dl->AddLine({x, ceiling}, {x + 4, std::max(peak_y, ceiling - 10)}, p.call, 1.4f);
  }
  draw_dimension(pen, {peak_x, std::min(peak_y, ceiling)}, {peak_x, std::max(peak_y, ceiling)}, chart.over ? p.call : p.ink,
                 1.3f);
  // Over the ceiling the words stand under it, clear of the arrow.
  draw_text_on(pen, {Face::semibold, 11, 14}, {right, chart.over ? ceiling + 13 : ceiling - 4}, chart.over ? p.call : p.ink,
               chart.spare, Align::right);
  const int last = static_cast<int>(std::floor(weeks));
  const int step = last > 12 ? 4 : 2;
  for (int week = 0; week <= last; week += step) {
    const Align align = week == 0 ? Align::left : week == last ? Align::right : Align::centre;
    draw_text_on(pen, type::axis, {x_of(week), box.bottom() - 3}, p.ink3, week == 0 ? "wk 0" : std::to_string(week), align);
  }
}

}  // namespace shoalwright
