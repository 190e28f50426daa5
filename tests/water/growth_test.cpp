// SPDX-License-Identifier: MIT
#include "water/growth.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "support/dice.h"

namespace shoalwright {
namespace {

TEST(Growth, TopSpeedsAtTheTemperaturesThatTheyAreToldFor) {
  EXPECT_DOUBLE_EQ(ammonia_oxidisers_fastest_d(15), 0.47);  // US EPA 1975, from memory
  EXPECT_DOUBLE_EQ(nitrite_oxidisers_fastest_d(20), 1.1);   // after Reichert et al. 2001, from memory
  EXPECT_NEAR(ammonia_oxidisers_fastest_d(25) / ammonia_oxidisers_fastest_d(15), std::exp(0.98), 1e-12);
  EXPECT_NEAR(ammonia_half_mg_l(20), std::pow(10, -0.138), 1e-12);
}

TEST(Growth, HalfTheAmmoniaLimitIsHalfTheSpeed) {
  const Growth g = growth_in(24, 7, 7.5);
  EXPECT_NEAR(ammonia_oxidisers_growth_d(g, g.ammonia_half_mg_l), g.ammonia_fastest_d / 2, 1e-15);
  EXPECT_NEAR(nitrite_oxidisers_growth_d(g, nitrite_half_mg_l, 0), g.nitrite_fastest_d / 2, 1e-15);
}

TEST(Growth, MoreFoodAndOxygenNeverSlow) {
  Dice dice(51);
  for (int i = 0; i < 300; ++i) {
    const double c = dice.real(5, 30), oxygen = dice.real(0.1, 12), ph = dice.real(6.1, 9), tan = dice.real(0, 10);
    const Growth g = growth_in(c, oxygen, ph), airy = growth_in(c, oxygen + 1, ph);
    EXPECT_GT(ammonia_oxidisers_growth_d(g, tan + 0.1), ammonia_oxidisers_growth_d(g, tan));
    EXPECT_GE(ammonia_oxidisers_growth_d(airy, tan), ammonia_oxidisers_growth_d(g, tan));
    EXPECT_GT(nitrite_oxidisers_growth_d(g, tan + 0.1, 1), nitrite_oxidisers_growth_d(g, tan, 1));
    EXPECT_LT(nitrite_oxidisers_growth_d(g, 1, tan + 1), nitrite_oxidisers_growth_d(g, 1, tan));  // NH3 slows them
  }
}

TEST(Growth, AcidStopsItByAndBy) {
  EXPECT_EQ(growth_left_by_acid(7.2), 1);
  EXPECT_EQ(growth_left_by_acid(9), 1);
  EXPECT_NEAR(growth_left_by_acid(6), 0, 0.001);
  EXPECT_EQ(growth_left_by_acid(5), 0);
  for (double ph = 6; ph < 7.1; ph += 0.1) EXPECT_LT(growth_left_by_acid(ph), growth_left_by_acid(ph + 0.1));
}

TEST(Growth, AtBalanceAsManyGrowAsDie) {
  Dice dice(52);
  for (int i = 0; i < 200; ++i) {
    const Growth g = growth_in(dice.real(10, 30), dice.real(3, 9), dice.real(6.6, 8.5));
    const auto tan = tan_at_balance_mg_l(g);
    ASSERT_TRUE(tan);
    EXPECT_NEAR(ammonia_oxidisers_growth_d(g, *tan), bacteria_die_d, 1e-12);
  }
  EXPECT_FALSE(tan_at_balance_mg_l(growth_in(25, 7, 6)));
  EXPECT_FALSE(tan_at_balance_mg_l(growth_in(25, 0, 7.5)));
}

TEST(Growth, OutsideItsRangeTheNearerEdgeAnswers) {
  EXPECT_EQ(ammonia_oxidisers_fastest_d(33), ammonia_oxidisers_fastest_d(30));
  EXPECT_EQ(nitrite_oxidisers_fastest_d(1), nitrite_oxidisers_fastest_d(5));
  EXPECT_EQ(ammonia_half_mg_l(99), ammonia_half_mg_l(30));
  EXPECT_EQ(ammonia_oxidisers_growth_d(growth_in(25, 7, 7.5), -1), 0);
  EXPECT_EQ(nitrite_oxidisers_growth_d(growth_in(25, 7, 7.5), -1, -1), 0);
  const double odd[] = {NAN, std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), 1e300, -1e300};
  for (const double x : odd)
    for (const double y : odd)
      for (const double z : odd) {
        const Growth g = growth_in(x, y, z);
        for (const double rate : {g.ammonia_fastest_d, g.nitrite_fastest_d, g.ammonia_half_mg_l, g.nh3_share,
                                  ammonia_oxidisers_growth_d(g, 1), nitrite_oxidisers_growth_d(g, 1, 1)}) {
          EXPECT_GE(rate, 0);
          EXPECT_TRUE(std::isfinite(rate));
        }
      }
}

}  // namespace
}  // namespace shoalwright
