// SPDX-License-Identifier: MIT
#include "draw/ui.h"

#include <algorithm>
#include <cmath>

#include "imgui_internal.h"
#include "platform/platform.h"

namespace shoalwright {
namespace {

constexpr float least_hit = 24, least_hit_touch = 44;

bool holds(const Box& outer, const Box& inner) {
  return outer.x <= inner.x && outer.y <= inner.y && outer.right() >= inner.right() && outer.bottom() >= inner.bottom();
}

/// The box grown about its middle to a size that a pointer can aim at. The growth ends where the pointer is on a neighbour.
Box hit_area(const Ui& ui, const Box& box, const ItemLook& look) {
  if (look.exact) return box;
  const float least = ui.touch ? least_hit_touch : least_hit;
  const float w = look.exact_across ? box.w : std::max(box.w, least), h = std::max(box.h, least);
  const Box grown{box.x - (w - box.w) / 2, box.y - (h - box.h) / 2, w, h};
  const ImVec2 mouse = ImGui::GetIO().MousePos;
  if (!grown.has(mouse.x, mouse.y) || box.has(mouse.x, mouse.y)) return grown;
  for (const Box& other : ui.items_before)
    if (other.has(mouse.x, mouse.y) && !holds(other, box)) return box;
  return grown;
}

float settled(const Ui& ui, const Ui::Eased& e, float ms) {
  const float t = static_cast<float>((ui.now_s - e.since_s) * 1000 / ms);
  if (!(t < 1)) return e.to;
  const float left = 1 - std::max(0.0f, t);
  return e.from + (e.to - e.from) * (1 - left * left * left);
}

/// The last item has the keyboard from now on. ImGui::FocusItem asks for it in the next frame instead, and forgets the wish when
/// the item that has it until then is drawn later in this frame in another child window.
void take_keyboard() {
  ImGuiContext& g = *ImGui::GetCurrentContext();
  ImGui::SetNavWindow(g.CurrentWindow);
  ImGui::SetFocusID(g.LastItemData.ID, g.CurrentWindow);
  g.NavInitResult.ID = 0;
  g.NavIdIsAlive = true;
  ImGui::SetNavCursorVisible(true);
  ImGui::ScrollToItem(ImGuiScrollFlags_KeepVisibleEdgeY);
}

}  // namespace

void begin_ui(Ui& ui, const Palette& palette, const Faces& faces, float device_scale) {
  ui.palette = &palette;
  ui.faces = &faces;
  ui.device_scale = device_scale;
  ui.now_s = ImGui::GetTime();
  const ImGuiIO& io = ImGui::GetIO();
  if (io.MouseDelta.x != 0 || io.MouseDelta.y != 0) ui.moved_s = ui.now_s;
  ui.spots.clear();
  std::swap(ui.items, ui.items_before);
  ui.items.clear();
  ui.ring_id_before = std::move(ui.ring_id);
  ui.ring_id.clear();
  // Kept through the frame of letting go, so that a drag does not end as a tap.
  if (!ImGui::IsMouseDown(ImGuiMouseButton_Left) && !ImGui::IsMouseReleased(ImGuiMouseButton_Left)) {
    ui.dragged_id.clear();
    ui.finger_column.clear();
  }
  // What was not drawn for a while starts afresh when it comes back.
  const int frame = ImGui::GetFrameCount();
  for (auto it = ui.eased.begin(); it != ui.eased.end();) it = frame - it->second.seen_frame > 600 ? ui.eased.erase(it) : ++it;
}

void set_imgui_style() {
  ImGuiStyle& style = ImGui::GetStyle();
  style.WindowPadding = style.FramePadding = style.ItemSpacing = style.ItemInnerSpacing = {0, 0};
  style.WindowBorderSize = style.ChildBorderSize = style.PopupBorderSize = 0;
  style.WindowRounding = style.ChildRounding = 0;
  style.PopupRounding = 6;
  style.WindowMinSize = {1, 1};
  style.HoverDelayNormal = 0.4f;
  style.HoverStationaryDelay = 0;
  style.Colors[ImGuiCol_NavCursor] = {0, 0, 0, 0};  // the ring is drawn by draw_ring
  style.Colors[ImGuiCol_WindowBg] = style.Colors[ImGuiCol_ChildBg] = style.Colors[ImGuiCol_PopupBg] = {0, 0, 0, 0};
  style.Colors[ImGuiCol_ModalWindowDimBg] = style.Colors[ImGuiCol_NavWindowingDimBg] = {0, 0, 0, 0};
  ImGuiIO& io = ImGui::GetIO();
  io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
  io.ConfigNavEscapeClearFocusItem = false;  // Escape puts back what is in hand; the keyboard stays where it is
  io.MouseDragThreshold = 4;
}

Pen pen_of(const Ui& ui) {
  ImDrawList* dl = ImGui::GetWindowDrawList();
  dl->_FringeScale = 1 / ui.device_scale;  // edges softened over one device pixel, not one CSS pixel
  return {dl, ui.palette, ui.faces, ui.device_scale};
}

void add_spot(Ui& ui, std::string_view id, const Box& box, std::string_view label, bool enabled) {
  const ImDrawList* dl = ImGui::GetWindowDrawList();
  const ImVec2 lo = dl->GetClipRectMin(), hi = dl->GetClipRectMax();
  Spots::Spot spot{.id = std::string(id), .min = box.min(), .max = box.max(), .label = std::string(label), .enabled = enabled};
  const ImVec2 cut_min{std::max(lo.x, box.x), std::max(lo.y, box.y)};
  const ImVec2 cut_max{std::min(hi.x, box.right()), std::min(hi.y, box.bottom())};
  spot.visible = cut_min.x < cut_max.x && cut_min.y < cut_max.y;
  spot.cut_across = cut_min.x > box.x + 0.5f || cut_max.x < box.right() - 0.5f;
  if (spot.visible) {
    spot.min = cut_min;
    spot.max = cut_max;
  }
  ui.spots.list.push_back(std::move(spot));
}

Item item(Ui& ui, std::string_view id, const Box& box, std::string_view label, const ItemLook& look) {
  const std::string name(id);
  const Box hit = hit_area(ui, box, look);
  ui.items.push_back(box);
  Item got;
  ImGui::SetCursorScreenPos(hit.min());
  if (!look.enabled) ImGui::BeginDisabled();
  if (look.repeat) ImGui::PushItemFlag(ImGuiItemFlags_ButtonRepeat, true);
  if (look.arrows_only) ImGui::PushItemFlag(ImGuiItemFlags_NoTabStop, true);
  if (look.allow_over) ImGui::SetNextItemAllowOverlap();
  got.pressed = ImGui::InvisibleButton(name.c_str(), {std::max(1.0f, hit.w), std::max(1.0f, hit.h)},
                                       look.pointer_only ? ImGuiButtonFlags_None : ImGuiButtonFlags_EnableNav);
  if (look.arrows_only) ImGui::PopItemFlag();
  if (look.repeat) ImGui::PopItemFlag();
  if (ui.focus_wanted == id && look.enabled) {
    take_keyboard();
    ui.focus_wanted.clear();
    platform::wake(3);
  }
  got.hovered = ImGui::IsItemHovered();
  got.held = ImGui::IsItemActive();
  got.focused = ImGui::IsItemFocused();
  got.ring = got.focused && ImGui::GetCurrentContext()->NavCursorVisible;
  got.visible = ImGui::IsItemVisible();
  if (got.ring) {
    got.arrived = ui.ring_id_before != id;
    ui.ring_id = name;
  }
  if (!look.enabled) ImGui::EndDisabled();
  if (look.enabled && !look.pointer_only && !look.arrows_only) platform::tab_stop();
  if (got.hovered && look.text_cursor) ImGui::SetMouseCursor(ImGuiMouseCursor_TextInput);
  add_spot(ui, id, box, label, look.enabled);
  return got;
}

void draw_ring(const Ui& ui, const Box& box, const ItemLook& look, ImU32 colour) {
  if (look.ring == Ring::none) return;
  const Pen pen = pen_of(ui);
  // Outside: 2 px of gap, then 2 px of ring. Inside, for rows that fill their column: the ring begins 1 px in.
  const float by = look.ring == Ring::outside ? -3.0f : 2.0f;
  const Box line = box.inset(by);
  const float rounding = look.ring == Ring::outside ? look.rounding + 3 : std::max(0.0f, look.rounding - 2);
  pen.dl->PathRect(line.min(), line.max(), rounding);
  pen.dl->PathStroke(colour ? colour : pen.palette->focus, ImDrawFlags_Closed, 2);
}

float eased(Ui& ui, std::string_view id, float target, float ms) {
  const int frame = ImGui::GetFrameCount();
  const auto [found, fresh] = ui.eased.try_emplace(ImHashData(id.data(), id.size()));
  Ui::Eased& e = found->second;
  if (fresh || ui.reduced_motion || frame - e.seen_frame > 1) {
    e = {.from = target, .to = target, .since_s = ui.now_s - 10};
  } else if (e.to != target) {
    e.from = settled(ui, e, ms);
    e.to = target;
    e.since_s = ui.now_s;
  }
  e.seen_frame = frame;
  const float now = settled(ui, e, ms);
  if (now != e.to) platform::wake(1);
  return now;
}

ImU32 eased_colour(Ui& ui, std::string_view id, ImU32 off, ImU32 on, bool is_on) {
  return mix(off, on, eased(ui, id, is_on ? 1.0f : 0.0f, 90));
}

int typed_step() {
  int step = 0;
  for (const ImWchar c : ImGui::GetIO().InputQueueCharacters) {
    if (c == '+') step = 1;
    if (c == '-' || c == 0x2212) step = -1;
  }
  return step;
}

void draw_panel(const Pen& pen, const Box& box, ImU32 fill, ImU32 border, float rounding, ImDrawFlags corners, float thickness) {
  const Box b{snapped(pen, box.x), snapped(pen, box.y), snapped(pen, box.right()) - snapped(pen, box.x),
              snapped(pen, box.bottom()) - snapped(pen, box.y)};
  const bool bordered = (border & IM_COL32_A_MASK) != 0;
  const float t = std::max(1.0f, std::floor(thickness * pen.device_scale)) / pen.device_scale;
  if ((fill & IM_COL32_A_MASK) != 0) {
    const Box f = bordered ? b.inset(t / 2) : b;
    pen.dl->AddRectFilled(f.min(), f.max(), fill, std::max(0.0f, rounding - (bordered ? t / 2 : 0)), corners);
  }
  if (bordered) {
    const Box l = b.inset(t / 2);
    pen.dl->PathRect(l.min(), l.max(), std::max(0.0f, rounding - t / 2), corners);
    pen.dl->PathStroke(border, ImDrawFlags_Closed, t);
  }
}

void draw_rule(const Pen& pen, float x1, float y, float x2, ImU32 colour) {
  const float t = std::max(1.0f, std::floor(pen.device_scale)) / pen.device_scale, top = snapped(pen, y);
  pen.dl->AddRectFilled({snapped(pen, x1), top}, {snapped(pen, x2), top + t}, colour);
}

void draw_rule_down(const Pen& pen, float x, float y1, float y2, ImU32 colour) {
  const float t = std::max(1.0f, std::floor(pen.device_scale)) / pen.device_scale, left = snapped(pen, x);
  pen.dl->AddRectFilled({left, snapped(pen, y1)}, {left + t, snapped(pen, y2)}, colour);
}

}  // namespace shoalwright
