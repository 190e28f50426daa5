// SPDX-License-Identifier: MIT
#include "stocking/food.h"

#include <gtest/gtest.h>

#include <cmath>

namespace shoalwright {
namespace {

// A tenth of a gram of flake has the dry matter of nearly a gram of frozen bloodworm: common practice, no source.
TEST(Food, FrozenWeighsMoreForTheSameDryMatter) {
  EXPECT_NEAR(frozen_for_dry_g(0.1), 0.93, 1e-12);
  EXPECT_GT(frozen_for_dry_g(0.1, 0.93, 0.06), frozen_for_dry_g(0.1, 0.93, 0.14));
  EXPECT_EQ(frozen_for_dry_g(0.1, 0.93, 0), 0);
  EXPECT_NEAR(frozen_for_dry_g(0.35, 0.35, 0.35), 0.35, 1e-12);
}

// A tetra of 3.5 cm with a mouth of 7 % of its length takes pellets of about 1 mm: common practice, no source.
TEST(Food, PelletsFitTheMouth) {
  const double gape = gape_mm(0.07, 3.5);
  EXPECT_NEAR(gape, 2.45, 1e-12);
  EXPECT_NEAR(pellet_mm(gape), 0.98, 1e-12);
  EXPECT_LT(accepted_pellet_mm(gape).low, pellet_mm(gape));
  EXPECT_GT(accepted_pellet_mm(gape).high, pellet_mm(gape));
}

// Turbot larvae choose prey of 0.40 +- 0.04 of the width of their mouth (Cunha & Planas 1999, authors from memory).
TEST(Food, FirstFoodIsTwoFifthsOfTheMouth) {
  EXPECT_NEAR(first_food_um(200), 80, 1e-12);
  EXPECT_LT(accepted_first_food_um(200).low, 0.36 * 200);
  EXPECT_GT(accepted_first_food_um(200).high, 0.44 * 200);
  // Newly hatched brine shrimp are 150 to 200 micrometres wide (from memory): mouths of 400 and more take them.
  EXPECT_GE(accepted_first_food_um(400).high, 200);
  EXPECT_LT(accepted_first_food_um(200).high, 150);
}

}  // namespace
}  // namespace shoalwright
