// SPDX-License-Identifier: MIT
#include "views/species_more.h"

#include "draw/icons.h"
#include "draw/tooltips.h"

namespace shoalwright {

std::string own_words(const Species& species) {
  if (species.code != 0) return "";
  return species.id.compare(0, 5, "own--") == 0 ? "Your own kind" : "Your own values";
}

bool species_more_shown(const Ui& ui, const Look& look, const Box& row, const Item& of) {
  if (look.held || !ui.dragged_id.empty()) return false;
  // By the place, since the spot takes the pointer from the row.
  const ImVec2 mouse = ImGui::GetIO().MousePos;
  return ui.touch || of.ring ||
         (row.has(mouse.x, mouse.y) && ImGui::IsWindowHovered(ImGuiHoveredFlags_AllowWhenBlockedByActiveItem));
}

bool asks_for_species(const Item& of) {
  const ImGuiIO& io = ImGui::GetIO();
  return of.focused && !io.KeyCtrl && !io.KeyAlt && !io.KeySuper && ImGui::IsKeyPressed(ImGuiKey_I, false);
}

void species_more(Ui& ui, const Look& look, const Box& row, const Species& species, const Item& of, bool shown, Actions& out) {
  bool pressed = !look.held && asks_for_species(of);
  if (shown) {
    const float w = ui.touch ? 40.0f : 26.0f, h = ui.touch ? 34.0f : 22.0f;
    const Box box{row.right() - 6 - w, row.bottom() - 3 - h, w, h};
    const ItemLook look_of{.rounding = 4, .exact = true, .pointer_only = true};
    const Item more = item(ui, "shelf.more/" + species.id, box, "All about " + display_name(species), look_of);
    const Pen pen = pen_of(ui);
    if (more.hovered) draw_panel(pen, box, ui.palette->raised, ui.palette->edge, 4);
    draw_icon(pen, Icon::sheet, {box.x + (w - 15) / 2, box.y + (h - 15) / 2}, 15,
              more.hovered ? ui.palette->act : ui.palette->ink2);
    tooltip(ui, box, more, "All about it", "I");
    pressed = pressed || more.pressed;
  }
  if (pressed) out.push_back(ShowSpecies{species.id});
}

}  // namespace shoalwright
