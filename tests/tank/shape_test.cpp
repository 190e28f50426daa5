// SPDX-License-Identifier: MIT
// Every check of a shape is elementary geometry: closed forms, bounds by simpler shapes, or the shoelace formula over the
// outline.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tank/detail/shape.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

Tank of(Shape shape) {
  Tank t;
  t.shape = shape;
  t.height_cm = 45;
  t.fill_cm = 42;
  t.glass_mm = 8;
  switch (shape) {
    case Shape::rectangular: t.length_cm = 88.4, t.width_cm = 43.4; break;
    case Shape::bow_front: t.length_cm = 88.4, t.width_cm = 33.4, t.bow_cm = 10; break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: t.diameter_cm = 80; break;
    case Shape::hexagon: t.side_cm = 30; break;
    case Shape::pentagon_corner: t.side_cm = 60, t.front_cm = 25; break;
    case Shape::prism: t.outline_cm = {{5, 5}, {85, 5}, {85, 45}, {35, 65}, {5, 50}}; break;
  }
  return t;
}

constexpr Shape all_shapes[] = {Shape::rectangular,      Shape::bow_front, Shape::cylinder,        Shape::half_cylinder,
                                Shape::quarter_cylinder, Shape::hexagon,   Shape::pentagon_corner, Shape::prism};

double shoelace(const std::vector<Point>& points) {
  double twice = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point &p = points[i], &q = points[(i + 1) % points.size()];
    twice += p.x_cm * q.z_cm - q.x_cm * p.z_cm;
  }
  return twice / 2;
}

TEST(Shape, ClosedAreaIsWhatTheOutlineTendsTo) {
  for (const Shape shape : all_shapes) {
    const Tank tank = of(shape);
    EXPECT_NEAR(shoelace(inside_outline(tank, 200000)), inside_area_cm2(tank), 1e-5) << static_cast<int>(shape);
  }
}

TEST(Shape, OutlineRunsCounterClockwiseFromLeftAndFrontZero) {
  for (const Shape shape : all_shapes) {
    const Tank tank = of(shape);
    const std::vector<Point> outline = inside_outline(tank);
    EXPECT_GT(shoelace(outline), 0);
    double left = 1e9, front = 1e9, right = 0, back = 0;
    for (const Point& p : outline) {
      left = std::min(left, p.x_cm), right = std::max(right, p.x_cm);
      front = std::min(front, p.z_cm), back = std::max(back, p.z_cm);
    }
    EXPECT_NEAR(left, 0, 1e-9) << static_cast<int>(shape);
    EXPECT_NEAR(front, 0, 1e-9) << static_cast<int>(shape);
    EXPECT_NEAR(right, inside_length_cm(tank), 1e-9) << static_cast<int>(shape);
    EXPECT_NEAR(back, inside_width_cm(tank), 1e-9) << static_cast<int>(shape);
  }
}

TEST(Shape, RoundAreasAreTheSchoolbookOnes) {
  Tank round = of(Shape::cylinder);
  EXPECT_NEAR(inside_area_cm2(round), std::numbers::pi * 1600, 1e-9);
  round.shape = Shape::half_cylinder;
  round.glass_mm = 0;
  EXPECT_NEAR(inside_area_cm2(round), std::numbers::pi * 800, 1e-9);
  round.shape = Shape::quarter_cylinder;
  EXPECT_NEAR(inside_area_cm2(round), std::numbers::pi * 400, 1e-9);
}

// A pane across the circle: r^2 acos(t/r) - t sqrt(r^2 - t^2).
TEST(Shape, TheFlatPaneOfAHalfCylinderTakesItsOwnThickness) {
  const Tank tank = of(Shape::half_cylinder);
  const double r = 40, t = 0.8;
  EXPECT_NEAR(inside_area_cm2(tank), r * r * std::acos(t / r) - t * std::sqrt(r * r - t * t), 1e-9);
}

TEST(Shape, BowFrontLiesBetweenTheTwoBoxes) {
  for (const double bow : {0.5, 5.0, 20.0, 44.2}) {
    Tank tank = of(Shape::bow_front);
    tank.bow_cm = bow;
    const double area = inside_area_cm2(tank);
    EXPECT_GT(area, tank.length_cm * tank.width_cm);
    EXPECT_LT(area, tank.length_cm * (tank.width_cm + bow));
    // A circle segment lies between its triangle and its box, and above two thirds of the box (a parabola).
    EXPECT_GT(area - tank.length_cm * tank.width_cm, tank.length_cm * bow * 2 / 3);
  }
}

TEST(Shape, ABowOfNothingIsABox) {
  Tank tank = of(Shape::bow_front);
  tank.bow_cm = 0;
  EXPECT_DOUBLE_EQ(inside_area_cm2(tank), tank.length_cm * tank.width_cm);
  EXPECT_EQ(inside_outline(tank).size(), 4u);
}

TEST(Shape, ABowOfHalfTheLengthEndsInAHalfCircle) {
  Tank tank = of(Shape::bow_front);
  tank.bow_cm = tank.length_cm / 2;
  EXPECT_NEAR(inside_area_cm2(tank), tank.length_cm * tank.width_cm + std::numbers::pi * tank.bow_cm * tank.bow_cm / 2, 1e-9);
}

TEST(Shape, HexagonLiesBetweenItsTwoCircles) {
  const Tank tank = of(Shape::hexagon);
  const double inner = std::numbers::sqrt3 / 2 * tank.side_cm;
  EXPECT_GT(inside_area_cm2(tank), std::numbers::pi * inner * inner);
  EXPECT_LT(inside_area_cm2(tank), std::numbers::pi * tank.side_cm * tank.side_cm);
}

TEST(Shape, CornerLiesBetweenItsTriangleAndItsSquare) {
  const Tank tank = of(Shape::pentagon_corner);
  EXPECT_GT(inside_area_cm2(tank), tank.side_cm * tank.side_cm / 2);
  EXPECT_LT(inside_area_cm2(tank), tank.side_cm * tank.side_cm);
}

TEST(Shape, APrismDrawnAsABoxIsTheBox) {
  Tank prism = of(Shape::prism);
  prism.outline_cm = {{3, 4}, {3, 47.4}, {91.4, 47.4}, {91.4, 4}, {3, 4}};  // clockwise and closed: both are forgiven
  EXPECT_NEAR(inside_area_cm2(prism), 88.4 * 43.4, 1e-9);
  EXPECT_NEAR(inside_length_cm(prism), 88.4, 1e-9);
  EXPECT_NEAR(inside_width_cm(prism), 43.4, 1e-9);
}

TEST(Shape, APrismMayHaveANotch) {
  Tank prism = of(Shape::prism);  // an L: 100 x 60 less 40 x 30 in the back right
  prism.outline_cm = {{0, 0}, {100, 0}, {100, 30}, {60, 30}, {60, 60}, {0, 60}};
  EXPECT_NEAR(inside_area_cm2(prism), 4800, 1e-9);
  EXPECT_EQ(inside_length_cm(prism), 100);
  EXPECT_EQ(inside_width_cm(prism), 60);
  prism.outline_cm = {{0, 0}, {100, 0}, {100, 60}, {70, 60}, {70, 20}, {30, 20}, {30, 60}, {0, 60}};  // a U
  EXPECT_NEAR(inside_area_cm2(prism), 4400, 1e-9);
  EXPECT_EQ(inside_length_cm(prism), 100);
}

TEST(Shape, MomentsAreWhatThinStripsAddUpTo) {
  for (const Shape shape : all_shapes) {
    const std::vector<Slice> slices = slices_of(of(shape));
    const double from = 0.13 * slices.back().z1, to = 0.81 * slices.back().z1;
    double area = 0, moment = 0;
    const int n = 20000;
    for (int i = 0; i < n; ++i) {
      const double z = from + (to - from) * (i + 0.5) / n;
      for (const Slice& s : slices) {
        if (!(z >= s.z0 && z < s.z1)) continue;
        const double w = s.radius > 0 ? 2 * std::sqrt(s.radius * s.radius - (z - s.centre) * (z - s.centre))
                                      : s.w0 + (s.w1 - s.w0) * (z - s.z0) / (s.z1 - s.z0);
        area += w * (to - from) / n;
        moment += z * w * (to - from) / n;
      }
    }
    const Moments m = moments(slices, from, to);
    EXPECT_NEAR(m.area_cm2, area, 1e-4 * area) << static_cast<int>(shape);
    EXPECT_NEAR(m.moment_cm3, moment, 1e-4 * moment) << static_cast<int>(shape);
  }
}

TEST(Shape, MeasuresThatSpanNothingHaveNoAreaAndNoOutline) {
  for (const Shape shape : all_shapes) {
    Tank tank;
    tank.shape = shape;
    EXPECT_EQ(inside_area_cm2(tank), 0) << static_cast<int>(shape);
    EXPECT_EQ(inside_length_cm(tank), 0);
    EXPECT_EQ(inside_width_cm(tank), 0);
    EXPECT_TRUE(inside_outline(tank).empty());
    EXPECT_EQ(volume_of(Plan{}).gross_l, 0);
  }
  Tank bow = of(Shape::bow_front);
  bow.bow_cm = 60;  // no circle bulges by more than half its chord
  EXPECT_EQ(inside_area_cm2(bow), 0);
  Tank corner = of(Shape::pentagon_corner);
  corner.front_cm = 60;
  EXPECT_EQ(inside_area_cm2(corner), 0);
  Tank half = of(Shape::half_cylinder);
  half.glass_mm = 500;
  EXPECT_EQ(inside_area_cm2(half), 0);
  Tank line = of(Shape::prism);
  line.outline_cm = {{0, 0}, {10, 0}, {20, 0}};
  EXPECT_EQ(inside_area_cm2(line), 0);
}

}  // namespace
}  // namespace shoalwright
