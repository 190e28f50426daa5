// SPDX-License-Identifier: MIT
#include "water/carbonate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "support/dice.h"
#include "water/equilibrium.h"

namespace shoalwright {
namespace {

/// Soft water with sodium bicarbonate.
CarbonateWater soda(double kh_dkh, double c = 25) { return {.temperature_c = c, .kh_dkh = kh_dkh, .gh_dgh = 0}; }

TEST(Carbonate, PhIsWhatPhreeqcFindsWithKnownCo2) {  // PHREEQC 3 (US Geological Survey), phreeqc.dat; two decimals
  const double co2[] = {1, 2, 3, 5, 10, 20, 30};
  struct {
    double kh, ph[7];
  } const rows[] = {
      {1, {7.54, 7.24, 7.06, 6.84, 6.54, 6.24, 6.06}},  {2, {7.83, 7.53, 7.36, 7.14, 6.84, 6.53, 6.36}},
      {3, {8.00, 7.71, 7.53, 7.31, 7.01, 6.71, 6.53}},  {5, {8.22, 7.92, 7.75, 7.53, 7.23, 6.92, 6.75}},
      {10, {8.50, 8.21, 8.04, 7.82, 7.52, 7.22, 7.04}}, {15, {8.67, 8.38, 8.20, 7.99, 7.69, 7.39, 7.21}},
      {20, {8.78, 8.49, 8.32, 8.10, 7.81, 7.51, 7.33}},
  };
  for (const auto& row : rows)
    for (int i = 0; i < 7; ++i) EXPECT_NEAR(ph_with_co2(soda(row.kh), co2[i]), row.ph[i], 0.01) << row.kh << ' ' << co2[i];
  EXPECT_NEAR(ph_with_co2(soda(5, 15), 10), 7.293, 0.003);
  EXPECT_NEAR(ph_with_co2(soda(5, 30), 10), 7.201, 0.003);
  // Calcium to magnesium 3 to 1, twice as much general as carbonate hardness.
  EXPECT_NEAR(ph_with_co2({.temperature_c = 22, .kh_dkh = 6, .gh_dgh = 12}, 20), 7.0029, 0.02);
  EXPECT_NEAR(ph_with_co2({.temperature_c = 26, .kh_dkh = 2, .gh_dgh = 4}, 3), 7.3412, 0.02);
}

TEST(Carbonate, PhIsWhatPhreeqcFindsInAir) {  // the same; 25 degrees C
  const double kh[] = {0, 1, 2, 4, 8, 15};
  struct {
    double ppm, ph[6], co2;
  } const rows[] = {{420, {5.60, 7.74, 8.03, 8.32, 8.61, 8.86}, 0.63},
                    {800, {5.46, 7.46, 7.76, 8.05, 8.34, 8.59}, 1.20},
                    {1000, {5.41, 7.36, 7.66, 7.95, 8.24, 8.50}, 1.50},
                    {2000, {5.26, 7.06, 7.36, 7.65, 7.95, 8.21}, 2.99}};
  for (const auto& row : rows) {
    EXPECT_NEAR(co2_in_air_mg_l(25, row.ppm * 1e-6), row.co2, 0.01);
    for (int i = 0; i < 6; ++i) EXPECT_NEAR(ph_in_air(soda(kh[i]), row.ppm * 1e-6), row.ph[i], 0.011) << row.ppm << ' ' << kh[i];
  }
}

TEST(Carbonate, MoreCo2LowersPhAndMoreHardnessRaisesIt) {
  Dice dice(31);
  for (int i = 0; i < 500; ++i) {
    CarbonateWater w{.temperature_c = dice.real(0, 40), .kh_dkh = dice.real(0, 30), .gh_dgh = dice.real(0, 40)};
    const double co2 = dice.real(0.1, 100), air = dice.real(1e-4, 0.05), carbon = dice.real(0.013, 0.03);
    CarbonateWater harder = w;
    harder.kh_dkh += dice.real(0.05, 5);
    EXPECT_LT(ph_with_co2(w, co2 * 1.1), ph_with_co2(w, co2));
    EXPECT_GT(ph_with_co2(harder, co2), ph_with_co2(w, co2));
    EXPECT_LT(ph_in_air(w, air * 1.1), ph_in_air(w, air));
    EXPECT_GT(ph_in_air(harder, air), ph_in_air(w, air));
    EXPECT_LT(ph_with_carbon(w, carbon * 1.1), ph_with_carbon(w, carbon));
    EXPECT_GE(ph_with_carbon(harder, carbon), ph_with_carbon(w, carbon));
  }
}

TEST(Carbonate, InversesInvert) {
  Dice dice(32);
  for (int i = 0; i < 500; ++i) {
    const CarbonateWater w{.temperature_c = dice.real(0, 40), .kh_dkh = dice.real(0.5, 30), .gh_dgh = dice.real(0, 40)};
    const double co2 = dice.real(0.1, 200), ph = ph_with_co2(w, co2);
    EXPECT_NEAR(co2_at_ph_mg_l(w, ph) / co2, 1, 1e-9);
    const double carbon = carbon_with_co2_mol_l(w, co2);
    EXPECT_NEAR(carbon_at_ph_mol_l(w, ph) / carbon, 1, 1e-9);
    EXPECT_NEAR(ph_with_carbon(w, carbon), ph, 1e-8);
    const double air = dice.real(1e-4, 0.05);
    EXPECT_NEAR(ph_in_air(w, air), ph_with_co2(w, co2_in_air_mg_l(w.temperature_c, air)), 1e-9);
  }
}

TEST(Carbonate, UnknownGeneralHardnessCountsAsMuchAsCarbonate) {
  EXPECT_EQ(ph_with_co2({.temperature_c = 25, .kh_dkh = 6}, 10),
            ph_with_co2({.temperature_c = 25, .kh_dkh = 6, .gh_dgh = 6}, 10));
}

// What the trade's 3 would have to be; PHREEQC as above.
TEST(Carbonate, TheShortCutTellsTooLittleInPureCarbonateWater) {
  struct {
    double c, kh, factor;
  } const rows[] = {{15, 1, 4.04}, {15, 8, 3.88}, {20, 4, 3.62}, {25, 1, 3.46}, {25, 4, 3.38}, {25, 15, 3.25}, {32, 15, 3.02}};
  for (const auto& row : rows) {
    const double ph = 7;
    EXPECT_NEAR(co2_at_ph_mg_l(soda(row.kh, row.c), ph) / row.kh, row.factor, 0.02) << row.c << ' ' << row.kh;
    EXPECT_LT(co2_by_trade_rule_mg_l(row.kh, ph), co2_at_ph_mg_l(soda(row.kh, row.c), ph));
  }
  EXPECT_NEAR(co2_by_trade_rule_mg_l(8, 7), 24, 1e-12);
  EXPECT_NEAR(co2_by_trade_rule_mg_l(4, 6), 120, 1e-10);
}

TEST(Carbonate, PureWaterIsNeutralAndThePhOfBareHardnessHoldsNoCo2) {
  EXPECT_NEAR(ph_with_co2(soda(0), 0), -log10_k_water(25) / 2, 1e-9);
  const double bare = ph_with_co2(soda(4), 0);
  EXPECT_GT(bare, 10);
  EXPECT_NEAR(co2_at_ph_mg_l(soda(4), bare), 0, 1e-9);
  EXPECT_EQ(co2_at_ph_mg_l(soda(4), bare + 0.2), 0);
}

TEST(Carbonate, OutsideItsRangeTheNearerEdgeAnswers) {
  EXPECT_EQ(ph_with_co2(soda(-1), 10), ph_with_co2(soda(0), 10));
  EXPECT_EQ(ph_with_co2(soda(900), 10), ph_with_co2(soda(60), 10));
  EXPECT_EQ(ph_with_co2(soda(4), -3), ph_with_co2(soda(4), 0));
  EXPECT_EQ(ph_in_air(soda(4), 7), ph_in_air(soda(4), 1));
  EXPECT_EQ(co2_at_ph_mg_l(soda(4), 1), co2_at_ph_mg_l(soda(4), 3));
  EXPECT_EQ(ph_with_carbon(soda(4), -1), ph_with_carbon(soda(4), 0));
  EXPECT_TRUE(carbonate_valid(soda(4)));
  EXPECT_TRUE(carbonate_valid({.temperature_c = 0, .kh_dkh = 60}));
  EXPECT_FALSE(carbonate_valid(soda(-0.1)) || carbonate_valid(soda(61)) || carbonate_valid(soda(4, 95)));
  EXPECT_FALSE(carbonate_valid({.temperature_c = 25, .kh_dkh = 4, .gh_dgh = 121}) || carbonate_valid(soda(NAN)));
  const double odd[] = {NAN, std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), 1e300, -1e300, 0};
  for (const double x : odd)
    for (const double y : odd)
      for (const double z : odd) {
        const CarbonateWater w{.temperature_c = x, .kh_dkh = y, .gh_dgh = z};
        for (const double ph : {ph_with_co2(w, z), ph_in_air(w, z), ph_with_carbon(w, z)}) {
          EXPECT_GE(ph, carbonate_ph.low);
          EXPECT_LE(ph, carbonate_ph.high);
        }
        for (const double amount : {co2_at_ph_mg_l(w, z), co2_in_air_mg_l(x, z), carbon_with_co2_mol_l(w, z),
                                    carbon_at_ph_mol_l(w, z), co2_by_trade_rule_mg_l(y, z)}) {
          EXPECT_GE(amount, 0);
          EXPECT_TRUE(std::isfinite(amount));
        }
      }
}

}  // namespace
}  // namespace shoalwright
