// SPDX-License-Identifier: MIT
#include "scape/filling.h"

namespace shoalwright {

std::vector<FilledCells> filled_cells(const Scape& scape) {
  if (scape.pieces.empty()) return {};
  const GridSize& size = scape.grid.size;
  std::vector<FilledCells> slices(scape.wet_cells.size());
  for (std::size_t y = 0; y < slices.size(); ++y) slices[y].water = scape.wet_cells[y];
  const auto wide = static_cast<std::size_t>(size.x), deep = static_cast<std::size_t>(size.z);
  for (std::size_t row = 0; row < scape.rows_have.size(); ++row) {
    if (!(scape.rows_have[row] & Scape::has_solid)) continue;
    int hard = 0;
    for (std::size_t cell = row * wide, end = cell + wide; cell < end; ++cell)
      hard += scape.grid.taken[cell] == 0 && scape.solid[cell] != 0;
    slices[row / deep].solid += hard;
  }
  for (std::size_t piece = 0; piece < scape.pieces.size(); ++piece)
    for (const CellRun& run : scape.runs[piece])
      for (std::size_t cell = size.at(run.first_x, run.z, run.y), end = size.at(run.last_x, run.z, run.y); cell <= end; ++cell)
        if (scape.growth[cell] == piece + 1 && !scape.grid.taken[cell] && !scape.solid[cell])
          slices[static_cast<std::size_t>(run.y)].growth += static_cast<double>(scape.pieces[piece].kind->filled);
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
