// SPDX-License-Identifier: MIT
#include "views/terrain_edit.h"

#include <algorithm>
#include <cmath>

#include "draw/buttons.h"
#include "draw/geometry.h"
#include "draw/panels.h"
#include "edit/command.h"
#include "imgui_internal.h"
#include "plan/check.h"
#include "platform/platform.h"
#include "tank/terrain.h"
#include "tank/volume.h"
#include "units/text.h"
#include "views/edit_wish.h"

namespace shoalwright {

namespace {

using Line = std::vector<LinePoint>;

constexpr double grid_cm = 0.5, least_gap_cm = 0.5;
constexpr float handle_px = 4.5f;

double edge_cm(const Plan& plan) { return std::max(plan.substrate.front_cm, plan.substrate.back_cm); }

/// A point where it may be: between its neighbours, from the bottom to the water line as it is seen.
LinePoint held_within(const Plan& plan, const Line& line, int point, LinePoint wanted, bool snaps) {
  const auto i = static_cast<std::size_t>(point);
  const double length_cm = inside_length_cm(plan.tank);
  const double low = i > 0 ? line[i - 1].x_cm + least_gap_cm : 0,
               high = i + 1 < line.size() ? line[i + 1].x_cm - least_gap_cm : length_cm;
  const double grid = snaps ? grid_cm : 0.1;
  const auto on_grid = [grid](double cm) { return std::round(std::round(cm / grid) * grid * 10) / 10; };
  double x_cm = on_grid(wanted.x_cm);
  if (snaps && i + 1 == line.size() && x_cm > length_cm - grid_cm) x_cm = length_cm;
  if (low <= high) x_cm = std::clamp(x_cm, low, high);
  const double edge = edge_cm(plan);
  return {low <= high ? x_cm : line[i].x_cm, std::clamp(on_grid(wanted.rise_cm), -edge, std::max(0.0, plan.tank.fill_cm - edge))};
}

Line with_point(const Plan& plan, Line line, int point, const LinePoint& wanted, bool snaps) {
  line[static_cast<std::size_t>(point)] = held_within(plan, line, point, wanted, snaps);
  return line;
}

struct Added {
  Line line;
  int point = -1;  ///< -1: there is no room for one
};

/// One more point at x on the line as it runs; on a line without points with one on either side, so that a hill can grow there.
Added one_more(const Plan& plan, double x_cm) {
  const Line& line = plan.substrate.line_cm;
  const double length_cm = inside_length_cm(plan.tank), reach_cm = std::max(4.0, std::round(length_cm / 6));
  x_cm = std::clamp(std::round(x_cm / grid_cm) * grid_cm, 0.0, length_cm);
  Added added;
  if (line.empty()) {
    x_cm = std::clamp(x_cm, std::min(2.0, length_cm / 3), std::max(length_cm - 2, length_cm * 2 / 3));
    added.line = {{std::max(0.0, x_cm - reach_cm), 0}, {x_cm, 0}, {std::min(length_cm, x_cm + reach_cm), 0}};
    added.point = 1;
    return added;
  }
  if (line.size() >= most_line_points) return added;
  std::size_t at = 0;
  while (at < line.size() && line[at].x_cm < x_cm) ++at;
  if ((at > 0 && x_cm - line[at - 1].x_cm < least_gap_cm) || (at < line.size() && line[at].x_cm - x_cm < least_gap_cm))
    return added;
  added.line = line;
  added.line.insert(added.line.begin() + static_cast<std::ptrdiff_t>(at), {x_cm, std::round(rise_at(line, x_cm) * 10) / 10});
  added.point = static_cast<int>(at);
  return added;
}

/// The middle of the widest stretch without a point.
double widest_gap_cm(const Plan& plan) {
  const Line& line = plan.substrate.line_cm;
  double from = 0, widest = -1, middle = inside_length_cm(plan.tank) / 2;
  for (std::size_t i = 0; i <= line.size(); ++i) {
    const double to = i < line.size() ? line[i].x_cm : inside_length_cm(plan.tank);
    if (to - from > widest && !line.empty()) {
      widest = to - from;
      middle = (from + to) / 2;
    }
    from = to;
  }
  return middle;
}

void exchange(const Look& look, const Line& line, const std::string& join, Actions& out) {
  if (line == look.plan.substrate.line_cm) return;
  SetSubstrate edit{look.plan.substrate};
  edit.substrate.line_cm = line;
  EditPlan wish = edit_wish(look, edit);
  wish.join = join;
  out.push_back(std::move(wish));
}

void add_point(const Look& look, double x_cm, Actions& out) {
  const Added added = one_more(look.plan, x_cm);
  if (added.point < 0) return;
  exchange(look, added.line, "", out);
  out.push_back(ChooseTerrain{added.point});
}

void take_out(const Look& look, int point, const std::string& join, Actions& out) {
  Line line = look.plan.substrate.line_cm;
  if (point < 0 || point >= static_cast<int>(line.size())) return;
  line.erase(line.begin() + point);
  // Points of no rise are what is there without them.
  if (std::all_of(line.begin(), line.end(), [](const LinePoint& one) { return one.rise_cm == 0; })) line.clear();
  exchange(look, line, join, out);
  out.push_back(ChooseTerrain{-1});
}

void mirror(const Look& look, Actions& out) {
  Line line = mirrored(look.plan.substrate.line_cm, inside_length_cm(look.plan.tank));
  for (LinePoint& point : line) point.x_cm = std::max(0.0, std::round(point.x_cm * 1e6) / 1e6);  // the dust of subtracting
  exchange(look, line, "", out);
  if (*look.chosen_terrain >= 0) out.push_back(ChooseTerrain{static_cast<int>(line.size()) - 1 - *look.chosen_terrain});
}

std::string point_words(const Look& look, int point) {
  const LinePoint& one = look.plan.substrate.line_cm[static_cast<std::size_t>(point)];
  const std::string rise = look.measures.length(std::abs(one.rise_cm));
  return "Point " + std::to_string(point + 1) + ": " + look.measures.length(one.x_cm) + " from the left, " +
         (one.rise_cm < 0 ? rise + " down" : rise + " up");
}

ImVec2 place_of(const PieceStage& stage, double x_cm) { return stage.at(x_cm, crest_cm(stage.scene, x_cm)); }

void draw_line(const Pen& pen, const Look& look, const PieceStage& stage) {
  const Line& line = look.plan.substrate.line_cm;
  const double length_cm = inside_length_cm(look.plan.tank);
  std::vector<double> at = {0};
  for (const LinePoint& point : line) at.push_back(point.x_cm);
  at.push_back(length_cm);
  // Where the line goes below the bottom it is seen to end there: a few more places show that bend.
  std::vector<ImVec2> way;
  for (std::size_t i = 0; i + 1 < at.size(); ++i)
    for (int part = 0; part < 16; ++part) way.push_back(place_of(stage, at[i] + (at[i + 1] - at[i]) * part / 16));
  way.push_back(place_of(stage, length_cm));
  pen.dl->AddPolyline(way.data(), static_cast<int>(way.size()), with_alpha(pen.palette->raised, 0.7f), 0, 4);
  dashed_line(pen.dl, way, dash_ghost_outline(), pen.palette->ink, 1.6f);
}

void draw_handle(const Pen& pen, ImVec2 at, bool chosen) {
  at = {std::round(at.x), std::round(at.y)};
  pen.dl->AddCircleFilled(at, handle_px + 2, chosen ? pen.palette->ink : pen.palette->raised);
  pen.dl->AddCircle(at, handle_px + 2, chosen ? pen.palette->raised : pen.palette->ink, 0, 1.6f);
}

void begin_drag(const Look& look, Line held, int point, ImVec2 pointer, TerrainEdit& mine) {
  mine.drag = TerrainEdit::Drag{.point = point,
                                .from = pointer,
                                .line = look.plan.substrate.line_cm,
                                .held = std::move(held),
                                .moved = false,
                                .join = "drag line " + std::to_string(++mine.drags)};
}

void go_on_dragging(const Look& look, const PieceStage& stage, ImVec2 pointer, TerrainEdit& mine, Actions& out) {
  TerrainEdit::Drag& drag = *mine.drag;
  if (!ImGui::IsMousePosValid(&pointer)) {  // taken from the hand, as by a second finger: nothing was meant
    if (drag.moved) exchange(look, drag.line, drag.join, out);
    mine.drag.reset();
    return;
  }
  platform::set_cursor(platform::Cursor::grabbing);
  drag.moved = drag.moved || std::hypot(pointer.x - drag.from.x, pointer.y - drag.from.y) > 3;
  if (drag.moved) {
    const Vec from = stage.place(drag.from), to = stage.place(pointer);
    LinePoint wanted = drag.held[static_cast<std::size_t>(drag.point)];
    wanted.x_cm += static_cast<double>(to.x - from.x);
    wanted.rise_cm += static_cast<double>(to.y - from.y);
    exchange(look, with_point(look.plan, drag.held, drag.point, wanted, !ImGui::GetIO().KeyAlt), drag.join, out);
    if (*look.chosen_terrain != drag.point) out.push_back(ChooseTerrain{drag.point});
  }
  if (!ImGui::IsMouseReleased(ImGuiMouseButton_Left)) return;
  const bool out_of_tank = drag.moved && !stage.glass.inset(-30).has(pointer.x, pointer.y);
  const int point = drag.point;
  const std::string join = drag.join;
  mine.drag.reset();
  if (out_of_tank) take_out(look, point, join, out);
}

}  // namespace

bool follow_terrain(Ui& ui, const Look& look, const PieceStage& stage, const Box& area, bool hovered, TerrainEdit& mine,
                    Actions& out) {
  const Pen pen = pen_of(ui);
  const ImVec2 pointer = ImGui::GetIO().MousePos;
  const Line& line = look.plan.substrate.line_cm;
  pen.dl->PushClipRect(area.min(), area.max(), true);
  draw_line(pen, look, stage);
  // Two handles that stand close are both reached; the nearer one is taken.
  const float reach = ui.touch ? 20.0f : 9.0f;
  int under = -1;
  float nearest = reach;
  for (int i = 0; i < static_cast<int>(line.size()); ++i) {
    const ImVec2 at = place_of(stage, line[static_cast<std::size_t>(i)].x_cm);
    if (!area.has(at.x, at.y)) continue;  // nearer than the window is wide
    const Box box{at.x - handle_px - 2, at.y - handle_px - 2, 2 * handle_px + 4, 2 * handle_px + 4};
    const Item of = item(ui, "tank.line/" + std::to_string(i), box, point_words(look, i), {.rounding = 8});
    hovered = hovered || of.hovered;
    draw_handle(pen, at, *look.chosen_terrain == i);
    if (of.ring) draw_ring(ui, box, {.rounding = 8});
    if ((of.arrived || of.pressed) && !mine.drag && *look.chosen_terrain != i) out.push_back(ChooseTerrain{i});
    const float far = std::hypot(pointer.x - at.x, pointer.y - at.y);
    if (far <= nearest) {
      nearest = far;
      under = i;
    }
  }
  pen.dl->PopClipRect();
  const ImVec2 left = place_of(stage, 0), right = place_of(stage, inside_length_cm(look.plan.tank));
  add_spot(ui, "tank.line", {left.x, std::min(left.y, right.y) - 4, right.x - left.x, std::abs(left.y - right.y) + 8},
           "The terrain line");
  if (mine.drag) {
    go_on_dragging(look, stage, pointer, mine, out);
    return true;
  }
  if (!hovered) return false;
  if (under >= 0) {
    platform::set_cursor(platform::Cursor::grab);
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) {
      out.push_back(ChooseTerrain{under});
      begin_drag(look, line, under, pointer, mine);
    }
    return true;
  }
  const double x_cm = static_cast<double>(stage.place(pointer).x);
  const bool on_line = x_cm >= 0 && x_cm <= inside_length_cm(look.plan.tank) &&
                       std::abs(pointer.y - place_of(stage, x_cm).y) <= (ui.touch ? 16.0f : 7.0f);
  if (!on_line) return false;
  platform::set_cursor(platform::Cursor::grab);
  if (ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left)) {
    add_point(look, x_cm, out);
  } else if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) {
    // Pulled anywhere, the line bends there.
    if (Added added = one_more(look.plan, x_cm); added.point >= 0)
      begin_drag(look, std::move(added.line), added.point, pointer, mine);
  }
  return true;
}

void read_terrain_keys(const Look& look, Actions& out) {
  const ImGuiIO& io = ImGui::GetIO();
  if (look.held || ImGui::IsPopupOpen("", ImGuiPopupFlags_AnyPopup)) return;
  const int point = *look.chosen_terrain;
  const Line& line = look.plan.substrate.line_cm;
  const bool has_point = point >= 0 && point < static_cast<int>(line.size());
  if (has_point)  // arrows move the point, not the keyboard's ring
    for (const ImGuiKey key : {ImGuiKey_LeftArrow, ImGuiKey_RightArrow, ImGuiKey_UpArrow, ImGuiKey_DownArrow})
      ImGui::SetKeyOwner(key, ImGui::GetID("terrain"));
  if (io.KeyCtrl || io.KeySuper) return;
  if (ImGui::IsKeyPressed(ImGuiKey_Escape, false)) {
    out.push_back(has_point ? ChooseTerrain{-1} : ChooseTerrain{});
    return;
  }
  if (ImGui::IsKeyPressed(ImGuiKey_M, false) && !line.empty()) mirror(look, out);
  if (!has_point) return;
  if (ImGui::IsKeyPressed(ImGuiKey_Delete, false) || ImGui::IsKeyPressed(ImGuiKey_Backspace, false)) {
    take_out(look, point, "", out);
    return;
  }
  const auto pressed = [](ImGuiKey key) { return ImGui::IsKeyPressed(key, ImGuiInputFlags_Repeat, ImGui::GetID("terrain")); };
  const double far = io.KeyShift ? 5 : io.KeyAlt ? 0.1 : 1;
  LinePoint wanted = line[static_cast<std::size_t>(point)];
  if (pressed(ImGuiKey_LeftArrow)) wanted.x_cm -= far;
  if (pressed(ImGuiKey_RightArrow)) wanted.x_cm += far;
  if (pressed(ImGuiKey_UpArrow)) wanted.rise_cm += far;
  if (pressed(ImGuiKey_DownArrow)) wanted.rise_cm -= far;
  if (!(wanted == line[static_cast<std::size_t>(point)]))
    exchange(look, with_point(look.plan, line, point, wanted, false), "line arrows", out);
}

void draw_terrain_bar(Ui& ui, const Look& look, const Box& box, Actions& out) {
  const Pen pen = pen_of(ui);
  draw_panel(pen, box, pen.palette->panel, 0, 0);
  draw_rule(pen, box.x, box.y, box.right(), pen.palette->line);
  const Line& line = look.plan.substrate.line_cm;
  const int point = *look.chosen_terrain < static_cast<int>(line.size()) ? *look.chosen_terrain : -1;
  float right = box.right() - 12;
  const float y = box.y + (box.h - 26) / 2;
  const auto press = [&](const char* id, const char* words, const char* tip, bool enabled) {
    const ButtonLook one{.kind = ButtonKind::quiet, .small = true, .enabled = enabled, .tooltip = tip};
    right -= button_width(ui, words, one);
    return button(ui, id, {right, y}, words, one).pressed;
  };
  if (press("line.done", "Done", "Esc", true)) out.push_back(ChooseTerrain{});
  if (press("line.level", "Level", "Hills and valleys away, the slope stays", !line.empty())) {
    exchange(look, {}, "", out);
    out.push_back(ChooseTerrain{-1});
    out.push_back(Tell{"Level the substrate", "Undo"});
  }
  if (press("line.mirror", "Mirror", "M", !line.empty())) mirror(look, out);
  if (press("line.out", "Take out", "Delete", point >= 0)) take_out(look, point, "", out);
  if (press("line.add", "Add point", "In the widest gap; or double-click the line", line.size() < most_line_points))
    add_point(look, widest_gap_cm(look.plan), out);
  if (right - box.x < 130) return;  // nothing that a few letters would say
  const std::string words = point >= 0 ? point_words(look, point) : "Terrain line: pull it up or down anywhere";
  draw_text(pen, type::small, {box.x + 16, box.y + (box.h - type::small.line) / 2}, pen.palette->ink,
            elided(pen, type::small, words, right - box.x - 24));
}

}  // namespace shoalwright
