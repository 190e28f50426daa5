// SPDX-License-Identifier: MIT
#include "scape/sight.h"

#include <gtest/gtest.h>

#include "support/dice.h"
#include "support/pieces.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

Scape scape_with(std::vector<Piece> pieces) {
  Plan plan = box_plan(80, 30, 40, 37);
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = 3;
  plan.substrate.back_cm = 6;
  plan.pieces = std::move(pieces);
  Scape scape;
  update(scape, plan);
  return scape;
}

constexpr TankPoint left{10, 8, 15}, right{70, 8, 15};

TEST(Sight, NothingIsHiddenInAnOpenTank) {
  EXPECT_TRUE(sees(scape_with({}), left, right));
  // A stone in the corner makes cells, and is in nobody's way.
  const Scape scape = scape_with({piece_at("block", 75, 25, 6, 6, 10)});
  EXPECT_TRUE(sees(scape, left, right));
  EXPECT_TRUE(sees(scape, {1, 36, 1}, {79, 8, 1}));
}

TEST(Sight, ASlabBetweenHidesAndALowStoneIsLookedOver) {
  const Scape slab = scape_with({piece_at("block", 40, 15, 4, 29, 30)});
  EXPECT_FALSE(sees(slab, left, right));
  EXPECT_TRUE(sees(slab, left, {30, 8, 5}));
  const Scape low = scape_with({piece_at("block", 40, 15, 10, 29, 6)});  // from 4.5 to 10.5 cm
  EXPECT_FALSE(sees(low, left, right));
  EXPECT_TRUE(sees(low, {10, 13, 15}, {70, 13, 15}));
  EXPECT_FALSE(sees(low, {10, 16, 15}, {70, 5.5, 15}));  // 9.9 over its right edge
  EXPECT_TRUE(sees(low, {10, 20, 15}, {70, 8, 15}));
}

TEST(Sight, TheSubstrateHidesAndAClosedSpotSeesNothing) {
  const Scape scape = scape_with({piece_at("block", 75, 25, 6, 6, 10)});
  EXPECT_FALSE(sees(scape, {10, 5.2, 2}, {10, 5.2, 28}));  // 5.8 cm of sand there
  EXPECT_TRUE(sees(scape, {10, 7.5, 2}, {10, 7.5, 28}));
  EXPECT_FALSE(sees(scape, {75, 10, 25}, {75, 10, 25}));
  EXPECT_TRUE(sees(scape, left, left));
}

TEST(Sight, AThicketHidesWhereItIsDeepEnough) {
  EXPECT_TRUE(sees(scape_with({piece_at("stem-plants", 40, 15, 5, 20, 30)}), left, right));
  EXPECT_FALSE(sees(scape_with({piece_at("stem-plants", 40, 15, 9, 20, 30)}), left, right));
  // Two thin ones count together.
  EXPECT_FALSE(
      sees(scape_with({piece_at("stem-plants", 30, 15, 5, 20, 30), piece_at("stem-plants", 50, 15, 5, 20, 30)}), left, right));
}

TEST(Sight, IsMutualAndMirroredWithTheTank) {
  Dice dice(5);
  int hidden = 0, seen = 0;
  for (int round = 0; round < 30; ++round) {
    std::vector<Piece> pieces, reflected;
    for (int n = dice.whole(1, 5); n > 0; --n) {
      Piece piece = piece_at(dice.percent(50) ? "stone" : "stem-plants", dice.real(5, 75), dice.real(4, 26), dice.real(5, 25),
                             dice.real(4, 16), dice.real(5, 30));
      piece.turn_deg = dice.real(-90, 90);
      pieces.push_back(piece);
      reflected.push_back(mirrored(piece, 80));
    }
    const Scape scape = scape_with(std::move(pieces)), other = scape_with(std::move(reflected));
    for (int pair = 0; pair < 60; ++pair) {
      // Half of them on round measures, where lines run along the faces of cells.
      const auto measure = [&](double low, double high) {
        const double at = dice.real(low, high);
        return pair % 2 ? at : static_cast<double>(static_cast<int>(at));
      };
      const TankPoint a{measure(1, 79), measure(7, 30), measure(1, 29)}, b{measure(1, 79), measure(7, 30), measure(1, 29)};
      const bool mutual = sees(scape, a, b);
      EXPECT_EQ(mutual, sees(scape, b, a));
      EXPECT_EQ(mutual, sees(other, {80 - a.x_cm, a.y_cm, a.z_cm}, {80 - b.x_cm, b.y_cm, b.z_cm}));
      ++(mutual ? seen : hidden);
    }
  }
  EXPECT_GT(hidden, 200);
  EXPECT_GT(seen, 200);
}

}  // namespace
}  // namespace shoalwright
