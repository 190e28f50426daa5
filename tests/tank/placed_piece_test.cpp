// SPDX-License-Identifier: MIT
#include "tank/placed_piece.h"

#include <gtest/gtest.h>

#include "support/samples.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

Piece piece_of(const char* kind, double length_cm, double depth_cm, double height_cm) {
  return {.kind = kind, .length_cm = length_cm, .depth_cm = depth_cm, .height_cm = height_cm};
}

TEST(PieceKinds, EveryKindHasUsualMeasuresAndSolids) {
  for (const PieceKind& kind : piece_kinds()) {
    EXPECT_GT(kind.length_cm * kind.depth_cm * kind.height_cm, 0) << kind.id;
    EXPECT_FALSE(kind.prisms.empty() && kind.limbs.empty()) << kind.id;
    EXPECT_EQ(&piece_kind(kind.id), &kind);
  }
  EXPECT_EQ(piece_kind("no such thing").drawing, PieceDrawing::outlined);
  EXPECT_TRUE(piece_kind("no such thing").solid());
}

TEST(PlacedPiece, DisplacesItsSolidsBelowTheWaterLine) {
  Plan plan = box_plan(60, 30, 40, 30);
  Piece block = piece_of("block", 10, 10, 20);
  block.x_cm = 30;
  block.z_cm = 15;
  EXPECT_NEAR(displaced_l(plan, placed(plan, block)), 2, 1e-9);
  EXPECT_NEAR(piece_mass_kg(placed(plan, block)), 5.3, 1e-6);
  block.base_cm = 20;  // half of it stands out of the water
  EXPECT_NEAR(displaced_l(plan, placed(plan, block)), 1, 1e-9);
  block.base_cm = 31;
  EXPECT_EQ(displaced_l(plan, placed(plan, block)), 0);
}

TEST(PlacedPiece, APrismThatTapersIsAFrustum) {
  // Base 10 x 10, top half as wide: h/3 (A + a + sqrt(A a)).
  static constexpr Spot corners[] = {{-0.5f, -0.5f}, {0.5f, -0.5f}, {0.5f, 0.5f}, {-0.5f, 0.5f}};
  static constexpr Prism prism[] = {{.outline = corners, .top = 0.5f}};
  static constexpr PieceKind kind{.prisms = prism};
  const Plan plan = box_plan(60, 30, 40, 30);
  PlacedPiece piece = placed(plan, piece_of("block", 10, 10, 12));
  piece.kind = &kind;
  EXPECT_NEAR(solids_l(piece), 12.0 / 3 * (100 + 25 + 50) / 1000, 1e-9);
}

TEST(Volume, PiecesTakeWaterAndBringTheirWeight) {
  Plan plan = box_plan(60, 30, 40, 30);
  const Volume bare = volume_of(plan);
  plan.pieces = {piece_of("block", 10, 10, 20)};
  const Volume with = volume_of(plan);
  EXPECT_NEAR(with.pieces_l, 2, 1e-9);
  EXPECT_NEAR(with.net_l, bare.net_l - 2, 1e-9);
  EXPECT_NEAR(with.filled_mass_kg, bare.filled_mass_kg + 2 * (2.65 - 0.997), 0.01);
}

TEST(WithPlaces, PutsPiecesWhereThereIsRoomFromTheBackLeft) {
  Plan plan = box_plan(60, 30, 40, 30);
  plan.pieces = {piece_of("block", 20, 10, 5), piece_of("block", 20, 10, 5), piece_of("block", 20, 10, 5),
                 piece_of("block", 20, 10, 5)};
  const std::vector<Piece> put = with_places(plan);
  EXPECT_EQ(put[0].x_cm, 10);
  EXPECT_EQ(put[0].z_cm, 25);
  EXPECT_EQ(put[1].x_cm, 30);
  EXPECT_EQ(put[2].x_cm, 50);
  EXPECT_EQ(put[3].x_cm, 10);  // the next row
  EXPECT_EQ(put[3].z_cm, 15);
}

TEST(WithPlaces, LeavesPlacedPiecesAloneAndGoesAroundThem) {
  Plan plan = box_plan(60, 30, 40, 30);
  Piece stands = piece_of("block", 20, 10, 5);
  stands.x_cm = 12;
  stands.z_cm = 24;
  plan.pieces = {piece_of("block", 20, 10, 5), stands, piece_of("floating-plants", 20, 10, 5)};
  const std::vector<Piece> put = with_places(plan);
  EXPECT_EQ(put[1], stands);
  EXPECT_GE(*put[0].x_cm, 32);
  EXPECT_EQ(put[2].x_cm, 10);  // at the surface nothing is in its way
}

TEST(WithPlaces, WhereThereIsNoRoomTheyStandInTheBackLeftCorner) {
  Plan plan = box_plan(30, 30, 40, 30);
  plan.pieces.assign(3000, piece_of("block", 28, 28, 5));
  for (const Piece& piece : with_places(plan)) {
    EXPECT_NEAR(*piece.x_cm, 14, 0.51);
    EXPECT_NEAR(*piece.z_cm, 16, 0.51);
  }
  plan.pieces = {piece_of("block", 90, 90, 5)};
  EXPECT_EQ(with_places(plan)[0].x_cm, 15);
}

}  // namespace
}  // namespace shoalwright
