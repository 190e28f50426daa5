// SPDX-License-Identifier: MIT
#include "plan/plan.h"

#include <gtest/gtest.h>

#include "plan/defaults.h"

namespace shoalwright {
namespace {

TEST(Assumed, CoversTheValueAndAllBelowItButNoNeighbour) {
  Plan plan;
  plan.assumed = {"/source"};
  EXPECT_TRUE(is_assumed(plan, "/source"));
  EXPECT_TRUE(is_assumed(plan, "/source/nitrate_mg_l"));
  EXPECT_FALSE(is_assumed(plan, "/source_of_heat"));
  EXPECT_FALSE(is_assumed(plan, "/tank"));
}

TEST(Fixed, AChildDoesNotFixItsParent) {
  Plan plan;
  plan.fixed = {"/tank/lid"};
  EXPECT_TRUE(is_fixed(plan, "/tank/lid"));
  EXPECT_FALSE(is_fixed(plan, "/tank"));
}

TEST(Plan, IsEqualByEveryMember) {
  Plan a, b;
  EXPECT_EQ(a, b);
  b.stock.push_back({.species = "danio-rerio", .count = 6});
  EXPECT_NE(a, b);
}

TEST(DefaultGlass, NeverGetsThinnerAsTheTankGetsTaller) {
  for (double height_cm = 1; height_cm < 100; ++height_cm)
    EXPECT_LE(default_glass_mm(height_cm), default_glass_mm(height_cm + 1));
}

}  // namespace
}  // namespace shoalwright
