// SPDX-License-Identifier: MIT
#include "water/media.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "support/dice.h"

namespace shoalwright {
namespace {

// Zhu & Chen 1999 at 27.2 degrees C.
TEST(Media, AFilmTakesUpNothingBelowItsThresholdAndEverMoreAbove) {
  EXPECT_EQ(film_uptake_mg_m2_d(0.07), 0);
  EXPECT_EQ(film_uptake_mg_m2_d(0), 0);
  EXPECT_EQ(film_uptake_mg_m2_d(-1), 0);
  EXPECT_NEAR(film_uptake_mg_m2_d(2.07), 1859 / 2.0, 1e-9);  // half its greatest
  for (double tan = 0.1; tan < 10; tan += 0.1) EXPECT_GT(film_uptake_mg_m2_d(tan + 0.1), film_uptake_mg_m2_d(tan));
  EXPECT_LT(film_uptake_mg_m2_d(1000), 1859);
}

TEST(Media, WarmthHelpsByAFewPercentADegree) {  // Zhu & Chen 2002: about 4.3 %
  EXPECT_NEAR(film_temperature_factor(27.2), 1, 1e-12);
  EXPECT_NEAR(film_temperature_factor(21) / film_temperature_factor(20), 1.043, 1e-12);
  EXPECT_EQ(film_temperature_factor(60), film_temperature_factor(30));
  EXPECT_EQ(film_temperature_factor(NAN), film_temperature_factor(5));
}

TEST(Media, WhatIsNeededTakesUpJustTheLoad) {
  Dice dice(61);
  for (int i = 0; i < 200; ++i) {
    const double n = dice.real(0, 200), tan = dice.real(0.08, 2), left = dice.real(0.1, 1), m2_m3 = dice.real(100, 1500);
    const double litres = *media_needed_l(*film_needed_m2(n, tan, left), m2_m3);
    EXPECT_NEAR(media_uptake_mg_d(litres, m2_m3, tan, left), n, 1e-9);
  }
}

TEST(Media, MudAsksForMore) {
  EXPECT_NEAR(*film_needed_m2(30, film_target_tan_mg_l, film_left_by_mud), 2 * *film_needed_m2(30, film_target_tan_mg_l, 1),
              1e-12);
}

TEST(Media, NoSurfaceHoldsWhatNoFilmTakesUp) {
  EXPECT_FALSE(film_needed_m2(30, 0.07, 1));
  EXPECT_FALSE(film_needed_m2(30, 0.2, 0));
  EXPECT_FALSE(film_needed_m2(30, NAN, 1));
  EXPECT_FALSE(media_needed_l(1, 0));
  EXPECT_EQ(film_needed_m2(-1, 0.2, 1), 0);
  EXPECT_EQ(media_uptake_mg_d(-1, 500, 0.2, 1), 0);
}

// Surface over volume of one ball, in the share of the bed that balls fill.
TEST(Media, ABedOfBallsHasTheSurfaceOfItsBalls) {
  const double radius_m = 0.002, ball_m2 = 4 * std::numbers::pi * radius_m * radius_m;
  const double ball_m3 = ball_m2 * radius_m / 3;
  EXPECT_NEAR(*round_grains_m2_m3(4, 0.4), 0.6 / ball_m3 * ball_m2, 1e-9);
  EXPECT_EQ(round_grains_m2_m3(4, 1), 0);
  EXPECT_EQ(round_grains_m2_m3(4, 7), 0);
  EXPECT_FALSE(round_grains_m2_m3(0, 0.4));
}

}  // namespace
}  // namespace shoalwright
