// SPDX-License-Identifier: MIT
#include "views/held_view.h"

#include <algorithm>
#include <cmath>

#include "draw/buttons.h"
#include "draw/rulers.h"
#include "draw/stepper.h"
#include "imgui_internal.h"
#include "notebook/say.h"
#include "stocking/least_tank.h"
#include "views/held_words.h"

namespace shoalwright {
namespace {

constexpr float side = 17, pad = 12, line_height = 20;

struct Parts {
  std::vector<Consequence> brings;
  std::string bottom;
  bool buttons = false;
  float height = 0;
};

bool carried_by_pointer(const Ui& ui, const Look& look) { return !look.held->by_keyboard && !ui.touch; }

Parts parts_of(const Ui& ui, const Look& look, const Pen& pen, float inner) {
  Parts parts;
  parts.brings = consequences(look);
  parts.buttons = !carried_by_pointer(ui, look);
  const bool any_loud =
      std::any_of(parts.brings.begin(), parts.brings.end(), [](const Consequence& c) { return c.grade && loud(*c.grade); });
  if (any_loud)
    parts.bottom = "You may still drop it; the findings stay until fixed.";
  else if (!parts.buttons)
    parts.bottom = "Let go to place. Esc puts it back.";
  else if (!ui.touch)
    parts.bottom = "Enter places it. Esc puts it back.";
  parts.height = 10 + 34 + 8 + 28 + 4 + 44 + 4;
  if (!parts.brings.empty()) parts.height += 7 + line_height * static_cast<float>(parts.brings.size());
  if (!parts.bottom.empty()) parts.height += 7 + wrapped_height(pen, type::small, parts.bottom, inner);
  if (parts.buttons) parts.height += 10 + 30;
  parts.height = std::ceil(parts.height + 11);
  return parts;
}

/// Below the row that it was taken from, or above where the column ends; at the top where that row is out of sight.
Box place_of(const Ui& ui, const Look& look, const Box& box, float height, HeldState& mine) {
  const float width = std::min(box.w - 2 * side, 300.0f);
  const Box room = box.inset(side, 8);
  if (mine.species != look.held->species->id) {
    mine = {.species = look.held->species->id, .top = room.y + 160, .above = false};
    if (const Spots::Spot* row = ui.spots.find("shelf.row/" + mine.species); row && row->visible) {
      mine.above = row->max.y + 12 + height > room.bottom();
      mine.top = mine.above ? row->min.y - 28 : row->max.y + 12;
    }
  }
  const float top = mine.above ? mine.top - height : mine.top;
  return {room.x, std::max(room.y, std::min(top, room.bottom() - height)), width, height};
}

void draw_head(const Pen& pen, const Look& look, const Box& card) {
  const Palette& p = *pen.palette;
  const Species& species = *look.held->species;
  const Animal& animal = look.animals.get(species.id, species.look);
  const Reach reach = reach_of(animal);
  const float length_px =
      std::min({34.0f, 38 / std::max(0.1f, reach.left + reach.right), 34 / std::max(0.1f, reach.above + reach.below)});
  draw_animal(
      pen.dl, animal,
      {card.x + pad + 20 + (reach.left - reach.right) / 2 * length_px, card.y + 27 + (reach.above - reach.below) / 2 * length_px},
      length_px, -1, 0);
  const float left = snapped(pen, card.x + pad + 48), right = card.right() - pad - 24;
  const Type t = semibold(type::body);
  draw_text(pen, t, {left, card.y + 10}, p.ink, elided(pen, t, capital(display_name(species)), right - left));
  const double lane_cm = lane_needed_cm(species);
  std::string size = look.measures.length(species.size.adult_tl_cm);
  if (lane_cm > 0) size += ", wants a lane of " + look.measures.length(lane_cm < 10 ? lane_cm : std::round(lane_cm));
  draw_text(pen, type::axis, {left, card.y + 29}, p.ink2, elided(pen, type::axis, size, right + 24 - left - 24));
  draw_plate(pen, look.held->number, {card.right() - pad - 8, card.y + 26});
}

void draw_brings(const Pen& pen, const std::vector<Consequence>& brings, ImVec2 at, float width) {
  const Palette& p = *pen.palette;
  for (const Consequence& one : brings) {
    const bool called = one.grade && loud(*one.grade);
    if (one.grade)
      draw_grade(pen, *one.grade, {at.x + 7, at.y + 10}, 12);
    else
      draw_fit(pen, one.mark, {at.x, at.y + 3});
    const Type t = called ? medium(type::small) : type::small;
    draw_text(pen, t, {at.x + 21, at.y + 2}, called ? p.call : p.ink, elided(pen, t, one.words, width - 21));
    at.y += line_height;
  }
}

/// Arrow keys move what is held, not the keyboard from item to item.
void keep_arrows(const Look& look) {
  if (!look.held->by_keyboard) return;
  const ImGuiContext& g = *ImGui::GetCurrentContext();
  const bool tabbing = (g.NavMoveFlags & ImGuiNavMoveFlags_IsTabbing) != 0;
  if (g.NavMoveDir != ImGuiDir_None && !tabbing) ImGui::NavMoveRequestCancel();
}

/// Enter places it from wherever it does nothing else.
bool placed_by_enter(const Ui& ui, const Look& look) {
  if (!look.held->by_keyboard || !ImGui::IsKeyPressed(ImGuiKey_Enter, false)) return false;
  const std::string& on = ui.ring_id;
  const auto begins = [&](std::string_view start) { return on.compare(0, start.size(), start) == 0; };
  return on.empty() || on == "held.count" || on == "held.rule" || begins("shelf.row/") || begins("tank.");
}

}  // namespace

void draw_held(Ui& ui, const Look& look, const Box& box, HeldState& mine, Actions& out) {
  if (!look.held || !look.held->species) {
    mine = {};
    return;
  }
  const Held& held = *look.held;
  const float inner = std::min(box.w - 2 * side, 300.0f) - 2 * pad;
  const Parts parts = parts_of(ui, look, pen_of(ui), inner);
  const Box card = place_of(ui, look, box, parts.height, mine);

  // A window of its own, so that it lies over the rows and takes the pointer from them; 4 px wider for its outer ring.
  const Box around = card.inset(-4);
  ImGui::SetCursorScreenPos(around.min());
  ImGui::BeginChild("held card", {around.w, around.h}, ImGuiChildFlags_NavFlattened,
                    ImGuiWindowFlags_NoScrollbar | ImGuiWindowFlags_NoScrollWithMouse | ImGuiWindowFlags_NoBackground);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const bool dark = luminance(p.ground) < 0.5f;
  draw_panel(pen, card.inset(-3), 0, scale_alpha(dark ? IM_COL32_BLACK : p.ink, dark ? 0.25f : 0.12f), 9, 0, 3);
  draw_panel(pen, card, p.raised, p.ghost, 6, 0, 1.5f);
  draw_head(pen, look, card);

  float y = card.y + 10 + 34 + 8;
  const float left = snapped(pen, card.x + pad);
  const std::string name = capital(display_name(*held.species));
  const int total = held_total(look), already = total - held.count;
  int count = held.count +
              stepper(ui, "held.count", {left, y}, std::to_string(held.count), name + ", how many", {.less = held.count > 1});
  const float beside = left + stepper_width() + 8;
  const char* how[2] = {"wheel or + and −", "while you hold"};
  if (parts.buttons) how[1] = "in hand";
  if (parts.buttons) how[0] = ui.touch ? "how many" : "+ and − change it";
  const std::string in_all = std::to_string(total) + " in all with these";
  draw_text(pen, type::small, {beside, y - 2}, p.ink2, how[0]);
  draw_text(pen, type::small, {beside, y + 14}, p.ink2, already > 0 ? in_all : std::string(how[1]));
  y += 28 + 4;

  const Species::Life::Group& group = held.species->life.group;
  const int least = std::max(group.least, 1), good = std::max(group.good, least);
  const bool alone = group.kind == GroupKind::solitary, pair = group.kind == GroupKind::pair;
  const GroupRule rule{.size = total,
                       .least = least,
                       .good = good,
                       .most = std::max({good + (good + 1) / 2 + 2, total, 6}),
                       .good_words = alone  ? "lives alone"
                                     : pair ? "a pair"
                                            : ""};
  const int dragged = group_rule(ui, "held.rule", {left, y}, inner, rule, name + " in all");
  if (dragged != total) count = std::max(1, dragged - already);
  y += 44 + 4;
  if (count != held.count && count >= 1) out.push_back(HoldCount{count});

  if (!parts.brings.empty()) {
    draw_rule(pen, left, y, card.right() - pad, p.line);
    draw_brings(pen, parts.brings, {left, y + 7}, inner);
    y += 7 + line_height * static_cast<float>(parts.brings.size());
  }
  if (!parts.bottom.empty()) y += 7 + draw_wrapped(pen, type::small, {left, y + 7}, inner, p.ink2, parts.bottom);
  bool back = false;
  if (parts.buttons) {
    y += 10;
    const std::string add = "Add " + std::to_string(held.count);
    if (button(ui, "held.drop", {left, y}, add, {.kind = ButtonKind::primary}).pressed) out.push_back(Drop{});
    const float x = left + button_width(ui, add, {.kind = ButtonKind::primary}) + 8;
    back = button(ui, "held.back", {x, y}, "Put back").pressed;
    if (back) out.push_back(PutBack{});
  }
  std::string read = name + ", " + std::to_string(held.count) + " in hand";
  for (const Consequence& one : parts.brings) read += ". " + one.words;
  add_spot(ui, "held.card", card, read);
  ImGui::EndChild();

  keep_arrows(look);
  if (!back && placed_by_enter(ui, look)) out.push_back(Drop{});
}

}  // namespace shoalwright
