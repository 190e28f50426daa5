// SPDX-License-Identifier: MIT
// What one change moves: pH 0.5 by EU directive 2006/44/EC, the rest common practice, no source.
#include <gtest/gtest.h>

#include "support/mended.h"
#include "water/blend.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish() {
  Species species = sample_species("own--fish", Style::calm_mid, 4);
  species.life.group.least = 1;
  species.water.ph.tolerated = Range{5, 9};
  species.water.gh_dgh.tolerated = species.water.kh_dkh.tolerated = Range{0, 30};
  return species;
}

Measured reading(std::optional<double> ph, std::optional<double> gh, std::optional<double> kh) {
  Measured measured;
  measured.ph = ph;
  measured.gh_dgh = gh;
  measured.kh_dkh = kh;
  return measured;
}

std::vector<Finding> shocks(const Plan& plan) {
  std::vector<Finding> all;
  for (const Finding& finding : assess(plan, none).findings)
    if (finding.rule == "water-change-shock") all.push_back(finding);
  return all;
}

std::optional<Severity> of(const Plan& plan) {
  const std::vector<Finding> all = shocks(plan);
  return all.empty() ? std::nullopt : std::optional(all.front().severity);
}

TEST(WaterChangeShock, IsHardnessMovedByNearlyAThird) {
  // A tank that reads GH 20 while new water has 8: 50 % moves it by 6, 30 % of what it was.
  const auto gh = [](double fraction, double now) {
    return of(a_plan().change(fraction, 7).fish(fish(), 4).swimming().measured(reading({}, now, {})));
  };
  EXPECT_EQ(gh(0.5, 20), std::nullopt);
  EXPECT_EQ(gh(0.6, 20), Severity::watch);
  EXPECT_EQ(gh(0.2, 20), std::nullopt);
  EXPECT_EQ(gh(1, 7), std::nullopt) << "no kit would show it";
  EXPECT_EQ(gh(0.5, 4), Severity::watch) << "harder counts as softer does";
  EXPECT_EQ(of(a_plan().change(0.6, 7).fish(fish(), 4).swimming().measured(reading({}, {}, 12))), Severity::watch);
}

TEST(WaterChangeShock, IsTheSameInAllViews) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict})
    EXPECT_EQ(of(a_plan().strictness(view).change(0.6, 7).fish(fish(), 4).swimming().measured(reading({}, 20, {}))),
              Severity::watch);
}

TEST(WaterChangeShock, LooksAtWhatWasMeasuredOnlyWhereAnimalsSwim) {
  EXPECT_EQ(of(a_plan().change(0.6, 7).fish(fish(), 4).measured(reading({}, 20, {}))), std::nullopt);
}

TEST(WaterChangeShock, ReckonsPhByWhatMixes) {
  // KH 1.2 and pH 6 in the tank, KH 8 and pH 8 from the tap.
  const Plan plan = a_plan().tap(8, 8, 8).change(0.5, 7).fish(fish(), 4).swimming().measured(reading(6, 8, 1.2));
  const std::vector<Finding> all = shocks(plan);
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.front().severity, Severity::strain);
  const Conserved mix = mixed(0.5, conserved_at_ph({25, 8, 8.0}, 8.0), conserved_at_ph({25, 1.2, 8.0}, 6.0));
  char said_ph[64];
  std::snprintf(said_ph, sizeof said_ph, "One change takes pH 6 to %.1f", ph_closed(mix, 25));
  EXPECT_EQ(all.front().text, said_ph);
}

TEST(WaterChangeShock, IsQuietWhereARecipeMakesTheWater) {
  EXPECT_EQ(of(a_plan().tap(7.6, 13, 8).tap_temperature(10).aim_water(6.8, 7, 3.2).change(0.3, 7).fish(fish(), 4)), std::nullopt)
      << "its hardness is made, and it is warmed";
  EXPECT_EQ(of(a_plan().tap(7.6, 13, 8).tap_temperature(10).change(0.3, 7).fish(fish(), 4)), Severity::note)
      << "poured in as it comes";
}

TEST(WaterChangeShock, OfTemperatureAloneIsANoteToWarmTheBucket) {
  const std::vector<Finding> cold = shocks(a_plan().tap_temperature(10).change(1, 7).fish(fish(), 4));
  ASSERT_EQ(cold.size(), 1u);
  EXPECT_EQ(cold[0].severity, Severity::note);
  EXPECT_EQ(cold[0].remedy, "Warm the new water to 25 °C first");
  EXPECT_TRUE(cold[0].edits.empty()) << "the rhythm is right";
  EXPECT_EQ(of(a_plan().tap_temperature(19).change(0.3, 7).fish(fish(), 4)), std::nullopt);
  EXPECT_EQ(shocks(a_plan().tap_temperature(35).change(0.5, 7).fish(fish(), 4)).at(0).remedy,
            "Cool the new water to 25 °C first");
}

TEST(WaterChangeShock, IsMendedBySmallerChangesMoreOften) {
  for (const Plan& plan :
       {a_plan().change(0.8, 14).fish(fish(), 4).swimming().measured(reading({}, 25, {})).plan(),
        a_plan().tap(8, 8, 8).change(0.9, 14).fish(fish(), 4).swimming().measured(reading(6.4, 8, 3)).plan()}) {
    ASSERT_TRUE(of(plan));
    const Plan after = mended(plan, none, "water-change-shock");
    EXPECT_LT(after.upkeep->change_fraction, plan.upkeep->change_fraction);
    EXPECT_LT(after.upkeep->every_days, plan.upkeep->every_days);
    EXPECT_GE(after.upkeep->change_fraction / after.upkeep->every_days,
              plan.upkeep->change_fraction / plan.upkeep->every_days - 1e-9);
    EXPECT_EQ(of(after), std::nullopt);
  }
}

TEST(WaterChangeShock, IsNotJudgedWithoutChangesOrAnimals) {
  EXPECT_EQ(of(a_plan().tap_temperature(5).change(0, 7).fish(fish(), 4)), std::nullopt);
  EXPECT_EQ(of(a_plan().tap_temperature(5).change(1, 7)), std::nullopt);
  Plan unknown = a_plan().tap_temperature(5).fish(fish(), 4);
  unknown.upkeep.reset();
  EXPECT_EQ(of(unknown), std::nullopt);
}

}  // namespace
}  // namespace shoalwright
