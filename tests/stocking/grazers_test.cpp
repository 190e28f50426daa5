// SPDX-License-Identifier: MIT
#include "stocking/grazers.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stocking/ground.h"

namespace shoalwright {
namespace {

// Six of 4 cm live on 3840 cm2, and 75 L have about 5230 cm2 of side glass: common practice, no source.
TEST(Grazers, WantSurfaceByTheirLength) {
  EXPECT_EQ(grazed_cm2(6, grazed_bl2(Style::grazer), 4), 3840);
  EXPECT_LT(*grazing_index(3840, grown_share(20), 5230), 1);
  EXPECT_EQ(grazed_bl2(Style::invertebrate), 8);
  EXPECT_EQ(grazed_bl2(Style::bottom_shoal), 0);
}

TEST(Grazers, AYoungTankFeedsFewer) {
  EXPECT_EQ(grown_share(0), 0);
  EXPECT_EQ(grown_share(3.9), 0);
  EXPECT_EQ(grown_share(4), 0.5);
  EXPECT_EQ(grown_share(11.9), 0.5);
  EXPECT_EQ(grown_share(12), 1);
  EXPECT_EQ(grown_share(NAN), 0);
  EXPECT_FALSE(grazing_index(3840, grown_share(2), 5230));
  EXPECT_EQ(*grazing_index(3840, grown_share(6), 5230), 2 * *grazing_index(3840, grown_share(30), 5230));
  EXPECT_FALSE(grazing_index(3840, 1, 0));
}

// Trade books: 38 to 50 cm for a pair of dwarf cichlids, 25 to 30 cm for a brooding female. Common practice, no source.
TEST(Ground, IsAsWideAsTradeBooksTell) {
  EXPECT_GT(ground_across_cm(25, 7), 38);
  EXPECT_LT(ground_across_cm(25, 7), 50);
  EXPECT_GT(ground_across_cm(25, 5), 25);
  EXPECT_LT(ground_across_cm(25, 5), 30);
  EXPECT_EQ(ground_across_cm(0, 5), 0);
  EXPECT_EQ(ground_across_cm(-1, 5), 0);
}

}  // namespace
}  // namespace shoalwright
