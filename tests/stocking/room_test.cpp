// SPDX-License-Identifier: MIT
#include "stocking/room.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "stocking/layers.h"
#include "stocking/profile.h"
#include "support/samples.h"
#include "tank/open_water.h"

namespace shoalwright {
namespace {

Room room(const Plan& plan) { return room_of(plan, resolve_stock(plan, {}), volume_of(plan)); }

Plan stocked() {
  Plan plan = box_plan(88.4, 43.4, 44.2, 41.5);
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = 3;
  plan.substrate.back_cm = 7;
  add(plan, sample_species("calm", Style::calm_mid, 4.5), 10);
  add(plan, sample_species("shoal", Style::bottom_shoal, 6.5), 8);
  return plan;
}

TEST(Room, LayersAreEqualThirdsOverTheMeanSubstrate) {
  const Room r = room(stocked());
  EXPECT_EQ(r.layers[0].name, "surface");
  EXPECT_EQ(r.layers[1].name, "mid");
  EXPECT_EQ(r.layers[2].name, "bottom");
  EXPECT_EQ(r.layers[0].from_cm, 0);
  EXPECT_NEAR(r.layers[2].to_cm, 41.5 - 5, 1e-9);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(r.layers[i].to_cm - r.layers[i].from_cm, 36.5 / 3, 1e-9);
    EXPECT_NEAR(r.layers[i].open_l, 88.4 * 43.4 * 36.5 / 3000, 1e-6);
    EXPECT_NEAR(r.layers[i].lane_cm, 88.4, 1e-9);
  }
}

TEST(Room, OpenWaterOfTheLayersIsAllTheWaterOverTheSubstrate) {
  for (const auto& [front, back] : {std::pair{0.0, 0.0}, {3.0, 7.0}, {0.0, 25.0}, {30.0, 1.0}}) {
    Plan plan = stocked();
    plan.substrate.front_cm = front;
    plan.substrate.back_cm = back;
    const Room r = room(plan);
    EXPECT_NEAR(r.open_l, open_water_below_l(plan, plan.tank.fill_cm), 1e-9);
    EXPECT_LE(r.open_l, volume_of(plan).net_l);
  }
}

TEST(Room, CrowdingIsWhatIsWantedOverWhatIsOpen) {
  const Plan plan = stocked();
  const Room r = room(plan);
  const double third = 88.4 * 43.4 * 36.5 / 3000;
  const double calm = 10 * personal_volume_l(27, Body::fusiform, 4.5), shoal = 8 * personal_volume_l(8, Body::fusiform, 6.5);
  EXPECT_NEAR(*r.layers[0].crowding, (0.15 * calm + 0.05 * shoal) / third, 1e-6);
  EXPECT_NEAR(*r.layers[1].crowding, (0.60 * calm + 0.10 * shoal) / third, 1e-6);
  EXPECT_NEAR(*r.layers[2].crowding, (0.25 * calm + 0.85 * shoal) / third, 1e-6);
  EXPECT_NEAR(r.floor_cm2, 0.9 * 88.4 * 43.4, 1e-9);
  EXPECT_NEAR(*r.floor_crowding, 8 * floor_need_cm2(Style::bottom_shoal, Body::fusiform, 6.5) / r.floor_cm2, 1e-9);
}

// Common practice, no source: practice calls this stock comfortable, with about 0.35, 0.77 and 0.59 of three layers of 37.7 L
// taken (those figures were worked with a slightly larger bottom shoal).
TEST(Room, OfAWellFilledRiverbankIsComfortable) {
  Plan plan = box_plan(88.4, 43.4, 44.2, 41.5);
  plan.tank.fill_cm = 3 * 37.7e3 / (88.4 * 43.4);
  add(plan, sample_species("rasbora", Style::calm_mid, 4.5), 10);
  add(plan, sample_species("corydoras", Style::bottom_shoal, 6.5), 8);
  add(plan, sample_species("threadfin", Style::active_mid, 4.5), 6);
  add(plan, sample_species("gourami", Style::centrepiece, 5), 2);
  const Room r = room(plan);
  EXPECT_NEAR(r.layers[0].open_l, 37.7, 1e-9);
  EXPECT_NEAR(*r.layers[0].crowding, 0.35, 0.03);
  EXPECT_NEAR(*r.layers[1].crowding, 0.77, 0.03);
  EXPECT_NEAR(*r.layers[2].crowding, 0.59, 0.05);
  for (const Layer& layer : r.layers) EXPECT_LE(*layer.crowding, 0.85);
}

TEST(Room, EveryFieldMovesWhenItsInputDoes) {
  const Plan plan = stocked();
  const Room before = room(plan);
  Plan longer = plan, planted = plan, deeper = plan, more = plan;
  longer.tank.length_cm += 20;
  planted.planting = Planting::dense;
  deeper.substrate.back_cm += 6;
  more.stock[1].count += 4;
  EXPECT_GT(room(longer).open_l, before.open_l);
  EXPECT_GT(room(longer).floor_cm2, before.floor_cm2);
  EXPECT_LT(*room(longer).floor_crowding, *before.floor_crowding);
  EXPECT_LT(room(planted).open_l, before.open_l);
  EXPECT_GT(*room(more).floor_crowding, *before.floor_crowding);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_LT(room(deeper).layers[i].to_cm, before.layers[i].to_cm);
    EXPECT_GT(room(longer).layers[i].open_l, before.layers[i].open_l);
    EXPECT_GT(room(longer).layers[i].lane_cm, before.layers[i].lane_cm);
    EXPECT_GT(*room(more).layers[i].crowding, *before.layers[i].crowding);
    EXPECT_GT(*room(planted).layers[i].crowding, *before.layers[i].crowding);
  }
  for (std::size_t i = 1; i < 3; ++i) EXPECT_LT(room(deeper).layers[i].from_cm, before.layers[i].from_cm);
  const GroupRoom g = before.groups[0], h = room(longer).groups[0];
  EXPECT_GT(h.open_l, g.open_l);
  EXPECT_GT(h.lane_cm, g.lane_cm);
  EXPECT_LT(*h.crowding, *g.crowding);
  Plan grown = plan;
  grown.own_species[0].size.adult_tl_cm = 6;
  EXPECT_GT(room(grown).groups[0].lane_needed_cm, g.lane_needed_cm);
}

TEST(Room, AnUnknownSpeciesLeavesEveryCrowdingEmptyButNotTheTank) {
  Plan plan = stocked();
  Group stranger;
  stranger.species = "nobody-knows";
  stranger.count = 3;
  plan.stock.push_back(stranger);
  const Room r = room(plan);
  for (const Layer& layer : r.layers) {
    EXPECT_FALSE(layer.crowding);
    EXPECT_GT(layer.open_l, 0);
  }
  EXPECT_FALSE(r.floor_crowding);
  ASSERT_EQ(r.groups.size(), 2u);
  EXPECT_FALSE(r.groups[0].crowding);
  EXPECT_GT(r.groups[0].lane_needed_cm, 0);
}

TEST(Room, AnUnknownPlantingWithholdsTheLayersOnly) {
  Plan plan = stocked();
  plan.planting.reset();
  const Room r = room(plan);
  EXPECT_FALSE(r.layers[1].crowding);
  EXPECT_TRUE(r.floor_crowding);
}

TEST(Room, WithoutStockNothingIsTaken) {
  const Room r = room(box_plan(60, 30, 30, 27));
  for (const Layer& layer : r.layers) EXPECT_EQ(layer.crowding, 0);
  EXPECT_EQ(r.floor_crowding, 0);
  EXPECT_TRUE(r.groups.empty());
  Plan unsaid = box_plan(60, 30, 30, 27);
  unsaid.planting.reset();
  for (const Layer& layer : room(unsaid).layers) EXPECT_EQ(layer.crowding, 0) << "whatever is planted";
}

TEST(Room, WithoutWaterOverTheSubstrateNothingIsOpen) {
  Plan plan = stocked();
  plan.substrate.front_cm = plan.substrate.back_cm = 42;
  const Room r = room(plan);
  EXPECT_EQ(r.open_l, 0);
  for (const Layer& layer : r.layers) {
    EXPECT_EQ(layer.open_l, 0);
    EXPECT_EQ(layer.lane_cm, 0);
    EXPECT_FALSE(layer.crowding);
  }
}

TEST(Room, AGroupIsShownTheLayersThatItUsesAndTheirWorst) {
  Plan plan = stocked();
  add(plan, sample_species("hover", Style::surface_hover, 3.5), 6);
  const Room r = room(plan);
  const GroupRoom& hover = r.groups[2];
  EXPECT_NEAR(hover.open_l, r.layers[0].open_l, 1e-9);  // 0.12 and 0.03 of its time are no use
  EXPECT_EQ(hover.crowding, r.layers[0].crowding);
  EXPECT_NEAR(r.groups[0].open_l, r.layers[1].open_l + r.layers[2].open_l, 1e-9);
  EXPECT_EQ(r.groups[0].crowding, std::max(r.layers[1].crowding, r.layers[2].crowding));
}

TEST(Room, ASlopeShortensALaneOnlyWhereTheLayerMeetsIt) {
  Plan plan = box_plan(40, 80, 60, 50);  // deeper than long: the run goes from front to back
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = 2;
  plan.substrate.back_cm = 42;  // mean 22, layers of 9.33 cm, the bottom one centred 26.7 cm up: cut at z = 49.3
  const Room r = room(plan);
  EXPECT_NEAR(r.layers[0].lane_cm, 80, 1e-9);
  EXPECT_NEAR(r.layers[1].lane_cm, 68, 1e-9);
  EXPECT_NEAR(r.layers[2].lane_cm, 80 * (22 + 28.0 / 6 - 2) / 40, 1e-9);
}

TEST(Room, ABiggerTankIsNeverMoreCrowdedNorShorter) {
  for (int shape = 0; shape < 8; ++shape) {
    Plan plan = stocked();
    Tank& t = plan.tank;
    t.shape = static_cast<Shape>(shape);
    t.bow_cm = 10, t.diameter_cm = 60, t.side_cm = 50, t.front_cm = 20;
    t.outline_cm = {{0, 0}, {80, 0}, {80, 40}, {30, 60}, {0, 45}};
    Plan big = plan;
    for (double* m : {&big.tank.length_cm, &big.tank.width_cm, &big.tank.height_cm, &big.tank.bow_cm, &big.tank.diameter_cm,
                      &big.tank.side_cm, &big.tank.front_cm, &big.tank.fill_cm})
      *m *= 1.2;
    for (Point& p : big.tank.outline_cm) p = {1.2 * p.x_cm, 1.2 * p.z_cm};
    const Room a = room(plan), b = room(big);
    EXPECT_LT(*b.floor_crowding, *a.floor_crowding);
    for (std::size_t i = 0; i < 3; ++i) {
      EXPECT_LT(*b.layers[i].crowding, *a.layers[i].crowding) << shape;
      EXPECT_GT(b.layers[i].lane_cm, a.layers[i].lane_cm) << shape;
    }
  }
}

TEST(Room, TallIsNotLong) {
  Plan plan = stocked();
  const double lane = room(plan).layers[1].lane_cm;
  plan.tank.height_cm += 40;
  plan.tank.fill_cm += 40;
  EXPECT_EQ(room(plan).layers[1].lane_cm, lane);
  EXPECT_LT(*room(plan).layers[1].crowding, *room(stocked()).layers[1].crowding);
}

TEST(Room, OneShoalOnTwoLinesIsOneShoal) {
  Plan split = stocked();
  split.stock[0].count = 4;
  Group rest = split.stock[0];
  rest.count = 6;
  split.stock.push_back(rest);
  EXPECT_EQ(room(split), room(stocked()));
}

TEST(Room, MoreFishNeverLowersCrowding) {
  for (std::size_t line = 0; line < 2; ++line) {
    Plan plan = stocked();
    const Room before = room(plan);
    ++plan.stock[line].count;
    const Room after = room(plan);
    EXPECT_GE(*after.floor_crowding, *before.floor_crowding);
    for (std::size_t i = 0; i < 3; ++i) EXPECT_GT(*after.layers[i].crowding, *before.layers[i].crowding);
  }
}

TEST(DepthProfile, StripsAddUpToTheLayersAndToTheWholeDemand) {
  for (const auto& [front, back] : {std::pair{0.0, 0.0}, {3.0, 7.0}, {0.0, 30.0}}) {
    Plan plan = stocked();
    plan.planting = Planting::medium;
    plan.substrate.front_cm = front;
    plan.substrate.back_cm = back;
    const std::vector<Kept> stock = resolve_stock(plan, {});
    const Room r = room(plan);
    const DepthProfile p = depth_profile_of(plan, stock, 7);
    ASSERT_GE(p.open_l_cm.size(), 21u);
    EXPECT_NEAR(p.step_cm * 21, r.layers[2].to_cm, 1e-9);
    const auto sum = [&](const std::vector<double>& v, std::size_t from, std::size_t to) {
      return std::accumulate(v.begin() + static_cast<long>(from), v.begin() + static_cast<long>(to), 0.0) * p.step_cm;
    };
    EXPECT_NEAR(sum(p.open_l_cm, 0, 7), r.layers[0].open_l, 1e-9);
    EXPECT_NEAR(sum(p.open_l_cm, 7, 14), r.layers[1].open_l, 1e-9);
    EXPECT_NEAR(sum(p.open_l_cm, 14, p.open_l_cm.size()), r.layers[2].open_l, 1e-9);
    ASSERT_EQ(p.groups.size(), 2u);
    for (std::size_t i = 0; i < 2; ++i) {
      const Demand d = demand_of(stock[i]);
      ASSERT_EQ(p.groups[i].wanted_l_cm.size(), p.open_l_cm.size());
      EXPECT_NEAR(sum(p.groups[i].wanted_l_cm, 0, p.open_l_cm.size()), d.count * d.personal_l, 1e-9);
      for (const double wanted : p.groups[i].wanted_l_cm) EXPECT_GE(wanted, 0);
    }
  }
}

TEST(DepthProfile, PutsEachGroupWhereItSwims) {
  Plan plan = box_plan(60, 30, 30, 27);
  add(plan, sample_species("hover", Style::surface_hover, 3.5), 6);
  add(plan, sample_species("shoal", Style::bottom_shoal, 5), 6);
  const DepthProfile p = depth_profile_of(plan, resolve_stock(plan, {}), 10);
  const auto deepest = [](const std::vector<double>& v) { return std::max_element(v.begin(), v.end()) - v.begin(); };
  EXPECT_NEAR(static_cast<double>(deepest(p.groups[0].wanted_l_cm)), 4.5, 1);   // around one sixth of the depth
  EXPECT_NEAR(static_cast<double>(deepest(p.groups[1].wanted_l_cm)), 24.5, 1);  // around five sixths
}

TEST(DepthProfile, IsEmptyWithoutWater) {
  Plan plan = stocked();
  plan.tank.fill_cm = 0;
  EXPECT_TRUE(depth_profile_of(plan, resolve_stock(plan, {})).open_l_cm.empty());
}

}  // namespace
}  // namespace shoalwright
