// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "scape/distance.h"
#include "scape/piece_cells.h"
#include "scape/tank_grid.h"
#include "tank/placed_piece.h"

namespace shoalwright {

/// The inside of a tank with its pieces and its terrain line, in cells; without either nothing is worked out and there are no
/// cells. Owned by whoever
/// asks again and again: what has not changed is kept.
struct Scape {
  TankGrid grid;                           ///< glass, air and substrate
  std::vector<PlacedPiece> pieces;         ///< in the order of the plan
  std::vector<std::vector<CellRun>> runs;  ///< the cells of each piece
  std::vector<std::uint16_t> solid;        ///< number of the solid piece in each cell from 1, 0: none
  std::vector<std::uint16_t> growth;       ///< the same of pieces that slim bodies pass through
  std::vector<char> rows_have;             ///< of each row of cells: whether solids and such growth are in it
  Distances distances;                     ///< from glass, air, substrate and solids
  std::uint32_t growth_version = 0;        ///< the last of those in which some growth changed
  std::vector<int> wet_cells;              ///< of the empty tank, slice by slice
  static constexpr char has_solid = 1, has_growth = 2;
  bool empty() const { return grid.size.cells() == 0; }  ///< without cells
  // What it was built for.
  Tank tank;
  Substrate substrate;
};

/// Brings it up to a plan. True where something of the tank, the substrate or the pieces is new.
bool update(Scape& scape, const Plan& plan);

}  // namespace shoalwright
