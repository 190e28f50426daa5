// SPDX-License-Identifier: MIT
// Hills and valleys as fish find them.
#include <gtest/gtest.h>

#include <cmath>

#include "scape/grazing.h"
#include "share/patch.h"
#include "stocking/layers.h"
#include "stocking/profile.h"
#include "stocking/spread.h"
#include "stocking/territory.h"
#include "support/builders.h"
#include "support/pieces.h"
#include "support/plan_files.h"
#include "support/random_stock.h"
#include "tank/open_water.h"

namespace shoalwright {
namespace {

using Line = std::vector<LinePoint>;

constexpr BodySize rasbora{1.2, 4.5};

Plan hilly(Line line) {
  Plan plan = box_plan(80, 30, 40, 36);
  plan.substrate.kind = SubstrateKind::smooth_gravel;
  plan.substrate.front_cm = 2;
  plan.substrate.back_cm = 4;
  plan.substrate.line_cm = std::move(line);
  return plan;
}

std::array<double, 3> lanes(const Plan& plan) {
  BodyRooms bodies = bodies_of(plan);
  return {bodies.lane(rasbora, 0).cm, bodies.lane(rasbora, 1).cm, bodies.lane(rasbora, 2).cm};
}

TEST(Hill, EndsTheLanesOfTheLevelsThatItRisesThrough) {
  // Water of 33 cm over the mean: the bottom level goes up to about 15 cm.
  const std::array<double, 3> flat = lanes(hilly({}));
  for (const double lane : flat) EXPECT_NEAR(lane, 80, 1e-9);
  const std::array<double, 3> low = lanes(hilly({{30, 0}, {40, 4}, {50, 0}}));
  EXPECT_NEAR(low[2], 80, 1e-9) << "a body passes over it";
  const std::array<double, 3> high = lanes(hilly({{20, 0}, {30, 18}, {40, 0}}));
  EXPECT_NEAR(high[0], 80, 1e-9);
  EXPECT_NEAR(high[1], 80, 1e-9);
  // The right side is left from the flank of the hill on, 47 cm of it, and from corner to corner a little more.
  EXPECT_LT(high[2], std::hypot(47, 30) + 1);
  EXPECT_GT(high[2], 46);
  EXPECT_NEAR(layers_of(hilly({{20, 0}, {30, 18}, {40, 0}})).run_cm[2], 80, 1e-9) << "the tank itself is as long as ever";
}

TEST(Hill, WithAndWithoutAPieceGivesTheSameLane) {
  Plan plan = hilly({{20, 0}, {30, 18}, {40, 0}});
  const std::array<double, 3> alone = lanes(plan);
  plan.pieces = {piece_at("block", 30, 15, 2, 2, 2)};  // on the crest
  EXPECT_NEAR(lanes(plan)[2], alone[2], 1e-9);
}

TEST(Hill, CutsWaterOffThatABodyCannotReach) {
  // Two hills up to the surface: what lies between them and beyond is out of reach.
  const Plan plan = hilly({{20, 0}, {24, 34}, {26, 34}, {30, 0}, {60, 0}, {64, 34}, {66, 34}, {70, 0}});
  BodyRooms bodies = bodies_of(plan);
  EXPECT_LT(bodies.reach(rasbora)[2], 0.6);
  EXPECT_FALSE(bodies.cut_off(rasbora).empty());
  EXPECT_EQ(bodies_of(hilly({})).reach(rasbora)[2], 1);
}

TEST(Hill, StandsInTheGridAsItIs) {
  for (const Line& line : {Line{{20, 0}, {30, 18}, {40, 0}}, Line{{0, -4}, {40, 10}, {80, -4}}, Line{{40, 6}}}) {
    const Plan plan = hilly(line);
    const TankGrid grid = tank_grid_of(plan, cell_size_cm(plan));
    EXPECT_NEAR(open_l(grid), open_water_below_l(plan, 36), 0.015 * open_water_below_l(plan, 36));
    for (int k = 1; k + 1 < grid.size.z; ++k)
      for (int i = 1; i + 1 < grid.size.x; ++i)
        for (int j = 1; j + 1 < grid.size.y; ++j)
          EXPECT_EQ(grid.taken[grid.size.at(i, k, j)] != 0, grid.y_cm(j) < substrate_height_cm(plan, grid.x_cm(i), grid.z_cm(k)))
              << i << " " << k << " " << j;
  }
}

TEST(Hill, IsNoticedWhereverItMoves) {
  BodyRooms kept;
  const Line lines[] = {{}, {{20, 0}, {30, 18}, {40, 0}}, {{30, 0}, {40, 18}, {50, 0}}, {{30, 0}, {40, 3}, {50, 0}}, {{0, 1}},
                        {}};
  for (const std::vector<Piece>& pieces : {std::vector<Piece>{}, {piece_at("stone", 60, 15, 12, 10, 9)}})
    for (const Line& line : lines) {
      Plan plan = hilly(line);
      plan.pieces = pieces;
      update(kept, plan);
      BodyRooms fresh = bodies_of(plan);
      for (std::size_t level = 0; level < 3; ++level) {
        EXPECT_EQ(kept.lane(rasbora, level), fresh.lane(rasbora, level)) << line.size() << " " << level;
        EXPECT_EQ(kept.reach(rasbora)[level], fresh.reach(rasbora)[level]);
      }
      EXPECT_EQ(kept.scape().grid.taken, fresh.scape().grid.taken);
    }
}

TEST(Hill, OfALevelLineIsADeeperSlopeToAllThatLiveThere) {
  for (std::uint64_t seed = 1; seed <= 30; seed += plans_step) {
    Plan slope = random_stock(seed);
    if (slope.substrate.kind == SubstrateKind::bare) slope.substrate.kind = SubstrateKind::fine_sand;
    slope.substrate.line_cm.clear();
    if (slope.pieces.empty()) slope.pieces = {piece_at("stone", 10, 10, 8, 6, 5)};  // so that both are looked at in cells
    Plan line = slope;
    line.substrate.front_cm = line.substrate.back_cm = 0;
    line.substrate.line_cm = {{5, slope.substrate.front_cm}};
    slope.substrate.back_cm = slope.substrate.front_cm;
    const Assessment a = assess(slope, the_catalog()), b = assess(line, the_catalog());
    EXPECT_NEAR(a.room.open_l, b.room.open_l, 1e-5 * a.room.open_l) << seed;
    for (std::size_t i = 0; i < a.room.layers.size(); ++i)
      EXPECT_NEAR(a.room.layers[i].lane_cm, b.room.layers[i].lane_cm, 1e-6) << seed;
    ASSERT_EQ(a.findings.size(), b.findings.size()) << seed << said(a) << said(b);
  }
}

TEST(Hill, MirroredWithItsTankMirrorsWhatIsFound) {
  int looked_at = 0;
  for (std::uint64_t seed = 1; seed <= 40; seed += plans_step) {
    Plan plan = random_stock(seed);
    plan.pieces = with_places(plan);
    if (plan.substrate.kind == SubstrateKind::bare) plan.substrate.kind = SubstrateKind::fine_sand;
    const double length_cm = inside_length_cm(plan.tank);
    plan.substrate.line_cm = {{length_cm * 0.1, -1}, {length_cm * 0.3, 8}, {length_cm * 0.45, -2}, {length_cm * 0.9, 3}};
    const Plan other = mirrored(plan);
    const std::array<double, 3> here = lanes(plan), there = lanes(other);
    for (std::size_t level = 0; level < 3; ++level) EXPECT_NEAR(here[level], there[level], 1e-6) << seed << " " << level;
    BodyRooms one = bodies_of(plan), two = bodies_of(other);
    EXPECT_NEAR(grazing_surface_of(plan, one.scape()).glass_cm2, grazing_surface_of(other, two.scape()).glass_cm2, 1e-6);
    const std::vector<Kept> stock = resolve_stock(plan, the_catalog());
    const Spread spread = spread_of(plan, stock, one), back = spread_of(other, stock, two);
    ASSERT_EQ(spread.groups.size(), back.groups.size());
    for (std::size_t g = 0; g < spread.groups.size(); ++g)
      for (std::size_t level = 0; level < 3; ++level)
        EXPECT_NEAR(spread.groups[g].in_level[level], back.groups[g].in_level[level], 1e-6) << seed;
    const Territories homes = territories_of(plan, stock, one), homes_back = territories_of(other, stock, two);
    EXPECT_EQ(homes.homes.size(), homes_back.homes.size());
    EXPECT_NEAR(homes.broken_share, homes_back.broken_share, 1e-9) << seed;
    ++looked_at;
  }
  EXPECT_GT(looked_at, 0);
}

TEST(Hill, LeavesTheWaterOfTheDepthProfileWhole) {
  const Plan plan = hilly({{0, -3}, {20, 0}, {30, 18}, {40, 0}});
  const DepthProfile profile = depth_profile_of(plan, {}, 10);
  double sum = 0;
  for (const double open : profile.open_l_cm) sum += open * profile.step_cm;
  EXPECT_NEAR(sum, open_water_below_l(plan, 36), 1e-9);
}

TEST(Hill, TakesGlassFromThoseThatGraze) {
  const auto glass = [](const Plan& plan) { return grazing_surface_of(plan, bodies_of(plan).scape()).glass_cm2; };
  // Back pane only: half the base times the height of the hill, at the sides nothing.
  EXPECT_NEAR(glass(hilly({})) - glass(hilly({{20, 0}, {30, 18}, {40, 0}})), 20 * 18 / 2.0, 1e-6);
  // 6 cm less than the 4 at the back pane: bare from there on; at the sides as before.
  EXPECT_NEAR(glass(hilly({{20, 0}, {40, -6}, {60, 0}})) - glass(hilly({})),
              4 * (40 - 2 * 20 * 4 / 6.0) + 2 * 20 * 4 / 6.0 * 4 / 2, 1e-6);
  // Up to the left pane: 3 cm in the mean there.
  EXPECT_NEAR(glass(hilly({})) - glass(hilly({{0, 5}, {20, 0}})), 20 * 5 / 2.0 + 30 * 5, 1e-6);
}

Species swimmer() {
  Species species = sample_species("own--fish", Style::active_mid, 5);  // lane: 15 lengths, 75 cm
  species.life.group.least = 1;
  species.life.depth = {0, 0, 1};
  return species;
}

TEST(Hill, InTheWayIsNamedAndItsRemedyGivesTheLaneBack) {
  Plan plan = a_plan().tank(80, 35, 40).floor(SubstrateKind::fine_sand, 2, 4).fish(swimmer(), 1);
  plan.substrate.line_cm = {{20, 0}, {34, 24}, {48, 0}};
  const Catalog none;
  const Assessment before = assess(plan, none);
  const Finding* finding = finding_of(before, "swim-lane");
  ASSERT_TRUE(finding) << said(before);
  EXPECT_NE(finding->why.find("a hill of the substrate"), std::string::npos) << finding->why;
  EXPECT_NE(finding->remedy.find("Lower the hills of the substrate by"), std::string::npos) << finding->remedy;
  ASSERT_FALSE(finding->edits.empty());
  const Result<Plan> mended = apply_patch(plan, finding->edits);
  ASSERT_TRUE(mended) << mended.error().sentence;
  EXPECT_FALSE(finding_of(assess(*mended, none), "swim-lane")) << said(assess(*mended, none));
  EXPECT_FALSE(mended->substrate.line_cm.empty());
  plan.fixed = {"/substrate"};
  const Assessment pinned = assess(plan, none);
  EXPECT_EQ(finding_of(pinned, "swim-lane")->remedy.find("Lower the hills"), std::string::npos) << "what is pinned stays";
}

TEST(Hill, IsPartOfWhatFillsTheTank) {
  const Catalog none;
  Plan plan = a_plan().tank(80, 35, 40).floor(SubstrateKind::fine_sand, 2, 4);
  const Assessment flat = assess(plan, none);
  plan.substrate.line_cm = {{20, 0}, {34, 24}, {48, 0}};
  const Assessment hill = assess(plan, none);
  EXPECT_NEAR(hill.volume.substrate_l - flat.volume.substrate_l, 28 * 24 / 2.0 * 35 / 1000, 1e-6);
  EXPECT_LT(hill.volume.net_l, flat.volume.net_l);
  EXPECT_GT(hill.volume.filled_mass_kg, flat.volume.filled_mass_kg)
      << "sand is heavier than the water that it takes the place of";
  EXPECT_LT(hill.room.open_l, flat.room.open_l);
}

}  // namespace
}  // namespace shoalwright
