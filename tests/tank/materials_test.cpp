// SPDX-License-Identifier: MIT
#include "tank/materials.h"

#include <gtest/gtest.h>

#include "support/plan_files.h"
#include "support/samples.h"
#include "tank/mass.h"
#include "tank/placed_piece.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

Piece piece_of(const char* kind, double length_cm, double depth_cm, double height_cm) {
  return {.kind = kind, .length_cm = length_cm, .depth_cm = depth_cm, .height_cm = height_cm};
}

Plan sanded() {
  Plan plan = box_plan(60, 30, 40, 37);
  plan.substrate.kind = SubstrateKind::fine_sand;
  plan.substrate.front_cm = 3;
  plan.substrate.back_cm = 7;
  return plan;
}

TEST(Materials, SubstrateIsTheFloorTimesItsMeanDepth) {
  const Materials sand = materials_of(sanded());
  EXPECT_NEAR(sand.substrate_l, 60.0 * 30 * 5 / 1000, 1e-9);
  EXPECT_NEAR(sand.substrate_kg, 9 * 0.60 * 2.65, 1e-9);  // grains of quartz, dry: 14.3 kg
  Plan soil = sanded();
  soil.substrate.kind = SubstrateKind::planted_soil;
  EXPECT_NEAR(materials_of(soil).substrate_kg, 9 * 0.45 * 2.1, 1e-9);
  EXPECT_EQ(materials_of(box_plan(60, 30, 40, 37)), Materials{});
}

TEST(Materials, PiecesAreCountedByKindInTheOrderOfThePlan) {
  Plan plan = sanded();
  plan.pieces = {piece_of("block", 10, 10, 10), piece_of("heater", 4, 4, 20), piece_of("block", 20, 10, 5),
                 piece_of("driftwood", 30, 12, 16), piece_of("a-made-up-thing", 5, 4, 2)};
  const Materials all = materials_of(plan);
  ASSERT_EQ(all.pieces.size(), 4u);
  EXPECT_EQ(all.pieces[0].kind, "block");
  EXPECT_EQ(all.pieces[0].count, 2);
  EXPECT_NEAR(all.pieces[0].litres, 2, 1e-6);
  EXPECT_NEAR(all.pieces[0].kg, 5.3, 1e-6);
  EXPECT_EQ(all.pieces[1].kind, "heater");
  EXPECT_EQ(all.pieces[1].count, 1);
  EXPECT_GT(all.pieces[1].litres, 0);
  EXPECT_EQ(all.pieces[2].kind, "driftwood");
  EXPECT_EQ(all.pieces[3].kind, "a-made-up-thing");
  EXPECT_NEAR(all.pieces[3].litres, 0.04, 1e-9);
  for (const std::size_t i : {1, 2, 3}) EXPECT_EQ(all.pieces[i].kg, 0) << all.pieces[i].kind;
  EXPECT_NEAR(all.stone_kg, 5.3, 1e-6);
}

// What is bought is what the filled mass has: glass and water taken off, substrate and stones are left.
TEST(Materials, WeighWhatTheFilledTankHolds) {
  int with_stones = 0;
  for (const NamedPlan& named : all_plans()) {
    Plan bare = named.plan;
    bare.pieces.clear();
    bare.substrate = {};
    const Volume whole = volume_of(named.plan), glass = volume_of(bare);
    const double water_c = bare.water && bare.water->temperature_c ? *bare.water->temperature_c : 25;
    const double solids_kg =
        whole.filled_mass_kg - glass.filled_mass_kg + (glass.net_l - whole.net_l) * water_density_kg_m3(water_c) / 1000;
    const Materials all = materials_of(named.plan);
    EXPECT_NEAR(all.substrate_kg + all.stone_kg, solids_kg, 1e-6) << named.name;
    int count = 0;
    double lines_kg = 0, pieces_kg = 0;
    for (const MaterialLine& line : all.pieces) {
      count += line.count;
      lines_kg += line.kg;
    }
    for (const PlacedPiece& piece : placed_pieces(named.plan)) pieces_kg += piece_mass_kg(piece);
    EXPECT_EQ(count, static_cast<int>(named.plan.pieces.size())) << named.name;
    EXPECT_NEAR(lines_kg, pieces_kg, 1e-9) << named.name;
    with_stones += pieces_kg > 0;
  }
  EXPECT_GT(with_stones, 3);
}

}  // namespace
}  // namespace shoalwright
