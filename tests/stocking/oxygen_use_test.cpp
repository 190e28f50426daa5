// SPDX-License-Identifier: MIT
#include "stocking/oxygen_use.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stocking/body.h"
#include "support/dice.h"
#include "support/samples.h"
#include "tank/volume.h"
#include "water/nitrogen.h"

namespace shoalwright {
namespace {

Plan stocked() {
  Plan plan = box_plan(75, 30, 33, 30);
  add(plan, sample_species("a", Style::calm_mid, 3.5), 12);
  return plan;
}

std::optional<OxygenUse> night(const Plan& plan, double temperature_c = 25) {
  return night_oxygen_use(plan, resolve_stock(plan, {}), temperature_c);
}

Piece plant(const char* kind) {
  Piece piece;
  piece.kind = kind;
  piece.length_cm = piece.depth_cm = 15;
  piece.height_cm = 20;
  return piece;
}

// Clarke & Johnston 1999: a 50 g fish uses ln R = 15.7 - 5.02/T (mmol/h, T in 1000 K); about six times as much at 30 as at 0
// degrees C; mean Q10 between species 1.83.
TEST(RestingOxygen, IsThePublishedLine) {
  for (const auto& [t, mmol_h] : {std::pair{0.0, 0.0687}, {10.0, 0.1315}, {25.0, 0.3207}, {30.0, 0.4234}})
    EXPECT_NEAR(resting_oxygen_mg_h(50, t), mmol_h * 31.998, 0.001 * mmol_h * 31.998);
  const double cold = resting_oxygen_mg_h(50, 0), warm = resting_oxygen_mg_h(50, 30);
  EXPECT_NEAR(over_resting(warm, cold), 6, 0.3);
  EXPECT_NEAR(growth_over_10_c(cold, 0, warm, 30), 1.83, 0.01);
}

// Zebrafish of 0.43 to 0.55 g at 24 degrees C, mg/kg/h: 364 at rest, 560 in groups, 1223 at most (Lucas & Priede 1992); 128 to
// 160 at 28 degrees C (Barrionuevo & Burggren 1999).
TEST(RestingOxygen, BracketsWhatWasMeasuredInZebrafish) {
  const double per_kg = resting_oxygen_mg_h(0.49, 24) / 0.49 * 1000;
  EXPECT_GT(per_kg, 364);
  EXPECT_LT(per_kg, 560);
  EXPECT_LT(fish_use_low * per_kg, 364);
  EXPECT_GT(fish_use_high * per_kg, 560);
  EXPECT_GT(use_by_day * per_kg, 560);
  EXPECT_NEAR(use_at_most * per_kg, 1223, 1);
  EXPECT_NEAR(over_resting(560, 364), 1.54, 0.01);
  EXPECT_GT(resting_oxygen_mg_h(0.3, 28) / 0.3 * 1000, 4 * 160);
}

// Maintenance energy at 26 degrees C 0.068 kJ/d neon tetra and 0.51 kJ/d moonlight gourami (Sales & Janssens 2003); masses 0.25
// and 4 g and 13.6 kJ for a gram of oxygen are from memory.
TEST(RestingOxygen, AgreesWithMaintenanceEnergy) {
  EXPECT_NEAR(use_by_day * resting_oxygen_mg_h(0.25, 26), 0.068e3 / 13.6 / 24, 0.2 * 0.208);
  EXPECT_NEAR(use_by_day * resting_oxygen_mg_h(4, 26), 0.51e3 / 13.6 / 24, 0.2 * 1.56);
}

TEST(RestingOxygen, GrowsWithMassAndWarmthAndIsHeldBeyond) {
  for (double mass = 0.05; mass < 1000; mass *= 2) {
    EXPECT_GT(resting_oxygen_mg_h(2 * mass, 25), resting_oxygen_mg_h(mass, 25));
    EXPECT_LT(resting_oxygen_mg_h(2 * mass, 25), 2 * resting_oxygen_mg_h(mass, 25));
  }
  for (double t = 0; t < 40; ++t) EXPECT_GT(resting_oxygen_mg_h(1, t + 1), resting_oxygen_mg_h(1, t));
  EXPECT_EQ(resting_oxygen_mg_h(1, 45), resting_oxygen_mg_h(1, 40));
  EXPECT_EQ(resting_oxygen_mg_h(0, 25), 0);
  EXPECT_EQ(resting_oxygen_mg_h(-1, 25), 0);
  EXPECT_EQ(over_resting(5, 0), 0);
}

// NH4+ + 2 O2: 4.57 g of oxygen for a gram of nitrogen.
TEST(OxygenUse, OfBacteriaIsStoichiometry) { EXPECT_NEAR(nitrification_oxygen_mg_h(24), 4.57, 0.005); }

// The same fish by their food: a cross-check from gross energy, kept within a third.
TEST(OxygenUse, OfFishAgreesWithTheirFood) {
  const double mass_g = body_mass_g(Body::fusiform, 3.5), by_line = use_by_day * resting_oxygen_mg_h(mass_g, 25);
  const double by_food = oxygen_for_feed_g_g() * 0.02 * mass_g * 1000 / 24;
  EXPECT_NEAR(by_food, by_line, 0.33 * by_line);
  EXPECT_LT(oxygen_for_feed_g_g(19, 0.70, 0.35), oxygen_for_feed_g_g());
}

TEST(OxygenUse, AddsUpWhatFishAndTheirFoodTake) {
  const OxygenUse use = oxygen_use(10, use_after_meal, 0.5, 0.45);
  EXPECT_EQ(use.fish_mg_h, 20);
  EXPECT_NEAR(use.nitrification_mg_h, tan_from_feed_mg(0.5, 0.45) * 4.57 / 24, 0.01);
  EXPECT_NEAR(use.decay_mg_h, 125.0 / 24, 1e-9);
  EXPECT_EQ(use.total_mg_h(), use.fish_mg_h + use.nitrification_mg_h + use.decay_mg_h);
  EXPECT_EQ(use.total_mg_h() - use.total_mg_h(0.5), 10);
}

TEST(OxygenUse, AtNightIsThatOfTheWholeStockAsleep) {
  const Plan plan = stocked();
  const double mass_g = body_mass_g(Body::fusiform, 3.5);
  EXPECT_NEAR(night(plan)->fish_mg_h, 12 * resting_oxygen_mg_h(mass_g, 25), 1e-9);
  EXPECT_EQ(night(plan)->plants_mg_h, 0);
  EXPECT_EQ(after_meal(*night(plan)).fish_mg_h, 2 * night(plan)->fish_mg_h);
}

TEST(OxygenUse, EveryTermMovesWhenItsInputDoes) {
  const Plan plan = stocked();
  const OxygenUse before = *night(plan);
  Plan more = plan, heavy = plan, planted = plan, fasting = plan;
  ++more.stock[0].count;
  heavy.feeding->ration = Ration::heavy;
  planted.planting = Planting::light;
  fasting.feeding->fasting_days = 2;  // on the days with food there is as much of it
  EXPECT_GT(night(more)->fish_mg_h, before.fish_mg_h);
  EXPECT_GT(night(more)->nitrification_mg_h, before.nitrification_mg_h);
  EXPECT_GT(night(more)->decay_mg_h, before.decay_mg_h);
  EXPECT_EQ(night(heavy)->fish_mg_h, before.fish_mg_h);
  EXPECT_NEAR(night(heavy)->decay_mg_h, 2 * before.decay_mg_h, 1e-9);
  EXPECT_NEAR(night(planted)->plants_mg_h, 15 * 0.225, 1e-9);
  EXPECT_EQ(night(fasting), before);
  EXPECT_GT(night(plan, 28)->total_mg_h(), before.total_mg_h());
}

TEST(OxygenUse, DrawnPlantsBreatheTooButNotThoseInTheAir) {
  Plan plan = stocked();
  EXPECT_EQ(plants_dry_g(plan), 0);
  plan.pieces = {plant("stem-plants")};
  const double one = *plants_dry_g(plan);
  EXPECT_GT(one, 0);
  plan.pieces.push_back(plant("stem-plants"));
  EXPECT_NEAR(*plants_dry_g(plan), 2 * one, 1e-9);
  plan.pieces.push_back(plant("floating-plants"));
  plan.pieces.push_back(plant("stone"));
  plan.pieces.push_back(plant("mop"));
  EXPECT_NEAR(*plants_dry_g(plan), 2 * one, 1e-9);
  plan.pieces.insert(plan.pieces.end(), 100, plant("stem-plants"));
  EXPECT_NEAR(*plants_dry_g(plan), 80 * 0.225, 1e-9);  // no more than a dense stand all over
  plan.planting = Planting::dense;
  EXPECT_NEAR(*plants_dry_g(plan), 80 * 0.225, 1e-9);
  EXPECT_EQ(after_meal(*night(plan)).plants_mg_h, 0);
}

TEST(OxygenUse, WhatIsNotKnownWithholdsIt) {
  Plan plan = stocked();
  plan.feeding.reset();
  EXPECT_FALSE(night(plan));
  plan = stocked();
  plan.planting.reset();
  EXPECT_FALSE(night(plan));
  plan = stocked();
  plan.stock[0].species = "nobody-knows";
  EXPECT_FALSE(night(plan));
  plan.stock.clear();
  plan.feeding.reset();
  EXPECT_EQ(night(plan)->total_mg_h(), 0);
}

TEST(OxygenUse, IsANumberForWhateverAPlanMaySay) {
  Dice dice(4);
  for (int i = 0; i < 500; ++i) {
    Plan plan = box_plan(dice.real(5, 500), 30, 33, 30);
    plan.planting = dice.pick(std::array{Planting::none, Planting::light, Planting::medium, Planting::dense});
    add(plan, sample_species("a", Style::calm_mid, dice.real(0.5, 80), dice.pick(std::array{Body::eel, Body::unknown})),
        dice.whole(1, 100000));
    const OxygenUse use = *night(plan, dice.real(0, 50));
    EXPECT_TRUE(std::isfinite(use.total_mg_h()) && use.total_mg_h() > 0);
  }
}

}  // namespace
}  // namespace shoalwright
