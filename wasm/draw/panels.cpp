// SPDX-License-Identifier: MIT
#include "draw/panels.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/geometry.h"
#include "imgui_internal.h"

namespace shoalwright {
namespace {

/// The innermost column under a finger that can still move its way takes it; what the finger came down on is let go.
void scroll_by_finger(Ui& ui, const Column& column, float most) {
  if (!ui.touch || !ImGui::IsMouseDown(ImGuiMouseButton_Left)) return;
  const ImGuiIO& io = ImGui::GetIO();
  if (ui.finger_column.empty() && ui.dragged_id.empty()) {
    constexpr float slack = 8;
    const ImVec2 came = io.MouseClickedPos[ImGuiMouseButton_Left], moved{io.MousePos.x - came.x, io.MousePos.y - came.y};
    if (!column.view.has(came.x, came.y) || std::fabs(moved.y) < slack || std::fabs(moved.y) < std::fabs(moved.x)) return;
    if (!ImGui::IsWindowHovered(ImGuiHoveredFlags_ChildWindows | ImGuiHoveredFlags_AllowWhenBlockedByActiveItem)) return;
    if (moved.y > 0 ? !(ImGui::GetScrollY() > 0) : !(ImGui::GetScrollY() < most)) return;
    ui.finger_column = column.id;
    ImGui::ClearActiveID();
  }
  if (ui.finger_column == column.id) ImGui::SetScrollY(std::clamp(ImGui::GetScrollY() - io.MouseDelta.y, 0.0f, most));
}

void scroll_by_pages(const Column& column, float most) {
  if (ImGui::GetCurrentContext()->NavWindow != ImGui::GetCurrentWindow()) return;
  const ImGuiID owner = ImGui::GetID("pages");
  const float page = std::max(40.0f, column.view.h - 40);
  const std::pair<ImGuiKey, float> keys[] = {
      {ImGuiKey_PageUp, -page}, {ImGuiKey_PageDown, page}, {ImGuiKey_Home, -most}, {ImGuiKey_End, most}};
  for (const auto& [key, by] : keys) {
    ImGui::SetKeyOwner(key, owner);  // or Dear ImGui looks for the next item, in another column if need be
    if (ImGui::IsKeyPressed(key, ImGuiInputFlags_Repeat, owner))
      ImGui::SetScrollY(std::clamp(ImGui::GetScrollY() + by, 0.0f, most));
  }
}

}  // namespace

float section_header(Ui& ui, const Box& box, std::string_view heading, std::string_view remark, std::string_view after) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const float base = box.y + 15;
  float right = box.right();
  if (!remark.empty()) right -= draw_text_on(pen, type::small, {right, base}, p.ink2, remark, Align::right) + 8;
  const Type t = semibold(type::lead);
  const std::string shown = elided(pen, t, heading, right - box.x);
  const float x = box.x + draw_text_on(pen, t, {box.x, base}, p.ink, shown) + 8;
  if (!after.empty()) draw_text_on(pen, type::small, {x, base}, p.ink2, elided(pen, type::small, after, right - x));
  return 20;
}

void draw_card(const Pen& pen, const Box& box) { draw_panel(pen, box, pen.palette->panel, pen.palette->line, 6); }

Column begin_column(Ui& ui, std::string_view id, const Box& view, ImU32 ground, bool reads) {
  ImGui::SetCursorScreenPos(view.min());
  ImGui::BeginChild(std::string(id).c_str(), {std::max(1.0f, view.w), std::max(1.0f, view.h)}, ImGuiChildFlags_NavFlattened,
                    ImGuiWindowFlags_NoScrollbar);
  if ((ground & IM_COL32_A_MASK) != 0) pen_of(ui).dl->AddRectFilled(view.min(), view.max(), ground);
  const float scrolled = snapped(pen_of(ui), ImGui::GetScrollY());
  return {.content = {view.x, view.y - scrolled, view.w, view.h}, .view = view, .id = std::string(id), .reads = reads};
}

void end_column(Ui& ui, Column& column, float content_height) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const Box& view = column.view;
  const float most = content_height - view.h;
  ui.column_lack = most;
  if (most > 0.5f) {
    scroll_by_finger(ui, column, most);
    if (column.reads) scroll_by_pages(column, most);
    const float thumb = std::max(32.0f, view.h * view.h / content_height), run = view.h - 4 - thumb;
    const float share = std::clamp(ImGui::GetScrollY() / most, 0.0f, 1.0f);
    // The bar is 4 px, its handle for the pointer 10.
    const Box handle{view.right() - 10, view.y + 2 + run * share, 10, thumb};
    const Item of = item(ui, column.id + "/bar", handle, "Scroll", {.exact = true, .pointer_only = true});
    if (of.held)
      ImGui::SetScrollY(std::clamp(ImGui::GetScrollY() + ImGui::GetIO().MouseDelta.y * most / std::max(1.0f, run), 0.0f, most));
    const float w = of.held || of.hovered ? 6.0f : 4.0f;
    const Box bar{view.right() - w - 1, handle.y, w, thumb};
    pen.dl->AddRectFilled(bar.min(), bar.max(), of.held || of.hovered ? p.edge : scale_alpha(p.edge, 0.55f), w / 2);
  }
  ImGui::SetCursorScreenPos({column.content.x, column.content.y + std::max(0.0f, content_height - 1)});
  ImGui::Dummy({1, 1});
  ImGui::EndChild();
}

ListRowAnswer list_row(Ui& ui, std::string_view id, const Box& box, std::string_view label, const ListRow& row) {
  const ItemLook look{.rounding = 2, .ring = Ring::inside, .exact = true, .arrows_only = row.arrows_only, .allow_over = true};
  ListRowAnswer answer{.item = item(ui, id, box, label, look)};
  const Item& of = answer.item;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const float over = eased(ui, id, row.chosen || (of.hovered && !row.lifted) ? 1.0f : 0.0f, 90);
  if (row.lifted) {
    draw_panel(pen, box, p.sunk, 0, 0);
    dashed_rect(pen.dl, {box.x + 3.5f, box.y + 3.5f}, {box.right() - 3.5f, box.bottom() - 3.5f}, dash_aim(), p.edge, 1);
  } else if (over > 0) {
    draw_panel(pen, box, scale_alpha(p.actSoft, over), 0, 0);
  }
  if (row.rule_above) draw_rule(pen, box.x, box.y, box.right(), p.line);
  if (of.ring) draw_ring(ui, box, look);
  const bool by_pointer = ImGui::IsMouseReleased(ImGuiMouseButton_Left);
  const bool dragged = ui.dragged_id == id;
  answer.enter = of.pressed && !dragged && (ui.touch || !by_pointer);
  answer.double_click = of.hovered && ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left);
  // A finger lifts a row sideways; up and down it scrolls.
  const ImVec2 moved = ImGui::GetMouseDragDelta(ImGuiMouseButton_Left);
  const bool lifts = !ui.touch || std::fabs(moved.x) > std::fabs(moved.y);
  if (of.held && !dragged && lifts && ImGui::IsMouseDragging(ImGuiMouseButton_Left)) {
    answer.drag_started = true;
    ui.dragged_id = id;
  }
  return answer;
}

float draw_key_cap(const Pen& pen, ImVec2 at, std::string_view words) {
  const Type t = medium(type::small);
  const float w = std::ceil(text_width(pen, t, words)) + 14;
  draw_panel(pen, {at.x, at.y, w, 20}, pen.palette->raised, pen.palette->edge, 3);
  draw_text(pen, t, {snapped(pen, at.x) + 7, at.y + 2}, pen.palette->ink, words);
  return w;
}

}  // namespace shoalwright
