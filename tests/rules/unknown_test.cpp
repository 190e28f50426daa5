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

TEST(UnknownInput, IsQuietWhereAllIsKnown) { EXPECT_EQ(not_known(a_plan().fish(fish(), 4)), std::set<std::string>{}); }

TEST(UnknownInput, NamesWhatKeepsAVerdictBack) {
  EXPECT_EQ(not_known(a_plan().tap({}, {}, 4).fish(fish(), 4)), std::set<std::string>{"Not known: pH and GH"});
  EXPECT_EQ(not_known(a_plan().tap_nitrate({}).fish(fish(), 4)), std::set<std::string>{"Not known: nitrate of the tap"});
  EXPECT_EQ(not_known(a_plan().planted({}).fish(fish(), 4)), std::set<std::string>{"Not known: planting"});
  Plan neither = a_plan().fish(fish(), 4);
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
  EXPECT_EQ(not_known(a_plan().fish(silent, 4)), std::set<std::string>{"No figure for KH: own--fish"});
  silent.water = {};
  EXPECT_EQ(not_known(a_plan().fish(silent, 4)), std::set<std::string>{"No water figures: own--fish"});
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
