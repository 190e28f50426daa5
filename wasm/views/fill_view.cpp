// SPDX-License-Identifier: MIT
#include "views/fill_view.h"

#include <algorithm>
#include <array>

#include "advice/shelf_list.h"
#include "advice/suggest.h"
#include "app/card_facts.h"
#include "catalog/plural.h"
#include "draw/buttons.h"
#include "draw/chips.h"
#include "draw/stepper.h"
#include "fill/wishes.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "views/sheet_card.h"

namespace shoalwright {

namespace {

constexpr float row_height = 34, kind_height = 36;

struct Desk {
  Ui& ui;
  const Look& look;
  FillDesk& mine;
  FillWishes wishes;
  Actions& out;
};

void wish(Desk& desk, const FillWishes& wishes, const std::string& name) {
  Plan plan = desk.look.plan;
  set_wishes(plan, wishes);
  desk.out.push_back(EditPlan{std::move(plan), name, "wishes"});
}

/// A slice of the search, unless it was stopped over this very plan.
void go_on(FillDesk& mine, const Ui& ui, const Look& look) {
  mine.stopped = mine.stopped && mine.work.of == look.plan;
  if (mine.stopped) return;
  if (go_on(mine.work, ui, look)) mine.found = mine.work.search->found();
}

void draw_heading(Ui& ui, Stack& stack, std::string_view words) {
  const Box row = stack.take(26);
  draw_text(pen_of(ui), semibold(type::small), {row.x, row.y + 7}, ui.palette->ink2, words);
}

/// Chips in rows; the one pressed, -1 for none.
int draw_chips(Ui& ui, Stack& stack, const std::string& id, std::span<const std::string> words, std::span<const bool> on) {
  int pressed = -1;
  Flow flow{.x = stack.box.x, .y = stack.y() + 2, .width = stack.box.w};
  for (std::size_t i = 0; i < words.size(); ++i)
    if (chip(ui, id + std::to_string(i), flow.take(chip_width(ui, words[i])).min(), words[i], on[i]))
      pressed = static_cast<int>(i);
  stack.skip(flow.down + flow.row_height + 6);
  return pressed;
}

void draw_wishes(Desk& desk, Stack& stack) {
  Ui& ui = desk.ui;
  FillWishes wishes = desk.wishes;
  const StepperLook stepper_look{.less = wishes.most_kinds > 1, .more = wishes.most_kinds < most_fill_kinds};
  const Box kinds = sheet_row(ui, stack.take(row_height), "New kinds at most", stepper_width(stepper_look));
  if (const int step =
          stepper(ui, "fill.kinds", {kinds.x, kinds.y}, std::to_string(wishes.most_kinds), "New kinds at most", stepper_look);
      step != 0) {
    wishes.most_kinds += step;
    wish(desk, wishes, "At most " + std::to_string(wishes.most_kinds) + " new kinds");
  }
  const float easy_width = switch_width(ui, "Easy ones only");
  const Box easy = stack.take(row_height);
  if (switch_chip(ui, "fill.easy", {easy.right() - easy_width, easy.y + 4}, "Easy ones only", wishes.easy_only)) {
    wishes.easy_only = !wishes.easy_only;
    wish(desk, wishes, wishes.easy_only ? "Easy kinds only" : "Delicate kinds too");
  }
  draw_heading(ui, stack, "Rather at this level");
  constexpr std::array<std::string_view, 4> levels = {"Surface", "Upper", "Middle", "Floor"};
  const Box row = stack.take(32);
  if (const int at = segments(ui, "fill.level", {row.x, row.y + 2}, levels, wishes.levels, std::min(344.0f, row.w)); at >= 0) {
    wishes.levels[static_cast<std::size_t>(at)] = !wishes.levels[static_cast<std::size_t>(at)];
    wish(desk, wishes, "Wishes for levels");
  }
  draw_heading(ui, stack, "Rather in this colour");
  std::vector<std::string> colours;
  for (int i = 0; i < colour_count; ++i) colours.push_back(capital(std::string(name_of(static_cast<Colour>(i)))));
  if (const int at = draw_chips(ui, stack, "fill.colour/", colours, wishes.colours); at >= 0) {
    wishes.colours[static_cast<std::size_t>(at)] = !wishes.colours[static_cast<std::size_t>(at)];
    wish(desk, wishes, "Wishes for colours");
  }
}

/// What must be in and what never: a press takes one back.
void draw_named_wishes(Desk& desk, Stack& stack) {
  for (const bool must : {true, false}) {
    const std::vector<std::string>& ids = must ? desk.wishes.must : desk.wishes.never;
    if (ids.empty()) continue;
    draw_heading(desk.ui, stack, must ? "Must be in it" : "Never");
    Flow flow{.x = stack.box.x, .y = stack.y() + 2, .width = stack.box.w};
    for (const std::string& id : ids) {
      const std::string words = capital(name_of_species(desk.look, id));
      const ButtonLook look{.small = true, .icon = Icon::clear, .tooltip = "Take this wish back"};
      const Box at = flow.take(std::min(button_width(desk.ui, words, look), stack.box.w));
      if (button_in(desk.ui, "fill.wish/" + id, at, words, look).pressed) {
        FillWishes wishes = desk.wishes;
        std::erase(must ? wishes.must : wishes.never, id);
        wish(desk, wishes, "Take a wish back");
      }
    }
    stack.skip(flow.down + flow.row_height + 6);
  }
}

void draw_kind(Desk& desk, const Box& row, const std::string& list, const std::string& id, int count) {
  Ui& ui = desk.ui;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const Species* species = species_of(desk.look, id);
  if (!species) return;
  constexpr float icon = 34, picture = 54;
  const Animal& animal = desk.look.animals.get(id, species->look);
  const Reach reach = reach_of(animal);
  const float length = std::min({46 / (reach.left + reach.right), 26 / (reach.above + reach.below), 46.0f});
  draw_silhouette(pen.dl, animal,
                  {row.x + picture / 2 + (reach.left - reach.right) / 2 * length,
                   row.y + row.h / 2 + (reach.above - reach.below) / 2 * length},
                  length, p.ink2, p.raised);
  const std::string words = std::to_string(count) + " " + name_for(*species, count);
  const float x = row.x + picture + 8, room = row.right() - 2 * icon - 8 - x;
  draw_text(pen, type::body, {x, row.y + 2}, p.ink, elided(pen, type::body, words, room));
  draw_text(pen, italic(type::small), {x, row.y + 19}, p.ink3, elided(pen, italic(type::small), species->name.scientific, room));
  const bool must = is_ticked(desk.wishes.must, id);
  FillWishes wishes = desk.wishes;
  if (icon_button(
          ui, list + "/keep/" + id, {row.right() - 2 * icon - 4, row.y + 3}, must ? Icon::tick : Icon::plus,
          must ? capital(display_name(*species)) + " need not be in it" : capital(display_name(*species)) + " must be in it")
          .pressed) {
    tick(wishes.must, id);
    wish(desk, wishes, "Wish for " + name_for(*species, 2));
  }
  if (icon_button(ui, list + "/never/" + id, {row.right() - icon, row.y + 3}, Icon::clear, "Never " + name_for(*species, 2))
          .pressed) {
    std::erase(wishes.must, id);
    tick(wishes.never, id);
    wish(desk, wishes, "Never " + name_for(*species, 2));
  }
}

void draw_list(Desk& desk, Stack& stack, const FilledStock& list, std::size_t nth) {
  Ui& ui = desk.ui;
  const std::string id = "fill.list/" + std::to_string(nth);
  const Box card = stack.take(static_cast<float>(list.fresh.size()) * kind_height + 52, 8);
  draw_card(pen_of(ui), card);
  Box inside = card.inset(12, 8);
  std::vector<std::string> words;
  for (const auto& [species, count] : list.fresh) {
    draw_kind(desk, inside.cut_top(kind_height), id, species, count);
    words.push_back(std::to_string(count) + " " + name_of_species(desk.look, species));
  }
  add_spot(ui, id, card, joined(words));
  Plan plan = with_stock(desk.look.plan, list);
  const ButtonLook look{.kind = nth == 0 ? ButtonKind::primary : ButtonKind::secondary, .small = true};
  const Item take = button(ui, id + "/take", {inside.x, inside.y + 6}, "Put them in", look);
  const std::string name = "Add " + joined(words);
  if (take.pressed) {
    desk.out.push_back(EditPlan{std::move(plan), name, ""});
    desk.out.push_back(Tell{name, "Undo"});
    desk.out.push_back(ShowSheet{Sheet::none});
  } else if (take.hovered || take.ring) {
    desk.out.push_back(PreviewPlan{std::move(plan), "With list " + std::to_string(nth + 1)});
  }
}

std::string state_words(const FillDesk& mine) {
  if (!mine.found.why_none.empty()) return mine.found.why_none;
  if (mine.stopped) return "Stopped: there may be better ones.";
  if (!mine.work.done) return "Looking…";
  return mine.found.proven ? "All were gone through: none does better by these wishes."
                           : "The best that was found: there may be better ones.";
}

}  // namespace

void draw_fill(Ui& ui, const Look& look, const Box& box, FillDesk& mine, Actions& out) {
  go_on(mine, ui, look);
  Desk desk{ui, look, mine, wishes_of(look.plan), out};
  const SheetCard card = begin_sheet(ui, "fill", box, {560, 900}, "What could go in", out);
  Column column = begin_column(ui, "fill.all", card.body, ui.palette->raised, true);
  Stack stack{{column.content.x, column.content.y + 4, column.content.w - 10, 0}};
  const Pen pen = pen_of(ui);
  const std::string lacking = say_lacking(lacking_in(look.plan, look.catalog));
  stack.skip(draw_wrapped(pen, type::small, {stack.box.x, stack.y()}, stack.box.w, ui.palette->ink2,
                          lacking + " Each list fits by every check, with what swims here left as it is.") +
             6);
  draw_wishes(desk, stack);
  draw_named_wishes(desk, stack);
  const Box state = stack.take(34);
  const std::string words = state_words(mine);
  const bool going = !mine.work.done && !mine.stopped;
  draw_text(pen, medium(type::small), {state.x, state.y + 9}, ui.palette->ink,
            elided(pen, medium(type::small), words, state.w - (going ? 70 : 0)));
  add_spot(ui, "fill.state", state, words);
  if (going &&
      button(ui, "fill.stop", {state.right() - button_width(ui, "Stop", {.small = true}), state.y + 4}, "Stop", {.small = true})
          .pressed)
    mine.stopped = true;
  for (std::size_t i = 0; i < mine.found.stocks.size(); ++i) draw_list(desk, stack, mine.found.stocks[i], i);
  end_column(ui, column, stack.at + 14);
  end_sheet();
}

}  // namespace shoalwright
