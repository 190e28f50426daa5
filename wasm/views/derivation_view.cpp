// SPDX-License-Identifier: MIT
#include "views/derivation_view.h"

#include "app/retold.h"
#include "draw/geometry.h"

namespace shoalwright {

void draw_derivation(Pane& pane, Number number) {
  const std::optional<Derivation> told = derivation_of(number, pane.look.shown, pane.look.catalog, pane.shown.assessment);
  if (!told) return;
  const Pen pen = pen_of(pane.ui);
  const Palette& p = *pane.ui.palette;
  const Measures& measures = pane.look.measures;
  const float top = pane.y, x = pane.x + 10, w = pane.w - 10;
  const auto words = [&](Type face, ImU32 ink, const std::string& text) {
    pane.y += draw_wrapped(pen, face, {x, pane.y}, w, ink, text) + 3;
  };
  const bool nitrate = number == Number::nitrate_peak || number == Number::change_needed;
  words(medium(type::small), p.ink, told->formula);
  for (const Derivation::Input& input : told->inputs) {
    const Hardness hardness = input.name.find("KH") != std::string::npos ? Hardness::kh : Hardness::gh;
    const std::string value =
        retold(measures, input.value, {nitrate || input.name.find("itrate") != std::string::npos, hardness});
    const float room = w - text_width(pen, type::small, value) - 10;
    draw_text(pen, type::small, {x, pane.y}, p.ink2, elided(pen, type::small, input.name, room));
    draw_text(pen, type::small, {x + w, pane.y}, p.ink, value, Align::right);
    pane.y += 17;
  }
  pane.y += 2;
  words(type::small, p.ink2, retold(measures, told->validity, {nitrate, Hardness::kh}));
  words(type::small, p.ink3, told->source);
  draw_rule_down(pen, pane.x + 2, top, pane.y - 3, p.line);
  pane.y += 5;
}

}  // namespace shoalwright
