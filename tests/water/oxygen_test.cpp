// SPDX-License-Identifier: MIT
#include "water/oxygen.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace shoalwright {
namespace {

TEST(Oxygen, SaturationIsWhatTheStandardTablesPrint) {
  struct {
    double c, mg_l;
  } const printed[] = {{0, 14.621}, {5, 12.770}, {10, 11.288}, {15, 10.084}, {20, 9.092}, {25, 8.263},
                       {28, 7.827}, {30, 7.559}, {35, 6.949},  {40, 6.412}};  // Standard Methods 4500-O, from memory
  for (const auto& row : printed) EXPECT_NEAR(oxygen_saturation_mg_l(row.c), row.mg_l, 0.002) << row.c;
  EXPECT_NEAR(oxygen_saturation_mg_l(16), 9.87, 0.006);  // EN 25814 (ISO 5814)
  EXPECT_NEAR(oxygen_saturation_mg_l(21), 8.91, 0.006);
}

TEST(Oxygen, WarmthAndHeightTakeIt) {
  for (double c = 1; c <= 40; ++c) EXPECT_LT(oxygen_saturation_mg_l(c), oxygen_saturation_mg_l(c - 1)) << c;
  for (double atm = 0.55; atm <= 1.1; atm += 0.05)
    EXPECT_GT(oxygen_saturation_mg_l(25, atm), oxygen_saturation_mg_l(25, atm - 0.05)) << atm;
  for (double m = -500; m <= 11000; m += 500) EXPECT_LT(pressure_at_altitude_atm(m), pressure_at_altitude_atm(m - 500)) << m;
}

// The factor for pressure in the form that Standard Methods print (from memory), with the vapour pressure of steam tables.
TEST(Oxygen, PressureCountsWithoutTheVapour) {
  const double vapour_atm = 3.169 / 101.325, theta = 6.59e-4;  // at 25 degrees C
  for (const double p : {0.5, 0.7, 0.9, 1.1}) {
    const double factor = p * (1 - vapour_atm / p) * (1 - theta * p) / ((1 - vapour_atm) * (1 - theta));
    EXPECT_NEAR(oxygen_saturation_mg_l(25, p) / oxygen_saturation_mg_l(25, 1), factor, 3e-5) << p;
  }
}

TEST(Oxygen, PressureOfTheStandardAtmosphere) {
  EXPECT_DOUBLE_EQ(pressure_at_altitude_atm(0), 1);
  EXPECT_NEAR(pressure_at_altitude_atm(5000) * 1013.25, 540.2, 0.3);  // hPa; ISO 2533, from memory
  EXPECT_NEAR(pressure_at_altitude_atm(11000) * 1013.25, 226.3, 0.3);
}

TEST(Oxygen, PercentIsOfSaturation) {
  EXPECT_NEAR(oxygen_percent(oxygen_saturation_mg_l(23, 0.93), 23, 0.93), 100, 1e-9);
  EXPECT_EQ(oxygen_percent(0, 25), 0);
  EXPECT_EQ(oxygen_percent(-1, 25), 0);
}

TEST(Oxygen, OutsideItsRangeTheNearerEdgeAnswers) {
  EXPECT_EQ(oxygen_saturation_mg_l(-5), oxygen_saturation_mg_l(0));
  EXPECT_EQ(oxygen_saturation_mg_l(60), oxygen_saturation_mg_l(40));
  EXPECT_EQ(oxygen_saturation_mg_l(25, 0.1), oxygen_saturation_mg_l(25, 0.5));
  EXPECT_EQ(oxygen_saturation_mg_l(25, 3), oxygen_saturation_mg_l(25, 1.1));
  EXPECT_EQ(pressure_at_altitude_atm(50000), pressure_at_altitude_atm(11000));
  EXPECT_TRUE(oxygen_valid(0, 1.1) && oxygen_valid(40, 0.5));
  EXPECT_FALSE(oxygen_valid(41, 1) || oxygen_valid(25, 0.4) || oxygen_valid(NAN, 1) || oxygen_valid(25, NAN));
  const double odd[] = {NAN, std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), 1e300, -1e300};
  for (const double x : odd)
    for (const double y : odd) {
      EXPECT_GT(oxygen_saturation_mg_l(x, y), 0);
      EXPECT_GT(pressure_at_altitude_atm(x), 0);
    }
}

// USEPA 1975: 4.57 mg for each mg of nitrogen.
TEST(Oxygen, NitrificationTakesFourAndAHalfTimesTheNitrogen) {
  EXPECT_NEAR(oxygen_for_nitrification_mg(1), 4.57, 0.002);
  EXPECT_DOUBLE_EQ(oxygen_for_nitrification_mg(3), 3 * oxygen_for_nitrification_mg(1));
}

}  // namespace
}  // namespace shoalwright
