// SPDX-License-Identifier: MIT
#include "scape/tank_grid.h"

#include <gtest/gtest.h>

#include <array>

#include "scape/regions.h"
#include "scape/straight_run.h"
#include "support/samples.h"
#include "tank/open_water.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

constexpr Shape all_shapes[] = {Shape::rectangular,      Shape::bow_front, Shape::cylinder,        Shape::half_cylinder,
                                Shape::quarter_cylinder, Shape::hexagon,   Shape::pentagon_corner, Shape::prism};

/// An ordinary tank of each shape with a slope of gravel.
Plan plan_of(Shape shape) {
  Plan plan = box_plan(88.4, 43.4, 44.2, 41.7);
  plan.tank.shape = shape;
  plan.tank.bow_cm = 10;
  plan.tank.diameter_cm = 80;
  plan.tank.side_cm = shape == Shape::hexagon ? 30 : 60;
  plan.tank.front_cm = 25;
  plan.tank.outline_cm = {{5, 5}, {85, 5}, {85, 45}, {35, 65}, {5, 50}};
  plan.substrate.kind = SubstrateKind::smooth_gravel;
  plan.substrate.front_cm = 4;
  plan.substrate.back_cm = 7;
  return plan;
}

TEST(TankGrid, HoldsTheWaterOfEveryShapeWithinTwoPercent) {
  for (const Shape shape : all_shapes) {
    const Plan plan = plan_of(shape);
    const double exact_l = open_water_below_l(plan, plan.tank.fill_cm);
    ASSERT_GT(exact_l, 20) << int(shape);
    EXPECT_NEAR(open_l(tank_grid_of(plan, cell_size_cm(plan))) / exact_l, 1, 0.02) << int(shape);
    EXPECT_NEAR(open_l(tank_grid_of(plan, 0.25)) / exact_l, 1, 0.02) << int(shape);
  }
}

TEST(TankGrid, HoldsTheWaterOfTanksFromNanoToRoomSizeWithinTwoPercent) {
  for (const auto& [length, width, height] : {std::array{30.0, 20.0, 25.0},
                                              {48.8, 29.4, 29.4},
                                              {58.8, 28.8, 29.4},
                                              {78.8, 33.8, 39.4},
                                              {88.4, 43.4, 44.2},
                                              {118, 38, 49},
                                              {148, 58, 58.5},
                                              {240, 70, 70}})
    for (const double substrate : {0.0, 3.0, 5.5}) {
      Plan plan = box_plan(length, width, height, height - 2.5);
      plan.substrate.kind = SubstrateKind::fine_sand;
      plan.substrate.front_cm = plan.substrate.back_cm = substrate;
      EXPECT_NEAR(open_l(tank_grid_of(plan, cell_size_cm(plan))) / open_water_below_l(plan, plan.tank.fill_cm), 1, 0.02)
          << length << " cm, substrate " << substrate;
    }
}

TEST(TankGrid, IsOnePieceOfWaterClosedOnAllSides) {
  for (const Shape shape : all_shapes) {
    const TankGrid grid = tank_grid_of(plan_of(shape), 1);
    Cells open = grid.taken;
    for (std::uint8_t& cell : open) cell = cell ? 0 : 1;
    EXPECT_EQ(regions_of(grid.size, open).cells.size(), 1u) << int(shape);
    for (int j = 0; j < grid.size.y; ++j)
      for (int k = 0; k < grid.size.z; ++k)
        for (int i = 0; i < grid.size.x; ++i) {
          if (i > 0 && k > 0 && j > 0 && i + 1 < grid.size.x && k + 1 < grid.size.z && j + 1 < grid.size.y) continue;
          ASSERT_EQ(grid.taken[grid.size.at(i, k, j)], 1) << int(shape);
        }
  }
}

TEST(TankGrid, ASlopeTakesMoreAtTheBack) {
  const TankGrid grid = tank_grid_of(plan_of(Shape::rectangular), 1);
  const auto ground = [&](int k) {
    int cells = 0;
    for (int j = 1; j + 1 < grid.size.y; ++j) cells += grid.taken[grid.size.at(40, k, j)];
    return cells;
  };
  EXPECT_NEAR(ground(1), 4, 1);
  EXPECT_NEAR(ground(grid.size.z - 2), 7, 1);
}

TEST(TankGrid, CellsAreACentimetreUntilATankIsTooLarge) {
  EXPECT_NEAR(cell_size_cm(plan_of(Shape::rectangular)), 1, 0.15);
  const Plan pool = box_plan(1500, 1500, 400, 390);
  const TankGrid grid = tank_grid_of(pool, cell_size_cm(pool));
  EXPECT_LT(static_cast<double>(grid.size.cells()), 1.5 * most_grid_cells);
}

TEST(TankGrid, TheRunOfAnEmptyTankIsThatOfItsOutlineOrLonger) {
  // The outline's own run leaves out runs from corner to corner.
  for (const Shape shape : all_shapes) {
    const Plan plan = plan_of(shape);
    const TankGrid grid = tank_grid_of(plan, 1);
    const int j = grid.size.y / 2;
    SwimSlice slice{.x = grid.size.x, .z = grid.size.z};
    for (int k = 0; k < grid.size.z; ++k)
      for (int i = 0; i < grid.size.x; ++i) slice.ways.push_back(grid.taken[grid.size.at(i, k, j)] ? Way::closed : Way::clear);
    const auto run = longest_straight_run(slice);
    ASSERT_TRUE(run);
    EXPECT_GT(run->length, longest_run_cm(inside_outline(plan.tank)) - 1.5) << int(shape);
  }
}

TEST(TankGrid, WhereMeasuresSpanNoTankThereAreNoCells) {
  Plan plan = box_plan(0, 30, 30, 25);
  EXPECT_EQ(tank_grid_of(plan, 1).size.cells(), 0u);
  plan = box_plan(60, 30, 30, 0);
  EXPECT_EQ(tank_grid_of(plan, 1).size.cells(), 0u);
}

}  // namespace
}  // namespace shoalwright
