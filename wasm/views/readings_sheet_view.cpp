// SPDX-License-Identifier: MIT
#include "views/readings_sheet_view.h"

#include <algorithm>
#include <cmath>

#include "app/paper.h"
#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/marks.h"
#include "draw/panels.h"
#include "draw/stepper.h"
#include "edit/command.h"
#include "plan/check.h"
#include "plan/more_keys.h"
#include "platform/platform.h"
#include "stocking/stock.h"
#include "units/day.h"
#include "units/text.h"
#include "views/edit_wish.h"
#include "views/sheet_card.h"

namespace shoalwright {

namespace {

constexpr float row_height = 34, control = 132;

struct Desk {
  Ui& ui;
  const Look& look;
  ReadingsSheetState& mine;
  Actions& out;
};

void heading(Desk& desk, Stack& stack, std::string_view words, std::string_view after = {}) {
  const Box line = stack.take(28);
  const Pen pen = pen_of(desk.ui);
  const float x = line.x + draw_text(pen, semibold(type::body), {line.x, line.y + 7}, desk.ui.palette->ink, words) + 8;
  draw_text(pen, type::small, {x, line.y + 8}, desk.ui.palette->ink2, elided(pen, type::small, after, line.right() - x));
}

void draw_swimmers(Desk& desk, Stack& stack) {
  heading(desk, stack, "Swim here already");
  const std::vector<Kept> stock = resolve_stock(desk.look.plan, desk.look.catalog);
  const Pen pen = pen_of(desk.ui);
  int number = 0;
  for (const Kept& kept : stock) {
    const Box line = stack.take(row_height);
    draw_plate(pen, ++number, {line.x + 8, line.y + row_height / 2});
    const StepperLook look{.less = kept.have > 0, .more = kept.have < kept.count};
    const float width = stepper_width(look);
    const std::string name = name_of_species(desk.look, kept.id);
    draw_text(pen, type::body, {line.x + 24, line.y + 8}, desk.ui.palette->ink,
              elided(pen, type::body, name, line.w - width - 90));
    draw_text(pen, type::small, {line.right() - width - 8, line.y + 9}, desk.ui.palette->ink2, "of " + std::to_string(kept.count),
              Align::right);
    const int step = stepper(desk.ui, "readings.have/" + kept.id, {line.right() - width, line.y + 3}, std::to_string(kept.have),
                             name + " that swim here already", look);
    if (step != 0) desk.out.push_back(edit_wish(desk.look, SetHave{.species = kept.id, .have = kept.have + step}));
  }
  if (stock.empty())
    stack.skip(draw_wrapped(pen, type::small, {stack.box.x, stack.y()}, stack.box.w, desk.ui.palette->ink2,
                            "Put the animals that swim already into the tank first.") +
               6);
}

bool number_row(Desk& desk, Stack& stack, const std::string& id, const char* name, const char* unit, int decimals,
                std::optional<double>& value, const char* without = "not tested") {
  const Box box = sheet_row(desk.ui, stack.take(row_height), name, control);
  return optional_field(desk.ui, id, box, value, name, unit, decimals, without);
}

void draw_numbers(Desk& desk, Stack& stack) {
  heading(desk, stack, "The tank reads", "what a kit shows today");
  const Measures& measures = desk.look.measures;
  Measured read = desk.look.plan.measured.value_or(Measured{});
  std::optional<double> warmth;
  if (read.temperature_c) warmth = measures.temperature_out(*read.temperature_c);
  bool changed = number_row(desk, stack, "readings.ammonia", "Ammonia in all, as N", "mg/L", 2, read.ammonia_mg_l);
  changed |= number_row(desk, stack, "readings.nitrite", "Nitrite, NO₂", "mg/L", 2, read.nitrite_mg_l);
  changed |= number_row(desk, stack, "readings.ph", "pH", "", 1, read.ph);
  if (number_row(desk, stack, "readings.temperature", "Temperature", measures.temperature_unit(), 1, warmth)) {
    changed = true;
    read.temperature_c = warmth ? std::optional(measures.temperature_in(*warmth)) : std::nullopt;
  }
  const auto row = [&](const char* name) { return sheet_row(desk.ui, stack.take(row_height), name, control); };
  changed |= nitrate_field(desk.ui, "readings.nitrate", row(measures.nitrate_name()), read.nitrate_mg_l, measures.nitrate_name(),
                           measures, "not tested");
  changed |= hardness_field(desk.ui, "readings.gh", row(measures.hardness_name(Hardness::gh)), read.gh_dgh, Hardness::gh,
                            measures, "not tested");
  changed |= hardness_field(desk.ui, "readings.kh", row(measures.hardness_name(Hardness::kh)), read.kh_dkh, Hardness::kh,
                            measures, "not tested");
  std::optional<double> chloride = chloride_mg_l(read);
  if (number_row(desk, stack, "readings.chloride", "Chloride, Cl", "mg/L", 0, chloride)) {
    changed = true;
    set_chloride_mg_l(read, chloride);
  }
  if (!changed) return;
  const SetMeasured command{read == Measured{} ? std::nullopt : std::optional(read)};
  Plan plan = apply(desk.look.plan, command, desk.look.catalog);
  const std::optional<Error> error = check_plan(plan);
  desk.mine.sentence = error ? plain_sentence(*error) : "";
  if (!error)
    desk.out.push_back(EditPlan{std::move(plan), name_of(command, desk.look.plan, desk.look.catalog), join_of(command)});
}

// How long bacteria have had to grow: what first help and arrivals go by.
void draw_running(Desk& desk, Stack& stack) {
  constexpr const char* name = "The filter has run";
  std::optional<double> weeks = desk.look.plan.running_weeks;
  if (is_assumed(desk.look.plan, "/running_weeks")) weeks.reset();
  if (!number_row(desk, stack, "readings.running", name, "weeks", 0, weeks, "not said")) return;
  const SetRunning command{weeks};
  Plan plan = apply(desk.look.plan, command, desk.look.catalog);
  const std::optional<Error> error = check_plan(plan);
  desk.mine.sentence = error ? plain_sentence(*error) : "";
  if (!error)
    desk.out.push_back(EditPlan{std::move(plan), name_of(command, desk.look.plan, desk.look.catalog), join_of(command)});
}

void reading(Desk& desk, Stack& stack, const char* id, const char* name, const std::optional<double>& value, double limit,
             int decimals) {
  if (!value) return;
  const Box line = stack.take(22);
  const Pen pen = pen_of(desk.ui);
  const bool over = *value > limit;
  const ImU32 ink = over ? desk.ui.palette->call : desk.ui.palette->ink;
  const std::string figure = short_text(*value, decimals) + " mg/L", of = "limit " + short_text(limit, 2);
  draw_text(pen, type::body, {line.x, line.y + 2}, desk.ui.palette->ink, name);
  draw_text(pen, type::small, {line.right() - 92, line.y + 3}, desk.ui.palette->ink2, of);
  draw_text(pen, semibold(type::body), {line.right() - 104, line.y + 2}, ink, figure, Align::right);
  add_spot(desk.ui, id, line, std::string(name) + " " + figure + ", " + of);
}

/// "Today", "Tomorrow", "Thu 3 Dec".
std::string day_words(int day) {
  if (day < 2) return day == 0 ? "Today" : "Tomorrow";
  return said_day(day_number(platform::today()).value_or(0) + day);
}

void draw_changes(Desk& desk, Stack& stack, const FirstHelp& help) {
  const Pen pen = pen_of(desk.ui);
  constexpr std::size_t most = 6;
  for (std::size_t i = 0; i < std::min(help.changes.size(), most); ++i) {
    const HelpChange& change = help.changes[i];
    const Box line = stack.take(22);
    const std::string litres = "change " + desk.look.measures.volume(change.litres);
    draw_text(pen, medium(type::body), {line.x, line.y + 2}, desk.ui.palette->ink, day_words(change.day));
    draw_text(pen, type::body, {line.x + 92, line.y + 2}, desk.ui.palette->ink, litres);
    if (change.nh3_before_mg_l && change.nh3_after_mg_l)
      draw_text(pen, type::small, {line.right(), line.y + 3}, desk.ui.palette->ink2,
                "free ammonia " + short_text(*change.nh3_before_mg_l, 3) + " to " + short_text(*change.nh3_after_mg_l, 3),
                Align::right);
    add_spot(desk.ui, "readings.change/" + std::to_string(i), line, day_words(change.day) + " " + litres);
  }
  if (help.changes.size() > most)
    stack.skip(draw_wrapped(pen, type::small, {stack.box.x, stack.y()}, stack.box.w, desk.ui.palette->ink2,
                            "And on, as the tests say, until " + day_words(help.changes.back().day) + ".") +
               4);
}

void draw_help(Desk& desk, Stack& stack) {
  ReadingsSheetState& mine = desk.mine;
  if (!mine.help_known || !(mine.helped == desk.look.plan)) {
    mine.help = first_help(desk.look.plan, desk.look.catalog);
    mine.helped = desk.look.plan;
    mine.help_known = true;
  }
  const FirstHelp& help = mine.help;
  switch (help.state) {
    case HelpState::nobody_swims: return;
    case HelpState::not_measured: heading(desk, stack, "Test first"); break;
    case HelpState::within_limits: heading(desk, stack, "Within the limits"); break;
    case HelpState::act: heading(desk, stack, "First help"); break;
  }
  const ButtonLook print{.kind = ButtonKind::secondary, .small = true};
  if (button(desk.ui, "readings.print", {stack.box.right() - button_width(desk.ui, "Print", print), stack.y() - 28}, "Print",
             print)
          .pressed)
    desk.out.push_back(PrintPage{first_help_paper(desk.look, help, day_number(platform::today()).value_or(0))});
  const float top = stack.y();
  reading(desk, stack, "readings.nh3", "Free ammonia", help.nh3_mg_l, help.nh3_limit_mg_l, 3);
  reading(desk, stack, "readings.no2", "Nitrite", help.nitrite_mg_l, help.nitrite_limit_mg_l, 2);
  stack.skip(4);
  draw_changes(desk, stack, help);
  stack.skip(4);
  const Pen pen = pen_of(desk.ui);
  int step = 0;
  for (const std::string& says : help.says) {
    draw_text(pen, medium(type::small), {stack.box.x, stack.y()}, desk.ui.palette->ink2, std::to_string(++step));
    stack.skip(draw_wrapped(pen, type::small, {stack.box.x + 18, stack.y()}, stack.box.w - 18, desk.ui.palette->ink,
                            retold(desk.look.measures, says)) +
               4);
  }
  std::string words;
  for (const std::string& says : help.says) words += (words.empty() ? "" : " ") + retold(desk.look.measures, says);
  add_spot(desk.ui, "readings.help", {stack.box.x, top, stack.box.w, stack.y() - top}, words);
}

}  // namespace

void draw_readings_sheet(Ui& ui, const Look& look, const Box& box, ReadingsSheetState& mine, Actions& out) {
  if (!mine.begun && !ui.ring_id_before.empty()) ui.focus_wanted = "readings.close";
  mine.begun = true;
  Desk desk{ui, look, mine, out};
  const SheetCard card = begin_sheet(ui, "readings", box, {760, 560}, "Readings", out);
  Box body = card.body;
  body.cut_top(6);
  if (!mine.sentence.empty())
    draw_sentence(ui, "readings.sentence", body.cut_top(sentence_height(pen_of(ui), mine.sentence, body.w)), mine.sentence);
  Column column = begin_column(ui, "readings.all", body, ui.palette->raised, true);
  const bool wide = body.w >= 560;
  const float gap = 32, w = column.content.w - 10, half = wide ? std::floor((w - gap) * 0.46f) : w;
  Stack left{{column.content.x, column.content.y, half, 0}};
  draw_numbers(desk, left);
  draw_running(desk, left);
  left.skip(8);
  draw_swimmers(desk, left);
  if (wide) {
    Stack right{{column.content.x + half + gap, column.content.y, w - half - gap, 0}};
    draw_help(desk, right);
    end_column(ui, column, std::max(left.at, right.at) + 12);
  } else {
    left.skip(8);
    draw_help(desk, left);
    end_column(ui, column, left.at + 12);
  }
  end_sheet();
  for (const Action& action : out)
    if (const ShowSheet* show = std::get_if<ShowSheet>(&action); show != nullptr && show->sheet != Sheet::readings) mine = {};
}

}  // namespace shoalwright
