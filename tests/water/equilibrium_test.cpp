// SPDX-License-Identifier: MIT
#include "water/equilibrium.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "support/dice.h"
#include "units/convert.h"

namespace shoalwright {
namespace {

TEST(Equilibrium, ConstantsAreThoseOfThePaperAt25) {  // Plummer & Busenberg 1982
  EXPECT_NEAR(log10_k1(25), -6.352, 0.001);
  EXPECT_NEAR(log10_k2(25), -10.329, 0.001);
  EXPECT_NEAR(log10_k_gas(25), -1.468, 0.001);
  EXPECT_NEAR(log10_k_calcite(25), -8.480, 0.001);
}

// Ion product of water as textbooks print it, from memory.
TEST(Equilibrium, WaterFallsApartMoreWhenWarm) {
  EXPECT_NEAR(log10_k_water(0), -14.94, 0.02);
  EXPECT_NEAR(log10_k_water(25), -13.995, 0.01);
  EXPECT_NEAR(log10_k_water(50), -13.26, 0.03);
}

/// Half the sum of concentration times charge squared, over the ions themselves.
double by_counting_ions(double kh_dkh, double gh_dgh) {
  const double alkaline = meq_l_from_degrees(kh_dkh) / 1000, divalent = mmol_l_from_degrees(gh_dgh) / 1000;
  const double rest = std::max(2 * divalent - alkaline, 0.0);
  const double sulphate = rest / 2 / 2, chloride = rest / 2, sodium = std::max(alkaline - 2 * divalent, 0.0);
  EXPECT_NEAR(2 * divalent + sodium, alkaline + 2 * sulphate + chloride, 1e-15);  // charges balance
  return (4 * divalent + sodium + alkaline + 4 * sulphate + chloride) / 2;
}

TEST(Equilibrium, IonicStrengthCountsTheIons) {
  Dice dice(21);
  for (int i = 0; i < 300; ++i) {
    const double kh = dice.real(0.1, 40), gh = dice.real(0.1, 60);
    EXPECT_NEAR(ionic_strength_of_hardness_mol_l(kh, gh), by_counting_ions(kh, gh), 1e-12);
  }
  EXPECT_EQ(ionic_strength_of_hardness_mol_l(0, 0), ionic_strength_mol_l.low);
  EXPECT_NEAR(ionic_strength_of_conductivity_mol_l(500), 0.007, 1e-12);
}

// Activity coefficients of an ion with one charge in dilute water lie near 0.96 at 0.001 mol/L and 0.90 at 0.01 (textbooks, from
// memory).
TEST(Equilibrium, SaltsLowerActivity) {
  EXPECT_NEAR(std::pow(10, log10_activity(25, 0.001)), 0.965, 0.003);
  EXPECT_NEAR(std::pow(10, log10_activity(25, 0.01)), 0.90, 0.005);
  for (double ionic = 0.001; ionic < 0.1; ionic += 0.001)
    EXPECT_LT(log10_activity(25, ionic), log10_activity(25, ionic - 0.0005)) << ionic;
}

TEST(Equilibrium, OutsideItsRangeTheNearerEdgeAnswers) {
  for (const auto& log10_k : {log10_k1, log10_k2, log10_k_gas, log10_k_water, log10_k_calcite}) {
    EXPECT_EQ(log10_k(-4), log10_k(0));
    EXPECT_EQ(log10_k(200), log10_k(90));
    EXPECT_EQ(log10_k(NAN), log10_k(0));
  }
  EXPECT_EQ(log10_activity(25, 5), log10_activity(25, 0.1));
  EXPECT_EQ(log10_activity(25, -1), log10_activity(25, 0));
  EXPECT_EQ(ionic_strength_of_hardness_mol_l(-1, -1), ionic_strength_mol_l.low);
  EXPECT_EQ(ionic_strength_of_hardness_mol_l(NAN, NAN), ionic_strength_mol_l.low);
  EXPECT_EQ(ionic_strength_of_hardness_mol_l(1e300, 0), ionic_strength_mol_l.high);
  EXPECT_FALSE(std::isnan(log10_activity(std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity())));
}

}  // namespace
}  // namespace shoalwright
