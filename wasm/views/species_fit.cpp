// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "app/retold.h"
#include "catalog/plural.h"
#include "draw/bars.h"
#include "draw/marks.h"
#include "notebook/say.h"
#include "views/species_desk.h"
#include "views/water_bars.h"

namespace shoalwright {

namespace {

constexpr int countless = 1000;  // more than anybody counts

Fit mark_of(ShelfFit fit) {
  switch (fit) {
    case ShelfFit::spare: return Fit::spare;
    case ShelfFit::over: return Fit::over;
    case ShelfFit::just:
    case ShelfFit::unknown: break;
  }
  return Fit::just;
}

std::string ordinal(int n) {
  const int tens = n % 100, last = n % 10;
  if (tens >= 11 && tens <= 13) return std::to_string(n) + "th";
  return std::to_string(n) + (last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th");
}

/// The largest group, and what the next one brings.
std::string most_words(const SpeciesDesk& desk) {
  const SpeciesPageState::Worked& worked = desk.mine.worked;
  const std::optional<int>& most = worked.answer.largest;
  if (!most || *most == 0) return "";
  if (*most >= countless) return "Nothing here limits their number.";
  const std::string up_to = "Up to " + std::to_string(*most) + " in all.";
  if (!worked.stops) return up_to;
  const std::string next = retold(desk.look.measures, worked.stops->text, about_of(worked.stops->rule));
  return up_to + " The " + ordinal(*most + 1) + " brings: " + next + ".";
}

void draw_raised(SpeciesDesk& desk, Stack& stack, const Finding& finding, std::size_t index) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const Measures& m = desk.look.measures;
  const About about = about_of(finding.rule);
  const float top = stack.y(), x = stack.box.x + 20, w = stack.box.w - 20;
  const std::string text = retold(m, finding.text, about);
  draw_grade(pen, finding.severity, {stack.box.x + 7, top + 8}, 12);
  const std::string heading = std::string(grade_word(finding.severity)) + ": " + text;
  stack.skip(draw_wrapped(pen, medium(type::small), {x, stack.y()}, w, loud(finding.severity) ? p.call : p.ink, heading) + 1);
  std::string why = retold(m, finding.why, about);
  if (!finding.remedy.empty()) why += (why.empty() ? "" : " ") + retold(m, finding.remedy, about) + ".";
  stack.skip(draw_wrapped(pen, type::small, {x, stack.y()}, w, p.ink2, why) + 6);
  add_spot(desk.ui, "species.raised/" + std::to_string(index), {stack.box.x, top, stack.box.w, stack.y() - top},
           heading + ". " + why);
}

}  // namespace

void draw_species_fit(SpeciesDesk& desk, Stack& stack) {
  const SpeciesPageState::Worked& worked = desk.mine.worked;
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  species_heading(desk, stack, "In this plan");
  const float top = stack.y();
  const std::string words = retold(desk.look.measures, shelf_words(worked.answer));
  const bool known = worked.answer.fit != ShelfFit::unknown;
  if (known) draw_fit(pen, mark_of(worked.answer.fit), {stack.box.x, top + 2});
  const float left = stack.box.x + (known ? 22 : 0);
  stack.skip(
      draw_wrapped(pen, medium(type::body), {left, top}, stack.box.right() - left, worked.answer.loud() ? p.call : p.ink, words) +
      3);
  const std::string most = most_words(desk);
  if (!most.empty()) species_note(desk, stack, most);
  add_spot(desk.ui, "species.fit", {stack.box.x, top, stack.box.w, stack.y() - top}, words + ". " + most);
  stack.skip(4);
  const std::string dropped = std::to_string(worked.dropped) + " " + name_for(desk.species, worked.dropped);
  if (worked.raised.empty()) {
    species_note(desk, stack, "Dropping in " + dropped + " raises nothing.");
    return;
  }
  species_note(desk, stack, "Dropping in " + dropped + " would raise:");
  constexpr std::size_t most_said = 5;
  for (std::size_t i = 0; i < std::min(worked.raised.size(), most_said); ++i) draw_raised(desk, stack, worked.raised[i], i);
  if (worked.raised.size() > most_said)
    species_note(desk, stack, std::to_string(worked.raised.size() - most_said) + " more, all milder.");
}

namespace {

std::string water_message(const SpeciesDesk& desk, const BarQuantity& q, const Need& need, const std::optional<double>& now) {
  const Measures& m = desk.look.measures;
  if (!need.tolerated) return "no figure on the card";
  if (!now) return "not known here";
  const std::string unit = bar_unit(m, q, 100);
  const auto by = [&](double amount) {
    const std::string figures = bar_difference(m, q, amount);
    return unit.empty() ? figures : figures + " " + unit;
  };
  if (*now > need.tolerated->high) return by(*now - need.tolerated->high) + (is_temperature(q) ? " too warm" : " too high");
  if (*now < need.tolerated->low) return by(need.tolerated->low - *now) + (is_temperature(q) ? " too cool" : " too low");
  if (need.ideal && *now >= need.ideal->low && *now <= need.ideal->high) return "thrives in it";
  return by(std::min(*now - need.tolerated->low, need.tolerated->high - *now)) + " in hand";
}

void draw_bar(SpeciesDesk& desk, const BarQuantity& q, ImVec2 at, float width) {
  const Measures& m = desk.look.measures;
  const Window& window = desk.look.now.water.*q.window;
  const Need& need = desk.species.water.*q.need;
  const int plate = plate_of(desk.look, desk.species.id);
  const std::vector<Kept> alone{{.species = &desk.species, .id = desk.species.id, .count = 1}};
  std::vector<WaterBarRow> rows = bar_rows(alone, q, m);
  const int next = static_cast<int>(resolve_stock(desk.look.shown, desk.look.catalog).size()) + 1;
  for (WaterBarRow& row : rows) row.number = plate > 0 ? plate : next;
  const std::string unit = bar_unit(m, q, width);
  std::string own = "no figure";
  if (need.tolerated) {
    const std::string low = bar_figure(m, q, need.tolerated->low), high = bar_figure(m, q, need.tolerated->high);
    own = (low == high ? low : low + " to " + high) + (unit.empty() ? "" : " " + unit);
  }
  const std::string message = water_message(desk, q, need, window.now);
  WaterBar bar{.name = q.name, .window = own, .rows = rows, .message = message, .row_height = 16};
  const auto out = [&](double value) { return bar_out(m, q, value); };
  if (window.tolerated) bar.shared = std::pair(out(window.tolerated->low), out(window.tolerated->high));
  if (window.now) bar.today = out(*window.now);
  set_axis(bar, out(q.from), out(q.to));
  water_bar(desk.ui, "species." + std::string(q.id), at, width, bar);
}

}  // namespace

void draw_species_water(SpeciesDesk& desk, Stack& stack) {
  species_heading(desk, stack, "Water");
  const std::span<const BarQuantity> quantities = bar_quantities();
  const int columns = stack.box.w >= 640 ? 4 : 2;
  const float gap = 18, width = std::floor((stack.box.w - gap * static_cast<float>(columns - 1)) / static_cast<float>(columns));
  constexpr float height = 24 + 16 + 1 + 33;
  for (std::size_t i = 0; i < quantities.size(); ++i) {
    const std::size_t column = i % static_cast<std::size_t>(columns);
    draw_bar(desk, quantities[i], {stack.box.x + (width + gap) * static_cast<float>(column), stack.y()}, width);
    if (column + 1 == static_cast<std::size_t>(columns)) stack.skip(height + 4);
  }
  species_note(desk, stack, "Thin line: lives in. Thick: thrives in. Band: the plan’s window. Diamond: its water.");
  stack.skip(8);
}

}  // namespace shoalwright
