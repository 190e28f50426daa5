// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "app/easel.h"
#include "app/species_sheet.h"
#include "catalog/built_in.h"
#include "catalog/detail/words.h"
#include "draw/fish/animal.h"
#include "draw/fish/shape.h"

namespace shoalwright {
namespace {

constexpr ImU32 paper = rgb(0x9FCBD2);

std::map<std::string, std::vector<const Species*>> by_group() {
  std::map<std::string, std::vector<const Species*>> groups;
  for (const Species& species : built_in().species) groups[species.group].push_back(&species);
  return groups;
}

Animal animal_of(const Species& species) { return Animal{animal_look(species.look), {}, {}, {}}; }

/// Pixels of a picture that are not the colour it was begun with.
int painted(const Picture& picture, ImU32 ground) {
  int count = 0;
  for (int y = 0; y < picture.height; ++y)
    for (int x = 0; x < picture.width; ++x) count += picture.at(x, y) != ground;
  return count;
}

// The contact sheet of the catalogue: open these to see whether an animal looks like itself.
TEST(SpeciesSheet, EveryGroupOnPagesOfItsOwn) {
  constexpr size_t a_page = 42;
  for (const Theme theme : {Theme::light, Theme::dark}) {
    for (const auto& [group, all] : by_group()) {
      for (size_t from = 0; from < all.size(); from += a_page) {
        std::vector<SheetAnimal> page;
        for (size_t i = from; i < std::min(all.size(), from + a_page); ++i)
          page.push_back({all[i]->name.common.front().text, std::to_string(all[i]->code), all[i]->look});
        const std::string number = all.size() > a_page ? "-" + std::to_string(from / a_page + 1) : "";
        const Picture picture = species_sheet(page, group + number, theme, 7);
        keep_shot(picture, "species-" + group + number + (theme == Theme::light ? "-light" : "-dark"));
        EXPECT_GT(painted(picture, palette(theme).panel), 10000) << group;
      }
    }
  }
}

// All of them as small as a tank and a shelf row show them.
TEST(SpeciesSheet, TheWholeCatalogueAtTheSizeOfATankAndOfAShelfRow) {
  constexpr int columns = 24;
  constexpr float wide = 64, high = 46;
  const auto& species = built_in().species;
  const int rows = (static_cast<int>(species.size()) + columns - 1) / columns;
  const auto fit = [](const Animal& animal, float length_px) {
    const Reach reach = reach_of(animal);
    return std::min({length_px, 58 / (reach.left + reach.right), 44 / (reach.above + reach.below)});
  };
  for (const Theme theme : {Theme::light, Theme::dark}) {
    const Palette& c = palette(theme);
    const std::string tone = theme == Theme::light ? "light" : "dark";
    const auto sheet = [&](const std::string& name, ImU32 ground, auto draw) {
      Easel easel(columns * static_cast<int>(wide), rows * static_cast<int>(high), ground);
      const Picture picture = easel.paint([&](ImDrawList* list) {
        for (size_t i = 0; i < species.size(); ++i) {
          const auto k = static_cast<int>(i);
          draw(list, animal_of(species[i]),
               ImVec2{wide * (static_cast<float>(k % columns) + 0.5f), high * (static_cast<float>(k / columns) + 0.5f)});
        }
      });
      keep_shot(picture, name + tone);
      EXPECT_GT(painted(picture, ground), static_cast<int>(species.size()) * 60);
    };
    sheet("species-tank-", mix(c.waterMid, c.waterTop, 0.3f),
          [fit](ImDrawList* list, const Animal& a, ImVec2 at) { draw_animal(list, a, at, fit(a, 44), -1, 0); });
    sheet("species-shelf-", c.panel,
          [&c, fit](ImDrawList* list, const Animal& a, ImVec2 at) { draw_silhouette(list, a, at, fit(a, 36), c.ink, c.panel); });
  }
}

TEST(SpeciesLooks, EveryCardPaintsSomethingAndStaysWithinItsReach) {
  for (const Species& species : built_in().species) {
    SCOPED_TRACE(species.id);
    const Animal animal = animal_of(species);
    const Reach reach = reach_of(animal);
    EXPECT_LT(std::max({reach.left, reach.right, reach.below, reach.above}), 1.5f);
    for (int level = 0; level < 4; ++level) {
      float left = 0, right = 0, below = 0, above = 0;
      for (const MeshVertex& v : mesh_at(animal, level).vertices) {
        left = std::max(left, -v.x);
        right = std::max(right, v.x);
        below = std::max(below, -v.y);
        above = std::max(above, v.y);
      }
      // Chords of another fineness may bulge by a little.
      EXPECT_LE(left, reach.left + 0.04f) << level;
      EXPECT_LE(right, reach.right + 0.04f) << level;
      EXPECT_LE(below, reach.below + 0.04f) << level;
      EXPECT_LE(above, reach.above + 0.04f) << level;
      EXPECT_GT(right + left, 0.9f) << level;
    }
    Easel easel(96, 96, paper);
    const auto count = [&](const Picture& picture) { return painted(picture, paper); };
    EXPECT_GT(count(easel.paint([&](ImDrawList* list) { draw_animal(list, animal, {48, 48}, 36, -1, 0); }, 1, 1)), 40);
    EXPECT_GT(count(easel.paint(
                  [&](ImDrawList* list) {
                    draw_silhouette(list, animal, {48, 48}, 36, rgb(0x102020), paper);
                  },
                  1, 1)),
              40);
  }
}

TEST(SpeciesLooks, EveryFormAndEveryMarkIsWornByACard) {
  std::set<std::string> forms, marks;
  for (const Species& species : built_in().species) {
    forms.insert(species.look.form);
    marks.insert(species.look.marks.begin(), species.look.marks.end());
  }
  for (int i = 0; i < form_count; ++i) EXPECT_EQ(forms.count(word_of(static_cast<Form>(i))), 1u) << word_of(static_cast<Form>(i));
  for (int i = 0; i < mark_count; ++i) EXPECT_EQ(marks.count(word_of(static_cast<Mark>(i))), 1u) << word_of(static_cast<Mark>(i));
}

// The reader's words and the drawing's are the same, so that no card can name what nobody draws.
TEST(SpeciesLooks, TheDrawingKnowsEveryWordOfTheReader) {
  for (const std::string_view word : form_list) {
    Form form;
    EXPECT_TRUE(form_from_word(std::string(word), form)) << word;
  }
  for (const std::string_view word : mark_list) {
    Mark mark;
    EXPECT_TRUE(word == "none" || mark_from_word(std::string(word), mark)) << word;
  }
  EXPECT_EQ(form_list.size(), static_cast<size_t>(form_count));
  EXPECT_EQ(mark_list.size(), static_cast<size_t>(mark_count) + 1);
}

/// How unlike two pictures of one size are, 0 to 1: difference of colour over the pixels that at least one of them covers.
double unlikeness(const Picture& a, const Picture& b) {
  double sum = 0;
  int covered = 0;
  for (size_t i = 0; i < a.rgba.size(); i += 4) {
    const auto is_paper = [i](const Picture& p) { return IM_COL32(p.rgba[i], p.rgba[i + 1], p.rgba[i + 2], 255) == paper; };
    if (is_paper(a) && is_paper(b)) continue;
    ++covered;
    for (size_t k = 0; k < 3; ++k) sum += std::abs(int{a.rgba[i + k]} - int{b.rgba[i + k]}) / (3 * 255.0);
  }
  return covered > 0 ? sum / covered : 0;
}

/// Kinds that a keeper cannot tell apart by sight either, and why.
struct Twins {
  const char *one, *other, *why;
};
constexpr Twins twins[] = {
    {"thayeria-boehlkei", "thayeria-obliqua", "sold as one; the stripe of one begins some scales farther back"}};

TEST(SpeciesLooks, KindsOfOneGroupAreToldApartAtSixtyPixels) {
  std::set<std::pair<std::string, std::string>> allowed;
  for (const Twins& pair : twins) {
    ASSERT_NE(find_species(built_in(), pair.one), nullptr) << pair.one;
    ASSERT_NE(find_species(built_in(), pair.other), nullptr) << pair.other;
    EXPECT_NE(std::string(pair.why), "");
    allowed.insert(std::minmax<std::string>(pair.one, pair.other));
  }
  for (const auto& [group, all] : by_group()) {
    std::vector<Picture> pictures;
    Easel easel(110, 84, paper);
    for (const Species* species : all) {
      const Animal animal = animal_of(*species);
      pictures.push_back(easel.paint([&](ImDrawList* list) { draw_animal(list, animal, {50, 42}, 60, -1, 0); }, 1, 2));
    }
    for (size_t i = 0; i < all.size(); ++i) {
      for (size_t k = i + 1; k < all.size(); ++k) {
        EXPECT_FALSE(animal_look(all[i]->look) == animal_look(all[k]->look)) << all[i]->id << " and " << all[k]->id;
        const bool alike = unlikeness(pictures[i], pictures[k]) < 0.04;
        const auto pair = std::minmax(all[i]->id, all[k]->id);
        if (allowed.count({pair.first, pair.second}) == 0) {
          EXPECT_FALSE(alike) << pair.first << " and " << pair.second << ": " << unlikeness(pictures[i], pictures[k]);
        } else {
          EXPECT_TRUE(alike) << pair.first << " and " << pair.second << " are told apart now: strike them from the list";
        }
      }
    }
  }
}

}  // namespace
}  // namespace shoalwright
