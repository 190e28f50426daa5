// SPDX-License-Identifier: MIT
// water-unreachable and acid: pH follows from KH and CO2 (water/carbonate.h, against a reference program); what is allowed and
// how far it may be missed is common practice, no source.
#include <gtest/gtest.h>

#include "support/mended.h"
#include "water/carbonate.h"

namespace shoalwright {
namespace {

const Catalog none;

Species living_at(Range ph, Range kh, const std::string& id = "own--fish") {
  Species species = sample_species(id, Style::calm_mid, 4);
  species.life.group.least = 1;
  species.water.ph = {.tolerated = ph, .ideal = {}};
  species.water.kh_dkh = {.tolerated = kh, .ideal = {}};
  return species;
}

Plan aimed(double ph, double kh, Range ph_window = {5, 9}, Range kh_window = {0, 20}) {
  return a_plan().aim_water(ph, 8, kh).fish(living_at(ph_window, kh_window), 4);
}

std::optional<Severity> of(const Plan& plan, const char* rule) { return severity_of(assess(plan, none), rule); }

TEST(WaterUnreachable, IsWindowsThatNoAllowedCo2Joins) {
  // KH 10 with 20 mg/L of CO2 has pH 7.2, and all of this stock stops at 6.5.
  const Plan plan = a_plan().fish(living_at({5, 6.5}, {0, 20}, "own--soft"), 4).fish(living_at({5, 8}, {10, 20}, "own--hard"), 6);
  const Assessment apart = assess(plan, none);
  const Finding* finding = finding_of(apart, "water-unreachable");
  ASSERT_TRUE(finding);
  EXPECT_EQ(apart.water.reachable, false);
  EXPECT_EQ(finding->severity, Severity::strain);
  EXPECT_EQ(finding->species, (std::vector<std::string>{"own--hard", "own--soft"}));
  const Plan after = mended(plan, none, "water-unreachable");
  ASSERT_EQ(after.stock.size(), 1u);
  EXPECT_EQ(after.stock[0].species, "own--hard") << "fewer animals leave";
  EXPECT_FALSE(finding_of(assess(after, none), "water-unreachable"));
}

TEST(WaterUnreachable, GrowsGraverWithTheGapAndBothWays) {
  const double low = ph_with_co2({25, 10, 8.0}, 20);
  const auto under = [&](double by) { return of(a_plan().fish(living_at({5, low - by}, {10, 20}), 4), "water-unreachable"); };
  EXPECT_EQ(under(-0.1), std::nullopt);
  EXPECT_EQ(under(0.2), Severity::note);
  EXPECT_EQ(under(0.4), Severity::watch);
  EXPECT_EQ(under(1.4), Severity::strain) << "stained water may lie lower: no harm";
  EXPECT_EQ(of(a_plan().fish(living_at({8.9, 9.5}, {0, 1}), 4), "water-unreachable"), Severity::strain) << "too soft for that pH";
  Plan generous = a_plan().fish(living_at({5, low - 0.2}, {10, 20}), 4);
  generous.limits.co2_mg_l = 40;
  EXPECT_EQ(of(generous, "water-unreachable"), std::nullopt) << "the keeper's own ceiling";
}

TEST(WaterUnreachable, StopsAKindThatClosesTheWindows) {
  const Plan plan = a_plan().fish(living_at({5, 6.5}, {0, 20}, "own--soft"), 4).fish(living_at({5, 8}, {10, 20}, "own--hard"), 6);
  const Assessment apart = assess(plan, none);
  for (const GroupRoom& group : apart.room.groups) EXPECT_EQ(group.stopped_by, "water-unreachable");
}

TEST(WaterUnreachable, IsAnAimThatItsKhDoesNotGive) {
  const double high = ph_in_air({25, 2, 8.0}, co2_outdoors_atm), low = ph_with_co2({25, 2, 8.0}, 20);
  EXPECT_EQ(of(aimed(high + 0.2, 2), "water-unreachable"), std::nullopt) << "no kit tells";
  EXPECT_EQ(of(aimed(high + 0.4, 2), "water-unreachable"), Severity::watch);
  EXPECT_EQ(of(aimed(low - 0.2, 2), "water-unreachable"), std::nullopt);
  EXPECT_EQ(of(aimed(low - 0.4, 2), "water-unreachable"), Severity::watch);
  EXPECT_EQ(of(aimed(5, 0.5), "water-unreachable"), std::nullopt) << "next to no KH: not to be told";
  for (const Strictness view : {Strictness::lenient, Strictness::strict}) {
    Plan plan = aimed(low - 0.4, 2);
    plan.strictness = view;
    EXPECT_EQ(of(plan, "water-unreachable"), Severity::watch);
  }
}

TEST(WaterUnreachable, AimsAtThePhThatTheKhGivesOrElseAtAnotherKh) {
  const Plan too_high = aimed(8.8, 2);
  const Plan other_ph = mended(too_high, none, "water-unreachable");
  EXPECT_EQ(*other_ph.water->kh_dkh, 2);
  EXPECT_NEAR(*other_ph.water->ph, ph_with_co2({25, 2, 8.0}, 3), 0.06) << "what a usual tank has";
  EXPECT_FALSE(finding_of(assess(other_ph, none), "water-unreachable"));

  const Plan needs_more = aimed(8.6, 2, {8.5, 9}, {0, 20});
  const Plan other_kh = mended(needs_more, none, "water-unreachable");
  EXPECT_EQ(*other_kh.water->ph, 8.6);
  EXPECT_GT(*other_kh.water->kh_dkh, 2);
  EXPECT_FALSE(finding_of(assess(other_kh, none), "water-unreachable"));
}

TEST(WaterUnreachable, SaysNothingOfTheTapsOwnPh) {
  EXPECT_EQ(of(a_plan().tap(6, 8, 8).fish(living_at({5, 9}, {0, 20}), 4), "water-unreachable"), std::nullopt);
  EXPECT_EQ(of(a_plan().tap(6, 8, 8).fish(living_at({5, 9}, {0, 20}), 4), "acid"), std::nullopt);
}

TEST(Acid, IsALowPhAtMuchKhAndSpeaksAlone) {
  const double low = ph_with_co2({25, 8, 8.0}, 20);
  EXPECT_EQ(of(aimed(low - 0.2, 8), "acid"), std::nullopt);
  EXPECT_EQ(of(aimed(low - 0.4, 8), "acid"), Severity::watch);
  EXPECT_EQ(of(aimed(low - 1, 8), "acid"), Severity::strain);
  EXPECT_EQ(of(aimed(low - 1, 8), "water-unreachable"), std::nullopt) << "one thing is said once";
  EXPECT_EQ(of(aimed(5.5, 3.9), "acid"), std::nullopt) << "little KH: mixing is near at hand";
  EXPECT_EQ(of(aimed(5.5, 3.9), "water-unreachable"), Severity::watch);
}

TEST(Acid, IsMendedByLessKhNeverByAcid) {
  const Plan plan = aimed(6.5, 8);
  const Assessment acid = assess(plan, none);
  ASSERT_TRUE(finding_of(acid, "acid"));
  EXPECT_NE(finding_of(acid, "acid")->remedy.find("RO water"), std::string::npos);
  const Plan softer = mended(plan, none, "acid");
  EXPECT_EQ(*softer.water->ph, 6.5);
  EXPECT_LE(ph_with_co2({25, *softer.water->kh_dkh, 8.0}, 20), 6.5);
  const Assessment after = assess(softer, none);
  EXPECT_FALSE(finding_of(after, "acid") || finding_of(after, "water-unreachable"));
}

TEST(Acid, HasNoEditWhereTheStockWantsTheKh) {
  const Assessment acid = assess(aimed(6.5, 8, {6, 9}, {6, 20}), none);
  ASSERT_TRUE(finding_of(acid, "acid"));
  EXPECT_TRUE(finding_of(acid, "acid")->edits.empty());
}

}  // namespace
}  // namespace shoalwright
