// SPDX-License-Identifier: MIT
#include "scape/straight_run.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "support/dice.h"

namespace shoalwright {
namespace {

/// "#" is closed, "s" slow, "n" near; rows from the front to the back.
SwimSlice slice_of(const std::vector<std::string>& rows) {
  SwimSlice slice{.x = static_cast<int>(rows[0].size()), .z = static_cast<int>(rows.size())};
  for (const std::string& row : rows)
    for (const char cell : row)
      slice.ways.push_back(cell == '#' ? Way::closed : cell == 's' ? Way::slow : cell == 'n' ? Way::near : Way::clear);
  return slice;
}

SwimSlice even(int x, int z, Way way) { return {.x = x, .z = z, .ways = std::vector<Way>(static_cast<std::size_t>(x * z), way)}; }

std::optional<StraightRun> run_of(const SwimSlice& slice) { return longest_straight_run(slice); }

TEST(StraightRun, OfAnEmptySliceGoesFromCornerToCorner) {
  const SwimSlice slice = even(60, 30, Way::clear);
  ASSERT_TRUE(run_of(slice));
  EXPECT_NEAR(run_of(slice)->length, std::hypot(60, 30), 1.5);
}

TEST(StraightRun, IsFoundAlongADiagonal) {
  SwimSlice slice = even(40, 40, Way::closed);
  for (int i = 0; i < 40; ++i)
    for (int k = std::max(0, i - 1); k <= std::min(39, i + 1); ++k) slice.ways[static_cast<std::size_t>(k * 40 + i)] = Way::clear;
  ASSERT_TRUE(run_of(slice));
  EXPECT_NEAR(run_of(slice)->length, 40 * std::sqrt(2), 1e-9);
}

TEST(StraightRun, EndsAtAPieceAcrossTheWholeWidth) {
  const auto run = run_of(slice_of({"........#...", "........#..."}));
  ASSERT_TRUE(run);
  EXPECT_EQ(std::abs(run->to_x - run->from_x), 7);
}

TEST(StraightRun, PassesAPieceThatLeavesRoomBesideIt) {
  const auto run = run_of(slice_of({"............", "....##......", "....##......"}));
  ASSERT_TRUE(run);
  EXPECT_GE(run->length, 12);
}

TEST(StraightRun, TwoPiecesThatEachLeaveRoomAloneCloseItTogether) {
  const auto one = run_of(slice_of({"....#.......", "....#.......", "............", "............"}));
  const auto other = run_of(slice_of({"............", ".....#......", ".....#......", ".....#......"}));
  const auto both = run_of(slice_of({"....#.......", "....##......", ".....#......", ".....#......"}));
  ASSERT_TRUE(one && other && both);
  EXPECT_GE(one->length, 12);
  EXPECT_GE(other->length, 12);
  EXPECT_LT(both->length, 9);
}

TEST(StraightRun, EveryCellOnItIsOpenAndMirroringTheSliceMirrorsTheAnswer) {
  Dice dice(5);
  for (int round = 0; round < 200; ++round) {
    SwimSlice slice{.x = dice.whole(1, 30), .z = dice.whole(1, 20)};
    for (int cell = 0; cell < slice.x * slice.z; ++cell)
      slice.ways.push_back(dice.percent(20) ? Way::closed : dice.percent(20) ? Way::slow : Way::clear);
    SwimSlice mirrored = slice, from_behind = slice;
    for (int k = 0; k < slice.z; ++k)
      std::reverse(mirrored.ways.begin() + k * slice.x, mirrored.ways.begin() + (k + 1) * slice.x);
    for (int k = 0; k < slice.z; ++k)
      std::copy_n(slice.ways.begin() + k * slice.x, slice.x, from_behind.ways.begin() + (slice.z - 1 - k) * slice.x);
    const auto run = run_of(slice), other = run_of(mirrored), third = run_of(from_behind);
    ASSERT_TRUE(run.has_value() == other.has_value() && run.has_value() == third.has_value());
    if (!run) continue;
    ASSERT_NEAR(run->length, third->length, 1e-9);
    ASSERT_NEAR(run->length, other->length, 1e-9);
    for (const auto& [i, k] : {std::pair{run->from_x, run->from_z}, {run->to_x, run->to_z}})
      ASSERT_NE(slice.at(i, k), Way::closed);
    // No run along an axis is longer.
    for (int k = 0; k < slice.z; ++k) {
      double length = 0;
      for (int i = 0; i < slice.x; ++i) {
        length = slice.at(i, k) == Way::closed ? 0 : length + (slice.at(i, k) == Way::slow ? slow_share : 1);
        ASSERT_GE(run->length + 1e-9, length);
      }
    }
  }
}

TEST(StraightRun, GrowthCountsInPart) {
  const auto run = run_of(slice_of({"###########", "...sssss..#", "###########"}));
  ASSERT_TRUE(run);
  EXPECT_NEAR(run->length, 5 + 5 * 0.7, 0.01);
}

TEST(StraightRun, TheNoseReachesOverCellsThatAreTooNearForTheMiddle) {
  const SwimSlice slice = slice_of({"#############", "#nn.......nn#", "#############"});
  EXPECT_NEAR(longest_straight_run(slice, 2)->length, 11, 0.01);
  EXPECT_NEAR(longest_straight_run(slice, 1)->length, 9, 0.01);
  EXPECT_NEAR(longest_straight_run(slice, 0)->length, 7, 0.01);
}

TEST(StraightRun, CellsHaveTheirOwnMeasures) {
  SwimSlice slice = even(10, 4, Way::clear);
  slice.step_x = 1.01;
  slice.step_z = 0.5;
  EXPECT_NEAR(longest_straight_run(slice, 0, 0, 10)->length, 10.1, 1e-9);
}

TEST(StraightRun, StopsAtEnoughAndSaysNothingBelowWhatIsKnown) {
  const SwimSlice slice = even(60, 30, Way::clear);
  EXPECT_NEAR(longest_straight_run(slice, 0, 0, 60)->length, 60, 1e-9);
  EXPECT_FALSE(longest_straight_run(slice, 0, 80));
}

TEST(StraightRun, NothingOpenHasNone) { EXPECT_FALSE(run_of(even(3, 2, Way::closed))); }

}  // namespace
}  // namespace shoalwright
