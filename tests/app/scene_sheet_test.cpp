// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <fstream>
#include <sstream>

#include "app/easel.h"
#include "catalog/built_in.h"
#include "draw/fish/animal.h"
#include "draw/scene/field.h"
#include "draw/scene/profile.h"
#include "draw/scene/scene.h"
#include "share/plan_json.h"
#include "stocking/layers.h"
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
                const FieldCache* crowding, TimeOfDay time = TimeOfDay::day) {
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
  if (crowding != nullptr)
    draw_field(list, *crowding, {front_point(view, scene, 0, scene.fill_cm), px, px}, {-1e4f, -1e4f, 2e4f, 2e4f},
               palette(scene.theme).crowd);
  draw_front_glass(list, cache, view, time);
  draw_depth_scale(list, cache, view, false, 11);
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
      // With crowding about 1 200 more; a frame writes them all anew.
      EXPECT_LT(easel.vertices(), std::string(name) == "riverbank.json" ? 20000 : 29500);
      EXPECT_GT(easel.vertices(), 5000);
      keep_shot(picture, std::string(name).substr(0, 5) + (theme == Theme::light ? "-light" : "-dark"));
    }
  }
}

TEST(SceneSheet, DuskAndNightAreDarkerAndSmallAndLargeTanksKeepTheirGear) {
  const Plan plan = plan_from("riverbank.json");
  const std::vector<Shoal> shoals = place_shoals(plan, resolve_stock(plan, built_in()));
  double before = 1e9;
  for (const TimeOfDay time : {TimeOfDay::day, TimeOfDay::dusk, TimeOfDay::night}) {
    SceneCache cache;
    update(cache, scene_of(plan, Theme::light));
    const Vec front = front_size_cm(cache.built_for) * 4;
    Easel easel(static_cast<int>(front.x) + 90, static_cast<int>(front.y) + 90, colours_of(Theme::light).ground);
    const Picture picture = easel.paint([&](ImDrawList* list) { draw_front(list, cache, {45, 50}, 4, shoals, nullptr, time); });
    keep_shot(picture, "time-" + std::to_string(static_cast<int>(time)));
    double light = 0;
    for (int y = 80; y < 200; ++y)
      for (int x = 60; x < 380; ++x) light += static_cast<double>(luminance(picture.at(x, y)));
    EXPECT_LT(light, before * 0.85);
    before = light;
  }
  for (const double length : {25.0, 180.0}) {
    Plan other = plan;
    other.tank.length_cm = length;
    other.tank.width_cm = length / 2;
    other.tank.height_cm = length > 100 ? 60 : 30;
    other.tank.fill_cm = other.tank.height_cm - 2;
    other.substrate = {
        .kind = SubstrateKind::smooth_gravel, .front_cm = 3, .back_cm = length > 100 ? 9.0 : 4.0, .other_keys = ""};
    other.pieces.clear();
    SceneCache cache;
    update(cache, scene_of(other, Theme::dark));
    const float px = length > 100 ? 4 : 8;
    const Vec front = front_size_cm(cache.built_for) * px;
    Easel easel(static_cast<int>(front.x) + 90, static_cast<int>(front.y) + 90, colours_of(Theme::dark).ground);
    keep_shot(easel.paint([&](ImDrawList* list) {
      draw_front(list, cache, {45, 50}, px, {}, nullptr);
    }),
              length > 100 ? "large" : "small");
    Scene idle = cache.built_for;
    idle.heater = idle.filter = false;
    SceneCache without;
    update(without, idle);
    EXPECT_GT(cache.front_far.vertices.size(), without.front_far.vertices.size() + 40);
    EXPECT_GT(cache.front_pads.vertices.size(), without.front_pads.vertices.size() + 40);
  }
}

/// Every shape of tank at measures that keepers have, with the same furniture set into its middle.
struct ShapedTank {
  const char* name;
  Plan plan;
};

std::vector<ShapedTank> shaped_tanks() {
  std::vector<ShapedTank> out;
  const auto tank = [&out](const char* name, Shape shape, auto set) {
    Plan plan;
    plan.tank.shape = shape;
    plan.tank.height_cm = 45;
    plan.tank.fill_cm = 42;
    plan.tank.glass_mm = 8;
    plan.tank.lid = true;
    set(plan.tank);
    plan.substrate = {.kind = SubstrateKind::fine_sand, .front_cm = 3, .back_cm = 6, .other_keys = ""};
    const double l = inside_length_cm(plan.tank), w = inside_width_cm(plan.tank);
    const auto piece = [&](const char* kind, double x, double z, double length, double depth, double height) {
      Piece one;
      one.kind = kind;
      one.x_cm = x;
      one.z_cm = z;
      one.length_cm = length;
      one.depth_cm = depth;
      one.height_cm = height;
      plan.pieces.push_back(one);
    };
    piece("branch", l * 0.45, w * 0.55, l * 0.35, w * 0.2, 24);
    piece("stone", l * 0.4, w * 0.4, l * 0.14, w * 0.16, 9);
    piece("stem-plants", l * 0.6, w * 0.65, l * 0.16, w * 0.2, 28);
    out.push_back({name, plan});
  };
  tank("rectangular", Shape::rectangular, [](Tank& t) { t.length_cm = 80, t.width_cm = 35; });
  tank("bow-front", Shape::bow_front, [](Tank& t) { t.length_cm = 80, t.width_cm = 35, t.bow_cm = 10; });
  tank("cylinder", Shape::cylinder, [](Tank& t) { t.diameter_cm = 55; });
  tank("half-cylinder", Shape::half_cylinder, [](Tank& t) { t.diameter_cm = 90; });
  tank("quarter-cylinder", Shape::quarter_cylinder, [](Tank& t) { t.diameter_cm = 120; });
  tank("hexagon", Shape::hexagon, [](Tank& t) { t.side_cm = 32; });
  tank("pentagon-corner", Shape::pentagon_corner, [](Tank& t) { t.side_cm = 65, t.front_cm = 30; });
  tank("prism", Shape::prism, [](Tank& t) { t.outline_cm = {{0, 0}, {50, 0}, {50, 20}, {85, 20}, {85, 50}, {0, 50}}; });
  return out;
}

int pixels_apart(const Picture& a, const Picture& b, int x0, int y0, int x1, int y1) {
  int apart = 0;
  for (int y = y0; y < y1; ++y)
    for (int x = x0; x < x1; ++x)
      if (a.at(x, y) != b.at(x, y)) ++apart;
  return apart;
}

TEST(SceneSheet, EveryTankShapeDrawsItsFurnitureInsideItsGlass) {
  for (const ShapedTank& tank : shaped_tanks()) {
    SCOPED_TRACE(tank.name);
    for (const Theme theme : {Theme::light, Theme::dark}) {
      Plan bare = tank.plan;
      bare.pieces.clear();
      SceneCache with, without;
      update(with, scene_of(tank.plan, theme));
      update(without, scene_of(bare, theme));
      constexpr float px = 5;
      const Vec front = front_size_cm(with.built_for) * px, above = plan_size_cm(with.built_for) * px;
      const ImVec2 front_at{45, 50}, plan_at{45, 100 + front.y};
      Easel easel(static_cast<int>(std::max(front.x, above.x)) + 90, static_cast<int>(front.y + above.y) + 140,
                  colours_of(theme).ground);
      const auto paint = [&](const SceneCache& cache) {
        return easel.paint(
            [&](ImDrawList* list) {
              draw_front(list, cache, front_at, px, {}, nullptr);
              draw_plan_view(list, cache, {plan_at, px});
            },
            1, 1);
      };
      const Picture furnished = paint(with), empty = paint(without);
      keep_shot(furnished, std::string("shape-") + tank.name + (theme == Theme::light ? "-light" : "-dark"));
      const auto box = [](ImVec2 at, Vec size) {
        return std::array<int, 4>{static_cast<int>(at.x), static_cast<int>(at.y), static_cast<int>(at.x + size.x) + 1,
                                  static_cast<int>(at.y + size.y) + 1};
      };
      const auto f = box(front_at, front), p = box(plan_at, above);
      const int in_front = pixels_apart(furnished, empty, f[0], f[1], f[2], f[3]),
                in_plan = pixels_apart(furnished, empty, p[0], p[1], p[2], p[3]);
      EXPECT_GT(in_front, 1500);
      EXPECT_GT(in_plan, 1000);
      EXPECT_EQ(pixels_apart(furnished, empty, 0, 0, furnished.width, furnished.height), in_front + in_plan);
    }
  }
}

/// A hill of crowding in the middle of the tank, over 1 at its top or not.
Field field_of(const Plan& plan, float top) {
  Field field{.columns = 31,
              .rows = 16,
              .x1_cm = static_cast<float>(plan.tank.length_cm),
              .y1_cm = static_cast<float>(plan.tank.fill_cm)};
  for (int row = 0; row < field.rows; ++row)
    for (int column = 0; column < field.columns; ++column)
      field.nodes.push_back(top * std::exp(-0.02f * static_cast<float>((column - 15) * (column - 15) + (row - 8) * (row - 8))));
  return field;
}

TEST(SceneSheet, CrowdingAndDepthProfile) {
  for (const bool crowded : {false, true}) {
    Plan plan = plan_from("riverbank.json");
    const int held = crowded ? 5 : 0;
    if (crowded) {
      Group barbs;
      barbs.species = "puntigrus-tetrazona";
      barbs.count = 30;
      plan.stock.push_back(barbs);
    }
    const std::vector<Kept> stock = resolve_stock(plan, built_in());
    const std::vector<Shoal> shoals = place_shoals(plan, stock);
    const Plan before = plan_from("riverbank.json");
    const ProfilePicture profile = profile_picture(plan, stock, bodies_of(plan), crowded ? &before : nullptr, built_in(), held);
    const FieldCache crowding = ready(field_of(plan, crowded ? 1.4f : 0.9f), {{0.25f, 0.5f, 0.75f, 1}, false, true});
    EXPECT_EQ(crowding.hatch.empty(), !crowded);
    for (int step = 0; step < 4; ++step) EXPECT_EQ(crowding.longest[static_cast<size_t>(step)] >= 0, step < 3);
    std::vector<ImVec2> taken;
    const FieldPlace place{{0, 0}, 6, 6};
    const auto first = place_of_words(crowding, 1, place, {40, 20}, taken),
               second = place_of_words(crowding, 1, place, {40, 20}, taken);
    ASSERT_TRUE(first && second);
    EXPECT_TRUE(std::abs(first->x - second->x) >= 40 || std::abs(first->y - second->y) >= 20)
        << "words stand clear of each other";
    EXPECT_TRUE(ready({}, {}).lines.empty());
    for (const Theme theme : {Theme::light, Theme::dark}) {
      SceneCache cache;
      update(cache, scene_of(plan, theme));
      const Vec front = front_size_cm(cache.built_for) * px_per_cm;
      Easel easel(static_cast<int>(front.x) + 240, static_cast<int>(front.y) + 90, colours_of(theme).ground);
      const Picture picture = easel.paint([&](ImDrawList* list) {
        draw_front(list, cache, {45, 50}, px_per_cm, shoals, &crowding);
        const float top = profile_top_l_cm(profile);
        const ImVec2 line = front_point({{45, 50}, px_per_cm}, cache.built_for, 0, plan.tank.fill_cm);
        draw_depth_profile(list, profile, {front.x + 75, line.y, px_per_cm, 120 / top}, colours_of(theme));
      });
      keep_shot(picture, std::string(crowded ? "over" : "crowding") + (theme == Theme::light ? "-light" : "-dark"));
    }
  }
}

TEST(Scene, IsBuiltAgainOnlyWhenItChanged) {
  const Plan plan = plan_from("riverbank.json");
  Scene scene = scene_of(plan, Theme::light);
  SceneCache cache;
  EXPECT_TRUE(update(cache, scene));
  EXPECT_FALSE(update(cache, scene));
  *scene.pieces.front().x_cm += 1;
  EXPECT_TRUE(update(cache, scene));
  scene.theme = Theme::dark;
  EXPECT_TRUE(update(cache, scene));
}

/// Corners and colours of all that a cache draws, in order.
std::vector<float> all_of(const SceneCache& cache) {
  std::vector<float> all;
  const auto take = [&](const Mesh& mesh) {
    for (const MeshVertex& v : mesh.vertices) all.insert(all.end(), {v.x, v.y, static_cast<float>(v.colour)});
  };
  for (const Mesh* mesh : {&cache.front_far, &cache.front_near, &cache.front_pads, &cache.front_glass, &cache.plan_floor})
    take(*mesh);
  for (const PieceMeshes& piece : cache.pieces)
    for (const Mesh* mesh : {&piece.front, &piece.above, &piece.roots}) take(*mesh);
  for (const std::size_t i : cache.from_above) all.push_back(static_cast<float>(i));
  return all;
}

TEST(Scene, WhatIsKeptIsDrawnAsWhatIsBuiltAnew) {
  Scene scene = scene_of(plan_from("bench-8-14.json"), Theme::light);
  SceneCache kept;
  update(kept, scene);
  const auto same_as_fresh = [&] {
    update(kept, scene);
    SceneCache fresh;
    update(fresh, scene);
    return all_of(kept) == all_of(fresh);
  };
  for (std::size_t i = 0; i < scene.pieces.size(); ++i) {
    *scene.pieces[i].z_cm += i % 2 ? 9 : -9;
    scene.pieces[i].height_cm += 3;
    EXPECT_TRUE(same_as_fresh()) << i;
  }
  std::swap(scene.pieces[0], scene.pieces[5]);
  scene.pieces.push_back(scene.pieces[2]);
  EXPECT_TRUE(same_as_fresh());
  scene.pieces.erase(scene.pieces.begin(), scene.pieces.begin() + 3);
  EXPECT_TRUE(same_as_fresh());
  scene.back_cm += 2;
  EXPECT_TRUE(same_as_fresh());
}

TEST(Scene, ScreenAndTankAgreeBothWays) {
  const Scene scene = scene_of(plan_from("riverbank.json"), Theme::light);
  const FrontView front{{45, 50}, px_per_cm};
  const PlanView above{{12, 400}, 4.3f};
  for (const double x : {0.0, 12.5, 88.4}) {
    for (const double other : {0.0, 20.0, 41.5}) {
      const Vec a = front_place(front, scene, front_point(front, scene, x, other)),
                b = plan_place(above, scene, plan_point(above, scene, x, other));
      EXPECT_NEAR(a.x, x, 0.01);
      EXPECT_NEAR(a.y, other, 0.01);
      EXPECT_NEAR(b.x, x, 0.01);
      EXPECT_NEAR(b.y, other, 0.01);
    }
  }
}

TEST(Scene, EveryKindOfPieceThatLinksKnowIsDrawnInBothViews) {
  for (const char* kind :
       {"block",         "branch",          "branch-bank", "branch-low", "root",      "stone",       "stones",
        "slate",         "pebbles",         "cave",        "half-shell", "pot",       "stem-plants", "rosette-plant",
        "carpet-plants", "floating-plants", "fern",        "moss",       "driftwood", "thicket",     "some-device"}) {
    SCOPED_TRACE(kind);
    Plan plan = plan_from("riverbank.json");
    Piece piece = plan.pieces.front();
    piece.kind = kind;
    piece.length_cm = 20;
    piece.depth_cm = 12;
    piece.height_cm = 10;
    plan.pieces = {piece};
    SceneCache cache;
    update(cache, scene_of(plan, Theme::light));
    ASSERT_EQ(cache.pieces.size(), 1u);
    EXPECT_GT(cache.pieces[0].front.vertices.size() + cache.pieces[0].roots.vertices.size(), 5u);
    EXPECT_GT(cache.pieces[0].above.vertices.size(), 5u);
  }
}

}  // namespace
}  // namespace shoalwright
