// SPDX-License-Identifier: MIT
// Media by Zhu & Chen 1999 and 2002, half clogged (water/media.h); what is too little is common practice, no source.
#include <gtest/gtest.h>

#include "support/mended.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish() {
  Species species = sample_species("own--fish", Style::calm_mid, 6);
  species.life.group.least = 1;
  return species;
}

std::optional<Severity> of(const Plan& plan) { return severity_of(assess(plan, none), "filter"); }

double media_needed(int count) { return *assess(a_plan().fish(fish(), count), none).load.media_needed_l; }

TEST(Filter, ThatIsNotThereIsAStrain) {
  const Plan plan = a_plan().no_filter().fish(fish(), 10);
  EXPECT_EQ(of(plan), Severity::strain);
  const Plan after = mended(plan, none, "filter");
  ASSERT_TRUE(after.gear->filter);
  EXPECT_GE(*after.gear->filter->media_l, media_needed(10));
  EXPECT_EQ(of(after), std::nullopt);
}

TEST(Filter, MayBeMissedByDensePlantsAndALightLoad) {
  EXPECT_EQ(of(a_plan().no_filter().planted(Planting::dense).fish(fish(), 6)), Severity::watch);
  EXPECT_EQ(of(a_plan().no_filter().planted(Planting::medium).fish(fish(), 6)), Severity::strain);
  EXPECT_EQ(of(a_plan().no_filter().planted(Planting::dense).fish(fish(), 80)), Severity::strain);
  EXPECT_EQ(of(a_plan().tank(200, 60, 60).no_filter().fish(fish(), 1)), Severity::watch) << "next to nothing to do";
}

TEST(Filter, FollowsWhatIsNeededOverWhatIsThere) {
  const double needed = media_needed(20);
  const auto with = [&](double share) { return of(a_plan().filter(600, needed / share).fish(fish(), 20)); };
  EXPECT_EQ(with(0.5), std::nullopt);
  EXPECT_EQ(with(1.2), std::nullopt) << "glass and gravel do their part";
  EXPECT_EQ(with(1.5), Severity::note);
  EXPECT_EQ(with(3), Severity::watch);
  EXPECT_EQ(with(5), Severity::strain);
  EXPECT_EQ(of(a_plan().filter(600, 0).fish(fish(), 20)), Severity::strain) << "a pump is no filter";
  for (const Strictness view : {Strictness::lenient, Strictness::strict})
    EXPECT_EQ(of(a_plan().strictness(view).filter(600, needed / 3).fish(fish(), 20)), Severity::watch);
}

TEST(Filter, IsFilledByTheRemedy) {
  const Plan plan = a_plan().filter(600, 0.1).fish(fish(), 20);
  EXPECT_EQ(of(mended(plan, none, "filter")), std::nullopt);
}

TEST(Filter, MovesTheWaterTwiceAnHour) {
  const auto flow = [](double litres) { return of(a_plan().filter(litres, 5).fish(fish(), 10)); };
  EXPECT_EQ(flow(210), std::nullopt);
  EXPECT_EQ(flow(200), std::nullopt) << "what volumes are measured wrong by";
  EXPECT_EQ(flow(150), Severity::note);
  EXPECT_EQ(flow(60), Severity::watch);
  EXPECT_EQ(of(a_plan().tank(200, 60, 60).filter(60, 5).fish(fish(), 1)), std::nullopt) << "next to nothing to do";
  const Plan slow = a_plan().filter(60, 5).fish(fish(), 10);
  EXPECT_EQ(of(mended(slow, none, "filter")), std::nullopt);
}

TEST(Filter, IsNotJudgedWhereItIsNotKnown) {
  EXPECT_EQ(of(a_plan().fish(fish(), 40)), std::nullopt);
  EXPECT_EQ(of(a_plan().filter(600, {}).fish(fish(), 40)), std::nullopt);
  EXPECT_EQ(of(a_plan().filter({}, 5).fish(fish(), 10)), std::nullopt);
  EXPECT_EQ(of(a_plan().no_filter()), std::nullopt) << "nobody lives there";
  Plan no_food = a_plan().no_filter().fish(fish(), 10);
  no_food.feeding.reset();
  EXPECT_EQ(of(no_food), Severity::watch) << "how much there is to do is not known";
}

TEST(Filter, ThatIsMissedStopsNobodyByItself) {
  const Assessment tank = assess(a_plan().no_filter().fish(fish(), 10), none);
  EXPECT_NE(tank.room.groups[0].stopped_by, "");
  EXPECT_GT(*tank.room.groups[0].largest_count, 0) << tank.room.groups[0].stopped_by;
}

}  // namespace
}  // namespace shoalwright
