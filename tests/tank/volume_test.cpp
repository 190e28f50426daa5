// SPDX-License-Identifier: MIT
#include "tank/volume.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/samples.h"
#include "tank/detail/shape.h"
#include "tank/glass.h"
#include "tank/mass.h"
#include "tank/open_water.h"
#include "tank/substrate.h"

namespace shoalwright {
namespace {

Plan shaped(Shape shape) {
  Plan plan = box_plan(88.4, 43.4, 44.2, 41.5);
  Tank& t = plan.tank;
  t.shape = shape;
  t.bow_cm = 10;
  t.diameter_cm = 80;
  t.side_cm = 60;
  t.front_cm = 25;
  t.outline_cm = {{0, 0}, {80, 0}, {80, 40}, {30, 60}, {0, 45}};
  return plan;
}

Plan sloped(Shape shape, double front_cm, double back_cm) {
  Plan plan = shaped(shape);
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = front_cm;
  plan.substrate.back_cm = back_cm;
  return plan;
}

constexpr Shape all_shapes[] = {Shape::rectangular,      Shape::bow_front, Shape::cylinder,        Shape::half_cylinder,
                                Shape::quarter_cylinder, Shape::hexagon,   Shape::pentagon_corner, Shape::prism};

/// Water over the substrate by counting: thin strips from front to back, no formula of the core but the width of a strip.
double counted_open_l(const Plan& plan, double height_cm) {
  const std::vector<Slice> slices = slices_of(plan.tank);
  const double width = slices.back().z1;
  const int n = 8000;
  double sum = 0;
  for (int i = 0; i < n; ++i) {
    const double z = width * (i + 0.5) / n;
    const double ground = plan.substrate.front_cm + (plan.substrate.back_cm - plan.substrate.front_cm) * z / width;
    for (const Slice& s : slices) {
      if (!(z >= s.z0 && z < s.z1)) continue;
      const double w = s.radius > 0 ? 2 * std::sqrt(s.radius * s.radius - (z - s.centre) * (z - s.centre))
                                    : s.w0 + (s.w1 - s.w0) * (z - s.z0) / (s.z1 - s.z0);
      sum += w * std::max(0.0, height_cm - ground) * width / n;
    }
  }
  return sum / 1000;
}

// 88.4 x 43.4 x 44.2 cm inside, water to 41.5, sand 3 to 7 cm at porosity 0.40: by hand.
TEST(Volume, OfTheDemoTankIsWhatAPencilGives) {
  const Volume v = volume_of(sloped(Shape::rectangular, 3, 7));
  EXPECT_NEAR(v.gross_l, 88.4 * 43.4 * 44.2 / 1000, 1e-9);
  EXPECT_NEAR(v.substrate_l, 88.4 * 43.4 * 5 / 1000, 1e-9);
  EXPECT_NEAR(v.net_l, 88.4 * 43.4 * (41.5 - 0.6 * 5) / 1000, 1e-9);
  EXPECT_NEAR(v.surface_cm2, 88.4 * 43.4, 1e-9);
  EXPECT_NEAR(v.footprint_cm2, 89.6 * 44.6, 1e-9);
  EXPECT_EQ(v.pieces_l, 0);
}

// 76 x 31 x 32 cm outside in 6 mm, 5 cm of sand, water 2.5 cm under the rim, worked by hand without pieces: 13.5 kg of glass (and
// 3 % for braces), sand 17.7 kg, water by its density at 25 degrees C.
TEST(Volume, FilledMassIsGlassWaterAndSand) {
  Tank outside;
  outside.length_cm = 76, outside.width_cm = 31, outside.height_cm = 32, outside.glass_mm = 6;
  Plan plan;
  plan.tank = inside_of(outside);
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = plan.substrate.back_cm = 5;
  const Volume v = volume_of(plan);
  const double area = 74.8 * 29.8, water_l = area * (28.9 - 0.6 * 5) / 1000, sand_kg = area * 5 * 0.6 * 2.65e-3;
  EXPECT_NEAR(sand_kg, 17.7, 0.05);
  EXPECT_NEAR(v.net_l, water_l, 1e-9);
  EXPECT_NEAR(v.filled_mass_kg, 1.03 * 13.5004 + water_l * 0.997047 + sand_kg, 0.001);
}

TEST(Volume, OpenWaterIsWhatThinStripsCount) {
  for (const Shape shape : all_shapes)
    for (const auto& [front, back] : {std::pair{0.0, 0.0}, {4.0, 4.0}, {2.0, 12.0}, {12.0, 2.0}, {0.0, 30.0}})
      for (const double height : {1.0, 5.0, 9.0, 25.0, 41.5}) {
        const Plan plan = sloped(shape, front, back);
        EXPECT_NEAR(open_water_below_l(plan, height), counted_open_l(plan, height), 2e-3)
            << static_cast<int>(shape) << " " << front << " " << back << " " << height;
      }
}

TEST(Volume, OpenWaterAndPoresAndGrainsFillTheTank) {
  for (const Shape shape : all_shapes) {
    const Plan plan = sloped(shape, 3, 9);
    const Volume v = volume_of(plan);
    const double pores = substrate_facts(plan.substrate.kind).porosity * v.substrate_l;
    EXPECT_NEAR(open_water_below_l(plan, plan.tank.fill_cm) + pores, v.net_l, 1e-9);
    EXPECT_NEAR(v.net_l + v.substrate_l - pores, inside_area_cm2(plan.tank) * plan.tank.fill_cm / 1000, 1e-9);
    EXPECT_NEAR(v.substrate_l, inside_area_cm2(plan.tank) * mean_substrate_cm(plan) / 1000, 1e-9);
  }
}

TEST(Volume, NetNeverExceedsGross) {
  for (const Shape shape : all_shapes)
    for (const double fill : {0.0, 10.0, 44.2, 90.0})
      for (const double back : {0.0, 20.0, 60.0}) {
        Plan plan = sloped(shape, 1, back);
        plan.tank.fill_cm = fill;
        const Volume v = volume_of(plan);
        EXPECT_GE(v.net_l, 0);
        EXPECT_LE(v.net_l, v.gross_l);
        EXPECT_LE(v.substrate_l, v.gross_l);
      }
}

TEST(Volume, EveryFieldMovesWhenItsInputDoes) {
  const Plan plan = sloped(Shape::rectangular, 3, 7);
  const Volume before = volume_of(plan);
  Plan longer = plan, fuller = plan, deeper = plan, thicker = plan, steep = plan, gravel = plan;
  longer.tank.length_cm += 10;
  fuller.tank.fill_cm += 1;
  deeper.substrate.back_cm += 2;
  thicker.tank.glass_mm += 2;
  steep.substrate.front_cm = 0, steep.substrate.back_cm = 60;
  gravel.substrate.kind = SubstrateKind::smooth_gravel;
  EXPECT_GT(volume_of(longer).gross_l, before.gross_l);
  EXPECT_GT(volume_of(fuller).net_l, before.net_l);
  EXPECT_EQ(volume_of(fuller).gross_l, before.gross_l);
  EXPECT_LT(volume_of(deeper).net_l, before.net_l);
  EXPECT_GT(volume_of(deeper).substrate_l, before.substrate_l);
  EXPECT_GT(volume_of(thicker).footprint_cm2, before.footprint_cm2);
  EXPECT_GT(volume_of(thicker).filled_mass_kg, before.filled_mass_kg);
  EXPECT_EQ(volume_of(thicker).net_l, before.net_l);
  EXPECT_LT(volume_of(steep).surface_cm2, before.surface_cm2);
  EXPECT_LT(volume_of(gravel).net_l, before.net_l);  // gravel has fewer pores than sand
}

TEST(Volume, ALidIsNotWeighed) {
  Plan plan = sloped(Shape::rectangular, 3, 7);
  const Volume with = volume_of(plan);
  plan.tank.lid = false;
  EXPECT_EQ(volume_of(plan), with);
}

TEST(Volume, ABareBottomHasNoSubstrateWhateverItsDepthsSay) {
  Plan plan = sloped(Shape::rectangular, 3, 7);
  plan.substrate.kind = SubstrateKind::bare;
  EXPECT_EQ(volume_of(plan).substrate_l, 0);
  EXPECT_EQ(mean_substrate_cm(plan), 0);
}

TEST(Substrate, SlopesEvenlyFromFrontToBack) {
  const Plan plan = sloped(Shape::rectangular, 3, 7);
  EXPECT_DOUBLE_EQ(substrate_height_cm(plan, 20, 0), 3);
  EXPECT_DOUBLE_EQ(substrate_height_cm(plan, 20, 21.7), 5);
  EXPECT_DOUBLE_EQ(substrate_height_cm(plan, 20, 43.4), 7);
  EXPECT_DOUBLE_EQ(substrate_height_cm(plan, 20, 90), 7);
  EXPECT_DOUBLE_EQ(mean_substrate_cm(plan), 5);
}

// The centroid of a half disc lies 4 r / 3 pi from its flat side.
TEST(Substrate, MeanHeightIsThatAtTheCentroidOfTheFloor) {
  Plan plan = sloped(Shape::half_cylinder, 0, 10);
  plan.tank.glass_mm = 0;
  const double centroid_from_front = 40 - 4 * 40 / (3 * 3.14159265358979);
  EXPECT_NEAR(mean_substrate_cm(plan), 10 * centroid_from_front / 40, 1e-9);
}

TEST(Substrate, SandHasMorePoresThanGravelAndSoilTheMost) {
  const auto porosity = [](SubstrateKind kind) { return substrate_facts(kind).porosity; };
  EXPECT_GT(porosity(SubstrateKind::fine_sand), porosity(SubstrateKind::smooth_gravel));
  EXPECT_EQ(porosity(SubstrateKind::fine_sand), porosity(SubstrateKind::coarse_sand));
  EXPECT_EQ(porosity(SubstrateKind::smooth_gravel), porosity(SubstrateKind::sharp_gravel));
  EXPECT_GT(porosity(SubstrateKind::planted_soil), porosity(SubstrateKind::fine_sand));
  EXPECT_EQ(substrate_facts(SubstrateKind::bare).grain_kg_m3, 0);
}

TEST(Run, OfABoxIsItsLongerSideNotItsDiagonal) {
  EXPECT_NEAR(longest_run_cm(inside_outline(box_plan(75, 30, 40, 35).tank)), 75, 1e-9);
  EXPECT_NEAR(longest_run_cm(inside_outline(box_plan(30, 75, 40, 35).tank)), 75, 1e-9);
}

TEST(Run, OfRoundShapesIsTheirDiameter) {
  EXPECT_NEAR(longest_run_cm(inside_outline(shaped(Shape::cylinder).tank)), 80, 1e-9);
  Plan half = shaped(Shape::half_cylinder);
  half.tank.glass_mm = 0;
  EXPECT_NEAR(longest_run_cm(inside_outline(half.tank)), 80, 1e-9);
}

TEST(Run, OfOtherShapesIsTheWidestPlaceAlongOrAcrossTheFront) {
  EXPECT_NEAR(longest_run_cm(inside_outline(shaped(Shape::bow_front).tank)), 88.4, 1e-9);
  EXPECT_NEAR(longest_run_cm(inside_outline(shaped(Shape::hexagon).tank)), 120, 1e-9);
  EXPECT_NEAR(longest_run_cm(inside_outline(shaped(Shape::pentagon_corner).tank)), 60 * std::sqrt(2.0), 1e-9);
  EXPECT_NEAR(longest_run_cm(inside_outline(shaped(Shape::prism).tank)), 80, 1e-9);
}

TEST(Run, DoesNotCareHowABoxStands) {
  for (const double turn : {0.1, 0.5, 0.785, 1.3}) {
    std::vector<Point> outline;
    for (const Point& p : inside_outline(box_plan(75, 30, 40, 35).tank))
      outline.push_back({p.x_cm * std::cos(turn) - p.z_cm * std::sin(turn), p.x_cm * std::sin(turn) + p.z_cm * std::cos(turn)});
    const double run = longest_run_cm(outline);
    EXPECT_GE(run, 75 - 1e-9);
    EXPECT_LE(run, std::hypot(75, 30));
  }
}

TEST(Run, StopsAtTheNotchOfAPrism) {
  Plan plan = shaped(Shape::prism);
  plan.tank.outline_cm = {{0, 0}, {100, 0}, {100, 60}, {70, 60}, {70, 20}, {30, 20}, {30, 60}, {0, 60}};  // a U
  EXPECT_NEAR(longest_run_cm(inside_outline(plan.tank)), 100, 1e-9);
  plan.tank.outline_cm = {{0, 0}, {30, 0}, {30, 40}, {70, 40}, {70, 0}, {100, 0}, {100, 45}, {0, 45}};  // a bridge 5 cm wide
  EXPECT_NEAR(longest_run_cm(inside_outline(plan.tank)), 100, 1e-9);
  plan.tank.outline_cm = {{0, 0}, {60, 0}, {60, 40}, {50, 40}, {50, 10}, {10, 10}, {10, 40}, {0, 40}};
  EXPECT_NEAR(longest_run_cm(inside_outline(plan.tank)), 60, 1e-9);
}

TEST(Run, IsNothingWithoutAnOutline) {
  EXPECT_EQ(longest_run_cm({}), 0);
  EXPECT_EQ(longest_run_cm({{0, 0}, {5, 0}}), 0);
}

TEST(OpenOutline, ASlopeCutsOnlyWhatLiesUnderIt) {
  const Plan plan = sloped(Shape::rectangular, 0, 43.4);  // one for one
  EXPECT_NEAR(longest_run_cm(open_outline(plan, 40)), 88.4, 1e-9);
  const std::vector<Point> low = open_outline(plan, 10);
  double back = 0;
  for (const Point& p : low) back = std::max(back, p.z_cm);
  EXPECT_NEAR(back, 10, 1e-9);
  EXPECT_TRUE(open_outline(plan, 0).empty());
  const Plan rising = sloped(Shape::cylinder, 0, 80);  // below the middle a round tank is shorter
  EXPECT_NEAR(longest_run_cm(open_outline(rising, 41)), 80, 1e-9);
  EXPECT_NEAR(longest_run_cm(open_outline(rising, 10)), 2 * std::sqrt(40.0 * 40 - 30 * 30), 0.1);
}

}  // namespace
}  // namespace shoalwright
