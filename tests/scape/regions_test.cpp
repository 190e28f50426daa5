// SPDX-License-Identifier: MIT
#include "scape/regions.h"

#include <gtest/gtest.h>

#include "scape/distance.h"

namespace shoalwright {
namespace {

/// Number of a cell's region, -1 where the cell is not open.
std::int32_t region_at(const Regions& regions, const GridSize& size, int i, int k, int j) {
  const std::size_t row = static_cast<std::size_t>(j) * static_cast<std::size_t>(size.z) + static_cast<std::size_t>(k);
  for (std::size_t run = regions.row_begins[row]; run < regions.row_begins[row + 1]; ++run)
    if (regions.runs[run].first <= i && i <= regions.runs[run].last) return regions.runs[run].region;
  return -1;
}

TEST(Regions, ACornerThatIsCutOffIsARegionOfItsOwn) {
  const GridSize size{10, 6, 3};
  Cells open(size.cells(), 1);
  for (int j = 0; j < size.y; ++j)
    for (int k = 0; k < size.z; ++k) open[size.at(7, k, j)] = 0;
  const Regions regions = regions_of(size, open);
  ASSERT_EQ(regions.cells.size(), 2u);
  EXPECT_EQ(regions.cells[0], 7u * 6 * 3);
  EXPECT_EQ(regions.cells[1], 2u * 6 * 3);
  EXPECT_EQ(region_at(regions, size, 7, 2, 1), -1);
  EXPECT_NE(region_at(regions, size, 6, 2, 1), region_at(regions, size, 8, 2, 1));
}

TEST(Regions, AGapInOneLayerJoinsBothSides) {
  const GridSize size{10, 6, 3};
  Cells open(size.cells(), 1);
  for (int j = 0; j < size.y; ++j)
    for (int k = 0; k < size.z; ++k) open[size.at(7, k, j)] = 0;
  open[size.at(7, 3, 2)] = 1;
  EXPECT_EQ(regions_of(size, open).cells, std::vector<std::size_t>{9u * 6 * 3 + 1});
}

TEST(Regions, CellsThatTouchByAnEdgeAreApart) {
  const GridSize size{2, 2, 1};
  EXPECT_EQ(regions_of(size, Cells{1, 0, 0, 1}).cells, (std::vector<std::size_t>{1, 1}));
}

TEST(Regions, ADeepBodyIsShutOutWhereASlimOnePasses) {
  // Two walls with a gap of five cells between them: middle cells keep 3 cells from both.
  const GridSize size{21, 15, 1};
  Cells taken(size.cells(), 0);
  for (int k = 0; k < size.z; ++k)
    if (k < 5 || k > 9) taken[size.at(10, k, 0)] = 1;
  const std::vector<std::int32_t> squared = squared_distances(size, taken);
  EXPECT_EQ(regions_of(size, cells_clear_by(squared, 3)).cells.size(), 1u);
  EXPECT_EQ(regions_of(size, cells_clear_by(squared, 3.1)).cells.size(), 2u);
}

TEST(Regions, NothingOpenHasNone) { EXPECT_TRUE(regions_of({3, 2, 1}, Cells(6, 0)).cells.empty()); }

}  // namespace
}  // namespace shoalwright
