// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <set>

#include "support/builders.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish() {
  Species species = sample_species("own--fish", Style::calm_mid, 4);
  species.life.group.least = 1;
  return species;
}

std::set<std::string> not_known(const Plan& plan) {
  std::set<std::string> texts;
  for (const Finding& finding : assess(plan, none).findings)
    if (finding.rule == "unknown-input") texts.insert(finding.text);
  return texts;
}

/// The ordinary tank with a surface that is known.
PlanBuilder known() { return a_plan().surface(SurfaceMotion::gentle); }

TEST(UnknownInput, IsQuietWhereAllIsKnown) { EXPECT_EQ(not_known(known().fish(fish(), 4)), std::set<std::string>{}); }

TEST(UnknownInput, NamesWhatKeepsAVerdictBack) {
  EXPECT_EQ(not_known(known().tap({}, {}, 4).fish(fish(), 4)), std::set<std::string>{"Not known: pH and GH"});
  EXPECT_EQ(not_known(known().tap_nitrate({}).fish(fish(), 4)), std::set<std::string>{"Not known: nitrate of the tap"});
  EXPECT_EQ(not_known(known().planted({}).fish(fish(), 4)), std::set<std::string>{"Not known: planting"});
  Plan neither = known().fish(fish(), 4);
  neither.upkeep.reset();
  neither.feeding.reset();
  EXPECT_EQ(not_known(neither), std::set<std::string>{"Not known: water changes and feeding"});
}

TEST(UnknownInput, IsNeverFine) {
  const Assessment unknown = assess(a_plan().tap({}, {}, {}).tap_nitrate({}).fish(fish(), 4), none);
  EXPECT_FALSE(finding_of(unknown, "water-ph") || finding_of(unknown, "water-gh") || finding_of(unknown, "nitrate"));
  EXPECT_FALSE(unknown.water.ph.now || unknown.water.ph.margin || unknown.load.nitrate_peak_mg_l);
  for (const Tightest& margin : unknown.tightest)
    EXPECT_TRUE(margin.margin != "ph" && margin.margin != "gh_dgh" && margin.margin != "kh_dkh" &&
                margin.margin != "nitrate_mg_l");
  for (const Finding& finding : unknown.findings)
    if (finding.rule == "unknown-input") {
      EXPECT_EQ(finding.severity, Severity::note);
    }
}

TEST(UnknownInput, NamesTheKindWhoseCardSaysNothing) {
  Species silent = fish();
  silent.water.kh_dkh = {};
  EXPECT_EQ(not_known(known().fish(silent, 4)), std::set<std::string>{"No figure for KH: own--fish"});
  silent.water = {};
  EXPECT_EQ(not_known(known().fish(silent, 4)), std::set<std::string>{"No water figures: own--fish"});
}

TEST(UnknownInput, NamesTheGearOnceAndJudgesNoOxygenWithoutIt) {
  EXPECT_EQ(not_known(a_plan().fish(fish(), 4)), std::set<std::string>{"Not known: filter and surface"});
  EXPECT_EQ(not_known(a_plan().flow(std::nullopt).fish(fish(), 4)), std::set<std::string>{"Not known: flow and surface"});
  EXPECT_EQ(not_known(a_plan().flow(300).fish(fish(), 4)), std::set<std::string>{}) << "the flow tells enough";
  EXPECT_EQ(not_known(a_plan().no_filter().fish(fish(), 4)), std::set<std::string>{}) << "still";
  EXPECT_FALSE(finding_of(assess(a_plan().fish(fish(), 90), none), "oxygen"));
}

// A plan of which hardly anything is known hears what is not known, and no verdict.
TEST(UnknownInput, OfANearlyEmptyPlanIsNotShouted) {
  Plan bare;
  bare.tank = a_plan().plan().tank;
  bare.tank.lid.reset();
  Group group;
  group.species = "own--fish";
  group.count = 4;
  bare.stock = {group};
  bare.own_species = {fish()};
  for (const Finding& finding : assess(bare, none).findings) EXPECT_EQ(finding.severity, Severity::note) << finding.rule;
}

TEST(UnknownInput, AsksNothingOfAnEmptyTank) {
  EXPECT_EQ(not_known(a_plan().tap({}, {}, {}).tap_nitrate({}).lid({}).planted({})), std::set<std::string>{});
}

TEST(UnknownSpecies, KeepsItsTextAndWithholdsTheSums) {
  const Assessment strange = assess(a_plan().fish(fish(), 4).kind("Brown thing from bag 3", 2), none);
  const Finding* finding = finding_of(strange, "unknown-species");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->species, std::vector<std::string>{"Brown thing from bag 3"});
  EXPECT_FALSE(strange.room.layers[1].crowding);
  EXPECT_FALSE(strange.load.feed_g_d);
  EXPECT_FALSE(finding_of(assess(a_plan().fish(fish(), 4), none), "unknown-species"));
}

TEST(Empty, IsSaidOfATankWithoutAnimalsOnly) {
  EXPECT_EQ(severity_of(assess(a_plan(), none), "empty"), Severity::note);
  EXPECT_EQ(severity_of(assess(a_plan().fish(fish(), 0), none), "empty"), Severity::note)
      << "a line kept for later holds no animals";
  EXPECT_FALSE(finding_of(assess(a_plan().fish(fish(), 1), none), "empty"));
}

}  // namespace
}  // namespace shoalwright
