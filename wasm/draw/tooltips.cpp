// SPDX-License-Identifier: MIT
#include "draw/tooltips.h"

#include <algorithm>
#include <cmath>

#include "platform/platform.h"

namespace shoalwright {
namespace {

constexpr double delay_s = 0.4;

}  // namespace

bool tooltip_due(Ui& ui, const Item& of) {
  if (of.held) return false;
  if (of.hovered) {
    if (ImGui::IsItemHovered(ImGuiHoveredFlags_DelayNormal)) return true;
    platform::wake_in(static_cast<int>(delay_s * 1000) + 20);
    return false;
  }
  if (!of.ring) return false;
  if (of.arrived) ui.ring_since_s = ui.now_s;
  if (ui.now_s - ui.ring_since_s >= delay_s) return true;
  platform::wake_in(static_cast<int>((delay_s - (ui.now_s - ui.ring_since_s)) * 1000) + 20);
  return false;
}

void tooltip(Ui& ui, const Box& anchor, const Item& of, std::string_view text, std::string_view key) {
  if (text.empty() || !tooltip_due(ui, of)) return;
  Pen pen = pen_of(ui);
  pen.dl = ImGui::GetForegroundDrawList();
  pen.dl->_FringeScale = 1 / ui.device_scale;
  constexpr float most_width = 280, pad = 8;
  const Type t = type::small;
  const float key_width = key.empty() ? 0 : text_width(pen, t, key) + 10;
  float text_w = 0;
  for (const std::string_view line : wrapped(pen, t, text, most_width)) text_w = std::max(text_w, text_width(pen, t, line));
  const float w = std::ceil(text_w + key_width) + 2 * pad, h = wrapped_height(pen, t, text, most_width) + 8;
  const ImVec2 screen = ImGui::GetIO().DisplaySize;
  const float x = std::clamp(anchor.x + anchor.w / 2 - w / 2, 4.0f, std::max(4.0f, screen.x - w - 4));
  // Below its anchor with room for the keyboard's ring, above where the screen ends.
  const float below = anchor.bottom() + 7;
  const float y = below + h + 4 <= screen.y ? below : std::max(4.0f, anchor.y - 7 - h);
  draw_panel(pen, {x, y, w, h}, ui.palette->raised, ui.palette->edge, 4);
  draw_wrapped(pen, t, {snapped(pen, x) + pad, y + 4}, most_width, ui.palette->ink, text);
  if (!key.empty()) draw_text(pen, t, {x + w - pad, y + 4}, ui.palette->ink3, key, Align::right);
}

}  // namespace shoalwright
