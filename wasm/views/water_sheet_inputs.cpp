// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>

#include "draw/buttons.h"
#include "draw/chips.h"
#include "draw/fields.h"
#include "draw/menus.h"
#include "draw/slider.h"
#include "draw/stepper.h"
#include "notebook/say.h"
#include "plan/more_keys.h"
#include "units/text.h"
#include "views/sheet_card.h"
#include "views/water_desk.h"

namespace shoalwright {

namespace {

constexpr float row_height = 34, control = 132;

bool water_field(WaterDesk& desk, Stack& stack, const std::string& id, const char* name, const char* unit, int decimals,
                 std::optional<double>& value) {
  const Box box = sheet_row(desk.ui, stack.take(row_height), name, control);
  return optional_field(desk.ui, id, box, value, name, unit, decimals, "not known");
}

void draw_tap(WaterDesk& desk, Stack& stack) {
  part_heading(desk, stack, "Tap water", "from a drop test or a report", "drop test or report");
  const Measures& measures = desk.look.measures;
  SourceWater source = desk.look.plan.source;
  std::optional<double> warmth;
  if (source.temperature_c) warmth = measures.temperature_out(*source.temperature_c);
  bool changed = water_field(desk, stack, "water_sheet.tap.temperature", "Temperature", measures.temperature_unit(), 1, warmth);
  if (changed) source.temperature_c = warmth ? std::optional(measures.temperature_in(*warmth)) : std::nullopt;
  changed |= water_field(desk, stack, "water_sheet.tap.ph", "pH", "", 1, source.ph);
  const auto row = [&](const char* name) { return sheet_row(desk.ui, stack.take(row_height), name, control); };
  changed |= hardness_field(desk.ui, "water_sheet.tap.gh", row(measures.hardness_name(Hardness::gh)), source.gh_dgh, Hardness::gh,
                            measures, "not known");
  changed |= hardness_field(desk.ui, "water_sheet.tap.kh", row(measures.hardness_name(Hardness::kh)), source.kh_dkh, Hardness::kh,
                            measures, "not known");
  changed |= nitrate_field(desk.ui, "water_sheet.tap.nitrate", row(measures.nitrate_name()), source.nitrate_mg_l,
                           measures.nitrate_name(), measures, "not known");
  constexpr std::string_view names[] = {"None", "Chlorine", "Chloramine", "Not known"};
  const Box box = sheet_row(desk.ui, stack.take(row_height), "Disinfectant", control);
  const int picked =
      select(desk.ui, "water_sheet.tap.disinfectant", box, names, static_cast<int>(source.disinfectant), "Disinfectant");
  if (picked >= 0) source.disinfectant = static_cast<Disinfectant>(picked);
  const bool own = is_private(source);
  const Box chip_line = stack.take(34);
  if (chip(desk.ui, "water_sheet.tap.private", {chip_line.x, chip_line.y + 4}, "Own well, spring or rain", own)) {
    set_private(source, !own);
    changed = true;
  }
  if (own)
    part_note(desk, stack,
              "Nobody else tests private water: have it tested for nitrate and metals. It holds no disinfectant as a rule.");
  if (changed || picked >= 0) wish(desk, SetSource{source});
}

void change_upkeep(WaterDesk& desk, double litres) {
  Upkeep upkeep = desk.look.plan.upkeep.value_or(Upkeep{});
  upkeep.change_fraction = desk.work.net_l > 0 ? std::clamp(litres / desk.work.net_l, 0.0, 1.0) : 0;
  if (!(upkeep.every_days > 0)) upkeep.every_days = desk.card().every_days;
  wish(desk, SetUpkeep{upkeep});
}

void share_by_hand(WaterDesk& desk, double ro_shown) {
  const double all = desk.look.measures.volume_out(desk.card().for_l);
  WaterChoices choices = desk.mine.choices;
  choices.ro_fraction = all > 0 ? std::clamp(ro_shown / all, 0.0, 1.0) : 0;
  choose(desk, choices);
}

/// A round step of about a fifth of all, for the figures under the slider.
double tick_for(double all) {
  constexpr double steps[] = {0.5, 1, 2, 4, 5, 8, 10, 20, 25, 50, 100, 200, 500, 1000};
  for (const double step : steps)
    if (all / step <= 6) return step;
  return steps[std::size(steps) - 1];
}

void draw_blend(WaterDesk& desk, Stack& stack) {
  Ui& ui = desk.ui;
  const Measures& measures = desk.look.measures;
  const RecipeCard& card = desk.card();
  part_heading(desk, stack, "Blend", "for one change");
  const double whole = measures.us ? 0.5 : 1, all = measures.volume_out(card.for_l);
  double change = all;
  const NumberLook volume{.unit = measures.volume_unit(),
                          .decimals = measures.us || all < 10 ? 1 : 0,
                          .least = 0,
                          .most = std::floor(measures.volume_out(desk.work.net_l)),
                          .step = whole,
                          .value_width = 78};
  const float w = number_width(volume);
  Box box = sheet_row(ui, stack.take(row_height), "Water change", w);
  if (number_stepper(ui, "water_sheet.change", {box.right() - w, box.y}, change, "Water changed each time", volume))
    change_upkeep(desk, measures.volume_in(change));
  double ro = measures.volume_out(card.ro_l.value_or(0));
  NumberLook of_ro = volume;
  of_ro.decimals = all < 20 ? 1 : 0;
  of_ro.step = all < 20 ? whole / 2 : whole;
  of_ro.most = all;
  of_ro.enabled = card.ro_l.has_value();
  box = sheet_row(ui, stack.take(row_height), "RO water", w);
  if (number_stepper(ui, "water_sheet.ro", {box.right() - w, box.y}, ro, "Reverse-osmosis water in it", of_ro))
    share_by_hand(desk, ro);
  const SliderLook slide{.most = std::max(all, 0.1),
                         .step = of_ro.step,
                         .tick = tick_for(all),
                         .unit = measures.volume_unit(),
                         .enabled = of_ro.enabled};
  if (slider(ui, "water_sheet.ro_slider", {stack.box.x, stack.y() + 4}, stack.box.w, ro, "Reverse-osmosis water", slide))
    share_by_hand(desk, ro);
  stack.skip(slider_height + 10);
  if (!card.ro_l) {
    part_note(desk, stack, "Enter GH or KH of the tap, and the blend can be told.");
  } else if (desk.mine.choices.ro_fraction && desk.mine.choices.grams.empty()) {
    const std::string words = "As the recipe has it: " + desk.litres(desk.work.usual_ro_fraction.value_or(0) * card.for_l);
    if (button(ui, "water_sheet.ro_usual", {stack.box.x, stack.y()}, words, {.kind = ButtonKind::remedy, .small = true})
            .pressed) {
      WaterChoices choices = desk.mine.choices;
      choices.ro_fraction.reset();
      choose(desk, choices);
    }
    stack.skip(34);
  }
  draw_salts(desk, stack);
}

void choose_towards(WaterDesk& desk, Towards towards) {
  WaterChoices choices = desk.mine.choices;
  choices.towards = towards;
  choices.aim_at.reset();
  choices.ro_fraction.reset();
  choices.grams.clear();
  if (towards == Towards::one_kind && plate_in(desk.work, choices.kind) == 0)
    for (const Kept& kept : desk.work.stock)
      if (kept.species != nullptr) {
        choices.kind = kept.id;
        break;
      }
  choose(desk, choices);
}

void draw_kind_choice(WaterDesk& desk, Stack& stack) {
  std::vector<std::string> names;
  std::vector<std::string_view> views;
  std::vector<std::string> ids;
  int chosen = -1;
  for (const Kept& kept : desk.work.stock) {
    if (kept.species == nullptr) continue;
    if (kept.id == desk.mine.choices.kind) chosen = static_cast<int>(ids.size());
    ids.push_back(kept.id);
    names.push_back(std::to_string(plate_in(desk.work, kept.id)) + "  " + capital(name_of_species(desk.look, kept.id)));
  }
  views.assign(names.begin(), names.end());
  const Box box = stack.take(30, 6);
  const int picked = select(desk.ui, "water_sheet.kind", {box.x, box.y, box.w, 28}, views, chosen, "The kind to suit");
  if (picked < 0) return;
  WaterChoices choices = desk.mine.choices;
  choices.kind = ids[static_cast<std::size_t>(picked)];
  choices.aim_at.reset();
  choices.ro_fraction.reset();
  choices.grams.clear();
  choose(desk, choices);
}

void draw_towards(WaterDesk& desk, Stack& stack) {
  part_heading(desk, stack, "Aim at");
  const WaterWork& work = desk.work;
  Flow flow{.x = stack.box.x, .y = stack.y() + 4, .width = stack.box.w};
  const bool dragged = desk.mine.choices.aim_at.has_value();
  const auto choice = [&](const char* id, std::string_view words, Towards towards) {
    const Box at = flow.take(chip_width(desk.ui, words));
    const bool on = !dragged && work.towards == towards;
    if (chip(desk.ui, std::string("water_sheet.towards/") + id, at.min(), words, on)) choose_towards(desk, towards);
  };
  const bool stocked =
      std::any_of(work.stock.begin(), work.stock.end(), [](const Kept& kept) { return kept.species != nullptr; });
  if (has_own_hardness(desk.look.plan)) choice("own", "The plan's aim", Towards::own);
  if (stocked) {
    choice("middle", "Middle for all", Towards::middle);
    choice("least", "Least RO", Towards::least_ro);
    choice("one", "Suit one", Towards::one_kind);
  }
  const std::string own_point = "Where you put it";
  if (dragged) {
    const Box at = flow.take(chip_width(desk.ui, own_point));
    chip(desk.ui, "water_sheet.towards/point", at.min(), own_point, true);
  }
  stack.skip(flow.height() + 10);
  if (!dragged && work.towards == Towards::one_kind) draw_kind_choice(desk, stack);
  if (!stocked)
    part_note(desk, stack, "Add animals, and the water that suits them can be aimed at.");
  else if (work.least_ro_fraction && work.towards != Towards::least_ro)
    part_note(desk, stack,
              *work.least_ro_fraction > 0.005
                  ? "Least RO would be " + desk.litres(*work.least_ro_fraction * desk.card().for_l) + " a change."
                  : std::string("Without any RO water the hardness can suit all."));
}

}  // namespace

void draw_water_inputs(WaterDesk& desk, Stack& stack) {
  draw_tap(desk, stack);
  stack.skip(10);
  draw_blend(desk, stack);
  stack.skip(10);
  draw_towards(desk, stack);
  stack.skip(10);
}

}  // namespace shoalwright
