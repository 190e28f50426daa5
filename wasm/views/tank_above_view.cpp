// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/marks.h"
#include "draw/panels.h"
#include "tank/volume.h"
#include "units/text.h"
#include "views/stock_words.h"
#include "views/tank_view.h"

namespace shoalwright {

namespace {

/// The lane where it is, as a strip along its way. Its words go beside the letters, and are one more place taken.
void draw_lane_strip(const Pen& pen, const Look& look, const Scene& scene, const PlanView& view, std::vector<ImVec2>& taken) {
  const GroupRoom* tight = tightest_lane(look.shown_assessment.room);
  const Lane& lane = shown_lane(look.shown_assessment.room);
  if (!(lane.cm > 0) || lane.path.size() < 2) return;
  std::vector<ImVec2> way;
  for (const Point& p : lane.path) way.push_back(plan_point(view, scene, p.x_cm, p.z_cm));
  const bool is_short = tight && tight->lane_cm < tight->lane_needed_cm;
  const ImU32 ink = is_short ? pen.palette->call : pen.palette->ink;
  const float wide = std::clamp(4.0f * view.px_per_cm, 8.0f, 26.0f);
  const ImU32 strip = with_alpha(pen.palette->raised, 0.4f);
  ImVec2 middle{(way.front().x + way.back().x) / 2, (way.front().y + way.back().y) / 2};
  if (lane.circuit) {
    way.push_back(way.front());
    pen.dl->AddPolyline(way.data(), static_cast<int>(way.size()), strip, 0, wide);
    dashed_line(pen.dl, way, dash_edge_drop(), ink, 1.4f);
    middle = way[way.size() / 2];
  } else {
    pen.dl->AddLine(way[0], way[1], strip, wide);
    const float dx = way[1].x - way[0].x, dy = way[1].y - way[0].y, length = std::max(std::hypot(dx, dy), 1.0f);
    const ImVec2 across{-dy / length * wide / 2, dx / length * wide / 2};
    const std::vector<ImVec2> rim = {{way[0].x + across.x, way[0].y + across.y},
                                     {way[1].x + across.x, way[1].y + across.y},
                                     {way[1].x - across.x, way[1].y - across.y},
                                     {way[0].x - across.x, way[0].y - across.y},
                                     {way[0].x + across.x, way[0].y + across.y}};
    dashed_line(pen.dl, rim, dash_edge_drop(), ink, 1.2f);
    pen.dl->AddLine(way[0], way[1], ink, 1.5f);
    for (const ImVec2 end : way)
      pen.dl->AddLine({end.x + across.x, end.y + across.y}, {end.x - across.x, end.y - across.y}, ink, 1.5f);
  }
  if (!lane.circuit)
    for (const float share : {0.5f, 0.35f, 0.65f, 0.22f, 0.78f}) {
      const ImVec2 at{way[0].x + (way[1].x - way[0].x) * share, way[0].y + (way[1].y - way[0].y) * share};
      if (std::any_of(taken.begin(), taken.end(),
                      [&](const ImVec2& one) { return std::abs(one.x - at.x) < 52 && std::abs(one.y - at.y) < 18; }))
        continue;
      middle = at;
      break;
    }
  const std::string words = look.measures.length(lane.cm) + (lane.circuit ? ", half the way round" : " run");
  draw_tip(pen, {middle.x, middle.y - 10}, words, is_short ? pen.palette->call : pen.palette->edge, ink, Align::centre);
  take_for_words(pen, words, middle, taken);
}

constexpr float letter_size = 15;

/// Where the letter of each piece stands: at its middle, or beside a letter that stands there already.
std::vector<ImVec2> letters_of(const Scene& scene, const PlanView& view) {
  std::vector<ImVec2> taken, letters;
  for (const Piece& piece : scene.pieces) {
    const Extent extent = plan_extent(scene, piece);
    const ImVec2 middle = plan_point(view, scene, (extent.x0 + extent.x1) / 2, (extent.y0 + extent.y1) / 2);
    letters.push_back(free_place(taken, middle, letter_size + 2));
  }
  return letters;
}

}  // namespace

void draw_tank_above(Ui& ui, const Look& look, const Box& box, TankState& mine, Actions& out) {
  const Pen pen = pen_of(ui);
  const Scene& scene = mine.scene.built_for;
  Box rest = box.inset(16, 12);
  const Box head = rest.cut_top(26);
  const float width = draw_text(pen, semibold(type::lead), {head.x, head.y}, pen.palette->ink, "From above");
  if (box.w > 230) draw_text(pen, type::small, {head.x + width + 8, head.y + 3}, pen.palette->ink2, "front glass at the bottom");
  rest.cut_bottom(18);
  const Vec size = plan_size_cm(scene);
  if (!(size.x > 0 && size.y > 0) || rest.h < 20) return;
  float px = std::min(rest.w / size.x, rest.h / size.y);
  ImVec2 corner{std::floor(rest.x), std::floor(rest.y)};
  const Box area{rest.x, rest.y, px * size.x, px * size.y};
  apply_zoom(mine.zoom_above, area, corner, px);
  const PlanView view{corner, px};
  pen.dl->PushClipRect(area.min(), {area.right() + 1, area.bottom() + 1}, true);
  draw_plan_view(pen.dl, mine.scene, view);
  const ImVec2 back_left = plan_point(view, scene, 0, inside_width_cm(look.shown.tank)),
               front_right = plan_point(view, scene, inside_length_cm(look.shown.tank), 0);
  const OverlayStage overlay{
      true, back_left, px, {back_left.x, back_left.y, front_right.x - back_left.x, front_right.y - back_left.y}};
  if (look.spread.version > 0) draw_overlay(pen, look, overlay, mine.overlay_above);
  const std::vector<ImVec2> letters = look.preferences.show_numbers ? letters_of(scene, view) : std::vector<ImVec2>();
  std::vector<ImVec2> taken = letters;
  if (look.preferences.show_lane) draw_lane_strip(pen, look, scene, view, taken);
  for (std::size_t i = 0; i < letters.size(); ++i) draw_letter(pen, piece_letter(static_cast<int>(i)), letters[i], letter_size);
  const Box glass{view.corner.x, view.corner.y, px * size.x, px * size.y};
  const PieceStage pieces{scene, true, {}, view, glass};
  if (look.spread.version > 0) draw_overlay_words(pen, look, overlay, mine.overlay_above, taken);
  draw_chosen(pen, look, pieces);
  pen.dl->PopClipRect();
  const Item tank = item(ui, "tank.above", area, "The tank from above", {.ring = Ring::inside, .allow_over = true});
  if (tank.ring) draw_ring(ui, area, {.ring = Ring::inside});
  add_piece_spots(ui, pieces);
  const bool at_piece = look.held || follow_piece_pointer(ui, look, pieces, tank.hovered, mine.pieces, out);
  if (!look.held && !mine.pieces.drag && tank.hovered && !mine.zoom_above.pans)
    follow_spot(ui, look, overlay, mine.rest_above, out);
  follow_zoom(ui, mine.zoom_above, "above", area, tank.hovered, !at_piece, false);
  // What is to be bought, in the room that the drawing leaves below it.
  const float below = area.bottom() + 22;
  if (const int lines = static_cast<int>((box.bottom() - 4 - below) / type::axis.line); lines > 0)
    draw_wrapped(pen, type::axis, {rest.x, below}, rest.w, pen.palette->ink2, materials_words(look), lines);
  if (mine.zoom_above.times > 1) return;
  const float foot = view.corner.y + px * size.y + 3;
  draw_text(pen, type::axis, {view.corner.x, foot}, pen.palette->ink3, "0");
  draw_text(pen, type::axis, {view.corner.x + px * size.x, foot}, pen.palette->ink3,
            look.measures.length(inside_length_cm(look.shown.tank)) + " inside", Align::right);
}

}  // namespace shoalwright
