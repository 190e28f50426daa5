// SPDX-License-Identifier: MIT
#include "views/years_view.h"

#include <array>
#include <cmath>

#include "draw/chips.h"

namespace shoalwright {

float draw_years(Ui& ui, const Look& look, const Box& box, Actions& out) {
  constexpr Age ages[] = {Age::bought, Age::half_year, Age::grown, Age::old};
  constexpr std::array<std::string_view, 4> words = {"Bought", "6 months", "Grown", "Old"};
  const Pen pen = pen_of(ui);
  constexpr std::string_view heading = "Years";
  const float own = segments_width(ui, words), name = text_width(pen, medium(type::small), heading) + 10;
  const bool named = own + name <= box.w;
  const float width = own <= box.w ? 0 : std::floor(box.w / 4);
  const float used = width > 0 ? box.w : own;
  const ImVec2 at{box.right() - used, box.y + std::floor((box.h - 26) / 2)};
  if (named) draw_text(pen, medium(type::small), {at.x - name, at.y + 5}, ui.palette->ink2, heading);
  int now = 0;
  while (ages[now] != look.age) ++now;
  if (const int picked = one_of(ui, "years", at, words, now, width); picked >= 0) out.push_back(ShowAge{ages[picked], at_age});
  return used + (named ? name : 0);
}

}  // namespace shoalwright
