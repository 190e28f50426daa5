// SPDX-License-Identifier: MIT
#include "stocking/plant_growth.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stocking/arrivals.h"
#include "water/nitrogen.h"

namespace shoalwright {
namespace {

// Nielsen & Sand-Jensen 1991: growth of 0.007 to 0.109 a day, doubling in 95 to 6.4 days (95 from an unrounded rate).
TEST(PlantGrowth, DoublesAsPublished) {
  EXPECT_NEAR(*doubling_days(0.109), 6.4, 0.05);
  EXPECT_NEAR(*doubling_days(0.007), 95, 0.06 * 95);
  EXPECT_FALSE(doubling_days(0));
  EXPECT_FALSE(doubling_days(-0.1));
}

TEST(PlantGrowth, TakesNitrogenInStep) {
  EXPECT_NEAR(plant_nitrogen_mg_d(20, ordinary_growth_d), 15.9, 0.01);
  EXPECT_EQ(plant_nitrogen_mg_d(20, 0), 0);
  EXPECT_EQ(plant_nitrogen_mg_d(-20, 0.03), 0);
  EXPECT_EQ(plant_nitrogen_mg_d(20, -0.03), 0);
  EXPECT_DOUBLE_EQ(plant_nitrogen_mg_d(40, 0.03), 2 * plant_nitrogen_mg_d(20, 0.03));
}

// A well planted 75 L tank holds the load of a dozen small fish (0.12 g of food a day), not that of forty (0.87 g).
TEST(PlantGrowth, CanHoldALightLoadOnly) {
  const double taken = plant_nitrogen_mg_d(10, ordinary_growth_d), ceiling = 0.225 * plant_nitrogen_most_mg_m2_d;
  EXPECT_LT(taken, ceiling);
  EXPECT_GT(taken, tan_from_feed_mg(0.12, 0.45));
  EXPECT_LT(taken, tan_from_feed_mg(0.87, 0.45));
}

TEST(Arrivals, AQuarterMoreWithEachStage) {
  EXPECT_EQ(arrival_feed_g_d(0.8, -1), 0);
  EXPECT_EQ(arrival_feed_g_d(0.8, 0), 0);
  EXPECT_NEAR(arrival_feed_g_d(0.8, 1), 0.2, 1e-12);
  EXPECT_NEAR(arrival_feed_g_d(0.8, 3), 0.6, 1e-12);
  EXPECT_EQ(arrival_feed_g_d(0.8, 4), 0.8);
  EXPECT_EQ(arrival_feed_g_d(0.8, 9), 0.8);
}

}  // namespace
}  // namespace shoalwright
