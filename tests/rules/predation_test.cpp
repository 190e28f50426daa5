// SPDX-License-Identifier: MIT
// Swallow index: stocking/swallow.h with its sources; what becomes of it is common practice.
#include <gtest/gtest.h>

#include "support/mended.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish(const char* id, double adult_tl_cm, const char* eater) {
  Species species = sample_species(id, Style::calm_mid, adult_tl_cm);
  species.kind = "fish";
  species.life.group = {.kind = GroupKind::loose, .least = 1, .good = 1, .all_male_ok = true, .added = "any"};
  species.life.active = "day";
  species.mouth = {.eater = eater, .eats_shrimp = "no", .eats_plants = "no"};
  return species;
}

Assessment beside(const Species& eater, const Species& prey, Strictness view = Strictness::usual) {
  return assess(a_plan().tank(198, 78, 60).strictness(view).fish(eater, 1).fish(prey, 1), none);
}

std::optional<Severity> judged(const Species& eater, const Species& prey, Strictness view = Strictness::usual) {
  return severity_of(beside(eater, prey, view), "predation");
}

constexpr auto lenient = Strictness::lenient, usual = Strictness::usual, strict = Strictness::strict;

/// A prey of which the index beside that eater is just that: so deep that the gape decides.
Species prey_at(double index, const Species& eater, double gape_share) {
  Species prey = fish("own--prey", gape_share / 0.8 * eater.size.adult_tl_cm / index, "small-mouth");
  prey.size.body_depth_share = 0.8;
  return prey;
}

TEST(Predation, OfAHunterIsTheSameInAllViews) {
  const Species hunter = fish("own--hunter", 20, "hunter");
  for (const Strictness view : {lenient, usual, strict}) {
    EXPECT_EQ(judged(hunter, prey_at(1.0, hunter, 0.2), view), Severity::harm);
    EXPECT_EQ(judged(hunter, prey_at(0.99, hunter, 0.2), view), Severity::strain);
    EXPECT_EQ(judged(hunter, prey_at(0.80, hunter, 0.2), view), Severity::strain);
    EXPECT_EQ(judged(hunter, prey_at(0.79, hunter, 0.2), view), Severity::watch);
    EXPECT_EQ(judged(hunter, prey_at(0.67, hunter, 0.2), view), Severity::watch);
    EXPECT_EQ(judged(hunter, prey_at(0.66, hunter, 0.2), view), std::nullopt);
  }
}

TEST(Predation, OfOtherMouthsIsDivided) {
  const Species angel = fish("own--angel", 12, "opportunist");
  EXPECT_EQ(judged(angel, prey_at(1.0, angel, 0.12), lenient), Severity::watch);
  EXPECT_EQ(judged(angel, prey_at(1.0, angel, 0.12), usual), Severity::strain);
  EXPECT_EQ(judged(angel, prey_at(1.0, angel, 0.12), strict), Severity::harm);
  EXPECT_EQ(judged(angel, prey_at(0.9, angel, 0.12), usual), Severity::strain);
  EXPECT_EQ(judged(angel, prey_at(0.9, angel, 0.12), strict), Severity::strain);
  EXPECT_EQ(judged(angel, prey_at(0.7, angel, 0.12), usual), Severity::watch);
  EXPECT_EQ(judged(angel, prey_at(0.6, angel, 0.12), strict), std::nullopt);
}

TEST(Predation, SpeaksOfGrownAnimalsOnly) {
  Species angel = fish("own--angel", 12, "opportunist");
  angel.size.sold_cm = 3;
  EXPECT_EQ(judged(angel, prey_at(1.2, angel, 0.12)), Severity::strain) << "small when it is sold";
}

TEST(Predation, ByNightTakesWhatSleepsFromWhereOthersAreWatched) {
  Species hunter = fish("own--hunter", 10, "opportunist");
  Species prey = fish("own--prey", 6, "small-mouth");
  prey.size.body_depth_share = 0.25;  // 0.80 by gape, 0.55 by reach
  EXPECT_EQ(judged(hunter, prey), std::nullopt);
  hunter.life.active = "night";  // reach 0.38: 0.63
  EXPECT_EQ(judged(hunter, prey), std::nullopt);
  prey.size.adult_tl_cm = 5.5;  // 0.69
  EXPECT_EQ(judged(hunter, prey), Severity::strain);
  EXPECT_EQ(judged(hunter, prey, lenient), Severity::watch);
  EXPECT_NE(finding_of(beside(hunter, prey), "predation")->why.find("By night"), std::string::npos);
  prey.life.active = "night";
  EXPECT_EQ(judged(hunter, prey), Severity::watch) << "awake when it comes";
}

TEST(Predation, OfABiterKnowsNoSize) {
  const Species biter = fish("own--biter", 4, "biter");
  EXPECT_EQ(judged(biter, fish("own--large", 30, "grazer")), Severity::strain);
  EXPECT_EQ(judged(biter, fish("own--large", 30, "grazer"), lenient), Severity::watch);
  EXPECT_EQ(judged(biter, fish("own--large", 30, "grazer"), strict), Severity::harm);
}

TEST(Predation, GrazersPickersAndSmallMouthsLeaveGrownFishAlone) {
  for (const char* eater : {"grazer", "picker"})
    EXPECT_EQ(judged(fish("own--a", 30, eater), fish("own--b", 2, "grazer")), std::nullopt);
  EXPECT_EQ(judged(fish("own--a", 8, "small-mouth"), fish("own--b", 4, "small-mouth")), std::nullopt);
}

TEST(Predation, OfSpinesChokesTheLargeMouthedOnly) {
  const Species hunter = fish("own--hunter", 20, "hunter"), angel = fish("own--angel", 12, "opportunist");
  Species prey = prey_at(0.6, hunter, 0.2);
  EXPECT_EQ(judged(hunter, prey), std::nullopt);
  prey.size.spines = true;
  EXPECT_EQ(judged(hunter, prey), Severity::watch);
  EXPECT_NE(finding_of(beside(hunter, prey), "predation")->text.find("choke"), std::string::npos);
  Species slim = prey_at(0.59, hunter, 0.2);
  slim.size.spines = true;
  EXPECT_EQ(judged(hunter, slim), std::nullopt);
  Species for_angel = prey_at(0.9, angel, 0.12);
  for_angel.size.spines = true;
  EXPECT_EQ(judged(angel, for_angel), Severity::note) << "grown catfish live beside it";
  EXPECT_EQ(judged(angel, for_angel, strict), Severity::watch);
  for_angel = prey_at(1.0, angel, 0.12);
  for_angel.size.spines = true;
  EXPECT_EQ(judged(angel, for_angel), Severity::strain);
  EXPECT_EQ(judged(angel, for_angel, lenient), Severity::watch);
}

TEST(Predation, OfWhatIsBoughtSmallIsSaidWhileItIsToCome) {
  const Species angel = fish("own--angel", 12, "opportunist");
  Species prey = prey_at(0.6, angel, 0.12);
  prey.size.sold_cm = 1.5;
  const Assessment assessment = beside(angel, prey);
  const Finding* finding = finding_of(assessment, "predation");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->severity, Severity::watch);
  EXPECT_NE(finding->text.find("bought small"), std::string::npos) << finding->text;
  Plan there = a_plan().tank(198, 78, 60).fish(angel, 1).fish(prey, 1);
  there.stock[1].have = 1;
  EXPECT_FALSE(finding_of(assess(there, none), "predation"));
}

TEST(Predation, NamesBothWithTheirNumbersAndPartsThem) {
  const Species angel = fish("own--angel", 12, "opportunist");
  const Plan plan = a_plan().tank(198, 78, 60).fish(angel, 2).fish(prey_at(1.2, angel, 0.12), 10);
  const Assessment assessment = assess(plan, none);
  const Finding* finding = finding_of(assessment, "predation");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->species, (std::vector<std::string>{"own--angel", "own--prey"}));
  EXPECT_NE(finding->why.find("12 cm"), std::string::npos) << finding->why;
  EXPECT_NE(finding->why.find("1.8 cm"), std::string::npos) << finding->why;
  EXPECT_FALSE(finding_of(assess(mended(plan, none, "predation"), none), "predation"));
}

TEST(Predation, RatherLeavesOutWhatIsOnlyWishedFor) {
  const Species angel = fish("own--angel", 12, "opportunist");
  Plan plan = a_plan().tank(198, 78, 60).fish(angel, 2).fish(prey_at(1.2, angel, 0.12), 10);
  plan.stock[0].have = 2;
  EXPECT_EQ(finding_of(assess(plan, none), "predation")->remedy, "Leave out own--prey");
  plan.stock[0].have = 0;
  plan.stock[1].have = 10;
  EXPECT_EQ(finding_of(assess(plan, none), "predation")->remedy, "Leave out own--angel");
}

TEST(Predation, IsNoHarmWhereAKindWasGuessed) {
  const Species hunter = fish("own--hunter", 20, "hunter");
  Plan plan = a_plan().tank(198, 78, 60).fish(hunter, 1).fish(prey_at(2, hunter, 0.2), 10);
  EXPECT_EQ(severity_of(assess(plan, none), "predation"), Severity::harm);
  plan.assumed = {"/stock/1"};
  EXPECT_EQ(severity_of(assess(plan, none), "predation"), Severity::strain);
}

TEST(Predation, OfACardThatDoesNotSayHowItEatsIsNotJudged) {
  Species silent = fish("own--silent", 30, "");
  const Assessment assessment = beside(silent, fish("own--small", 2, "grazer"));
  EXPECT_FALSE(finding_of(assessment, "predation"));
  EXPECT_TRUE(std::any_of(assessment.findings.begin(), assessment.findings.end(),
                          [](const Finding& one) { return one.text == "Not known: what own--silent eats"; }));
}

TEST(Predation, OfTheCatalogueIsWhatKeepersSee) {
  const auto pair = [](const char* eater, const char* prey) {
    return severity_of(assess(a_plan().tank(198, 78, 60).kind(eater, 2).kind(prey, 12), the_catalog()), "predation");
  };
  EXPECT_EQ(pair("astronotus-ocellatus", "paracheirodon-axelrodi"), Severity::harm);
  EXPECT_EQ(pair("pterophyllum-scalare", "paracheirodon-innesi"), Severity::strain);
  EXPECT_EQ(pair("trichopodus-leerii", "trigonostigma-heteromorpha"), std::nullopt);
}

}  // namespace
}  // namespace shoalwright
