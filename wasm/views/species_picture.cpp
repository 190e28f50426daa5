// SPDX-License-Identifier: MIT
#include <algorithm>

#include "draw/marks.h"
#include "tank/volume.h"
#include "views/species_desk.h"

namespace shoalwright {

namespace {

struct Figure {
  double cm = 0;
  const char* words = "";
};

/// An animal with its length under it.
void draw_figure(SpeciesDesk& desk, const Animal& animal, const Figure& figure, ImVec2 centre, float px_a_cm, const Box& tank) {
  const Pen pen = pen_of(desk.ui);
  const float length_px = static_cast<float>(figure.cm) * px_a_cm;
  draw_animal(pen.dl, animal, centre, length_px, -1, 0);
  const Reach reach = reach_of(animal);
  const float y = snapped(pen, std::min(centre.y + std::max(reach.below * length_px, 3.0f) + 6, tank.bottom() - 26));
  draw_dimension(pen, {centre.x - length_px / 2, y}, {centre.x + length_px / 2, y}, desk.ui.palette->ink);
  const std::string words = figure.words + desk.look.measures.length(figure.cm);
  const float half = text_width(pen, type::small, words) / 2 + 8;
  const float x = std::clamp(centre.x, tank.x + half, std::max(tank.x + half, tank.right() - half));
  draw_tip(pen, {x, y + 5}, words, desk.ui.palette->edge, desk.ui.palette->ink, Align::centre);
}

}  // namespace

void draw_species_picture(SpeciesDesk& desk, Stack& stack, float most_height) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const Plan& plan = desk.look.plan;
  const Animal& animal = desk.look.animals.get(desk.species.id, desk.species.look);
  const double adult_cm = desk.species.size.adult_tl_cm, sold_cm = desk.species.size.sold_cm.value_or(0);
  const double length_cm = inside_length_cm(plan.tank), height_cm = plan.tank.height_cm;
  const Reach reach = reach_of(animal);
  // An animal that is longer than the tank, or taller, makes the tank smaller.
  const double most_cm = std::max({length_cm, adult_cm * 1.05}),
               high_cm = std::max(height_cm, adult_cm * static_cast<double>(reach.above + reach.below) * 1.4);
  const float px_a_cm = std::min(stack.box.w / static_cast<float>(most_cm), (most_height - 18) / static_cast<float>(high_cm));
  const auto px = [&](double cm) { return static_cast<float>(cm) * px_a_cm; };
  const Box whole = stack.take(std::ceil(std::max(px(high_cm), 90.0f)));
  const Box tank{snapped(pen, whole.x + (whole.w - px(length_cm)) / 2), snapped(pen, whole.bottom() - px(height_cm)),
                 px(length_cm), px(height_cm)};
  const float water = tank.bottom() - px(std::min(plan.tank.fill_cm, height_cm));
  pen.dl->AddRectFilledMultiColor({tank.x, water}, tank.max(), p.waterTop, p.waterTop, p.waterBot, p.waterBot);
  const double bed_cm = plan.substrate.kind == SubstrateKind::bare ? 0 : std::max(plan.substrate.front_cm, 0.0);
  const float floor = tank.bottom() - px(std::min(bed_cm, plan.tank.fill_cm));
  if (floor < tank.bottom()) pen.dl->AddRectFilled({tank.x, floor}, tank.max(), p.sandF);
  pen.dl->AddLine({tank.x, water}, {tank.right(), water}, p.glassEdge, 1);
  for (const float x : {tank.x, tank.right()}) pen.dl->AddLine({x, tank.y}, {x, tank.bottom()}, p.glassEdge, 2);
  pen.dl->AddLine({tank.x - 1, tank.bottom()}, {tank.right() + 1, tank.bottom()}, p.glassEdge, 2);

  // Where it swims most, in thirds of the water.
  const std::array<double, 3>& depth = desk.species.life.depth;
  const std::size_t third = static_cast<std::size_t>(std::max_element(depth.begin(), depth.end()) - depth.begin());
  const float open = std::max(floor - water, 1.0f), down = std::max(reach.below * px(adult_cm), 3.0f) + 30;
  const float y = std::clamp(water + open * (0.2f + 0.3f * static_cast<float>(third)), tank.y + 4,
                             std::max(tank.y + 4, tank.bottom() - down));
  const bool two = sold_cm > 0;
  const float share = two ? 0.36f : 0.5f, x = whole.x + whole.w / 2 + (share - 0.5f) * std::max(tank.w, px(adult_cm));
  draw_figure(desk, animal, {adult_cm, two ? "grown " : ""}, {x, y}, px_a_cm, whole);
  if (two) {
    const float apart = std::max(px(adult_cm + sold_cm) / 2 + 24, tank.w * 0.38f);
    draw_figure(desk, animal, {sold_cm, "sold "}, {std::min(x + apart, whole.right() - px(sold_cm) / 2 - 4), y}, px_a_cm, whole);
  }
  const Measures& m = desk.look.measures;
  const std::string tank_words =
      "This tank, " + m.length(length_cm) + " long and " + m.length(height_cm) + " high inside, to scale";
  draw_text(pen, type::axis, {whole.x + whole.w / 2, whole.bottom() + 3}, p.ink2, elided(pen, type::axis, tank_words, whole.w),
            Align::centre);
  stack.skip(18);
  add_spot(desk.ui, "species.picture", {whole.x, whole.y, whole.w, whole.h + 18},
           "Grown " + m.length(adult_cm) + (two ? ", when sold " + m.length(sold_cm) : "") + ". " + tank_words);
}

}  // namespace shoalwright
