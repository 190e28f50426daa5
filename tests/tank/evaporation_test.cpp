// SPDX-License-Identifier: MIT
#include "tank/evaporation.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/dice.h"

namespace shoalwright {
namespace {

// Steam tables (from memory): 2.339 kPa at 20, 3.169 at 25, 4.246 at 30 degrees C; 2453.5, 2441.7, 2429.8 kJ/kg.
TEST(Vapour, AgreesWithSteamTables) {
  EXPECT_NEAR(vapour_pressure_kpa(20), 2.339, 0.004 * 2.339);
  EXPECT_NEAR(vapour_pressure_kpa(25), 3.169, 0.004 * 3.169);
  EXPECT_NEAR(vapour_pressure_kpa(30), 4.246, 0.004 * 4.246);
  EXPECT_NEAR(vaporisation_kj_kg(20), 2453.5, 1);
  EXPECT_NEAR(vaporisation_kj_kg(25), 2441.7, 1);
  EXPECT_NEAR(vaporisation_kj_kg(30), 2429.8, 1);
}

TEST(Vapour, IsHeldBeyondItsRange) {
  EXPECT_EQ(vapour_pressure_kpa(60), vapour_pressure_kpa(50));
  EXPECT_EQ(vapour_pressure_kpa(-60), vapour_pressure_kpa(-40));
  EXPECT_EQ(vaporisation_kj_kg(-5), 2501);
}

// Shah's table has 0.136 kg/m2/h for a pool of 28 degrees C in air of 28 degrees C and 50 %.
TEST(Evaporation, StillWaterAgreesWithThePublishedTable) {
  EXPECT_NEAR(still_evaporation_kg_m2_h(28, 28, 0.5), 0.136, 0.02 * 0.136);
}

TEST(Evaporation, TwoWaysAgreeOnStillWater) {
  const double by_pool = evaporation_kg_d({.area_m2 = 1, .water_c = 25, .air_c = 20, .share = evaporates_still}) / 24;
  EXPECT_NEAR(still_evaporation_kg_m2_h(25, 20, 0.5), by_pool, 0.05 * by_pool);
}

// Keepers top up 1 to 2 % a day of an open tank: common practice, no source. 76 x 31 cm, 55 L of water.
TEST(Evaporation, IsWhatKeepersTopUp) {
  const double l_d = evaporation_kg_d({.area_m2 = 0.2356, .water_c = 25, .air_c = 20, .share = evaporates_still});
  EXPECT_GT(l_d, 0.01 * 55);
  EXPECT_LT(l_d, 0.02 * 55);
}

TEST(Evaporation, GrowsWithWarmthDrynessWindAndOpenness) {
  const WetSurface usual{.area_m2 = 0.2, .water_c = 25, .air_c = 20};
  WetSurface warmer = usual, drier = usual, windy = usual, covered = usual, larger = usual;
  warmer.water_c = 26;
  drier.humidity = 0.4;
  windy.air_m_s = 0.3;
  covered.share = evaporates_under_glass;
  larger.area_m2 = 0.4;
  const double usual_kg = evaporation_kg_d(usual);
  EXPECT_GT(evaporation_kg_d(warmer), usual_kg);
  EXPECT_GT(evaporation_kg_d(drier), usual_kg);
  EXPECT_GT(evaporation_kg_d(windy), usual_kg);
  EXPECT_NEAR(evaporation_kg_d(covered), 0.1 * usual_kg, 1e-12);
  EXPECT_NEAR(evaporation_kg_d(larger), 2 * usual_kg, 1e-12);
}

TEST(Evaporation, IsNeverBelowZeroNorAnythingButANumber) {
  EXPECT_EQ(evaporation_kg_d({.area_m2 = 1, .water_c = 10, .air_c = 30, .humidity = 1}), 0);
  EXPECT_EQ(evaporation_kg_d({.area_m2 = 0, .water_c = 25, .air_c = 20}), 0);
  EXPECT_EQ(still_evaporation_kg_m2_h(10, 30, 0.2), 0);  // cold heavy air lies on the water
  Dice dice(1);
  for (int i = 0; i < 2000; ++i) {
    const double water_c = dice.real(0, 50), air_c = dice.real(-30, 60), humidity = dice.real(-0.2, 1.2);
    const double kg_d = evaporation_kg_d({.area_m2 = dice.real(-1, 5), .water_c = water_c, .air_c = air_c, .humidity = humidity});
    const double kg_m2_h = still_evaporation_kg_m2_h(water_c, air_c, humidity);
    EXPECT_TRUE(std::isfinite(kg_d) && kg_d >= 0);
    EXPECT_TRUE(std::isfinite(kg_m2_h) && kg_m2_h >= 0);
  }
}

}  // namespace
}  // namespace shoalwright
