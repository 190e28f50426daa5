// SPDX-License-Identifier: MIT
#include "views/stock_view.h"

#include <algorithm>
#include <cmath>

#include "draw/buttons.h"
#include "draw/icons.h"
#include "draw/marks.h"
#include "draw/menus.h"
#include "draw/panels.h"
#include "draw/stepper.h"
#include "draw/tooltips.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "views/edit_wish.h"
#include "views/losses_view.h"
#include "views/species_more.h"
#include "views/stock_words.h"

namespace shoalwright {
namespace {

constexpr float row_height = 52, menu_width = 24;

std::string name_of(const Kept& kept) { return kept.species ? capital(display_name(*kept.species)) : kept.id; }

/// `now`: the group in the plan as it is, null where a preview alone has it.
void change_count(const Look& look, const Kept* now, int step, Actions& out) {
  if (!now || step == 0) return;
  const Kept& kept = *now;
  const int count = kept.count + step;
  if (count >= 1) out.push_back(edit_wish(look, SetCount{.species = kept.id, .count = count}));
}

/// Of the two sexes one is stepped; what is left of the group stays unsexed.
void sexes_menu(Ui& ui, const Look& look, const Kept& kept, Actions& out) {
  const int males = kept.males.value_or(0), females = kept.females.value_or(0), open = kept.count - males - females;
  const auto shown = [](const std::optional<int>& n) { return n ? std::to_string(*n) : std::string("–"); };
  const auto set = [&](std::optional<int> m, std::optional<int> f) {
    // None of either sex known is the same as not said.
    if (m.value_or(0) + f.value_or(0) == 0) m = f = std::nullopt;
    out.push_back(edit_wish(look, SetSexes{.species = kept.id, .males = m, .females = f}));
  };
  if (const int step = menu_stepper(ui, "stock.males", "Males", shown(kept.males), males > 0, open > 0); step != 0)
    set(males + step, females);
  if (const int step = menu_stepper(ui, "stock.females", "Females", shown(kept.females), females > 0, open > 0); step != 0)
    set(males, females + step);
}

void row_menu(Ui& ui, const Look& look, const Kept& kept, const Box& anchor, StockState& mine, Actions& out) {
  const std::string id = "stock.menu/" + kept.id + "/list";
  if (!begin_menu(ui, id, anchor, 252)) {
    if (mine.menu == kept.id) mine.menu.clear();
    return;
  }
  mine.menu = kept.id;
  menu_heading(ui, name_of(kept));
  if (const int step =
          menu_stepper(ui, "stock.have", "Swim here already", std::to_string(kept.have), kept.have > 0, kept.have < kept.count);
      step != 0)
    out.push_back(edit_wish(look, SetHave{.species = kept.id, .have = kept.have + step}));
  if (kept.species) sexes_menu(ui, look, kept, out);
  if (platform::rest_is_here()) losses_menu(ui, look, kept, out);
  menu_line(ui);
  if (kept.species && menu_row(ui, "stock.page", "All about it", {.key = "I"})) out.push_back(ShowSpecies{kept.id});
  if (menu_row(ui, "stock.out", "Take out", {.key = "Delete"})) wish_and_tell(look, TakeOut{kept.id}, out);
  end_menu(ui);
}

/// The row that is being dragged, at the pointer.
void draw_dragged(const Ui& ui, const Kept& kept, int number) {
  Pen pen = pen_of(ui);
  pen.dl = ImGui::GetForegroundDrawList();
  const Palette& p = *ui.palette;
  const ImVec2 mouse = ImGui::GetIO().MousePos;
  const std::string words = std::to_string(kept.count) + " " + name_of(kept);
  const Type t = medium(type::body);
  const Box box{mouse.x + 10, mouse.y - 14, std::ceil(text_width(pen, t, words)) + 42, 28};
  draw_panel(pen, box, p.raised, p.ghost, 4, 0, 1.5f);
  draw_plate(pen, number, {box.x + 16, box.y + 14});
  draw_text(pen, t, {box.x + 30, box.y + 5}, p.ink, words);
  platform::set_cursor(platform::Cursor::grabbing);
}

void one_row(Ui& ui, const Look& look, const Box& box, const Kept& kept, const Kept* before, int number, StockState& mine,
             Actions& out) {
  const Palette& p = *ui.palette;
  const std::string row_id = "stock.row/" + kept.id, advice = stock_advice(kept);
  const bool dragged = ui.dragged_id == row_id && ImGui::IsMouseDown(ImGuiMouseButton_Left);
  const ListRowAnswer row = list_row(ui, row_id, box, name_of(kept) + ", " + std::to_string(kept.count) + ", " + advice,
                                     {.lifted = dragged, .chosen = look.pointed_species == kept.id});
  const Pen pen = pen_of(ui);
  if (row.item.visible) {
    const bool changed = before && before->count != kept.count;
    if (changed) draw_panel(pen, box.inset(0, 1), p.actSoft, 0, 0);
    draw_plate(pen, number, {snapped(pen, box.x) + 10, box.y + 26}, 9);
    const float left = snapped(pen, box.x + 28), right = box.right() - stepper_width() - menu_width - 6;
    const Type t = medium(type::body);
    draw_text(pen, t, {left, box.y + 9}, p.ink, elided(pen, t, name_of(kept), right - left));
    const std::string line = changed ? "was " + std::to_string(before->count) : advice;
    draw_text(pen, type::axis, {left, box.y + 27}, p.ink2, elided(pen, type::axis, line, right - left));
    if (row.item.hovered && !dragged) {
      out.push_back(PointAt{kept.id});
      platform::set_cursor(platform::Cursor::grab);
    }
    if (row.item.ring) draw_ring(ui, box, {.rounding = 2, .ring = Ring::inside});
  }
  if (dragged) draw_dragged(ui, kept, number);

  const float y = box.y + 12;
  const float stepper_x = box.right() - stepper_width();
  change_count(look, before,
               stepper(ui, "stock.count/" + kept.id, {stepper_x, y}, std::to_string(kept.count), name_of(kept) + ", how many",
                       {.less = kept.count > 1}),
               out);
  const Box button{stepper_x - menu_width - 4, y + 2, menu_width, 24};
  const std::string menu = "stock.menu/" + kept.id;
  const ItemLook look_of_button{.rounding = 4};
  const Item opens = item(ui, menu, button, name_of(kept) + ": more", look_of_button);
  draw_panel(pen, button, scale_alpha(p.actSoft, eased(ui, menu, opens.hovered ? 1.0f : 0.0f, 90)), 0, 4);
  draw_icon(pen, Icon::chevron, {button.x + 5, button.y + 5}, 14, opens.hovered ? p.ink : p.ink3);
  if (opens.ring) draw_ring(ui, button, look_of_button);
  tooltip(ui, button, opens, "Swim here already, males and females, take out");
  if (opens.pressed || row.enter) open_menu(ui, menu + "/list");
  if (before) row_menu(ui, look, *before, button, mine, out);

  if (!row.item.focused || look.held || !before) return;
  if (kept.species && asks_for_species(row.item)) out.push_back(ShowSpecies{kept.id});
  change_count(look, before, typed_step(), out);
  if (!look.chosen_pieces.empty() || look.chosen_terrain) return;  // Delete is theirs
  if (ImGui::IsKeyPressed(ImGuiKey_Delete, false) || ImGui::IsKeyPressed(ImGuiKey_Backspace, false))
    wish_and_tell(look, TakeOut{kept.id}, out);
}

/// Letters and names of the pieces, as many in a row as fit; pressed, a piece is chosen.
float draw_pieces(Ui& ui, const Look& look, const Box& box, Actions& out) {
  const std::vector<Piece>& pieces = look.plan.pieces;
  if (pieces.empty()) return 0;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_rule(pen, box.x, box.y, box.right(), p.line);
  const int columns = std::max(1, static_cast<int>((box.w + 12) / 104));
  const float width = (box.w + 12) / static_cast<float>(columns);
  float y = box.y + 9;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const float x = box.x + width * static_cast<float>(static_cast<int>(i) % columns);
    if (i > 0 && static_cast<int>(i) % columns == 0) y += 22;
    const std::string name = piece_name(pieces[i].kind);
    const Box at{x - 2, y - 2, width - 9, 20};
    const ItemLook look_of_row{.rounding = 3, .exact_across = true};
    const Item row = item(ui, "stock.piece/" + std::to_string(i), at, name + ": choose it", look_of_row);
    const auto chosen = std::find(look.chosen_pieces.begin(), look.chosen_pieces.end(), i);
    if (row.hovered || chosen != look.chosen_pieces.end()) draw_panel(pen, at, p.actSoft, 0, 3);
    draw_letter(pen, piece_letter(static_cast<int>(i)), {snapped(pen, x) + 8, snapped(pen, y) + 8});
    draw_text(pen, type::small, {x + 22, y}, p.ink, elided(pen, type::small, name, width - 25));
    if (row.ring) draw_ring(ui, at, look_of_row);
    if (row.pressed) out.push_back(chosen == look.chosen_pieces.end() ? ChoosePieces{{i}} : ChoosePieces{});
  }
  return y + 22 - box.y;
}

float draw_empty(Ui& ui, const Box& box) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_rule(pen, box.x, box.y, box.right(), p.line);
  draw_text(pen, semibold(type::body), {box.x, box.y + 12}, p.ink, "No fish yet");
  const float height =
      draw_wrapped(pen, type::small, {box.x, box.y + 33}, box.w, p.ink2,
                   "Drag one in from the shelf. Start with the fish you care for most; the water will follow it.");
  return 33 + height + 14;
}

}  // namespace

void draw_stock(Ui& ui, const Look& look, const Box& box, StockState& mine, Actions& out) {
  // While something is in hand the list stays as it is: the card tells what it would become.
  const Plan& plan = look.held ? look.plan : look.shown;
  const std::vector<Kept> stock = resolve_stock(plan, look.catalog);
  const std::vector<Kept> before = resolve_stock(look.plan, look.catalog);

  Box inside = box.inset(16, 8);
  const Box head = inside.cut_top(30);
  section_header(ui, {head.x, head.y + 5, head.w, 20}, "In the tank", stock.empty() ? "" : stock_sum(stock));

  Column column = begin_column(ui, "stock rows", {inside.x - 4, inside.y, inside.w + 12, inside.h});
  Stack stack{{column.content.x + 4, column.content.y, inside.w, column.content.h}};
  if (stock.empty()) stack.skip(draw_empty(ui, {stack.box.x, stack.y(), stack.box.w, 80}));
  int number = 0;
  for (const Kept& kept : stock) {
    const auto was = std::find_if(before.begin(), before.end(), [&](const Kept& one) { return one.id == kept.id; });
    one_row(ui, look, stack.take(row_height), kept, was == before.end() ? nullptr : &*was, ++number, mine, out);
    if (was != before.end() && !plan.log_json.empty() && platform::have_rest())
      stack.skip(draw_losses(ui, look, {stack.box.x, stack.y(), stack.box.w, 0}, *was, out));
  }
  if (platform::rest_is_here()) {
    const ButtonLook quiet{.small = true, .icon = Icon::plus};
    if (button(ui, "stock.fill", {stack.box.x, stack.y() + 6}, "What could go in", quiet).pressed)
      out.push_back(ShowSheet{Sheet::fill});
    stack.skip(38);
  }
  stack.skip(draw_pieces(ui, look, {stack.box.x, stack.y(), stack.box.w, 60}, out));
  if (ImGui::GetIO().DisplaySize.x < 900)  // elsewhere it stands below the view from above
    stack.skip(6 + draw_wrapped(pen_of(ui), type::axis, {stack.box.x, stack.y() + 6}, stack.box.w, ui.palette->ink2,
                                materials_words(look)));
  end_column(ui, column, stack.at);
}

}  // namespace shoalwright
