// SPDX-License-Identifier: MIT
// Steps of the softening rules: common practice, no source.
#include <gtest/gtest.h>

#include "support/builders.h"

namespace shoalwright {
namespace {

Species living_in(const std::string& id, Need Species::WaterNeeds::*quantity, Range tolerated, Range ideal) {
  Species species = sample_species(id, Style::calm_mid, 4);
  (species.water.*quantity) = {.tolerated = tolerated, .ideal = ideal};
  return species;
}

const Catalog none;

std::optional<Severity> at_temperature(double temperature_c) {
  const Species fish = living_in("own--fish", &Species::WaterNeeds::temperature_c, {22, 28}, {24, 26});
  return severity_of(assess(a_plan().aim(temperature_c).fish(fish, 4), none), "water-temperature");
}

TEST(WaterTemperature, SaysNothingInsideTheWindow) {
  EXPECT_EQ(at_temperature(22), std::nullopt);
  EXPECT_EQ(at_temperature(28), std::nullopt);
}

TEST(WaterTemperature, GrowsGraverWithEachStepPastTheEdge) {
  EXPECT_EQ(at_temperature(28.5), Severity::note);
  EXPECT_EQ(at_temperature(29), Severity::watch);
  EXPECT_EQ(at_temperature(30.9), Severity::strain);
  EXPECT_EQ(at_temperature(31), Severity::harm);
  EXPECT_EQ(at_temperature(21.5), Severity::note);
  EXPECT_EQ(at_temperature(19), Severity::harm);
}

TEST(WaterPh, IsANoteForATenth) {
  const Species fish = living_in("own--fish", &Species::WaterNeeds::ph, {6, 7.5}, {6.5, 7});
  const auto at = [&](double ph) { return severity_of(assess(a_plan().tap(ph, 8, 4).fish(fish, 4), none), "water-ph"); };
  EXPECT_EQ(at(7.5), std::nullopt);
  EXPECT_EQ(at(7.6), Severity::note);
  EXPECT_EQ(at(7.8), Severity::note);
  EXPECT_EQ(at(8.0), Severity::watch);
  EXPECT_EQ(at(8.4), Severity::strain);
  EXPECT_EQ(at(8.5), Severity::harm);
}

TEST(WaterGh, WatchesThreeDegreesOrAQuarterOfTheEdge) {
  const auto at = [&](Range tolerated, double gh) {
    const Species fish = living_in("own--fish", &Species::WaterNeeds::gh_dgh, tolerated, tolerated);
    return severity_of(assess(a_plan().tap(7, gh, 4).fish(fish, 4), none), "water-gh");
  };
  EXPECT_EQ(at({2, 8}, 9), Severity::note);
  EXPECT_EQ(at({2, 8}, 11), Severity::watch);
  EXPECT_EQ(at({2, 8}, 12), Severity::strain);
  EXPECT_EQ(at({2, 8}, 14), Severity::harm);
  EXPECT_EQ(at({2, 20}, 25), Severity::watch);
}

TEST(WaterGh, IsHarmForHardWaterKindsInSoftWater) {
  Species molly = living_in("own--molly", &Species::WaterNeeds::gh_dgh, {8, 30}, {12, 25});
  molly.water.kh_dkh = {};
  EXPECT_EQ(severity_of(assess(a_plan().tap(7.5, 3.5, 4).fish(molly, 4), none), "water-gh"), Severity::harm);
  EXPECT_EQ(severity_of(assess(a_plan().tap(7.5, 4.5, 4).fish(molly, 4), none), "water-gh"), Severity::strain);
  Species tetra = living_in("own--tetra", &Species::WaterNeeds::gh_dgh, {6, 12}, {6, 12});
  EXPECT_EQ(severity_of(assess(a_plan().tap(7, 3.5, 4).fish(tetra, 4), none), "water-gh"), Severity::watch);
}

TEST(WaterKh, NeverPassesWatchButAtTheLowEdgeOfHardWaterKinds) {
  const Species tetra = living_in("own--tetra", &Species::WaterNeeds::kh_dkh, {2, 6}, {2, 5});
  EXPECT_EQ(severity_of(assess(a_plan().tap(7, 8, 25).fish(tetra, 4), none), "water-kh"), Severity::watch);
  EXPECT_EQ(severity_of(assess(a_plan().tap(7, 8, 0).fish(tetra, 4), none), "water-kh"), Severity::watch);
  Species snail = living_in("own--snail", &Species::WaterNeeds::kh_dkh, {4, 20}, {6, 15});
  snail.kind = "snail";
  EXPECT_EQ(severity_of(assess(a_plan().tap(7, 8, 2).fish(snail, 4), none), "water-kh"), Severity::strain);
  EXPECT_EQ(severity_of(assess(a_plan().tap(7, 8, 25).fish(snail, 4), none), "water-kh"), Severity::watch);
}

TEST(NoSharedWindow, NamesTheTwoThatDoNotMeetAndIsJudgedByTheGap) {
  const auto gap = [&](double degrees) {
    const Species cool = living_in("own--cool", &Species::WaterNeeds::temperature_c, {16, 22}, {18, 20});
    const Species mild = living_in("own--mild", &Species::WaterNeeds::temperature_c, {18, 26}, {20, 24});
    const Species warm = living_in("own--warm", &Species::WaterNeeds::temperature_c, {22 + degrees, 30}, {27, 29});
    return assess(a_plan().no_aim().fish(warm, 4).fish(mild, 4).fish(cool, 4), none);
  };
  const Assessment apart = gap(2);
  const Finding* finding = finding_of(apart, "water-temperature");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->species, (std::vector<std::string>{"own--cool", "own--warm"}));
  EXPECT_EQ(finding->severity, Severity::strain);
  EXPECT_EQ(finding->text, "No shared temperature");
  EXPECT_EQ(apart.water.temperature_c.tolerated, std::nullopt);
  EXPECT_EQ(severity_of(gap(0.5), "water-temperature"), Severity::note);
  EXPECT_EQ(severity_of(gap(1), "water-temperature"), Severity::watch);
  EXPECT_EQ(severity_of(gap(3), "water-temperature"), Severity::harm);
}

TEST(NoSharedWindow, DoesNotHideWaterThatIsWorseStill) {
  const Species cool = living_in("own--cool", &Species::WaterNeeds::temperature_c, {16, 22}, {18, 20});
  const Species warm = living_in("own--warm", &Species::WaterNeeds::temperature_c, {23, 30}, {27, 29});
  const Assessment boiled = assess(a_plan().aim(34).fish(warm, 4).fish(cool, 4), none);
  EXPECT_EQ(severity_of(boiled, "water-temperature"), Severity::harm);
}

TEST(IdealRangesThatDoNotMeet, AreANoteWhileTheToleratedOnesDo) {
  const Species cool = living_in("own--cool", &Species::WaterNeeds::temperature_c, {18, 26}, {20, 22});
  const Species warm = living_in("own--warm", &Species::WaterNeeds::temperature_c, {22, 30}, {25, 28});
  const Assessment both = assess(a_plan().aim(24).fish(cool, 4).fish(warm, 4), none);
  EXPECT_EQ(severity_of(both, "water-temperature"), Severity::note);
  EXPECT_TRUE(is_clean(both)) << said(both);
}

TEST(WaterPh, IsANoteWhereHardlyAnyOfItIsShared) {
  const Species acid = living_in("own--acid", &Species::WaterNeeds::ph, {5, 7}, {5.5, 6.9});
  const Species basic = living_in("own--basic", &Species::WaterNeeds::ph, {6.8, 8.5}, {6.8, 8});
  const Assessment both = assess(a_plan().tap(6.9, 8, 4).fish(acid, 4).fish(basic, 4), none);
  ASSERT_TRUE(finding_of(both, "water-ph"));
  EXPECT_EQ(finding_of(both, "water-ph")->severity, Severity::note);
  EXPECT_EQ(finding_of(both, "water-ph")->text, "Only 0.2 of pH shared");
  const Species edge = living_in("own--edge", &Species::WaterNeeds::ph, {7, 8.5}, {7, 8});
  const Assessment touching = assess(a_plan().tap(7, 8, 4).fish(acid, 4).fish(edge, 4), none);
  ASSERT_TRUE(finding_of(touching, "water-ph"));
  EXPECT_EQ(finding_of(touching, "water-ph")->text, "Only pH 7 is shared");
}

TEST(WaterPast, NamesTheWorstOffFirstAndTheEdgeOfEach) {
  const auto soft = [](const char* id, double high) { return living_in(id, &Species::WaterNeeds::gh_dgh, {1, high}, {1, high}); };
  const Assessment hard = assess(a_plan()
                                     .no_aim()
                                     .tap(7, 15, 4)
                                     .fish(soft("own--a", 14), 4)
                                     .fish(soft("own--b", 12), 4)
                                     .fish(soft("own--c", 13), 4)
                                     .fish(soft("own--d", 10), 4),
                                 none);
  const Finding* finding = finding_of(hard, "water-gh");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->text, "GH 5 °dH over for 4 kinds");
  EXPECT_EQ(finding->why, "The tap has GH 15; own--d lives up to 10 °dH, own--a up to 14 °dH and own--b up to 12 °dH.");
}

TEST(IdealRangesThatDoNotMeet, SayInWhatWaterAllCanLive) {
  const Species soft = living_in("own--soft", &Species::WaterNeeds::gh_dgh, {2, 12}, {2, 6});
  const Species firm = living_in("own--firm", &Species::WaterNeeds::gh_dgh, {5, 20}, {8, 16});
  const Assessment both = assess(a_plan().tap(7, 8, 4).fish(soft, 4).fish(firm, 4), none);
  ASSERT_TRUE(finding_of(both, "water-gh"));
  EXPECT_EQ(finding_of(both, "water-gh")->why,
            "Own--firm thrives from GH 8 up, own--soft up to GH 6; all of them live at GH 5 to 12.");
}

TEST(WaterEvidence, OfTwoCardsIsNoSurerThanTheLessSure) {
  const auto card = [](const char* id, Range range, Evidence tolerated, Evidence ideal) {
    Species species = living_in(id, &Species::WaterNeeds::temperature_c, range, {range.low + 1, range.high - 1});
    const auto entry = [](const char* path, Evidence evidence) {
      return EvidenceEntry{path, evidence, evidence == Evidence::published ? "somebody-1999" : "", ""};
    };
    species.evidence = {entry("water.temperature_c.tolerated", tolerated), entry("water.temperature_c.ideal", ideal)};
    return species;
  };
  const auto found = [&](Range range, Evidence tolerated, Evidence ideal) {
    const Catalog two{{card("cool", {16, 22}, Evidence::published, Evidence::published), card("warm", range, tolerated, ideal)}};
    const Assessment both = assess(a_plan().no_aim().kind("cool", 4).kind("warm", 4), two);
    const Finding* finding = finding_of(both, "water-temperature");
    return finding ? std::pair{finding->evidence, finding->source} : std::pair{Evidence::keeper, std::string("no finding")};
  };
  using Said = std::pair<Evidence, std::string>;
  constexpr Evidence published = Evidence::published, memory = Evidence::from_memory;
  EXPECT_EQ(found({24, 30}, published, memory), Said(published, "somebody-1999")) << "no shared window: tolerated counts";
  EXPECT_EQ(found({24, 30}, memory, published), Said(memory, ""));
  EXPECT_EQ(found({21, 30}, memory, published), Said(published, "somebody-1999")) << "not best for all: ideal counts";
  EXPECT_EQ(found({21, 30}, published, memory), Said(memory, ""));
}

TEST(WaterOnAGuess, IsNeverHarm) {
  const Species fish = living_in("own--fish", &Species::WaterNeeds::ph, {6, 7.5}, {6.5, 7});
  EXPECT_EQ(severity_of(assess(a_plan().tap(9, 8, 4).assumed({"/source/ph"}).fish(fish, 4), none), "water-ph"), Severity::strain);
}

TEST(WaterRemedy, OffersOtherFishBeforeOtherWaterAndAimsAtTheNearestEdge) {
  const Species fish = living_in("own--fish", &Species::WaterNeeds::gh_dgh, {2, 10}, {3, 8});
  const Assessment hard = assess(a_plan().no_aim().tap(7, 14, 4).fish(fish, 4), none);
  const Finding* finding = finding_of(hard, "water-gh");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->remedy.rfind("Choose fish for this tap", 0), 0u) << finding->remedy;
  ASSERT_EQ(finding->edits.size(), 1u);
  EXPECT_EQ(finding->edits[0].path, "/water");
  EXPECT_NE(finding->edits[0].value_json.find("\"gh_dgh\":10"), std::string::npos) << finding->edits[0].value_json;
}

TEST(WaterRemedy, LeavesPinnedWaterAlone) {
  const Species fish = living_in("own--fish", &Species::WaterNeeds::gh_dgh, {2, 10}, {3, 8});
  const Assessment hard = assess(a_plan().tap(7, 14, 4).fixed({"/water"}).fish(fish, 4), none);
  ASSERT_TRUE(finding_of(hard, "water-gh"));
  EXPECT_TRUE(finding_of(hard, "water-gh")->edits.empty());
}

}  // namespace
}  // namespace shoalwright
