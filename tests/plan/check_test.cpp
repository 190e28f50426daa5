// SPDX-License-Identifier: MIT
#include "plan/check.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "support/samples.h"

namespace shoalwright {
namespace {

Tank prism(std::vector<Point> outline) {
  Tank tank;
  tank.shape = Shape::prism;
  tank.outline_cm = std::move(outline);
  tank.height_cm = 40;
  tank.glass_mm = 8;
  tank.fill_cm = 36;
  return tank;
}

std::string refused_at(const Tank& tank) {
  const std::optional<Error> error = check_tank(tank);
  return error ? error->place : "";
}

TEST(CheckTank, TakesAnyOutlineWhoseSidesDoNotCross) {
  EXPECT_EQ(refused_at(prism({{0, 0}, {60, 0}, {30, 40}})), "");
  EXPECT_EQ(refused_at(prism({{30, 40}, {60, 0}, {0, 0}})), "");  // the other way round
  EXPECT_EQ(refused_at(prism({{0, 0}, {60, 0}, {60, 20}, {30, 20}, {30, 40}, {0, 40}})), "");
}

TEST(CheckTank, RefusesAnOutlineThatIsNoTank) {
  EXPECT_EQ(refused_at(prism({})), "/tank/outline_cm");
  EXPECT_EQ(refused_at(prism({{0, 0}, {60, 0}})), "/tank/outline_cm");
  EXPECT_EQ(refused_at(prism({{0, 0}, {60, 40}, {60, 0}, {0, 40}})), "/tank/outline_cm");  // a bow tie
  EXPECT_EQ(refused_at(prism({{0, 0}, {60, 0}, {60, 0}, {0, 40}})), "/tank/outline_cm");   // a corner twice
  EXPECT_EQ(refused_at(prism({{0, 0}, {60, 0}, {30, 0}, {0, 40}})), "/tank/outline_cm");   // back on itself
  EXPECT_EQ(refused_at(prism({{0, 0}, {-5, 0}, {30, 40}})), "/tank/outline_cm/1/0");
  EXPECT_EQ(refused_at(prism(std::vector<Point>(most_outline_points + 1))), "/tank/outline_cm");
}

TEST(CheckTank, RefusesMeasuresThatDoNotGoTogether) {
  Plan plan = box_plan(60, 30, 30, 27);
  EXPECT_EQ(refused_at(plan.tank), "");
  plan.tank.diameter_cm = 20;
  EXPECT_EQ(refused_at(plan.tank), "/tank/diameter_cm");
  plan = box_plan(60, 30, 30, 31);
  EXPECT_EQ(refused_at(plan.tank), "/tank/fill_cm");
  plan = box_plan(60, 30, 30, 27);
  plan.tank.shape = Shape::bow_front;
  plan.tank.bow_cm = 30;
  EXPECT_EQ(refused_at(plan.tank), "");  // half the length: the front is half a circle
  plan.tank.bow_cm = 30.1;
  EXPECT_EQ(refused_at(plan.tank), "/tank/bow_cm");
}

TEST(CheckPlan, RefusesWhatIsNoNumber) {
  for (const double wrong : {std::nan(""), std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()}) {
    Plan plan = box_plan(60, 30, 30, 27);
    plan.source.ph = wrong;
    EXPECT_EQ(check_plan(plan)->place, "/source/ph");
    plan = box_plan(60, 30, 30, 27);
    plan.tank.height_cm = wrong;
    EXPECT_EQ(check_plan(plan)->place, "/tank/height_cm");
    plan = box_plan(60, 30, 30, 27);
    plan.upkeep->every_days = wrong;
    EXPECT_EQ(check_plan(plan)->place, "/upkeep/every_days");
  }
}

TEST(CheckPlan, TakesPoorHusbandry) {
  Plan plan = box_plan(20, 10, 12, 11);
  plan.upkeep->change_fraction = 0;
  plan.water->temperature_c = 36;
  Group group{.species = "carassius-auratus", .count = 500};
  plan.stock = {group};
  EXPECT_FALSE(check_plan(plan));
}

TEST(CheckPlan, RefusesTextThatIsNotUtf8) {
  // Sequences that RFC 3629 section 3 and 4 forbid: a lone continuation, an overlong form, a surrogate, beyond U+10FFFF, cut
  // short.
  for (const char* text : {"\x80", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82", "\xFE"}) {
    Plan plan = box_plan(60, 30, 30, 27);
    plan.notes = std::string("a") + text;
    ASSERT_TRUE(check_plan(plan));
    EXPECT_EQ(check_plan(plan)->place, "/notes");
  }
  Plan plan = box_plan(60, 30, 30, 27);
  plan.notes = "\xC3\xA9 \xE2\x82\xAC \xF0\x9F\x90\x9F \xF4\x8F\xBF\xBF";
  EXPECT_FALSE(check_plan(plan));
}

}  // namespace
}  // namespace shoalwright
