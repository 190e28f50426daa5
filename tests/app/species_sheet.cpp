// SPDX-License-Identifier: MIT
#include "app/species_sheet.h"

#include <algorithm>

#include "app/easel.h"
#include "draw/fish/animal.h"

namespace shoalwright {

Picture species_sheet(const std::vector<SheetAnimal>& animals, const std::string& title, Theme theme, int columns) {
  constexpr float wide = 196, high = 140, head = 30, outline_px = 36;
  const Palette& c = palette(theme);
  const int rows = (static_cast<int>(animals.size()) + columns - 1) / columns;
  const ImU32 water = mix(c.waterMid, c.waterTop, 0.3f);
  Easel easel(columns * static_cast<int>(wide), rows * static_cast<int>(high) + static_cast<int>(head), c.panel);
  return easel.paint(
      [&](ImDrawList* list) {
        const Pen pen{list, &c, &easel.faces(), 1.5f};
        draw_text_on(pen, semibold(type::body), {10, 20}, c.ink, title);
        for (size_t i = 0; i < animals.size(); ++i) {
          const Animal animal{animal_look(animals[i].look), {}, {}, {}};
          const auto k = static_cast<int>(i);
          const float x = wide * static_cast<float>(k % columns), y = head + high * static_cast<float>(k / columns);
          list->AddRectFilled({x + 3, y + 3}, {x + wide - 3, y + 104}, water, 5);
          const Reach reach = reach_of(animal);
          const float length = std::min({150.0f, (wide - 22) / (reach.left + reach.right), 94 / (reach.above + reach.below)});
          draw_animal(list, animal,
                      {x + wide / 2 + (reach.left - reach.right) / 2 * length, y + 53 + (reach.above - reach.below) / 2 * length},
                      length, -1, 0);
          const float small = std::min({outline_px, 48 / (reach.left + reach.right), 28 / (reach.above + reach.below)});
          draw_silhouette(list, animal,
                          {x + 29 + (reach.left - reach.right) / 2 * small, y + 121 + (reach.above - reach.below) / 2 * small},
                          small, c.ink, c.panel);
          draw_text_on(pen, type::axis, {x + 58, y + 118}, c.ink, elided(pen, type::axis, animals[i].name, wide - 64));
          draw_text_on(pen, type::axis, {x + 58, y + 132}, c.ink3, animals[i].number);
        }
      },
      1.5f);
}

}  // namespace shoalwright
