// SPDX-License-Identifier: MIT
#include "water/mix.h"

#include <gtest/gtest.h>

#include "support/dice.h"
#include "water/blend.h"
#include "water/carbonate.h"

namespace shoalwright {
namespace {

SourceWater tap(double gh_dgh, double kh_dkh, double nitrate_mg_l = 20) {
  SourceWater water;
  water.gh_dgh = gh_dgh;
  water.kh_dkh = kh_dkh;
  water.nitrate_mg_l = nitrate_mg_l;
  return water;
}

// Handbook, chemistry 4.4 (PHREEQC): three taps with pure water, after standing at 800 ppm, 25 degrees C.
TEST(Mix, StandsAtThePhThatTheReferenceCodeTells) {
  EXPECT_NEAR(*mixed_water(tap(15, 8), 0.5, {}, 25).ph_after_standing, 8.030, 0.02);
  EXPECT_NEAR(*mixed_water(tap(12, 6), 0.7, {}, 25).ph_after_standing, 7.700, 0.02);
  EXPECT_NEAR(*mixed_water(tap(18, 12), 0.6, {}, 25).ph_after_standing, 8.108, 0.02);
}

// Handbook, chemistry 4.2: side effects of a degree.
TEST(Mix, CountsWhatSaltsBringBesides) {
  const SaltDose gypsum{find_salt("calcium-sulphate-dihydrate"), 30.701}, soda{find_salt("sodium-bicarbonate"), 2 * 29.961};
  const SaltDose both[] = {gypsum, soda};
  const MixedWater water = mixed_water(tap(10, 5), 1, both, 25);
  EXPECT_NEAR(*water.gh_dgh, 1, 1e-4);
  EXPECT_NEAR(*water.kh_dkh, 2, 1e-4);
  EXPECT_NEAR(water.sulphate_mg_l, 17.13, 0.01);
  EXPECT_NEAR(water.sodium_mg_l, 2 * 8.20, 0.02);
  EXPECT_EQ(water.chloride_mg_l, 0);
  EXPECT_EQ(*water.nitrate_mg_l, 0);
}

TEST(Mix, ConservesHardnessAndNitrateAndNeverGainsByReverseOsmosis) {
  Dice dice(11);
  for (int n = 0; n < 500; ++n) {
    const SourceWater water = tap(dice.real(0, 30), dice.real(0, 20), dice.real(0, 60));
    const double ro = dice.real(0, 1), more = dice.real(ro, 1);
    const MixedWater mix = mixed_water(water, ro, {}, 25), thinner = mixed_water(water, more, {}, 25);
    EXPECT_NEAR(*mix.gh_dgh, (1 - ro) * *water.gh_dgh, 1e-12);
    EXPECT_NEAR(*mix.kh_dkh, (1 - ro) * *water.kh_dkh, 1e-12);
    EXPECT_NEAR(*mix.nitrate_mg_l, (1 - ro) * *water.nitrate_mg_l, 1e-12);
    EXPECT_LE(*thinner.gh_dgh, *mix.gh_dgh + 1e-12);
    EXPECT_LE(*thinner.kh_dkh, *mix.kh_dkh + 1e-12);
    EXPECT_LE(*thinner.nitrate_mg_l, *mix.nitrate_mg_l + 1e-12);
    EXPECT_LE(*thinner.ph_after_standing, *mix.ph_after_standing + 1e-9);
  }
}

TEST(Mix, TellsNothingOfWhatTheTapHasNotToldAndHoldsTheShare) {
  SourceWater water = tap(10, 5);
  water.kh_dkh.reset();
  water.nitrate_mg_l.reset();
  const MixedWater mix = mixed_water(water, 0.5, {}, 25);
  EXPECT_EQ(mix.gh_dgh, 5);
  EXPECT_FALSE(mix.kh_dkh || mix.nitrate_mg_l || mix.ph_after_standing || mix.ph_in_tank);
  EXPECT_EQ(mixed_water(water, 7, {}, 25).gh_dgh, 0);
  EXPECT_EQ(mixed_water(water, -7, {}, 25).gh_dgh, 10);
}

TEST(Mix, SwingsWithTheTapButNotWithTheSalts) {
  const SaltDose gypsum{find_salt("calcium-sulphate-dihydrate"), *salt_mg_l_per_dgh(*find_salt("calcium-sulphate-dihydrate"))};
  const TapSwing swing = tap_swing(tap(10, 5), 0.5, {&gypsum, 1}, 0.1);
  EXPECT_NEAR(swing.gh_dgh->low, 1 + 4.5, 1e-12);
  EXPECT_NEAR(swing.gh_dgh->high, 1 + 5.5, 1e-12);
  EXPECT_NEAR(swing.kh_dkh->low, 2.25, 1e-12);
  EXPECT_NEAR(swing.kh_dkh->high, 2.75, 1e-12);
  EXPECT_FALSE(tap_swing(SourceWater{}, 0.5, {}, 0.1).gh_dgh);
}

// Handbook, chemistry 3.3: KH 3 at 5 and 2 mg/L of CO2 (PHREEQC, sodium bicarbonate water).
TEST(Mix, TellsThePhOfATankAtItsUsualCo2) {
  const Range ph = *mixed_water(tap(3, 3), 0, {}, 25).ph_in_tank;
  EXPECT_NEAR(ph.low, 7.31, 0.02);
  EXPECT_NEAR(ph.high, 7.71, 0.02);
}

}  // namespace
}  // namespace shoalwright
