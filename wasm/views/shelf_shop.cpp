// SPDX-License-Identifier: MIT
#include "views/shelf_shop.h"

#include "app/card_facts.h"
#include "catalog/card_words.h"
#include "catalog/label.h"
#include "draw/buttons.h"
#include "draw/menus.h"
#include "draw/panels.h"
#include "notebook/say.h"
#include "platform/platform.h"

namespace shoalwright {

namespace {

constexpr float edge = 12;

/// Looked for once for each word, since it goes through all names of all kinds.
void find_label(ShelfState& mine) {
  ShelfState::LabelFound& found = mine.label;
  if (found.query == mine.search && found.kinds == mine.work.kinds.size()) return;
  found = {.query = mine.search, .kinds = mine.work.kinds.size()};
  if (const std::optional<Label> label = label_of(mine.work.kinds, mine.search))
    found.sold = static_cast<int>(label->kinds.size());
}

/// The three parts of draw_shelf_lines() are one function: a short one that calls others would be folded into the first file.
[[gnu::always_inline]] inline Box draw_label_line(Ui& ui, Box box, ShelfState& mine, Actions& out) {
  find_label(mine);
  if (mine.label.sold == 0) return box;
  const Pen pen = pen_of(ui);
  const Box line = box.cut_top(38).inset(edge, 4);
  const std::string words = "Sold under this name: " + std::to_string(mine.label.sold) + " kinds";
  const ItemLook look{.rounding = 4};
  const Item of = item(ui, "shelf.label", line, words, look);
  draw_panel(pen, line, mix(ui.palette->actSoft, ui.palette->panel, of.hovered ? 0.0f : 0.3f), ui.palette->edge, 4);
  draw_text(pen, medium(type::small), {line.x + 9, line.y + 7}, of.hovered ? ui.palette->act : ui.palette->ink,
            elided(pen, medium(type::small), words, line.w - 40));
  draw_icon(pen, Icon::sheet, {line.right() - 24, line.y + 7}, 15, ui.palette->ink2);
  if (of.ring) draw_ring(ui, line, look);
  if (of.pressed) out.push_back(ShowLabel{mine.search});
  return box;
}

[[gnu::always_inline]] inline Box draw_shop_line(Ui& ui, const Look& look, Box box, ShelfState& mine) {
  const Pen pen = pen_of(ui);
  const Box line = box.cut_top(44);
  draw_panel(pen, {line.x, line.y + 4, line.w, 38}, ui.palette->actSoft, 0, 0);
  const std::vector<std::string>& shop = look.preferences.shop;
  std::vector<const ShelfAnswer*> answers;
  for (const std::string& id : shop) answers.push_back(answer_of(mine.work, id));
  const int has = static_cast<int>(shop.size()), fits = with_room(answers);
  const std::string first =
      has == 0 ? "My shop has: nothing ticked" : "My shop has " + std::to_string(has) + (has == 1 ? " kind" : " kinds");
  const std::string second =
      mine.ticking ? "Press a row to tick it" : std::to_string(fits) + (fits == 1 ? " has room" : " have room") + " in this tank";
  const ButtonLook button_look{.kind = mine.ticking ? ButtonKind::primary : ButtonKind::secondary, .small = true};
  const std::string_view word = mine.ticking ? "Done" : "Tick kinds";
  const float width = button_width(ui, word, button_look);
  const float room = line.w - 2 * edge - width - 4;
  draw_text(pen, medium(type::small), {line.x + edge, line.y + 7}, ui.palette->ink,
            elided(pen, medium(type::small), first, room));
  draw_text(pen, type::small, {line.x + edge, line.y + 23}, ui.palette->ink2, elided(pen, type::small, second, room));
  add_spot(ui, "shelf.shop", line, first + ". " + second);
  if (button(ui, "shelf.shop/tick", {line.right() - edge - width + 4, line.y + 10}, word, button_look).pressed) {
    mine.ticking = !mine.ticking;
    mine.filter.in_shop = !mine.ticking;
    if (!mine.ticking) mine.search.clear();  // to see the whole list
    platform::wake(2);
  }
  return box;
}

[[gnu::always_inline]] inline void draw_group_menu(Ui& ui, ShelfState& mine) {
  if (!begin_menu(ui, "shelf.group/menu", mine.group_at, 170, 640)) return;
  if (menu_row(ui, "shelf.group/all", "All", {.ticked = mine.filter.group.empty()})) mine.filter.group.clear();
  for (const std::string_view word : words_for("group"))
    if (menu_row(ui, "shelf.group/" + std::string(word), capital(spaced_word(std::string(word))),
                 {.ticked = mine.filter.group == word}))
      mine.filter.group = word;
  end_menu(ui);
}

}  // namespace

Box draw_shelf_lines(Ui& ui, const Look& look, Box box, ShelfState& mine, Actions& out) {
  draw_group_menu(ui, mine);
  if (mine.ticking || mine.filter.in_shop) box = draw_shop_line(ui, look, box, mine);
  return mine.search.empty() ? box : draw_label_line(ui, box, mine, out);
}

void draw_shop_tick(Ui& ui, const Look& look, const Box& row, const Species& species, const Item& of, Actions& out) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const bool ticked = is_ticked(look.preferences.shop, species.id);
  const Box box{snapped(pen, row.right() - 30), snapped(pen, row.y + 36), 17, 17};
  draw_panel(pen, box, ticked ? p.act : p.raised, ticked ? p.act : p.edge, 3);
  if (ticked) draw_icon(pen, Icon::tick, {box.x + 2, box.y + 2}, 13, p.raised);
  if (!of.pressed) return;
  Preferences preferences = look.preferences;
  tick(preferences.shop, species.id);
  out.push_back(SetPreferences{preferences});
}

}  // namespace shoalwright
