// SPDX-License-Identifier: MIT
#include <algorithm>
#include <string>

#include "draw/fish/animal.h"
#include "views/species_desk.h"

namespace shoalwright {

namespace {

constexpr float height = 108;

struct Sex {
  const char* word;
  const Animal* animal;
  double cm;
};

/// A female has plain fins: what is drawn out on the picture is the male's.
Sex sex_of(const SpeciesDesk& desk, bool male) {
  const Species& species = desk.species;
  const RestOfCard& rest = desk.mine.worked.rest;
  Species::Look look = species.look;
  const std::vector<std::string>& own = male ? rest.male_colours : rest.female_colours;
  if (!own.empty()) look.colours = own;
  if (!male) look.fins = "plain";
  const char* word = male ? "Male" : "Female";
  const std::optional<double>& cm = male ? species.size.adult_male_cm : species.size.adult_female_cm;
  return {word, &desk.look.animals.get(species.id + "/" + word, look), cm.value_or(species.size.adult_tl_cm)};
}

}  // namespace

void draw_species_sexes(SpeciesDesk& desk, Stack& stack) {
  const RestOfCard& rest = desk.mine.worked.rest;
  if (rest.male_colours.empty() && rest.female_colours.empty()) return;
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  stack.skip(12);
  const Box whole = stack.take(height);
  const Sex sexes[] = {sex_of(desk, true), sex_of(desk, false)};
  constexpr float gap = 8, foot = 24;
  const float wide = (whole.w - gap) / 2;
  float px_a_cm = 1e6f;
  for (const Sex& sex : sexes) {
    const Reach reach = reach_of(*sex.animal);
    const float cm = static_cast<float>(sex.cm);
    px_a_cm = std::min(
        {px_a_cm, (wide - 28) / ((reach.left + reach.right) * cm), (height - foot - 16) / ((reach.above + reach.below) * cm)});
  }
  std::string all;
  for (std::size_t i = 0; i < 2; ++i) {
    const Sex& sex = sexes[i];
    const Box box{whole.x + (wide + gap) * static_cast<float>(i), whole.y, wide, height - foot};
    pen.dl->AddRectFilledMultiColor(box.min(), box.max(), p.waterTop, p.waterTop, p.waterMid, p.waterMid);
    const Reach reach = reach_of(*sex.animal);
    const float length = static_cast<float>(sex.cm) * px_a_cm;
    draw_animal(
        pen.dl, *sex.animal,
        {box.centre().x + (reach.left - reach.right) * length / 2, box.centre().y + (reach.above - reach.below) * length / 2},
        length, -1, 0);
    const std::string words = std::string(sex.word) + ", " + desk.look.measures.length(sex.cm);
    draw_text(pen, type::small, {box.centre().x, box.bottom() + 4}, p.ink2, words, Align::centre);
    all += (all.empty() ? "" : ". ") + words;
  }
  add_spot(desk.ui, "species.sexes", whole, all);
}

}  // namespace shoalwright
