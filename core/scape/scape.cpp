// SPDX-License-Identifier: MIT
#include "scape/scape.h"

#include <algorithm>
#include <cstring>
#include <utility>

namespace shoalwright {

bool update(Scape& scape, const Plan& plan) {
  const bool same_tank = scape.tank == plan.tank && scape.substrate == plan.substrate;
  std::vector<PlacedPiece> pieces = placed_pieces(plan);
  if (same_tank && pieces == scape.pieces) return false;
  scape.tank = plan.tank;
  scape.substrate = plan.substrate;
  if (pieces.empty()) {
    scape.grid = {};
    scape.pieces.clear();
    scape.runs.clear();
    scape.solid.clear();
    scape.growth.clear();
    scape.grown_rows.clear();
    return true;
  }
  const bool same_grid = same_tank && scape.grid.size.cells() > 0;
  if (!same_grid) scape.grid = tank_grid_of(plan, cell_size_cm(plan));
  const GridSize& size = scape.grid.size;
  scape.runs.resize(pieces.size());
  for (std::vector<std::uint16_t>* numbers : {&scape.solid, &scape.growth}) {
    numbers->resize(size.cells());
    std::memset(numbers->data(), 0, numbers->size() * sizeof(std::uint16_t));
  }
  scape.grown_rows.assign(static_cast<std::size_t>(size.z) * static_cast<std::size_t>(size.y), 0);
  Cells taken = scape.grid.taken;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const PlacedPiece& piece = pieces[i];
    if (!same_grid || i >= scape.pieces.size() || !(scape.pieces[i] == piece)) scape.runs[i] = cells_of(piece, scape.grid);
    const bool solid = piece.kind->solid();
    const auto number = static_cast<std::uint16_t>(std::min<std::size_t>(i + 1, 0xffff));
    for (const CellRun& run : scape.runs[i]) {
      const std::size_t first = size.at(run.first_x, run.z, run.y),
                        count = static_cast<std::size_t>(run.last_x - run.first_x + 1);
      std::fill_n((solid ? scape.solid : scape.growth).begin() + static_cast<std::ptrdiff_t>(first), count, number);
      if (!solid) scape.grown_rows[first / static_cast<std::size_t>(size.x)] = 1;
      if (solid) std::fill_n(taken.begin() + static_cast<std::ptrdiff_t>(first), count, std::uint8_t{1});
    }
  }
  scape.pieces = std::move(pieces);
  update(scape.distances, size, taken);
  return true;
}

}  // namespace shoalwright
