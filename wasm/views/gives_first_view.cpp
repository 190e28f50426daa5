// SPDX-License-Identifier: MIT
#include "views/gives_first_view.h"

#include <algorithm>
#include <cmath>

#include "app/say.h"
#include "draw/marks.h"

namespace shoalwright {

namespace {

constexpr std::size_t least_cells = 3, most_cells = 6;

/// What a margin says now that it is shown otherwise.
struct Change {
  bool changed = false;
  std::string was;  ///< "7", "3 spare"; empty where it was not there
};

Change change_of(const std::vector<MarginWords>& before, const MarginWords& words) {
  for (const MarginWords& was : before) {
    if (was.margin != words.margin) continue;
    const bool same =
        was.amount == words.amount && was.state == words.state && was.number == words.number && was.words == words.words;
    return {!same, was.state == words.state && was.words.size() < 24 ? was.amount : was.amount + " " + was.state};
  }
  return {true, ""};
}

/// "was 7 spare", "0.3 L/cm, was 0.5", "set by", "about 9 mg/L".
std::string third_line(const MarginWords& words, const Change& change) {
  if (!change.changed) return words.detail.empty() ? (words.plates.empty() ? "" : "set by") : words.detail;
  const std::string was = change.was.empty() ? "new" : "was " + change.was;
  return words.detail.empty() ? was : words.detail + ", " + was;
}

const char* item_for(std::string_view margin) {
  if (margin == "temperature_c") return "water.temperature";
  if (margin == "ph") return "water.ph";
  if (margin == "gh_dgh") return "water.gh";
  if (margin == "kh_dkh") return "water.kh";
  return id_of(section_of_margin(margin));
}

void draw_cell(Ui& ui, const Box& box, const MarginWords& words, const Change& change, bool rule_left, Actions& out) {
  const std::string id = "first/" + words.margin;
  const std::string third = third_line(words, change);
  const std::string said = words.name + ": " + words.number + " " + words.words + (third.empty() ? "" : ", " + third) +
                           (words.plates.empty() ? "" : " " + plates_text(words.plates));
  const ItemLook look{.rounding = 2, .ring = Ring::inside, .exact = true};
  const Item of = item(ui, id, box, said, look);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const float tint = eased(ui, id + "/tint", change.changed ? 1.0f : of.hovered ? 0.5f : 0.0f, 90);
  if (tint > 0) draw_panel(pen, box, mix(p.panel, p.actSoft, tint), 0, 0);
  if (rule_left) draw_rule_down(pen, box.x, box.y, box.bottom(), p.line);

  const bool called = words.grade && loud(*words.grade);
  const float left = box.x + 9, room = box.w - 13;
  float x = left, y = box.y + 8;
  if (words.grade) {
    draw_grade(pen, *words.grade, {x + 5.5f, y + 7.5f}, 11);
    x += 15;
  }
  draw_text(pen, type::axis, {x, y}, p.ink2, elided(pen, type::axis, words.name, left + room - x));

  const Type large{Face::semibold, 18, 22}, beside = medium(type::axis);
  const ImU32 ink = called ? p.call : p.ink;
  y += 14;
  draw_text(pen, large, {left, y}, ink, words.number);
  const float words_x = left + text_width(pen, large, words.number) + 4, words_room = left + room - words_x;
  const bool fits = text_width(pen, beside, words.words) <= words_room;
  const std::string shown = elided(pen, beside, fits ? words.words : words.short_words, words_room);
  draw_text(pen, beside, {words_x, y + 6}, ink, shown);

  y += 24;
  // The whole line if it fits, at the cost of the plates; else what was, alone.
  std::string line = third;
  if (change.changed && text_width(pen, type::axis, line) > room) line = change.was.empty() ? "new" : "was " + change.was;
  x = left + draw_text(pen, type::axis, {left, y}, p.ink2, elided(pen, type::axis, line, room)) + (line.empty() ? 0.0f : 5.0f);
  for (const int plate : words.plates) {
    if (x + 14 > box.right() - 1) break;
    draw_plate(pen, plate, {x + 7, y + 7.5f}, 7);
    x += 17;
  }
  if (of.ring) draw_ring(ui, box, look);
  if (of.pressed) out.push_back(FocusItem{item_for(words.margin)});
}

/// Width that a cell's own words ask for, held so that none starves another.
float weight_of(const Pen& pen, const MarginWords& words) {
  const float head = text_width(pen, type::axis, words.name) + (words.grade ? 15.0f : 0.0f);
  const float said =
      text_width(pen, {Face::semibold, 18, 22}, words.number) + 4 + text_width(pen, medium(type::axis), words.short_words);
  return std::clamp(std::max(head, said) + 14, 84.0f, 150.0f);
}

/// Leaves out the margins that would give last until the others have the room that their words ask for.
void keep_what_fits(const Pen& pen, std::vector<MarginWords>& all, float room) {
  float sum = 0;
  for (const MarginWords& words : all) sum += weight_of(pen, words);
  while (all.size() > least_cells && sum > room) {
    sum -= weight_of(pen, all.back());
    all.pop_back();
  }
}

void draw_row(Ui& ui, const Box& row, const std::vector<MarginWords>& all, const std::vector<MarginWords>& before,
              std::size_t from, std::size_t to, bool first_rule, bool previewing, Actions& out) {
  const Pen pen = pen_of(ui);
  float sum = 0;
  for (std::size_t i = from; i < to; ++i) sum += weight_of(pen, all[i]);
  float x = row.x;
  for (std::size_t i = from; i < to; ++i) {
    const float right = i + 1 == to ? row.right() : std::round(x + row.w * weight_of(pen, all[i]) / sum);
    const Change change = previewing ? change_of(before, all[i]) : Change{};
    draw_cell(ui, {x, row.y, right - x, row.h}, all[i], change, i > from || first_rule, out);
    x = right;
  }
}

}  // namespace

void draw_gives_first(Ui& ui, const Look& look, const Box& box, GivesFirstState&, Actions& out) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, box, p.panel, 0, 0);
  std::vector<MarginWords> all = first_margins(told_shown(look), most_cells);
  const std::vector<MarginWords> before = look.is_previewing() ? first_margins(told_now(look), 100) : std::vector<MarginWords>{};
  const bool narrow = box.w < 560;
  Box rest = box;
  if (narrow) {
    const Box head = rest.cut_top(24);
    draw_text(pen, semibold(type::small), {head.x + 12, head.y + 5}, p.ink, "What gives first");
  } else {
    const Box head = rest.cut_left(90);
    draw_wrapped(pen, semibold({Face::regular, 13, 17}), {head.x + 16, head.y + 19}, head.w - 22, p.ink, "What gives first");
    keep_what_fits(pen, all, rest.w);
  }
  if (all.empty()) {
    draw_text(pen, type::small, {rest.x + 12, rest.y + rest.h / 2 - 8}, p.ink2,
              elided(pen, type::small, "Nothing yet: take a kind from the shelf.", rest.w - 24));
  } else if (narrow && all.size() > 3) {
    const Box upper = rest.cut_top(rest.h / 2);
    draw_row(ui, upper, all, before, 0, 3, false, look.is_previewing(), out);
    draw_row(ui, rest, all, before, 3, all.size(), false, look.is_previewing(), out);
    draw_rule(pen, rest.x, rest.y, rest.right(), p.line);
  } else {
    draw_row(ui, rest, all, before, 0, all.size(), !narrow, look.is_previewing(), out);
  }
  draw_rule(pen, box.x, box.y, box.right(), p.line);
  draw_rule(pen, box.x, box.bottom() - 1, box.right(), p.line);
}

}  // namespace shoalwright
