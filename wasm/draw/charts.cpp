// SPDX-License-Identifier: MIT
#include "draw/charts.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "draw/fields.h"
#include "draw/geometry.h"
#include "draw/marks.h"

namespace shoalwright {

float saw_tooth_y(const Box& box, const SawToothChart& chart, double value) {
  const double most = chart.most > 0 ? chart.most : 1;
  return box.y + 6 + static_cast<float>(1 - std::clamp(value / most, 0.0, 1.0)) * (box.h - 22);
}

double saw_tooth_value(const Box& box, const SawToothChart& chart, float y) {
  return chart.most * std::clamp(1 - static_cast<double>((y - box.y - 6) / (box.h - 22)), 0.0, 1.0);
}

void draw_saw_tooth(Ui& ui, const Box& box, const SawToothChart& chart) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  constexpr float axis_w = 26;
  const double weeks = chart.weeks > 0 ? chart.weeks : 1;
  const float left = snapped(pen, box.x + axis_w), right = snapped(pen, box.right());
  const auto x_of = [&](double week) { return left + static_cast<float>(std::clamp(week / weeks, 0.0, 1.0)) * (right - left); };
  const auto y_of = [&](double v) { return saw_tooth_y(box, chart, v); };
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

void draw_air(Ui& ui, const Box& box, const AirChart& chart) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  constexpr float axis_w = 20;
  const float left = snapped(pen, box.x + axis_w), right = snapped(pen, box.right());
  const float top = snapped(pen, box.y + 6), foot = snapped(pen, box.bottom() - 16);
  const double range = std::max(chart.most - chart.least, 1e-9);
  const auto x_of = [&](double hour) { return left + static_cast<float>(hour / 24) * (right - left); };
  const auto y_of = [&](double v) {
    return foot - static_cast<float>(std::clamp((v - chart.least) / range, 0.0, 1.0)) * (foot - top);
  };
  const auto line = [&](const std::vector<AirChart::Point>& points) {
    std::vector<ImVec2> at;
    for (const AirChart::Point& point : points) at.push_back({x_of(point.hour), y_of(point.value)});
    return at;
  };
  for (const auto& [from, to] : {std::pair(0.0, chart.lamps_on), std::pair(chart.lamps_off, 24.0)})
    pen.dl->AddRectFilled({x_of(from), top}, {x_of(to), foot}, with_alpha(p.line, 0.45f));
  for (double tick = std::ceil(chart.least / 2) * 2; tick <= chart.most; tick += 2) {
    draw_rule(pen, left, y_of(tick), right, p.line);
    draw_text_on(pen, type::axis, {left - 5, y_of(tick) + 4}, p.ink3, number_text(tick, 0), Align::right);
  }
  const float limit = snapped(pen, y_of(chart.limit));
  pen.dl->AddLine({left, limit}, {right, limit}, p.bandEdge, 1.8f);
  draw_text_on(pen, type::axis, {right - 3, limit + 12 < foot ? limit + 12 : limit - 4}, p.ink2, chart.limit_words, Align::right);
  if (!chart.line_now.empty()) dashed_line(pen.dl, line(chart.line_now), dash_aim(), p.ink3, 1.2f);
  const std::vector<ImVec2> points = line(chart.line);
  if (points.size() > 1) pen.dl->AddPolyline(points.data(), static_cast<int>(points.size()), p.ink, 0, 1.7f);
  const float x = x_of(chart.lamps_on), dawn = y_of(chart.dawn);
  const ImU32 ink = chart.under ? p.call : p.ink;
  draw_dimension(pen, {x, std::min(dawn, limit)}, {x, std::max(dawn, limit)}, ink, 1.3f);
  draw_text_on(pen, {Face::semibold, 11, 14}, {x - 7, (dawn + limit) / 2 + 4}, ink, chart.spare, Align::right);
  for (const int hour : {0, 8, 18, 24}) {
    const Align align = hour == 0 ? Align::left : hour == 24 ? Align::right : Align::centre;
    draw_text_on(pen, type::axis, {x_of(hour), box.bottom() - 3}, p.ink3, hour == 8 ? "8 h" : std::to_string(hour), align);
  }
}

}  // namespace shoalwright
