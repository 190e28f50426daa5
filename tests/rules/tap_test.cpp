// SPDX-License-Identifier: MIT
// tap-disinfectant and softened-water: common practice, no source; that residuals of chlorine kill fish is a public authority's
// word (US EPA, as quoted on its own page).
#include <gtest/gtest.h>

#include "plan/more_keys.h"
#include "support/builders.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish() {
  Species species = sample_species("own--fish", Style::calm_mid, 4);
  species.life.group.least = 1;
  return species;
}

TEST(TapDisinfectant, IsANoteForEveryTapButOneWithout) {
  for (const Disinfectant one : {Disinfectant::chlorine, Disinfectant::chloramine, Disinfectant::unknown}) {
    const Assessment tank = assess(a_plan().disinfectant(one).fish(fish(), 4), none);
    ASSERT_EQ(severity_of(tank, "tap-disinfectant"), Severity::note);
    EXPECT_NE(finding_of(tank, "tap-disinfectant")->remedy.find("every litre"), std::string::npos);
    EXPECT_TRUE(finding_of(tank, "tap-disinfectant")->edits.empty()) << "what the tap holds is not for the plan to choose";
  }
  EXPECT_FALSE(finding_of(assess(a_plan().disinfectant(Disinfectant::none).fish(fish(), 4), none), "tap-disinfectant"));
  EXPECT_FALSE(finding_of(assess(a_plan().disinfectant(Disinfectant::chlorine), none), "tap-disinfectant"))
      << "nobody lives there";
}

TEST(TapDisinfectant, NeverOffersStandingAsARemedy) {
  const Assessment tank = assess(a_plan().disinfectant(Disinfectant::unknown).fish(fish(), 4), none);
  EXPECT_EQ(finding_of(tank, "tap-disinfectant")->remedy.find("tand"), std::string::npos);
  EXPECT_NE(finding_of(tank, "tap-disinfectant")->why.find("counts as chloramine"), std::string::npos);
}

TEST(SoftenedWater, IsHardlyAnyGhBesideMuchKh) {
  const auto at = [](double gh, double kh) {
    return severity_of(assess(a_plan().tap(7.5, gh, kh).fish(fish(), 4), none), "softened-water");
  };
  EXPECT_EQ(at(1, 8), Severity::watch);
  EXPECT_EQ(at(2, 5), Severity::watch);
  EXPECT_EQ(at(2.1, 5), std::nullopt);
  EXPECT_EQ(at(2, 4.9), std::nullopt);
  EXPECT_EQ(at(1, 1), std::nullopt) << "soft water is soft in both";
  EXPECT_EQ(at(12, 8), std::nullopt);
}

TEST(SoftenedWater, NeedsNoStockAndBothFigures) {
  EXPECT_EQ(severity_of(assess(a_plan().tap(7.5, 1, 8), none), "softened-water"), Severity::watch);
  EXPECT_FALSE(finding_of(assess(a_plan().tap(7.5, {}, 8), none), "softened-water"));
  EXPECT_FALSE(finding_of(assess(a_plan().tap(7.5, 1, {}), none), "softened-water"));
}

TEST(SoftenedWater, IsTakenBeforeTheSoftener) {
  const Assessment tap = assess(a_plan().tap(7.5, 1, 8).fish(fish(), 4), none);
  EXPECT_EQ(finding_of(tap, "softened-water")->remedy, "Take the water from before the softener");
}

TEST(PrivateWater, IsANoteWhereThePlanSaysSo) {
  Plan plan = a_plan().tap(7.5, 8, 8).fish(fish(), 4);
  EXPECT_FALSE(finding_of(assess(plan, none), "private-water"));
  set_private(plan.source, true);
  const Assessment tank = assess(plan, none);
  ASSERT_EQ(severity_of(tank, "private-water"), Severity::note);
  EXPECT_NE(finding_of(tank, "private-water")->remedy.find("nitrate and metals"), std::string::npos);
  EXPECT_TRUE(finding_of(tank, "private-water")->edits.empty());
}

}  // namespace
}  // namespace shoalwright
