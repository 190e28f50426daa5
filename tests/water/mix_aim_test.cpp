// SPDX-License-Identifier: MIT
#include "water/mix_aim.h"

#include <gtest/gtest.h>

#include "support/samples.h"
#include "water/recipe.h"

namespace shoalwright {
namespace {

/// Two kinds whose shared windows are GH 4 to 12 (best 6 to 8) and KH 2 to 6 (best 3 to 4).
struct Two {
  Plan plan = box_plan(60, 30, 30, 28);
  Species soft = sample_species("soft", Style::calm_mid, 4), hard = sample_species("hard", Style::calm_mid, 4);
  Two() {
    soft.water.gh_dgh = {.tolerated = Range{1, 12}, .ideal = Range{2, 8}};
    soft.water.kh_dkh = {.tolerated = Range{0, 6}, .ideal = Range{1, 4}};
    hard.water.gh_dgh = {.tolerated = Range{4, 20}, .ideal = Range{6, 15}};
    hard.water.kh_dkh = {.tolerated = Range{2, 12}, .ideal = Range{3, 9}};
    plan.source.gh_dgh = 13;
    plan.source.kh_dkh = 8;
    plan.water->gh_dgh = 9;
    plan.limits.co2_mg_l = 25;
  }
  Windows windows() const { return windows_of(plan, {&soft, &hard}); }
};

TEST(MixAim, IsThePlansOwnWithTheSharedWindowsBehindIt) {
  const Two two;
  const MixAim aim = planned_aim(two.plan, two.windows());
  EXPECT_EQ(aim.gh_dgh, (AxisAim{9, Range{4, 12}}));
  EXPECT_EQ(aim.kh_dkh, (AxisAim{std::nullopt, Range{2, 6}}));
  EXPECT_EQ(aim.temperature_c, 25);
  EXPECT_EQ(aim.ca_mg_ratio, 3) << "the usual one";
  EXPECT_EQ(aim.most_co2_mg_l, 25) << "the keeper's own ceiling";
}

TEST(MixAim, TheMiddleForAllIsThatOfWhatSuitsAll) {
  const Two two;
  const MixAim aim = middle_aim(two.plan, two.windows());
  EXPECT_EQ(*aim.gh_dgh.aim, 7);
  EXPECT_EQ(*aim.kh_dkh.aim, 3.5);
}

TEST(MixAim, TheLeastReverseOsmosisWaterIsNoMoreThanForAnyOtherAim) {
  const Two two;
  const Windows windows = two.windows();
  const auto ro = [&](const MixAim& aim) { return *recipe_for(two.plan.source, aim, usual_salts()).ro_fraction; };
  const double least = ro(least_ro_aim(two.plan, windows));
  EXPECT_NEAR(least, 1 - (6 - edge_in_hand_dh) / 8, 1e-9);
  EXPECT_LE(least, ro(planned_aim(two.plan, windows)));
  EXPECT_LE(least, ro(middle_aim(two.plan, windows)));
}

TEST(MixAim, SuitsOneKindAlone) {
  const Two two;
  const MixAim aim = aim_for_kind(two.plan, two.windows(), two.soft);
  EXPECT_EQ(aim.gh_dgh, (AxisAim{5, Range{1, 12}}));
  EXPECT_EQ(aim.kh_dkh, (AxisAim{2.5, Range{0, 6}}));
  Species vague = two.soft;
  vague.water.gh_dgh.ideal.reset();
  vague.water.kh_dkh = {};
  const MixAim wide = aim_for_kind(two.plan, two.windows(), vague);
  EXPECT_EQ(*wide.gh_dgh.aim, 6.5);
  EXPECT_FALSE(wide.kh_dkh.aim || wide.kh_dkh.window);
}

TEST(MixAim, IsFreeWhereWindowsDoNotMeet) {
  Two two;
  two.hard.water.gh_dgh = {.tolerated = Range{14, 30}, .ideal = std::nullopt};
  EXPECT_FALSE(middle_aim(two.plan, two.windows()).gh_dgh.aim);
  EXPECT_FALSE(least_ro_aim(two.plan, two.windows()).gh_dgh.window);
}

}  // namespace
}  // namespace shoalwright
