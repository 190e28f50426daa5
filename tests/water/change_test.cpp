// SPDX-License-Identifier: MIT
#include "water/change.h"

#include <gtest/gtest.h>

#include <cmath>

#include "water/nitrogen.h"

namespace shoalwright {
namespace {

constexpr SawTooth weekly{.rise_per_day = 1, .every_days = 7, .fraction = 0.25, .source = 5};

/// The bookkeeping itself: rise, look, change.
double peak_by_counting(const SawTooth& c, double start, int n, double loss_per_day = 0) {
  double level = start, peak = start;
  for (int i = 0; i < n; ++i) {
    const int steps = loss_per_day > 0 ? 20000 : 1;
    const double days = c.every_days / steps;
    for (int k = 0; k < steps; ++k) level += (c.rise_per_day - loss_per_day * level) * days;
    peak = level;
    level += c.fraction * (c.source - level);
  }
  return peak;
}

TEST(WaterChange, NthPeakIsWhatCountingGives) {
  for (const double start : {0.0, 5.0, 80.0})
    for (const int n : {1, 2, 3, 10, 60})
      EXPECT_NEAR(*peak_before_change(weekly, start, n), peak_by_counting(weekly, start, n), 1e-9);
}

TEST(WaterChange, SettledPeakIsWhereCountingEnds) {
  for (const double fraction : {0.1, 0.3, 0.5, 1.0}) {
    SawTooth c = weekly;
    c.fraction = fraction;
    EXPECT_NEAR(*settled_peak(c), peak_by_counting(c, 0, 500), 1e-9);
    EXPECT_NEAR(*settled_trough(c), *settled_peak(c) + fraction * (c.source - *settled_peak(c)), 1e-9);
  }
}

TEST(WaterChange, AfterTheCountedChangesNineteenTwentiethsOfTheWayIsDone) {
  for (const double fraction : {0.1, 0.25, 0.3, 0.5, 0.9}) {
    SawTooth c = weekly;
    c.fraction = fraction;
    const int n = *changes_to_settle(fraction);
    const double first = *peak_before_change(c, 0, 1), settled = *settled_peak(c);
    EXPECT_LE(settled - *peak_before_change(c, 0, n + 1), 0.05 * (settled - first) + 1e-9);
    EXPECT_GT(settled - *peak_before_change(c, 0, n), 0.05 * (settled - first));
  }
  EXPECT_EQ(changes_to_settle(1), 1);
}

TEST(WaterChange, TheFractionNeededJustHoldsTheLimit) {
  SawTooth c = weekly;
  for (const double limit : {13.0, 25.0, 40.0, 50.0}) {
    c.fraction = *fraction_for_peak(weekly, limit);
    EXPECT_NEAR(*settled_peak(c), limit, 1e-9);
  }
}

TEST(WaterChange, TheIntervalNeededJustHoldsTheLimit) {
  SawTooth c = weekly;
  c.every_days = *interval_for_peak(weekly, 40);
  EXPECT_NEAR(*settled_peak(c), 40, 1e-9);
}

TEST(WaterChange, NoFractionHoldsALimitThatTheSourceReaches) {
  EXPECT_FALSE(fraction_for_peak(weekly, 5));
  EXPECT_FALSE(fraction_for_peak(weekly, 4));
  EXPECT_FALSE(interval_for_peak(weekly, 5));
}

TEST(WaterChange, SeveralChangesTakeTurnsInAnyOrder) {
  EXPECT_NEAR(after_changes(60, 0, {0.5, 0.3, 0.2}), after_changes(60, 0, {0.2, 0.5, 0.3}), 1e-12);
  EXPECT_EQ(after_changes(60, 10, {}), 60);
  EXPECT_EQ(after_changes(60, 10, {1}), 10);
}

TEST(WaterChange, LossIsWhatSmallStepsGive) {
  EXPECT_NEAR(*settled_peak_with_loss(weekly, 0.02), peak_by_counting(weekly, 0, 60, 0.02), 1e-3);
  EXPECT_NEAR(*settled_peak_with_loss(weekly, 1e-9), *settled_peak(weekly), 1e-4);
  EXPECT_EQ(settled_peak_with_loss(weekly, 0), settled_peak(weekly));
  SawTooth never = weekly;
  never.fraction = 0;
  EXPECT_NEAR(*settled_peak_with_loss(never, 0.02), 1 / 0.02, 1e-9);
}

TEST(WaterChange, MoreChangeNeverRaisesThePeak) {
  double before = 1e9;
  for (double fraction = 0.05; fraction <= 1; fraction += 0.05) {
    SawTooth c = weekly;
    c.fraction = fraction;
    EXPECT_LT(*settled_peak(c), before);
    before = *settled_peak(c);
  }
}

TEST(WaterChange, WithoutARhythmThereIsNoAnswer) {
  SawTooth c = weekly;
  c.fraction = 0;
  EXPECT_FALSE(settled_peak(c));
  EXPECT_FALSE(settled_trough(c));
  EXPECT_FALSE(peak_before_change(c, 0, 3));
  EXPECT_FALSE(changes_to_settle(0));
  c = weekly;
  c.fraction = 1.1;
  EXPECT_FALSE(settled_peak(c));
  c = weekly;
  c.every_days = 0;
  EXPECT_FALSE(settled_peak(c));
  EXPECT_FALSE(fraction_for_peak(c, 40));
  c = weekly;
  c.rise_per_day = NAN;
  EXPECT_FALSE(settled_peak(c));
  EXPECT_FALSE(interval_for_peak(c, 40));
  EXPECT_FALSE(peak_before_change(weekly, 0, 0));
}

// 16 % of protein is nitrogen; what the fish give off as ammonia can be no more than that.
TEST(Nitrogen, LessAmmoniaLeavesThanNitrogenCameIn) {
  EXPECT_GT(tan_from_feed_mg(1, 0.45), 0.5 * 160 * 0.45);
  EXPECT_LT(tan_from_feed_mg(1, 0.45), 160 * 0.45);
  EXPECT_DOUBLE_EQ(tan_from_feed_mg(2, 0.45), 2 * tan_from_feed_mg(1, 0.45));
}

TEST(Nitrogen, NitrateIsPerLitreAndNeedsWater) {
  EXPECT_DOUBLE_EQ(nitrate_from_tan_mg_l(20, 200), nitrate_from_tan_mg_l(10, 100));
  EXPECT_EQ(nitrate_from_tan_mg_l(20, 0), 0);
}

}  // namespace
}  // namespace shoalwright
