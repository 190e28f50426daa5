// SPDX-License-Identifier: MIT
#include "views/zoom.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/buttons.h"
#include "platform/platform.h"

namespace shoalwright {

namespace {

constexpr float nearest = 8, step = 1.25f;

/// The area stays filled: nothing beside the fitted drawing is looked at.
void hold(Zoom& zoom, const Box& area) {
  const float half_w = area.w / zoom.times / 2, half_h = area.h / zoom.times / 2;
  zoom.focus.x = std::clamp(zoom.focus.x, area.x + half_w, area.right() - half_w);
  zoom.focus.y = std::clamp(zoom.focus.y, area.y + half_h, area.bottom() - half_h);
}

}  // namespace

void apply_zoom(const Zoom& zoom, const Box& area, ImVec2& corner, float& px_per_cm) {
  if (!(zoom.times > 1)) return;
  const ImVec2 middle = area.centre();
  corner = {middle.x + (corner.x - zoom.focus.x) * zoom.times, middle.y + (corner.y - zoom.focus.y) * zoom.times};
  px_per_cm *= zoom.times;
}

void follow_zoom(Ui& ui, Zoom& zoom, std::string_view id, const Box& area, bool hovered, bool open_water, bool keys) {
  const ImGuiIO& io = ImGui::GetIO();
  const ImVec2 middle = area.centre();
  float by = hovered ? io.MouseWheel : 0;
  ImVec2 about = io.MousePos;
  if (keys && !io.KeyCtrl && !io.KeySuper && !io.KeyAlt && ImGui::IsKeyPressed(ImGuiKey_Z)) {
    by = io.KeyShift ? -1 : 1;
    about = middle;
  }
  if (by != 0) {
    if (!(zoom.times > 1)) zoom.focus = middle;
    const ImVec2 away{about.x - middle.x, about.y - middle.y};
    const float before = zoom.times;
    zoom.times = std::clamp(before * std::pow(step, by), 1.0f, nearest);
    if (zoom.times < 1.02f) zoom.times = 1;
    zoom.focus.x += away.x / before - away.x / zoom.times;  // what is under the pointer stays under it
    zoom.focus.y += away.y / before - away.y / zoom.times;
    hold(zoom, area);
    platform::wake();
  }
  if (hovered && ((open_water && ImGui::IsMouseClicked(ImGuiMouseButton_Left)) || ImGui::IsMouseClicked(ImGuiMouseButton_Middle)))
    zoom.pans = true;
  if (!ImGui::IsMouseDown(ImGuiMouseButton_Left) && !ImGui::IsMouseDown(ImGuiMouseButton_Middle)) zoom.pans = false;
  if (!(zoom.times > 1)) return;
  if (zoom.pans) {
    platform::set_cursor(platform::Cursor::grabbing);
    zoom.focus.x -= io.MouseDelta.x / zoom.times;
    zoom.focus.y -= io.MouseDelta.y / zoom.times;
    hold(zoom, area);
  }
  const ButtonLook look{.small = true, .tooltip = "The whole tank"};
  const std::string fit = std::string(id) + ".fit";
  const bool pressed = button(ui, fit, {area.right() - button_width(ui, "Fit", look) - 8, area.y + 6}, "Fit", look).pressed;
  if (pressed || (hovered && open_water && ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left))) {
    zoom = {};
    platform::wake();
  }
}

}  // namespace shoalwright
