// SPDX-License-Identifier: MIT
#include "advice/ro_week.h"

#include <gtest/gtest.h>

#include "advice/recipe_card.h"
#include "share/plan_json.h"
#include "support/plan_files.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

Plan riverbank() { return read_plan(test_file("plans/riverbank.json")).value(); }

std::optional<RoWeek> week_of(const Plan& plan, std::optional<double> ratio = {}) {
  return ro_week(plan, windows_of(plan, the_catalog()), volume_of(plan).net_l, ratio);
}

TEST(RoWeek, IsTheRecipesWaterAndItsWaste) {
  Plan plan = riverbank();
  const RecipeCard card = recipe_card(plan, the_catalog());
  const std::optional<RoWeek> week = week_of(plan);
  ASSERT_TRUE(week);
  EXPECT_NEAR(week->ro_l, *card.ro_l_week, 1e-9);
  EXPECT_NEAR(week->drain_l.low, ro_reject_l_per_l.low * week->ro_l, 1e-9);
  EXPECT_NEAR(week->drain_l.high, ro_reject_l_per_l.high * week->ro_l, 1e-9);
  const std::optional<RoWeek> own = week_of(plan, 2.5);
  EXPECT_NEAR(own->drain_l.low, 2.5 * own->ro_l, 1e-9);
  EXPECT_EQ(own->drain_l.low, own->drain_l.high) << "a filter of one's own has one ratio";
  plan.upkeep->every_days /= 2;
  EXPECT_NEAR(week_of(plan)->ro_l, 2 * week->ro_l, 1e-9);
}

TEST(RoWeek, NoneWhereNoneIsTaken) {
  Plan plan = riverbank();
  plan.upkeep->change_fraction = 0;
  EXPECT_FALSE(week_of(plan));
  plan = riverbank();
  plan.water.reset();
  EXPECT_FALSE(week_of(plan)) << "the tank runs on the tap";
  plan = riverbank();
  plan.water->gh_dgh = plan.source.gh_dgh;
  plan.water->kh_dkh = plan.source.kh_dkh;
  EXPECT_FALSE(week_of(plan)) << "the tap is what is aimed at";
}

}  // namespace
}  // namespace shoalwright
