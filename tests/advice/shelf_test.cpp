// SPDX-License-Identifier: MIT
#include "advice/shelf.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

#include "advice/shelf_list.h"
#include "assess/assess.h"
#include "catalog/builtin.h"
#include "share/plan_json.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

const Catalog& catalog() {
  static const Catalog cards = builtin_catalog();
  return cards;
}

Plan plan_of(const std::string& name) {
  std::ifstream file(std::string(SHOALWRIGHT_TESTS_DIR) + "/plans/" + name + ".json");
  std::stringstream text;
  text << file.rdbuf();
  return read_plan(text.str()).value();
}

// The plan with this many of a kind in all, by hand, so that the shelf is not checked by its own means.
Plan with_count(Plan plan, const std::string& species, int count) {
  bool done = false;
  for (Group& group : plan.stock) {
    if (group.species != species) continue;
    group = Group{.species = species, .count = count};
    done = true;
  }
  if (!done) plan.stock.push_back(Group{.species = species, .count = count});
  return plan;
}

Plan without(Plan plan, const std::string& species) {
  plan.stock.erase(std::remove_if(plan.stock.begin(), plan.stock.end(), [&](const Group& g) { return g.species == species; }),
                   plan.stock.end());
  return plan;
}

// Rules with a Fix or a Strain, and how many of each.
std::multiset<std::string> grave_rules(const Plan& plan) {
  std::multiset<std::string> rules;
  for (const Finding& finding : assess(plan, catalog()).findings)
    if (finding.severity == Severity::harm || finding.severity == Severity::strain) rules.insert(finding.rule);
  return rules;
}

const Species& kind(const std::string& id) { return *find_species(catalog(), id); }

TEST(Shelf, NoNumberThatItOffersRaisesAFixOrAStrainInTheRiverbank) {
  const Plan plan = plan_of("riverbank");
  ShelfSearch shelf(plan, catalog());
  int offered = 0;
  for (const Species& species : catalog().species) {
    const ShelfAnswer answer = shelf.answer(species);
    ASSERT_TRUE(answer.room_for) << species.id;
    if (*answer.room_for <= 0) continue;
    ++offered;
    const std::multiset<std::string> before = grave_rules(without(plan, species.id));
    EXPECT_EQ(before, grave_rules(with_count(plan, species.id, *answer.largest))) << species.id;
  }
  EXPECT_GE(offered, 5);
}

TEST(Shelf, OneMoreThanItOffersRaisesAFixOrAStrainInTheRiverbank) {
  const Plan plan = plan_of("riverbank");
  ShelfSearch shelf(plan, catalog());
  for (const Species& species : catalog().species) {
    const ShelfAnswer answer = shelf.answer(species);
    if (*answer.largest == 0) continue;
    EXPECT_NE(grave_rules(without(plan, species.id)), grave_rules(with_count(plan, species.id, *answer.largest + 1)))
        << species.id;
  }
}

TEST(Shelf, WhatItCallsOverHasALimitThatAssessFindsAtTheLeastGroup) {
  const Plan plan = plan_of("riverbank");
  ShelfSearch shelf(plan, catalog());
  int over = 0;
  for (const Species& species : catalog().species) {
    const ShelfAnswer answer = shelf.answer(species);
    if (answer.largest != 0) continue;
    ++over;
    ASSERT_TRUE(answer.first) << species.id;
    const Assessment with = assess(with_count(plan, species.id, answer.least), catalog());
    const bool found = std::any_of(with.findings.begin(), with.findings.end(), [&](const Finding& finding) {
      return finding.rule == answer.first->rule && finding.severity == answer.first->severity;
    });
    EXPECT_TRUE(found) << species.id << " " << answer.first->rule;
    EXPECT_TRUE(answer.loud());
  }
  EXPECT_GE(over, 3);
}

TEST(Shelf, TheOrderOfQuestionsDoesNotChangeAnAnswer) {
  const Plan plan = plan_of("bench-8-14");
  ShelfSearch forwards(plan, catalog()), backwards(plan, catalog());
  std::vector<ShelfAnswer> there, back;
  for (const Species& species : catalog().species) there.push_back(forwards.answer(species));
  for (auto species = catalog().species.rbegin(); species != catalog().species.rend(); ++species)
    back.push_back(backwards.answer(*species));
  std::reverse(back.begin(), back.end());
  EXPECT_EQ(there, back);
}

TEST(Shelf, AKindInThePlanIsAnsweredAsTheAssessmentAnswersIt) {
  const Plan plan = plan_of("riverbank");
  const Assessment assessment = assess(plan, catalog());
  for (const GroupRoom& group : assessment.room.groups) {
    const ShelfAnswer answer = shelf_answer(plan, catalog(), kind(group.species));
    EXPECT_EQ(answer.largest, group.largest_count) << group.species;
    EXPECT_GT(answer.in_plan, 0);
  }
}

TEST(Shelf, SaysAnimalsFirst) {
  ShelfAnswer answer{.species = "a", .fit = ShelfFit::spare, .least = 6, .good = 8, .largest = 9, .room_for = 9};
  EXPECT_EQ(shelf_words(answer), "Room for 9");
  answer.then_at_most_c = 26;
  EXPECT_EQ(shelf_words(answer), "Room for 9, then 26 °C at most");
  answer.then_at_most_c.reset();
  answer.keep_lid_on = true;
  EXPECT_EQ(shelf_words(answer), "Room for 9; jumps, keep the lid on");

  EXPECT_EQ(shelf_words({.fit = ShelfFit::just, .least = 8, .good = 12, .largest = 8, .room_for = 8}), "Just 8, no more");
  EXPECT_EQ(shelf_words({.fit = ShelfFit::just, .least = 6, .good = 10, .largest = 8, .room_for = 8}), "8 fit, 10 are better");
  EXPECT_EQ(shelf_words({.fit = ShelfFit::just, .least = 5, .good = 8, .largest = 3, .room_for = 3}), "3 fit, 5 is the least");
}

TEST(Shelf, SaysOfAKindInThePlanThatItIsThere) {
  ShelfAnswer answer{.fit = ShelfFit::spare, .in_plan = 10, .least = 6, .good = 10, .largest = 12, .room_for = 2};
  EXPECT_EQ(shelf_words(answer), "In the plan: 10, room for 2 more");
  answer.room_for = 0;
  EXPECT_EQ(shelf_words(answer), "In the plan: 10, no more");
  answer.room_for = -3;
  EXPECT_EQ(shelf_words(answer), "In the plan: 10, 3 too many");
  answer.largest = 0;
  answer.first = ShelfLimit{.rule = "swim-lane", .measure = ShelfLimit::Measure::lane, .amount = 53};
  EXPECT_EQ(shelf_words(answer), "In the plan: 10; lane 53 cm short");
  answer.first->measure = ShelfLimit::Measure::gh;
  answer.first->amount = 4;
  EXPECT_EQ(shelf_words(answer), "In the plan: 10; GH 4 too hard");
}

TEST(Shelf, SaysALimitInItsNumber) {
  using Measure = ShelfLimit::Measure;
  const auto words = [](Measure measure, double amount, bool too_high = true) {
    return shelf_words(
        {.fit = ShelfFit::over,
         .largest = 0,
         .room_for = 0,
         .first = ShelfLimit{.rule = "crowding-bottom", .measure = measure, .amount = amount, .too_high = too_high}});
  };
  EXPECT_EQ(words(Measure::lane, 53), "Lane 53 cm short");
  EXPECT_EQ(words(Measure::gh, 4), "GH 4 too hard");
  EXPECT_EQ(words(Measure::gh, 4, false), "GH 4 too soft");
  EXPECT_EQ(words(Measure::ph, 0.8, false), "pH 0.8 too low");
  EXPECT_EQ(words(Measure::temperature, 3), "3 °C too warm");
  EXPECT_EQ(words(Measure::temperature, 5, false), "5 °C too cold");
  EXPECT_EQ(words(Measure::tank_volume, 100), "Tank 100 L too small");
  EXPECT_EQ(words(Measure::count, 0), "No room on the floor");
}

TEST(Shelf, AKindTooLongIsSaidToBeSoBeforeWhatFewerAnimalsWouldMend) {
  for (const char* id : {"balantiocheilos-melanopterus", "pterophyllum-altum", "carassius-auratus"}) {
    const ShelfAnswer answer = shelf_answer(plan_of("riverbank"), catalog(), kind(id));
    ASSERT_TRUE(answer.first) << id;
    EXPECT_EQ(answer.first->rule, "tank-length") << id << ": " << answer.first->text;
  }
}

TEST(Shelf, AWaterTooHardIsSaidByHowMuch) {
  Plan plan = plan_of("riverbank");
  plan.stock.clear();
  plan.assumed.clear();
  Species soft = sample_species("own--soft", Style::calm_mid, 3);
  soft.life.group = {.kind = GroupKind::shoal, .least = 6, .good = 8};
  soft.water.gh_dgh = {.tolerated = Range{1, 6}, .ideal = Range{1, 4}};
  soft.water.kh_dkh = {};
  soft.water.ph = {};
  plan.water->gh_dgh = 10;
  const ShelfAnswer answer = shelf_answer(plan, catalog(), soft);
  ASSERT_TRUE(answer.first);
  EXPECT_EQ(shelf_words(answer), "GH 4 too hard");
}

TEST(Shelf, ALargerTankNeverOffersFewer) {
  for (const char* id : {"hyphessobrycon-amandae", "paracheirodon-innesi", "hoplisoma-sterbai", "danio-rerio"}) {
    int before = 0;
    for (const double length_cm : {40.0, 60.0, 80.0, 100.0, 120.0, 160.0}) {
      Plan plan = box_plan(length_cm, 40, 45, 42);
      const ShelfAnswer answer = shelf_answer(plan, catalog(), kind(id));
      ASSERT_TRUE(answer.room_for);
      EXPECT_GE(*answer.room_for, before) << id << " at " << length_cm;
      before = *answer.room_for;
    }
    EXPECT_GT(before, 0) << id;
  }
}

TEST(Shelf, NothingIsPromisedBesideAnUnknownKind) {
  Plan plan = plan_of("riverbank");
  plan.stock.push_back(Group{.species = "piscis-ignotus", .count = 4});
  const ShelfAnswer answer = shelf_answer(plan, catalog(), kind("hyphessobrycon-amandae"));
  EXPECT_EQ(answer.fit, ShelfFit::unknown);
  EXPECT_FALSE(answer.room_for);
  EXPECT_FALSE(answer.loud());
  EXPECT_EQ(shelf_words(answer), "Not known: a kind in the plan is not");
}

TEST(Shelf, ClosestFitFirstPutsEveryKindThatFitsBeforeEveryKindThatDoesNot) {
  const Plan plan = plan_of("riverbank");
  ShelfSearch shelf(plan, catalog());
  std::vector<ShelfAnswer> answers;
  for (const Species& species : catalog().species) answers.push_back(shelf.answer(species));
  std::vector<ShelfRow> rows;
  for (std::size_t i = 0; i < answers.size(); ++i) rows.push_back({&catalog().species[i], &answers[i]});
  put_in_order(rows, ShelfOrder::closest_first);
  bool over = false;
  for (const ShelfRow& row : rows) {
    EXPECT_FALSE(over && row.answer->fit != ShelfFit::over) << row.species->id;
    over = over || row.answer->fit == ShelfFit::over;
  }
  EXPECT_TRUE(over);
}

// The closer of two kinds that differ in one need only is the one that the water suits better.
TEST(Shelf, OfTwoKindsTheOneInTheMiddleOfItsWaterIsCloser) {
  Plan plan = box_plan(100, 40, 45, 42);
  plan.water->gh_dgh = 8;
  Species middle = sample_species("own--middle", Style::calm_mid, 3), edge = sample_species("own--edge", Style::calm_mid, 3);
  middle.water.gh_dgh = {.tolerated = Range{4, 12}, .ideal = Range{6, 10}};
  edge.water.gh_dgh = {.tolerated = Range{1, 8.5}, .ideal = Range{2, 6}};
  EXPECT_GT(shelf_answer(plan, catalog(), middle).closeness, shelf_answer(plan, catalog(), edge).closeness);
}

TEST(ShelfList, FiltersAddUpAndLevelsDoNot) {
  const Species& ember = kind("hyphessobrycon-amandae");
  const Species& betta = kind("betta-splendens");
  const Species& shrimp = kind("neocaridina-davidi");
  EXPECT_TRUE(passes({.small = true, .shoals = true}, ember, nullptr));
  EXPECT_FALSE(passes({.small = true}, betta, nullptr));
  EXPECT_FALSE(passes({.shoals = true}, betta, nullptr));
  EXPECT_TRUE(passes({.shrimp = true}, shrimp, nullptr));
  EXPECT_FALSE(passes({.shrimp = true}, ember, nullptr));
  EXPECT_TRUE(passes({.levels = {true, false, false, true}}, kind("hoplisoma-sterbai"), nullptr));
  EXPECT_FALSE(passes({.levels = {true, false, false, false}}, kind("hoplisoma-sterbai"), nullptr));

  ShelfAnswer full{.fit = ShelfFit::just, .in_plan = 10, .largest = 10, .room_for = 0};
  EXPECT_FALSE(passes({.has_room = true}, ember, &full));
  full.room_for = 1;
  EXPECT_TRUE(passes({.has_room = true}, ember, &full));
  EXPECT_TRUE(passes({.has_room = true}, ember, nullptr));

  EXPECT_TRUE(passes({.group = "tetras"}, ember, nullptr));
  EXPECT_FALSE(passes({.group = "labyrinth"}, ember, nullptr));
}

TEST(ShelfList, WhatAShopHasIsTickedAndTakenOutAgain) {
  ShelfFilter filter{.in_shop = true};
  const Species& ember = kind("hyphessobrycon-amandae");
  EXPECT_FALSE(passes(filter, ember, nullptr));
  tick(filter.shop, "betta-splendens");
  tick(filter.shop, ember.id);
  EXPECT_EQ(filter.shop, (std::vector<std::string>{"betta-splendens", ember.id})) << "as it was ticked";
  EXPECT_TRUE(passes(filter, ember, nullptr));
  EXPECT_EQ(names_of(filter), std::vector<std::string>{"My shop"});
  tick(filter.shop, ember.id);
  EXPECT_FALSE(passes(filter, ember, nullptr));
  filter.in_shop = false;
  EXPECT_TRUE(passes(filter, ember, nullptr)) << "a list that is not asked for hides nothing";

  const ShelfAnswer room{.largest = 3, .room_for = 3}, full{.largest = 0, .room_for = 0}, not_known;
  const std::vector<const ShelfAnswer*> answers{&room, &full, &not_known, nullptr};
  EXPECT_EQ(with_room(answers), 1);
}

TEST(ShelfList, EveryKindSwimsSomewhere) {
  for (const Species& species : catalog().species) {
    const SwimLevels levels = swim_levels(species);
    EXPECT_TRUE(levels.surface || levels.upper || levels.middle || levels.floor) << species.id;
  }
  EXPECT_TRUE(swim_levels(kind("carnegiella-strigata")).surface);
  EXPECT_TRUE(swim_levels(kind("pangio-semicincta")).floor);
  EXPECT_FALSE(swim_levels(kind("pangio-semicincta")).surface);
  EXPECT_TRUE(swim_levels(kind("trigonostigma-heteromorpha")).middle);
}

TEST(ShelfList, TheKeepersOwnKindStandsInForTheCataloguesOfTheSameId) {
  Plan plan = box_plan(100, 40, 45, 42);
  Species own = kind("danio-rerio");
  own.size.adult_tl_cm = 6;
  plan.own_species.push_back(own);
  const std::vector<const Species*> kinds = shelf_kinds(plan, catalog());
  EXPECT_EQ(kinds.size(), catalog().species.size());
  EXPECT_EQ(kinds.front()->size.adult_tl_cm, 6);
  const std::vector<const Species*> found = find_on_shelf(plan, catalog(), "zebra danio");
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found.front(), &plan.own_species.front());
}

TEST(ShelfList, ASearchThatFindsNothingOffersTheLongestBeginningThatDoes) {
  const Plan plan = box_plan(100, 40, 45, 42);
  ASSERT_TRUE(find_on_shelf(plan, catalog(), "barbxyz").empty());
  const std::string closest = closest_search(plan, catalog(), "barbxyz");
  EXPECT_EQ(closest, "barb");
  EXPECT_FALSE(find_on_shelf(plan, catalog(), closest).empty());
  EXPECT_EQ(closest_search(plan, catalog(), "qqq"), "");
}

TEST(ShelfList, TheUsualAdditionIsTheGoodGroupAndThenWhatItLacks) {
  const Species& harlequin = kind("trigonostigma-heteromorpha");
  EXPECT_EQ(usual_addition(harlequin, 0), harlequin.life.group.good);
  EXPECT_EQ(usual_addition(harlequin, harlequin.life.group.good - 2), 2);
  EXPECT_EQ(usual_addition(harlequin, harlequin.life.group.good), 1);
}

}  // namespace
}  // namespace shoalwright
