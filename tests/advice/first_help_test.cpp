// SPDX-License-Identifier: MIT
#include "advice/first_help.h"

#include <gtest/gtest.h>

#include <cmath>

#include "plan/more_keys.h"
#include "support/dice.h"
#include "support/plan_files.h"
#include "support/samples.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "water/ammonia.h"

namespace shoalwright {
namespace {

/// Eight small fish in a young tank of 100 L: the kit shows ammonia 1 mg/L, pH 7.8, 25 degrees C.
Plan young_tank() {
  Plan plan = box_plan(80, 35, 40, 1000.0 * 100 / (80 * 35));
  plan.stock = {Group{.species = "danio-rerio", .count = 8, .have = 8}};
  plan.measured = Measured{};
  plan.measured->ammonia_mg_l = 1;
  plan.measured->nitrite_mg_l = 0;
  plan.measured->ph = 7.8;
  plan.measured->temperature_c = 25;
  return plan;
}

bool says(const FirstHelp& help, const std::string& part) {
  for (const std::string& line : help.says)
    if (line.find(part) != std::string::npos) return true;
  return false;
}

// Handbook, chemistry 2.1: TAN at 0.02 mg/L of NH3 is 0.02/1.21589/f; at pH 7.8, 25 degrees C f is 0.0345: half is not enough.
TEST(FirstHelp, ChangesHalfAtMostAtOnce) {
  const Plan plan = young_tank();
  const FirstHelp help = first_help(plan, the_catalog());
  EXPECT_EQ(help.state, HelpState::act);
  EXPECT_NEAR(*help.nh3_mg_l, 1.21589 / (1 + std::pow(10, 0.09018 + 2729.92 / 298.15 - 7.8)), 1e-5);
  ASSERT_FALSE(help.changes.empty());
  EXPECT_EQ(help.changes[0].day, 0);
  EXPECT_NEAR(help.changes[0].litres, 50, 1e-9);
  EXPECT_NEAR(*help.changes[0].nh3_after_mg_l, *help.nh3_mg_l / 2, 1e-9);
  ASSERT_GT(help.changes.size(), 1u);
  EXPECT_EQ(help.changes[1].day, 1) << "half was not enough, so the next day again";
  EXPECT_TRUE(says(help, "Change 50 L today"));
  EXPECT_TRUE(says(help, "chloramine"));
  EXPECT_TRUE(says(help, "Ripple the surface"));
  EXPECT_TRUE(says(help, "Feed once in two days"));
  EXPECT_TRUE(says(help, "ripe filter media"));
  EXPECT_TRUE(says(help, "Do not raise the pH"));
  EXPECT_TRUE(says(help, "Buy no animal"));
}

TEST(FirstHelp, ChangesNoMoreThanItTakes) {
  Plan plan = young_tank();
  plan.measured->ammonia_mg_l = 0.6;
  const FirstHelp help = first_help(plan, the_catalog());
  ASSERT_FALSE(help.changes.empty());
  const HelpChange& today = help.changes[0];
  const double limit = tan_for_nh3_mg_l(help_nh3_mg_l, 25, 7.8);
  EXPECT_NEAR(today.litres, std::ceil((1 - limit / 0.6) * 100), 1e-9);
  EXPECT_LE(*today.nh3_after_mg_l, help_nh3_mg_l + 1e-12);
}

TEST(FirstHelp, BringsNitriteUnderItsLimitToo) {
  Plan plan = young_tank();
  plan.measured->ammonia_mg_l = 0;
  plan.measured->nitrite_mg_l = 0.15;
  const FirstHelp help = first_help(plan, the_catalog());
  ASSERT_EQ(help.state, HelpState::act) << "chloride is not known, so it counts as little";
  EXPECT_NEAR(help.changes[0].litres, 34, 1e-9);
  EXPECT_LE(*help.changes[0].nitrite_after_mg_l, help_nitrite_low_chloride_mg_l);
  set_chloride_mg_l(*plan.measured, 5);
  EXPECT_EQ(first_help(plan, the_catalog()).state, HelpState::act);
  set_chloride_mg_l(*plan.measured, 40);
  EXPECT_EQ(first_help(plan, the_catalog()).state, HelpState::within_limits);
  EXPECT_TRUE(first_help(plan, the_catalog()).changes.empty());
}

TEST(FirstHelp, SaysWhatToTestWhereNothingIsMeasured) {
  Plan plan = young_tank();
  plan.measured.reset();
  const FirstHelp help = first_help(plan, the_catalog());
  EXPECT_EQ(help.state, HelpState::not_measured);
  EXPECT_EQ(help.tests_first, (std::vector<std::string>{"ammonia", "nitrite", "pH"}));
  EXPECT_TRUE(says(help, "Test ammonia, nitrite and pH first"));
  EXPECT_TRUE(help.changes.empty());
  plan.measured = Measured{};
  plan.measured->ammonia_mg_l = plan.measured->nitrite_mg_l = 0;
  EXPECT_EQ(first_help(plan, the_catalog()).state, HelpState::within_limits) << "no ammonia, so no matter the pH";
}

TEST(FirstHelp, IsQuietWhereNobodySwims) {
  Plan plan = young_tank();
  plan.stock[0].have = 0;
  const FirstHelp help = first_help(plan, the_catalog());
  EXPECT_EQ(help.state, HelpState::nobody_swims);
  EXPECT_TRUE(help.says.empty() && help.changes.empty());
}

TEST(FirstHelp, LooksAtThePhThatTheTapBrings) {
  Plan plan = young_tank();
  plan.source.ph = 8.2;
  plan.source.gh_dgh = 14;
  plan.source.kh_dkh = 10;
  plan.measured->ph = 6.4;
  plan.measured->kh_dkh = 2;
  plan.measured->gh_dgh = 4;
  plan.measured->ammonia_mg_l = 6;
  plan.measured->nitrite_mg_l = 0.15;
  const FirstHelp help = first_help(plan, the_catalog());
  EXPECT_TRUE(help.tap_frees_ammonia);
  EXPECT_TRUE(says(help, "frees ammonia"));
  EXPECT_TRUE(help.changes.empty() || help.hardness_jumps);
}

TEST(FirstHelp, CountsTheLoadOfThoseThatSwimAlone) {
  Plan few = young_tank(), many = young_tank();
  few.stock[0].count = 30;
  many.stock[0].count = many.stock[0].have = 30;
  EXPECT_NEAR(*first_help(few, the_catalog()).ammonia_rise_mg_l_d, *first_help(young_tank(), the_catalog()).ammonia_rise_mg_l_d,
              1e-12);
  EXPECT_GT(*first_help(many, the_catalog()).ammonia_rise_mg_l_d, *first_help(few, the_catalog()).ammonia_rise_mg_l_d);
  few.stock.push_back(Group{.species = "nobody-knows", .count = 1, .have = 1});
  const FirstHelp unknown = first_help(few, the_catalog());
  EXPECT_FALSE(unknown.ammonia_rise_mg_l_d);
  EXPECT_FALSE(unknown.changes.empty()) << "today's change needs no load";
}

// Mass balance by hand along the days, and never more than half.
TEST(FirstHelp, FollowsMassBalanceFromDayToDay) {
  Dice dice(5);
  for (int n = 0; n < 200; ++n) {
    Plan plan = young_tank();
    plan.source.kh_dkh.reset();
    plan.stock[0].have = plan.stock[0].count = dice.whole(1, 40);
    plan.measured->ammonia_mg_l = dice.real(0, 4);
    plan.measured->nitrite_mg_l = dice.real(0, 2);
    plan.measured->ph = dice.real(6, 8.6);
    const FirstHelp help = first_help(plan, the_catalog());
    const double net_l = volume_of(plan).net_l;
    double tan = *plan.measured->ammonia_mg_l, nitrite = *plan.measured->nitrite_mg_l;
    std::size_t next = 0;
    for (int day = 0; day <= help_days; ++day) {
      if (day > 0) tan += *help.ammonia_rise_mg_l_d;
      const bool over = nh3_from_n(nh3_n_from_tan_mg_l(tan, 25, *plan.measured->ph)) > help_nh3_mg_l ||
                        nitrite > help_nitrite_low_chloride_mg_l;
      const bool changed = next < help.changes.size() && help.changes[next].day == day;
      ASSERT_EQ(changed, over) << "draw " << n << " day " << day;
      if (!changed) continue;
      const double litres = help.changes[next].litres;
      EXPECT_LE(litres, net_l / 2 + 1e-9);
      tan *= 1 - litres / net_l;
      nitrite *= 1 - litres / net_l;
      EXPECT_NEAR(*help.changes[next].nitrite_after_mg_l, nitrite, 1e-9);
      ++next;
    }
    EXPECT_EQ(next, help.changes.size());
  }
}

}  // namespace
}  // namespace shoalwright
