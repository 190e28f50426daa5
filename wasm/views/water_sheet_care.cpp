// SPDX-License-Identifier: MIT
#include <cmath>
#include <span>

#include "draw/chips.h"
#include "plan/defaults.h"
#include "units/text.h"
#include "views/sheet_card.h"
#include "views/water_desk.h"

namespace shoalwright {

namespace {

constexpr float row_height = 34, control = 132;

bool water_field(WaterDesk& desk, Stack& stack, const std::string& id, const char* name, const char* unit, int decimals,
                 std::optional<double>& value, std::string_view placeholder) {
  const Box box = sheet_row(desk.ui, stack.take(row_height), name, control);
  return optional_field(desk.ui, id, box, value, name, unit, decimals, placeholder);
}

bool temperature_field(WaterDesk& desk, Stack& stack, const std::string& id, const char* name, std::optional<double>& celsius,
                       std::string_view placeholder) {
  const Measures& measures = desk.look.measures;
  std::optional<double> shown;
  if (celsius) shown = measures.temperature_out(*celsius);
  if (!water_field(desk, stack, id, name, measures.temperature_unit(), 1, shown, placeholder)) return false;
  celsius = shown ? std::optional(measures.temperature_in(*shown)) : std::nullopt;
  return true;
}

void draw_aim(WaterDesk& desk, Stack& stack) {
  part_heading(desk, stack, "In the tank");
  const Plan& plan = desk.look.plan;
  constexpr std::string_view choices[] = {"Runs on the tap", "Aims at"};
  const int picked = one_of(desk.ui, "water_sheet.aim", {stack.box.x, stack.y() + 4}, choices, plan.water ? 1 : 0);
  stack.skip(40);
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
  const Measures& measures = desk.look.measures;
  const auto row = [&](const char* name) { return sheet_row(desk.ui, stack.take(row_height), name, control); };
  changed |= hardness_field(desk.ui, "water_sheet.aim.gh", row(measures.hardness_name(Hardness::gh)), aim.gh_dgh, Hardness::gh,
                            measures, as_tap);
  changed |= hardness_field(desk.ui, "water_sheet.aim.kh", row(measures.hardness_name(Hardness::kh)), aim.kh_dkh, Hardness::kh,
                            measures, as_tap);
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

void draw_view(WaterDesk& desk, Stack& stack) {
  part_heading(desk, stack, "Where practice is divided");
  const Plan& plan = desk.look.plan;
  constexpr std::string_view views[] = {"Lenient", "Usual", "Strict"};
  const int picked =
      one_of(desk.ui, "water_sheet.strictness", {stack.box.x, stack.y() + 4}, views, static_cast<int>(plan.strictness));
  stack.skip(36);
  if (picked >= 0) wish(desk, SetStrictness{static_cast<Strictness>(picked)});
  stack.skip(draw_wrapped(pen_of(desk.ui), type::small, {stack.box.x, stack.y()}, stack.box.w, desk.ui.palette->ink2,
                          line_of(plan.strictness)) +
             4);
  Limits limits = plan.limits;
  const Measures& measures = desk.look.measures;
  const std::string usual = measures.nitrate_figure(default_nitrate_mg_l[static_cast<int>(plan.strictness)]) + " by this view";
  const char* name = measures.nitrate_as_n ? "Nitrate ceiling, as N" : "Your nitrate ceiling";
  const Box box = sheet_row(desk.ui, stack.take(row_height), name, control);
  if (nitrate_field(desk.ui, "water_sheet.nitrate_limit", box, limits.nitrate_mg_l, name, measures, usual))
    wish(desk, SetLimits{limits});
}

void draw_care(WaterDesk& desk, Stack& stack) {
  part_heading(desk, stack, "Plants, food, place");
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

void draw_water_care(WaterDesk& desk, Stack& stack) {
  draw_aim(desk, stack);
  stack.skip(8);
  draw_view(desk, stack);
  stack.skip(8);
  draw_care(desk, stack);
}

}  // namespace shoalwright
