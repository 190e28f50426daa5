// SPDX-License-Identifier: MIT
#include "water/blend.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "support/dice.h"

namespace shoalwright {
namespace {

const Conserved pure = conserved_in_air({.temperature_c = 25, .kh_dkh = 0, .gh_dgh = 0}, co2_outdoors_atm);

// PHREEQC 3 (US Geological Survey), phreeqc.dat, MIX; pure water in balance with outdoor air, then the room's.
TEST(Blend, PhIsWhatPhreeqcFinds) {
  struct {
    double gh, kh, co2, share, tap_ph, closed, closed_off, stood;
  } const rows[] = {
      {15, 8, 20, 0.5, 7.106, 7.104, 0.03, 8.030},
      {12, 6, 10, 0.3, 7.285, 7.238, 0.03, 7.700},
      {18, 12, 5, 0.4, 7.870, 7.874, 0.08, 8.108},  // nearly as much carbon as alkalinity: a little moves it far
  };
  for (const auto& row : rows) {
    const CarbonateWater tap{.temperature_c = 25, .kh_dkh = row.kh, .gh_dgh = row.gh};
    const Conserved mix = mixed(row.share, conserved_with_co2(tap, row.co2), pure);
    EXPECT_NEAR(ph_with_co2(tap, row.co2), row.tap_ph, 0.03) << row.kh;
    EXPECT_NEAR(ph_closed(mix, 25), row.closed, row.closed_off) << row.kh;
    EXPECT_NEAR(ph_after_standing(mix, 25, co2_indoors_atm), row.stood, 0.02) << row.kh;
    const double mean_of_ph = mixed(row.share, row.tap_ph, ph_closed(pure, 25));
    EXPECT_GT(ph_closed(mix, 25) - mean_of_ph, 0.7) << row.kh;
  }
}

TEST(Blend, BicarbonateRaisesPhAsPhreeqcFinds) {
  const Conserved before = conserved_with_co2({.temperature_c = 25, .kh_dkh = 2}, 5);
  EXPECT_NEAR(ph_closed(before, 25), 7.136, 0.02);
  EXPECT_NEAR(ph_closed(with_bicarbonate(before, 2), 25), 7.4247, 0.02);
  EXPECT_NEAR(ph_closed(with_bicarbonate(conserved_with_co2({.temperature_c = 28, .kh_dkh = 4}, 10), 1), 28), 7.2091, 0.02);
}

TEST(Blend, AlkalinityAndCarbonAreConserved) {
  Dice dice(41);
  for (int i = 0; i < 300; ++i) {
    const double c = dice.real(4, 35), share = dice.real(0, 1);
    const CarbonateWater first{.temperature_c = c, .kh_dkh = dice.real(0.5, 25), .gh_dgh = dice.real(0, 40)};
    const CarbonateWater second{.temperature_c = c, .kh_dkh = dice.real(0.5, 25), .gh_dgh = dice.real(0, 40)};
    const Conserved a = conserved_with_co2(first, dice.real(0.2, 80)), b = conserved_at_ph(second, dice.real(6, 8.5));
    const Conserved mix = mixed(share, a, b);
    EXPECT_NEAR(mix.kh_dkh, share * first.kh_dkh + (1 - share) * second.kh_dkh, 1e-12);
    EXPECT_NEAR(mix.gh_dgh, share * *first.gh_dgh + (1 - share) * *second.gh_dgh, 1e-12);
    // Of the mix, worked out anew from the pH that it has.
    const CarbonateWater water{.temperature_c = c, .kh_dkh = mix.kh_dkh, .gh_dgh = mix.gh_dgh};
    const double carbon = share * a.carbon_mol_l + (1 - share) * b.carbon_mol_l;
    EXPECT_NEAR(conserved_at_ph(water, ph_closed(mix, c)).carbon_mol_l / carbon, 1, 1e-9);
    // The same from either side, and in two steps.
    EXPECT_NEAR(ph_closed(mixed(1 - share, b, a), c), ph_closed(mix, c), 1e-9);
    EXPECT_NEAR(mixed(0.5, mix, mix).carbon_mol_l, mix.carbon_mol_l, 1e-15);
  }
}

TEST(Blend, TheWholeOfOneIsThatOne) {
  const CarbonateWater tap{.temperature_c = 20, .kh_dkh = 7, .gh_dgh = 12};
  const Conserved a = conserved_with_co2(tap, 12);
  EXPECT_NEAR(ph_closed(mixed(1, a, pure), 20), ph_with_co2(tap, 12), 1e-8);
  EXPECT_EQ(mixed(0, a, pure).carbon_mol_l, pure.carbon_mol_l);
}

TEST(Blend, MoreBicarbonateRaisesPhAndAnyWaterSettlesHigherWithMoreOfTheHarder) {
  const Conserved tap = conserved_with_co2({.temperature_c = 25, .kh_dkh = 8, .gh_dgh = 14}, 15);
  for (double dose = 0.5; dose <= 10; dose += 0.5)
    EXPECT_GT(ph_closed(with_bicarbonate(tap, dose), 25), ph_closed(with_bicarbonate(tap, dose - 0.5), 25)) << dose;
  for (double share = 0.1; share <= 1; share += 0.1)
    EXPECT_GT(ph_after_standing(mixed(share, tap, pure), 25, co2_indoors_atm),
              ph_after_standing(mixed(share - 0.1, tap, pure), 25, co2_indoors_atm))
        << share;
}

TEST(Blend, TheShareForATargetReachesIt) {
  Dice dice(42);
  for (int i = 0; i < 200; ++i) {
    const double first = dice.real(5, 30), second = dice.real(0, 4), target = dice.real(4, 5);
    EXPECT_NEAR(mixed(*share_for(target, first, second), first, second), target, 1e-12);
  }
  EXPECT_GT(*share_for(31, 30, 0), 1);
  EXPECT_LT(*share_for(0, 30, 1), 0);
  EXPECT_FALSE(share_for(4, 3, 3));
  EXPECT_FALSE(share_for(4, NAN, 3));
}

TEST(Blend, OutsideItsRangeTheNearerEdgeAnswers) {
  const Conserved tap = conserved_with_co2({.temperature_c = 25, .kh_dkh = 8, .gh_dgh = 14}, 15);
  EXPECT_EQ(mixed(1.5, tap, pure).kh_dkh, tap.kh_dkh);
  EXPECT_EQ(mixed(-1, 3, 8), 8);
  EXPECT_EQ(with_bicarbonate(tap, -2).kh_dkh, tap.kh_dkh);
  EXPECT_EQ(with_bicarbonate(tap, 1e9).kh_dkh, carbonate_kh_dkh.high);
  const double odd[] = {NAN, std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), 1e300, -1e300};
  for (const double x : odd)
    for (const double y : odd) {
      const CarbonateWater water{.temperature_c = x, .kh_dkh = y, .gh_dgh = y};
      for (const Conserved& parts : {conserved_with_co2(water, x), conserved_at_ph(water, x), conserved_in_air(water, x),
                                     mixed(y, conserved_in_air(water, x), pure), with_bicarbonate(pure, x)}) {
        EXPECT_TRUE(std::isfinite(parts.carbon_mol_l) && std::isfinite(parts.kh_dkh) && std::isfinite(parts.gh_dgh));
        EXPECT_TRUE(std::isfinite(ph_closed(parts, y)) && std::isfinite(ph_after_standing(parts, y, x)));
      }
    }
}

}  // namespace
}  // namespace shoalwright
