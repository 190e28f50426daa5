// SPDX-License-Identifier: MIT
// KH left before a change: common practice, no source. What the filter eats up: one equivalent a mole of nitrogen from food.
#include <gtest/gtest.h>

#include "support/mended.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish(double ideal_kh_low = 1) {
  Species species = sample_species("own--fish", Style::calm_mid, 5);
  species.life.group.least = 1;
  species.water.kh_dkh.ideal = Range{ideal_kh_low, 6};
  return species;
}

Assessment with_kh(double kh, int count = 4, double ideal_kh_low = 1) {
  return assess(a_plan().tap(7, 8, kh).fish(fish(ideal_kh_low), count), none);
}

/// KH before a change, reckoned by hand: a settled saw-tooth loses drift * days / fraction below what comes in.
double left(const Assessment& a, double kh, double fraction = 0.3, double days = 7) {
  return kh + *a.load.kh_drift_dkh_week / 7 * days / fraction;
}

TEST(KhLow, FollowsTheBandsOfWhatIsLeftBeforeAChange) {
  std::optional<Severity> seen[3];
  for (double kh = 0.2; kh < 4; kh += 0.1) {
    const Assessment tank = with_kh(kh);
    const double kept = left(tank, kh);
    const std::optional<Severity> wanted = kept >= 1.5   ? std::nullopt
                                           : kept >= 0.5 ? std::optional(Severity::watch)
                                                         : std::optional(Severity::strain);
    EXPECT_EQ(severity_of(tank, "kh-low"), wanted) << "KH " << kh << " leaves " << kept;
    seen[kept >= 1.5 ? 0 : kept >= 0.5 ? 1 : 2] = wanted;
  }
  EXPECT_EQ(seen[1], Severity::watch);
  EXPECT_EQ(seen[2], Severity::strain);
}

TEST(KhLow, IsTheSameInAllViews) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict})
    EXPECT_EQ(severity_of(assess(a_plan().strictness(view).tap(7, 8, 1).fish(fish(), 2), none), "kh-low"), Severity::watch);
}

TEST(KhLow, IsAWatchAtMostForKindsOfVerySoftWater) {
  const Assessment soft = with_kh(0.3, 4, 0);
  ASSERT_EQ(severity_of(soft, "kh-low"), Severity::watch);
  EXPECT_EQ(finding_of(soft, "kh-low")->remedy, "Test KH every week");
  EXPECT_TRUE(finding_of(soft, "kh-low")->edits.empty());
  EXPECT_EQ(severity_of(with_kh(0.3), "kh-low"), Severity::strain);
}

// Who may be one of them: a strain would rest on what nobody knows.
TEST(KhLow, IsAWatchAtMostForKindsWhoseKhIsNotKnown) {
  Species unknown = fish();
  unknown.water.kh_dkh.ideal.reset();
  EXPECT_EQ(severity_of(assess(a_plan().tap(7, 8, 0.3).fish(unknown, 4), none), "kh-low"), Severity::watch);
}

TEST(KhLow, IsMendedByMoreChangeOrElseByHarderWater) {
  const Plan seldom = a_plan().change(0.1, 28).tap(7, 8, 3).fish(fish(), 20);
  ASSERT_TRUE(finding_of(assess(seldom, none), "kh-low"));
  EXPECT_EQ(finding_of(assess(seldom, none), "kh-low")->remedy.rfind("Change ", 0), 0u);
  EXPECT_FALSE(finding_of(assess(mended(seldom, none, "kh-low"), none), "kh-low"));

  const Plan soft_tap = a_plan().tap(7, 8, 1).fish(fish(), 4);
  const Plan harder = mended(soft_tap, none, "kh-low");
  EXPECT_GT(*harder.water->kh_dkh, 1.5);
  EXPECT_FALSE(finding_of(assess(harder, none), "kh-low"));
}

TEST(KhLow, WithoutChangesSaysInHowManyWeeksItIsGone) {
  const Plan still = a_plan().change(0, 7).fish(fish(), 20);
  const Assessment tank = assess(still, none);
  const Finding* finding = finding_of(tank, "kh-low");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->severity, Severity::strain);
  EXPECT_EQ(finding->text.rfind("KH is gone in ", 0), 0u) << finding->text;
  EXPECT_FALSE(finding_of(assess(mended(still, none, "kh-low"), none), "kh-low"));
}

TEST(KhLow, IsNotJudgedWhereAnyOfItIsNotKnown) {
  EXPECT_FALSE(finding_of(assess(a_plan().tap(7, 8, {}).fish(fish(), 4), none), "kh-low"));
  Plan no_food = a_plan().tap(7, 8, 1).fish(fish(), 4), no_rhythm = no_food;
  no_food.feeding.reset();
  no_rhythm.upkeep.reset();
  EXPECT_FALSE(finding_of(assess(no_food, none), "kh-low") || finding_of(assess(no_rhythm, none), "kh-low"));
  EXPECT_FALSE(finding_of(assess(a_plan().tap(7, 8, 0.2), none), "kh-low")) << "nobody lives there";
}

TEST(KhLow, IsHeldAtZeroAndStillGrowsGraverWithMoreAnimals) {
  const Assessment crowd = with_kh(2, 400);
  ASSERT_TRUE(finding_of(crowd, "kh-low"));
  EXPECT_EQ(finding_of(crowd, "kh-low")->text, "KH falls to 0 between changes");
}

}  // namespace
}  // namespace shoalwright
