// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"
#include "scape/grid.h"

namespace shoalwright {

/// The inside of a tank in cells, with one layer of taken cells all around (panes, floor, and the air over the water line). It
/// stands symmetrically in the tank: half a cell at most is lost or won at each pane.
struct TankGrid {
  GridSize size;
  double cell_cm = 1;
  double left_cm = 0, front_cm = 0, floor_cm = 0;  ///< outer faces of the first cells, in the axes of the plan
  Cells taken;                                     ///< 1 where no fish can be: glass, air, substrate

  double x_cm(double cell) const { return left_cm + (cell + 0.5) * cell_cm; }   ///< middle of a cell from the left pane
  double z_cm(double cell) const { return front_cm + (cell + 0.5) * cell_cm; }  ///< from the front pane
  double y_cm(double cell) const { return floor_cm + (cell + 0.5) * cell_cm; }  ///< above the inside bottom
};

inline constexpr double most_grid_cells = 4e5;    ///< of the largest tanks: the cells grow
inline constexpr double fine_grid_cells = 60000;  ///< of small tanks: the cells shrink
inline constexpr double finest_cell_cm = 0.5;     ///< but not below this

/// About 1 cm; less where a tank would have fewer than `fine_grid_cells` of them, more where it would have more than
/// `most_grid_cells`. Of the sizes close by it is the one whose whole cells hold most nearly the water of the tank.
double cell_size_cm(const Plan& plan);

/// A cell is water where its middle lies inside the panes, over the substrate and under the water line. Without cells
/// where the measures span no tank. `cell_cm` above 0.
TankGrid tank_grid_of(const Plan& plan, double cell_cm);

/// Number of the first cell of an axis whose middle lies at `at_cm` or beyond; `first_face_cm`: outer face of cell 0.
int cell_from(double at_cm, double first_face_cm, double cell_cm);

/// The water of the grid, L.
double open_l(const TankGrid& grid);

}  // namespace shoalwright
