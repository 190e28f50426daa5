// SPDX-License-Identifier: MIT
#include "advice/tank_for.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "assess/reckoned.h"
#include "plan/defaults.h"
#include "support/builders.h"
#include "support/plan_files.h"
#include "tank/glass.h"
#include "tank/sizes.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

Plan in_tank(Plan plan, double length_cm, double width_cm, double height_cm, double glass_mm) {
  Tank outside;
  outside.length_cm = length_cm;
  outside.width_cm = width_cm;
  outside.height_cm = height_cm;
  outside.glass_mm = glass_mm;
  const std::optional<bool> lid = plan.tank.lid;
  plan.tank = inside_of(outside);
  plan.tank.lid = lid;
  plan.pieces.clear();
  return plan;
}

/// Whether a tank raises a harm or strain that the largest usual one does not.
bool too_small(const Plan& plan, double length_cm, double width_cm, double height_cm, double glass_mm) {
  BodyRooms bodies;
  const std::vector<Grade> largest = grades_of(in_tank(plan, 200, 60, 60, 12), catalog(), bodies);
  const std::vector<Grade> grades = grades_of(in_tank(plan, length_cm, width_cm, height_cm, glass_mm), catalog(), bodies);
  return std::any_of(grades.begin(), grades.end(), [&](const Grade& one) { return !known_before(one, largest); });
}

TEST(TankFor, IsLargeEnoughAndAStepLessIsNot) {
  int free_tanks = 0;
  for (const NamedPlan& named : all_plans()) {
    const TanksFor found = least_tanks(named.plan, catalog());
    EXPECT_NE(found.tanks.empty(), found.why_none.empty()) << named.name << found.why_none;
    for (const TankFor& tank : found.tanks) {
      EXPECT_FALSE(too_small(named.plan, tank.length_cm, tank.width_cm, tank.height_cm, tank.glass_mm)) << named.name;
      if (!tank.name.empty()) continue;
      ++free_tanks;
      const auto less = [&](double l, double w, double h) {
        return too_small(named.plan, tank.length_cm - l, tank.width_cm - w, tank.height_cm - h,
                         default_glass_mm(tank.height_cm - h));
      };
      if (!tank.length_set_by.empty()) {
        EXPECT_TRUE(less(tank_step_cm, 0, 0)) << named.name << " " << tank.length_set_by;
      }
      if (!tank.width_set_by.empty()) {
        EXPECT_TRUE(less(0, tank_step_cm, 0)) << named.name << " " << tank.width_set_by;
      }
      if (!tank.height_set_by.empty()) {
        EXPECT_TRUE(less(0, 0, tank_step_cm)) << named.name << " " << tank.height_set_by;
      }
    }
    for (std::size_t i = 1; i < found.tanks.size(); ++i)
      EXPECT_LE(found.tanks[i - 1].volume_l, found.tanks[i].volume_l) << named.name;
  }
  EXPECT_GE(free_tanks, 3);
}

TEST(TankFor, NoUsualTankThatWillDoIsSmallerThanTheFirst) {
  const Plan plan = a_plan().planted(Planting::light).kind("danio-rerio", 10).plan();
  const TanksFor found = least_tanks(plan, catalog());
  const auto first = std::find_if(found.tanks.begin(), found.tanks.end(), [](const TankFor& one) { return !one.name.empty(); });
  ASSERT_NE(first, found.tanks.end());
  for (const UsualSize& size : usual_sizes()) {
    const Tank inside = tank_of(size);
    if (inside.length_cm * inside.width_cm * inside.height_cm / 1000 < first->volume_l - 1e-9) {
      EXPECT_TRUE(too_small(plan, size.length_cm, size.width_cm, size.height_cm, size.glass_mm)) << size.name;
    }
  }
}

TEST(TankFor, AnotherGroupNeverMakesItSmaller) {
  PlanBuilder builder = a_plan().planted(Planting::light);
  double before_l = 0;
  for (const auto& [species, count] : {std::pair{"danio-rerio", 8}, {"corydoras-sterbai", 6}, {"trichogaster-chuna", 2}}) {
    builder = builder.kind(species, count);
    const TanksFor found = least_tanks(builder.plan(), catalog());
    ASSERT_FALSE(found.tanks.empty()) << found.why_none;
    const auto usual = std::find_if(found.tanks.begin(), found.tanks.end(), [](const TankFor& one) { return !one.name.empty(); });
    EXPECT_GE(usual->volume_l, before_l) << species;
    before_l = usual->volume_l;
  }
}

TEST(TankFor, SaysWhyNoTankCanBeNamed) {
  EXPECT_NE(least_tanks(a_plan().planted(Planting::light).kind("hypostomus-plecostomus", 1).plan(), catalog()).why_none, "");
  EXPECT_EQ(least_tanks(a_plan().planted({}).kind("danio-rerio", 8).plan(), catalog()).why_none,
            "How densely it is planted is not known, so no tank can be named.");
  EXPECT_EQ(least_tanks(a_plan().planted(Planting::light).kind("no-such-fish", 8).plan(), catalog()).why_none,
            "Nothing is known of no-such-fish, so no tank can be named.");
}

}  // namespace
}  // namespace shoalwright
