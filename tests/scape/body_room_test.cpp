// SPDX-License-Identifier: MIT
// Lanes and reach on tanks made by hand.
#include "scape/body_room.h"

#include <gtest/gtest.h>

#include <cmath>

#include "scape/circuit.h"
#include "stocking/layers.h"
#include "support/dice.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

constexpr BodySize rasbora{1.3, 4.5};

Piece block(double x_cm, double z_cm, double length_cm, double depth_cm, double height_cm) {
  return {.kind = "block", .x_cm = x_cm, .z_cm = z_cm, .length_cm = length_cm, .depth_cm = depth_cm, .height_cm = height_cm};
}

/// A tank of 80 x 30 x 36 cm with 33 cm of water, so that layers are 11 cm each.
Plan tank_with(std::vector<Piece> pieces) {
  Plan plan = box_plan(80, 30, 36, 33);
  plan.pieces = std::move(pieces);
  return plan;
}

double lane_cm(const Plan& plan, std::size_t level, BodySize body = rasbora) { return bodies_of(plan).lane(body, level).cm; }

TEST(Lane, OfAnEmptyTankIsItsLengthInEveryLayer) {
  for (std::size_t level = 0; level < 3; ++level) EXPECT_NEAR(lane_cm(tank_with({}), level), 80, 1e-9);
}

TEST(Lane, EndsAtAWallAcrossTheTank) {
  // What is left is 48 x 30 cm: from corner to corner.
  const Plan plan = tank_with({block(30, 15, 4, 30, 40)});
  for (std::size_t level = 0; level < 3; ++level) EXPECT_NEAR(lane_cm(plan, level), std::hypot(48, 30), 1.5);
}

TEST(Lane, PassesOverALowStoneInOneLayerOnly) {
  const Plan plan = tank_with({block(40, 15, 6, 30, 16)});
  EXPECT_NEAR(lane_cm(plan, 0), 80, 1e-9);
  EXPECT_NEAR(lane_cm(plan, 1), 80, 1e-9);  // over it
  EXPECT_NEAR(lane_cm(plan, 2), std::hypot(37, 30), 1.5);
}

TEST(Lane, ABodyThatIsTooDeepDoesNotPassOver) {
  // 33 - 19 = 14 cm above the stone, 3 cm of them in the middle layer, which begins 11 cm down.
  const Plan plan = tank_with({block(40, 15, 6, 30, 19)});
  EXPECT_NEAR(lane_cm(plan, 1, {2, 6}), 80, 1e-9);
  EXPECT_NEAR(lane_cm(plan, 1, {9, 12}), std::hypot(37, 30), 2);
}

TEST(Lane, TwoPiecesThatEachLeaveRoomAloneCloseItTogether) {
  const Piece front = block(40, 9, 6, 18, 40), back = block(44, 21, 6, 18, 40);
  EXPECT_NEAR(lane_cm(tank_with({front}), 1), 80, 1e-9);
  EXPECT_NEAR(lane_cm(tank_with({back}), 1), 80, 1e-9);
  EXPECT_LT(lane_cm(tank_with({front, back}), 1), 60);
}

TEST(Lane, RunsAcrossBetweenTwoCorners) {
  // Closed at the front left and at the back right: along the panes 48 cm are left, between the blocks the whole tank.
  const Plan plan = tank_with({block(16, 8, 32, 16, 40), block(64, 22, 32, 16, 40)});
  BodyRooms bodies = bodies_of(plan);
  const Lane lane = bodies.lane(rasbora, 1);
  EXPECT_GT(lane.cm, 75);
  ASSERT_EQ(lane.path.size(), 2u);
  const Point from = lane.path[0], to = lane.path[1];
  EXPECT_NE(from.z_cm > to.z_cm, from.x_cm > to.x_cm) << "it goes from the back left to the front right";
}

TEST(Lane, GrowthCountsInPartForSlimBodiesAndStopsDeepOnes) {
  Plan plan = tank_with({{.kind = "stem-plants", .x_cm = 40, .z_cm = 15, .length_cm = 30, .depth_cm = 80, .height_cm = 40}});
  // The outline is round: 30 cm at its widest.
  EXPECT_GT(lane_cm(plan, 1, {1.2, 4}), 80 - 0.3 * 30);
  EXPECT_LT(lane_cm(plan, 1, {1.2, 4}), std::hypot(80, 30) - 0.3 * 27);
  EXPECT_LT(lane_cm(plan, 1, {4, 8}), 40);
}

TEST(Lane, HalfTheWayRoundAnIslandIsALane) {
  // A round tank: beside the block a run of 50 cm, round it 15 cm of water everywhere.
  Plan plan = box_plan(0, 0, 36, 33);
  plan.tank.shape = Shape::cylinder;
  plan.tank.diameter_cm = 60;
  plan.pieces = {block(30, 30, 21, 21, 40)};
  BodyRooms bodies = bodies_of(plan);
  const Lane small = bodies.lane({1, 4}, 1);
  EXPECT_TRUE(small.circuit);
  EXPECT_NEAR(small.cm, 60, 1e-9) << "longer than the empty tank's run, which no lane passes";
  EXPECT_GT(small.path.size(), 60u);
  const Lane large = bodies.lane({1, 12}, 1);
  EXPECT_FALSE(large.circuit) << "the way round is not two lengths wide";
  EXPECT_LT(large.cm, 58);
}

TEST(Lane, TheWayRoundIsMeasured) {
  // Round a block of 40 x 4 cm in a tank of 80 x 30 cm, 4 cm from everything: 72 x 22 cm.
  SwimSlice slice{.x = 82, .z = 32, .ways = std::vector<Way>(82 * 32, Way::closed)};
  for (int k = 1; k < 31; ++k)
    for (int i = 1; i < 81; ++i)
      if (k < 14 || k >= 18 || i < 21 || i >= 61) slice.ways[static_cast<std::size_t>(k * 82 + i)] = Way::clear;
  const auto circuit = longest_circuit(slice, 4);
  ASSERT_TRUE(circuit);
  EXPECT_NEAR(circuit->length, 2 * (80 - 8 + 30 - 8), 8);
  EXPECT_FALSE(longest_circuit(slice, 7));
}

TEST(Lane, IsMirroredWithTheTank) {
  Dice dice(11);
  for (int round = 0; round < 12; ++round) {
    Plan plan = box_plan(61, 31, 36, 33), other = plan;
    for (int n = dice.whole(1, 5); n > 0; --n) {
      Piece piece{.kind = dice.percent(50) ? "stone" : "branch-low",
                  .x_cm = dice.whole(5, 55),
                  .z_cm = dice.whole(4, 27),
                  .length_cm = static_cast<double>(dice.whole(6, 30)),
                  .depth_cm = static_cast<double>(dice.whole(4, 18)),
                  .height_cm = static_cast<double>(dice.whole(5, 34))};
      plan.pieces.push_back(piece);
      piece.x_cm = 61 - *piece.x_cm;
      piece.mirror = true;
      other.pieces.push_back(piece);
    }
    for (std::size_t level = 0; level < 3; ++level)
      EXPECT_NEAR(lane_cm(plan, level), lane_cm(other, level), 1e-9) << round << " " << level;
  }
}

TEST(Lane, NeverGrowsByAPieceMore) {
  Dice dice(3);
  for (int round = 0; round < 20; ++round) {
    Plan plan = tank_with({});
    std::array<double, 3> before{80, 80, 80};
    for (int n = 0; n < 5; ++n) {
      plan.pieces.push_back(block(dice.whole(4, 76), dice.whole(4, 26), dice.whole(4, 20), dice.whole(4, 14), dice.whole(5, 36)));
      for (std::size_t level = 0; level < 3; ++level) {
        const double now = lane_cm(plan, level);
        EXPECT_LE(now, before[level] + 1e-9);
        before[level] = now;
      }
    }
  }
}

TEST(Reach, ACornerThatIsCutOffIsNoRoom) {
  const Plan plan = tank_with({block(60, 15, 4, 30, 40)});
  BodyRooms bodies = bodies_of(plan);
  for (const double share : bodies.reach(rasbora)) EXPECT_NEAR(share, 58.0 / 76, 0.03);
}

TEST(Reach, IsWholeWhereASlimBodyPassesAndADeepOneDoesNot) {
  // A gap of 4 cm between the block and the back pane.
  const Plan plan = tank_with({block(60, 13, 4, 26, 40)});
  BodyRooms bodies = bodies_of(plan);
  EXPECT_EQ(bodies.reach(rasbora)[1], 1);
  EXPECT_LT(bodies.reach({6, 10})[1], 0.9);
}

TEST(Filling, IsTheShareOfEachLevelThatSolidsTake) {
  const Plan plan = tank_with({block(40, 15, 20, 30, 11)});
  const BodyRooms bodies = bodies_of(plan);
  EXPECT_NEAR(bodies.fillings()[2].solid, 0.25, 0.02);
  EXPECT_NEAR(bodies.fillings()[1].solid, 0, 1e-9);
  EXPECT_NEAR(bodies.filling_at(5).solid, 0.25, 0.02);
  EXPECT_NEAR(bodies.filling_at(20).solid, 0, 1e-9);
}

TEST(ScapeUpdate, GivesWhatAFreshOneGivesAfterEveryMove) {
  Dice dice(8);
  Plan plan = tank_with({block(20, 15, 10, 10, 20), block(50, 10, 12, 8, 12)});
  plan.pieces.push_back({.kind = "branch", .x_cm = 60, .z_cm = 18, .length_cm = 30, .depth_cm = 12, .height_cm = 25});
  Scape kept;
  EXPECT_TRUE(update(kept, plan));
  EXPECT_FALSE(update(kept, plan));
  for (int round = 0; round < 30; ++round) {
    Piece& piece = plan.pieces[static_cast<std::size_t>(dice.whole(0, 2))];
    piece.x_cm = dice.whole(0, 80);
    piece.turn_deg = dice.whole(0, 359);
    if (round == 15) plan.tank.fill_cm = 30;
    if (round == 20) plan.pieces.pop_back(), plan.pieces.push_back(block(5, 5, 4, 4, 4));
    update(kept, plan);
    Scape fresh;
    update(fresh, plan);
    ASSERT_EQ(kept.distances.squared, fresh.distances.squared) << round;
    ASSERT_EQ(kept.solid, fresh.solid);
    ASSERT_EQ(kept.growth, fresh.growth);
  }
}

TEST(BodyRoomsUpdate, GivesWhatFreshOnesGiveAfterEveryMove) {
  Dice dice(21);
  Plan plan = tank_with({block(20, 15, 10, 10, 20), block(50, 10, 12, 8, 12), block(70, 15, 4, 26, 40)});
  plan.pieces.push_back({.kind = "stem-plants", .x_cm = 40, .z_cm = 20, .length_cm = 20, .depth_cm = 10, .height_cm = 25});
  BodyRooms kept = bodies_of(plan);
  int circuits = 0, cut_off = 0, stopped = 0;
  for (int round = 0; round < 40; ++round) {
    const Plan was = plan;
    Piece& piece = plan.pieces[static_cast<std::size_t>(dice.whole(0, 3))];
    piece.x_cm = dice.whole(2, 78);
    piece.z_cm = &piece == &plan.pieces[2] ? 13 + dice.whole(0, 4) : dice.whole(2, 28);  // a wall with a gap, or two
    if (round % 5 == 4) plan = was, plan.pieces[0].mirror = !plan.pieces[0].mirror;      // a block that no cell tells from before
    if (round % 7 == 3) piece.height_cm = dice.whole(8, 36);
    if (round == 15) plan.tank.fill_cm = 30;
    if (round == 25) plan.pieces.push_back(block(12, 5, 4, 4, 30));
    update(kept, plan);
    BodyRooms fresh = bodies_of(plan);
    for (const BodySize& body : {BodySize{}, rasbora, BodySize{1.4, 2.5}, BodySize{6, 10}}) {
      // Not all are asked each time: some stand behind by several moves.
      if (dice.percent(30)) continue;
      ASSERT_EQ(kept.reach(body), fresh.reach(body)) << round;
      ASSERT_EQ(kept.cut_off(body).size(), fresh.cut_off(body).size()) << round;
      cut_off += !kept.cut_off(body).empty();
      stopped += kept.lane(body, 2).cm < kept.lane({}, 2).cm;
      for (std::size_t level = 0; level < 3; ++level) {
        ASSERT_EQ(kept.lane(body, level), fresh.lane(body, level)) << round << " " << level << " " << body.depth_cm;
        circuits += kept.lane(body, level).circuit;
      }
    }
  }
  EXPECT_GT(circuits, 5);
  EXPECT_GT(cut_off, 5);
  EXPECT_GT(stopped, 5);
}

}  // namespace
}  // namespace shoalwright
