// SPDX-License-Identifier: MIT
#include "draw/slider.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/fields.h"
#include "imgui_internal.h"

namespace shoalwright {
namespace {

constexpr float end = 9;  // half the knob: its middle reaches both ends of the track

double rounded(double value, const SliderLook& look) {
  const double step = look.step > 0 ? look.step : 1;
  // The ends may lie between two steps; both can be reached.
  if (value >= look.most - step / 4) return look.most;
  return std::clamp(std::round(value / step) * step, look.least, look.most);
}

void draw_ticks(const Pen& pen, const SliderLook& look, float x0, float x1, float y) {
  const Palette& p = *pen.palette;
  const double span = look.most - look.least;
  for (double tick = look.least; tick <= look.most + 1e-9 && look.tick > 0; tick += look.tick) {
    const float x = snapped_to_middle(pen, x0 + static_cast<float>((tick - look.least) / span) * (x1 - x0));
    pen.dl->AddLine({x, y}, {x, y + 4}, p.edge, 1);
    draw_text_on(pen, type::axis, {x, y + 15}, p.ink2, number_text(tick, look.tick < 1 ? 1 : 0), Align::centre);
  }
}

}  // namespace

ImVec2 arrow_steps(const Item& of) {
  if (!of.ring) return {0, 0};
  const ImGuiID owner = ImGui::GetItemID();
  ImVec2 steps{0, 0};
  const auto key = [&](ImGuiKey arrow, float x, float y) {
    ImGui::SetKeyOwner(arrow, owner);
    if (!ImGui::IsKeyPressed(arrow, ImGuiInputFlags_Repeat, owner)) return;
    const float far = ImGui::GetIO().KeyShift ? 5 : 1;
    steps.x += x * far;
    steps.y += y * far;
  };
  key(ImGuiKey_LeftArrow, -1, 0);
  key(ImGuiKey_RightArrow, 1, 0);
  key(ImGuiKey_UpArrow, 0, 1);
  key(ImGuiKey_DownArrow, 0, -1);
  return steps;
}

bool hand_on(Ui& ui, std::string_view id, const Item& of) {
  if (!of.held || !ImGui::IsMouseDown(ImGuiMouseButton_Left)) return false;
  if (ui.touch) ui.dragged_id = id;
  if (!ImGui::IsMouseDragging(ImGuiMouseButton_Left, 2)) return false;
  ui.dragged_id = id;
  return true;
}

bool slider(Ui& ui, std::string_view id, ImVec2 at, float width, double& value, std::string_view label, const SliderLook& look) {
  const double before = value, span = std::max(1e-9, look.most - look.least);
  const Box box{at.x, at.y, width, 24};
  const std::string said = std::string(label) + ", " + number_text(value, look.step < 1 ? 1 : 0) + " " + std::string(look.unit);
  const ItemLook item_look{.enabled = look.enabled, .exact_across = true};
  const Item of = item(ui, id, box, said, item_look);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const float x0 = at.x + end, x1 = at.x + width - end, y = snapped(pen, at.y + 12);
  if (of.held && ImGui::IsMouseDown(ImGuiMouseButton_Left)) {
    const ImVec2 moved = ImGui::GetMouseDragDelta(ImGuiMouseButton_Left, 4);
    if (ui.touch && ui.dragged_id.empty() && std::fabs(moved.x) > std::fabs(moved.y)) ui.dragged_id = id;
    if (!ui.touch || ui.dragged_id == id)
      value = rounded(look.least + span * std::clamp((ImGui::GetIO().MousePos.x - x0) / (x1 - x0), 0.0f, 1.0f), look);
  } else {
    const ImVec2 arrows = arrow_steps(of);
    const float step = arrows.x + arrows.y + static_cast<float>(of.focused ? typed_step() : 0);
    if (step != 0) value = rounded(value + step * look.step, look);
    if (of.pressed && ui.touch && ui.dragged_id.empty())  // a tap on the track
      value = rounded(look.least + span * std::clamp((ImGui::GetIO().MousePos.x - x0) / (x1 - x0), 0.0f, 1.0f), look);
  }
  const float share = static_cast<float>(std::clamp((value - look.least) / span, 0.0, 1.0));
  const float x = x0 + share * (x1 - x0);
  const ImU32 ink = look.enabled ? p.act : p.ink3;
  pen.dl->AddRectFilled({at.x, y - 2.5f}, {at.x + width, y + 2.5f}, p.sunk, 2.5f);
  pen.dl->AddRectFilled({at.x, y - 2.5f}, {x, y + 2.5f}, ink, 2.5f);
  pen.dl->AddCircleFilled({x, y}, end + 1, p.panel);
  pen.dl->AddCircleFilled({x, y}, end - 1, ink);
  if (of.hovered || of.held) pen.dl->AddCircle({x, y}, end + 2, p.act, 0, 1.4f);
  if (of.ring) pen.dl->AddCircle({x, y}, end + 4, p.focus, 0, 2);
  draw_ticks(pen, look, x0, x1, at.y + 24);
  return value != before;
}

}  // namespace shoalwright
