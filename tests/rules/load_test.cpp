// SPDX-License-Identifier: MIT
// Bands of the load: common practice, no source. Nitrate: 50 mg/L above the tap is the limit of a trade association (from
// memory); harm to sensitive animals from 44 mg/L on: Camargo, Alonso & Salamanca 2005, Chemosphere 58: 1255-1267.
#include <gtest/gtest.h>

#include "share/patch.h"
#include "stocking/load.h"
#include "support/builders.h"

namespace shoalwright {
namespace {

const Catalog none;

Species eater() {
  Species species = sample_species("own--fish", Style::calm_mid, 8);
  species.life.group.least = 1;
  return species;
}

double index_of(const Assessment& assessment) { return load_index(*nitrate_rise_mg_l_d(assessment.load, assessment.volume)); }

TEST(Load, FollowsTheBandsOfTheWeeklyChangeItAsksFor) {
  int last = -1;
  std::optional<Severity> seen[4];
  for (int count = 1; count < 120; ++count) {
    const Assessment tank = assess(a_plan().fish(eater(), count), none);
    const double index = index_of(tank);
    const int band = index <= 0.3 ? 0 : index <= 0.5 ? 1 : index <= 1 ? 2 : 3;
    const std::optional<Severity> wanted[] = {std::nullopt, Severity::watch, Severity::strain, Severity::harm};
    EXPECT_EQ(severity_of(tank, "load"), wanted[band]) << count << " fish, index " << index;
    EXPECT_GE(band, last);
    seen[last = band] = severity_of(tank, "load");
  }
  EXPECT_EQ(last, 3) << "all four bands were met";
  EXPECT_EQ(seen[1], Severity::watch);
}

TEST(Load, DependsNeitherOnTheChangesNorOnTheTap) {
  const Assessment one = assess(a_plan().change(0.1, 14).tap_nitrate(45).fish(eater(), 30), none);
  const Assessment other = assess(a_plan().change(0.9, 1).tap_nitrate(0).fish(eater(), 30), none);
  ASSERT_TRUE(finding_of(one, "load"));
  EXPECT_EQ(*finding_of(one, "load"), *finding_of(other, "load"));
}

TEST(Load, IsMendedByFoodFirstWhereThatIsEnough) {
  const Assessment fat = assess(a_plan().feed(Ration::heavy).fish(eater(), 12), none);
  const Finding* finding = finding_of(fat, "load");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->remedy.rfind("Feed ", 0), 0u) << finding->remedy;
  EXPECT_EQ(finding->edits[0].path, "/feeding/ration");
}

TEST(Load, SaysTanksOfWaterWhereOneIsNotEnough) {
  const Assessment far_over = assess(a_plan().tank(40, 25, 25).fish(eater(), 60), none);
  ASSERT_TRUE(finding_of(far_over, "load"));
  EXPECT_NE(finding_of(far_over, "load")->text.find(" tanks of water weekly"), std::string::npos)
      << finding_of(far_over, "load")->text;
}

/// Hardly any load, so that nitrate stands where the tap has it.
Assessment with_tap_nitrate(double nitrate_mg_l, Strictness view = Strictness::usual, bool shrimp = false) {
  Species tiny = sample_species("own--fish", Style::calm_mid, 1);
  if (shrimp) tiny.kind = "shrimp";
  return assess(a_plan().tank(200, 60, 60).change(0.5, 7).strictness(view).tap_nitrate(nitrate_mg_l).fish(tiny, 1), none);
}

TEST(Nitrate, GrowsGraverWithItsPeak) {
  const auto at = [](double tap, Strictness view = Strictness::usual, bool shrimp = false) {
    return severity_of(with_tap_nitrate(tap, view, shrimp), "nitrate");
  };
  EXPECT_EQ(at(39), std::nullopt);
  EXPECT_EQ(at(42), Severity::note) << "inside what a kit reads wrong";
  EXPECT_EQ(at(48), Severity::watch);
  EXPECT_EQ(at(52), Severity::strain);
  EXPECT_EQ(at(101), Severity::harm);
  EXPECT_EQ(at(48, Strictness::lenient), std::nullopt);
  EXPECT_EQ(at(30, Strictness::strict), Severity::watch);
  EXPECT_EQ(at(48, Strictness::usual, true), Severity::strain) << "shrimps bear less";
}

TEST(Nitrate, NamesTheTapWhereNoChangeCanMend) {
  const Assessment tap = with_tap_nitrate(60);
  const Finding* finding = finding_of(tap, "nitrate");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->text, "Tap nitrate is at 60 mg/L");
  EXPECT_TRUE(finding->edits.empty());
  EXPECT_FALSE(tap.load.change_needed_fraction);
}

TEST(Nitrate, AsksForALargerChangeBeforeFewerFish) {
  const Assessment small = assess(a_plan().change(0.1, 14).fish(eater(), 8), none);
  const Finding* finding = finding_of(small, "nitrate");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->remedy.rfind("Change ", 0), 0u) << finding->remedy;
  EXPECT_NE(finding->why.find("The change is too small."), std::string::npos);
}

TEST(Nitrate, WithoutChangesIsJudgedByWhatAYearComesTo) {
  const Assessment still = assess(a_plan().change(0, 7).fish(eater(), 4), none);
  EXPECT_FALSE(still.load.nitrate_peak_mg_l) << "it never settles";
  const Finding* finding = finding_of(still, "nitrate");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->severity, Severity::harm);
  EXPECT_EQ(finding->why.rfind("No water is changed", 0), 0u) << finding->why;
  EXPECT_EQ(finding->remedy.rfind("Change ", 0), 0u) << finding->remedy;
  const Result<Plan> changed = apply_patch(a_plan().change(0, 7).fish(eater(), 4), finding->edits);
  ASSERT_TRUE(changed);
  EXPECT_FALSE(finding_of(assess(*changed, none), "nitrate"));

  Species speck = sample_species("own--speck", Style::invertebrate, 1);
  EXPECT_FALSE(finding_of(assess(a_plan().tank(200, 60, 60).change(0, 7).fish(speck, 1), none), "nitrate"))
      << "nothing cries over a speck in 700 L";
  EXPECT_FALSE(finding_of(assess(a_plan().change(0, 7), none), "nitrate")) << "nobody is fed";
  EXPECT_EQ(severity_of(assess(a_plan().change(0, 7).assumed({"/upkeep"}).fish(eater(), 4), none), "nitrate"), Severity::strain);
}

TEST(Nitrate, NamesItsCauseWhereTheUpkeepIsPinnedToo) {
  const auto pinned = [](double fraction, int count) {
    return assess(a_plan().change(fraction, 14).fixed({"/upkeep"}).fish(eater(), count), none);
  };
  const Assessment few = pinned(0.1, 8), many = pinned(0.5, 40), still = pinned(0, 8);
  for (const Assessment* tank : {&few, &many, &still}) ASSERT_TRUE(finding_of(*tank, "nitrate"));
  EXPECT_NE(finding_of(few, "nitrate")->why.find("The change is too small."), std::string::npos);
  EXPECT_NE(finding_of(many, "nitrate")->why.find("The stock makes more"), std::string::npos);
  EXPECT_EQ(finding_of(still, "nitrate")->why.find("The stock makes more"), std::string::npos);
  for (const Assessment* tank : {&few, &many, &still})
    for (const PatchStep& step : finding_of(*tank, "nitrate")->edits) EXPECT_EQ(step.path.rfind("/stock", 0), 0u) << step.path;
}

TEST(Nitrate, OfAGuessedTapIsNeverHarm) {
  const Assessment guessed = assess(a_plan().tap_nitrate(120).assumed({"/source/nitrate_mg_l"}).fish(eater(), 1), none);
  EXPECT_EQ(severity_of(guessed, "nitrate"), Severity::strain);
}

TEST(Nitrate, ObeysTheKeepersOwnLimit) {
  Plan plan = a_plan().tap_nitrate(30).fish(eater(), 2);
  plan.limits.nitrate_mg_l = 20;
  EXPECT_TRUE(finding_of(assess(plan, none), "nitrate"));
  plan.limits.nitrate_mg_l = 60;
  EXPECT_FALSE(finding_of(assess(plan, none), "nitrate"));
}

}  // namespace
}  // namespace shoalwright
