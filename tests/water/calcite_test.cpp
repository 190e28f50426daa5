// SPDX-License-Identifier: MIT
#include "water/calcite.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace shoalwright {
namespace {

TEST(Calcite, IndexIsWhatPhreeqcFinds) {  // PHREEQC 3 (US Geological Survey), phreeqc.dat
  EXPECT_NEAR(*calcite_index({.temperature_c = 20, .kh_dkh = 8, .gh_dgh = 16}, 0.75, 7.732, 5), 0.3247, 0.08);
  EXPECT_NEAR(*calcite_index({.temperature_c = 25, .kh_dkh = 4, .gh_dgh = 8}, 0.75, 7.416, 5), -0.4472, 0.08);
}

TEST(Calcite, RisesWithPhWarmthAndCalcium) {
  const CarbonateWater water{.temperature_c = 25, .kh_dkh = 6, .gh_dgh = 10};
  for (double ph = 6; ph < 9; ph += 0.5)
    EXPECT_NEAR(*calcite_index(water, 0.75, ph + 0.5, 5) - *calcite_index(water, 0.75, ph, 5), 1, 1e-9);  // CO2 held
  EXPECT_NEAR(*calcite_index(water, 1, 7, 5) - *calcite_index(water, 0.1, 7, 5), 1, 1e-9);
  // A heater: the same water with the pH that its CO2 gives it when warm.
  CarbonateWater warm = water;
  warm.temperature_c = 45;
  EXPECT_GT(*calcite_index(warm, 0.75, ph_with_co2(warm, 5), 5), *calcite_index(water, 0.75, ph_with_co2(water, 5), 5));
}

TEST(Calcite, NoIndexWithoutCalciumOrCarbon) {
  const CarbonateWater water{.temperature_c = 25, .kh_dkh = 6, .gh_dgh = 10};
  EXPECT_FALSE(calcite_index(water, 0, 7, 5));
  EXPECT_FALSE(calcite_index(water, 0.75, 7, 0));
  EXPECT_FALSE(calcite_index({.temperature_c = 25, .kh_dkh = 6, .gh_dgh = 0}, 0.75, 7, 5));
  EXPECT_FALSE(calcite_index(water, NAN, 7, 5));
  EXPECT_EQ(calcite_index(water, 3, 99, 1e9), calcite_index(water, 1, 12, 3500));
  EXPECT_TRUE(std::isfinite(*calcite_index({.temperature_c = NAN, .kh_dkh = NAN, .gh_dgh = 1e300}, 1, NAN, 5)));
}

}  // namespace
}  // namespace shoalwright
