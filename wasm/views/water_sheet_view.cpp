// SPDX-License-Identifier: MIT
#include "views/water_sheet_view.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "draw/chips.h"
#include "draw/menus.h"
#include "edit/command.h"
#include "plan/check.h"
#include "plan/defaults.h"
#include "plan/words.h"
#include "units/text.h"
#include "views/sheet_card.h"

namespace shoalwright {

namespace {

constexpr float row_height = 34, control = 132;

struct Desk {
  Ui& ui;
  const Look& look;
  WaterSheetState& mine;
  Actions& out;
};

void wish(Desk& desk, const Command& command) {
  Plan plan = apply(desk.look.plan, command, desk.look.catalog);
  const std::optional<Error> error = check_plan(plan);
  desk.mine.sentence = error ? plain_sentence(*error) : "";
  if (!error)
    desk.out.push_back(EditPlan{std::move(plan), name_of(command, desk.look.plan, desk.look.catalog), join_of(command)});
}

void heading(Desk& desk, Stack& stack, std::string_view words, std::string_view after = {}) {
  const Box line = stack.take(28);
  const Pen pen = pen_of(desk.ui);
  const float x = line.x + draw_text(pen, semibold(type::body), {line.x, line.y + 7}, desk.ui.palette->ink, words) + 8;
  draw_text(pen, type::small, {x, line.y + 8}, desk.ui.palette->ink2, elided(pen, type::small, after, line.right() - x));
}

bool water_field(Desk& desk, Stack& stack, const std::string& id, const char* name, const char* unit, int decimals,
                 std::optional<double>& value, std::string_view placeholder) {
  const Box box = sheet_row(desk.ui, stack.take(row_height), name, control);
  return optional_field(desk.ui, id, box, value, name, unit, decimals, placeholder);
}

bool temperature_field(Desk& desk, Stack& stack, const std::string& id, const char* name, std::optional<double>& celsius,
                       std::string_view placeholder) {
  const Measures& measures = desk.look.measures;
  std::optional<double> shown;
  if (celsius) shown = measures.temperature_out(*celsius);
  if (!water_field(desk, stack, id, name, measures.temperature_unit(), 1, shown, placeholder)) return false;
  celsius = shown ? std::optional(measures.temperature_in(*shown)) : std::nullopt;
  return true;
}

void draw_tap(Desk& desk, Stack& stack) {
  heading(desk, stack, "Tap", "from a drop test, or the supplier's report");
  SourceWater source = desk.look.plan.source;
  constexpr std::string_view unknown = "not known";
  bool changed = temperature_field(desk, stack, "water_sheet.tap.temperature", "Temperature", source.temperature_c, unknown);
  changed |= water_field(desk, stack, "water_sheet.tap.ph", "pH", "", 1, source.ph, unknown);
  changed |= water_field(desk, stack, "water_sheet.tap.gh", "GH", "°dH", 1, source.gh_dgh, unknown);
  changed |= water_field(desk, stack, "water_sheet.tap.kh", "KH", "°dH", 1, source.kh_dkh, unknown);
  changed |= water_field(desk, stack, "water_sheet.tap.nitrate", "Nitrate, NO₃", "mg/L", 0, source.nitrate_mg_l, unknown);
  constexpr std::string_view names[] = {"None", "Chlorine", "Chloramine", "Not known"};
  const Box box = sheet_row(desk.ui, stack.take(row_height), "Disinfectant", control);
  const int picked =
      select(desk.ui, "water_sheet.tap.disinfectant", box, names, static_cast<int>(source.disinfectant), "Disinfectant");
  if (picked >= 0) source.disinfectant = static_cast<Disinfectant>(picked);
  if (changed || picked >= 0) wish(desk, SetSource{source});
}

void draw_aim(Desk& desk, Stack& stack) {
  heading(desk, stack, "In the tank");
  const Plan& plan = desk.look.plan;
  constexpr std::string_view choices[] = {"Runs on the tap", "Aims at"};
  const int picked = one_of(desk.ui, "water_sheet.aim", {stack.box.x, stack.y()}, choices, plan.water ? 1 : 0);
  stack.skip(34);
  if (picked == 0 && plan.water) wish(desk, SetAim{std::nullopt});
  if (picked == 1 && !plan.water) {
    WaterAim aim;
    aim.temperature_c = desk.look.now.water.temperature_c.now;
    if (aim.temperature_c) aim.temperature_c = std::round(*aim.temperature_c * 2) / 2;
    aim.ph = plan.source.ph;
    aim.gh_dgh = plan.source.gh_dgh;
    aim.kh_dkh = plan.source.kh_dkh;
    wish(desk, SetAim{aim});
  }
  if (!plan.water) {
    const std::optional<double>& best = desk.look.now.water.temperature_c.now;
    const std::string words =
        "pH and hardness as they come from the tap" +
        (best ? ", at " + desk.look.measures.temperature(*best) + ", the middle of what suits all." : std::string("."));
    stack.skip(draw_wrapped(pen_of(desk.ui), type::small, {stack.box.x, stack.y()}, stack.box.w, desk.ui.palette->ink2, words) +
               6);
    return;
  }
  WaterAim aim = *plan.water;
  constexpr std::string_view as_tap = "as the tap";
  bool changed = temperature_field(desk, stack, "water_sheet.aim.temperature", "Temperature", aim.temperature_c, "best for all");
  changed |= water_field(desk, stack, "water_sheet.aim.ph", "pH", "", 1, aim.ph, as_tap);
  changed |= water_field(desk, stack, "water_sheet.aim.gh", "GH", "°dH", 1, aim.gh_dgh, as_tap);
  changed |= water_field(desk, stack, "water_sheet.aim.kh", "KH", "°dH", 1, aim.kh_dkh, as_tap);
  if (changed) wish(desk, SetAim{aim});
}

const char* line_of(Strictness strictness) {
  switch (strictness) {
    case Strictness::lenient: return "As keepers with an eye on each animal do it: less room, harder water, more nitrate.";
    case Strictness::usual: return "As most books and clubs have it.";
    case Strictness::strict: return "Emptier tanks, softer water for soft-water kinds, less nitrate.";
  }
  return "";
}

void draw_view(Desk& desk, Stack& stack) {
  heading(desk, stack, "Where practice is divided");
  const Plan& plan = desk.look.plan;
  constexpr std::string_view views[] = {"Lenient", "Usual", "Strict"};
  const int picked =
      one_of(desk.ui, "water_sheet.strictness", {stack.box.x, stack.y()}, views, static_cast<int>(plan.strictness));
  stack.skip(31);
  if (picked >= 0) wish(desk, SetStrictness{static_cast<Strictness>(picked)});
  stack.skip(draw_wrapped(pen_of(desk.ui), type::small, {stack.box.x, stack.y()}, stack.box.w, desk.ui.palette->ink2,
                          line_of(plan.strictness)) +
             4);
  Limits limits = plan.limits;
  const std::string usual = short_text(default_nitrate_mg_l[static_cast<int>(plan.strictness)], 0) + " by this view";
  if (water_field(desk, stack, "water_sheet.nitrate_limit", "Your nitrate ceiling", "mg/L", 0, limits.nitrate_mg_l, usual))
    wish(desk, SetLimits{limits});
}

void draw_care(Desk& desk, Stack& stack) {
  heading(desk, stack, "Plants, food, place");
  const Plan& plan = desk.look.plan;
  const auto row = [&](std::string_view name, std::span<const std::string_view> words, const std::string& id, int chosen) {
    const Box line = stack.take(row_height);
    const Pen pen = pen_of(desk.ui);
    draw_text(pen, type::body, {line.x, line.y + 8}, desk.ui.palette->ink, name);
    return one_of(desk.ui, id, {line.right() - segments_width(desk.ui, words), line.y + 4}, words, chosen);
  };
  constexpr std::string_view plants[] = {"None", "Light", "Medium", "Dense"};
  const int planted = row("Plants", plants, "water_sheet.planting", plan.planting ? static_cast<int>(*plan.planting) : -1);
  if (planted >= 0) wish(desk, SetPlanting{static_cast<Planting>(planted)});
  constexpr std::string_view rations[] = {"Light", "Normal", "Heavy"};
  const int fed = row("Food", rations, "water_sheet.feeding", plan.feeding ? static_cast<int>(plan.feeding->ration) : -1);
  if (fed >= 0) {
    Feeding feeding = plan.feeding.value_or(Feeding{});
    feeding.ration = static_cast<Ration>(fed);
    wish(desk, SetFeeding{feeding});
  }
  Place place = plan.place;
  if (temperature_field(desk, stack, "water_sheet.place", "Air where it stands", place.temperature_c, "not known"))
    wish(desk, SetPlace{place});
}

}  // namespace

void draw_water_sheet(Ui& ui, const Look& look, const Box& box, WaterSheetState& mine, Actions& out) {
  if (!mine.begun && !ui.ring_id_before.empty()) ui.focus_wanted = "water_sheet.close";
  mine.begun = true;
  Desk desk{ui, look, mine, out};
  const SheetCard card = begin_sheet(ui, "water_sheet", box, {720, 476}, "Water and care", out);
  Box body = card.body;
  body.cut_top(6);
  if (!mine.sentence.empty()) {
    const Pen pen = pen_of(ui);
    const Box said = body.cut_top(wrapped_height(pen, type::small, mine.sentence, body.w - 16) + 12);
    draw_panel(pen, said, ui.palette->callSoft, 0, 4);
    draw_wrapped(pen, type::small, {said.x + 8, said.y + 6}, said.w - 16, ui.palette->ink, mine.sentence);
    add_spot(ui, "water_sheet.sentence", said, mine.sentence);
  }
  Column column = begin_column(ui, "water_sheet.all", body, ui.palette->raised);
  const bool wide = body.w >= 560;
  const float gap = 32, half = wide ? std::floor((column.content.w - 10 - gap) / 2) : column.content.w - 10;
  Stack left{{column.content.x, column.content.y, half, 0}};
  draw_tap(desk, left);
  left.skip(8);
  if (!wide) {
    draw_aim(desk, left);
    left.skip(8);
    draw_view(desk, left);
    left.skip(8);
    draw_care(desk, left);
    end_column(ui, column, left.at + 12);
  } else {
    draw_view(desk, left);
    Stack right{{column.content.x + half + gap, column.content.y, half, 0}};
    draw_aim(desk, right);
    right.skip(8);
    draw_care(desk, right);
    end_column(ui, column, std::max(left.at, right.at) + 12);
  }
  end_sheet();
  for (const Action& action : out)
    if (const ShowSheet* show = std::get_if<ShowSheet>(&action); show != nullptr && show->sheet != Sheet::water) mine = {};
}

}  // namespace shoalwright
