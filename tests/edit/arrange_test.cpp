// SPDX-License-Identifier: MIT
#include "edit/arrange.h"

#include <gtest/gtest.h>

#include "catalog/piece_kind.h"
#include "support/dice.h"
#include "support/samples.h"
#include "tank/placed_piece.h"

namespace shoalwright {
namespace {

Plan tank() { return box_plan(80, 40, 40, 36); }

Piece block(double x_cm, double z_cm) {
  return {.kind = "block", .x_cm = x_cm, .z_cm = z_cm, .length_cm = 20, .depth_cm = 10, .height_cm = 8};
}

TEST(Arrange, AMovedPieceLiesOnTheGridAndByAKeyWhereTheHandPutsIt) {
  EXPECT_EQ(shifted(tank(), block(40, 20), {3.3, 1.1, 0}, Snap::grid).x_cm, 43.5);
  EXPECT_EQ(shifted(tank(), block(40, 20), {3.3, 1.1, 0}, Snap::grid).z_cm, 21);
  EXPECT_NEAR(*shifted(tank(), block(40, 20), {3.3, 1.1, 0}, Snap::none).x_cm, 43.3, 1e-9);
}

TEST(Arrange, GlassAndSubstrateDrawAPieceToThem) {
  EXPECT_EQ(shifted(tank(), block(40, 20), {-29, 0, 0}, Snap::grid).x_cm, 10);   // 1 cm from the left pane
  EXPECT_EQ(shifted(tank(), block(40, 20), {0, 14.2, 0}, Snap::grid).z_cm, 35);  // and from the back pane
  EXPECT_NEAR(*shifted(tank(), block(40, 20), {-29, 0, 0}, Snap::none).x_cm, 11, 1e-9);
  EXPECT_EQ(shifted(tank(), block(40, 20), {0, 0, 1}, Snap::grid).base_cm, 0);
  EXPECT_EQ(shifted(tank(), block(40, 20), {0, 0, 6.2}, Snap::grid).base_cm, 6);
}

TEST(Arrange, APieceStaysInTheTankHoweverFarItIsMoved) {
  Dice dice(4);
  for (int round = 0; round < 200; ++round) {
    Piece piece = block(40, 20);
    piece.turn_deg = dice.whole(0, 359);
    const Piece moved =
        shifted(tank(), piece, {dice.whole(-300, 300) / 1.7, dice.whole(-300, 300) / 1.3, dice.whole(-90, 90) / 1.1},
                dice.percent(50) ? Snap::grid : Snap::none);
    const HalfReach reach = half_reach_of(moved);
    EXPECT_GE(*moved.x_cm - reach.x_cm, -0.06);
    EXPECT_LE(*moved.x_cm + reach.x_cm, 80.06);
    EXPECT_GE(*moved.z_cm - reach.z_cm, -0.06);
    EXPECT_LE(*moved.z_cm + reach.z_cm, 40.06);
    EXPECT_LT(moved.base_cm, 40);
  }
}

TEST(Arrange, PulledAtOneEndTheOtherEndStays) {
  Piece piece = block(40, 20);
  piece.turn_deg = 90;  // its right end looks to the back
  const Piece longer = lengthened(tank(), piece, 6, 1, Snap::grid);
  EXPECT_EQ(longer.length_cm, 26);
  EXPECT_NEAR(*longer.z_cm, 23, 0.06);
  EXPECT_NEAR(*longer.x_cm, 40, 0.06);
  EXPECT_NEAR(*longer.z_cm - longer.length_cm / 2, 10, 0.06);
  const Piece deeper = deepened(tank(), block(40, 20), 4, -1, Snap::grid);
  EXPECT_EQ(deeper.depth_cm, 14);
  EXPECT_NEAR(*deeper.z_cm + deeper.depth_cm / 2, 25, 0.06);
  EXPECT_EQ(lengthened(tank(), block(40, 20), -90, 1, Snap::grid).length_cm, 0.5);
  EXPECT_EQ(heightened(tank(), block(40, 20), 500, Snap::grid).height_cm, 40);
}

TEST(Arrange, TurnsStayWithinAWholeTurn) {
  EXPECT_EQ(turned(block(40, 20), -15).turn_deg, 345);
  EXPECT_EQ(turned(turned(block(40, 20), 350), 15).turn_deg, 5);
}

TEST(Arrange, AUsualPieceFitsASmallTank) {
  for (const PieceKind& kind : piece_kinds()) {
    const Plan cube = box_plan(25, 25, 25, 22);
    const Piece piece = usual_piece_at(cube, std::string(kind.id), 12, 12);
    EXPECT_LE(piece.length_cm, 25) << kind.id;
    EXPECT_LE(piece.depth_cm, 25) << kind.id;
    EXPECT_LE(piece.height_cm, 22) << kind.id;
    EXPECT_GT(piece.length_cm, 0) << kind.id;
    const Piece large = usual_piece_at(box_plan(150, 60, 60, 56), std::string(kind.id), 75, 30);
    EXPECT_NEAR(large.length_cm, kind.length_cm, 0.26) << kind.id;
  }
}

TEST(Arrange, TheSameAgainLiesBesideIt) {
  const Piece other = again(tank(), block(40, 20)), edge = again(tank(), block(70, 20));
  EXPECT_NE(other.x_cm, 40);
  EXPECT_NE(edge.x_cm, 70);
  EXPECT_EQ(other.length_cm, 20);
}

}  // namespace
}  // namespace shoalwright
