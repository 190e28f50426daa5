// SPDX-License-Identifier: MIT
#include "views/least_tank_view.h"

#include <algorithm>

#include "app/card_facts.h"
#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/panels.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "views/edit_wish.h"
#include "views/tank_sheet_view.h"

namespace shoalwright {

namespace {

/// What a rule of the tank's measures is about.
std::string matter(const std::string& rule) {
  constexpr std::pair<std::string_view, std::string_view> all[] = {{"crowding-top", "room at the surface"},
                                                                   {"crowding-mid", "room in the middle"},
                                                                   {"crowding-bottom", "room at the floor"},
                                                                   {"tank-length", "length to swim"},
                                                                   {"swim-lane", "the lane"},
                                                                   {"tank-width", "room to turn"},
                                                                   {"tank-height", "the height of fins"},
                                                                   {"tank-volume", "volume for a kind"},
                                                                   {"load", "waste"},
                                                                   {"nitrate", "nitrate"},
                                                                   {"oxygen", "oxygen at dawn"},
                                                                   {"territory", "ground to hold"}};
  for (const auto& [id, words] : all)
    if (rule == id) return std::string(words);
  return rule.empty() ? "nothing" : spaced_word(rule);
}

std::string set_by(const TankFor& tank) {
  return "Length: " + matter(tank.length_set_by) + ". Front to back: " + matter(tank.width_set_by) +
         ". Height: " + matter(tank.height_set_by) + ".";
}

}  // namespace

void draw_least_tanks(Ui& ui, const Look& look, Stack& stack, LeastTankState& mine, Actions& out) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  // The tank itself may change: the answer is for the stock, its water and its care.
  Plan asked = look.plan;
  asked.tank = mine.of.tank;
  if (mine.found && !(asked == mine.of)) mine.found.reset();
  const Box head = stack.take(36);
  draw_text(pen, semibold(type::small), {head.x, head.y + 11}, p.ink2, "Least tank for this stock");
  const ButtonLook small{.small = true, .enabled = !look.plan.stock.empty()};
  if (!mine.found &&
      button(ui, "tank_sheet.least", {head.right() - button_width(ui, "Work it out", small), head.y + 5}, "Work it out", small)
          .pressed) {
    mine.of = look.plan;
    mine.found = least_tanks(look.plan, look.catalog);
    platform::wake(2);
  }
  if (!mine.found) return;
  const float w = stack.box.w;
  if (!mine.found->why_none.empty()) {
    const std::string words = retold(look.measures, mine.found->why_none);
    stack.skip(draw_wrapped(pen, type::small, {stack.box.x, stack.y()}, w, p.ink, words) + 6);
    add_spot(ui, "tank_sheet.least/none", {stack.box.x, stack.y() - 20, w, 18}, words);
  }
  int nth = 0;
  for (const TankFor& tank : mine.found->tanks) {
    const std::string size = look.measures.size(tank.length_cm, tank.width_cm, tank.height_cm) + ", " +
                             look.measures.volume(tank.volume_l) + (tank.name.empty() ? ", to the centimetre" : "");
    const std::string why = set_by(tank);
    const Box row = stack.take(26 + wrapped_height(pen, type::small, why, w - 16) + 6);
    const std::string id = "tank_sheet.least/" + std::to_string(nth++);
    const ListRowAnswer answer = list_row(ui, id, row, size + ". " + why);
    draw_text(pen, medium(type::body), {row.x + 8, row.y + 6}, p.ink, elided(pen, medium(type::body), size, w - 16));
    draw_wrapped(pen, type::small, {row.x + 8, row.y + 26}, w - 16, p.ink2, why);
    const Command command = SetTank{with_lid_of(tank_of(tank), look.plan.tank)};
    if (answer.item.pressed)
      out.push_back(edit_wish(look, command));
    else if (answer.item.hovered || answer.item.ring)
      out.push_back(PreviewPlan{apply(look.plan, command, look.catalog), size});
  }
  stack.skip(draw_wrapped(pen, type::small, {stack.box.x, stack.y() + 4}, w, p.ink3,
                          "Judged with the bottom as it is and without the pieces, in this water and with this care.") +
             10);
}

}  // namespace shoalwright
