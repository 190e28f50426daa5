// SPDX-License-Identifier: MIT
// The bed under a drawn terrain line: closed forms by hand, and counting where there are none.
#include "tank/terrain.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "plan/check.h"
#include "support/pieces.h"
#include "support/samples.h"
#include "tank/detail/bed.h"
#include "tank/materials.h"
#include "tank/open_water.h"
#include "tank/outline.h"
#include "tank/placed_piece.h"

namespace shoalwright {
namespace {

using Line = std::vector<LinePoint>;

constexpr Shape all_shapes[] = {Shape::rectangular,      Shape::bow_front, Shape::cylinder,        Shape::half_cylinder,
                                Shape::quarter_cylinder, Shape::hexagon,   Shape::pentagon_corner, Shape::prism};

Plan bedded(Shape shape, double front_cm, double back_cm, Line line) {
  Plan plan = box_plan(0, 0, 44.2, 41.5);
  Tank& t = plan.tank;
  t.shape = shape;
  switch (shape) {
    case Shape::bow_front: t.bow_cm = 10; [[fallthrough]];
    case Shape::rectangular: t.length_cm = 88.4, t.width_cm = 43.4; break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: t.diameter_cm = 80; break;
    case Shape::pentagon_corner: t.front_cm = 25; [[fallthrough]];
    case Shape::hexagon: t.side_cm = 60; break;
    case Shape::prism: t.outline_cm = {{0, 0}, {80, 0}, {80, 40}, {30, 60}, {0, 45}}; break;
  }
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = front_cm;
  plan.substrate.back_cm = back_cm;
  plan.substrate.line_cm = std::move(line);
  return plan;
}

/// Points at shares of the inside length, so that every shape has the whole line.
Line at_shares(Shape shape, const Line& shares) {
  Line line = shares;
  const double length_cm = inside_length_cm(bedded(shape, 0, 0, {}).tank);
  for (LinePoint& point : line) point.x_cm *= length_cm;
  return line;
}

const Line hills = {{0, -2}, {0.2, 9}, {0.35, -9}, {0.5, 3}, {0.5625, 14}, {0.8, -1}};

/// Water below a height by counting: rows from front to back between the panes, each in short steps.
double counted_l(const Plan& plan, double height_cm) {
  const std::vector<Point> outline = inside_outline(plan.tank, 2000);
  const double width = inside_width_cm(plan.tank);
  constexpr int rows = 400, steps = 400;
  double sum = 0;
  std::vector<double> cuts;
  for (int k = 0; k < rows; ++k) {
    const double z = width * (k + 0.5) / rows;
    crossings(outline, z, cuts);
    for (std::size_t pair = 0; pair + 1 < cuts.size(); pair += 2) {
      const double step = (cuts[pair + 1] - cuts[pair]) / steps;
      for (int i = 0; i < steps; ++i)
        sum += std::max(0.0, height_cm - substrate_height_cm(plan, cuts[pair] + (i + 0.5) * step, z)) * step * width / rows;
    }
  }
  return sum / 1000;
}

TEST(Terrain, ATriangularHillInABoxHoldsHalfItsBaseTimesItsHeight) {
  const Plan flat = bedded(Shape::rectangular, 3, 7, {}), hill = bedded(Shape::rectangular, 3, 7, {{20, 0}, {35, 12}, {60, 0}});
  const double hill_l = 40 * 12 / 2.0 * 43.4 / 1000;
  const Volume before = volume_of(flat), after = volume_of(hill);
  EXPECT_NEAR(after.substrate_l - before.substrate_l, hill_l, 1e-9);
  EXPECT_NEAR(before.net_l - after.net_l, 0.6 * hill_l, 1e-9) << "its pores hold water";
  EXPECT_NEAR(after.surface_cm2, before.surface_cm2, 1e-9);
  EXPECT_NEAR(mean_substrate_cm(hill), 5 + 40 * 12 / 2.0 / 88.4, 1e-9);
  EXPECT_NEAR(open_water_below_l(flat, 41.5) - open_water_below_l(hill, 41.5), hill_l, 1e-9);
  EXPECT_NEAR(materials_of(hill).substrate_l - materials_of(flat).substrate_l, hill_l, 1e-9);
  EXPECT_NEAR(materials_of(hill).substrate_kg - materials_of(flat).substrate_kg, hill_l * 0.6 * 2.65, 1e-9);
}

TEST(Terrain, AValleyEndsAtTheBottom) {
  // From 2 cm down to 5 below and up again: two flanks of 8 cm to the bottom, and 24 cm of it bare.
  const Plan flat = bedded(Shape::rectangular, 2, 2, {}), valley = bedded(Shape::rectangular, 2, 2, {{20, 0}, {40, -5}, {60, 0}});
  EXPECT_NEAR(volume_of(flat).substrate_l - volume_of(valley).substrate_l, (2 * 8 * 2 / 2.0 + 24 * 2) * 43.4 / 1000, 1e-9);
  EXPECT_EQ(substrate_height_cm(valley, 40, 10), 0);
  EXPECT_NEAR(substrate_height_cm(valley, 24, 10), 1, 1e-12);
  EXPECT_EQ(lowest_substrate_cm(valley), 0);
  EXPECT_EQ(lowest_substrate_cm(flat), 2);
}

TEST(Terrain, AHillThroughTheWaterLineTakesItsShareOfTheSurface) {
  // 50 cm high on a bare-looking floor of 0 cm, 40 cm at its foot: at 41.5 cm it is 40 x 8.5 / 50 across.
  Plan plan = bedded(Shape::rectangular, 0, 0, {{20, 0}, {40, 44}, {60, 0}});
  const double across = 40 * (44 - 41.5) / 44;
  EXPECT_NEAR(volume_of(plan).surface_cm2, (88.4 - across) * 43.4, 1e-9);
  EXPECT_NEAR(open_water_below_l(plan, 41.5), (88.4 * 41.5 - (40 * 44 - across * (44 - 41.5)) / 2) * 43.4 / 1000, 1e-9);
  EXPECT_EQ(open_water_below_l(plan, 0), 0);
  EXPECT_EQ(open_water_below_l(plan, 90), open_water_below_l(plan, 41.5)) << "no water over the line";
}

TEST(Terrain, OfEveryShapeHasTheWaterThatCountingFinds) {
  for (const Shape shape : all_shapes)
    for (const auto& [front, back] : {std::pair{4.0, 4.0}, {2.0, 12.0}, {12.0, 2.0}})
      for (const double height : {1.0, 5.0, 12.0, 41.5}) {
        const Plan plan = bedded(shape, front, back, at_shares(shape, hills));
        ASSERT_FALSE(check_plan(plan)) << check_plan(plan)->sentence;
        const double counted = counted_l(plan, height);
        EXPECT_NEAR(open_water_below_l(plan, height), counted, 4.5e-5 * counted + 2e-4)
            << static_cast<int>(shape) << " " << front << " " << back << " " << height;
      }
}

TEST(Terrain, ALevelLineIsADeeperSlope) {
  for (const Shape shape : all_shapes)
    for (const double rise : {0.0, 2.5}) {
      const Plan line = bedded(shape, 3, 9, {{10, rise}, {30, rise}}), slope = bedded(shape, 3 + rise, 9 + rise, {});
      const Volume a = volume_of(line), b = volume_of(slope);
      EXPECT_NEAR(a.substrate_l, b.substrate_l, 1e-6 * b.substrate_l) << static_cast<int>(shape);
      EXPECT_NEAR(a.net_l, b.net_l, 1e-6 * b.net_l);
      EXPECT_NEAR(mean_substrate_cm(line), mean_substrate_cm(slope), 1e-6 * mean_substrate_cm(slope));
      for (const double height : {4.0, 8.0, 12.0, 30.0}) {
        EXPECT_NEAR(open_water_below_l(line, height), open_water_below_l(slope, height), 1e-6 * b.net_l) << height;
        EXPECT_NEAR(longest_run_cm(open_outline(line, height)), longest_run_cm(open_outline(slope, height)), 1e-4) << height;
      }
    }
}

TEST(Terrain, OfCurvedTanksHasConvergedToAMillionth) {
  for (const Shape shape : {Shape::bow_front, Shape::cylinder, Shape::half_cylinder, Shape::quarter_cylinder}) {
    const Plan plan = bedded(shape, 2, 12, at_shares(shape, hills));
    const Bed coarse = bed_of(plan), fine = bed_of(plan, 6000);
    for (const double height : {2.0, 5.0, 9.0, 14.0, 41.5}) {
      EXPECT_NEAR(space_over_cm3(coarse, height), space_over_cm3(fine, height), 1e-6 * space_over_cm3(fine, 41.5));
      EXPECT_NEAR(area_over_cm2(coarse, height), area_over_cm2(fine, height), 1e-5 * area_over_cm2(fine, 41.5));
    }
    EXPECT_NEAR(mean_cm(coarse), mean_cm(fine), 1e-6 * mean_cm(fine));
  }
}

TEST(Terrain, OpenWaterAtManyHeightsIsThatAtEach) {
  for (const Line& line : {Line{}, Line{{10, 4}, {50, -3}}}) {
    const Plan plan = bedded(Shape::cylinder, 3, 6, line);
    const std::vector<double> heights = {0, 3.5, 8, 41.5, 60}, all = open_water_below_l(plan, heights);
    ASSERT_EQ(all.size(), heights.size());
    for (std::size_t i = 0; i < all.size(); ++i) EXPECT_EQ(all[i], open_water_below_l(plan, heights[i]));
  }
}

TEST(Terrain, SandAndWaterFillTheTankWhateverTheLine) {
  for (const Shape shape : all_shapes) {
    const Plan plan = bedded(shape, 3, 9, at_shares(shape, hills));
    const Volume v = volume_of(plan);
    EXPECT_NEAR(v.substrate_l, inside_area_cm2(plan.tank) * mean_substrate_cm(plan) / 1000, 1e-6 * v.substrate_l);
    EXPECT_NEAR(v.net_l, inside_area_cm2(plan.tank) * 41.5 / 1000 - 0.6 * v.substrate_l, 1e-6 * v.net_l);
  }
}

TEST(Terrain, MirroredHoldsTheSame) {
  for (const Shape shape : {Shape::rectangular, Shape::bow_front, Shape::cylinder, Shape::hexagon, Shape::pentagon_corner}) {
    const Plan plan = bedded(shape, 3, 9, at_shares(shape, hills)), other = mirrored(plan);
    EXPECT_NEAR(volume_of(plan).substrate_l, volume_of(other).substrate_l, 1e-9);
    EXPECT_NEAR(mean_substrate_cm(plan), mean_substrate_cm(other), 1e-9);
    const double length_cm = inside_length_cm(plan.tank);
    for (const double x : {1.0, 13.0, 31.5, 55.0})
      EXPECT_NEAR(substrate_height_cm(plan, x, 20), substrate_height_cm(other, length_cm - x, 20), 1e-9);
  }
}

TEST(Terrain, APieceStandsOnTheHill) {
  Plan plan = bedded(Shape::rectangular, 3, 7, {{20, 0}, {40, 12}, {60, 0}});
  Piece stone = piece_at("stone", 40, 21.7, 10, 8, 6);
  EXPECT_NEAR(placed(plan, stone).foot_cm, 5 + 12, 1e-12);
  stone.x_cm = 30;
  stone.base_cm = 1;
  EXPECT_NEAR(placed(plan, stone).foot_cm, 5 + 6 + 1, 1e-12);
  plan.substrate.kind = SubstrateKind::bare;
  EXPECT_NEAR(placed(plan, stone).foot_cm, 1, 1e-12) << "a bare bottom has no hills";
}

TEST(TerrainLine, MayGoAsFarAsTheInsideIsLong) {
  for (const Shape shape : all_shapes) {
    const Tank tank = bedded(shape, 0, 0, {}).tank;
    EXPECT_NEAR(line_length_cm(tank), inside_length_cm(tank), 1e-9) << static_cast<int>(shape);
  }
}

TEST(TerrainLine, RisesEvenlyBetweenItsPointsAndIsLevelBeyond) {
  const Line line = {{10, 2}, {20, 6}, {30, -4}};
  for (const auto& [x, rise] : {std::pair{0.0, 2.0}, {10, 2}, {15, 4}, {20, 6}, {25, 1}, {30, -4}, {80, -4}})
    EXPECT_NEAR(rise_at(line, x), rise, 1e-12) << x;
  EXPECT_EQ(rise_at({}, 5), 0);
}

TEST(TerrainLine, StaysWhereItIsInAnotherTankAndIsSqueezedWhereItWouldNotFit) {
  const Line line = {{0, 2}, {22.1, 30}, {88.4, -30}};
  EXPECT_EQ(fitted(line, 88.4, 88.4, 44.2), line);
  EXPECT_EQ(fitted(line, 88.4, 120, 44.2), line);
  EXPECT_EQ(fitted(line, 88.4, 44.2, 44.2), (Line{{0, 2}, {11.1, 30}, {44.2, -30}}));
  EXPECT_EQ(fitted(line, 88.4, 88.4, 20), (Line{{0, 2}, {22.1, 20}, {88.4, -20}})) << "no higher than the tank";
  const Line close = {{10, 1}, {10.1, 2}, {10.2, 3}};
  const Line small = fitted(close, 88.4, 20, 44.2);
  EXPECT_TRUE(std::is_sorted(small.begin(), small.end(), [](const LinePoint& p, const LinePoint& q) { return p.x_cm < q.x_cm; }));
  EXPECT_LT(small[0].x_cm, small[1].x_cm) << "no two meet";
  EXPECT_LT(small[1].x_cm, small[2].x_cm);
}

TEST(TerrainLine, HeldUnderARiseIsTheLowerOfTheTwo) {
  const Line line = {{0, 0}, {20, 10}, {30, 14}, {40, 12}, {60, -4}, {80, 8}};
  for (const double most : {14.0, 9.0, 5.0, 0.0, -4.0}) {
    const Line low = held_under(line, most);
    for (double x = 0; x <= 88; x += 0.5)
      EXPECT_NEAR(rise_at(low, x), std::min(rise_at(line, x), most), 0.06) << most << " at " << x;
    for (std::size_t i = 1; i < low.size(); ++i) EXPECT_LT(low[i - 1].x_cm, low[i].x_cm);
  }
}

TEST(TerrainLine, ThatCannotBeIsRefusedWhereItGoesWrong) {
  const auto place = [](Line line, SubstrateKind kind = SubstrateKind::fine_sand) {
    Plan plan = bedded(Shape::rectangular, 0, 0, std::move(line));
    plan.substrate.kind = kind;
    const std::optional<Error> error = check_plan(plan);
    return error ? error->place : "";
  };
  EXPECT_EQ(place({{0, 2}, {88.4, 44.2}}), "");
  EXPECT_EQ(place({}), "");
  EXPECT_EQ(place({{-0.1, 2}}), "/substrate/line_cm/0/0");
  EXPECT_EQ(place({{0, 2}, {88.5, 2}}), "/substrate/line_cm/1/0");
  EXPECT_EQ(place({{0, 2}, {10, 44.3}}), "/substrate/line_cm/1/1");
  EXPECT_EQ(place({{0, -44.3}}), "/substrate/line_cm/0/1");
  EXPECT_EQ(place({{0, 2}, {10, 2}, {10, 3}}), "/substrate/line_cm/2/0");
  EXPECT_EQ(place({{20, 2}, {10, 2}}), "/substrate/line_cm/1/0");
  EXPECT_EQ(place({{0, std::nan("")}}), "/substrate/line_cm/0/1");
  EXPECT_EQ(place({{0, 2}}, SubstrateKind::bare), "/substrate/line_cm");
  Line many;
  for (int i = 0; i < most_line_points; ++i) many.push_back({i * 2.0, 1});
  EXPECT_EQ(place(many), "");
  many.push_back({80, 1});
  EXPECT_EQ(place(many), "/substrate/line_cm");
}

}  // namespace
}  // namespace shoalwright
