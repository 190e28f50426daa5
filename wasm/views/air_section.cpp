// SPDX-License-Identifier: MIT
// Air: oxygen over a day, and what keeps the water warm.
#include <algorithm>
#include <cmath>

#include "draw/charts.h"
#include "rules/limits.h"
#include "stocking/air_course.h"
#include "tank/heat.h"
#include "units/text.h"
#include "views/value_row.h"

namespace shoalwright {

namespace {

constexpr double chilled_by_c = 4;  // a power cut is told by when the water is so much colder, or at the edge of who lives there

std::vector<AirChart::Point> course_of(const Plan& plan, const Told& told) {
  std::vector<AirChart::Point> points;
  for (const AirPoint& point : air_course(plan, told.stock, told.assessment.volume, told.assessment.water.temperature_c.now))
    points.push_back({point.hour, point.oxygen_mg_l});
  return points;
}

/// Who wants the most oxygen: "3 needs 5.0"; where no card says, all do.
std::string limit_words(const Pane& pane, double limit) {
  std::vector<std::string> species;
  for (const Kept& kept : pane.shown.stock)
    if (kept.species != nullptr && kept.species->water.oxygen_least_mg_l && *kept.species->water.oxygen_least_mg_l == limit)
      species.push_back(kept.id);
  const std::string who = plates_text(plates_of(pane.shown, species));
  const std::string figure = short_text(limit, 1);
  return who.empty() ? "wanted " + figure : who + (species.size() == 1 ? " needs " : " need ") + figure;
}

void draw_chart(Pane& pane) {
  const Air& air = pane.shown.assessment.air;
  AirChart chart{.line = course_of(pane.look.shown, pane.shown), .lamps_on = lamps_on_hour, .lamps_off = lamps_off_hour};
  if (pane.look.is_previewing()) chart.line_now = course_of(pane.look.plan, pane.now);
  chart.limit = air.limit_mg_l.value_or(0);
  const std::string limit = limit_words(pane, chart.limit);
  chart.limit_words = limit;
  chart.dawn = *air.dawn_mg_l;
  const double spare = chart.dawn - chart.limit;
  chart.under = spare < -0.05;
  const std::string words = short_text(std::abs(spare), 1) + (chart.under ? " under" : "");
  chart.spare = words;
  double least = std::min(chart.dawn, chart.limit), most = *air.saturation_mg_l;
  for (const auto* line : {&chart.line, &chart.line_now})
    for (const AirChart::Point& point : *line) least = std::min(least, point.value);
  chart.least = std::max(0.0, std::floor(least / 2) * 2 - (least - std::floor(least / 2) * 2 < 0.5 ? 2 : 0));
  chart.most = std::ceil(most + 0.3);
  const Box box{pane.x, pane.y, pane.w, 94};
  draw_air(pane.ui, box, chart);
  add_spot(pane.ui, "air.day", box,
           "Oxygen over a day, " + limit + " mg/L: " + words + (chart.under ? "" : " spare") + " before dawn");
  pane.y += box.h + 6;
}

std::string mg_l(double oxygen) { return oxygen > 0 ? "about " + short_text(oxygen, 1) + " mg/L" : "none is left"; }

void draw_oxygen(Pane& pane) {
  const Assessment& assessment = pane.shown.assessment;
  const Air& air = assessment.air;
  const double low = std::max(*air.dawn_low_mg_l, 0.0);
  value_row(pane, "air.dawn", "Before dawn, from " + short_text(low, 1) + " on", mg_l(*air.dawn_mg_l), Number::dawn);
  const double heat_c = *assessment.water.temperature_c.now + limits::heat_wave_c;
  const Air heat = air_of(pane.look.shown, pane.shown.stock, assessment.volume, heat_c);
  if (heat.dawn_mg_l)
    value_row(pane, "air.heat", "The same in a heat wave of " + pane.look.measures.temperature(heat_c), mg_l(*heat.dawn_mg_l),
              Number::dawn);
  value_row(pane, "air.use", "Used in the dark", short_text(*air.demand_mg_h, 0) + " mg an hour", Number::night_use);
  value_row(pane, "air.most", "Water can hold", short_text(*air.saturation_mg_l, 1) + " mg/L", Number::saturation);
}

/// Where the stock's lower edge is, or a few degrees down.
double cold_for(const Assessment& assessment, double water_c) {
  const std::optional<Range>& lives = assessment.water.temperature_c.tolerated;
  return lives && lives->low < water_c ? lives->low : water_c - chilled_by_c;
}

std::string heater_words(const Heat& heat) {
  if (!(*heat.heater_needed_w > 0)) return "none needed";
  const Heaters heaters = heaters_for(heater_power_w(*heat.loss_w, 0));
  const std::string each = short_text(heaters.each_w, 0) + " W";
  return heaters.count == 1 ? each : std::to_string(heaters.count) + " of " + each;
}

/// "58 W, 9.7 kWh a week"
std::string watts_words(double loss_w) {
  const double kwh = loss_w * 24 * 7 / 1000;
  return short_text(loss_w, 0) + " W, " + significant_text(kwh, 2) + " kWh a week";
}

void draw_warmth(Pane& pane) {
  const Measures& measures = pane.look.measures;
  const Assessment& assessment = pane.shown.assessment;
  const Heat& heat = assessment.heat;
  if (!heat.loss_w) {
    draw_note(pane, "What keeps it warm is not judged: the room’s temperature or the lid is not known.");
    return;
  }
  const double water_c = *assessment.water.temperature_c.now;
  value_row(pane, "air.loss", "Heat lost at " + measures.temperature(water_c), watts_words(std::max(*heat.loss_w, 0.0)),
            Number::heat_loss);
  const std::optional<Gear>& gear = pane.look.shown.gear;
  const bool known = gear && gear->heater_w;
  value_row(pane, "air.heater",
            known ? "Heater wanted; there " + std::string(*gear->heater_w > 0 ? short_text(*gear->heater_w, 0) + " W" : "is none")
                  : "Heater wanted",
            heater_words(heat), Number::heater);
  value_row(pane, "air.vapour", "Turns to vapour in a day", measures.volume(*heat.evaporation_l_d), Number::evaporation);
  const double cold_c = cold_for(assessment, water_c);
  if (const std::optional<double> hours = hours_until_cold(pane.look.shown, assessment.volume, water_c, cold_c);
      hours && *hours > 0)
    value_row(pane, "air.cut", "In a power cut at " + measures.temperature(cold_c) + " after",
              *hours < 1.5  ? "an hour"
              : *hours < 72 ? short_text(*hours, 0) + " hours"
                            : short_text(*hours / 24, 0) + " days",
              Number::heat_loss);
}

}  // namespace

void draw_air_section(Pane& pane) {
  if (!begin_section(pane, Section::air, "Air", "oxygen, mg/L", "")) return;
  const Air& air = pane.shown.assessment.air;
  if (air.dawn_mg_l && air.limit_mg_l) {
    draw_chart(pane);
    draw_oxygen(pane);
  } else if (!pane.shown.stock.empty()) {
    draw_note(pane, "Oxygen is not judged: something that it needs is not known.");
  }
  draw_warmth(pane);
  draw_findings(pane, Section::air);
  end_section(pane);
}

}  // namespace shoalwright
