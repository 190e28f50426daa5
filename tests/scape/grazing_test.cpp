// SPDX-License-Identifier: MIT
#include "scape/grazing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "support/dice.h"
#include "support/pieces.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

Plan pool() { return box_plan(80, 40, 45, 40); }

GrazingSurface surface_with(Plan plan, std::vector<Piece> pieces) {
  plan.pieces = std::move(pieces);
  Scape scape;
  update(scape, plan);
  return grazing_surface_of(plan, scape);
}

TEST(Grazing, AnEmptyBoxHasThreePanesToTheWaterLine) {
  Plan plan = pool();
  const GrazingSurface bare = surface_with(plan, {});
  EXPECT_NEAR(bare.glass_cm2, 80 * 40 + 2 * 40 * 40, 1e-9);
  EXPECT_EQ(bare.hard_cm2, 0);
  EXPECT_EQ(bare.leaf_cm2, 0);
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = 2;
  plan.substrate.back_cm = 8;
  EXPECT_NEAR(surface_with(plan, {}).glass_cm2, 80 * 32 + 2 * 40 * 35, 1e-9);
  plan.tank.fill_cm = 5;  // the water ends where the sand is as high, in the middle: two triangles 3 cm high
  EXPECT_NEAR(surface_with(plan, {}).glass_cm2, 2 * 20 * 3 / 2.0, 1e-9);
}

TEST(Grazing, OfARoundTankTheFrontIsLeftOut) {
  Plan plan = pool();
  plan.tank.shape = Shape::cylinder;
  plan.tank.diameter_cm = 60;
  const double around_cm2 = std::numbers::pi * 60 * 40, front = 2 * std::acos(0.75) / (2 * std::numbers::pi);
  EXPECT_NEAR(surface_with(plan, {}).glass_cm2 / around_cm2, 1 - front, 0.015);
}

TEST(Grazing, ABlockAddsItsSidesAndItsTop) {
  const double bare_cm2 = surface_with(pool(), {}).glass_cm2;
  const struct { double length_cm, depth_cm, height_cm; } blocks[] = {{20, 20, 20}, {40, 6, 30}, {30, 24, 5}};
  for (const auto& b : blocks)
    for (const double turn_deg : {0.0, 30.0, 45.0}) {
      Piece block = piece_at("block", 41, 20, b.length_cm, b.depth_cm, b.height_cm);
      block.turn_deg = turn_deg;
      const GrazingSurface with = surface_with(pool(), {block});
      const double faces_cm2 = 2 * (b.length_cm + b.depth_cm) * b.height_cm + b.length_cm * b.depth_cm;
      EXPECT_NEAR(with.hard_cm2 / faces_cm2, 1, turn_deg == 0 ? 0.05 : 0.09) << b.length_cm << " turned " << turn_deg;
      EXPECT_EQ(with.glass_cm2, bare_cm2);
      EXPECT_EQ(with.leaf_cm2, 0);
    }
}

TEST(Grazing, LimbsHaveTheSurfaceOfTheirFrusta) {
  static constexpr LimbPoint line[] = {{-0.5f, -0.3f, 0.2f}, {0.5f, 0.3f, 0.8f}};
  static constexpr Limb limbs[] = {{line, 0.14f, 0.08f}};
  static constexpr PieceKind kind{.material = Material::wood, .limbs = limbs};
  const Plan plan = pool();
  // A scape of a kind that is not on the shelf, made cell by cell as update() makes it.
  Scape scape;
  scape.grid = tank_grid_of(plan, 0.8);
  PlacedPiece piece = placed(plan, piece_at("none", 40, 20, 40, 20, 35));
  piece.kind = &kind;
  scape.pieces = {piece};
  scape.runs.resize(1);
  scape.solid.assign(scape.grid.size.cells(), 0);
  Cells taken = scape.grid.taken;
  for (const CellRun& run : cells_of(piece, scape.grid))
    for (int i = run.first_x; i <= run.last_x; ++i) {
      scape.solid[scape.grid.size.at(i, run.z, run.y)] = 1;
      taken[scape.grid.size.at(i, run.z, run.y)] = 1;
    }
  update(scape.distances, scape.grid.size, taken);
  const double mean = std::sqrt(40.0 * 35), r = 0.14 * mean, s = 0.08 * mean, length = std::hypot(40.0, 12.0, 21.0);
  const double frustum_cm2 = std::numbers::pi * ((r + s) * std::hypot(length, r - s) + r * r + s * s);
  EXPECT_NEAR(grazing_surface_of(plan, scape).hard_cm2 / frustum_cm2, 1, 0.08);
}

TEST(Grazing, WhatIsBuriedOrOutOfTheWaterOrAGadgetIsNotGrazed) {
  Plan plan = pool();
  const double whole = surface_with(plan, {piece_at("block", 41, 20, 20, 20, 20)}).hard_cm2;
  Piece high = piece_at("block", 41, 20, 20, 20, 20);
  high.base_cm = 30;  // half of it in the water, no top but the foot
  EXPECT_NEAR(surface_with(plan, {high}).hard_cm2 / (4 * 20 * 10 + 400), 1, 0.06);
  high.base_cm = 45;
  EXPECT_EQ(surface_with(plan, {high}).hard_cm2, 0);
  EXPECT_EQ(surface_with(plan, {piece_at("filter", 41, 20, 10, 10, 30)}).hard_cm2, 0);
  // Two that touch lose the faces between them.
  const double both = surface_with(plan, {piece_at("block", 31, 20, 20, 20, 20), piece_at("block", 51, 20, 20, 20, 20)}).hard_cm2;
  EXPECT_NEAR(2 * whole - both, 2 * 400, 80);
}

TEST(Grazing, MorePlantsHaveMoreLeaf) {
  std::vector<Piece> plants;
  double before = 0;
  for (const double x_cm : {10.0, 25.0, 40.0, 55.0}) {
    plants.push_back(piece_at("stem-plants", x_cm, 20, 12, 10, 25));
    const GrazingSurface with = surface_with(pool(), plants);
    EXPECT_GT(with.leaf_cm2, before);
    EXPECT_EQ(with.hard_cm2, 0);
    before = with.leaf_cm2;
  }
  Piece square = piece_at("carpet-plants", 40, 20, 30, 20, 3);
  const double carpet = surface_with(pool(), {square}).leaf_cm2;
  EXPECT_GT(carpet, 0.7 * leaf_faces * 600);
  EXPECT_LT(carpet, 1.05 * leaf_faces * 600);
  EXPECT_EQ(surface_with(pool(), {piece_at("floating-plants", 40, 20, 24, 18, 5)}).leaf_cm2, 0);
  EXPECT_EQ(surface_with(pool(), {piece_at("mop", 40, 20, 9, 9, 14)}).leaf_cm2, 0);
}

TEST(Grazing, IsTheSameInAMirroredTank) {
  Dice dice(21);
  for (int round = 0; round < 12; ++round) {
    std::vector<Piece> pieces, reflected;
    for (int n = dice.whole(1, 6); n > 0; --n) {
      Piece piece = piece_at(dice.percent(40)   ? "rock"
                             : dice.percent(50) ? "driftwood"
                                                : "fern",
                             dice.real(5, 75), dice.real(4, 36), dice.real(6, 28), dice.real(5, 18), dice.real(5, 34));
      piece.turn_deg = dice.real(-90, 90);
      pieces.push_back(piece);
      reflected.push_back(mirrored(piece, 80));
    }
    const GrazingSurface here = surface_with(pool(), pieces), there = surface_with(pool(), reflected);
    EXPECT_NEAR(here.glass_cm2, there.glass_cm2, 1e-6);
    EXPECT_NEAR(here.hard_cm2, there.hard_cm2, 1e-6);
    EXPECT_NEAR(here.leaf_cm2, there.leaf_cm2, 1e-6);
    EXPECT_GT(here.all_cm2(), here.glass_cm2);
  }
}

}  // namespace
}  // namespace shoalwright
