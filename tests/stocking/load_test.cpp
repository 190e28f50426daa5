// SPDX-License-Identifier: MIT
#include "stocking/load.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stocking/body.h"
#include "stocking/limits.h"
#include "stocking/ration.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

Load load(const Plan& plan) {
  const std::vector<Kept> stock = resolve_stock(plan, {});
  std::vector<const Species*> species;
  for (const Kept& kept : stock) species.push_back(kept.species);
  return load_of(plan, stock, volume_of(plan), windows_of(plan, species));
}

Plan stocked() {
  Plan plan = box_plan(75, 30, 33, 30);
  add(plan, sample_species("a", Style::calm_mid, 4.5), 12);
  add(plan, sample_species("b", Style::bottom_shoal, 6), 6);
  return plan;
}

// 12 fish of 4.5 cm by the fusiform prior weigh 1.0858 g each and eat 2 M^-0.25 % a day at 25 degrees C, food of 45 % protein.
TEST(Load, FollowsMassRationAndProtein) {
  Plan plan = box_plan(75, 30, 33, 30);
  add(plan, sample_species("a", Style::calm_mid, 4.5), 12);
  const Load l = load(plan);
  const double feed = 12 * 2 * 0.01 * std::pow(1.08584, 0.75);
  EXPECT_NEAR(*l.feed_g_d, feed, 1e-4);
  EXPECT_NEAR(*l.tan_mg_d, feed * 450 * 0.092, 0.01);
  const double rise = *l.tan_mg_d / 67.5 * 4.4266;
  EXPECT_NEAR(*nitrate_rise_mg_l_d(l, volume_of(plan)), rise, 1e-4);
  EXPECT_NEAR(*l.nitrate_peak_mg_l, 10 + 7 * rise / 0.3, 1e-3);
  EXPECT_NEAR(*l.nitrate_trough_mg_l, 10 + 7 * rise * 0.7 / 0.3, 1e-3);
  EXPECT_NEAR(*l.change_needed_fraction, 7 * rise / 30, 1e-4);
}

TEST(Load, EveryFieldMovesWhenItsInputDoes) {
  const Plan plan = stocked();
  const Load before = load(plan);
  Plan more = plan, bigger = plan, changed = plan, tap = plan, strict = plan, rare = plan;
  ++more.stock[0].count;
  bigger.tank.length_cm += 20;
  changed.upkeep->change_fraction = 0.4;
  tap.source.nitrate_mg_l = 20;
  strict.strictness = Strictness::strict;
  rare.upkeep->every_days = 14;
  EXPECT_GT(*load(more).feed_g_d, *before.feed_g_d);
  EXPECT_GT(*load(more).tan_mg_d, *before.tan_mg_d);
  EXPECT_GT(*load(more).nitrate_peak_mg_l, *before.nitrate_peak_mg_l);
  EXPECT_EQ(load(bigger).feed_g_d, before.feed_g_d);
  EXPECT_LT(*load(bigger).nitrate_peak_mg_l, *before.nitrate_peak_mg_l);
  EXPECT_LT(*load(changed).nitrate_peak_mg_l, *before.nitrate_peak_mg_l);
  EXPECT_LT(*load(changed).nitrate_trough_mg_l, *before.nitrate_trough_mg_l);
  EXPECT_EQ(load(changed).change_needed_fraction, before.change_needed_fraction);
  EXPECT_NEAR(*load(tap).nitrate_peak_mg_l, *before.nitrate_peak_mg_l + 10, 1e-9);
  EXPECT_GT(*load(tap).change_needed_fraction, *before.change_needed_fraction);
  EXPECT_GT(*load(strict).change_needed_fraction, *before.change_needed_fraction);
  EXPECT_GT(*load(rare).change_needed_fraction, *before.change_needed_fraction);
}

TEST(Load, TheKeepersOwnLimitWins) {
  Plan plan = stocked();
  EXPECT_EQ(nitrate_limit_mg_l(plan), 40);
  plan.strictness = Strictness::lenient;
  EXPECT_EQ(nitrate_limit_mg_l(plan), 50);
  plan.strictness = Strictness::strict;
  EXPECT_EQ(nitrate_limit_mg_l(plan), 25);
  plan.limits.nitrate_mg_l = 33;
  EXPECT_EQ(nitrate_limit_mg_l(plan), 33);
}

TEST(Load, HeavierFeedingRaisesItInStep) {
  Plan plan = stocked();
  const double before = *load(plan).tan_mg_d;
  plan.feeding->ration = Ration::heavy;
  EXPECT_NEAR(*load(plan).tan_mg_d, 2 * before, 1e-9);
  plan.feeding->ration = Ration::light;
  EXPECT_NEAR(*load(plan).tan_mg_d, 0.77 * before, 1e-9);
}

TEST(Load, FastingDaysTakeTheirSeventh) {
  Plan plan = stocked();
  const double before = *load(plan).feed_g_d;
  plan.feeding->fasting_days = 2;
  EXPECT_NEAR(*load(plan).feed_g_d, before * 5 / 7, 1e-12);
}

TEST(Load, WarmerWaterMeansMoreFood) {
  Plan plan = stocked();
  const double before = *load(plan).feed_g_d;
  plan.water->temperature_c = 28;
  EXPECT_NEAR(*load(plan).feed_g_d, before * std::pow(2, 0.3), 1e-9);
}

TEST(Load, NoStockFeedsNothingAndLeavesTheTapsNitrate) {
  const Load l = load(box_plan(60, 30, 30, 27));
  EXPECT_EQ(l.feed_g_d, 0);
  EXPECT_EQ(l.tan_mg_d, 0);
  EXPECT_EQ(l.nitrate_peak_mg_l, 10);
  EXPECT_EQ(l.change_needed_fraction, 0);
}

TEST(Load, WhatIsNotKnownWithholdsWhatItWouldEnter) {
  Plan plan = stocked();
  plan.upkeep.reset();
  EXPECT_TRUE(load(plan).tan_mg_d);
  EXPECT_FALSE(load(plan).nitrate_peak_mg_l);
  EXPECT_FALSE(load(plan).change_needed_fraction);
  plan = stocked();
  plan.source.nitrate_mg_l.reset();
  EXPECT_TRUE(load(plan).tan_mg_d);
  EXPECT_FALSE(load(plan).nitrate_peak_mg_l);
  plan = stocked();
  plan.feeding.reset();
  EXPECT_EQ(load(plan), Load{});
  plan = stocked();
  plan.stock[1].species = "nobody-knows";
  EXPECT_EQ(load(plan), Load{});
  plan = stocked();
  plan.water->temperature_c.reset();
  for (Species& s : plan.own_species) s.water.temperature_c = {};
  EXPECT_EQ(load(plan), Load{});
}

// Food brings its nitrogen as ammonia, which first adds an equivalent: one is left to lose, 1 / 14.007 / 0.3566525 degrees for
// each mg/L. Film: Zhu & Chen 1999, Aquacultural Engineering 20: 245-259.
TEST(Load, TakesHardnessAndWantsMedia) {
  const Plan plan = stocked();
  const Load l = load(plan);
  EXPECT_NEAR(*l.kh_drift_dkh_week, -7 * *l.tan_mg_d / volume_of(plan).net_l / 14.007 / 0.3566525, 1e-6);
  const double uptake_mg_m2_d = 0.5 * 1859 * (0.2 - 0.07) / (0.2 + 1.93) * std::pow(1.043, 25 - 27.2);
  EXPECT_NEAR(*l.media_needed_l, 1000 * *l.tan_mg_d / uptake_mg_m2_d / 500, 1e-6);
}

// 0.5 mg/L of ammonia nitrogen at pH 8.0 and 24 degrees C: 0.0502 of it un-ionised (table after Emerson et al. 1975, UF/IFAS
// FA-16), 1.2159 times as much as NH3.
TEST(Load, TellsTheUnionisedAmmoniaOfWhatWasMeasured) {
  Plan plan = stocked();
  EXPECT_FALSE(load(plan).ammonia_nh3_mg_l) << "nothing was measured";
  plan.measured = Measured{.date = "", .temperature_c = 24, .ph = 8.0, .ammonia_mg_l = 0.5, .other_keys = ""};
  EXPECT_NEAR(*load(plan).ammonia_nh3_mg_l, 0.5 * 0.0502 * 1.2159, 2e-4);
  plan.measured->ammonia_mg_l = 0;
  EXPECT_EQ(load(plan).ammonia_nh3_mg_l, 0);
}

TEST(Load, NoChangeIsAskedForThatCannotBeMade) {
  Plan plan = stocked();
  plan.source.nitrate_mg_l = 48;  // above the limit of 40 by itself
  EXPECT_FALSE(load(plan).change_needed_fraction);
  EXPECT_TRUE(load(plan).nitrate_peak_mg_l);
  plan = stocked();
  plan.stock[0].count = 2000;
  EXPECT_FALSE(load(plan).change_needed_fraction);
  plan = stocked();
  plan.upkeep->change_fraction = 0;
  EXPECT_FALSE(load(plan).nitrate_peak_mg_l);
  EXPECT_TRUE(load(plan).change_needed_fraction);
}

TEST(Load, IndexNeitherKnowsTheTapNorTheChanges) {
  const Plan plan = stocked();
  Plan other = plan;
  other.source.nitrate_mg_l = 40;
  other.upkeep->change_fraction = 0.9;
  const auto index = [](const Plan& p) { return load_index(*nitrate_rise_mg_l_d(load(p), volume_of(p))); };
  EXPECT_EQ(index(plan), index(other));
  EXPECT_NEAR(load_index(50.0 / 7), 1, 1e-12);  // all of a week's water, to stay 50 mg/L over the tap
  EXPECT_FALSE(nitrate_rise_mg_l_d(load(plan), Volume{}));
}

// Sales & Janssens 2003: maintenance energy at 26 degrees C 0.068 kJ/d neon tetra and 0.51 kJ/d moonlight gourami; masses 0.25
// and 4 g and 14 kJ metabolisable in a gram of dry food are from memory. Fed adults get more than that and less than three times
// it.
TEST(Ration, LiesAboveThePublishedMaintenance) {
  for (const auto& [mass_g, maintenance_kj] : {std::pair{0.25, 0.068}, {4.0, 0.51}}) {
    const double eaten_kj = daily_feed_g(1, mass_g, adult_ration_pct(mass_g), 26) * 14;
    EXPECT_GT(eaten_kj, maintenance_kj);
    EXPECT_LT(eaten_kj, 3 * maintenance_kj);
  }
}

TEST(Ration, IsHeldAtBothEndsAndForBothTemperatures) {
  EXPECT_EQ(adult_ration_pct(0.01), 3);
  EXPECT_EQ(adult_ration_pct(100000), 0.3);
  EXPECT_EQ(adult_ration_pct(0), 0);
  EXPECT_DOUBLE_EQ(adult_ration_pct(1), 2);
  EXPECT_DOUBLE_EQ(appetite_factor(25), 1);
  EXPECT_DOUBLE_EQ(appetite_factor(5), 0.5);
  EXPECT_DOUBLE_EQ(appetite_factor(40), 1.5);
}

TEST(Ration, ALargerFishEatsMoreButLessForItsMass) {
  for (double mass = 0.3; mass < 600; mass *= 1.5) {
    EXPECT_GE(adult_ration_pct(mass), adult_ration_pct(mass * 1.5));
    EXPECT_LT(daily_feed_g(1, mass, adult_ration_pct(mass), 25), daily_feed_g(1, mass * 1.5, adult_ration_pct(mass * 1.5), 25));
  }
}

TEST(AdultMass, ASpeciesOwnRelationWinsOverItsShape) {
  Species s = sample_species("a", Style::calm_mid, 2.5);
  EXPECT_NEAR(adult_mass_g(s), body_mass_g(Body::fusiform, 2.5), 1e-12);
  s.size.length_weight = {0.014, 2.528};  // Lemos et al. 2015
  EXPECT_NEAR(adult_mass_g(s), 0.141945, 0.0015);
}

}  // namespace
}  // namespace shoalwright
