// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>

#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/panels.h"
#include "notebook/say.h"
#include "units/text.h"
#include "views/water_desk.h"

namespace shoalwright {

namespace {

constexpr float pad = 10;
constexpr std::size_t kinds_told = 5;

/// One road: what it is and what it comes to, line by line.
struct Road {
  const char* id;
  std::string heading;
  std::vector<std::string> lines;
  std::string button;
};

const char* name_of(WaterQuantity quantity) {
  switch (quantity) {
    case WaterQuantity::temperature: return "Temperature";
    case WaterQuantity::ph: return "pH";
    case WaterQuantity::gh: return "GH";
    case WaterQuantity::kh: return "KH";
  }
  return "";
}

/// "1: GH 6, KH 4 over", one line a kind.
std::vector<std::string> miss_lines(const WaterWork& work, const std::vector<KindMiss>& misses, const Measures& measures) {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < misses.size();) {
    const std::string& species = misses[i].species;
    std::vector<std::string> parts;
    for (; i < misses.size() && misses[i].species == species; ++i)
      parts.push_back(std::string(name_of(misses[i].quantity)) + " " + short_text(std::abs(misses[i].by), 1) +
                      (misses[i].by > 0 ? " over" : " under"));
    lines.push_back(std::to_string(plate_in(work, species)) + ": " + retold(measures, joined(parts)));
  }
  return lines;
}

Road others_road(const WaterDesk& desk, const Roads& roads) {
  Road road{"others", "Other animals", {}, "Show fish for this tap"};
  road.lines.push_back(std::to_string(roads.others.kinds_that_suit) + " of " + std::to_string(roads.others.kinds) +
                       " kinds live in this tap as it is.");
  std::vector<std::string> lines = miss_lines(desk.work, roads.others.misses, desk.look.measures);
  if (lines.size() > kinds_told) {
    const std::size_t more = lines.size() - kinds_told;
    lines.resize(kinds_told);
    lines.push_back("and " + std::to_string(more) + " more");
  }
  road.lines.insert(road.lines.end(), lines.begin(), lines.end());
  return road;
}

Road mixing_road(const WaterDesk& desk, const Roads& roads) {
  Road road{"mixing", "Mix the water", {}, ""};
  const RecipeCard& card = roads.mixing;
  if (!card.ro_l || !card.recipe.ro_fraction) return road;
  road.lines.push_back(percent(*card.recipe.ro_fraction) + " RO: " + desk.litres(*card.ro_l) + " RO and " +
                       desk.litres(*card.tap_l) + " tap a change.");
  road.lines.push_back(desk.litres(*card.ro_l_week) + " RO a week, " + rough_volume(desk.look.measures, *card.ro_l_year) +
                       " a year.");
  if (card.recipe.reached.gh_dgh && card.recipe.reached.kh_dkh)
    road.lines.push_back(retold(desk.look.measures, "Gives GH " + short_text(*card.recipe.reached.gh_dgh, 1) + ", KH " +
                                                        short_text(*card.recipe.reached.kh_dkh, 1) + "."));
  return road;
}

Road tolerant_road(const WaterDesk& desk, const Roads& roads) {
  const TolerantKinds& tolerant = roads.tolerant;
  Road road{"tolerant", "Tolerant kinds", {}, ""};
  if (tolerant.kinds.empty()) {
    road.lines.emplace_back("No soft-water kind of these groups takes much harder water than this mix.");
    return road;
  }
  const std::string bred = "Bred in captivity, to GH " + desk.look.measures.hardness_figure(lesser_mix_most_dgh, Hardness::gh);
  road.lines.push_back(tolerant.ro_fraction > 0
                           ? bred + ": " + percent(tolerant.ro_fraction) + " RO, " + desk.litres(tolerant.ro_l_week) + " a week."
                           : bred + ".");
  std::vector<std::string> planned;
  std::size_t others = 0;
  for (const TolerantKind& kind : tolerant.kinds) {
    if (kind.in_plan)
      planned.push_back(kind.species);
    else if (++others <= kinds_told)
      road.lines.push_back(capital(name_of_species(desk.look, kind.species)) + ", " +
                           (kind.ro_fraction > 0.005 ? percent(kind.ro_fraction) + " RO" : std::string("no RO")));
  }
  if (others > kinds_told) road.lines.push_back("and " + std::to_string(others - kinds_told) + " more");
  if (!planned.empty()) road.lines.push_back("Of the plan: " + plates_words(desk.work, planned));
  return road;
}

float height_of(const Pen& pen, const Road& road, float width) {
  float h = pad + 22;
  for (const std::string& line : road.lines) h += wrapped_height(pen, type::small, line, width - 2 * pad) + 4;
  return h + (road.button.empty() ? 0 : 36) + pad - 4;
}

void draw_road(WaterDesk& desk, const Road& road, const Box& box) {
  Ui& ui = desk.ui;
  const Pen pen = pen_of(ui);
  draw_panel(pen, box, ui.palette->raised, ui.palette->line, 6);
  const Box in{box.x + pad, box.y + pad, box.w - 2 * pad, box.h - 2 * pad};
  draw_text(pen, semibold(type::body), in.min(), ui.palette->ink, road.heading);
  float y = in.y + 22;
  std::string said = road.heading;
  for (std::size_t i = 0; i < road.lines.size(); ++i) {
    y += draw_wrapped(pen, type::small, {in.x, y}, in.w, i == 0 ? ui.palette->ink : ui.palette->ink2, road.lines[i]) + 4;
    said += (i == 0 ? ": " : "; ") + road.lines[i];
  }
  add_spot(ui, "water_sheet.road/" + std::string(road.id), box, said);
  if (road.button.empty()) return;
  const Box at{in.x, box.bottom() - pad - 26, in.w, 26};
  const std::string words = elided(pen, medium(type::small), road.button, in.w - 20);
  if (!button_in(ui, "water_sheet.fish", at, words, {.kind = ButtonKind::remedy, .small = true, .tooltip = road.button}).pressed)
    return;
  desk.out.push_back(JudgeShelf{true});
  desk.out.push_back(ShowSheet{Sheet::none});
  if (!ui.ring_id_before.empty()) desk.out.push_back(FocusItem{"shelf.search"});
}

}  // namespace

void draw_roads(WaterDesk& desk, Stack& stack) {
  if (desk.work.roads == nullptr) return;
  const Roads& roads = *desk.work.roads;
  part_heading(desk, stack, "Three roads from hard water");
  stack.skip(6);
  const std::array<Road, 3> all{others_road(desk, roads), mixing_road(desk, roads), tolerant_road(desk, roads)};
  const Pen pen = pen_of(desk.ui);
  constexpr float gap = 8;
  const bool side_by_side = stack.box.w >= 430;
  // The first needs room for its button.
  const float rest = stack.box.w - 2 * gap, first = std::floor(std::max(rest / 3, std::min(rest * 0.4f, 176.0f)));
  const auto width_of = [&](const Road& road) {
    return !side_by_side ? stack.box.w : &road == &all[0] ? first : std::floor((rest - first) / 2);
  };
  float highest = 0;
  for (const Road& road : all) highest = std::max(highest, height_of(pen, road, width_of(road)));
  float x = stack.box.x;
  for (const Road& road : all) {
    const float w = width_of(road);
    const float h = side_by_side ? highest : height_of(pen, road, w);
    draw_road(desk, road, {x, stack.y(), w, h});
    if (side_by_side)
      x += w + gap;
    else
      stack.skip(h + gap);
  }
  if (side_by_side) stack.skip(highest);
  stack.skip(14);
}

}  // namespace shoalwright
