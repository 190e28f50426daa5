// SPDX-License-Identifier: MIT
// cycle, mature-tank and brackish: common practice, no source; the limits of ammonia and nitrite as in ammonia_test.cpp.
#include <gtest/gtest.h>

#include "support/mended.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish(const std::string& id = "own--fish") {
  Species species = sample_species(id, Style::calm_mid, 4);
  species.life.group.least = 1;
  return species;
}

Plan with_weeks(Plan plan, std::initializer_list<std::optional<int>> weeks) {
  std::size_t line = 0;
  for (const std::optional<int>& week : weeks) plan.stock[line++].arrives_week = week;
  return plan;
}

Measured kit(std::optional<double> ammonia, std::optional<double> nitrite, double ph = 7.8) {
  return {.date = "", .temperature_c = 25, .ph = ph, .ammonia_mg_l = ammonia, .nitrite_mg_l = nitrite, .other_keys = ""};
}

std::optional<Severity> cycle_of(const Plan& plan) { return severity_of(assess(plan, none), "cycle"); }

TEST(Cycle, AWishedStockIsJudgedAsSettled) {
  for (const double weeks : {0.0, 1.0, 30.0}) EXPECT_FALSE(cycle_of(a_plan().running(weeks).fish(fish(), 6))) << weeks;
  EXPECT_FALSE(cycle_of(a_plan().running(0).measured(kit(2, 1)).fish(fish(), 6))) << "a tank being made ready reads ammonia";
}

TEST(Cycle, SpeaksWhereAnimalsAreInAndTheKitReadsPastALimit) {
  const auto at = [](std::optional<double> ammonia, std::optional<double> nitrite, double ph = 7.8) {
    return cycle_of(a_plan().running(30).measured(kit(ammonia, nitrite, ph)).fish(fish(), 6).swimming());
  };
  EXPECT_EQ(at(2, 0), Severity::strain);
  EXPECT_EQ(at(0, 0.5), Severity::strain);
  EXPECT_FALSE(at(0, 0));
  EXPECT_FALSE(at(0.25, 0.1, 6.5)) << "hardly any of it is free at that pH";
  const Finding* told = nullptr;
  const Assessment both = assess(a_plan().measured(kit(2, 1)).fish(fish(), 6).swimming(), none);
  ASSERT_TRUE(told = finding_of(both, "cycle"));
  EXPECT_EQ(told->why.rfind("Ammonia and nitrite stand past", 0), 0u) << told->why;
}

TEST(Cycle, AsksForATestWhereTheFilterIsYoungAndNothingIsMeasured) {
  const auto at = [](std::optional<double> weeks) { return cycle_of(a_plan().running(weeks).fish(fish(), 6).swimming()); };
  EXPECT_EQ(at(0), Severity::strain);
  EXPECT_EQ(at(3.9), Severity::strain);
  EXPECT_FALSE(at(4));
  EXPECT_FALSE(at(std::nullopt)) << "what is not known is not taken for young";
  EXPECT_EQ(cycle_of(a_plan().running(0).assumed({"/running_weeks"}).fish(fish(), 6).swimming()), Severity::watch);
  EXPECT_FALSE(cycle_of(a_plan().running(1).measured(kit(0, 0)).fish(fish(), 6).swimming()));
}

TEST(Cycle, AnimalsThatHaveSwumForWeeksSayHowOldTheFilterIs) {
  Plan plan = a_plan().running(0).assumed({"/running_weeks"}).fish(fish(), 6).swimming();
  plan.stock[0].since_weeks = 12;
  EXPECT_FALSE(cycle_of(plan));
}

TEST(Cycle, FirstAnimalsWaitForANewFilter) {
  const auto at = [](double running, int week) {
    return cycle_of(with_weeks(a_plan().running(running).fish(fish(), 6), {week}));
  };
  EXPECT_EQ(at(0, 0), Severity::strain);
  EXPECT_EQ(at(0, 1), Severity::strain);
  EXPECT_EQ(at(0, 2), Severity::watch);
  EXPECT_EQ(at(0, 3), Severity::watch);
  EXPECT_FALSE(at(0, 4));
  EXPECT_FALSE(at(5, 1)) << "it runs longer than that already";
  const Plan after = mended(with_weeks(a_plan().running(0).fish(fish(), 6), {1}), none, "cycle");
  EXPECT_EQ(after.stock[0].arrives_week, 4);
  EXPECT_FALSE(cycle_of(after));
}

// Three equal shoals to come beside one that swims: each is a quarter of all food.
Plan four_shoals(std::initializer_list<std::optional<int>> weeks, int each = 6) {
  PlanBuilder builder = a_plan().running(20).measured(kit(0, 0));
  for (const char* id : {"own--a", "own--b", "own--c", "own--d"}) builder.fish(fish(id), each);
  Plan plan = with_weeks(builder.plan(), weeks);
  plan.stock[0].have = plan.stock[0].count;
  return plan;
}

TEST(Cycle, ArrivalsComeInStagesEachAfterItsGate) {
  EXPECT_FALSE(cycle_of(four_shoals({{}, 20, 22, 24})));
  EXPECT_FALSE(cycle_of(four_shoals({{}, {}, {}, {}}))) << "without a week they are only wished for";
  EXPECT_EQ(cycle_of(four_shoals({{}, 20, 20, 24})), Severity::watch) << "two quarters on one day";
  EXPECT_EQ(cycle_of(four_shoals({{}, 20, 21, 24})), Severity::watch) << "a week apart is no gate";
  Plan small = four_shoals({{}, 20, 20, 24});
  small.stock[1].count = small.stock[2].count = 3;
  small.stock[0].count = small.stock[0].have = 12;
  EXPECT_FALSE(cycle_of(small)) << "two eighths are one stage";
}

TEST(Cycle, MovingWhatComesTooEarlyMendsAllOfIt) {
  const Plan after = mended(four_shoals({{}, 20, 20, 21}), none, "cycle");
  EXPECT_EQ(after.stock[1].arrives_week, 20);
  EXPECT_EQ(after.stock[2].arrives_week, 22);
  EXPECT_EQ(after.stock[3].arrives_week, 24);
  EXPECT_FALSE(cycle_of(after));
}

TEST(Cycle, AGroupIsNeverSplitAndSomeKindsComeOnOneDay) {
  Plan large = four_shoals({{}, 20, 22, 24});
  large.stock[1].count = 30;
  EXPECT_FALSE(cycle_of(large)) << "a group that is more than a stage still comes whole";
  Plan two_lines = a_plan().running(20).measured(kit(0, 0)).fish(fish("own--a"), 6).fish(fish("own--b"), 6);
  two_lines.stock.push_back(two_lines.stock[1]);
  two_lines.stock[0].have = 6;
  two_lines.stock[1].arrives_week = two_lines.stock[2].arrives_week = 20;
  EXPECT_FALSE(cycle_of(two_lines)) << "one shoal on two lines";
  Plan quarrelsome = four_shoals({{}, 20, 20, 20});
  for (Species& species : quarrelsome.own_species) species.life.group.added = "together";
  EXPECT_FALSE(cycle_of(quarrelsome));
}

TEST(Cycle, NeverCountsAgainstHowManyFit) {
  const Plan ready = a_plan().running(30).filter(600, 3).fish(fish(), 4);
  const Plan young = a_plan().running(0).filter(600, 3).fish(fish(), 4);
  EXPECT_EQ(assess(ready, none).room.groups[0].largest_count, assess(young, none).room.groups[0].largest_count);
}

Species grazer(int weeks) {
  Species species = sample_species("own--grazer", Style::grazer, 4);
  species.life.group.least = 1;
  species.needs.mature_weeks = weeks;
  return species;
}

TEST(MatureTank, WaitsForTheWeeksOfTheCard) {
  const auto at = [](std::optional<double> running, std::optional<int> week) {
    return severity_of(assess(with_weeks(a_plan().running(running).fish(grazer(12), 6), {week}), none), "mature-tank");
  };
  EXPECT_EQ(at(0, {}), Severity::watch);
  EXPECT_EQ(at(11, {}), Severity::watch);
  EXPECT_FALSE(at(12, {}));
  EXPECT_EQ(at(0, 6), Severity::strain);
  EXPECT_FALSE(at(0, 12));
  EXPECT_FALSE(at(14, 6));
  EXPECT_FALSE(at(std::nullopt, {}));
  EXPECT_FALSE(severity_of(assess(a_plan().running(0).fish(grazer(0), 6), none), "mature-tank"));
}

TEST(MatureTank, JudgesWhatIsStillToCome) {
  EXPECT_FALSE(severity_of(assess(a_plan().running(2).measured(kit(0, 0)).fish(grazer(12), 6).swimming(), none), "mature-tank"));
}

TEST(MatureTank, IsMendedByALaterWeek) {
  for (const std::optional<int> week : {std::optional<int>(), std::optional<int>(3)}) {
    const Plan after = mended(with_weeks(a_plan().running(2).fish(grazer(12), 6), {week}), none, "mature-tank");
    EXPECT_EQ(after.stock[0].arrives_week, 12);
    EXPECT_FALSE(severity_of(assess(after, none), "mature-tank"));
  }
  const Assessment pinned = assess(a_plan().fixed({"/stock"}).running(2).fish(grazer(12), 6), none);
  ASSERT_TRUE(finding_of(pinned, "mature-tank"));
  EXPECT_TRUE(finding_of(pinned, "mature-tank")->edits.empty());
}

TEST(Brackish, IsAStrainInFreshWater) {
  const auto of = [](Salinity salinity) {
    Species species = fish();
    species.water.salinity = salinity;
    return a_plan().fish(species, 4).plan();
  };
  EXPECT_EQ(severity_of(assess(of(Salinity::brackish), none), "brackish"), Severity::strain);
  EXPECT_FALSE(severity_of(assess(of(Salinity::fresh_to_brackish), none), "brackish"));
  EXPECT_FALSE(severity_of(assess(of(Salinity::fresh), none), "brackish"));
  EXPECT_EQ(mended(of(Salinity::brackish), none, "brackish").stock.size(), 0u);
}

TEST(Brackish, NoNumberOfThemFits) {
  Species species = fish();
  species.water.salinity = Salinity::brackish;
  const Assessment tank = assess(a_plan().fish(species, 4), none);
  EXPECT_EQ(tank.room.groups[0].largest_count, 0);
  EXPECT_EQ(tank.room.groups[0].stopped_by, "brackish");
}

}  // namespace
}  // namespace shoalwright
