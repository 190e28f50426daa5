// SPDX-License-Identifier: MIT
#include "scape/tank_grid.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "tank/outline.h"
#include "tank/terrain.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// The inside seen from above in cells: where they stand, and the stretches of each row whose middles lie in the outline.
struct Plane {
  int x = 0, z = 0;
  double left_cm = 0, front_cm = 0;
  std::vector<std::vector<std::pair<int, int>>> rows;  ///< first and last cell of each stretch
};

/// Cells that come nearest to a length; at least one.
int cells_for(double length_cm, double cell_cm) { return std::max(1, static_cast<int>(std::lround(length_cm / cell_cm))); }

/// The outer face of the first cell, which is a taken one, so that both ends lose or win the same.
double first_face_cm(double from_cm, double length_cm, double cell_cm) {
  return from_cm + (length_cm - cells_for(length_cm, cell_cm) * cell_cm) / 2 - cell_cm;
}

Plane plane_of(const std::vector<Point>& outline, double cell_cm) {
  Point low = outline[0], high = outline[0];
  for (const Point& p : outline) {
    low = {std::min(low.x_cm, p.x_cm), std::min(low.z_cm, p.z_cm)};
    high = {std::max(high.x_cm, p.x_cm), std::max(high.z_cm, p.z_cm)};
  }
  Plane plane;
  plane.x = cells_for(high.x_cm - low.x_cm, cell_cm) + 2;
  plane.z = cells_for(high.z_cm - low.z_cm, cell_cm) + 2;
  plane.left_cm = first_face_cm(low.x_cm, high.x_cm - low.x_cm, cell_cm);
  plane.front_cm = first_face_cm(low.z_cm, high.z_cm - low.z_cm, cell_cm);
  plane.rows.resize(static_cast<std::size_t>(plane.z));
  std::vector<double> at;
  for (int k = 1; k + 1 < plane.z; ++k) {
    crossings(outline, plane.front_cm + (k + 0.5) * cell_cm, at);
    for (std::size_t pair = 0; pair + 1 < at.size(); pair += 2) {
      const int first = std::max(1, cell_from(at[pair], plane.left_cm, cell_cm));
      const int last = std::min(plane.x - 2, cell_from(at[pair + 1], plane.left_cm, cell_cm) - 1);
      if (first <= last) plane.rows[static_cast<std::size_t>(k)].emplace_back(first, last);
    }
  }
  return plane;
}

double area_cm2(const Plane& plane, double cell_cm) {
  int cells = 0;
  for (const auto& row : plane.rows)
    for (const auto& [first, last] : row) cells += last - first + 1;
  return cells * cell_cm * cell_cm;
}

/// Depth of the water that the cells over the mean substrate make up, cm.
double depth_cm(double fill_cm, double ground_cm, double cell_cm) {
  const double face_cm = first_face_cm(0, fill_cm, cell_cm);
  return (cell_from(fill_cm, face_cm, cell_cm) - cell_from(ground_cm, face_cm, cell_cm)) * cell_cm;
}

/// Opens row `k` of cells over a bed that rises and falls along it.
void open_row(TankGrid& grid, int k, const std::vector<std::pair<int, int>>& stretches, double slope_cm,
              const std::vector<double>& rises) {
  constexpr double slack_cm = 1e-9;  // what rounding may do to mirrored measures
  std::vector<int> ground(rises.size());
  for (std::size_t i = 0; i < rises.size(); ++i)
    ground[i] = std::max(1, cell_from(std::max(0.0, slope_cm + rises[i]) - slack_cm, grid.floor_cm, grid.cell_cm));
  for (int j = 1; j + 1 < grid.size.y; ++j)
    for (const auto& [first, last] : stretches) {
      std::uint8_t* row = grid.taken.data() + grid.size.at(0, k, j);
      for (int i = first; i <= last; ++i) row[i] = j < ground[static_cast<std::size_t>(i)];
    }
}

}  // namespace

int cell_from(double at_cm, double first_face_cm, double cell_cm) {
  return static_cast<int>(std::ceil(std::clamp((at_cm - first_face_cm) / cell_cm - 0.5, -1e6, 1e6)));
}

double cell_size_cm(const Plan& plan) {
  constexpr int steps = 15;
  constexpr double step = 0.01;
  const double fill_cm = water_line_cm(plan.tank), ground_cm = mean_substrate_cm(plan), area = inside_area_cm2(plan.tank);
  const double about_cm =
      std::max(std::clamp(std::cbrt(area * fill_cm / fine_grid_cells), finest_cell_cm, 1.0),
               std::cbrt(inside_length_cm(plan.tank) * inside_width_cm(plan.tank) * fill_cm / most_grid_cells));
  const std::vector<Point> outline = inside_outline(plan.tank);
  if (outline.empty() || !(fill_cm > ground_cm)) return about_cm;
  double best_cm = about_cm, least = 1e9;
  for (int i = -steps; i <= steps; ++i) {
    const double cell_cm = about_cm * (1 + i * step);
    const double share =
        area_cm2(plane_of(outline, cell_cm), cell_cm) / area * depth_cm(fill_cm, ground_cm, cell_cm) / (fill_cm - ground_cm);
    if (std::abs(share - 1) >= least) continue;
    least = std::abs(share - 1);
    best_cm = cell_cm;
  }
  return best_cm;
}

TankGrid tank_grid_of(const Plan& plan, double cell_cm) {
  TankGrid grid;
  const double fill_cm = water_line_cm(plan.tank);
  const std::vector<Point> outline = inside_outline(plan.tank);
  if (outline.empty() || !(fill_cm > 0)) return grid;
  const Plane plane = plane_of(outline, cell_cm);
  grid.cell_cm = cell_cm;
  grid.size = {plane.x, plane.z, cells_for(fill_cm, cell_cm) + 2};
  grid.left_cm = plane.left_cm;
  grid.front_cm = plane.front_cm;
  grid.floor_cm = first_face_cm(0, fill_cm, cell_cm);
  grid.taken.assign(grid.size.cells(), 1);
  const Substrate& substrate = plan.substrate;
  std::vector<double> rises;  // of each column, where a terrain line is drawn
  if (has_line(plan))
    for (int i = 0; i < grid.size.x; ++i) rises.push_back(rise_at(substrate.line_cm, grid.x_cm(i)));
  for (int k = 1; k + 1 < grid.size.z; ++k) {
    if (!rises.empty()) {
      open_row(grid, k, plane.rows[static_cast<std::size_t>(k)], slope_cm(plan, grid.z_cm(k)), rises);
      continue;
    }
    const int ground = std::max(1, cell_from(slope_cm(plan, grid.z_cm(k)), grid.floor_cm, cell_cm));
    for (int j = ground; j + 1 < grid.size.y; ++j)
      for (const auto& [first, last] : plane.rows[static_cast<std::size_t>(k)])
        std::fill(grid.taken.begin() + static_cast<std::ptrdiff_t>(grid.size.at(first, k, j)),
                  grid.taken.begin() + static_cast<std::ptrdiff_t>(grid.size.at(last, k, j)) + 1, std::uint8_t{0});
  }
  return grid;
}

double open_l(const TankGrid& grid) {
  const auto open = static_cast<double>(std::count(grid.taken.begin(), grid.taken.end(), 0));
  return open * grid.cell_cm * grid.cell_cm * grid.cell_cm / 1000;
}

}  // namespace shoalwright
