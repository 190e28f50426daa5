// SPDX-License-Identifier: MIT
#include "stocking/gas_transfer.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/dice.h"
#include "support/samples.h"
#include "water/oxygen.h"

namespace shoalwright {
namespace {

constexpr SurfaceMotion all_motions[] = {SurfaceMotion::still, SurfaceMotion::quiet, SurfaceMotion::gentle,
                                         SurfaceMotion::rippled, SurfaceMotion::vigorous};

Plan with_filter(double flow_l_h) {
  Plan plan = box_plan(60, 30, 36, 33);
  plan.gear = Gear{};
  plan.gear->filter_known = true;
  plan.gear->filter = Filter{};
  plan.gear->filter->flow_l_h = flow_l_h;
  return plan;
}

// Cole & Caraco 1998: k600 = 2.07 + 0.215 U^1.7 cm/h.
TEST(GasTransfer, WindRufflesALake) {
  EXPECT_DOUBLE_EQ(k600_from_wind_cm_h(0), 2.07);
  EXPECT_NEAR(k600_from_wind_cm_h(1), 2.285, 1e-9);
  EXPECT_NEAR(k600_from_wind_cm_h(5), 2.07 + 0.215 * std::pow(5, 1.7), 1e-9);
  EXPECT_EQ(k600_from_wind_cm_h(-3), 2.07);
}

// Wanninkhof 1992: 600 is carbon dioxide at 20 degrees C; oxygen has 530 there (from memory).
TEST(GasTransfer, SchmidtNumberFallsAsWaterWarms) {
  EXPECT_NEAR(oxygen_schmidt(20), 530.46, 0.5);
  for (double t = 0; t < 31.5; t += 0.5) EXPECT_GT(oxygen_schmidt(t), oxygen_schmidt(t + 0.5));
  EXPECT_EQ(oxygen_schmidt(40), oxygen_schmidt(32));
  EXPECT_EQ(oxygen_schmidt(-5), oxygen_schmidt(0));
}

// O'Connor & Dobbins 1958, 0.4 m deep: the words for a surface stand between what such streams give.
TEST(GasTransfer, WordsFollowTheRiverThatDriftsSo) {
  EXPECT_NEAR(river_transfer_cm_h(0.02, 0.4), k600_cm_h(SurfaceMotion::gentle), 0.4);
  EXPECT_NEAR(river_transfer_cm_h(0.10, 0.4), k600_cm_h(SurfaceMotion::rippled), 0.4);
  EXPECT_EQ(river_transfer_cm_h(0, 0.4), 0);
  EXPECT_EQ(river_transfer_cm_h(0.1, 0), 0);
}

// Cole et al. 2010: small calm lakes 0.35 to 0.74 m a day.
TEST(GasTransfer, AStillTankIsLikeTheCalmestLake) {
  EXPECT_NEAR(k600_cm_h(SurfaceMotion::still), 35.0 / 24, 0.05);
  EXPECT_LT(k600_cm_h(SurfaceMotion::quiet), 74.0 / 24);
  for (int i = 0; i < 4; ++i) EXPECT_LT(k600_cm_h(all_motions[i]), k600_cm_h(all_motions[i + 1]));
}

// Five volumes an hour over 30 cm of water are rippled, two near gentle: common practice, no source.
TEST(GasTransfer, FlowStandsForTheWord) {
  EXPECT_NEAR(k600_from_flow_cm_h(5 * 54, 1800), k600_cm_h(SurfaceMotion::rippled), 0.1);
  EXPECT_NEAR(k600_from_flow_cm_h(2 * 54, 1800), k600_cm_h(SurfaceMotion::gentle), 0.5);
  EXPECT_EQ(k600_from_flow_cm_h(0, 1800), k600_cm_h(SurfaceMotion::quiet));
  EXPECT_EQ(k600_from_flow_cm_h(1e9, 1800), k600_cm_h(SurfaceMotion::vigorous));
  EXPECT_EQ(k600_from_flow_cm_h(100, 0), k600_cm_h(SurfaceMotion::quiet));
}

TEST(GasTransfer, GlassyAndMovingPowersHardlyDifferInATank) {
  for (double t = 20; t <= 30; ++t) {
    const double moving = oxygen_transfer_cm_h(4, t), glassy = oxygen_transfer_cm_h(4, t, glassy_surface_power);
    EXPECT_NEAR(moving, glassy, 0.12 * moving);
  }
  EXPECT_NEAR(oxygen_transfer_cm_h(4, 25, glassy_surface_power) / oxygen_transfer_cm_h(4, 25), 1.06, 0.01);
}

TEST(GasTransfer, OxygenSettlesWhereUseAndSupplyBalance) {
  EXPECT_NEAR(*settled_oxygen_mg_l(8.26, 10, 20), 6.26, 1e-12);
  EXPECT_EQ(settled_oxygen_mg_l(8.26, 10, 0), 8.26);
  EXPECT_FALSE(settled_oxygen_mg_l(8.26, 10, 83));
  EXPECT_FALSE(settled_oxygen_mg_l(8.26, 0, 1));
  for (double target = 1; target < 8; ++target) {
    const double use = largest_oxygen_use_mg_h(8.26, 7, target);
    EXPECT_NEAR(*settled_oxygen_mg_l(8.26, 7, use), target, 1e-12);
  }
  EXPECT_LT(largest_oxygen_use_mg_h(8.26, 7, 9), 0);
}

TEST(GasTransfer, APlansWordWinsOverItsFilter) {
  Plan plan = with_filter(600);
  const Volume volume = volume_of(plan);
  EXPECT_EQ(k600_of(plan, volume), k600_from_flow_cm_h(600, volume.surface_cm2));
  plan.gear->surface = SurfaceMotion::quiet;
  EXPECT_EQ(k600_of(plan, volume), k600_cm_h(SurfaceMotion::quiet));
  plan.gear->surface.reset();
  plan.gear->filter.reset();
  EXPECT_EQ(k600_of(plan, volume), k600_cm_h(SurfaceMotion::still));
}

TEST(GasTransfer, WhatIsNotKnownOfTheSurfaceLeavesItEmpty) {
  Plan plan = with_filter(600);
  plan.gear->filter->flow_l_h.reset();
  EXPECT_FALSE(k600_of(plan, volume_of(plan)));
  plan.gear->filter.reset();
  plan.gear->filter_known = false;
  EXPECT_FALSE(k600_of(plan, volume_of(plan)));
  plan.gear.reset();
  EXPECT_FALSE(oxygen_supply_l_h(plan, volume_of(plan), 25));
  plan = with_filter(600);
  EXPECT_TRUE(oxygen_supply_l_h(plan, volume_of(plan), 25));
  EXPECT_FALSE(oxygen_supply_l_h(plan, Volume{}, 25));
}

TEST(GasTransfer, LidAndFloatingPlantsCloseSomeOfTheSurface) {
  Plan plan = box_plan(60, 30, 36, 33);
  plan.tank.lid = false;
  const auto open = [](const Plan& p) { return open_surface_cm2(p, volume_of(p)); };
  EXPECT_EQ(open(plan), 1800);
  plan.tank.lid = true;
  EXPECT_NEAR(open(plan), 1764, 1e-9);
  plan.tank.lid.reset();
  EXPECT_NEAR(open(plan), 1764, 1e-9);
  plan.tank.lid = false;
  Piece floating;
  floating.kind = "floating-plants";
  floating.length_cm = floating.depth_cm = 20;
  floating.height_cm = 5;
  double before = open(plan);
  for (int i = 0; i < 3; ++i) {
    plan.pieces.push_back(floating);
    EXPECT_LT(open(plan), before);
    before = open(plan);
  }
  plan.pieces.insert(plan.pieces.end(), 50, floating);
  EXPECT_NEAR(open(plan), 900, 1e-9);
  Piece stone = floating;
  stone.kind = "stone";
  plan.pieces = {stone};
  EXPECT_EQ(open(plan), 1800);
}

TEST(GasTransfer, IsANumberForWhateverAPlanMaySay) {
  Dice dice(3);
  for (int i = 0; i < 1000; ++i) {
    const double t = dice.real(0, 50), area = dice.real(0, 40000);
    const double k = oxygen_transfer_cm_h(k600_from_flow_cm_h(dice.real(0, 50000), area), t);
    EXPECT_TRUE(std::isfinite(k) && k > 0 && k < 30);
    EXPECT_TRUE(std::isfinite(k600_from_wind_cm_h(dice.real(-1, 30))));
    const auto settled = settled_oxygen_mg_l(oxygen_saturation_mg_l(t), oxygen_supply_l_h(k, area), dice.real(0, 500));
    EXPECT_TRUE(!settled || (*settled >= 0 && *settled <= oxygen_saturation_mg_l(t)));
  }
}

}  // namespace
}  // namespace shoalwright
