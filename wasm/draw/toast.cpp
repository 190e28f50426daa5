// SPDX-License-Identifier: MIT
#include "draw/toast.h"

#include <algorithm>
#include <cmath>

#include "platform/platform.h"

namespace shoalwright {
namespace {

constexpr double shown_s = 8;
constexpr float least_height = 44;

float action_width(const Ui& ui, std::string_view action) {
  return action.empty() ? 0 : button_width(ui, action, {.small = true}) + 14;
}

float text_room(const Ui& ui, float width, std::string_view action) {
  return width - 14 - 6 - action_width(ui, action) - (action.empty() ? 8 : 0);
}

/// Draws it; tells whether the pointer or keyboard is on it.
bool draw(Ui& ui, std::string_view id, const Box& box, std::string_view text, std::string_view action, bool& pressed) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, box, p.ink, 0, 6);
  const float room = text_room(ui, box.w, action);
  draw_wrapped(pen, type::body, {box.x + 14, box.y + (box.h - wrapped_height(pen, type::body, text, room)) / 2}, room, p.panel,
               text);
  add_spot(ui, id, box, text);
  bool busy = ImGui::IsMouseHoveringRect(box.min(), box.max());
  if (action.empty()) return busy;
  const float w = button_width(ui, action, {.small = true});
  const Box button{box.right() - 6 - w, box.y + (box.h - 26) / 2, w, 26};
  const Item of = item(ui, std::string(id) + "/action", button, action, {});
  draw_panel(pen, button, of.hovered ? scale_alpha(p.panel, 0.16f) : 0, p.panel, 4);
  draw_text(pen, medium(type::small), {button.x + w / 2, button.y + 5}, p.panel, action, Align::centre);
  if (of.ring) draw_ring(ui, button.inset(1), {}, p.panel);
  pressed = of.pressed;
  return busy || of.ring;
}

}  // namespace

void show_toast(Ui& ui, Toast& toast, std::string_view text, std::string_view action) {
  toast = {.text = std::string(text), .action = std::string(action), .left_s = shown_s, .seen_s = ui.now_s};
  platform::wake(2);
}

float toast_height(const Ui& ui, float width, std::string_view text, std::string_view action) {
  const Pen pen{nullptr, ui.palette, ui.faces, ui.device_scale};
  return std::max(least_height, wrapped_height(pen, type::body, text, text_room(ui, width, action)) + 8);
}

bool toast_in(Ui& ui, std::string_view id, const Box& box, std::string_view text, std::string_view action) {
  bool pressed = false;
  draw(ui, id, box, text, action, pressed);
  return pressed;
}

bool draw_toast(Ui& ui, Toast& toast, ImVec2 bottom_middle, float width) {
  if (!(toast.left_s > 0)) return false;
  const float h = toast_height(ui, width, toast.text, toast.action);
  const Box box{std::floor(bottom_middle.x - width / 2), std::floor(bottom_middle.y - h), width, h};
  // A child of its own, so that it lies over what was drawn before and comes last with Tab.
  ImGui::SetCursorScreenPos(box.min());
  bool pressed = false;
  bool busy = false;
  if (ImGui::BeginChild("toast", {box.w, box.h}, ImGuiChildFlags_NavFlattened,
                        ImGuiWindowFlags_NoScrollbar | ImGuiWindowFlags_NoScrollWithMouse))
    busy = draw(ui, "toast", box, toast.text, toast.action, pressed);
  ImGui::EndChild();
  if (!busy) toast.left_s -= ui.now_s - toast.seen_s;
  toast.seen_s = ui.now_s;
  if (pressed || !(toast.left_s > 0)) {
    toast.left_s = 0;
    platform::wake(1);
  } else if (!busy) {
    platform::wake_in(static_cast<int>(toast.left_s * 1000) + 20);
  }
  return pressed;
}

}  // namespace shoalwright
