// SPDX-License-Identifier: MIT
#include "stocking/spread.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "stocking/layers.h"
#include "stocking/over_depth.h"
#include "stocking/room.h"
#include "stocking/spread_seen.h"
#include "stocking/style.h"
#include "support/pieces.h"
#include "support/random_stock.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

struct Spreading {
  std::vector<Kept> stock;
  BodyRooms bodies;
  Room room;
  Spread spread;

  explicit Spreading(const Plan& plan)
      : stock(resolve_stock(plan, the_catalog())),
        bodies(bodies_of(plan)),
        room(room_of(plan, stock, volume_of(plan), bodies)),
        spread(spread_of(plan, stock, bodies)) {}

  std::size_t level(std::size_t spot) const {
    const std::size_t slice = static_cast<std::size_t>(spread.size.x) * static_cast<std::size_t>(spread.size.z);
    return std::min<std::size_t>((static_cast<std::size_t>(spread.size.y) - 1 - spot / slice) / 6, 2);
  }
  double most() const {
    return spread.crowding.empty() ? 0 : static_cast<double>(*std::max_element(spread.crowding.begin(), spread.crowding.end()));
  }
};

Plan named(const std::string& name) {
  for (const NamedPlan& one : all_plans())
    if (one.name == name) return one.plan;
  ADD_FAILURE() << name;
  return {};
}

double sum(const std::vector<double>& values) { return std::accumulate(values.begin(), values.end(), 0.0); }

TEST(Spread, TheAnimalsOfEachGroupAreItsNumber) {
  int looked_at = 0;
  for (const NamedPlan& named : many_plans()) {
    const Spreading all(named.plan);
    if (all.spread.size.cells() == 0) continue;
    for (const GroupSpread& group : all.spread.groups) {
      const auto kept = std::find_if(all.stock.begin(), all.stock.end(), [&](const Kept& k) { return k.id == group.species; });
      EXPECT_NEAR(sum(group.fish), kept->count, 1e-9 * std::max(1, kept->count)) << named.name << " " << group.species;
      EXPECT_NEAR(group.in_level[0] + group.in_level[1] + group.in_level[2], kept->count, 1e-9 * std::max(1, kept->count));
      EXPECT_GE(group.without_room, 0);
      EXPECT_LE(group.without_room, kept->count * (1 + 1e-12));
      EXPECT_GE(*std::min_element(group.fish.begin(), group.fish.end()), 0) << named.name;
      ++looked_at;
    }
  }
  EXPECT_GT(looked_at, 150 / plans_step);
}

TEST(Spread, IsTheCrowdingOfTheLayersWhereNothingSpills) {
  int looked_at = 0;
  for (const NamedPlan& named : many_plans()) {
    if (!named.plan.planting) continue;
    Spreading all(named.plan);
    if (all.spread.size.cells() == 0) continue;
    std::array<double, 3> crowding{};
    bool spilled = false;
    std::size_t g = 0;
    for (const Kept& kept : all.stock) {
      if (!kept.species) {
        spilled = true;
        continue;
      }
      const Demand demand = demand_of(kept, all.bodies);
      const GroupSpread& group = all.spread.groups[g++];
      std::array<double, 3> fish{};
      for (std::size_t i = 0; i < group.fish.size(); ++i) fish[all.level(i)] += group.fish[i];
      for (std::size_t level = 0; level < 3; ++level) {
        const double meant = demand.count * demand.depth[level], open = open_l(demand, layer_water(all.room), level);
        spilled = spilled || std::abs(fish[level] - meant) > 1e-9 * std::max(1.0, demand.count);
        if (open > 0) crowding[level] += fish[level] * demand.personal_l / open;
      }
    }
    if (spilled) continue;
    ++looked_at;
    for (std::size_t level = 0; level < 3; ++level)
      EXPECT_NEAR(crowding[level], all.room.layers[level].crowding.value_or(0), 1e-9) << named.name;
  }
  EXPECT_GT(looked_at, 30 / plans_step);
}

TEST(Spread, NoSpotIsOverWhereItsLevelHasRoom) {
  int looked_at = 0;
  for (const NamedPlan& named : many_plans()) {
    if (!named.plan.planting) continue;
    const Spreading all(named.plan);
    const bool sound = std::all_of(all.room.layers.begin(), all.room.layers.end(),
                                   [](const Layer& layer) { return layer.crowding && *layer.crowding <= 0.95; });
    if (!sound) continue;
    ++looked_at;
    EXPECT_LE(all.most(), 1) << named.name;
  }
  EXPECT_GT(looked_at, 20 / plans_step);
}

TEST(Spread, AFullLevelSpillsToTheOthersAndWhatFindsNoRoomIsTold) {
  // Harlequins keep to the middle, but not only: full, it gives to the surface and the floor.
  const auto with = [](int count) { return Spreading(a_plan().tank(60, 30, 34).kind("trigonostigma-heteromorpha", count)); };
  const Spreading few = with(8);
  EXPECT_EQ(few.spread.groups[0].without_room, 0);
  const std::array<double, 3> shares = depth_shares(*few.stock[0].species);
  for (std::size_t level = 0; level < 3; ++level) EXPECT_NEAR(few.spread.groups[0].in_level[level], 8 * shares[level], 1e-9);

  int count = 8;
  while (*with(count).room.layers[1].crowding <= 1.2) ++count;
  const Spreading full = with(count);
  EXPECT_LT(full.spread.groups[0].in_level[1], count * shares[1]);
  EXPECT_GT(full.spread.groups[0].in_level[0] + full.spread.groups[0].in_level[2], count * (1 - shares[1]));
  EXPECT_EQ(full.spread.groups[0].without_room, 0) << "the other levels have room for the rest";
  EXPECT_LE(full.most(), 1.01);

  const Spreading silly = with(count * 6);
  EXPECT_GT(silly.spread.groups[0].without_room, count);
  EXPECT_GT(silly.most(), 1.5);
}

TEST(Spread, KeepsToOpenWater) {
  Plan plan = a_plan().tank(80, 35, 40).planted(Planting::none).kind("danio-rerio", 10);
  plan.pieces = {Piece{.kind = "block", .x_cm = 20, .z_cm = 17, .length_cm = 24, .depth_cm = 24, .height_cm = 30}};
  const Spreading all(plan);
  const Spread& s = all.spread;
  const auto column = static_cast<int>((20 - s.left_cm) / s.step_x_cm), row = static_cast<int>((17 - s.front_cm) / s.step_z_cm);
  const std::size_t inside = s.size.at(column, row, 3), open = s.size.at(s.size.x - 1 - column, row, 3);
  EXPECT_LT(s.groups[0].fish[inside], 0.2 * s.groups[0].fish[open]);
  EXPECT_LT(s.clear_cm[inside], s.clear_cm[open]);
  // The middle of the other half is as far from front and back as it gets.
  EXPECT_NEAR(static_cast<double>(s.clear_cm[open]), 10, 8);
}

TEST(Spread, ShyKindsKeepNearCover) {
  const auto near_cover = [](const char* species) {
    Plan plan = a_plan().tank(100, 40, 40).planted(Planting::none).kind(species, 10);
    plan.pieces = {Piece{.kind = "stem-plants", .x_cm = 20, .z_cm = 20, .length_cm = 20, .depth_cm = 20, .height_cm = 30}};
    const Spreading all(plan);
    double near = 0, water = 0;
    for (std::size_t i = 0; i < all.spread.water_l.size(); ++i)
      if (all.spread.cover_cm[i] < 10) {
        near += all.spread.groups[0].fish[i];
        water += static_cast<double>(all.spread.water_l[i]);
      }
    double whole = 0;
    for (const float l : all.spread.water_l) whole += static_cast<double>(l);
    return near / 10 / (water / whole);
  };
  std::map<std::string, double> by_word;
  for (const Species& species : the_catalog().species)
    if (depth_shares(species)[1] > 0.4 && species.size.adult_tl_cm < 6)
      if (!by_word.count(species.life.cover)) by_word[species.life.cover] = near_cover(species.id.c_str());
  ASSERT_TRUE(by_word.count("some") + by_word.count("much") > 0);
  for (const auto& [word, near] : by_word) {
    if (word == "none") {
      EXPECT_LT(near, 1.02);
    } else {
      EXPECT_GT(near, 1.05) << word;
    }
  }
}

TEST(Spread, IsMirroredWithTheTank) {
  int looked_at = 0;
  for (std::uint64_t seed = 1; seed <= 60; seed += plans_step) {
    Plan plan = random_stock(seed);
    plan.pieces = with_places(plan);
    const Spreading one(plan), other(mirrored(plan));
    ASSERT_EQ(one.spread.size, other.spread.size);
    for (std::size_t g = 0; g < one.spread.groups.size(); ++g) {
      const GridSize& size = one.spread.size;
      double apart = 0;
      for (int y = 0; y < size.y; ++y)
        for (int z = 0; z < size.z; ++z)
          for (int x = 0; x < size.x; ++x)
            apart += std::abs(one.spread.groups[g].fish[size.at(x, z, y)] -
                              other.spread.groups[g].fish[size.at(size.x - 1 - x, z, y)]);
      EXPECT_LT(apart, 0.02 * sum(one.spread.groups[g].fish)) << "seed " << seed << " " << one.spread.groups[g].species;
      ++looked_at;
    }
  }
  EXPECT_GT(looked_at, 60 / plans_step);
}

TEST(Spread, IsSeenFromTheFrontAndFromAbove) {
  const Spreading all(named("riverbank.json"));
  const SpreadSeen front = seen_from_front(all.spread), above = seen_from_above(all.spread);
  ASSERT_EQ(front.spots.size(), static_cast<std::size_t>(front.columns * front.rows));
  ASSERT_EQ(above.spots.size(), static_cast<std::size_t>(above.columns * above.rows));
  double from_front = 0, from_above = 0, fish = 0;
  for (int row = 0; row < front.rows; ++row)
    for (int column = 0; column < front.columns; ++column) from_front += sum(fish_behind(all.spread, column, row));
  for (int row = 0; row < above.rows; ++row)
    for (int column = 0; column < above.columns; ++column) from_above += sum(fish_below(all.spread, column, row));
  for (const GroupSpread& group : all.spread.groups) fish += sum(group.fish);
  EXPECT_NEAR(from_front, fish, 1e-9);
  EXPECT_NEAR(from_above, fish, 1e-9);
}

TEST(OverDepth, GivesEachThirdItsShareAndIsHighestInItsMiddle) {
  const std::vector<double> strips = over_depth({0.2, 0.7, 0.1}, 8);
  ASSERT_EQ(strips.size(), 24u);
  EXPECT_NEAR(std::accumulate(strips.begin(), strips.begin() + 8, 0.0), 0.2, 1e-12);
  EXPECT_NEAR(std::accumulate(strips.begin() + 8, strips.begin() + 16, 0.0), 0.7, 1e-12);
  EXPECT_NEAR(std::accumulate(strips.begin() + 16, strips.end(), 0.0), 0.1, 1e-12);
  EXPECT_GT(strips[11], strips[8]);
  EXPECT_GT(strips[12], strips[15]);
  EXPECT_EQ(over_depth({0, 0, 1}, 4)[0], 0);
}

}  // namespace
}  // namespace shoalwright
