// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/marks.h"
#include "draw/panels.h"
#include "tank/volume.h"
#include "units/text.h"
#include "views/tank_view.h"

namespace shoalwright {

namespace {

/// The run of the empty tank as a strip, along its middle.
void draw_lane_strip(const Pen& pen, const Look& look, const Scene& scene, const PlanView& view) {
  const double lane_cm = look.shown_assessment.room.layers[1].lane_cm;
  const double length_cm = inside_length_cm(look.shown.tank), width_cm = inside_width_cm(look.shown.tank);
  if (!(lane_cm > 0) || lane_cm > length_cm + 0.5) return;
  const double x0 = (length_cm - lane_cm) / 2, z = width_cm * 0.42, half = std::min(3.0, width_cm / 6);
  const ImVec2 from = plan_point(view, scene, x0, z + half), to = plan_point(view, scene, x0 + lane_cm, z - half);
  pen.dl->AddRectFilled(from, to, with_alpha(pen.palette->raised, 0.35f));
  dashed_rect(pen.dl, from, to, dash_edge_drop(), pen.palette->ink, 1.2f);
  const float y = (from.y + to.y) / 2;
  draw_dimension(pen, {from.x, y}, {to.x, y}, pen.palette->ink, 1.5f);
  draw_tip(pen, {(from.x + to.x) / 2, y - 10}, look.measures.length(lane_cm) + " run", pen.palette->edge, pen.palette->ink,
           Align::centre);
}

/// The letter of each piece at its middle, or beside a letter that stands there already.
void draw_letters(const Pen& pen, const Scene& scene, const PlanView& view) {
  constexpr float size = 15;
  std::vector<ImVec2> taken;
  for (std::size_t i = 0; i < scene.pieces.size(); ++i) {
    if (!scene.pieces[i].x_cm) continue;
    const Extent extent = plan_extent(scene, scene.pieces[i]);
    const ImVec2 middle = plan_point(view, scene, (extent.x0 + extent.x1) / 2, (extent.y0 + extent.y1) / 2);
    draw_letter(pen, piece_letter(static_cast<int>(i)), free_place(taken, middle, size + 2), size);
  }
}

}  // namespace

void draw_tank_above(Ui& ui, const Look& look, const Box& box, TankState& mine, Actions&) {
  const Pen pen = pen_of(ui);
  const Scene& scene = mine.scene.built_for;
  Box rest = box.inset(16, 12);
  const Box head = rest.cut_top(26);
  const float width = draw_text(pen, semibold(type::lead), {head.x, head.y}, pen.palette->ink, "From above");
  if (box.w > 230) draw_text(pen, type::small, {head.x + width + 8, head.y + 3}, pen.palette->ink2, "front glass at the bottom");
  rest.cut_bottom(18);
  const Vec size = plan_size_cm(scene);
  if (!(size.x > 0 && size.y > 0) || rest.h < 20) return;
  const float px = std::min(rest.w / size.x, rest.h / size.y);
  const PlanView view{{std::floor(rest.x), std::floor(rest.y)}, px};
  pen.dl->PushClipRect(box.min(), box.max(), true);
  draw_plan_view(pen.dl, mine.scene, view);
  if (look.preferences.show_lane) draw_lane_strip(pen, look, scene, view);
  if (look.preferences.show_numbers) draw_letters(pen, scene, view);
  pen.dl->PopClipRect();
  add_spot(ui, "tank.above", {view.corner.x, view.corner.y, px * size.x, px * size.y}, "The tank from above");
  const float foot = view.corner.y + px * size.y + 3;
  draw_text(pen, type::axis, {view.corner.x, foot}, pen.palette->ink3, "0");
  draw_text(pen, type::axis, {view.corner.x + px * size.x, foot}, pen.palette->ink3,
            look.measures.length(inside_length_cm(look.shown.tank)) + " inside", Align::right);
}

}  // namespace shoalwright
