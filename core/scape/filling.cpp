// SPDX-License-Identifier: MIT
#include "scape/filling.h"

#include <algorithm>

namespace shoalwright {

std::vector<FilledCells> filled_cells(const Scape& scape) {
  if (scape.empty()) return {};
  const GridSize& size = scape.grid.size;
  std::vector<FilledCells> slices(scape.wet_cells.size());
  for (std::size_t y = 0; y < slices.size(); ++y) slices[y].water = scape.wet_cells[y];
  // What solids take is what is wet in the empty tank and is not with them.
  const auto wide = static_cast<std::ptrdiff_t>(size.x);
  const auto wet = [&](const Cells& taken, std::size_t row) {
    const auto first = taken.begin() + static_cast<std::ptrdiff_t>(row) * wide;
    return static_cast<int>(std::count(first, first + wide, std::uint8_t{0}));
  };
  for (std::size_t row = 0; row < scape.rows_have.size(); ++row)
    if (scape.rows_have[row] & Scape::has_solid)
      slices[row / static_cast<std::size_t>(size.z)].solid += wet(scape.grid.taken, row) - wet(scape.distances.taken, row);
  for (std::size_t piece = 0; piece < scape.pieces.size(); ++piece)
    for (const CellRun& run : scape.runs[piece]) {
      int grown = 0;
      for (std::size_t cell = size.at(run.first_x, run.z, run.y), end = size.at(run.last_x, run.z, run.y); cell <= end; ++cell)
        grown += static_cast<int>(scape.growth[cell] == piece + 1) & static_cast<int>(scape.distances.taken[cell] == 0);
      if (grown > 0)
        slices[static_cast<std::size_t>(run.y)].growth += grown * static_cast<double>(scape.pieces[piece].kind->filled);
    }
  return slices;
}

Filling filling_of(const std::vector<FilledCells>& slices, int first, int end) {
  FilledCells all;
  for (int y = first; y < end; ++y) {
    const FilledCells& here = slices[static_cast<std::size_t>(y)];
    all.water += here.water;
    all.solid += here.solid;
    all.growth += here.growth;
  }
  return all.water > 0 ? Filling{all.solid / all.water, all.growth / all.water} : Filling{};
}

}  // namespace shoalwright
