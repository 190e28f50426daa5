// SPDX-License-Identifier: MIT
// Flow over volume: common practice, no source.
#include <gtest/gtest.h>

#include "support/mended.h"

namespace shoalwright {
namespace {

const Catalog none;

Species from(const std::string& current, const std::string& id = "own--fish") {
  Species species = sample_species(id, Style::calm_mid, 4);
  species.life.current = current;
  species.life.group.least = 1;
  return species;
}

/// A flow of so many volumes an hour of the ordinary tank, 105 L.
double volumes(double times) { return 105 * times; }

std::optional<Severity> of(const PlanBuilder& plan) { return severity_of(assess(plan, none), "current"); }

TEST(Current, StrainsStillWaterKindsPastFiveVolumes) {
  EXPECT_FALSE(of(a_plan().flow(volumes(5)).fish(from("still"), 4)));
  EXPECT_EQ(of(a_plan().flow(volumes(5.2)).fish(from("still"), 4)), Severity::note) << "what volumes are measured wrong by";
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict})
    EXPECT_EQ(of(a_plan().strictness(view).flow(volumes(7)).fish(from("still"), 4)), Severity::strain);
}

TEST(Current, IsAWatchWherePlantsGiveCalmPlaces) {
  EXPECT_EQ(of(a_plan().planted(Planting::medium).flow(volumes(7)).fish(from("still"), 4)), Severity::watch);
  EXPECT_EQ(of(a_plan().planted(Planting::light).flow(volumes(7)).fish(from("still"), 4)), Severity::strain);
  EXPECT_EQ(of(a_plan().planted(std::nullopt).flow(volumes(7)).fish(from("still"), 4)), Severity::watch)
      << "the milder of what it may be";
}

TEST(Current, StrainsKindsOfStreamsUnderEightVolumes) {
  EXPECT_FALSE(of(a_plan().flow(volumes(8)).fish(from("strong"), 4)));
  EXPECT_EQ(of(a_plan().flow(volumes(7.8)).fish(from("strong"), 4)), Severity::note);
  EXPECT_EQ(of(a_plan().flow(volumes(6)).fish(from("strong"), 4)), Severity::strain);
  EXPECT_FALSE(of(a_plan().flow(volumes(2)).fish(from("gentle"), 4)));
  EXPECT_FALSE(of(a_plan().flow(volumes(12)).fish(from("gentle"), 4)));
}

TEST(Current, IsNotJudgedWhereTheFlowIsNotKnown) {
  EXPECT_FALSE(of(a_plan().fish(from("strong"), 4)));
  EXPECT_FALSE(of(a_plan().flow(std::nullopt).fish(from("still"), 4)));
}

TEST(Current, WithoutAFilterIsNoneAtAll) {
  Plan plan = a_plan().flow(0).fish(from("strong"), 4);
  plan.gear->filter.reset();
  const Assessment assessment = assess(plan, none);
  ASSERT_EQ(severity_of(assessment, "current"), Severity::strain);
  EXPECT_TRUE(finding_of(assessment, "current")->edits.empty()) << "there is nothing to set";
}

TEST(Current, IsClearedByTheFlow) {
  for (const Plan& plan :
       {a_plan().flow(volumes(9)).fish(from("still"), 4).plan(), a_plan().flow(volumes(2)).fish(from("strong"), 4).plan(),
        a_plan().tank(20, 10, 10).flow(100).fish(from("still"), 1).plan()}) {
    const Plan after = mended(plan, none, "current");
    EXPECT_GT(*after.gear->filter->flow_l_h, 0);
    EXPECT_FALSE(finding_of(assess(after, none), "current"));
    Plan pinned = plan;
    pinned.fixed = {"/gear"};
    const Assessment left = assess(pinned, none);
    EXPECT_TRUE(finding_of(left, "current")->edits.empty());
  }
}

TEST(Current, ThatCannotSuitBothLeavesOutTheFewer) {
  const Plan plan = a_plan().flow(volumes(6)).fish(from("still", "own--still"), 2).fish(from("strong", "own--stream"), 8);
  const Assessment assessment = assess(plan, none);
  const Finding* finding = finding_of(assessment, "current");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->severity, Severity::strain);
  EXPECT_EQ(finding->species, (std::vector<std::string>{"own--still", "own--stream"}));
  const Plan after = mended(plan, none, "current");
  ASSERT_EQ(after.stock.size(), 1u);
  EXPECT_EQ(after.stock[0].species, "own--stream");
  const Assessment left = assess(after, none);
  ASSERT_TRUE(finding_of(left, "current"));
  EXPECT_EQ(finding_of(left, "current")->text, "Current too weak for own--stream");
}

TEST(Current, StopsAKindThatItDoesNotSuit) {
  const Plan plan = a_plan().planted(Planting::none).flow(volumes(9)).fish(from("still"), 2);
  EXPECT_EQ(assess(plan, none).room.groups[0].largest_count, 0);
  EXPECT_EQ(assess(plan, none).room.groups[0].stopped_by, "current");
}

}  // namespace
}  // namespace shoalwright
