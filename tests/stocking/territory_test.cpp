// SPDX-License-Identifier: MIT
#include "stocking/territory.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "stocking/layers.h"
#include "support/builders.h"
#include "support/dice.h"
#include "support/pieces.h"
#include "support/random_stock.h"
#include "tank/outline.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

Species holder(double length_cm, const char* id = "holder") {
  Species s = sample_species(id, Style::territorial_bottom, length_cm);
  s.life.group.kind = GroupKind::solitary;
  return s;
}

Territories homes_of(const Plan& plan) { return territories_of(plan, resolve_stock(plan, the_catalog()), bodies_of(plan)); }

TEST(Territories, AreOnlyHeldByHolders) {
  EXPECT_EQ(homes_of(a_plan()), Territories{});
  const Plan shoal = a_plan().fish(sample_species("shoaler", Style::bottom_shoal, 5), 8).kind("no-such-kind", 3).piece("cave");
  EXPECT_EQ(homes_of(shoal), Territories{});
  EXPECT_EQ(sight_factor(homes_of(shoal)), 1);
  EXPECT_TRUE(homes_of(a_plan().tank(0, 0, 0).fish(holder(5), 2)).homes.empty());
}

// Trade handbooks give a dwarf cichlid pair 38 to 50 cm and a brooding female 25 to 30 cm (common practice, seen in the
// handbook).
TEST(Territories, AreAsWideAsTheFloorThatTheyNeed) {
  EXPECT_NEAR(homes_of(a_plan().fish(holder(7), 1)).homes.at(0).across_cm, 39.5, 0.05);
  EXPECT_NEAR(homes_of(a_plan().fish(holder(5), 1)).homes.at(0).across_cm, 28.2, 0.05);
}

TEST(Territories, AreCountedAsTheFloorCountsThem) {
  Species pair = holder(4);
  pair.life.group.kind = GroupKind::pair;
  EXPECT_EQ(homes_of(a_plan().fish(pair, 2)).homes.size(), 1u);
  EXPECT_EQ(homes_of(a_plan().fish(pair, 3)).homes.size(), 2u);
  EXPECT_EQ(homes_of(a_plan().fish(holder(4), 3)).lines.size(), 3u);
  EXPECT_EQ(homes_of(a_plan().fish(holder(4), 40)).homes.size(), most_homes);
  EXPECT_EQ(homes_of(a_plan().fish(holder(4), 40)).lines.size(), most_homes * (most_homes - 1) / 2);
}

TEST(Territories, TwoHoldersOfAnEmptyTankStandAtItsEndsInSight) {
  const Territories two = homes_of(a_plan().tank(120, 40, 40).fish(holder(6), 2));
  ASSERT_EQ(two.homes.size(), 2u);
  const double r = two.homes[0].across_cm / 2;
  EXPECT_NEAR(std::min(two.homes[0].x_cm, two.homes[1].x_cm), r, 1e-6);
  EXPECT_NEAR(std::max(two.homes[0].x_cm, two.homes[1].x_cm), 120 - r, 1e-6);
  ASSERT_EQ(two.lines.size(), 1u);
  EXPECT_EQ(two.lines[0], (SightLine{0, 1, false}));
  EXPECT_EQ(two.broken_share, 0);
  EXPECT_EQ(sight_factor(two), 1);
}

TEST(Territories, AWallBetweenThemBreaksTheLineAndALowStoneDoesNot) {
  Plan plan = a_plan().tank(120, 40, 40).fish(holder(6), 2).floor(SubstrateKind::fine_sand, 3, 3);
  plan.pieces = {piece_at("block", 60, 20, 4, 39, 25)};
  const Territories hidden = homes_of(plan);
  EXPECT_EQ(hidden.broken_share, 1);
  EXPECT_NEAR(sight_factor(hidden), 0.6, 1e-12);
  plan.pieces = {piece_at("block", 60, 20, 4, 39, 1)};
  EXPECT_EQ(homes_of(plan).broken_share, 0);
  // Of three, the two on one side still see each other.
  plan.pieces = {piece_at("block", 60, 20, 4, 39, 25)};
  plan.stock[0].count = 3;
  EXPECT_NEAR(homes_of(plan).broken_share, 2.0 / 3, 1e-12);
}

TEST(Territories, OneHomeGoesToTheCaveAndKeepsWatchBesideIt) {
  for (const double x_cm : {30.0, 60.0, 85.0}) {
    Plan plan = a_plan().tank(120, 40, 40).fish(holder(5), 2);
    plan.pieces = {piece_at("cave", x_cm, 25, 13, 9, 7)};
    const Territories two = homes_of(plan);
    ASSERT_EQ(two.homes.size(), 2u);
    int at_cave = 0;
    for (const Territory& home : two.homes) {
      const double x = std::abs(home.x_cm - x_cm), z = std::abs(home.z_cm - 25);
      at_cave += std::sqrt(x * x + z * z) < 9;
      EXPECT_FALSE(x < 6.5 && z < 4.5) << "in the cave";
    }
    EXPECT_EQ(at_cave, 1) << x_cm;
  }
}

TEST(Territories, LieInsideTheTank) {
  Dice dice(3);
  int checked = 0;
  for (const NamedPlan& named : many_plans()) {
    Plan plan = named.plan;
    add(plan, holder(dice.real(2, 9), "one"), dice.whole(1, 4));
    add(plan, holder(dice.real(2, 9), "other"), dice.whole(1, 4));
    const std::vector<Point> outline = inside_outline(plan.tank);
    const double length_cm = inside_length_cm(plan.tank), width_cm = inside_width_cm(plan.tank);
    for (const Territory& home : homes_of(plan).homes) {
      std::vector<double> cuts;
      crossings(outline, home.z_cm, cuts);
      EXPECT_EQ(std::count_if(cuts.begin(), cuts.end(), [&](double cut) { return cut < home.x_cm; }) % 2, 1) << named.name;
      ++checked;
      if (plan.tank.shape != Shape::rectangular) continue;
      const double r = home.across_cm / 2;
      if (length_cm > 2 * r) {
        EXPECT_GE(home.x_cm, r - 1e-6) << named.name;
        EXPECT_LE(home.x_cm, length_cm - r + 1e-6) << named.name;
      }
      if (width_cm > 2 * r) {
        EXPECT_GE(home.z_cm, r - 1e-6) << named.name;
        EXPECT_LE(home.z_cm, width_cm - r + 1e-6) << named.name;
      }
    }
  }
  EXPECT_GT(checked, 100);
}

TEST(Territories, AreMirroredWithTheTank) {
  constexpr const char* kinds[] = {"stone", "block", "stem-plants", "cave", "driftwood", "pot", "rock"};
  Dice dice(17);
  int same_homes = 0, some_broken = 0;
  const int rounds = 120 / plans_step;
  for (int round = 0; round < rounds; ++round) {
    Plan plan = a_plan().tank(100, 40, 40).floor(SubstrateKind::fine_sand, 3, 5);
    add(plan, holder(dice.real(3, 7), "one"), dice.whole(1, 3));
    add(plan, holder(dice.real(3, 7), "other"), dice.whole(1, 3));
    for (int n = dice.whole(1, 6); n > 0; --n) {
      Piece piece =
          piece_at(dice.pick(kinds), dice.real(5, 95), dice.real(4, 36), dice.real(6, 30), dice.real(5, 25), dice.real(5, 30));
      piece.turn_deg = dice.real(-90, 90);
      piece.mirror = dice.percent(50);
      plan.pieces.push_back(piece);
    }
    const Territories here = homes_of(plan), there = homes_of(mirrored(plan));
    ASSERT_EQ(here.homes.size(), there.homes.size());
    EXPECT_NEAR(here.broken_share, there.broken_share, 1e-9) << round;
    some_broken += here.broken_share > 0 && here.broken_share < 1;
    bool same = true;
    for (std::size_t i = 0; i < here.homes.size(); ++i)
      same = same && std::abs(100 - here.homes[i].x_cm - there.homes[i].x_cm) < 1e-5 &&
             std::abs(here.homes[i].z_cm - there.homes[i].z_cm) < 1e-5;
    same_homes += same;
  }
  // Where left and right are equally good the same side is taken in both.
  EXPECT_GT(same_homes, rounds * 9 / 10);
  EXPECT_GT(some_broken, rounds / 6);
}

TEST(Territories, DoNotFollowTheOrderOfTheStock) {
  Plan plan = a_plan().tank(120, 40, 40).fish(holder(7, "large"), 2).fish(holder(4, "small"), 3);
  plan.pieces = {piece_at("block", 50, 20, 4, 30, 25), piece_at("cave", 90, 25, 13, 9, 7)};
  const Territories before = homes_of(plan);
  std::swap(plan.stock[0], plan.stock[1]);
  EXPECT_EQ(homes_of(plan), before);
  EXPECT_EQ(before.homes[0].species, "large");
}

// Floor wanted by n of a kind, sight breaks taken off, in floors of one.
TEST(Territories, OneHolderMoreNeverWantsLessFloor) {
  Dice dice(9);
  for (int round = 0; round < 40 / plans_step; ++round) {
    Plan plan = a_plan().tank(100, 40, 40).fish(holder(dice.real(3, 7)), 1);
    for (int n = dice.whole(1, 6); n > 0; --n)
      plan.pieces.push_back(piece_at(dice.percent(50) ? "block" : "cave", dice.real(5, 95), dice.real(4, 36), dice.real(6, 20),
                                     dice.real(5, 25), dice.real(5, 30)));
    const BodyRooms bodies = bodies_of(plan);
    double before = 0;
    for (int count = 1; count <= 16; ++count) {
      plan.stock[0].count = count;
      const double wanted = count * sight_factor(territories_of(plan, resolve_stock(plan, the_catalog()), bodies));
      EXPECT_GT(wanted, before + 0.1) << round << ": " << count;
      before = wanted;
    }
  }
}

}  // namespace
}  // namespace shoalwright
