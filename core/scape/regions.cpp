// SPDX-License-Identifier: MIT
#include "scape/regions.h"

namespace shoalwright {

Regions regions_of(const GridSize& size, const Cells& open) {
  Regions regions;
  regions.of_cell.assign(open.size(), -1);
  const std::size_t row = static_cast<std::size_t>(size.x), slice = row * static_cast<std::size_t>(size.z);
  std::vector<std::size_t> to_visit;
  for (std::size_t first = 0; first < open.size(); ++first) {
    if (!open[first] || regions.of_cell[first] >= 0) continue;
    const auto number = static_cast<std::int32_t>(regions.cells.size());
    std::size_t count = 0;
    const auto visit = [&](std::size_t cell) {
      if (!open[cell] || regions.of_cell[cell] >= 0) return;
      regions.of_cell[cell] = number;
      ++count;
      to_visit.push_back(cell);
    };
    visit(first);
    while (!to_visit.empty()) {
      const std::size_t cell = to_visit.back();
      to_visit.pop_back();
      const std::size_t i = cell % row, k = cell / row % static_cast<std::size_t>(size.z);
      if (i > 0) visit(cell - 1);
      if (i + 1 < row) visit(cell + 1);
      if (k > 0) visit(cell - row);
      if (k + 1 < static_cast<std::size_t>(size.z)) visit(cell + row);
      if (cell >= slice) visit(cell - slice);
      if (cell + slice < open.size()) visit(cell + slice);
    }
    regions.cells.push_back(count);
  }
  return regions;
}

Cells cells_clear_by(const std::vector<std::int32_t>& squared_distances, double clearance) {
  const double least = clearance * clearance;
  Cells clear(squared_distances.size());
  for (std::size_t cell = 0; cell < clear.size(); ++cell) clear[cell] = squared_distances[cell] >= least ? 1 : 0;
  return clear;
}

}  // namespace shoalwright
