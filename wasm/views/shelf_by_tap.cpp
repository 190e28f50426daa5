// SPDX-License-Identifier: MIT
#include "views/shelf_by_tap.h"

#include "draw/buttons.h"
#include "draw/panels.h"
#include "platform/platform.h"
#include "units/text.h"

namespace shoalwright {

namespace {

constexpr float edge = 12;

}  // namespace

Plan in_tap_water(const Plan& plan) {
  Plan tap = plan;
  const std::optional<double> warm = plan.water ? plan.water->temperature_c : std::nullopt;
  tap.water.reset();
  if (warm) tap.water.emplace().temperature_c = warm;
  return tap;
}

Box draw_by_tap(Ui& ui, const Look& look, Box box, ShelfState& mine) {
  const Pen pen = pen_of(ui);
  const Box line = box.cut_top(44);
  const ButtonLook back{.kind = ButtonKind::quiet, .small = true};
  const float width = button_width(ui, "By the aim", back);
  draw_panel(pen, {line.x, line.y + 4, line.w, 38}, ui.palette->actSoft, 0, 0);
  const SourceWater& tap = look.plan.source;
  std::string figures;
  const auto add = [&](const char* name, const std::string& figure) {
    figures += (figures.empty() ? "" : ", ") + std::string(name) + " " + figure;
  };
  if (tap.gh_dgh) add("GH", look.measures.hardness_figure(*tap.gh_dgh, Hardness::gh));
  if (tap.kh_dkh) add("KH", look.measures.hardness_figure(*tap.kh_dkh, Hardness::kh));
  if (tap.ph) add("pH", short_text(*tap.ph, 1));
  const float room = line.w - 2 * edge - width - 4;
  draw_text(pen, medium(type::small), {line.x + edge, line.y + 7}, ui.palette->ink,
            elided(pen, medium(type::small), "Judged by your tap", room));
  draw_text(pen, type::small, {line.x + edge, line.y + 23}, ui.palette->ink2, elided(pen, type::small, figures, room));
  add_spot(ui, "shelf.by_tap", line, "Judged by your tap: " + figures);
  if (button(ui, "shelf.by_plan", {line.right() - edge - width + 6, line.y + 10}, "By the aim", back).pressed) {
    mine.by_tap = false;
    platform::wake(2);
  }
  return box;
}

}  // namespace shoalwright
