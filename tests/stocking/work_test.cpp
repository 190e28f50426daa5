// SPDX-License-Identifier: MIT
#include "stocking/work.h"

#include <gtest/gtest.h>

#include "stocking/plant_growth.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

Plan changed(double fraction, double every_days) {
  Plan plan = box_plan(100, 40, 50, 50);
  plan.upkeep = Upkeep{.change_fraction = fraction, .every_days = every_days, .other_keys = ""};
  return plan;
}

// 200 L, a fifth of it: 40 L, four buckets, 10 + 4 x 3 minutes.
TEST(ChangeWork, CountsBucketsAndMinutes) {
  const auto weekly = change_work(changed(0.2, 7), volume_of(changed(0.2, 7)));
  ASSERT_TRUE(weekly);
  EXPECT_NEAR(weekly->litres, 40, 1e-9);
  EXPECT_EQ(weekly->buckets, 4);
  EXPECT_NEAR(weekly->minutes_a_week, 22, 1e-9);
  const auto daily = change_work(changed(0.01, 1), volume_of(changed(0.01, 1)));
  EXPECT_EQ(daily->buckets, 1);
  EXPECT_NEAR(daily->litres_a_week, 14, 1e-9);
  EXPECT_NEAR(daily->minutes_a_week, 7 * 13, 1e-9);
}

TEST(ChangeWork, NoneWhereNothingIsChangedOrKnown) {
  EXPECT_FALSE(change_work(changed(0, 7), volume_of(changed(0, 7))));
  Plan plan = changed(0.2, 7);
  plan.upkeep.reset();
  EXPECT_FALSE(change_work(plan, volume_of(plan)));
}

// Medium planting is 40 g dry a m2: 16 g over 0.4 m2, times 0.03 a day times 26.5 mg/g.
TEST(PlantsMayTake, ByWhatGrowsAndNeverMoreThanHalf) {
  Plan plan = changed(0.2, 7);
  plan.planting = Planting::medium;
  EXPECT_NEAR(*plants_may_take_mg_d(plan, 1000), 16 * 0.03 * 26.5, 1e-9);
  EXPECT_NEAR(*plants_may_take_mg_d(plan, 10), 5, 1e-9);
  plan.planting = Planting::none;
  EXPECT_EQ(plants_may_take_mg_d(plan, 10), 0);
  plan.planting.reset();
  EXPECT_FALSE(plants_may_take_mg_d(plan, 10));
}

// Peak 40 over a tap of 10; the plants take a third of 38.16 mg x 3 a day.
TEST(PlantsMayTake, LowerThePeakByTheirShareAndOnlyBesideIt) {
  Plan plan = changed(0.2, 7);
  plan.planting = Planting::medium;
  plan.source.nitrate_mg_l = 10;
  Load load;
  load.tan_mg_d = 3 * 16 * 0.03 * 26.5;
  load.nitrate_peak_mg_l = 40;
  EXPECT_NEAR(*nitrate_peak_with_plants(plan, load, volume_of(plan)), 10 + 30 * 2.0 / 3, 1e-9);
  load.tan_mg_d = 10;  // never more than half
  EXPECT_NEAR(*nitrate_peak_with_plants(plan, load, volume_of(plan)), 25, 1e-9);
  plan.planting = Planting::none;
  EXPECT_FALSE(nitrate_peak_with_plants(plan, load, volume_of(plan)));
}

}  // namespace
}  // namespace shoalwright
