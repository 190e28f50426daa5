// SPDX-License-Identifier: MIT
#include "stocking/air_course.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "share/plan_json.h"
#include "stocking/air.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

Plan riverbank() { return read_plan(test_file("plans/riverbank.json")).value(); }

std::vector<AirPoint> course(const Plan& plan, double water_c) {
  return air_course(plan, resolve_stock(plan, the_catalog()), volume_of(plan), water_c);
}

TEST(AirCourse, IsLowestBeforeTheLampsAndNeverUnderTheSettledDawn) {
  const Plan plan = riverbank();
  const Air air = air_of(plan, resolve_stock(plan, the_catalog()), volume_of(plan), 25);
  const std::vector<AirPoint> points = course(plan, 25);
  ASSERT_EQ(points.size(), 25u);
  const auto lowest = std::min_element(points.begin(), points.end(),
                                       [](const AirPoint& a, const AirPoint& b) { return a.oxygen_mg_l < b.oxygen_mg_l; });
  EXPECT_EQ(lowest->hour, lamps_on_hour);
  EXPECT_GE(lowest->oxygen_mg_l, *air.dawn_mg_l);
  EXPECT_LT(lowest->oxygen_mg_l, *air.dawn_mg_l + 0.5) << "a night is long enough to come near it";
  for (const AirPoint& point : points) EXPECT_LT(point.oxygen_mg_l, *air.saturation_mg_l);
}

// dC/dt = k (settled - C): a step of an hour on the curve agrees with many small ones.
TEST(AirCourse, GoesRoundAndFollowsItsEquation) {
  const Plan plan = riverbank();
  const std::vector<AirPoint> points = course(plan, 25);
  ASSERT_EQ(points.size(), 25u);
  EXPECT_NEAR(points.front().oxygen_mg_l, points.back().oxygen_mg_l, 1e-9);
  const AirOfTank tank = air_of_tank(plan, volume_of(plan), 25);
  const OxygenUse night = *night_oxygen_use(plan, resolve_stock(plan, the_catalog()), 25);
  const double net_l = volume_of(plan).net_l;
  double oxygen = points[18].oxygen_mg_l;
  constexpr int steps = 20000;
  for (int i = 0; i < steps; ++i)
    oxygen += 6.0 / steps * (*tank.supply_l_h * (*tank.saturation_mg_l - oxygen) - night.total_mg_h()) / net_l;
  EXPECT_NEAR(oxygen, points[24].oxygen_mg_l, 1e-3);
}

TEST(AirCourse, NothingWhereDawnIsNotKnown) {
  Plan plan = riverbank();
  plan.planting.reset();
  EXPECT_TRUE(course(plan, 25).empty());
}

}  // namespace
}  // namespace shoalwright
