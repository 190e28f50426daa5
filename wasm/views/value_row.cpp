// SPDX-License-Identifier: MIT
#include "views/value_row.h"

#include <string>

#include "draw/icons.h"
#include "platform/platform.h"
#include "views/derivation_view.h"

namespace shoalwright {

void value_row(Pane& pane, std::string_view id, std::string_view name, std::string_view value, Number number) {
  Ui& ui = pane.ui;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const std::string key(id);
  const bool open = pane.mine.open_why.count(key) > 0;
  const Box box{pane.x - 4, pane.y, pane.w + 8, 22};
  const ItemLook look{.exact = true};
  const std::string label =
      std::string(name) + " " + std::string(value) + (open ? ". Hides" : ". Shows") + " where it comes from";
  const Item of = item(ui, id, box, label, look);
  const float lit = eased(ui, id, of.hovered ? 1.0f : 0.0f, 90);
  if (lit > 0) draw_panel(pen, box, scale_alpha(p.actSoft, lit * 0.6f), 0, 4);
  const float chevron = of.hovered || of.ring || open ? 16.0f : 0.0f;
  const float right = pane.x + pane.w - chevron;
  const float room = right - pane.x - text_width(pen, medium(type::small), value) - 10;
  draw_text(pen, type::small, {pane.x, pane.y + 3}, p.ink2, elided(pen, type::small, name, room));
  draw_text(pen, medium(type::small), {right, pane.y + 3}, p.ink, value, Align::right);
  if (chevron > 0) draw_icon(pen, Icon::chevron, {pane.x + pane.w - 13, pane.y + 4}, 14, p.ink2);
  if (of.ring) draw_ring(ui, box, look);
  pane.y += box.h;
  if (of.pressed && !pane.mine.open_why.erase(key)) pane.mine.open_why.insert(key);
  if (open && platform::have_rest()) draw_derivation(pane, number);
}

}  // namespace shoalwright
