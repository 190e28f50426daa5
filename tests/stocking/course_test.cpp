// SPDX-License-Identifier: MIT
#include "stocking/course.h"

#include <gtest/gtest.h>

#include "assess/assess.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

Plan fed_tank() {
  Plan plan = box_plan(80, 35, 40, 37.5);
  add(plan, sample_species("some-fish", Style::calm_mid, 5), 12);
  return plan;
}

std::vector<CoursePoint> course_of(const Plan& plan, double days) {
  const Assessment assessment = assess(plan, {});
  return nitrate_course(plan, assessment.load, assessment.volume, days);
}

TEST(NitrateCourse, WithoutAMeasurementItRunsBetweenTheSettledPeakAndTrough) {
  const Plan plan = fed_tank();
  const Load load = assess(plan, {}).load;
  const auto course = course_of(plan, 56);
  ASSERT_EQ(course.size(), 1u + 2 * 8);
  for (std::size_t i = 0; i < course.size(); ++i)
    EXPECT_NEAR(course[i].nitrate_mg_l, i % 2 == 0 ? *load.nitrate_trough_mg_l : *load.nitrate_peak_mg_l, 1e-9) << i;
}

// Mass balance by hand: every change takes the same share of what is above the source.
TEST(NitrateCourse, FromAMeasurementItComesToTheSameBalance) {
  Plan plan = fed_tank();
  plan.measured = Measured{};
  plan.measured->nitrate_mg_l = 80;
  const Load load = assess(plan, {}).load;
  const auto course = course_of(plan, 7 * 30);
  EXPECT_DOUBLE_EQ(course.front().nitrate_mg_l, 80);
  EXPECT_NEAR(course.back().nitrate_mg_l, *load.nitrate_trough_mg_l, 0.01);
  const double before = course[1].nitrate_mg_l, after = course[2].nitrate_mg_l;
  EXPECT_NEAR(after, before - 0.3 * (before - 10), 1e-9);
}

TEST(NitrateCourse, EndsOnItsLastDayAndNeverGoesBack) {
  const auto course = course_of(fed_tank(), 10);
  EXPECT_DOUBLE_EQ(course.back().day, 10);
  for (std::size_t i = 1; i < course.size(); ++i) EXPECT_GE(course[i].day, course[i - 1].day);
}

TEST(NitrateCourse, WhatIsNotKnownHasNoCourse) {
  Plan plan = fed_tank();
  plan.source.nitrate_mg_l.reset();
  EXPECT_TRUE(course_of(plan, 56).empty());
  plan = fed_tank();
  plan.upkeep.reset();
  EXPECT_TRUE(course_of(plan, 56).empty());
}

}  // namespace
}  // namespace shoalwright
