// SPDX-License-Identifier: MIT
#include "water/getting_there.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "support/dice.h"
#include "water/change.h"

namespace shoalwright {
namespace {

using Salts = std::vector<std::string>;

const Salts three(usual_salts().begin(), usual_salts().end());

SourceWater tap(double gh_dgh, double kh_dkh) {
  SourceWater water;
  water.gh_dgh = gh_dgh;
  water.kh_dkh = kh_dkh;
  return water;
}

MixAim aim(double gh_dgh, double kh_dkh) {
  MixAim wish;
  wish.gh_dgh.aim = gh_dgh;
  wish.kh_dkh.aim = kh_dkh;
  wish.temperature_c = 25;
  return wish;
}

GettingThere way(const SourceWater& water, const TankWater& now, const MixAim& wish, const Salts& salts, double fraction) {
  return getting_there(water, now, wish, recipe_for(water, wish, salts), salts, fraction);
}

// Mass balance: what is left of the old water after n changes of a share. Inside at once for GH, after two changes for KH.
TEST(GettingThere, ComesDownAsMassBalanceSays) {
  MixAim wish = aim(7, 3.2);
  wish.gh_dgh.window = Range{4, 12};
  wish.kh_dkh.window = Range{2, 6};
  const double fraction = 40.0 / 132;
  const GettingThere down = way(tap(13, 8), {25, std::nullopt, 13, 8}, wish, three, fraction);
  ASSERT_EQ(down.changes, 5);
  EXPECT_EQ(down.gh_inside_after, 1);
  EXPECT_EQ(down.kh_inside_after, 2);
  EXPECT_NEAR(down.most_gh_dgh, 1.8, 0.05);
  ASSERT_EQ(down.buckets.size(), 1u);
  EXPECT_EQ(down.buckets[0].changes, 5);
  EXPECT_EQ(down.buckets[0].strength, 1);
  for (std::size_t n = 1; n <= down.steps.size(); ++n) {
    const std::vector<double> changes(n, fraction);
    EXPECT_NEAR(*down.steps[n - 1].after.gh_dgh, after_changes(13, 7, changes), 1e-9);
    EXPECT_NEAR(*down.steps[n - 1].after.kh_dkh, after_changes(8, 3.2, changes), 1e-9);
  }
}

TEST(GettingThere, IsThereWhenNothingIsToBeDone) {
  const GettingThere there = way(tap(13, 8), {25, 7.4, 7.5, 3}, aim(7, 3.2), three, 0.3);
  EXPECT_EQ(there.changes, 0);
  EXPECT_TRUE(there.steps.empty() && there.buckets.empty());
}

TEST(GettingThere, SaysNothingOfWhatIsNotKnown) {
  const MixAim wish = aim(7, 3.2);
  EXPECT_FALSE(way(tap(13, 8), {25, 7.4, std::nullopt, 3}, wish, three, 0.3).changes);
  EXPECT_FALSE(way(SourceWater{}, {25, 7.4, 7, 3}, wish, three, 0.3).changes);
  EXPECT_FALSE(way(tap(13, 8), {25, 7.4, 13, 8}, wish, three, 0).changes);
  EXPECT_FALSE(way(tap(13, 8), {25, 7.4, 13, 8}, wish, three, NAN).changes);
}

TEST(GettingThere, TakesThePhOfTheTankFromWhatWasMeasured) {
  EXPECT_NEAR(*way(tap(13, 8), {25, 7.1, 13, 8}, aim(7, 3.2), three, 0.3).now.ph, 7.1, 1e-6);
  const double usual = *way(tap(13, 8), {25, std::nullopt, 13, 8}, aim(7, 3.2), three, 0.3).now.ph;
  EXPECT_GT(usual, 7.6);
  EXPECT_LT(usual, 8.2);
}

TEST(GettingThere, UsesWeakerBucketsWhereAFullOneWouldShock) {
  const GettingThere up = way(tap(2, 1), {20, std::nullopt, 2, 1}, aim(12, 6), three, 0.3);
  ASSERT_TRUE(up.changes);
  EXPECT_GT(up.buckets.size(), 1u);
  EXPECT_LT(up.buckets.front().strength, 1);
  EXPECT_EQ(up.buckets.back().strength, 1);
  for (const ChangeStep& step : up.steps) EXPECT_EQ(step.fraction, 0.3);
  EXPECT_NEAR(*up.steps[0].after.temperature_c, 22, 1e-9) << "the heater goes up slowly too";
  EXPECT_NEAR(*up.steps[1].after.temperature_c, 24, 1e-9);
  EXPECT_NEAR(*up.steps[2].after.temperature_c, 25, 1e-9);
}

TEST(GettingThere, TakesSmallerChangesWhereNoWeakerBucketCanBeMixed) {
  // Soft tap, hard aim, no salts to soften the step between: the tank is softer than anything but pure water.
  const GettingThere up = way(tap(20, 0.2), {25, std::nullopt, 4, 4}, aim(20, 0.2), {}, 0.5);
  ASSERT_FALSE(up.steps.empty());
  EXPECT_LT(up.steps[0].fraction, 0.5);
  EXPECT_TRUE(up.changes);
}

// Limits of the header over random ways, from what the steps tell.
TEST(GettingThere, ShocksNobodyAndAlwaysComesNearer) {
  Dice dice(21);
#ifdef SHOALWRIGHT_FEWER_PLANS
  constexpr int draws = 40;
#else
  constexpr int draws = 300;
#endif
  for (int n = 0; n < draws; ++n) {
    const SourceWater water = tap(dice.real(0, 30), dice.real(0, 20));
    const MixAim wish = aim(dice.real(0, 20), dice.real(0, 12));
    const TankWater now{dice.real(18, 30), std::nullopt, dice.real(0, 30), dice.real(0.1, 20)};
    const Recipe recipe = recipe_for(water, wish, three);
    const GettingThere there = getting_there(water, now, wish, recipe, three, dice.real(0.1, 0.6));
    TankWater before = there.now;
    int in_buckets = 0;
    for (const Bucket& bucket : there.buckets) in_buckets += bucket.changes;
    EXPECT_EQ(in_buckets, static_cast<int>(there.steps.size()));
    EXPECT_EQ(there.changes.value_or(-1), static_cast<int>(there.steps.size()));
    for (const ChangeStep& step : there.steps) {
      const auto limit = [](double dh) { return std::max(change_most_share * dh, change_always_dh) + 1e-6; };
      EXPECT_LE(std::abs(*step.after.gh_dgh - *before.gh_dgh), limit(*before.gh_dgh)) << "draw " << n;
      EXPECT_LE(std::abs(*step.after.kh_dkh - *before.kh_dkh), limit(*before.kh_dkh)) << "draw " << n;
      EXPECT_LE(std::abs(*step.after.temperature_c - *before.temperature_c), change_most_temperature_c + 1e-9);
      const auto away = [&](const TankWater& tank) {
        return std::abs(*tank.gh_dgh - *recipe.reached.gh_dgh) + std::abs(*tank.kh_dkh - *recipe.reached.kh_dkh);
      };
      EXPECT_LT(away(step.after), away(before)) << "draw " << n;
      before = step.after;
    }
    EXPECT_LE(there.most_ph, change_most_ph + 1e-9);
    EXPECT_TRUE(there.changes) << "draw " << n << ": everything known, so it arrives";
  }
}

TEST(GettingThere, ArrivesAtAnAimOnTheEdgeOfAWindow) {
  MixAim wish = aim(10, 5);
  wish.gh_dgh.window = Range{4, 10};
  wish.kh_dkh.window = Range{2, 5};
  const GettingThere down = way(tap(20, 10), {25, std::nullopt, 20, 10}, wish, {}, 0.3);
  ASSERT_TRUE(down.changes);
  EXPECT_LE(*down.steps.back().after.gh_dgh, 10.1);
  EXPECT_EQ(down.gh_inside_after, down.changes);
}

TEST(GettingThere, StartsFromTheTapWhereNothingWasMeasured) {
  Plan plan;
  plan.source.gh_dgh = 13;
  plan.source.kh_dkh = 8;
  plan.source.ph = 7.6;
  EXPECT_EQ(tank_water_now(plan), (TankWater{std::nullopt, std::nullopt, 13, 8})) << "the tap's pH is not the tank's";
  plan.measured = Measured{};
  plan.measured->gh_dgh = 9;
  plan.measured->ph = 7.2;
  EXPECT_EQ(tank_water_now(plan), (TankWater{std::nullopt, 7.2, 9, 8}));
}

}  // namespace
}  // namespace shoalwright
