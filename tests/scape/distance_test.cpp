// SPDX-License-Identifier: MIT
#include "scape/distance.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "box_grid.h"
#include "scape/regions.h"
#include "support/dice.h"

namespace shoalwright {
namespace {

std::int32_t by_brute_force(const GridSize& size, const Cells& taken, int i, int k, int j) {
  std::int32_t nearest = far_away;
  for (int y = 0; y < size.y; ++y)
    for (int z = 0; z < size.z; ++z)
      for (int x = 0; x < size.x; ++x)
        if (taken[size.at(x, z, y)]) nearest = std::min(nearest, (x - i) * (x - i) + (z - k) * (z - k) + (y - j) * (y - j));
  return nearest;
}

TEST(SquaredDistances, AreThoseOfBruteForceOnSmallGrids) {
  Dice dice(41);
  for (int round = 0; round < 300; ++round) {
    const GridSize size{dice.whole(1, 11), dice.whole(1, 9), dice.whole(1, 8)};
    Cells taken(size.cells(), 0);
    const int percent = dice.whole(0, 40);
    for (std::uint8_t& cell : taken) cell = dice.percent(percent) ? 1 : 0;
    const std::vector<std::int32_t> squared = squared_distances(size, taken);
    for (int j = 0; j < size.y; ++j)
      for (int k = 0; k < size.z; ++k)
        for (int i = 0; i < size.x; ++i)
          ASSERT_EQ(squared[size.at(i, k, j)], by_brute_force(size, taken, i, k, j))
              << size.x << " x " << size.z << " x " << size.y << " at " << i << ", " << k << ", " << j;
  }
}

TEST(SquaredDistances, OfALongThinGridReachFromEndToEnd) {
  for (const GridSize& size : {GridSize{8192, 1, 1}, GridSize{1, 8192, 1}, GridSize{1, 1, 8192}}) {
    Cells taken(size.cells(), 0);
    taken.front() = 1;
    EXPECT_EQ(squared_distances(size, taken).back(), 8191 * 8191);
  }
}

TEST(SquaredDistances, AreFarAwayWhereNothingIsTaken) {
  const GridSize size{4, 3, 2};
  for (const std::int32_t squared : squared_distances(size, Cells(size.cells(), 0))) EXPECT_EQ(squared, far_away);
}

// Computed with scipy 1.10.1 (scipy.ndimage.distance_transform_edt, scipy.ndimage.label with its default faces) on the same
// boxes.
struct Reference {
  GridSize size;
  std::size_t free;
  std::int64_t sum;
  std::int32_t largest;
  double clearance;
  std::size_t regions, largest_region;
  std::int64_t slice_sum;
  std::int32_t slice_largest;
};

class Scipy : public testing::TestWithParam<Reference> {};

TEST_P(Scipy, FindsTheSameDistancesAndRegions) {
  const Reference& reference = GetParam();
  const Cells taken = grid_with_boxes(reference.size, 24, 20260101);
  ASSERT_EQ(static_cast<std::size_t>(std::count(taken.begin(), taken.end(), 0)), reference.free);
  const std::vector<std::int32_t> squared = squared_distances(reference.size, taken);
  EXPECT_EQ(std::accumulate(squared.begin(), squared.end(), std::int64_t{0}), reference.sum);
  EXPECT_EQ(*std::max_element(squared.begin(), squared.end()), reference.largest);
  const Regions regions = regions_of(reference.size, cells_clear_by(squared, reference.clearance));
  EXPECT_EQ(regions.cells.size(), reference.regions);
  EXPECT_EQ(*std::max_element(regions.cells.begin(), regions.cells.end()), reference.largest_region);
}

TEST_P(Scipy, FindsTheSameDistancesInOneSlice) {
  const Reference& reference = GetParam();
  const Cells taken = grid_with_boxes(reference.size, 24, 20260101);
  const GridSize flat{reference.size.x, reference.size.z, 1};
  const auto begin = taken.begin() + static_cast<std::ptrdiff_t>(flat.cells()) * (reference.size.y / 2);
  const std::vector<std::int32_t> squared =
      squared_distances(flat, Cells(begin, begin + static_cast<std::ptrdiff_t>(flat.cells())));
  EXPECT_EQ(std::accumulate(squared.begin(), squared.end(), std::int64_t{0}), reference.slice_sum);
  EXPECT_EQ(*std::max_element(squared.begin(), squared.end()), reference.slice_largest);
}

INSTANTIATE_TEST_SUITE_P(Boxes, Scipy,
                         testing::Values(Reference{{120, 50, 50}, 287226, 34789875, 864, 4, 1, 246757, 777931, 932},
                                         Reference{{240, 100, 100}, 2320917, 1131846516, 3518, 8, 1, 1971402, 13654395, 3874}));

}  // namespace
}  // namespace shoalwright
