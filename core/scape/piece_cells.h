// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "scape/tank_grid.h"
#include "tank/placed_piece.h"

namespace shoalwright {

/// Neighbouring cells of one row of a grid, both ends included.
struct CellRun {
  int first_x = 0, last_x = 0, z = 0, y = 0;
};

/// The cells whose middles lie in the solids of a piece, held within the grid. Solids that reach into each other name a cell
/// twice.
std::vector<CellRun> cells_of(const PlacedPiece& piece, const TankGrid& grid);

}  // namespace shoalwright
