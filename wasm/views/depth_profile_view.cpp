// SPDX-License-Identifier: MIT
#include "views/depth_profile_view.h"

#include <algorithm>
#include <cmath>

#include "draw/marks.h"
#include "units/text.h"
#include "views/tank_picture.h"

namespace shoalwright {

void update_pictures(const Look& look, const std::vector<Kept>& stock, Theme theme, TankState& mine) {
  update(mine.scene, scene_of(look.shown, theme));
  if (mine.profile.depth_cm.empty() || !(mine.profiled == look.shown) || !(mine.profiled_before == look.plan)) {
    const int held_number = look.held && !look.held->in_plan ? look.held->number : 0;
    mine.profile = profile_picture(look.shown, stock, look.shown_bodies, look.is_previewing() ? &look.plan : nullptr,
                                   look.catalog, held_number);
    mine.profiled = look.shown;
    mine.profiled_before = look.plan;
  }
}

void draw_profile(Ui& ui, const Look& look, const Box& box, float water_y, float px_per_cm, const ProfilePicture& profile) {
  const Pen pen = pen_of(ui);
  const float head = box.y + 8;
  draw_text(pen, semibold(type::small), {box.x, head}, pen.palette->ink, "Crowding by depth");
  float x = box.x;
  const float y = head + 22;
  draw_panel(pen, {x, y + 1, 11, 11}, pen.palette->band, pen.palette->bandEdge, 1);
  x += 15 + draw_text(pen, type::axis, {x + 15, y}, pen.palette->ink2, "open");
  for (int key = 1; key <= 4; ++key)
    pen.dl->AddRectFilled({x + 6 + float(key) * 3, y + 1}, {x + 9 + float(key) * 3, y + 12}, key_colour(*pen.palette, key));
  draw_text(pen, type::axis, {x + 26, y}, pen.palette->ink2, "wanted");
  if (profile.depth_cm.empty()) return;

  const float top_l_cm = std::max(1.0f, profile_top_l_cm(profile));
  const float width = box.w - 44;
  const ProfileView view{box.x + 2, water_y, px_per_cm, width / top_l_cm};
  pen.dl->PushClipRect({box.x - 8, y + 16}, {box.right(), box.bottom()},
                       true);  // a tank that is looked at from near reaches beyond
  const ProfileLayout layout = draw_depth_profile(pen.dl, profile, view, *pen.palette);
  for (const ProfileLayout::Disc& disc : layout.discs) draw_plate(pen, disc.key, disc.at, 7);

  const float axis_y = layout.bottom_y + 6;
  const int step = top_l_cm > 12 ? 5 : top_l_cm > 6 ? 2 : 1;
  for (int value = 0; float(value) <= top_l_cm + 0.01f; value += step)
    draw_text(pen, type::axis, {view.x + float(value) * view.px_per_l_cm, axis_y}, pen.palette->ink3, fixed_text(value, 0),
              Align::centre);
  // Below the figures where there is room, else behind the last of them.
  if (axis_y + 15 + type::axis.line <= box.bottom())
    draw_text(pen, type::axis, {view.x, axis_y + 15}, pen.palette->ink3,
              look.measures.us ? "L/cm (metric) of depth" : "L per cm of depth");
  else
    draw_text(pen, type::axis, {box.right() - 2, axis_y}, pen.palette->ink3, "L/cm", Align::right);

  if (profile.tightest < 0) {
    pen.dl->PopClipRect();
    return;
  }
  const bool over = layout.spare_l_cm < 0;
  const float right = std::max(layout.tightest_to.x, layout.tightest_from.x);
  if (over) {
    draw_tip(pen, {std::min(right + 4, box.right() - 4), layout.tightest_to.y + 8},
             fixed_text(-double(layout.spare_l_cm), 1) + " L/cm over", pen.palette->call, pen.palette->call, Align::right);
  } else {
    draw_dimension(pen, layout.tightest_from, layout.tightest_to, pen.palette->ink);
    draw_text(pen, medium(type::small), {right + 5, layout.tightest_to.y - 8}, pen.palette->ink,
              fixed_text(double(layout.spare_l_cm), 1));
  }
  pen.dl->PopClipRect();
}

}  // namespace shoalwright
