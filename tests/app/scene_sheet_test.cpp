// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>

#include "app/easel.h"
#include "catalog/built_in.h"
#include "draw/fish/animal.h"
#include "draw/scene/crowding.h"
#include "draw/scene/scene.h"
#include "share/plan_json.h"
#include "stocking/stock.h"
#include "tank/volume.h"
#include "views/shoals.h"
#include "views/tank_picture.h"

namespace shoalwright {
namespace {

constexpr float px_per_cm = 6.6667f;

Plan plan_from(const char* name) {
  std::ifstream file(std::string(SHOALWRIGHT_TESTS_DIR) + "/plans/" + name);
  std::ostringstream text;
  text << file.rdbuf();
  const Result<Plan> read = read_plan(text.str());
  EXPECT_TRUE(read) << name;
  return read ? *read : Plan{};
}

const Palette& colours_of(Theme theme) { return palette(theme); }

/// The front view with everything on it, its outer glass with its corner at `corner`.
void draw_front(ImDrawList* list, const SceneCache& cache, ImVec2 corner, float px, const std::vector<Shoal>& shoals,
                const CrowdingCache* crowding, TimeOfDay time = TimeOfDay::day) {
  const FrontView view{corner, px};
  const Scene& scene = cache.built_for;
  draw_front_stand(list, cache, view, time);
  draw_front_back(list, cache, view, time);
  AnimalStore store;
  for (const Shoal& shoal : shoals) {
    if (shoal.card == nullptr) continue;
    const Animal& animal = store.get(shoal.species, shoal.card->look);
    for (const DrawnAnimal& one : shoal.animals) {
      draw_animal(list, animal, front_point(view, scene, one.x_cm, scene.fill_cm - one.depth_cm),
                  static_cast<float>(one.length_cm) * px, one.facing, one.tilt);
    }
  }
  draw_front_roots(list, cache, view, time);
  if (crowding != nullptr) draw_crowding(list, *crowding, scene, view);
  draw_front_glass(list, cache, view, time);
  draw_depth_scale(list, cache, view, false, 11);
}

TEST(SceneSheet, CatalogueAtShelfAndPlateSize) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    const Palette& c = colours_of(theme);
    const std::string tone = theme == Theme::light ? "light" : "dark";
    const auto& species = built_in().species;
    const int rows = (static_cast<int>(species.size()) + 7) / 8;
    Easel small(8 * 100, rows * 80, mix(c.waterMid, c.waterTop, 0.3f));
    keep_shot(small.paint(
                  [&](ImDrawList* list) {
                    for (size_t i = 0; i < species.size(); ++i) {
                      const Animal animal = make_animal(animal_look(species[i].look));
                      draw_animal(list, animal, {50 + 100.0f * static_cast<float>(i % 8), 40 + 80.0f * static_cast<float>(i / 8)},
                                  60, -1, 0);
                    }
                  },
                  2),
              "animals-60-" + tone);
    Easel large(5 * 290, 8 * 230, mix(c.waterMid, c.waterTop, 0.3f));
    keep_shot(large.paint([&](ImDrawList* list) {
      for (size_t i = 0; i < species.size(); ++i) {
        const Animal animal = make_animal(animal_look(species[i].look));
        draw_animal(list, animal, {130 + 290.0f * static_cast<float>(i % 5), 110 + 230.0f * static_cast<float>(i / 5)}, 200, -1,
                    0);
      }
    }),
              "animals-200-" + tone);
    Easel shelf(8 * 100, rows * 60, c.panel);
    keep_shot(shelf.paint(
                  [&](ImDrawList* list) {
                    for (size_t i = 0; i < species.size(); ++i) {
                      const Animal animal = make_animal(animal_look(species[i].look));
                      draw_silhouette(list, animal,
                                      {50 + 100.0f * static_cast<float>(i % 8), 30 + 60.0f * static_cast<float>(i / 8)}, 44,
                                      c.ink, c.panel);
                    }
                  },
                  2),
              "shelf-" + tone);
  }
}

TEST(SceneSheet, DemoTankFromTheFrontAndFromAbove) {
  for (const char* name : {"riverbank.json", "bench-8-14.json"}) {
    const Plan plan = plan_from(name);
    const std::vector<Kept> stock = resolve_stock(plan, built_in());
    const std::vector<Shoal> shoals = place_shoals(plan, stock);
    for (const Theme theme : {Theme::light, Theme::dark}) {
      SceneCache cache;
      update(cache, scene_of(plan, theme));
      const Vec front = front_size_cm(cache.built_for) * px_per_cm, above = plan_size_cm(cache.built_for) * (px_per_cm * 0.65f);
      Easel easel(static_cast<int>(front.x) + 200, static_cast<int>(front.y + above.y) + 160, colours_of(theme).ground);
      const Picture picture = easel.paint([&](ImDrawList* list) {
        draw_front(list, cache, {45, 50}, px_per_cm, shoals, nullptr);
        draw_plan_view(list, cache, {{45, 110 + front.y}, px_per_cm * 0.65f});
      });
      keep_shot(picture, std::string(name).substr(0, 5) + (theme == Theme::light ? "-light" : "-dark"));
    }
  }
}

}  // namespace
}  // namespace shoalwright
