// SPDX-License-Identifier: MIT
#include "scape/scape.h"

#include <algorithm>
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
    scape.solid.clear();
    scape.growth.clear();
    scape.growth_runs.clear();
    return true;
  }
  if (!same_tank || scape.grid.size.cells() == 0) scape.grid = tank_grid_of(plan, cell_size_cm(plan));
  scape.pieces = std::move(pieces);
  const GridSize& size = scape.grid.size;
  scape.solid.assign(size.cells(), 0);
  scape.growth.assign(size.cells(), 0);
  scape.growth_runs.assign(scape.pieces.size(), {});
  Cells taken = scape.grid.taken;
  for (std::size_t i = 0; i < scape.pieces.size(); ++i) {
    const PlacedPiece& piece = scape.pieces[i];
    const bool solid = piece.kind->solid();
    const auto number = static_cast<std::uint16_t>(std::min<std::size_t>(i + 1, 0xffff));
    std::vector<CellRun> runs = cells_of(piece, scape.grid);
    for (const CellRun& run : runs) {
      const std::size_t first = size.at(run.first_x, run.z, run.y),
                        count = static_cast<std::size_t>(run.last_x - run.first_x + 1);
      std::fill_n((solid ? scape.solid : scape.growth).begin() + static_cast<std::ptrdiff_t>(first), count, number);
      if (solid) std::fill_n(taken.begin() + static_cast<std::ptrdiff_t>(first), count, std::uint8_t{1});
    }
    if (!solid) scape.growth_runs[i] = std::move(runs);
  }
  update(scape.distances, size, taken);
  return true;
}

}  // namespace shoalwright
