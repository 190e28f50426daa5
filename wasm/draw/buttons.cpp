// SPDX-License-Identifier: MIT
#include "draw/buttons.h"

#include <algorithm>
#include <cmath>

#include "draw/tooltips.h"

namespace shoalwright {
namespace {

Type type_of(const ButtonLook& look) { return medium(look.small ? type::small : type::body); }
float padding_of(const ButtonLook& look) { return look.small ? 10 : 13; }
float icon_size(const ButtonLook& look) { return look.small ? 14 : 16; }
constexpr float gap = 6;

Pen bare_pen(const Ui& ui) { return {nullptr, ui.palette, ui.faces, ui.device_scale}; }

struct Colours {
  ImU32 fill = 0, border = 0, ink = 0;
};

Colours colours_of(Ui& ui, std::string_view id, const ButtonLook& look, const Item& of) {
  const Palette& p = *ui.palette;
  if (!look.enabled) return {0, look.kind == ButtonKind::quiet ? 0 : p.line, p.ink3};
  const float over = eased(ui, id, of.held ? 1.0f : of.hovered ? 0.6f : 0.0f, 90);
  switch (look.kind) {
    case ButtonKind::primary: return {mix(p.act, p.ink, over * 0.3f), mix(p.act, p.ink, over * 0.3f), p.onAct};
    case ButtonKind::secondary: return {mix(p.raised, p.actSoft, over * 0.75f), p.edge, p.ink};
    case ButtonKind::remedy: return {scale_alpha(p.actSoft, over), p.act, p.act};
    case ButtonKind::quiet: return {scale_alpha(p.actSoft, over), 0, p.ink};
  }
  return {};
}

}  // namespace

float button_height(const ButtonLook& look) { return look.small ? 26 : 30; }

float button_width(const Ui& ui, std::string_view words, const ButtonLook& look) {
  float w = 2 * padding_of(look) + std::ceil(text_width(bare_pen(ui), type_of(look), words));
  if (look.icon) w += icon_size(look) + (words.empty() ? 0 : gap);
  if (look.chevron) w += 14 + gap;
  return w;
}

Item button_in(Ui& ui, std::string_view id, const Box& box, std::string_view words, const ButtonLook& look) {
  const ItemLook item_look{.enabled = look.enabled, .exact = box.h >= 24 && !ui.touch};
  const Item of = item(ui, id, box, words.empty() ? look.tooltip : words, item_look);
  const Pen pen = pen_of(ui);
  const Colours c = colours_of(ui, id, look, of);
  if (look.kind == ButtonKind::primary && of.hovered) draw_panel(pen, box.inset(-2), 0, ui.palette->actSoft, 6, 0, 2);
  draw_panel(pen, box, c.fill, c.border, 4);
  const Type t = type_of(look);
  float inner = text_width(pen, t, words);
  if (look.icon) inner += icon_size(look) + (words.empty() ? 0 : gap);
  if (look.chevron) inner += 14 + gap;
  float x = snapped(pen, box.x + (box.w - inner) / 2);
  const float middle = box.y + box.h / 2;
  if (look.icon) {
    draw_icon(pen, *look.icon, {x, middle - icon_size(look) / 2}, icon_size(look), c.ink);
    x += icon_size(look) + gap;
  }
  x += draw_text(pen, t, {x, middle - t.line / 2}, c.ink, words) + gap;
  if (look.chevron) draw_icon(pen, Icon::chevron, {x, middle - 7}, 14, c.ink);
  if (of.ring) draw_ring(ui, box, item_look);
  tooltip(ui, box, of, look.tooltip);
  return of;
}

Item button(Ui& ui, std::string_view id, ImVec2 at, std::string_view words, const ButtonLook& look) {
  return button_in(ui, id, {at.x, at.y, button_width(ui, words, look), button_height(look)}, words, look);
}

Item icon_button(Ui& ui, std::string_view id, ImVec2 at, Icon icon, std::string_view name, std::string_view key, bool enabled) {
  const Box box{at.x, at.y, 34, 30};
  const ItemLook item_look{.enabled = enabled};
  const Item of = item(ui, id, box, name, item_look);
  const Pen pen = pen_of(ui);
  const Colours c = colours_of(ui, id, {.kind = ButtonKind::quiet, .enabled = enabled}, of);
  draw_panel(pen, box, c.fill, 0, 4);
  draw_icon(pen, icon, {box.x + 8, box.y + 6}, 18, c.ink);
  if (of.ring) draw_ring(ui, box, item_look);
  tooltip(ui, box, of, name, key);
  return of;
}

float tab_width(const Ui& ui, std::string_view words) {
  return 24 + std::ceil(text_width(bare_pen(ui), medium(type::body), words));
}

bool tab(Ui& ui, std::string_view id, ImVec2 at, float height, std::string_view words, bool chosen) {
  const Box box{at.x, at.y, tab_width(ui, words), height};
  const ItemLook look{.rounding = 4, .ring = Ring::inside, .exact = true};
  const Item of = item(ui, id, box, words, look);
  const Pen pen = pen_of(ui);
  const ImU32 ink = eased_colour(ui, id, ui.palette->ink2, ui.palette->ink, chosen || of.hovered);
  draw_text(pen, medium(type::body), {box.x + 12, box.y + (height - 18) / 2}, ink, words);
  if (chosen)
    pen.dl->AddRectFilled({box.x, snapped(pen, box.bottom() - 3)}, {box.right(), snapped(pen, box.bottom())}, ui.palette->act);
  if (of.ring) draw_ring(ui, box.inset(0, 4), look);
  return of.pressed;
}

}  // namespace shoalwright
