// SPDX-License-Identifier: MIT
#include "stocking/body.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

// Worked from the priors of Froese, Thorson & Reyes 2014.
TEST(BodyMass, FollowsThePublishedPriors) {
  EXPECT_NEAR(body_mass_g(Body::fusiform, 4.5), 1.08584, 0.005 * 1.08584);
  EXPECT_NEAR(body_mass_g(Body::elongated, 4.5), 0.424642, 0.005 * 0.424642);
  EXPECT_NEAR(body_mass_g(Body::short_deep, 6.0), 4.38768, 0.005 * 4.38768);
  EXPECT_NEAR(body_mass_g(Body::eel, 10.0), 1.1749, 0.005 * 1.1749);
  EXPECT_NEAR(body_mass_g(Body::unknown, 3.5), 0.450782, 0.005 * 0.450782);
  EXPECT_NEAR(body_mass_band_g(Body::fusiform, 4.5).low, 0.497377, 0.01 * 0.497377);
  EXPECT_NEAR(body_mass_band_g(Body::short_deep, 5.0).high, 5.58341, 0.01 * 5.58341);
}

// Lemos et al. 2015, Biota Amazonia 5(4): 22-26, Paracheirodon axelrodi in its natural habitat.
TEST(BodyMass, TakesASpeciesOwnRelation) { EXPECT_NEAR(body_mass_g(0.014, 2.528, 2.5), 0.141945, 0.0015); }

TEST(BodyMass, IsNothingWithoutALength) {
  EXPECT_EQ(body_mass_g(Body::fusiform, 0), 0);
  EXPECT_EQ(body_mass_g(Body::fusiform, -3), 0);
}

}  // namespace
}  // namespace shoalwright
