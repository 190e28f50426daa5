// SPDX-License-Identifier: MIT
#include "scape/straight_run.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "scape/grid.h"
#include "support/dice.h"

namespace shoalwright {
namespace {

/// "#" is taken; rows from the front to the back.
struct Slice {
  int x = 0, z = 0;
  Cells open;
};

Slice slice_of(const std::vector<std::string>& rows) {
  Slice slice{static_cast<int>(rows[0].size()), static_cast<int>(rows.size()), {}};
  for (const std::string& row : rows)
    for (const char cell : row) slice.open.push_back(cell == '#' ? 0 : 1);
  return slice;
}

std::optional<StraightRun> run_of(const Slice& slice) { return longest_straight_run(slice.x, slice.z, slice.open); }

TEST(StraightRun, OfAnEmptySliceGoesFromCornerToCorner) {
  const Slice slice{60, 30, Cells(60 * 30, 1)};
  ASSERT_TRUE(run_of(slice));
  EXPECT_NEAR(run_of(slice)->length, std::hypot(59, 29), 1.5);
}

TEST(StraightRun, IsFoundAlongADiagonal) {
  Slice slice{40, 40, Cells(1600, 0)};
  for (int i = 0; i < 40; ++i)
    for (int k = std::max(0, i - 1); k <= std::min(39, i + 1); ++k) slice.open[static_cast<std::size_t>(k * 40 + i)] = 1;
  ASSERT_TRUE(run_of(slice));
  EXPECT_NEAR(run_of(slice)->length, 39 * std::sqrt(2), 1e-9);
}

TEST(StraightRun, EndsAtAPieceAcrossTheWholeWidth) {
  const auto run = run_of(slice_of({"........#...", "........#..."}));
  ASSERT_TRUE(run);
  EXPECT_EQ(std::abs(run->to_x - run->from_x), 7);
}

TEST(StraightRun, PassesAPieceThatLeavesRoomBesideIt) {
  const auto run = run_of(slice_of({"............", "....##......", "....##......"}));
  ASSERT_TRUE(run);
  EXPECT_GE(run->length, 11);
}

TEST(StraightRun, TwoPiecesThatEachLeaveRoomAloneCloseItTogether) {
  const auto one = run_of(slice_of({"....#.......", "....#.......", "............", "............"}));
  const auto other = run_of(slice_of({"............", ".....#......", ".....#......", ".....#......"}));
  const auto both = run_of(slice_of({"....#.......", "....##......", ".....#......", ".....#......"}));
  ASSERT_TRUE(one && other && both);
  EXPECT_GE(one->length, 11);
  EXPECT_GE(other->length, 11);
  EXPECT_LT(both->length, 8);
}

TEST(StraightRun, EveryCellOnItIsOpenAndMirroringTheSliceMirrorsTheAnswer) {
  Dice dice(5);
  for (int round = 0; round < 200; ++round) {
    Slice slice{dice.whole(1, 30), dice.whole(1, 20), {}};
    for (int cell = 0; cell < slice.x * slice.z; ++cell) slice.open.push_back(dice.percent(80) ? 1 : 0);
    Slice mirrored = slice, from_behind = slice;
    for (int k = 0; k < slice.z; ++k)
      std::reverse(mirrored.open.begin() + k * slice.x, mirrored.open.begin() + (k + 1) * slice.x);
    for (int k = 0; k < slice.z; ++k)
      std::copy_n(slice.open.begin() + k * slice.x, slice.x, from_behind.open.begin() + (slice.z - 1 - k) * slice.x);
    const auto run = run_of(slice), other = run_of(mirrored), third = run_of(from_behind);
    ASSERT_TRUE(run.has_value() == other.has_value() && run.has_value() == third.has_value());
    if (!run) continue;
    ASSERT_EQ(run->length, third->length);
    ASSERT_EQ(run->length, other->length);
    for (const auto& [i, k] : {std::pair{run->from_x, run->from_z}, {run->to_x, run->to_z}})
      ASSERT_EQ(slice.open[static_cast<std::size_t>(k * slice.x + i)], 1);
    // No run along an axis is longer.
    for (int k = 0; k < slice.z; ++k) {
      int length = 0;
      for (int i = 0; i < slice.x; ++i) {
        length = slice.open[static_cast<std::size_t>(k * slice.x + i)] ? length + 1 : 0;
        ASSERT_GE(run->length + 1e-9, length - 1);
      }
    }
  }
}

TEST(StraightRun, NothingOpenHasNone) { EXPECT_FALSE(longest_straight_run(3, 2, Cells(6, 0))); }

}  // namespace
}  // namespace shoalwright
