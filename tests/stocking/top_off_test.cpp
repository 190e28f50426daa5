// SPDX-License-Identifier: MIT
// Vapour leaves everything behind that was dissolved in it: mass balance.
#include "stocking/top_off.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

/// 100 L that lose 1.5 L a day, tap of GH 12 and KH 6, 30 % changed every week.
Plan open_tank() {
  Plan plan;
  plan.source.gh_dgh = 12;
  plan.source.kh_dkh = 6;
  plan.source.nitrate_mg_l = 10;
  plan.upkeep = Upkeep{.change_fraction = 0.3, .every_days = 7, .other_keys = ""};
  return plan;
}

TEST(TopOff, AddsWhatTheVapourLeftBehind) {
  const std::optional<TopOff> adds = top_off(open_tank(), 100, 1.5);
  ASSERT_TRUE(adds);
  EXPECT_NEAR(adds->share_a_month, 0.45, 1e-12);
  EXPECT_NEAR(*adds->gh_dgh_month, 5.4, 1e-12);
  EXPECT_NEAR(*adds->kh_dkh_month, 2.7, 1e-12);
  EXPECT_NEAR(*adds->nitrate_mg_l_month, 4.5, 1e-12);
  EXPECT_NEAR(*adds->settles_gh_dgh, 16.2, 1e-9) << "12 x (1 + 0.015 x 7 / 0.3)";
}

TEST(TopOff, NothingWhereNothingEvaporatesOrIsKnown) {
  EXPECT_FALSE(top_off(open_tank(), 100, 0.0));
  EXPECT_FALSE(top_off(open_tank(), 100, std::nullopt));
  EXPECT_FALSE(top_off(open_tank(), 0, 1.5));
  Plan soft = open_tank();
  soft.source.gh_dgh = 0;
  soft.source.kh_dkh.reset();
  const std::optional<TopOff> adds = top_off(soft, 100, 1.5);
  EXPECT_FALSE(adds->gh_dgh_month) << "soft water brings none";
  EXPECT_FALSE(adds->kh_dkh_month);
  Plan unchanged = open_tank();
  unchanged.upkeep->change_fraction = 0;
  EXPECT_FALSE(top_off(unchanged, 100, 1.5)->settles_gh_dgh) << "without changes it goes on and on";
}

}  // namespace
}  // namespace shoalwright
