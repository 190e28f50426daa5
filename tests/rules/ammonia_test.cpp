// SPDX-License-Identifier: MIT
// Free ammonia: 0.02 mg/L is a trade association's limit (2008, from memory) and 0.019 that of CCME; gills are harmed from 0.05
// on. Nitrite: 0.2 is that association's. The other steps are common practice, no source.
#include <gtest/gtest.h>

#include "plan/more_keys.h"
#include "support/builders.h"
#include "units/convert.h"
#include "water/ammonia.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish() {
  Species species = sample_species("own--fish", Style::calm_mid, 4);
  species.life.group.least = 1;
  return species;
}

Measured with_ammonia(double tan, std::optional<double> ph = 7.5, std::optional<double> temperature_c = 25) {
  Measured measured;
  measured.ammonia_mg_l = tan;
  measured.ph = ph;
  measured.temperature_c = temperature_c;
  return measured;
}

Measured with_nitrite(double nitrite) {
  Measured measured;
  measured.nitrite_mg_l = nitrite;
  return measured;
}

Assessment swimming(const Measured& measured) { return assess(a_plan().fish(fish(), 4).swimming().measured(measured), none); }

double tan_for(double nh3, double ph = 7.5) { return tan_for_nh3_mg_l(nh3, 25, ph); }

TEST(Ammonia, FollowsTheTiersOfFreeAmmonia) {
  const auto at = [](double nh3, double ph) { return severity_of(swimming(with_ammonia(tan_for(nh3, ph), ph)), "ammonia"); };
  for (const double ph : {7.5, 8.2}) {
    EXPECT_EQ(at(0.004, ph), std::nullopt) << ph;
    EXPECT_EQ(at(0.01, ph), Severity::watch) << ph;
    EXPECT_EQ(at(0.03, ph), Severity::strain) << ph;
    EXPECT_EQ(at(0.06, ph), Severity::harm) << ph;
  }
}

TEST(Ammonia, IsTheSameInAllViews) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict})
    EXPECT_EQ(
        severity_of(assess(a_plan().strictness(view).fish(fish(), 4).swimming().measured(with_ammonia(tan_for(0.03))), none),
                    "ammonia"),
        Severity::strain);
}

TEST(Ammonia, OverAQuarterMilligramIsAWatchWhateverThePh) {
  EXPECT_EQ(severity_of(swimming(with_ammonia(0.3, 6.2)), "ammonia"), Severity::watch);
  EXPECT_EQ(severity_of(swimming(with_ammonia(0.25, 6.2)), "ammonia"), std::nullopt);
  EXPECT_EQ(
      severity_of(assess(a_plan().tap({}, 8, 4).fish(fish(), 4).swimming().measured(with_ammonia(0.3, {})), none), "ammonia"),
      Severity::watch)
      << "no pH: what a kit reads is still too much";
}

TEST(Ammonia, IsAWatchAtMostWhileNobodySwims) {
  EXPECT_EQ(severity_of(assess(a_plan().fish(fish(), 4).measured(with_ammonia(3, 8.2)), none), "ammonia"), Severity::watch);
  EXPECT_EQ(severity_of(assess(a_plan().fish(fish(), 4).measured(with_nitrite(5)), none), "ammonia"), Severity::watch);
  EXPECT_FALSE(finding_of(assess(a_plan().measured(with_ammonia(3, 8.2)), none), "ammonia"))
      << "a filter is run in without stock";
}

TEST(Ammonia, OnAGuessedPhIsNoHarm) {
  const Assessment guessed =
      assess(a_plan().tap(8.4, 8, 4).fish(fish(), 4).swimming().measured(with_ammonia(1, {})).assumed({"/source"}), none);
  EXPECT_EQ(severity_of(guessed, "ammonia"), Severity::strain);
}

TEST(Ammonia, NamesTheLitresToChangeTodayAndNeverMoreThanHalf) {
  const Assessment grave = swimming(with_ammonia(2, 8));
  const Finding* finding = finding_of(grave, "ammonia");
  ASSERT_TRUE(finding);
  EXPECT_TRUE(finding->edits.empty()) << "no edit of a plan changes water today";
  EXPECT_EQ(finding->remedy, "Change 53 L today, then test again") << "half of 105 L";
  const Assessment mild = swimming(with_ammonia(0.26, 6.5));
  EXPECT_EQ(finding_of(mild, "ammonia")->remedy, "Change 5 L today, then test again");
}

TEST(Nitrite, FollowsItsOwnSteps) {
  const auto at = [](double nitrite) { return severity_of(swimming(with_nitrite(nitrite)), "ammonia"); };
  EXPECT_EQ(at(0.1), std::nullopt);
  EXPECT_EQ(at(0.15), Severity::watch);
  EXPECT_EQ(at(0.2), Severity::watch);
  EXPECT_EQ(at(0.3), Severity::strain);
  EXPECT_EQ(at(1), Severity::strain);
  EXPECT_EQ(at(1.1), Severity::harm);
  const Assessment both = [] {
    Measured measured = with_ammonia(0.3, 6.5);
    measured.nitrite_mg_l = 0.5;
    return swimming(measured);
  }();
  int said = 0;
  for (const Finding& one : both.findings) said += one.rule == "ammonia";
  EXPECT_EQ(said, 2) << "each is said";
}

TEST(Ammonia, IsNothingWithoutATest) {
  EXPECT_FALSE(finding_of(assess(a_plan().fish(fish(), 4).swimming(), none), "ammonia"));
  EXPECT_FALSE(finding_of(swimming(Measured{}), "ammonia"));
}

// The nitrite scale halved where chloride is under 10 mg/L, as first help has it.
TEST(Nitrite, IsWorseWhereThereIsLittleChloride) {
  const auto at = [](double nitrite, std::optional<double> chloride) {
    Measured measured = with_nitrite(nitrite);
    set_chloride_mg_l(measured, chloride);
    return severity_of(swimming(measured), "ammonia");
  };
  EXPECT_EQ(at(0.15, std::nullopt), Severity::watch);
  EXPECT_EQ(at(0.15, 40), Severity::watch);
  EXPECT_EQ(at(0.15, 10), Severity::watch) << "from 10 on it is enough";
  EXPECT_EQ(at(0.15, 5), Severity::strain);
  EXPECT_EQ(at(0.07, 5), Severity::watch);
  EXPECT_EQ(at(0.07, 40), std::nullopt);
  EXPECT_EQ(at(0.6, 5), Severity::harm);
  EXPECT_EQ(at(0.6, 40), Severity::strain);
  Measured little = with_nitrite(0.15);
  set_chloride_mg_l(little, 5);
  EXPECT_NE(finding_of(swimming(little), "ammonia")->why.find("as little chloride as here, 5 mg/L"), std::string::npos);
}

}  // namespace
}  // namespace shoalwright
