// SPDX-License-Identifier: MIT
#include "views/piece_edit.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "draw/buttons.h"
#include "draw/geometry.h"
#include "draw/marks.h"
#include "draw/panels.h"
#include "draw/scene/piece.h"
#include "edit/arrange.h"
#include "edit/command.h"
#include "imgui_internal.h"
#include "plan/assumed.h"
#include "platform/platform.h"
#include "tank/placed_piece.h"
#include "tank/volume.h"
#include "units/text.h"
#include "views/edit_wish.h"
#include "views/stock_words.h"

namespace shoalwright {

namespace {

constexpr float handle_px = 4.5f, knob_out_px = 20;

std::string pointer_of(std::size_t piece) { return "/pieces/" + std::to_string(piece); }

bool is_locked(const Plan& plan, std::size_t piece) { return is_fixed(plan, pointer_of(piece)); }

/// The chosen pieces of the plan as they are drawn: each with a place.
std::vector<Piece> chosen_of(const Look& look) {
  const std::vector<Piece> all = with_places(look.plan);
  std::vector<Piece> chosen;
  for (const std::size_t i : look.chosen_pieces)
    if (i < all.size()) chosen.push_back(all[i]);
  return chosen;
}

/// The chosen pieces exchanged, as one step.
void exchange(const Look& look, const std::vector<Piece>& pieces, const std::string& join, Actions& out,
              const std::string& step_name = {}) {
  Plan plan = look.plan;
  std::string name;
  for (std::size_t n = 0; n < pieces.size() && n < look.chosen_pieces.size(); ++n) {
    const std::size_t index = look.chosen_pieces[n];
    if (is_locked(look.plan, index)) continue;
    const ChangePiece change{index, pieces[n]};
    if (name.empty()) name = name_of(change, look.plan, look.catalog);
    plan = apply(std::move(plan), change, look.catalog);
  }
  if (name.empty()) return;
  if (!step_name.empty())
    name = step_name;
  else if (pieces.size() > 1)
    name = "Arrange " + std::to_string(pieces.size()) + " pieces";
  out.push_back(EditPlan{std::move(plan), name, join});
}

template <class Change>
void change_chosen(const Look& look, const std::string& join, Actions& out, Change change) {
  std::vector<Piece> pieces = chosen_of(look);
  for (Piece& piece : pieces) piece = change(piece);
  exchange(look, pieces, join, out);
}

void take_out_chosen(const Look& look, Actions& out) {
  std::vector<std::size_t> taken = look.chosen_pieces;
  std::sort(taken.rbegin(), taken.rend());
  Plan plan = look.plan;
  std::string name;
  for (const std::size_t index : taken) {
    if (is_locked(look.plan, index)) continue;
    if (name.empty()) name = name_of(TakePiece{index}, look.plan, look.catalog);
    plan = apply(std::move(plan), TakePiece{index}, look.catalog);
  }
  if (name.empty()) return;
  if (taken.size() > 1) name = "Take out " + std::to_string(taken.size()) + " pieces";
  out.push_back(EditPlan{std::move(plan), name, ""});
  out.push_back(ChoosePieces{});
  out.push_back(Tell{name, "Undo"});
}

void put_again(const Look& look, Actions& out) {
  Plan plan = look.plan;
  ChoosePieces choose;
  std::string name;
  for (const Piece& piece : chosen_of(look)) {
    const PutPiece put{again(look.plan, piece)};
    if (name.empty()) name = name_of(put, look.plan, look.catalog);
    choose.pieces.push_back(plan.pieces.size());
    plan = apply(std::move(plan), put, look.catalog);
  }
  if (name.empty()) return;
  out.push_back(EditPlan{std::move(plan), name, ""});
  out.push_back(choose);
}

void turn_lock(const Look& look, Actions& out) {
  const bool locked = is_locked(look.plan, look.chosen_pieces.front());
  Plan plan = look.plan;
  for (const std::size_t index : look.chosen_pieces) plan = apply(std::move(plan), PinPiece{index, !locked}, look.catalog);
  out.push_back(EditPlan{std::move(plan), name_of(PinPiece{look.chosen_pieces.front(), !locked}, look.plan, look.catalog), ""});
}

/// Corners of the shadow of a piece in a view, cm: the hull of its solids.
std::vector<std::vector<Vec>> shadows(const Scene& scene, const Piece& piece, Side side) {
  const PieceFrame frame = frame_of(scene, piece);
  const PieceKind& kind = piece_kind(piece.kind);
  std::vector<std::vector<Vec>> out;
  for (const Prism& p : kind.prisms) {
    std::vector<Vec> corners;
    for (const Spot& spot : p.outline) {
      const float u = spot.u * p.length, v = spot.v * p.depth;
      corners.push_back(seen(frame.at((p.u + u) * frame.length, (p.v + v) * frame.depth, p.from * frame.height), side));
      corners.push_back(seen(
          frame.at((p.u + p.lean_u + u * p.top) * frame.length, (p.v + p.lean_v + v * p.top) * frame.depth, p.to * frame.height),
          side));
    }
    out.push_back(convex_hull(corners));
  }
  const float mean = std::sqrt(frame.length * frame.height);
  for (const Limb& limb : kind.limbs)
    for (std::size_t i = 0; i + 1 < limb.points.size(); ++i) {
      const LimbPoint &p = limb.points[i], &q = limb.points[i + 1];
      const Vec a = seen(frame.at(p.u * frame.length, p.v * frame.depth, p.up * frame.height), side),
                b = seen(frame.at(q.u * frame.length, q.v * frame.depth, q.up * frame.height), side);
      const Vec across = unit(Vec{a.y - b.y, b.x - a.x}) * std::max(limb.radius_from * mean, 0.6f);
      out.push_back({a + across, b + across, b - across, a - across});
    }
  return out;
}

struct Handle {
  Grip grip;
  ImVec2 at;
};

/// Handles of one piece where they stand in this view.
std::vector<Handle> handles_of(const PieceStage& stage, const Piece& piece) {
  std::vector<Handle> out;
  if (stage.above) {
    const PieceFrame frame = frame_of(stage.scene, piece);
    const auto at = [&](float u, float v) {
      const Vec3 p = frame.at(u * frame.length, v * frame.depth, 0);
      return stage.at(static_cast<double>(p.x), static_cast<double>(p.z));
    };
    const float flip = frame.flip;
    out = {{Grip::left_end, at(-0.5f * flip, 0)},
           {Grip::right_end, at(0.5f * flip, 0)},
           {Grip::front_side, at(0, -0.5f)},
           {Grip::back_side, at(0, 0.5f)}};
    const ImVec2 end = out[1].at, middle = at(0, 0);
    const float length = std::max(std::hypot(end.x - middle.x, end.y - middle.y), 1.0f);
    out.push_back(
        {Grip::turn, {end.x + (end.x - middle.x) / length * knob_out_px, end.y + (end.y - middle.y) / length * knob_out_px}});
    return out;
  }
  const Extent box = front_extent(stage.scene, piece);
  const double middle_y = static_cast<double>(box.y0 + box.y1) / 2;
  out = {{Grip::left_end, stage.at(static_cast<double>(box.x0), middle_y)},
         {Grip::right_end, stage.at(static_cast<double>(box.x1), middle_y)},
         {Grip::top, stage.at(static_cast<double>(box.x0 + box.x1) / 2, static_cast<double>(box.y1))}};
  return out;
}

std::optional<Grip> handle_at(const Look& look, const PieceStage& stage, ImVec2 pointer, bool touch) {
  const std::vector<Piece> pieces = chosen_of(look);
  if (pieces.size() != 1 || is_locked(look.plan, look.chosen_pieces.front())) return std::nullopt;
  const float reach = touch ? 20.0f : 9.0f;
  std::optional<Grip> found;
  float nearest = reach;
  for (const Handle& handle : handles_of(stage, pieces.front())) {
    const float far = std::hypot(pointer.x - handle.at.x, pointer.y - handle.at.y);
    if (far > nearest) continue;
    nearest = far;
    found = handle.grip;
  }
  return found;
}

/// The piece as the drag has it now.
Piece dragged(const Look& look, const PieceStage& stage, const PieceEdit::Drag& drag, const Piece& start, ImVec2 pointer) {
  const Snap snap = ImGui::GetIO().KeyAlt ? Snap::none : Snap::grid;
  const Vec from = stage.place(drag.from), to = stage.place(pointer);
  const double dx = static_cast<double>(to.x - from.x), dy = static_cast<double>(to.y - from.y);
  const double turn = start.turn_deg * std::numbers::pi / 180, c = std::cos(turn), s = std::sin(turn);
  // Along the piece's own axes; from the front a turned piece is pulled by what of its length is seen.
  const double along = stage.above ? dx * c + dy * s : dx / std::copysign(std::max(std::abs(c), 0.3), c);
  switch (drag.grip) {
    case Grip::move:
      return stage.above ? shifted(look.plan, start, {dx, dy, 0}, snap)
                         : shifted(look.plan, start, {dx, 0, piece_kind(start.kind).floats ? 0 : dy}, snap);
    case Grip::left_end: {
      const int end = !stage.above && c < 0 ? 1 : -1;
      return lengthened(look.plan, start, end * along, end, snap);
    }
    case Grip::right_end: {
      const int end = !stage.above && c < 0 ? -1 : 1;
      return lengthened(look.plan, start, end * along, end, snap);
    }
    case Grip::front_side: return deepened(look.plan, start, -(-dx * s + dy * c), -1, snap);
    case Grip::back_side: return deepened(look.plan, start, -dx * s + dy * c, 1, snap);
    case Grip::top: return heightened(look.plan, start, dy, snap);
    case Grip::turn: {
      const double before = std::atan2(from.y - static_cast<float>(*start.z_cm), from.x - static_cast<float>(*start.x_cm)),
                   now = std::atan2(to.y - static_cast<float>(*start.z_cm), to.x - static_cast<float>(*start.x_cm));
      Piece piece = turned(start, (now - before) * 180 / std::numbers::pi);
      if (snap == Snap::grid) piece.turn_deg = std::fmod(std::round(piece.turn_deg / 5) * 5, 360);
      return piece;
    }
  }
  return start;
}

void begin_drag(const Look& look, const PieceStage& stage, Grip grip, ImVec2 pointer, PieceEdit& mine) {
  mine.drag = PieceEdit::Drag{.grip = grip,
                              .above = stage.above,
                              .from = pointer,
                              .pieces = chosen_of(look),
                              .moved = false,
                              .join = "drag " + std::to_string(++mine.drags)};
}

void go_on_dragging(const Look& look, const PieceStage& stage, ImVec2 pointer, PieceEdit& mine, Actions& out) {
  PieceEdit::Drag& drag = *mine.drag;
  if (!ImGui::IsMousePosValid(&pointer)) {  // taken from the hand, as by a second finger: nothing was meant
    if (drag.moved && drag.pieces != chosen_of(look)) exchange(look, drag.pieces, drag.join, out, drag.name);
    mine.drag.reset();
    return;
  }
  platform::set_cursor(platform::Cursor::grabbing);
  drag.moved = drag.moved || std::hypot(pointer.x - drag.from.x, pointer.y - drag.from.y) > 3;
  if (drag.moved) {
    std::vector<Piece> pieces;
    for (const Piece& start : drag.pieces) pieces.push_back(dragged(look, stage, drag, start, pointer));
    if (pieces != chosen_of(look)) exchange(look, pieces, drag.join, out, drag.name);
  }
  if (!ImGui::IsMouseReleased(ImGuiMouseButton_Left)) return;
  const bool out_of_tank = drag.grip == Grip::move && drag.moved && !stage.glass.inset(-30).has(pointer.x, pointer.y);
  mine.drag.reset();
  if (out_of_tank) take_out_chosen(look, out);
}

}  // namespace

ImVec2 PieceStage::at(double x_cm, double other_cm) const {
  return above ? plan_point(plan, scene, x_cm, other_cm) : front_point(front, scene, x_cm, other_cm);
}

Vec PieceStage::place(ImVec2 point) const { return above ? plan_place(plan, scene, point) : front_place(front, scene, point); }

std::optional<std::size_t> piece_at(const PieceStage& stage, ImVec2 pointer) {
  const Vec at = stage.place(pointer);
  const Side side = stage.above ? Side::above : Side::front;
  std::optional<std::size_t> found;
  const auto nearer = [&](const Piece& a, const Piece& b) {
    if (!stage.above) return *a.z_cm < *b.z_cm;
    const auto top_cm = [&](const Piece& one) {
      return ground_cm(stage.scene, *one.x_cm, *one.z_cm) + one.base_cm + one.height_cm;
    };
    return top_cm(a) > top_cm(b);
  };
  for (std::size_t i = 0; i < stage.scene.pieces.size(); ++i) {
    const Piece& piece = stage.scene.pieces[i];
    if (!piece.x_cm || (found && !nearer(piece, stage.scene.pieces[*found]))) continue;
    for (const std::vector<Vec>& shadow : shadows(stage.scene, piece, side))
      if (inside(shadow, at)) {
        found = i;
        break;
      }
  }
  return found;
}

bool over_handle(const Look& look, const PieceStage& stage, ImVec2 pointer, bool touch) {
  return handle_at(look, stage, pointer, touch).has_value();
}

void add_piece_spots(Ui& ui, const PieceStage& stage) {
  for (std::size_t i = 0; i < stage.scene.pieces.size(); ++i) {
    const Piece& piece = stage.scene.pieces[i];
    if (!piece.x_cm) continue;
    const Extent e = stage.above ? plan_extent(stage.scene, piece) : front_extent(stage.scene, piece);
    const ImVec2 a = stage.at(static_cast<double>(e.x0), static_cast<double>(e.y1)),
                 b = stage.at(static_cast<double>(e.x1), static_cast<double>(e.y0));
    const Box box = Box{a.x, a.y, b.x - a.x, b.y - a.y};
    const float left = std::max(box.x, stage.glass.x), top = std::max(box.y, stage.glass.y);
    const Box seen{left, top, std::max(1.0f, std::min(box.right(), stage.glass.right()) - left),
                   std::max(1.0f, std::min(box.bottom(), stage.glass.bottom()) - top)};
    add_spot(ui, (stage.above ? "above.piece/" : "tank.piece/") + std::to_string(i), seen,
             piece_letter(static_cast<int>(i)) + ", " + piece_name(piece.kind));
  }
}

void draw_chosen(const Pen& pen, const Look& look, const PieceStage& stage) {
  const std::vector<Piece>& pieces = stage.scene.pieces;
  for (const std::size_t index : look.chosen_pieces) {
    if (index >= pieces.size() || !pieces[index].x_cm) continue;
    if (stage.above)
      outline_piece_plan(pen.dl, stage.scene, stage.plan, pieces[index], pen.palette->ink, 1.6f);
    else
      outline_piece_front(pen.dl, stage.scene, stage.front, pieces[index], pen.palette->ink, 1.6f);
  }
  if (look.chosen_pieces.size() != 1 || look.chosen_pieces.front() >= pieces.size()) return;
  const std::size_t index = look.chosen_pieces.front();
  if (!pieces[index].x_cm || is_locked(look.plan, index)) return;
  const std::vector<Handle> handles = handles_of(stage, pieces[index]);
  for (const Handle& handle : handles) {
    const ImVec2 at{std::round(handle.at.x), std::round(handle.at.y)};
    if (handle.grip == Grip::turn) {
      pen.dl->AddLine(handles[1].at, at, pen.palette->ink, 1.2f);
      pen.dl->AddCircleFilled(at, handle_px + 1, pen.palette->raised);
      pen.dl->AddCircle(at, handle_px + 1, pen.palette->ink, 0, 1.6f);
    } else {
      pen.dl->AddRectFilled({at.x - handle_px, at.y - handle_px}, {at.x + handle_px, at.y + handle_px}, pen.palette->raised, 1);
      pen.dl->AddRect({at.x - handle_px, at.y - handle_px}, {at.x + handle_px, at.y + handle_px}, pen.palette->ink, 1, 0, 1.6f);
    }
  }
}

bool follow_piece_pointer(Ui& ui, const Look& look, const PieceStage& stage, bool hovered, PieceEdit& mine, Actions& out) {
  const ImVec2 pointer = ImGui::GetIO().MousePos;
  if (mine.hold_next != PieceEdit::Hold::none && mine.hold_above == stage.above) {
    begin_drag(look, stage, Grip::move, mine.hold_from, mine);
    mine.drag->name = mine.hold_name;
    if (mine.hold_next == PieceEdit::Hold::put && !mine.drag->pieces.empty()) {
      const Vec at = stage.place(mine.hold_from);
      mine.drag->pieces.front().x_cm = at.x;
      if (stage.above) mine.drag->pieces.front().z_cm = at.y;
    }
    // What came from the shelf is in the plan now and stays under the pointer.
    mine.drag->moved = mine.hold_next == PieceEdit::Hold::put;
    mine.hold_next = PieceEdit::Hold::none;
  }
  if (mine.drag) {
    if (mine.drag->above != stage.above) return true;
    go_on_dragging(look, stage, pointer, mine, out);
    return true;
  }
  if (!look.piece_in_hand.empty()) {
    const bool over = stage.glass.has(pointer.x, pointer.y);
    if (over) {
      const Vec at = stage.place(pointer);
      const double z_cm = stage.above ? static_cast<double>(at.y) : inside_width_cm(look.plan.tank) / 2;
      const PutPiece put{usual_piece_at(look.plan, look.piece_in_hand, static_cast<double>(at.x), z_cm)};
      out.push_back(EditPlan{apply(look.plan, put, look.catalog), name_of(put, look.plan, look.catalog),
                             "drag " + std::to_string(mine.drags + 1)});
      out.push_back(ChoosePieces{{look.plan.pieces.size()}});
      out.push_back(HoldPiece{});
      mine.hold_next = PieceEdit::Hold::put;
      mine.hold_above = stage.above;
      mine.hold_from = pointer;
      mine.hold_name = name_of(put, look.plan, look.catalog);
    }
    return over;
  }
  if (!hovered) return false;
  if (const auto grip = handle_at(look, stage, pointer, ui.touch)) {
    platform::set_cursor(platform::Cursor::grab);
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) begin_drag(look, stage, *grip, pointer, mine);
    return true;
  }
  const std::optional<std::size_t> under = piece_at(stage, pointer);
  if (!under) {
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left) && !look.chosen_pieces.empty()) out.push_back(ChoosePieces{});
    return false;
  }
  platform::set_cursor(platform::Cursor::grab);
  if (!ImGui::IsMouseClicked(ImGuiMouseButton_Left)) return true;
  std::vector<std::size_t> chosen = look.chosen_pieces;
  const auto known = std::find(chosen.begin(), chosen.end(), *under);
  if (ImGui::GetIO().KeyShift) {
    if (known == chosen.end())
      chosen.push_back(*under);
    else
      chosen.erase(known);
    out.push_back(ChoosePieces{chosen});
    return true;
  }
  if (known == chosen.end()) {
    out.push_back(ChoosePieces{{*under}});
    mine.hold_next = PieceEdit::Hold::chosen;
    mine.hold_above = stage.above;
    mine.hold_from = pointer;
    mine.hold_name.clear();
    platform::wake(2);
    return true;
  }
  begin_drag(look, stage, Grip::move, pointer, mine);
  return true;
}

void read_piece_keys(const Look& look, Actions& out) {
  if (look.chosen_pieces.empty() || look.held) return;
  // Arrows move the piece, not the keyboard's ring.
  for (const ImGuiKey key : {ImGuiKey_LeftArrow, ImGuiKey_RightArrow, ImGuiKey_UpArrow, ImGuiKey_DownArrow})
    ImGui::SetKeyOwner(key, ImGui::GetID("pieces"));
  const ImGuiIO& io = ImGui::GetIO();
  if (io.KeyCtrl || io.KeySuper || ImGui::IsPopupOpen("", ImGuiPopupFlags_AnyPopup)) return;
  const auto pressed = [](ImGuiKey key) { return ImGui::IsKeyPressed(key, ImGuiInputFlags_Repeat, ImGui::GetID("pieces")); };
  const double far = io.KeyShift ? 5 : io.KeyAlt ? 0.1 : 1;
  Shift shift;
  if (pressed(ImGuiKey_LeftArrow)) shift.x_cm = -far;
  if (pressed(ImGuiKey_RightArrow)) shift.x_cm = far;
  if (pressed(ImGuiKey_UpArrow)) shift.z_cm = far;
  if (pressed(ImGuiKey_DownArrow)) shift.z_cm = -far;
  if (ImGui::IsKeyPressed(ImGuiKey_PageUp)) shift.up_cm = far;
  if (ImGui::IsKeyPressed(ImGuiKey_PageDown)) shift.up_cm = -far;
  if (shift.x_cm != 0 || shift.z_cm != 0 || shift.up_cm != 0)
    change_chosen(look, "arrows", out, [&](const Piece& piece) { return shifted(look.plan, piece, shift, Snap::none); });
  if (ImGui::IsKeyPressed(ImGuiKey_R, false))
    change_chosen(look, "turn", out, [&](const Piece& piece) { return turned(piece, io.KeyShift ? -15 : 15); });
  if (ImGui::IsKeyPressed(ImGuiKey_M, false)) change_chosen(look, "", out, mirrored);
  if (ImGui::IsKeyPressed(ImGuiKey_D, false)) put_again(look, out);
  if (ImGui::IsKeyPressed(ImGuiKey_Delete, false) || ImGui::IsKeyPressed(ImGuiKey_Backspace, false)) take_out_chosen(look, out);
  if (ImGui::IsKeyPressed(ImGuiKey_Escape, false)) out.push_back(ChoosePieces{});
}

void draw_piece_bar(Ui& ui, const Look& look, const Box& box, Actions& out) {
  const Pen pen = pen_of(ui);
  draw_panel(pen, box, pen.palette->panel, 0, 0);
  draw_rule(pen, box.x, box.y, box.right(), pen.palette->line);
  const std::vector<Piece> pieces = chosen_of(look);
  if (pieces.empty()) return;
  const bool locked = is_locked(look.plan, look.chosen_pieces.front());
  const ButtonLook small{.kind = ButtonKind::quiet, .small = true, .enabled = !locked};
  float right = box.right() - 12;
  const float y = box.y + (box.h - 26) / 2;
  const auto press = [&](const char* id, const char* words, const char* tip, bool enabled) {
    ButtonLook one = small;
    one.enabled = enabled;
    one.tooltip = tip;
    const float width = button_width(ui, words, one);
    right -= width;
    return button(ui, id, {right, y}, words, one).pressed;
  };
  // From the right, so that what matters least gives way to the name.
  if (press("piece.out", "Take out", "Delete", !locked)) take_out_chosen(look, out);
  if (press("piece.lock", locked ? "Unlock" : "Lock", locked ? "Let it be moved again" : "Nothing moves it, no remedy either",
            true))
    turn_lock(look, out);
  if (press("piece.again", "Copy", "D", true)) put_again(look, out);
  if (press("piece.lower", "Lower", "Page down: 1 cm", !locked))
    change_chosen(look, "height", out, [&](const Piece& piece) { return shifted(look.plan, piece, {0, 0, -1}, Snap::none); });
  if (press("piece.raise", "Raise", "Page up: 1 cm", !locked))
    change_chosen(look, "height", out, [&](const Piece& piece) { return shifted(look.plan, piece, {0, 0, 1}, Snap::none); });
  if (press("piece.mirror", "Mirror", "M", !locked)) change_chosen(look, "", out, mirrored);
  if (press("piece.turn", "Turn", "R: 15° to the left, Shift R to the right", !locked))
    change_chosen(look, "turn", out, [](const Piece& piece) { return turned(piece, 15); });
  const float room = right - box.x - 24;
  if (room < 40) return;
  float x = box.x + 16;
  const float middle = box.y + box.h / 2;
  if (pieces.size() == 1) {
    draw_letter(pen, piece_letter(static_cast<int>(look.chosen_pieces.front())), {x + 8, middle});
    x += 22;
  }
  const Piece& one = pieces.front();
  const std::string name = pieces.size() > 1 ? std::to_string(pieces.size()) + " pieces" : piece_name(one.kind);
  std::string words = name;
  if (pieces.size() == 1) {
    const auto figure = [&](double cm) { return short_text(look.measures.length_out(cm), 1); };
    words += ", " + figure(one.length_cm) + " × " + figure(one.depth_cm) + " × " + look.measures.length(one.height_cm);
    if (one.base_cm > 0.05) words += ", " + look.measures.length(one.base_cm) + " up";
  }
  draw_text(pen, type::small, {x, middle - type::small.line / 2}, pen.palette->ink,
            elided(pen, type::small, words, right - x - 8));
}

}  // namespace shoalwright
