// SPDX-License-Identifier: MIT
#include "draw/menus.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/stepper.h"

namespace shoalwright {
namespace {

constexpr float row_height = 30, pad = 5, tick_w = 22;

}  // namespace

void open_menu(Ui&, std::string_view id) { ImGui::OpenPopup(std::string(id).c_str()); }

bool begin_menu(Ui& ui, std::string_view id, const Box& button, float width, float height) {
  const std::string name(id);
  if (!ImGui::IsPopupOpen(name.c_str())) return false;
  const ImVec2 screen = ImGui::GetIO().DisplaySize;
  const float x = std::clamp(button.x, 4.0f, std::max(4.0f, screen.x - width - 4));
  const float below = screen.y - button.bottom() - 8, above = button.y - 8;
  const bool drops = below >= height || below >= above;
  ImGui::SetNextWindowPos({x, drops ? button.bottom() + 4 : button.y - 4}, ImGuiCond_Always, {0, drops ? 0.0f : 1.0f});
  ImGui::SetNextWindowSizeConstraints({width, 1}, {width, std::max(100.0f, drops ? below : above)});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(pad, pad));
  const bool open = ImGui::BeginPopup(name.c_str(), ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings);
  ImGui::PopStyleVar();
  if (!open) return false;
  const ImVec2 at = ImGui::GetWindowPos(), size = ImGui::GetWindowSize();
  const Pen pen = pen_of(ui);
  pen.dl->PushClipRect(at, {at.x + size.x, at.y + size.y});
  draw_panel(pen, {at.x, at.y, size.x, size.y}, ui.palette->raised, ui.palette->edge, 6);
  pen.dl->PopClipRect();
  ui.menu_width = width - 2 * pad;
  return true;
}

void end_menu(Ui&) { ImGui::EndPopup(); }

bool menu_row(Ui& ui, std::string_view id, std::string_view words, const MenuRow& row) {
  const ImVec2 at = ImGui::GetCursorScreenPos();
  const Box box{at.x, at.y, ui.menu_width, ui.touch ? 44 : row_height};
  const ItemLook look{.ring = Ring::inside, .enabled = row.enabled, .exact = true};
  const Item of = item(ui, id, box, words, look);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  if (of.hovered || of.ring) draw_panel(pen, box, p.actSoft, 0, 4);
  const float y = box.y + (box.h - 18) / 2;
  if (row.ticked) draw_icon(pen, Icon::tick, {box.x + 4, y + 2}, 14, p.act);
  const Type t = row.ticked ? medium(type::body) : type::body;
  const float key_w = row.key.empty() ? 0 : text_width(pen, type::small, row.key) + 12;
  draw_text(pen, t, {box.x + tick_w, y}, row.enabled ? p.ink : p.ink3, elided(pen, t, words, box.w - tick_w - 8 - key_w));
  if (!row.key.empty()) draw_text(pen, type::small, {box.right() - 8, y + 1}, p.ink3, row.key, Align::right);
  if (of.ring) draw_ring(ui, box, look);
  if (of.pressed && !row.stays) ImGui::CloseCurrentPopup();
  return of.pressed;
}

void menu_heading(Ui& ui, std::string_view words) {
  const ImVec2 at = ImGui::GetCursorScreenPos();
  draw_text(pen_of(ui), medium(type::small), {at.x + 8, at.y + 7}, ui.palette->ink2, words);
  ImGui::Dummy({ui.menu_width, 26});
}

void menu_line(Ui& ui) {
  const ImVec2 at = ImGui::GetCursorScreenPos();
  draw_rule(pen_of(ui), at.x, at.y + 5, at.x + ui.menu_width, ui.palette->line);
  ImGui::Dummy({ui.menu_width, 11});
}

int select(Ui& ui, std::string_view id, const Box& box, std::span<const std::string_view> words, int chosen,
           std::string_view label, bool enabled) {
  const bool known = chosen >= 0 && static_cast<size_t>(chosen) < words.size();
  const std::string_view now = known ? words[static_cast<size_t>(chosen)] : std::string_view();
  const ItemLook look{.enabled = enabled};
  const Item of = item(ui, id, box, std::string(label) + ": " + std::string(now), look);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const float over = eased(ui, id, enabled && of.hovered ? 0.6f : 0, 90);
  draw_panel(pen, box, enabled ? mix(p.raised, p.actSoft, over) : 0, enabled ? p.edge : p.line, 4);
  const Type t = box.h < 28 ? medium(type::small) : type::body;
  draw_text(pen, t, {box.x + 10, box.y + (box.h - t.line) / 2}, enabled ? p.ink : p.ink3, elided(pen, t, now, box.w - 38));
  draw_icon(pen, Icon::chevron, {box.right() - 22, box.y + box.h / 2 - 7}, 14, enabled ? p.ink2 : p.ink3);
  if (of.ring) draw_ring(ui, box, look);
  const std::string menu = std::string(id) + "/menu";
  if (of.pressed) {
    open_menu(ui, menu);
    if (of.ring && known) ui.focus_wanted = std::string(id) + "/" + std::to_string(chosen);
  }
  int picked = -1;
  float width = box.w;
  for (const std::string_view& word : words)
    width = std::max(width, std::ceil(text_width(pen, medium(type::body), word)) + tick_w + 8 + 2 * pad + 8);
  const float height = static_cast<float>(words.size()) * (ui.touch ? 44 : row_height) + 2 * pad;
  if (begin_menu(ui, menu, box, width, height)) {
    for (size_t i = 0; i < words.size(); ++i)
      if (menu_row(ui, std::string(id) + "/" + std::to_string(i), words[i], {.ticked = static_cast<int>(i) == chosen}))
        picked = static_cast<int>(i);
    end_menu(ui);
  }
  return picked;
}

int menu_stepper(Ui& ui, std::string_view id, std::string_view words, std::string_view value, bool less, bool more) {
  const ImVec2 at = ImGui::GetCursorScreenPos();
  const Pen pen = pen_of(ui);
  const StepperLook look{.height = 26, .value_width = 32, .less = less, .more = more};
  draw_text(pen, type::body, {at.x + 22, at.y + 6}, ui.palette->ink, words);
  const int step = stepper(ui, id, {at.x + ui.menu_width - stepper_width(look) - 4, at.y + 2}, value, words, look);
  ImGui::SetCursorScreenPos(at);
  ImGui::Dummy({ui.menu_width, 30});
  return step;
}

}  // namespace shoalwright
