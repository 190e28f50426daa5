// SPDX-License-Identifier: MIT
#include <algorithm>

#include "app/retold.h"
#include "draw/buttons.h"
#include "notebook/say.h"
#include "views/species_desk.h"

namespace shoalwright {

namespace {

constexpr std::size_t at_first = 4, more_each = 8;
constexpr float picture = 46;

std::string water_words(const Measures& m, const SharedWater& water) {
  std::vector<std::string> parts;
  if (water.temperature_c) parts.push_back(m.temperatures(water.temperature_c->low, water.temperature_c->high));
  if (water.ph) parts.push_back("pH " + span_of(water.ph->low, water.ph->high, 1, ""));
  const auto hardness = [&](const char* name, const std::optional<Range>& range, Hardness of) {
    if (!range) return;
    const std::string low = m.hardness_figure(range->low, of), high = m.hardness_figure(range->high, of);
    parts.push_back(std::string(name) + " " + (low == high ? low : low + " to " + high));
  };
  hardness("GH", water.gh_dgh, Hardness::gh);
  hardness("KH", water.kh_dkh, Hardness::kh);
  std::string words;
  for (const std::string& part : parts) words += (words.empty() ? "" : ", ") + part;
  return words;
}

/// One kind with lines under its name; pressed, its page opens.
void draw_kind(SpeciesDesk& desk, Stack& stack, const std::string& id, const Species& other,
               const std::vector<std::string>& lines) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const float x = stack.box.x + picture, w = stack.box.w - picture - 4;
  float height = 4 + 18;
  for (const std::string& line : lines) height += wrapped_height(pen, type::small, line, w);
  const Box box = stack.take(height + 5, 2);
  const std::string name = capital(display_name(other));
  std::string label = name;
  for (const std::string& line : lines) label += ". " + line;
  const ItemLook look{.rounding = 4, .exact = true};
  const Item of = item(desk.ui, id + other.id, box, label, look);
  if (of.hovered) draw_panel(pen, box, p.actSoft, 0, 4);
  const Animal& animal = desk.look.animals.get(other.id, other.look);
  const Reach reach = reach_of(animal);
  const float length =
      std::min({34.0f, 38 / std::max(reach.left + reach.right, 0.1f), 26 / std::max(reach.above + reach.below, 0.1f)});
  draw_silhouette(pen.dl, animal,
                  {box.x + 21 + (reach.left - reach.right) / 2 * length, box.y + 16 + (reach.above - reach.below) / 2 * length},
                  length, p.ink2, of.hovered ? p.actSoft : p.raised);
  const Type t = medium(type::body);
  draw_text(pen, t, {x, box.y + 4}, of.hovered ? p.act : p.ink, elided(pen, t, name, w));
  float y = box.y + 22;
  for (const std::string& line : lines) y += draw_wrapped(pen, type::small, {x, y}, w, p.ink2, line);
  if (of.ring) draw_ring(desk.ui, box, look);
  if (of.pressed) desk.out.push_back(ShowSpecies{other.id});
}

/// "8 more of 23".
void draw_more(SpeciesDesk& desk, Stack& stack, const char* id, std::size_t& shown, std::size_t all) {
  const std::size_t now = shown == 0 ? at_first : shown;
  if (now >= all) return;
  const std::string words = std::to_string(std::min(more_each, all - now)) + " more of " + std::to_string(all - now);
  if (button(desk.ui, id, {stack.box.x + picture - 10, stack.y() + 2}, words, {.kind = ButtonKind::quiet, .small = true}).pressed)
    shown = now + more_each;
  stack.skip(32);
}

void heading(SpeciesDesk& desk, Stack& stack, const std::string& words) {
  draw_text(pen_of(desk.ui), medium(type::small), {stack.box.x, stack.y()}, desk.ui.palette->ink2, words);
  stack.skip(20);
}

void draw_good(SpeciesDesk& desk, Stack& stack) {
  const Company& company = desk.mine.worked.company;
  heading(desk, stack, "Share its water: " + std::to_string(company.good.size()));
  const std::size_t shown = desk.mine.good_shown == 0 ? at_first : desk.mine.good_shown;
  for (std::size_t i = 0; i < std::min(shown, company.good.size()); ++i) {
    const GoodCompany& good = company.good[i];
    std::vector<std::string> lines{water_words(desk.look.measures, good.water)};
    for (const std::string& mind : good.mind) lines.push_back(retold(desk.look.measures, mind) + ".");
    draw_kind(desk, stack, "species.good/", *good.species, lines);
  }
  draw_more(desk, stack, "species.good.more", desk.mine.good_shown, company.good.size());
  if (company.good.empty() && company.unknown_for.empty()) species_note(desk, stack, "None of the kinds known here.");
  if (!company.unknown_for.empty())
    species_note(desk, stack, "Its card has no " + company.unknown_for + ": nobody can be named that shares its water.");
  else if (!company.unknown.empty())
    species_note(desk, stack, std::to_string(company.unknown.size()) + " more have no figure for some of their water.");
}

void draw_poor(SpeciesDesk& desk, Stack& stack) {
  const Company& company = desk.mine.worked.company;
  heading(desk, stack, "Better apart: " + std::to_string(company.poor.size()));
  const std::size_t shown = desk.mine.poor_shown == 0 ? at_first : desk.mine.poor_shown;
  for (std::size_t i = 0; i < std::min(shown, company.poor.size()); ++i) {
    const PoorCompany& poor = company.poor[i];
    const About about{.nitrate = false, .hardness = poor.parting == Parting::kh ? Hardness::kh : Hardness::gh};
    draw_kind(desk, stack, "species.poor/", *poor.species, {retold(desk.look.measures, poor.text, about) + "."});
  }
  draw_more(desk, stack, "species.poor.more", desk.mine.poor_shown, company.poor.size());
}

}  // namespace

void draw_species_company(SpeciesDesk& desk, Stack& stack) {
  species_heading(desk, stack, "Company", "in a plain common tank");
  if (stack.box.w >= 560) {
    const float gap = 24, half = std::floor((stack.box.w - gap) / 2);
    Stack left{{stack.box.x, stack.y(), half, 0}}, right{{stack.box.x + half + gap, stack.y(), half, 0}};
    draw_good(desk, left);
    draw_poor(desk, right);
    stack.skip(std::max(left.at, right.at));
  } else {
    draw_good(desk, stack);
    stack.skip(8);
    draw_poor(desk, stack);
  }
  species_note(desk, stack,
               "By water, mouths, fins and temper of the cards. Who eats whom: published; the rest common practice, no source.");
  stack.skip(8);
}

}  // namespace shoalwright
