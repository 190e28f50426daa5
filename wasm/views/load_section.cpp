// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/buttons.h"
#include "draw/charts.h"
#include "draw/slider.h"
#include "draw/stepper.h"
#include "edit/command.h"
#include "plan/defaults.h"
#include "platform/platform.h"
#include "rules/limits.h"
#include "stocking/course.h"
#include "stocking/plant_growth.h"
#include "stocking/top_off.h"
#include "stocking/work.h"
#include "units/text.h"
#include "views/ro_week_view.h"
#include "views/value_row.h"

namespace shoalwright {

namespace {

constexpr double weeks_shown = 8;

std::vector<SawToothChart::Point> course_of(const Plan& plan, const Assessment& assessment, const Measures& measures) {
  std::vector<SawToothChart::Point> points;
  for (const CoursePoint& point : nitrate_course(plan, assessment.load, assessment.volume, 7 * weeks_shown))
    points.push_back({point.day / 7, measures.nitrate_out(point.nitrate_mg_l)});
  return points;
}

/// Nitrate is only known roughly.
std::string about(double value) {
  return value < 1 ? short_text(value, 1) : value < 100 ? short_text(value, 0) : significant_text(value, 2);
}

/// A round top of the scale over everything drawn, and over `at_least`, with two or three figures beside it.
void set_scale(SawToothChart& chart, double at_least) {
  double highest = std::max(chart.ceiling, at_least / 1.08);
  for (const auto* line : {&chart.line, &chart.line_now})
    for (const SawToothChart::Point& point : *line) highest = std::max(highest, point.value);
  constexpr double steps[] = {1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000, 5000};
  double step = steps[0];
  for (const double one : steps) {
    step = one;
    if (highest * 1.08 / one <= 3) break;
  }
  const int count = std::max(2, static_cast<int>(std::ceil(highest * 1.08 / step)));
  chart.most = step * count;
  for (int i = 0; i <= count; ++i) chart.ticks.push_back(step * i);
}

/// The keeper's ceiling, drawn up and down.
void drag_ceiling(Pane& pane, const Box& box, const SawToothChart& chart) {
  Ui& ui = pane.ui;
  const Measures& measures = pane.look.measures;
  const double round_to = measures.nitrate_as_n ? 0.5 : 1;
  const float y = saw_tooth_y(box, chart, chart.ceiling);
  const Box grip{box.x + 26, y - 7, box.w - 26, 14};
  const ItemLook look{.exact = true, .allow_over = true};
  const Item of = item(ui, "load.ceiling", grip,
                       "Your nitrate ceiling, " + short_text(chart.ceiling, 1) + " " + measures.nitrate_unit(), look);
  if (of.hovered || of.held) platform::set_cursor(platform::Cursor::grab);
  if (of.ring) draw_ring(ui, grip, look);
  const int step = of.focused ? typed_step() : 0;
  pane.mine.held_scale = of.held ? (pane.mine.held_scale > 0 ? pane.mine.held_scale : chart.most) : 0;
  double ceiling = chart.ceiling + step * round_to;
  if (hand_on(ui, "load.ceiling", of))
    ceiling = std::round(saw_tooth_value(box, chart, ImGui::GetIO().MousePos.y) / round_to) * round_to;
  ceiling = std::clamp(ceiling, round_to, measures.nitrate_out(1000));
  if (pane.look.held || ceiling == chart.ceiling) return;
  Limits limits = pane.look.plan.limits;
  limits.nitrate_mg_l = measures.nitrate_in(ceiling);
  const Command command = SetLimits{limits};
  pane.out.push_back(EditPlan{apply(pane.look.plan, command, pane.look.catalog),
                              name_of(command, pane.look.plan, pane.look.catalog), join_of(command)});
}

void draw_chart(Pane& pane) {
  const Assessment& assessment = pane.shown.assessment;
  const Measures& measures = pane.look.measures;
  SawToothChart chart{.line = course_of(pane.look.shown, assessment, measures), .weeks = weeks_shown};
  if (pane.look.is_previewing()) chart.line_now = course_of(pane.look.plan, pane.now.assessment, measures);
  chart.ceiling = measures.nitrate_out(nitrate_limit_mg_l(pane.look.shown));
  const std::string ceiling = "ceiling " + measures.nitrate_figure(nitrate_limit_mg_l(pane.look.shown));
  chart.ceiling_words = ceiling;
  chart.source = measures.nitrate_out(pane.look.shown.source.nitrate_mg_l.value_or(0));
  // The arrow stands where the line is highest before its last week, where its words have room.
  for (const SawToothChart::Point& point : chart.line)
    if (point.week <= weeks_shown - 0.9 && point.value >= chart.peak) {
      chart.peak = point.value;
      chart.peak_week = point.week;
    }
  const double spare = chart.ceiling - measures.nitrate_out(assessment.load.nitrate_peak_mg_l.value_or(0));
  chart.over = spare < 0;
  const std::string words = "about " + about(std::abs(spare)) + (chart.over ? " over" : " spare");
  chart.spare = words;
  if (pane.mine.held_scale > 0)  // it stays while the ceiling is dragged
    set_scale(chart, pane.mine.held_scale);
  else
    set_scale(chart, 0);
  const Box box{pane.x, pane.y, pane.w, 94};
  drag_ceiling(pane, box, chart);
  draw_saw_tooth(pane.ui, box, chart);
  add_spot(pane.ui, "load.nitrate", box, "Nitrate in eight weeks, " + ceiling + " " + measures.nitrate_unit() + ": " + words);
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

/// "5 buckets of 10 L, about 25 minutes a week"
std::string work_words(const ChangeWork& work) {
  const std::string minutes = short_text(std::max(5.0, std::round(work.minutes_a_week / 5) * 5), 0);
  const std::string buckets = std::to_string(work.buckets) + (work.buckets == 1 ? " bucket" : " buckets") + " each time, about " +
                              minutes + " minutes a week";
  return work.litres > hose_from_l ? buckets + "; a hose and a pump spare your back." : buckets + ".";
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
  pane.y += 32;
  double slid = measures.volume_out(upkeep->change_fraction * net_l);
  double tick = 5;
  for (const double one : {5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0})
    if (volume.most / (tick = one) <= 8) break;
  const SliderLook track{
      .least = 0, .most = volume.most, .step = 1, .tick = tick, .unit = volume.unit, .enabled = !pane.look.held};
  if (slider(ui, "load.slide", {pane.x, pane.y}, pane.w, slid, "Water changed each time", track))
    change_upkeep(pane, measures.volume_in(slid), days);
  pane.y += slider_height + 2;
  if (const std::optional<ChangeWork> work = change_work(pane.look.shown, pane.shown.assessment.volume))
    draw_note(pane, work_words(*work));
  if (platform::rest_is_here()) draw_ro_week(pane);
}

/// Two figures, as much as is known of it.
std::string rough(double value, const char* unit) { return significant_text(value, 2) + " " + unit; }

void draw_values(Pane& pane) {
  const Load& load = pane.shown.assessment.load;
  const Measures& measures = pane.look.measures;
  const double net_l = pane.shown.assessment.volume.net_l;
  if (load.feed_g_d && *load.feed_g_d > 0)
    value_row(pane, "load.feed", "Dry food a day, grown up", rough(*load.feed_g_d, "g"), Number::feed);
  if (load.tan_mg_d && *load.tan_mg_d > 0)
    value_row(pane, "load.tan", "Ammonia nitrogen from it", rough(*load.tan_mg_d, "mg"), Number::tan);
  if (load.tan_mg_d && *load.tan_mg_d > 0)
    if (const std::optional<double> taken = plants_may_take_mg_d(pane.look.shown, *load.tan_mg_d); taken && *taken > 0)
      value_row(pane, "load.plants", "Plants may take of it, in no verdict", "up to " + rough(*taken, "mg"), Number::plants);
  if (load.nitrate_peak_mg_l)
    value_row(pane, "load.peak", "Nitrate before a change",
              "about " + about(measures.nitrate_out(*load.nitrate_peak_mg_l)) + " " + measures.nitrate_unit(),
              Number::nitrate_peak);
  if (load.change_needed_fraction && pane.look.shown.upkeep && *load.change_needed_fraction > 0)
    value_row(pane, "load.needed", "The ceiling asks for a change of", measures.volume(*load.change_needed_fraction * net_l),
              Number::change_needed);
  if (load.kh_drift_dkh_week && *load.kh_drift_dkh_week < -0.005)
    value_row(pane, "load.kh", "KH used up in a week",
              short_text(measures.hardness_out(-*load.kh_drift_dkh_week, Hardness::kh),
                         measures.hardness_decimals() + (*load.kh_drift_dkh_week < -0.1 ? 0 : 1)) +
                  " " + measures.hardness_unit(Hardness::kh),
              Number::kh_drift);
  if (const std::optional<TopOff> adds = top_off(pane.look.shown, net_l, pane.shown.assessment.heat.evaporation_l_d);
      adds && adds->gh_dgh_month)
    value_row(pane, "load.top_off", "Topping up with tap adds, a month",
              "GH " + short_text(measures.hardness_out(*adds->gh_dgh_month, Hardness::gh), measures.hardness_decimals()) + " " +
                  measures.hardness_unit(Hardness::gh),
              Number::top_off);
  if (load.media_needed_l && *load.media_needed_l > 0) {
    const std::optional<Gear>& gear = pane.look.shown.gear;
    const bool known = gear && gear->filter && gear->filter->media_l;
    value_row(pane, "load.media", "Filter media wanted, at most",
              measures.volume(*load.media_needed_l) + (known ? " of " + measures.volume(*gear->filter->media_l) : ""),
              Number::media_needed);
  }
  if (load.ammonia_nh3_mg_l)
    value_row(pane, "load.ammonia", "Free ammonia, limit " + short_text(limits::ammonia_nh3_allowed_mg_l, 2),
              short_text(*load.ammonia_nh3_mg_l, 3) + " mg/L", Number::free_ammonia);
}

}  // namespace

void draw_load_section(Pane& pane) {
  const ButtonLook readings{.kind = ButtonKind::quiet, .small = true};
  const float width = button_width(pane.ui, "Readings", readings), top = pane.y + 12;
  const bool open = begin_section(pane, Section::load, "Load",
                                  pane.look.measures.nitrate_as_n ? "nitrate as N, mg/L" : "nitrate NO₃, mg/L", "", width + 8);
  if (button(pane.ui, "load.readings", {pane.x + pane.w - width + 9, top - 2}, "Readings", readings).pressed)
    pane.out.push_back(ShowSheet{Sheet::readings});
  if (!open) return;
  if (pane.shown.assessment.load.nitrate_peak_mg_l)
    draw_chart(pane);
  else if (never_changed(pane.look.shown))
    draw_note(pane, "No water is changed, so nothing holds nitrate down.");
  else
    draw_note(pane, "Nitrate is not judged: something that it needs is not known.");
  draw_change(pane);
  if (pane.shown.assessment.load.nitrate_peak_mg_l && !pane.shown.assessment.load.change_needed_fraction &&
      *pane.shown.assessment.load.nitrate_peak_mg_l > nitrate_limit_mg_l(pane.look.shown))
    draw_note(pane, "At this rhythm no change keeps to the ceiling.");
  draw_values(pane);
  draw_findings(pane, Section::load);
  end_section(pane);
}

}  // namespace shoalwright
