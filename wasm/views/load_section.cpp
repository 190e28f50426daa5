// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/buttons.h"
#include "draw/charts.h"
#include "draw/stepper.h"
#include "edit/command.h"
#include "plan/defaults.h"
#include "stocking/course.h"
#include "units/text.h"
#include "views/pane.h"

namespace shoalwright {

namespace {

constexpr double weeks_shown = 8;

std::vector<SawToothChart::Point> course_of(const Plan& plan, const Assessment& assessment) {
  std::vector<SawToothChart::Point> points;
  for (const CoursePoint& point : nitrate_course(plan, assessment.load, assessment.volume, 7 * weeks_shown))
    points.push_back({point.day / 7, point.nitrate_mg_l});
  return points;
}

/// Nitrate is only known roughly.
std::string about(double value) {
  return value < 1 ? short_text(value, 1) : value < 100 ? short_text(value, 0) : significant_text(value, 2);
}

/// A round top of the scale over everything drawn, with two or three figures beside it.
void set_scale(SawToothChart& chart) {
  double highest = chart.ceiling;
  for (const auto* line : {&chart.line, &chart.line_now})
    for (const SawToothChart::Point& point : *line) highest = std::max(highest, point.value);
  constexpr double steps[] = {5, 10, 20, 25, 50, 100, 200, 500, 1000, 5000};
  double step = steps[0];
  for (const double one : steps) {
    step = one;
    if (highest * 1.08 / one <= 3) break;
  }
  const int count = std::max(2, static_cast<int>(std::ceil(highest * 1.08 / step)));
  chart.most = step * count;
  for (int i = 0; i <= count; ++i) chart.ticks.push_back(step * i);
}

void draw_chart(Pane& pane) {
  const Assessment& assessment = pane.shown.assessment;
  SawToothChart chart{.line = course_of(pane.look.shown, assessment), .weeks = weeks_shown};
  if (pane.look.is_previewing()) chart.line_now = course_of(pane.look.plan, pane.now.assessment);
  chart.ceiling = nitrate_limit_mg_l(pane.look.shown);
  const std::string ceiling = "ceiling " + short_text(chart.ceiling, 0);
  chart.ceiling_words = ceiling;
  chart.source = pane.look.shown.source.nitrate_mg_l.value_or(0);
  // The arrow stands where the line is highest before its last week, where its words have room.
  for (const SawToothChart::Point& point : chart.line)
    if (point.week <= weeks_shown - 0.9 && point.value >= chart.peak) {
      chart.peak = point.value;
      chart.peak_week = point.week;
    }
  const double spare = chart.ceiling - assessment.load.nitrate_peak_mg_l.value_or(0);
  chart.over = spare < 0;
  const std::string words = "about " + about(std::abs(spare)) + (chart.over ? " over" : " spare");
  chart.spare = words;
  set_scale(chart);
  const Box box{pane.x, pane.y, pane.w, 94};
  draw_saw_tooth(pane.ui, box, chart);
  add_spot(pane.ui, "load.nitrate", box, "Nitrate in eight weeks, " + ceiling + " mg/L: " + words);
  pane.y += box.h + 6;
}

void change_upkeep(Pane& pane, double litres, double days) {
  const double net_l = pane.shown.assessment.volume.net_l;
  Upkeep upkeep = pane.look.plan.upkeep.value_or(Upkeep{});
  upkeep.change_fraction = net_l > 0 ? std::clamp(litres / net_l, 0.0, 1.0) : 0;
  upkeep.every_days = days;
  const Command command = SetUpkeep{upkeep};
  pane.out.push_back(EditPlan{apply(pane.look.plan, command, pane.look.catalog),
                              name_of(command, pane.look.plan, pane.look.catalog), join_of(command)});
}

void draw_change(Pane& pane) {
  Ui& ui = pane.ui;
  const Pen pen = pen_of(ui);
  const Measures& measures = pane.look.measures;
  const std::optional<Upkeep>& upkeep = pane.look.shown.upkeep;
  if (!upkeep) {
    draw_note(pane, "How much water is changed is not known.");
    if (button(ui, "load.enter", pane.at(), "Enter a water change", {.kind = ButtonKind::remedy, .small = true}).pressed)
      change_upkeep(pane, default_change_fraction * pane.shown.assessment.volume.net_l, default_every_days);
    pane.y += 34;
    return;
  }
  const double net_l = pane.shown.assessment.volume.net_l;
  double shown = measures.volume_out(upkeep->change_fraction * net_l);
  double days = upkeep->every_days;
  const bool narrow = pane.w < 320;
  const bool whole = std::abs(days - std::round(days)) < 1e-9;
  const float y = pane.y + 4;
  const float gap = narrow ? 5.0f : 8.0f;
  float x = pane.x;
  x += draw_text(pen, type::small, {x, y + 1}, ui.palette->ink2, "Change") + gap;
  const NumberLook volume{.unit = measures.volume_unit(),
                          .decimals = 0,
                          .least = 0,
                          .most = std::floor(measures.volume_out(net_l)),
                          .step = measures.us ? 1.0 : 5.0,
                          .height = 26,
                          .value_width = narrow ? 40.0f : 52.0f,
                          .enabled = !pane.look.held};
  const bool more = number_stepper(ui, "load.change", {x, y - 4}, shown, "Water changed each time", volume);
  x += number_width(volume) + gap;
  x += draw_text(pen, type::small, {x, y + 1}, ui.palette->ink2, "every") + gap;
  const NumberLook rhythm{.unit = days == 1 ? "day" : "days",
                          .decimals = whole ? 0 : 1,
                          .least = 1,
                          .most = 90,
                          .step = 1,
                          .height = 26,
                          .value_width = narrow ? 46.0f : 56.0f,
                          .enabled = !pane.look.held};
  const bool later = number_stepper(ui, "load.days", {x, y - 4}, days, "Days between water changes", rhythm);
  if (more || later) change_upkeep(pane, more ? measures.volume_in(shown) : upkeep->change_fraction * net_l, days);
  pane.y += 34;
}

/// What feeding and the ceiling come to, in words.
std::string words_of(const Pane& pane) {
  const Load& load = pane.shown.assessment.load;
  std::string words;
  if (load.feed_g_d && *load.feed_g_d > 0)
    words = "About " + significant_text(*load.feed_g_d, 1) + " g of dry food a day, grown up. ";
  if (load.change_needed_fraction && pane.look.shown.upkeep && *load.change_needed_fraction > 0)
    words += "The ceiling asks for " +
             pane.look.measures.volume(*load.change_needed_fraction * pane.shown.assessment.volume.net_l) + " at this rhythm.";
  else if (load.nitrate_peak_mg_l && !load.change_needed_fraction &&
           *load.nitrate_peak_mg_l > nitrate_limit_mg_l(pane.look.shown))
    words += "At this rhythm no change keeps to the ceiling.";
  return words;
}

}  // namespace

void draw_load_section(Pane& pane) {
  if (!begin_section(pane, Section::load, "Load", "nitrate, mg/L", "")) return;
  if (pane.shown.assessment.load.nitrate_peak_mg_l)
    draw_chart(pane);
  else if (never_changed(pane.look.shown))
    draw_note(pane, "No water is changed, so nothing holds nitrate down.");
  else
    draw_note(pane, "Nitrate is not judged: something that it needs is not known.");
  draw_change(pane);
  if (const std::string words = words_of(pane); !words.empty()) draw_note(pane, words);
  draw_findings(pane, Section::load);
  end_section(pane);
}

}  // namespace shoalwright
