// SPDX-License-Identifier: MIT
#include "stocking/air.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stocking/gas_transfer.h"
#include "support/dice.h"
#include "support/samples.h"
#include "water/oxygen.h"

namespace shoalwright {
namespace {

Air air(const Plan& plan, double water_c = 25) { return air_of(plan, resolve_stock(plan, {}), volume_of(plan), water_c); }

/// An open tank with that surface.
Plan open_tank(double length_cm, double width_cm, SurfaceMotion surface) {
  Plan plan = box_plan(length_cm, width_cm, 40, 37);
  plan.tank.lid = false;
  plan.gear = Gear{};
  plan.gear->surface = surface;
  return plan;
}

void add_fish(Plan& plan, int count, double length_cm, Body body = Body::fusiform) {
  const std::string id = "kind-" + std::to_string(plan.stock.size());
  add(plan, sample_species(id, Style::calm_mid, length_cm, body), count);
}

Plan usual_tank() {
  Plan plan = open_tank(75, 30, SurfaceMotion::gentle);
  plan.planting = Planting::light;
  add_fish(plan, 10, 4.5);
  add_fish(plan, 6, 5);
  return plan;
}

struct Case {
  Plan plan;
  double plants_mg_h = 0, at_25 = 0, at_28 = 0;
};

double dawn_with(const Plan& plan, double plants_mg_h, double water_c) {
  OxygenUse night = *night_oxygen_use(plan, resolve_stock(plan, {}), water_c);
  night.plants_mg_h = plants_mg_h;
  return dawn_oxygen_mg_l(oxygen_saturation_mg_l(water_c), *oxygen_supply_l_h(plan, volume_of(plan), water_c), night);
}

// Tanks that keepers call sound want no warning, a heavy load on a gentle surface wants a look, forty fish under a mirror gasp:
// common practice, no source; figures reckoned apart from this program.
TEST(Air, JudgesTanksAsKeepersDo) {
  Case sound{open_tank(88.4, 43.4, SurfaceMotion::gentle), 5, 6.15, 5.53};
  add_fish(sound.plan, 16, 4.5);
  add_fish(sound.plan, 8, 6.5);
  add_fish(sound.plan, 2, 5, Body::short_deep);
  Case small{open_tank(59, 29, SurfaceMotion::gentle), 4, 6.17, 5.59};
  add_fish(small.plan, 10, 3.5);
  add_fish(small.plan, 6, 5.5);
  Case heavy{open_tank(119, 39, SurfaceMotion::gentle), 5, 4.60, 3.79};
  add_fish(heavy.plan, 4, 12, Body::short_deep);
  add_fish(heavy.plan, 12, 4.5);
  add_fish(heavy.plan, 8, 6);
  Case ruffled = heavy;
  ruffled.plan.gear->surface = SurfaceMotion::rippled;
  ruffled.at_25 = 6.43;
  ruffled.at_28 = 5.81;
  Case mirror{open_tank(75, 30, SurfaceMotion::quiet), 0, 2.04, 0.89};
  add_fish(mirror.plan, 40, 4.5);
  for (const Case& one : {sound, small, heavy, ruffled, mirror}) {
    EXPECT_NEAR(dawn_with(one.plan, one.plants_mg_h, 25), one.at_25, 0.01);
    EXPECT_NEAR(dawn_with(one.plan, one.plants_mg_h, 28), one.at_28, 0.01);
  }
  const OxygenUse night = *night_oxygen_use(mirror.plan, resolve_stock(mirror.plan, {}), 25);
  const double supply = *oxygen_supply_l_h(mirror.plan, volume_of(mirror.plan), 25);
  EXPECT_NEAR(dawn_band_mg_l(oxygen_saturation_mg_l(25), supply, night).high, 3.76, 0.01);
}

TEST(Air, FallsWithWhatTakesAndRisesWithWhatGives) {
  const Plan plan = usual_tank();
  const double dawn = *air(plan).dawn_mg_l;
  Plan more = plan, larger_fish = plan, lid = plan, floating = plan, planted = plan, fed = plan, narrow = plan;
  ++more.stock[0].count;
  larger_fish.own_species[0].size.adult_tl_cm = 6;
  lid.tank.lid = true;
  Piece leaves;
  leaves.kind = "floating-plants";
  leaves.length_cm = leaves.depth_cm = 15;
  leaves.height_cm = 4;
  floating.pieces = {leaves};
  planted.planting = Planting::dense;
  fed.feeding->ration = Ration::heavy;
  narrow.tank.width_cm = 25;
  for (const Plan& worse : {more, larger_fish, lid, floating, planted, fed, narrow}) EXPECT_LT(*air(worse).dawn_mg_l, dawn);
  for (const Plan& worse : {more, larger_fish, planted, fed}) EXPECT_GT(*air(worse).demand_mg_h, *air(plan).demand_mg_h);
  Plan rippled = plan, wide = plan;
  rippled.gear->surface = SurfaceMotion::rippled;
  wide.tank.width_cm = 40;
  for (const Plan& better : {rippled, wide}) EXPECT_GT(*air(better).dawn_mg_l, dawn);
}

TEST(Air, FallsAsTheWaterWarms) {
  const Plan plan = usual_tank();
  for (double t = 15; t < 36; ++t) {
    EXPECT_LT(*air(plan, t + 1).saturation_mg_l, *air(plan, t).saturation_mg_l);
    EXPECT_LT(*air(plan, t + 1).dawn_mg_l, *air(plan, t).dawn_mg_l);
    EXPECT_GT(*air(plan, t + 1).demand_mg_h, *air(plan, t).demand_mg_h);
  }
}

TEST(Air, RisesWithEveryWordForTheSurface) {
  Plan plan = usual_tank();
  double before = -1;
  for (const SurfaceMotion surface :
       {SurfaceMotion::still, SurfaceMotion::quiet, SurfaceMotion::gentle, SurfaceMotion::rippled, SurfaceMotion::vigorous}) {
    plan.gear->surface = surface;
    EXPECT_GT(*air(plan).dawn_mg_l, before);
    before = *air(plan).dawn_mg_l;
  }
}

TEST(Air, RisesWithTheFlowWhereTheSurfaceIsNotSaid) {
  Plan plan = usual_tank();
  plan.gear->surface.reset();
  plan.gear->filter_known = true;
  const double none = *air(plan).dawn_mg_l;
  plan.gear->filter = Filter{};
  double before = none;
  for (const double flow_l_h : {50.0, 200.0, 500.0}) {
    plan.gear->filter->flow_l_h = flow_l_h;
    EXPECT_GT(*air(plan).dawn_mg_l, before);
    before = *air(plan).dawn_mg_l;
  }
}

TEST(Air, AfterAMealItIsLowerThanInASleepingUnplantedTank) {
  Plan plan = usual_tank();
  plan.planting = Planting::none;
  const OxygenUse night = *night_oxygen_use(plan, resolve_stock(plan, {}), 25);
  const double supply = *oxygen_supply_l_h(plan, volume_of(plan), 25), saturation = oxygen_saturation_mg_l(25);
  EXPECT_LT(dawn_oxygen_mg_l(saturation, supply, after_meal(night)), dawn_oxygen_mg_l(saturation, supply, night));
}

TEST(Air, AnEmptyBareTankIsSaturated) {
  Plan plan = open_tank(60, 30, SurfaceMotion::still);
  EXPECT_EQ(air(plan).dawn_mg_l, air(plan).saturation_mg_l);
  EXPECT_EQ(air(plan).demand_mg_h, 0);
  EXPECT_FALSE(air(plan).limit_mg_l);
}

TEST(Air, TheNeediestKindSetsTheLimit) {
  Plan plan = usual_tank();
  EXPECT_EQ(air(plan).limit_mg_l, 5);  // neither card says
  plan.own_species[0].water.oxygen_least_mg_l = 6;
  EXPECT_EQ(air(plan).limit_mg_l, 6);
  plan.own_species[0].water.oxygen_least_mg_l = plan.own_species[1].water.oxygen_least_mg_l = 3;
  EXPECT_EQ(air(plan).limit_mg_l, 4);  // what bacteria want
  plan.stock[0].species = "nobody-knows";
  plan.own_species[1].water.oxygen_least_mg_l = 5.5;
  EXPECT_EQ(air(plan).limit_mg_l, 5.5);
}

TEST(Air, WhatIsNotKnownWithholdsWhatItWouldEnter) {
  const Plan plan = usual_tank();
  EXPECT_TRUE(air(plan).dawn_mg_l && air(plan).dawn_low_mg_l);
  const Air cold = air_of(plan, resolve_stock(plan, {}), volume_of(plan), std::nullopt);
  EXPECT_TRUE(cold.limit_mg_l);
  EXPECT_FALSE(cold.saturation_mg_l || cold.demand_mg_h || cold.dawn_mg_l);
  Plan no_gear = plan, no_food = plan, no_plants = plan, stranger = plan;
  no_gear.gear.reset();
  no_food.feeding.reset();
  no_plants.planting.reset();
  stranger.stock[1].species = "nobody-knows";
  EXPECT_TRUE(air(no_gear).demand_mg_h);
  EXPECT_FALSE(air(no_gear).dawn_mg_l || air(no_gear).dawn_low_mg_l);
  for (const Plan& p : {no_food, no_plants, stranger}) {
    EXPECT_TRUE(air(p).saturation_mg_l);
    EXPECT_FALSE(air(p).demand_mg_h || air(p).dawn_mg_l || air(p).dawn_low_mg_l);
  }
}

TEST(Air, OneLineOrTwoMakeNoDifference) {
  Plan one = open_tank(75, 30, SurfaceMotion::gentle), two = one;
  add_fish(one, 12, 4.5);
  two.own_species = one.own_species;
  two.stock = {one.stock[0], one.stock[0]};
  two.stock[0].count = two.stock[1].count = 6;
  EXPECT_EQ(air(one), air(two));
}

TEST(Air, IsNeverBelowNothingNorAboveSaturation) {
  Dice dice(5);
  for (int i = 0; i < 1000; ++i) {
    Plan plan = open_tank(dice.real(5, 300), dice.real(5, 100), SurfaceMotion::still);
    plan.gear->surface = static_cast<SurfaceMotion>(dice.below(5));
    plan.planting = static_cast<Planting>(dice.below(4));
    plan.tank.lid = dice.percent(50);
    for (int k = dice.below(4); k > 0; --k) add_fish(plan, dice.whole(1, 60), dice.real(1, 40));
    const Air a = air(plan, dice.real(0, 50));
    EXPECT_TRUE(std::isfinite(*a.dawn_mg_l) && std::isfinite(*a.demand_mg_h));
    EXPECT_GE(*a.dawn_low_mg_l, 0);
    EXPECT_GE(*a.dawn_mg_l, *a.dawn_low_mg_l);
    EXPECT_LE(*a.dawn_mg_l, *a.saturation_mg_l);
  }
}

}  // namespace
}  // namespace shoalwright
