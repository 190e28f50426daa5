// SPDX-License-Identifier: MIT
#include "stocking/development.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/dice.h"

namespace shoalwright {
namespace {

// Kimmel et al. 1995: what takes 19 h at 28.5 degrees C takes 23.6 h at 25 and 15 h at 33; hatching at 48 to 72 h.
TEST(Development, ZebrafishFollowThePublishedExample) {
  EXPECT_NEAR(*zebrafish_development_h(19, 25), 23.6, 0.05);
  EXPECT_NEAR(*zebrafish_development_h(19, 33), 15, 0.3);
  EXPECT_NEAR(*zebrafish_development_h(19, 28.5), 19, 0.1);
  EXPECT_NEAR(*zebrafish_development_h(48, 26), *development_h(48, 28.5, 26, zebrafish_threshold_c), 0.003 * 56);
}

// Neon tetra: 38 to 40 h at 18, 24 to 26 h at 26 degrees C (Journal of the Indian Fisheries Association). Between them the rule
// must stay between them.
TEST(Development, NeonTetraStayBetweenWhatWasMeasured) {
  for (double t = 21; t <= 25; ++t) {
    EXPECT_GT(*development_h(25, 26, t, neon_tetra_threshold_c), 25);
    EXPECT_LT(*development_h(25, 26, t, neon_tetra_threshold_c), 39);
  }
  EXPECT_NEAR(*development_h(39, 18, 24, neon_tetra_threshold_c), *development_h(25, 26, 24, neon_tetra_threshold_c), 0.5);
}

// Angelfish: first hatch after 1288 degree-hours, 46 h at 28 degrees C (Korzelecka-Orkisz et al. 2012).
TEST(Development, AProductOfDegreesAndHoursStaysTheSame) {
  for (double t = 23; t <= 33; ++t) EXPECT_NEAR(*development_h(46, 28, t, product_threshold_c) * t, 1288, 1e-9);
}

TEST(Development, IsQuickerWhereItIsWarmer) {
  for (double t = 20; t < 31.5; t += 0.5) EXPECT_GT(*development_h(30, 26, t), *development_h(30, 26, t + 0.5));
  EXPECT_EQ(*development_h(30, 26, 26), 30);
}

TEST(Development, FarFromTheReferenceThereIsNoAnswer) {
  EXPECT_FALSE(development_h(30, 26, 19.9));
  EXPECT_FALSE(development_h(30, 26, 32.1));
  EXPECT_TRUE(development_h(30, 26, 20));
  EXPECT_TRUE(development_h(30, 26, 32));
  EXPECT_FALSE(development_h(30, 14, 11, 8));  // three degrees over the threshold
  EXPECT_TRUE(development_h(30, 14, 11.1, 8));
  EXPECT_FALSE(development_h(30, 26, NAN));
  EXPECT_FALSE(development_h(-1, 26, 26));
  EXPECT_FALSE(zebrafish_development_h(19, 22));
  EXPECT_FALSE(zebrafish_development_h(19, 35));
}

TEST(Development, AWindowIsAFifthEitherWay) { EXPECT_EQ(development_window_h(50), (Range{40, 60})); }

TEST(Development, WhatIsAnsweredIsANumber) {
  Dice dice(7);
  for (int i = 0; i < 2000; ++i) {
    const auto hours = development_h(dice.real(0, 500), dice.real(0, 40), dice.real(-10, 50), dice.real(-5, 40));
    EXPECT_TRUE(!hours || std::isfinite(*hours));
    const auto zebrafish = zebrafish_development_h(dice.real(0, 500), dice.real(-10, 50));
    EXPECT_TRUE(!zebrafish || std::isfinite(*zebrafish));
  }
}

}  // namespace
}  // namespace shoalwright
