// SPDX-License-Identifier: MIT
#include "mend/mend.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "mend/change.h"
#include "mend/mend_json.h"
#include "mend/repairs.h"
#include "share/patch.h"
#include "share/plan_json.h"
#include "support/builders.h"
#include "support/plan_files.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

std::vector<Grade> grades(const Plan& plan) {
  BodyRooms bodies;
  return grades_of(plan, catalog(), bodies);
}

bool has_harm(const Plan& plan) {
  const std::vector<Finding> found = assess(plan, catalog()).findings;
  return std::any_of(found.begin(), found.end(), [](const Finding& one) { return one.severity == Severity::harm; });
}

/// Cost of the least costly plan without harm and strain that up to so many repairs, one after another, lead to: all of them, in
/// every order.
std::optional<double> least_cost_by_trying_all(const Plan& from, int most_steps) {
  std::optional<double> least;
  std::set<std::string> seen = {plan_json(from)};
  std::vector<Plan> now = {from};
  BodyRooms bodies;
  for (int step = 0; step < most_steps; ++step) {
    std::vector<Plan> next;
    for (const Plan& plan : now)
      for (const Repair& repair : repairs_of(plan, catalog(), bodies, step <= 1 ? RepairsOf::all : RepairsOf::small_things)) {
        const Result<Plan> after = apply_patch(plan, repair.edits);
        if (!after || !keeps_what_is_pinned(plan, *after) || !seen.insert(plan_json(*after)).second) continue;
        const double cost = cost_of(changes_between(from, *after, catalog()));
        if (grades_of(*after, catalog(), bodies).empty()) {
          if (!least || cost < *least) least = cost;
        } else if (!least || cost < *least) {
          next.push_back(*after);
        }
      }
    now = std::move(next);
  }
  return least;
}

/// A sound planted tank, 100 x 40 x 50 cm.
PlanBuilder sound() {
  return a_plan().tank(98.4, 38.4, 49.2).tap(7, 8, 4).planted(Planting::medium).kind("trigonostigma-heteromorpha", 10);
}

struct Broken {
  const char* name;
  Plan plan;
  std::size_t repairs;  ///< that are needed together
};

std::vector<Broken> broken_plans() {
  return {
      {"no lid over hatchets", sound().kind("carnegiella-strigata", 8).lid(false).plan(), 1},
      {"a shoal too small", sound().kind("danio-rerio", 3).plan(), 1},
      {"no lid, and a shoal too small", sound().kind("carnegiella-strigata", 8).kind("danio-rerio", 3).lid(false).plan(), 2},
      {"a shoal too small in two kinds", sound().kind("danio-rerio", 3).kind("corydoras-sterbai", 2).plan(), 2},
      {"no lid, two shoals too small",
       sound().kind("carnegiella-strigata", 8).kind("danio-rerio", 3).kind("corydoras-sterbai", 2).lid(false).plan(), 3},
      {"a nipper, and no lid",
       sound().kind("betta-splendens", 1).kind("puntigrus-tetrazona", 8).kind("carnegiella-strigata", 8).lid(false).plan(), 2},
  };
}

TEST(Mend, FindsTheLeastCostlySetOfRepairsThatTryingAllFinds) {
  for (const Broken& broken : broken_plans()) {
    const std::optional<double> least = least_cost_by_trying_all(broken.plan, static_cast<int>(broken.repairs));
    ASSERT_TRUE(least) << broken.name;
    const Mends found = mend(broken.plan, catalog());
    ASSERT_FALSE(found.mends.empty()) << broken.name << found.why_none;
    EXPECT_TRUE(found.searched_out) << broken.name;
    EXPECT_NEAR(found.mends.front().cost, *least, 1e-9) << broken.name << ": " << found.mends.front().says.front();
    EXPECT_EQ(found.mends.front().says.size(), broken.repairs) << broken.name;
    if (broken.repairs > 1) {
      EXPECT_FALSE(least_cost_by_trying_all(broken.plan, static_cast<int>(broken.repairs) - 1).value_or(1e9) <= *least)
          << broken.name << " needs fewer";
    }
  }
}

TEST(Mend, EveryMendAppliedAsAPatchLeavesNoHarmAndWhatItSays) {
  int tried = 0;
  const std::vector<NamedPlan> plans = many_plans();
  const std::size_t step = std::max<std::size_t>(plans.size() / 40, 1);
  for (std::size_t i = 0; i < plans.size(); i += step) {
    const NamedPlan& named = plans[i];
    const Mends found = mend(named.plan, catalog());
    if (grades(named.plan).empty()) {
      EXPECT_TRUE(found.mends.empty()) << named.name;
      EXPECT_EQ(found.why_none, "") << named.name;
      continue;
    }
    EXPECT_EQ(has_harm(named.plan) && found.mends.empty(), !found.why_none.empty()) << named.name;
    EXPECT_LE(found.mends.size(), 3u);
    for (const Mend& one : found.mends) {
      const Result<Plan> after = apply_patch(named.plan, one.edits);
      ASSERT_TRUE(after) << named.name << " " << after.error().sentence;
      EXPECT_FALSE(has_harm(*after)) << named.name << ": " << one.says.front();
      EXPECT_FALSE(has_harm(one.after)) << named.name << ": " << one.says.front();
      std::set<std::string> left;
      for (const Grade& grade : grades(*after)) left.insert(grade.rule);
      EXPECT_EQ(left, std::set<std::string>(one.left.begin(), one.left.end())) << named.name;
      EXPECT_FALSE(one.says.empty());
      EXPECT_GT(one.cost, 0);
      EXPECT_NEAR(one.cost, cost_of(changes_between(named.plan, *after, catalog())), 1e-9) << named.name;
      ++tried;
    }
  }
  EXPECT_GT(tried, 10);
}

TEST(Mend, MendsDifferAndTheLeastCostlyComesFirst) {
  const Mends found = mend(sound().kind("carnegiella-strigata", 8).kind("danio-rerio", 3).lid(false).plan(), catalog());
  ASSERT_GE(found.mends.size(), 2u);
  for (std::size_t i = 1; i < found.mends.size(); ++i) {
    EXPECT_LE(found.mends[i - 1].cost, found.mends[i].cost);
    EXPECT_NE(found.mends[i - 1].says, found.mends[i].says);
  }
}

TEST(Mend, LeavesAloneWhatIsPinnedAndSaysWhyNothingHelps) {
  // The hatchets' line is pinned: the lid it must be, and with the tank pinned too nothing helps.
  Plan plan = sound().kind("carnegiella-strigata", 8).lid(false).plan();
  plan.fixed = {"/stock/1"};
  const Mends by_lid = mend(plan, catalog());
  ASSERT_FALSE(by_lid.mends.empty());
  for (const Mend& one : by_lid.mends) EXPECT_EQ(one.after.stock[1], plan.stock[1]);

  plan.fixed = {"/stock/1", "/tank"};
  const Mends none = mend(plan, catalog());
  for (const Mend& one : none.mends) {
    EXPECT_EQ(one.after.stock[1], plan.stock[1]);
    EXPECT_EQ(one.after.tank, plan.tank);
  }
  if (has_harm(plan)) {
    EXPECT_TRUE(none.mends.empty());
    EXPECT_NE(none.why_none, "");
  }
}

TEST(Mend, WhatSwimsAlreadyIsReHomedOnlyWhereNothingElseHelps) {
  // Wished for, the shoal that is too small may go; where they swim already, more are bought.
  Plan plan = sound().kind("danio-rerio", 3).plan();
  plan.stock.back().have = 3;
  const Mends found = mend(plan, catalog());
  ASSERT_FALSE(found.mends.empty());
  EXPECT_EQ(found.mends.front().says.front().find("Re-home"), std::string::npos) << found.mends.front().says.front();
  bool any = false;
  for (const Mend& one : found.mends)
    for (const std::string& text : one.says) {
      EXPECT_EQ(text.find("Leave out zebra danio"), std::string::npos) << text;
      any = any || text.find("Re-home") != std::string::npos;
    }
  EXPECT_TRUE(any);
}

TEST(Mend, CutIntoStepsItAnswersTheSame) {
  const Plan plan = broken_plans()[4].plan;
  MendSearch search(plan, catalog());
  int steps = 0;
  while (!search.step()) {
    search.found();  // asking does not disturb it
    ++steps;
  }
  EXPECT_GT(steps, 10);
  EXPECT_EQ(mends_json(search.found()), mends_json(mend(plan, catalog())));
}

TEST(Mend, NothingToMendIsAnAnswer) {
  const Mends found = mend(sound().plan(), catalog());
  EXPECT_TRUE(found.mends.empty());
  EXPECT_EQ(found.why_none, "");
  EXPECT_EQ(mends_json(found), R"({"mends":[],"why_none":null})");
}

TEST(MendCost, AnAnimalThatSwimsCostsMoreThanATankAndAWishLessThanEither) {
  Plan plan = sound().kind("danio-rerio", 8).plan();
  Plan less = plan;
  less.stock.pop_back();
  const double wish = cost_of(changes_between(plan, less, catalog()));
  Plan larger = plan;
  larger.tank.length_cm += 20;
  const double tank = cost_of(changes_between(plan, larger, catalog()));
  plan.stock.back().have = 1;
  const double home = cost_of(changes_between(plan, less, catalog()));
  larger.stock.back().have = 1;
  const double lived_in = cost_of(changes_between(plan, larger, catalog()));
  EXPECT_GT(wish, 0);
  EXPECT_LT(wish, tank);
  EXPECT_LT(tank, lived_in);
  EXPECT_LT(lived_in, home);
  EXPECT_TRUE(changes_between(plan, plan, catalog()).empty());
}

}  // namespace
}  // namespace shoalwright
