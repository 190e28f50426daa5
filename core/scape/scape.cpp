// SPDX-License-Identifier: MIT
#include "scape/scape.h"

#include <algorithm>
#include <utility>

#include "tank/volume.h"

namespace shoalwright {

namespace {

/// Whether growth stands as it stood, under the same numbers.
bool same_growth(const std::vector<PlacedPiece>& before, const std::vector<PlacedPiece>& now) {
  for (std::size_t i = 0; i < std::max(before.size(), now.size()); ++i) {
    const bool was = i < before.size() && !before[i].kind->solid(), is = i < now.size() && !now[i].kind->solid();
    if (was != is || (is && !(before[i] == now[i]))) return false;
  }
  return true;
}

std::vector<int> wet_cells_of(const TankGrid& grid) {
  std::vector<int> wet;
  const auto slice = static_cast<std::ptrdiff_t>(grid.size.x) * grid.size.z;
  for (auto first = grid.taken.begin(); first != grid.taken.end(); first += slice)
    wet.push_back(static_cast<int>(std::count(first, first + slice, 0)));
  return wet;
}

/// No piece in any cell; rows that have none are left alone.
void clear_numbers(const Scape& scape, std::vector<std::uint16_t>& numbers, char have) {
  const auto wide = static_cast<std::ptrdiff_t>(scape.grid.size.x);
  if (numbers.size() != scape.grid.size.cells() || scape.rows_have.size() * static_cast<std::size_t>(wide) != numbers.size()) {
    numbers.assign(scape.grid.size.cells(), 0);
    return;
  }
  for (std::size_t row = 0; row < scape.rows_have.size(); ++row)
    if (scape.rows_have[row] & have)
      std::fill_n(numbers.begin() + static_cast<std::ptrdiff_t>(row) * wide, wide, std::uint16_t{0});
}

}  // namespace

bool update(Scape& scape, const Plan& plan) {
  const bool same_tank = scape.tank == plan.tank && scape.substrate == plan.substrate;
  std::vector<PlacedPiece> pieces = placed_pieces(plan);
  if (same_tank && pieces == scape.pieces) return false;
  scape.tank = plan.tank;
  scape.substrate = plan.substrate;
  if (pieces.empty() && !has_line(plan)) {
    scape.grid = {};
    scape.pieces.clear();
    scape.runs.clear();
    scape.solid.clear();
    scape.growth.clear();
    scape.rows_have.clear();
    scape.wet_cells.clear();
    return true;
  }
  const bool same_grid = same_tank && scape.grid.size.cells() > 0;
  if (!same_grid) {
    scape.grid = tank_grid_of(plan, cell_size_cm(plan));
    scape.wet_cells = wet_cells_of(scape.grid);
  }
  const GridSize& size = scape.grid.size;
  scape.runs.resize(pieces.size());
  clear_numbers(scape, scape.solid, Scape::has_solid);
  clear_numbers(scape, scape.growth, Scape::has_growth);
  scape.rows_have.assign(static_cast<std::size_t>(size.z) * static_cast<std::size_t>(size.y), 0);
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
      scape.rows_have[first / static_cast<std::size_t>(size.x)] |= solid ? Scape::has_solid : Scape::has_growth;
      if (solid) std::fill_n(taken.begin() + static_cast<std::ptrdiff_t>(first), count, std::uint8_t{1});
    }
  }
  update(scape.distances, size, taken);
  if (!same_grid || !same_growth(scape.pieces, pieces)) scape.growth_version = scape.distances.version;
  scape.pieces = std::move(pieces);
  return true;
}

}  // namespace shoalwright
