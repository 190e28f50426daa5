// SPDX-License-Identifier: MIT
#include "scape/piece_cells.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <tuple>

#include "support/samples.h"

namespace shoalwright {
namespace {

Piece piece_of(std::string kind, double length_cm, double depth_cm, double height_cm) {
  return {.kind = std::move(kind), .x_cm = 50, .z_cm = 30, .length_cm = length_cm, .depth_cm = depth_cm, .height_cm = height_cm};
}

Plan pool() { return box_plan(100, 60, 60, 60); }

/// Cells of a piece, each once, L.
double cells_l(const PlacedPiece& piece, const TankGrid& grid) {
  std::vector<bool> cells(grid.size.cells());
  for (const CellRun& run : cells_of(piece, grid))
    for (int i = run.first_x; i <= run.last_x; ++i) cells[grid.size.at(i, run.z, run.y)] = true;
  return static_cast<double>(std::count(cells.begin(), cells.end(), true)) * std::pow(grid.cell_cm, 3) / 1000;
}

TEST(PieceCells, HoldTheVolumeOfTheSolidsWithinTwoPercent) {
  const Plan plan = pool();
  for (const PieceKind& kind : piece_kinds()) {
    if (!kind.limbs.empty()) continue;  // their joints count twice in closed form
    // Large enough for the cells to follow its shape.
    const double grown = 24 / std::cbrt(static_cast<double>(kind.length_cm) * kind.depth_cm * kind.height_cm);
    Piece piece = piece_of(std::string(kind.id), kind.length_cm * grown, kind.depth_cm * grown, kind.height_cm * grown);
    piece.turn_deg = 17;
    piece.base_cm = 2;
    const PlacedPiece stands = placed(plan, piece);
    const double reach_cm = std::hypot(piece.length_cm, piece.depth_cm) / 2 + 1,
                 cell_cm = std::min(std::min(piece.length_cm, piece.depth_cm) / 30, piece.height_cm / 60);
    const int wide = static_cast<int>(2 * reach_cm / cell_cm), high = static_cast<int>((piece.height_cm + 1) / cell_cm);
    const TankGrid grid{.size = {wide, wide, high},
                        .cell_cm = cell_cm,
                        .left_cm = 50 - reach_cm,
                        .front_cm = 30 - reach_cm,
                        .floor_cm = stands.foot_cm - 0.07};
    EXPECT_NEAR(cells_l(stands, grid) / solids_l(stands), 1, 0.02) << kind.id;
  }
}

TEST(PieceCells, LimbsHoldTheVolumeOfTheirFrusta) {
  static constexpr LimbPoint line[] = {{-0.5f, -0.3f, 0.1f}, {0.5f, 0.3f, 0.9f}};
  static constexpr Limb limbs[] = {{line, 0.1f, 0.04f}};
  static constexpr PieceKind kind{.limbs = limbs};
  const Plan plan = pool();
  PlacedPiece piece = placed(plan, piece_of("none", 40, 20, 30));
  piece.kind = &kind;
  const double mean = std::sqrt(40.0 * 30), r = 0.1 * mean, s = 0.04 * mean, length = std::hypot(40.0, 12.0, 24.0);
  const double frustum_l = std::numbers::pi * length * (r * r + r * s + s * s) / 3000;
  EXPECT_NEAR(solids_l(piece) / frustum_l, 1, 1e-6);
  EXPECT_NEAR(cells_l(piece, tank_grid_of(plan, 0.5)) / frustum_l, 1, 0.02);
}

TEST(PieceCells, WoodHoldsNearlyWhatItsLimbsSay) {
  const Plan plan = pool();
  for (const PieceKind& kind : piece_kinds()) {
    if (kind.limbs.empty()) continue;
    const PlacedPiece piece = placed(plan, piece_of(std::string(kind.id), 44, 30, 40));
    const double share = cells_l(piece, tank_grid_of(plan, 0.5)) / solids_l(piece);
    EXPECT_GT(share, 0.8) << kind.id;
    EXPECT_LT(share, 1.03) << kind.id;
  }
}

TEST(PieceCells, TurnedAndMirroredPiecesMoveWithTheirAxes) {
  const Plan plan = pool();
  const TankGrid grid = tank_grid_of(plan, 1);
  Piece slab = piece_of("block", 20, 6, 10);
  slab.turn_deg = 90;
  int low_x = 1000, high_x = -1, low_z = 1000, high_z = -1;
  for (const CellRun& run : cells_of(placed(plan, slab), grid)) {
    low_x = std::min(low_x, run.first_x);
    high_x = std::max(high_x, run.last_x);
    low_z = std::min(low_z, run.z);
    high_z = std::max(high_z, run.z);
  }
  EXPECT_EQ(high_x - low_x + 1, 6);
  EXPECT_EQ(high_z - low_z + 1, 20);

  // The same branch in a mirrored tank covers the mirrored cells.
  Piece branch = piece_of("branch", 40, 16, 30), other = branch;
  branch.turn_deg = 20;
  other.turn_deg = -20;
  other.mirror = true;
  other.x_cm = 50;
  std::set<std::tuple<int, int, int>> cells, mirrored;
  for (const CellRun& run : cells_of(placed(plan, branch), grid))
    for (int i = run.first_x; i <= run.last_x; ++i) cells.emplace(i, run.z, run.y);
  for (const CellRun& run : cells_of(placed(plan, other), grid))
    for (int i = run.first_x; i <= run.last_x; ++i) mirrored.emplace(grid.size.x - 1 - i, run.z, run.y);
  EXPECT_EQ(cells, mirrored);
}

TEST(PieceCells, FloatingCoverHangsFromTheWaterLine) {
  Plan plan = pool();
  plan.tank.fill_cm = 40;
  const TankGrid grid = tank_grid_of(plan, 1);
  Piece piece = piece_of("floating-plants", 20, 20, 5);
  piece.base_cm = 3;
  const std::vector<CellRun> runs = cells_of(placed(plan, piece), grid);
  ASSERT_FALSE(runs.empty());
  for (const CellRun& run : runs) {
    EXPECT_GT(grid.y_cm(run.y), 35);
    EXPECT_LT(grid.y_cm(run.y), 40);
  }
}

TEST(PieceCells, ACaveIsHollowAndOpenToTheFront) {
  const Plan plan = pool();
  const TankGrid grid = tank_grid_of(plan, 0.5);
  const PlacedPiece cave = placed(plan, piece_of("cave", 20, 16, 12));
  std::set<std::tuple<int, int, int>> cells;
  for (const CellRun& run : cells_of(cave, grid))
    for (int i = run.first_x; i <= run.last_x; ++i) cells.emplace(i, run.z, run.y);
  const auto cell = [&](double x, double y, double z) {
    return std::tuple{static_cast<int>((x - grid.left_cm) / grid.cell_cm), static_cast<int>((z - grid.front_cm) / grid.cell_cm),
                      static_cast<int>((y - grid.floor_cm) / grid.cell_cm)};
  };
  EXPECT_FALSE(cells.count(cell(50, 3, 30)));  // inside
  EXPECT_FALSE(cells.count(cell(50, 3, 23)));  // the door
  EXPECT_TRUE(cells.count(cell(50, 3, 36)));   // its back
  EXPECT_TRUE(cells.count(cell(50, 10, 30)));  // its roof
}

}  // namespace
}  // namespace shoalwright
