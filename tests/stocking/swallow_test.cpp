// SPDX-License-Identifier: MIT
#include "stocking/swallow.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stocking/body.h"
#include "support/dice.h"

namespace shoalwright {
namespace {

double index(double predator_cm, const char* eater, double prey_cm, double prey_depth_share) {
  return swallow_index(predator_cm, *swallower_of(eater), prey_cm, prey_depth_share);
}

// What keepers see: common practice, no source.
TEST(Swallow, AgreesWithWhatKeepersSee) {
  const double slim = usual_depth_share(Body::fusiform);
  EXPECT_GE(index(12, "opportunist", 3.5, slim), swallow_eaten_from);
  EXPECT_NEAR(index(12, "opportunist", 4.5, slim), 0.88, 0.005);
  EXPECT_NEAR(index(12, "opportunist", 5.5, slim), 0.72, 0.005);
  EXPECT_LT(index(11, "small-mouth", 3.5, slim), swallow_watch_from);
  EXPECT_NEAR(index(20, "micropredator", 3.5, slim), 1.14, 0.005);
  EXPECT_NEAR(index(30, "hunter", 5, slim), 2.76, 0.005);
  EXPECT_NEAR(index(6, "micropredator", 2.5, 0.18), 0.48, 0.005);
  EXPECT_NEAR(index(6, "micropredator", 0.5, 0.18), 2.40, 0.005);
  EXPECT_EQ(index(15, "grazer", 1, slim), 0);
}

// Gaeta et al. 2018: the longest prey is 32 to 46 % of the predator; Mihalitsis & Bellwood 2017: the deepest 20 to 27 %.
TEST(Swallow, AHunterTakesNothingLongerOrDeeperThanWasMeasured) {
  EXPECT_LT(index(20, "hunter", 0.47 * 20, 0.05), swallow_eaten_from);
  EXPECT_LT(index(20, "hunter", 0.28 * 20 / 0.4, 0.4), swallow_eaten_from);
}

TEST(Swallow, FallsAsPreyGrowsAndRisesWithThePredator) {
  for (double prey = 1; prey < 10; prey += 0.5) {
    EXPECT_GT(index(12, "opportunist", prey, 0.25), index(12, "opportunist", prey + 0.5, 0.25));
    EXPECT_LT(index(12, "opportunist", prey, 0.25), index(13, "opportunist", prey, 0.25));
    EXPECT_LE(index(12, "opportunist", prey, 0.40), index(12, "opportunist", prey, 0.25));
  }
}

TEST(Swallow, EveryEaterOfTheCatalogueIsKnownButBiters) {
  for (const char* eater : {"hunter", "opportunist", "micropredator", "small-mouth", "picker", "grazer"})
    EXPECT_TRUE(swallower_of(eater)) << eater;
  EXPECT_FALSE(swallower_of("biter"));
  EXPECT_FALSE(swallower_of(""));
}

TEST(Swallow, WithoutSizeThereIsNothingToSwallow) {
  EXPECT_EQ(index(12, "hunter", 0, 0.25), 0);
  EXPECT_EQ(index(12, "hunter", 3, 0), 0);
  Dice dice(6);
  for (int i = 0; i < 500; ++i) EXPECT_TRUE(std::isfinite(index(dice.real(0, 100), "hunter", dice.real(0, 50), dice.real(0, 1))));
}

}  // namespace
}  // namespace shoalwright
