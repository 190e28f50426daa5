// SPDX-License-Identifier: MIT
#include "views/shelf_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "advice/shelf.h"
#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/chips.h"
#include "draw/fields.h"
#include "draw/geometry.h"
#include "draw/menus.h"
#include "draw/panels.h"
#include "draw/tooltips.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "views/edit_wish.h"
#include "views/shelf_by_tap.h"
#include "views/shelf_card.h"
#include "views/shelf_shop.h"
#include "views/slices.h"
#include "views/species_more.h"

namespace shoalwright {
namespace {

constexpr float margin = 12, row_height = 58, more_height = 48;
constexpr std::array<std::string_view, 4> level_words = {"Surface", "Upper", "Middle", "Floor"};
constexpr std::array<std::string_view, 4> order_words = {"Closest fit first", "What is lacking first", "Name", "Size"};
/// What the stock list calls its rows; one of them let go over the shelf is taken out.
constexpr std::string_view stock_rows = "stock.row/";

Fit mark_of(ShelfFit fit) {
  switch (fit) {
    case ShelfFit::spare: return Fit::spare;
    case ShelfFit::just: return Fit::just;
    case ShelfFit::over: return Fit::over;
    case ShelfFit::unknown: break;
  }
  return Fit::just;
}

Levels ladder_of(const Species& species) {
  const SwimLevels swims = swim_levels(species);
  return {swims.surface, swims.upper, swims.middle, swims.floor};
}

/// What lies on the shelf: animals, or kinds of pieces.
Box draw_parts(Ui& ui, const Box& box, ShelfState& mine) {
  constexpr std::array<std::string_view, shelf_parts> words = {"Fish", "Wood, stone", "Plants", "Gear"};
  Box rest = box;
  const Box line = rest.cut_top(40);
  const int chosen = one_of(ui, "shelf.part", {line.x + margin, line.y + 9}, words, static_cast<int>(mine.part));
  if (chosen >= 0) mine.part = static_cast<ShelfPart>(chosen);
  return rest;
}

/// The field of the search, the chips and the levels; returns what is left of the box for the rows.
Box draw_questions(Ui& ui, const Box& box, ShelfState& mine) {
  Box rest = box;
  const float width = box.w - 2 * margin;
  text_field(ui, "shelf.search", {box.x + margin, rest.y, width, 32}, mine.search, "Search the shelf",
             {.placeholder = "Name or family",
              .icon = Icon::search,
              .clearable = true,
              .kind = platform::FieldKind::search,
              .most_bytes = 80});
  rest.cut_top(32 + 8);

  Flow flow{.x = box.x + margin, .y = rest.y, .width = width, .gap = 5};
  const auto filter = [&](std::string_view id, std::string_view words, bool& on, const ChipLook& look) {
    const Box at = flow.take(chip_width(ui, words, look));
    if (chip(ui, id, at.min(), words, on, look)) on = !on;
  };
  filter("shelf.filter/has-room", "Has room", mine.filter.has_room, {.mark = Fit::spare, .tight = true});
  filter("shelf.filter/small", "Small", mine.filter.small, {.tight = true});
  filter("shelf.filter/shoals", "Shoals", mine.filter.shoals, {.tight = true});
  filter("shelf.filter/shrimp", "Shrimp", mine.filter.shrimp, {.tight = true});
  filter("shelf.filter/shop", "My shop", mine.filter.in_shop, {.tight = true});
  const std::string& group = mine.filter.group;
  std::string group_words = group.empty() ? "Group" : capital(group);
  std::replace(group_words.begin(), group_words.end(), '-', ' ');
  const ChipLook group_look{.chevron = true, .tight = true};
  mine.group_at = flow.take(chip_width(ui, group_words, group_look));
  if (chip(ui, "shelf.group", mine.group_at.min(), group_words, !group.empty(), group_look)) mine.groups_asked = true;
  // The first press may come before the file that has the menu.
  if (mine.groups_asked && platform::have_rest()) {
    mine.groups_asked = false;
    open_menu(ui, "shelf.group/menu");
  }
  rest.cut_top(flow.height() + 6);

  std::array<bool, 4>& levels = mine.filter.levels;
  const int level = segments(ui, "shelf.level", {box.x + margin, rest.y}, level_words, levels, width);
  if (level >= 0) levels[static_cast<std::size_t>(level)] = !levels[static_cast<std::size_t>(level)];
  rest.cut_top(26);
  return rest;
}

std::string asked_words(const ShelfFilter& filter) {
  std::string words;
  for (std::size_t i = 0; i < filter.levels.size(); ++i)
    if (filter.levels[i]) words += (words.empty() ? "" : ", ") + std::string(level_words[i]);
  if (words.empty()) words = "All levels";
  return words + (filter.small ? ", to 5 cm" : ", all sizes");
}

/// Which order the rows are in, a menu.
void draw_order(Ui& ui, const Box& line, ShelfState& mine) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const Type t = medium(type::small);
  const std::string_view now = order_words[static_cast<std::size_t>(mine.order)];
  const float width = std::ceil(text_width(pen, t, now)) + 16;
  const Box at{line.right() - margin - width, line.y + 8, width, 16};
  const ItemLook look{.rounding = 3};
  const Item of = item(ui, "shelf.order", at, "Order: " + std::string(now), look);
  draw_text(pen, t, at.min(), of.hovered ? p.act : p.ink, now);
  draw_icon(pen, Icon::chevron, {at.right() - 13, at.y + 2}, 13, of.hovered ? p.act : p.ink);
  if (of.ring) draw_ring(ui, at, look);
  if (of.pressed) open_menu(ui, "shelf.order/menu");
  if (begin_menu(ui, "shelf.order/menu", at, 190)) {
    for (std::size_t i = 0; i < order_words.size(); ++i)
      if (menu_row(ui, "shelf.order/" + std::to_string(i), order_words[i], {.ticked = order_words[i] == now}))
        mine.order = static_cast<ShelfOrder>(i);
    end_menu(ui);
  }
  const float room = at.x - line.x - margin - 8;
  const std::size_t found = mine.rows.kinds.size(), all = mine.work.kinds.size();
  const std::string words =
      found < all ? std::to_string(found) + " of " + std::to_string(all) + " kinds" : asked_words(mine.filter);
  draw_text(pen, type::small, {line.x + margin, at.y}, p.ink2, elided(pen, type::small, words, room));
}

/// Larger animals are drawn larger, but not to scale: 28 px for 2 cm, 51 for 10.
float outline_px(const Animal& animal, double adult_cm) {
  const float wanted = std::clamp(17.5f + 14.5f * std::log(static_cast<float>(std::max(adult_cm, 0.5))), 14.0f, 52.0f);
  const Reach reach = reach_of(animal);
  const float across = reach.left + reach.right, down = reach.above + reach.below;
  return std::min({wanted, 50 / std::max(across, 0.1f), 38 / std::max(down, 0.1f)});
}

void draw_row(Ui& ui, const Look& look, const Box& box, const Species& species, const ShelfAnswer* answer, bool lifted,
              const Item& of, bool more) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const ImU32 ground = lifted ? p.sunk : mix(p.panel, p.actSoft, of.hovered ? 1.0f : 0.0f);
  const Animal& animal = look.animals.get(species.id, species.look);
  const float length_px = outline_px(animal, species.size.adult_tl_cm);
  const Reach reach = reach_of(animal);
  // Centred by what is drawn, not by the middle of the body, so that long fins stay inside.
  const ImVec2 middle{box.x + margin + 25 + (reach.left - reach.right) / 2 * length_px,
                      box.y + 30 + (reach.above - reach.below) / 2 * length_px};
  draw_silhouette(pen.dl, animal, middle, length_px, lifted ? p.edge : p.ink2, ground);

  const float left = snapped(pen, box.x + 70);
  const float ladder = box.right() - margin - 14;
  draw_levels(pen, ladder_of(species), {snapped(pen, ladder), snapped(pen, box.y + 8)});
  float right = ladder - 6;
  right -=
      draw_text(pen, type::small, {right, box.y + 8}, p.ink, look.measures.length(species.size.adult_tl_cm), Align::right) + 3;

  const int plate = answer && answer->in_plan > 0 ? plate_of(look, species.id) : 0;
  const Type name_type = medium(type::body);
  const std::string name = elided(pen, name_type, capital(display_name(species)), right - left - (plate > 0 ? 21 : 0));
  const float name_width = draw_text(pen, name_type, {left, box.y + 5}, p.ink, name);
  if (plate > 0) draw_plate(pen, plate, {snapped(pen, left + name_width) + 13, box.y + 14});
  const Type sci = italic(type::axis);
  float sci_x = left;
  if (const std::string own = own_words(species); !own.empty())
    sci_x += draw_text(pen, medium(type::axis), {left, box.y + 23}, p.ink2, own) + 6;
  draw_text(pen, sci, {sci_x, box.y + 23}, p.ink3, elided(pen, sci, species.name.scientific, ladder - 4 - sci_x));

  const float y = box.y + 38;
  if (!answer) {
    draw_text(pen, type::small, {left, y}, p.ink3, "…");
    return;
  }
  float x = left;
  if (answer->fit != ShelfFit::unknown) {
    draw_fit(pen, mark_of(answer->fit), {x, y + 1});
    x += 19;
  }
  const std::string words = retold(look.measures, shelf_words(*answer));
  draw_text(pen, type::small, {x, y}, answer->loud() ? p.call : p.ink2,
            elided(pen, type::small, words, box.right() - (more ? 40 : 8) - x));
}

void one_row(Ui& ui, const Look& look, const Box& box, const Species& species, ShelfState& mine, bool first, bool tab_stop,
             Actions& out) {
  const ShelfAnswer* answer = answer_of(mine.work, species.id);
  const bool lifted = look.held && look.held->species && look.held->species->id == species.id;
  const std::string id = "shelf.row/" + species.id;
  const std::string own = own_words(species), label = capital(display_name(species)) + (own.empty() ? ", " : ", " + own + ", ") +
                                                      (answer ? retold(look.measures, shelf_words(*answer)) : "…");
  const ListRowAnswer row = list_row(ui, id, box, label, {.lifted = lifted, .rule_above = !first, .arrows_only = !tab_stop});
  if (!row.item.visible) return;
  if (!look.held && ui.dragged_id.empty() && tooltip_due(ui, row.item) && platform::have_rest())
    draw_kind_card(ui, look, species, box);
  const bool more = mine.ticking || species_more_shown(ui, look, box, row.item);
  draw_row(ui, look, box, species, answer, lifted, row.item, more);
  if (row.item.ring) draw_ring(ui, box, {.rounding = 2, .ring = Ring::inside});
  if (mine.ticking) {
    draw_shop_tick(ui, look, box, species, row.item, out);
    return;
  }
  if (row.item.hovered && !look.held) platform::set_cursor(platform::Cursor::grab);
  species_more(ui, look, box, species, row.item, more, out);

  const int count = usual_addition(species, answer ? answer->in_plan : 0);
  if (row.drag_started) {
    out.push_back(PickUp{.species = species.id, .count = count, .by_keyboard = false});
    mine.open = false;
  } else if (row.double_click) {
    if (look.held) out.push_back(PutBack{});
    wish_and_tell(look, AddGroup{.species = species.id, .count = count}, out);
  } else if (row.enter && look.held && look.held->by_keyboard) {
    out.push_back(Drop{});
  } else if (row.enter) {
    // Picked up without a pointer that could carry it: by keyboard, or by a tap.
    out.push_back(PickUp{.species = species.id, .count = count, .by_keyboard = true});
    mine.open = false;
  }
}

/// Asked of every row in every frame: makes no text.
bool is_row_of(std::string_view id, const Species& species) {
  constexpr std::string_view row = "shelf.row/";
  return id.starts_with(row) && id.substr(row.size()) == species.id;
}

bool has_ring(const Ui& ui, const Species& species) { return is_row_of(ui.ring_id_before, species); }

/// A long shelf is mostly out of sight. Some rows beyond are there for the arrow keys, which scroll on from row to row, and the
/// one that they are at.
bool is_wanted(const Ui& ui, const Box& row, const Species& species) {
  constexpr float beyond = 4 * row_height;
  return ImGui::IsRectVisible({row.x, row.y - beyond}, {row.right(), row.bottom() + beyond}) || has_ring(ui, species) ||
         is_row_of(ui.focus_wanted, species);
}

/// Nothing to show: says why, and what to press.
void draw_nothing(Ui& ui, const Look& look, Box box, ShelfState& mine, Actions& out) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  box = box.inset(margin, 14);
  const std::vector<std::string> on = names_of(mine.filter);
  const bool asked = !mine.search.empty();
  const std::string heading = asked                                    ? "No fish called “" + mine.search + "”"
                              : mine.filter.has_room && on.size() == 1 ? "Nothing more has room"
                                                                       : "No fish like that";
  std::string sentence;
  if (!on.empty()) {
    std::string list;
    for (const std::string& name : on) list += (list.empty() ? "" : ", ") + name;
    sentence = std::to_string(on.size()) + (on.size() == 1 ? " filter is on" : " filters are on") +
               (asked ? " as well: " : ": ") + list + ".";
  } else {
    sentence = "Common, scientific, old and trade names are searched.";
  }
  float y = box.y;
  y += draw_wrapped(pen, semibold(type::body), {box.x, y}, box.w, p.ink, heading, 3) + 3;
  y += draw_wrapped(pen, type::small, {box.x, y}, box.w, p.ink2, sentence) + 12;

  Flow flow{.x = box.x, .y = y, .width = box.w, .row_height = 26};
  const std::string closest = asked ? closest_search(mine.work.search->plan(), look.catalog, mine.search) : "";
  const bool found_without = asked && !on.empty() && !find_on_shelf(mine.work.search->plan(), look.catalog, mine.search).empty();
  if (!closest.empty() && !found_without) {
    const std::string words = "Search “" + closest + "”";
    const ButtonLook button_look{.kind = ButtonKind::remedy, .small = true};
    if (button(ui, "shelf.closest", flow.take(button_width(ui, words, button_look)).min(), words, button_look).pressed)
      mine.search = closest;
  }
  if (!on.empty()) {
    const ButtonLook button_look{.kind = closest.empty() || found_without ? ButtonKind::remedy : ButtonKind::quiet,
                                 .small = true};
    const Box at = flow.take(button_width(ui, "Clear filters", button_look));
    if (button(ui, "shelf.clear", at.min(), "Clear filters", button_look).pressed) mine.filter = {};
  }
  constexpr std::string_view own = "A kind of your own…";
  const ButtonLook own_look{.kind = ButtonKind::quiet, .small = true};
  if (button(ui, "shelf.own", flow.take(button_width(ui, own, own_look)).min(), own, own_look).pressed)
    out.push_back(WriteSpecies{});
}

/// A group of the stock list is being dragged: the shelf is where it is let go to be taken out.
void take_back(const Ui& ui, const Look& look, const Box& box, Actions& out) {
  if (ui.dragged_id.compare(0, stock_rows.size(), stock_rows) != 0) return;
  const ImVec2 mouse = ImGui::GetIO().MousePos;
  const bool over = box.has(mouse.x, mouse.y);
  const std::string species = ui.dragged_id.substr(stock_rows.size());
  Pen pen = pen_of(ui);
  pen.dl = ImGui::GetForegroundDrawList();
  const Palette& p = *ui.palette;
  const Box inside = box.inset(8);
  if (over) pen.dl->AddRectFilled(inside.min(), inside.max(), scale_alpha(p.actSoft, 0.6f), 6);
  dashed_rect(pen.dl, inside.min(), inside.max(), dash_ghost_outline(), p.ghost, 1.5f);
  draw_tip(pen, {box.centre().x, box.y + 12}, over ? "Let go to take out" : "Drop here to take out", p.ghost, p.ink,
           Align::centre);
  if (over && ImGui::IsMouseReleased(ImGuiMouseButton_Left)) wish_and_tell(look, TakeOut{species}, out);
}

/// A slice of the work in each frame but the first, which is waited for. A plan that changes in the midst of a drag is not begun.
void go_on(const Ui& ui, ShelfState& mine, const Look& look) {
  ShelfWork& work = mine.work;
  std::optional<Plan> tap;
  if (mine.by_tap) tap = in_tap_water(look.plan);
  const Plan& plan = tap ? *tap : look.plan;
  if (work.search && ImGui::IsMouseDown(ImGuiMouseButton_Left) && !(work.search->plan() == plan)) return;
  if (ImGui::GetFrameCount() <= 1)
    begin_work(work, plan, look.catalog, look.shown_bodies);
  else
    work_on(work, plan, look.catalog, slice_ms(ui), look.shown_bodies);
  if (!work.done()) platform::wake(1);
}

}  // namespace

void draw_shelf(Ui& ui, const Look& look, const Box& whole, ShelfState& mine, Actions& out) {
  go_on(ui, mine, look);
  if (mine.filter.shop != look.preferences.shop) mine.filter.shop = look.preferences.shop;
  list_rows(mine.rows, mine.work, look.catalog, mine.search, mine.filter, mine.order);

  const Pen pen = pen_of(ui);
  draw_panel(pen, whole, ui.palette->panel, 0, 0);
  const Box box = draw_parts(ui, whole, mine);
  if (mine.part != ShelfPart::animals) {
    draw_rule(pen, box.x, box.y, box.right() - 1, ui.palette->line);
    if (draw_piece_rows(ui, look, {box.x, box.y + 1, box.w - 1, box.h - 1}, mine.part, mine.pieces, out)) mine.open = false;
    draw_rule_down(pen, whole.right() - 1, whole.y, whole.bottom(), ui.palette->line);
    return;
  }
  const Box all{box.x, box.y, box.w - 1, box.h}, asked = mine.by_tap ? draw_by_tap(ui, look, all, mine) : all;
  Box rest = draw_questions(ui, asked, mine);
  const bool lines = mine.ticking || mine.filter.in_shop || !mine.search.empty();
  if (lines ? platform::have_rest() : platform::rest_is_here()) rest = draw_shelf_lines(ui, look, rest, mine, out);
  draw_order(ui, rest.cut_top(30), mine);
  draw_rule(pen, box.x, rest.y, box.right() - 1, ui.palette->line);
  rest.cut_top(1);
  // What was pressed above is already asked for in this frame.
  list_rows(mine.rows, mine.work, look.catalog, mine.search, mine.filter, mine.order);

  Column column = begin_column(ui, "shelf rows", rest, ui.palette->panel);
  if (mine.rows.kinds.empty()) draw_nothing(ui, look, {column.content.x, column.content.y, column.content.w, rest.h}, mine, out);
  Stack stack{column.content};
  // A copy of the pointers: what a row does may list them anew.
  std::vector<const Species*> kinds = mine.rows.kinds;
  const bool more = mine.page > 0 && kinds.size() > static_cast<std::size_t>(mine.page);
  if (more) kinds.resize(static_cast<std::size_t>(mine.page));
  // The row that has the keyboard is the one that Tab stops at, else the first in sight.
  const bool on_a_row = std::any_of(kinds.begin(), kinds.end(), [&](const Species* kind) { return has_ring(ui, *kind); });
  bool stops = false;
  for (const Species* kind : kinds) {
    const Box row = stack.take(row_height);
    if (!is_wanted(ui, row, *kind)) continue;
    const bool tab_stop = on_a_row ? has_ring(ui, *kind) : !stops && ImGui::IsRectVisible(row.min(), row.max());
    stops = stops || tab_stop;
    one_row(ui, look, row, *kind, mine, kind == kinds.front(), tab_stop, out);
  }
  if (more && button(ui, "shelf.next", stack.take(more_height).inset(margin, 8).min(), "Show more").pressed) mine.page += 12;
  end_column(ui, column, stack.at);
  draw_rule_down(pen, whole.right() - 1, whole.y, whole.bottom(), ui.palette->line);
  take_back(ui, look, whole, out);
}

void draw_shelf_rail(Ui& ui, const Look& look, const Box& box, ShelfState& mine, Actions& out) {
  go_on(ui, mine, look);
  const Pen pen = pen_of(ui);
  draw_panel(pen, box, ui.palette->panel, 0, 0);
  draw_rule_down(pen, box.right() - 1, box.y, box.bottom(), ui.palette->line);
  const ImVec2 at{box.x + (box.w - 34) / 2, box.y + 10};
  if (icon_button(ui, "shelf.open", at, mine.open ? Icon::close : Icon::search, mine.open ? "Fold the shelf" : "Open the shelf")
          .pressed)
    mine.open = !mine.open;
  draw_text(pen, medium(type::small), {box.x + box.w / 2, at.y + 34}, ui.palette->ink2, "Shelf", Align::centre);
  if (!mine.open) take_back(ui, look, box, out);
}

}  // namespace shoalwright
