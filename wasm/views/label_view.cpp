// SPDX-License-Identifier: MIT
#include "views/label_view.h"

#include <algorithm>
#include <cmath>

#include "advice/shelf_list.h"
#include "app/card_facts.h"
#include "app/retold.h"
#include "catalog/card_words.h"
#include "catalog/label.h"
#include "draw/marks.h"
#include "draw/panels.h"
#include "notebook/say.h"
#include "views/sheet_card.h"
#include "views/shelf_card.h"

namespace shoalwright {

namespace {

constexpr float gap = 14, most_high = 150, most_px_a_cm = 30;
constexpr int note_lines = 4;

std::string range_words(const Measures& m, const char* name, const std::optional<Range>& range, Hardness of) {
  return range ? std::string(name) + " " + m.hardness_figure(range->low, of) + " to " + m.hardness_figure(range->high, of) : "";
}

/// One trait of one kind as a clause.
std::string clause(LabelTrait trait, const Species& s, const Measures& m) {
  std::vector<std::string> words;
  switch (trait) {
    case LabelTrait::length: return "Grows to " + m.length(s.size.adult_tl_cm);
    case LabelTrait::marks:
      for (const std::string& mark : s.look.marks) words.push_back(spaced_word(mark));
      return s.look.marks == std::vector<std::string>{"none"} ? "Plain" : "Marks: " + joined(words);
    case LabelTrait::fins: return "Fins " + s.look.fins;
    case LabelTrait::form: return "Built as a " + spaced_word(s.look.form);
    case LabelTrait::depth: {
      constexpr const char* thirds[] = {"Swims high", "Swims in the middle", "Keeps low"};
      const std::array<double, 3>& depth = s.life.depth;
      return thirds[std::max_element(depth.begin(), depth.end()) - depth.begin()];
    }
    case LabelTrait::temperature:
      return s.water.temperature_c.tolerated
                 ? m.temperatures(s.water.temperature_c.tolerated->low, s.water.temperature_c.tolerated->high)
                 : "";
    case LabelTrait::ph:
      return s.water.ph.tolerated ? "pH " + span_of(s.water.ph.tolerated->low, s.water.ph.tolerated->high, 1, "") : "";
    case LabelTrait::gh: return range_words(m, "GH", s.water.gh_dgh.tolerated, Hardness::gh);
    case LabelTrait::salt: return "Salt: " + said_word("water.salinity", word_of(s.water.salinity));
    case LabelTrait::tank: return s.needs.least_length_cm ? "Tank from " + m.length(*s.needs.least_length_cm) : "";
    case LabelTrait::group: return said_company(s);
    case LabelTrait::temper: return "To others " + said_word("temper.to_others", word_of(s.temper.to_others));
    case LabelTrait::shrimp: return "Eats shrimp: " + said_word("mouth.eats_shrimp", s.mouth.eats_shrimp);
    case LabelTrait::plants: return "Eats plants: " + said_word("mouth.eats_plants", s.mouth.eats_plants);
  }
  return "";
}

std::string apart_words(const std::vector<LabelTrait>& traits, const Species& species, const Measures& measures) {
  std::string words;
  for (const LabelTrait trait : traits)
    if (const std::string one = clause(trait, species, measures); !one.empty()) words += (words.empty() ? "" : ". ") + one;
  return words + ".";
}

/// A length that a bar of a fifth of the width or so stands for.
double bar_cm(double room_cm) {
  double bar = 1;
  for (const double one : {2.0, 5.0, 10.0, 20.0, 50.0})
    if (one <= room_cm) bar = one;
  return bar;
}

struct Drawn {
  const Animal* animal = nullptr;
  Reach reach;
  float length_cm = 0;
  float across() const { return (reach.left + reach.right) * length_cm; }
  float high() const { return (reach.above + reach.below) * length_cm; }
};

/// All of them in one row on water, each with its number.
void draw_scale(Ui& ui, const Look& look, Stack& stack, const std::vector<const Species*>& kinds) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  std::vector<Drawn> drawn;
  float all_cm = 0, highest_cm = 0;
  for (const Species* kind : kinds) {
    const Animal& animal = look.animals.get(kind->id, kind->look);
    drawn.push_back({&animal, reach_of(animal), static_cast<float>(kind->size.adult_tl_cm)});
    all_cm += drawn.back().across();
    highest_cm = std::max(highest_cm, drawn.back().high());
  }
  const float room = stack.box.w - gap * static_cast<float>(kinds.size() + 1);
  const float px = std::min({room / all_cm, most_high / highest_cm, most_px_a_cm});
  const float high = std::max(std::ceil(highest_cm * px), 30.0f);
  const Box water = stack.take(high + 58);
  pen.dl->AddRectFilledMultiColor(water.min(), water.max(), p.waterTop, p.waterTop, p.waterBot, p.waterBot);
  float x = water.x + (water.w - all_cm * px - gap * static_cast<float>(kinds.size() - 1)) / 2;
  std::string label;
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    const Drawn& one = drawn[i];
    const float wide = one.across() * px, length = one.length_cm * px, middle = water.y + 12 + high / 2;
    draw_animal(pen.dl, *one.animal, {x + one.reach.left * length, middle + (one.reach.above - one.reach.below) / 2 * length},
                length, -1, 0);
    draw_plate(pen, static_cast<int>(i) + 1, {snapped(pen, x + wide / 2), snapped(pen, water.y + high + 24)});
    label += (label.empty() ? "" : ", ") + std::to_string(i + 1) + " " + look.measures.length(kinds[i]->size.adult_tl_cm);
    x += wide + gap;
  }
  const double bar = bar_cm(static_cast<double>(water.w / px) / 5);
  const float bar_px = static_cast<float>(bar) * px, y = snapped(pen, water.bottom() - 12);
  draw_dimension(pen, {water.x + 10, y}, {water.x + 10 + bar_px, y}, p.ink);
  draw_text(pen, type::axis, {water.x + 16 + bar_px, y - 8}, p.ink, look.measures.length(bar));
  add_spot(ui, "label.scale", water, "Grown, at one scale: " + label);
  stack.skip(10);
}

void draw_kind(Ui& ui, const Look& look, Stack& stack, int number, const Species& species, const std::vector<LabelTrait>& traits,
               Actions& out) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const float x = stack.box.x + 32, w = stack.box.w - 40;
  const std::string name = capital(display_name(species)), apart = apart_words(traits, species, look.measures),
                    note = retold(look.measures, species.note);
  const float height = 8 + 18 + 17 + wrapped_height(pen, type::small, apart, w) +
                       (note.empty() ? 0 : wrapped_height(pen, type::small, note, w, note_lines) + 2) + 8;
  const Box box = stack.take(height, 2);
  const ItemLook item_look{.rounding = 4, .exact = true};
  const Item of = item(ui, "label.kind/" + species.id, box, name + ". " + apart, item_look);
  draw_rule(pen, box.x, box.y, box.right(), p.line);
  if (of.hovered) draw_panel(pen, box, p.actSoft, 0, 4);
  draw_plate(pen, number, {box.x + 14, snapped(pen, box.y + 18)});
  const Type t = medium(type::body);
  draw_text(pen, t, {x, box.y + 8}, of.hovered ? p.act : p.ink, elided(pen, t, name, w));
  draw_text(pen, italic(type::small), {x, box.y + 26}, p.ink3, elided(pen, italic(type::small), species.name.scientific, w));
  float y = box.y + 43;
  y += draw_wrapped(pen, type::small, {x, y}, w, p.ink, apart) + 2;
  if (!note.empty()) draw_wrapped(pen, type::small, {x, y}, w, p.ink2, note, note_lines);
  if (of.ring) draw_ring(ui, box, item_look);
  if (of.pressed) out.push_back(ShowSpecies{species.id});
}

}  // namespace

void draw_label(Ui& ui, const Look& look, const Box& box, LabelState& mine, Actions& out) {
  const std::vector<const Species*> shelf = shelf_kinds(look.plan, look.catalog);
  const std::optional<Label> label = label_of(shelf, mine.word);
  if (!label) {  // a kind of the keeper's own was undone
    out.push_back(ShowSheet{Sheet::none});
    return;
  }
  if (!mine.begun && !ui.ring_id_before.empty()) ui.focus_wanted = "label.close";
  const std::string heading = elided(pen_of(ui), type::head, "Sold as “" + label->word + "”", std::min(box.w, 700.0f) - 90);
  const SheetCard card = begin_sheet(ui, "label", box, {720, 900}, heading, out);
  Column column = begin_column(ui, "label.all", card.body, ui.palette->raised, true);
  if (!mine.begun) ImGui::SetScrollY(0);
  mine.begun = true;
  Stack stack{{column.content.x, column.content.y + 6, column.content.w - 10, 0}};
  draw_scale(ui, look, stack, label->kinds);
  const std::vector<LabelTrait> traits = traits_apart(label->kinds);
  int number = 0;
  for (const Species* kind : label->kinds) draw_kind(ui, look, stack, ++number, *kind, traits, out);
  if (!label->card_less.empty()) {
    const std::string words = "Also sold so, without a card here: " + joined(label->card_less) + ".";
    stack.skip(draw_wrapped(pen_of(ui), type::small, {stack.box.x, stack.y() + 6}, stack.box.w, ui.palette->ink3, words) + 8);
    add_spot(ui, "label.more", {stack.box.x, stack.y() - 8, stack.box.w, 8}, words);
  }
  end_column(ui, column, stack.at + 22);
  end_sheet();
}

}  // namespace shoalwright
