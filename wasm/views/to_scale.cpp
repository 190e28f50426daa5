// SPDX-License-Identifier: MIT
// The two that a finding is about, drawn to one scale, with the mouth of the one against the body of the other.
#include <algorithm>
#include <cmath>
#include <string>

#include "advice/confrontation.h"
#include "draw/fish/animal.h"
#include "draw/marks.h"
#include "views/pane.h"

namespace shoalwright {

namespace {

constexpr float fish_height = 116, words_line = 16;

struct Drawn {
  const Animal* animal = nullptr;
  float length = 0;  ///< px
  Reach reach;
};

Drawn drawn(const Look& look, const Species& species, float px_a_cm) {
  Drawn one{&look.animals.get(species.id, species.look), static_cast<float>(species.size.adult_tl_cm) * px_a_cm, {}};
  one.reach = reach_of(*one.animal);
  return one;
}

float above(const Drawn& one) { return one.reach.above * one.length; }
float below(const Drawn& one) { return one.reach.below * one.length; }

/// The longest of 1, 2, 5, 10, … cm (or inches) that is no longer than `px`.
double bar_cm(float px, float px_a_cm, const Measures& measures) {
  const double unit_cm = 1 / measures.length_out(1.0);
  double best = 0.5 * unit_cm;
  for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0})
    if (step * unit_cm * static_cast<double>(px_a_cm) <= static_cast<double>(px)) best = step * unit_cm;
  return best;
}

/// "13 cm long, its mouth opens about 1.6 cm" and "4 cm long, 1 cm deep".
std::string words_of(const Measures& m, const Confrontation& both, bool doer) {
  const Species& species = doer ? *both.doer : *both.other;
  std::string words = m.length(species.size.adult_tl_cm) + " long";
  if (!both.opens_cm) return words;
  return words + (doer ? ", its mouth opens about " + m.length(*both.opens_cm) : ", " + m.length(*both.deep_cm) + " deep");
}

}  // namespace

void draw_to_scale(Pane& pane, const Told& told, const Finding& finding) {
  const std::optional<Confrontation> found = confrontation_of(finding, told.stock);
  if (!found) return;
  const Confrontation& both = *found;
  constexpr float indent = 23, height = fish_height + 2 * words_line + 28;
  const Box box{pane.x + indent, pane.y, pane.w - indent, height};
  pane.y += height + 10;
  const Pen pen = pen_of(pane.ui);
  const Palette& p = *pane.ui.palette;
  const Measures& m = pane.look.measures;
  draw_panel(pen, box, p.raised, p.line, 3);
  // The animals look at each other, a gap between them for the marks.
  constexpr float gap = 30, air = 10;
  const Drawn whole_doer = drawn(pane.look, *both.doer, 1), whole_other = drawn(pane.look, *both.other, 1);
  const float lengths = whole_doer.length + whole_other.length;
  const float heights = std::max(above(whole_doer) + below(whole_doer), above(whole_other) + below(whole_other));
  const float px_a_cm = std::min((box.w - 2 * air - gap) / (lengths * 1.08f), (fish_height - 10) / heights);
  const Drawn doer = drawn(pane.look, *both.doer, px_a_cm), other = drawn(pane.look, *both.other, px_a_cm);
  const float spare = box.w - 2 * air - gap - doer.length - other.length;
  const float top = std::max(above(doer), above(other));
  const float y = box.y + 6 + top + (fish_height - 10 - heights * px_a_cm) / 2;
  const float nose_doer = box.x + air + spare / 2 + doer.length, nose_other = nose_doer + gap;
  draw_animal(pen.dl, *doer.animal, {nose_doer - doer.length / 2, y}, doer.length, 1, 0);
  draw_animal(pen.dl, *other.animal, {nose_other + other.length / 2, y}, other.length, -1, 0);
  if (both.opens_cm) {
    const auto upright = [&](float x, double cm, ImU32 colour) {
      const float half = static_cast<float>(cm) * px_a_cm / 2;
      draw_dimension(pen, {x, y - half}, {x, y + half}, colour, 1.6f);
    };
    upright(nose_doer + 8, *both.opens_cm, p.ink);
    upright(nose_other - 8, *both.deep_cm, *both.deep_cm <= *both.opens_cm ? p.call : p.ink);
  }
  float line = box.y + fish_height + 4;
  for (const bool of_doer : {true, false}) {
    const Species& species = of_doer ? *both.doer : *both.other;
    draw_plate(pen, plate_of(pane.look, species.id), {snapped(pen, box.x + 16), line + 8});
    draw_text(pen, type::small, {box.x + 30, line}, p.ink, elided(pen, type::small, words_of(m, both, of_doer), box.w - 38));
    line += words_line + 2;
  }
  const double bar = bar_cm(box.w / 4, px_a_cm, m);
  const float bar_px = static_cast<float>(bar) * px_a_cm, bar_y = line + 8;
  draw_dimension(pen, {box.x + 9, bar_y}, {box.x + 9 + bar_px, bar_y}, p.ink2);
  draw_text(pen, type::axis, {box.x + 16 + bar_px, bar_y - 7}, p.ink2, m.length(bar) + ", both grown");
  add_spot(pane.ui, "to_scale/" + both.doer->id + "/" + both.other->id, box,
           "To scale: " + name_of_species(pane.look, both.doer->id) + ", " + words_of(m, both, true) + "; " +
               name_of_species(pane.look, both.other->id) + ", " + words_of(m, both, false));
}

}  // namespace shoalwright
