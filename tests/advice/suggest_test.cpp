// SPDX-License-Identifier: MIT
#include "advice/suggest.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "assess/reckoned.h"
#include "edit/command.h"
#include "support/builders.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

/// Whether so many of a kind in all raise a harm or a strain that is not there, as grave and as much, without the kind.
bool raises_more(const Plan& plan, const std::string& species, int count) {
  Plan without = apply(plan, TakeOut{.species = species}, catalog());
  const Plan with = apply(without, AddGroup{.species = species, .count = count}, catalog());
  BodyRooms bodies;
  const std::vector<Grade> before = grades_of(without, catalog(), bodies);
  const std::vector<Grade> after = grades_of(with, catalog(), bodies);
  return std::any_of(after.begin(), after.end(), [&](const Grade& one) { return !known_before(one, before); });
}

TEST(Suggest, AgreesWithAddingTheKindAndJudging) {
  int fits = 0, refused = 0;
  for (const char* name : {"riverbank.json", "hard-water-livebearers.json", "cool-unheated.json", "fighter-cube.json"}) {
    const std::vector<NamedPlan> plans = all_plans();
    const Plan& plan = std::find_if(plans.begin(), plans.end(), [&](const NamedPlan& one) { return one.name == name; })->plan;
    const std::vector<Suggestion> all = suggestions_for(plan, catalog());
    EXPECT_EQ(all.size(), catalog().species.size());
    for (std::size_t i = 0; i < all.size(); i += 9) {
      const Suggestion& one = all[i];
      const int in_all = one.answer.in_plan + one.count;
      if (one.count > 0) {
        EXPECT_FALSE(raises_more(plan, one.answer.species, in_all)) << name << " " << one.answer.species << " " << in_all;
        EXPECT_TRUE(raises_more(plan, one.answer.species, in_all + 1)) << name << " " << one.answer.species << " " << in_all;
        ++fits;
      }
      if (one.fit == SuggestedFit::fits && one.answer.in_plan == 0) {
        EXPECT_GE(one.count, one.answer.good);
      }
      if (one.fit == SuggestedFit::no && one.answer.in_plan == 0) {
        EXPECT_TRUE(raises_more(plan, one.answer.species, one.answer.least)) << name << " " << one.answer.species;
        EXPECT_FALSE(one.findings.empty()) << name << " " << one.answer.species;
        ++refused;
      }
    }
  }
  EXPECT_GT(fits, 20);
  EXPECT_GT(refused, 20);
}

TEST(Suggest, WhatFitsComesFirstAndWhatTheTankLacksBeforeWhatItHas) {
  // Harlequins in the middle: the surface and the floor are empty.
  const Plan plan = a_plan().tank(98.4, 38.4, 49.2).planted(Planting::medium).kind("trigonostigma-heteromorpha", 12).plan();
  const std::vector<Suggestion> all = suggestions_for(plan, catalog());
  bool over = false;
  for (const Suggestion& one : all) {
    if (one.fit == SuggestedFit::no) over = true;
    if (over) {
      EXPECT_EQ(one.fit, SuggestedFit::no) << one.answer.species;
    }
  }
  const auto place = [&](const std::string& id) {
    return std::find_if(all.begin(), all.end(), [&](const Suggestion& one) { return one.answer.species == id; }) - all.begin();
  };
  const auto& twin = all[static_cast<std::size_t>(place("trigonostigma-espei"))];
  EXPECT_EQ(twin.answer.much_like, "trigonostigma-heteromorpha");
  EXPECT_LT(place("carnegiella-strigata"), place("trigonostigma-espei"));
  EXPECT_LT(place("pangio-semicincta"), place("trigonostigma-espei"));
  EXPECT_GT(all[static_cast<std::size_t>(place("carnegiella-strigata"))].answer.fills, twin.answer.fills);
}

TEST(Lacking, NamesEmptyLevelsAndSmallGroupsAndNothing) {
  const Plan empty = a_plan().plan();
  EXPECT_EQ(lacking_in(empty, catalog()).levels.size(), 4u);
  EXPECT_EQ(say_lacking(lacking_in(empty, catalog())), "Nobody swims here yet.");

  const Plan one = a_plan().kind("pangio-semicincta", 3).plan();
  const Lacking lacking = lacking_in(one, catalog());
  EXPECT_EQ(lacking.groups, std::vector<std::string>{"pangio-semicincta"});
  EXPECT_EQ(std::count(lacking.levels.begin(), lacking.levels.end(), "floor"), 0);
  EXPECT_EQ(std::count(lacking.levels.begin(), lacking.levels.end(), "surface"), 1);
  EXPECT_NE(say_lacking(lacking).find("1 group is smaller"), std::string::npos) << say_lacking(lacking);

  const std::vector<NamedPlan> plans = all_plans();
  const auto demo = std::find_if(plans.begin(), plans.end(), [](const NamedPlan& p) { return p.name == "riverbank.json"; });
  Plan full = demo->plan;
  for (Group& group : full.stock) group.count = 20;
  EXPECT_TRUE(lacking_in(full, catalog()).nothing()) << say_lacking(lacking_in(full, catalog()));
  EXPECT_EQ(say_lacking(lacking_in(full, catalog())), "Nothing is missing: every level has its animals, every group its number.");
}

}  // namespace
}  // namespace shoalwright
