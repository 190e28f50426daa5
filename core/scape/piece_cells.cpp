// SPDX-License-Identifier: MIT
#include "scape/piece_cells.h"

#include <algorithm>
#include <cmath>

#include "tank/outline.h"

namespace shoalwright {

namespace {

void add_run(const TankGrid& grid, int first_x, int last_x, int z, int y, std::vector<CellRun>& out) {
  first_x = std::max(first_x, 0);
  last_x = std::min(last_x, grid.size.x - 1);
  if (first_x <= last_x) out.push_back({first_x, last_x, z, y});
}

/// One level of an outline, corner by corner, row by row.
void add_level(const TankGrid& grid, const std::vector<Point>& corners, int y, std::vector<double>& cuts,
               std::vector<CellRun>& out) {
  double low = corners[0].z_cm, high = low;
  for (const Point& p : corners) {
    low = std::min(low, p.z_cm);
    high = std::max(high, p.z_cm);
  }
  const int first = std::max(0, cell_from(low, grid.front_cm, grid.cell_cm)),
            last = std::min(grid.size.z - 1, cell_from(high, grid.front_cm, grid.cell_cm));
  for (int k = first; k <= last; ++k) {
    crossings(corners, grid.z_cm(k), cuts);
    for (std::size_t pair = 0; pair + 1 < cuts.size(); pair += 2)
      add_run(grid, cell_from(cuts[pair], grid.left_cm, grid.cell_cm), cell_from(cuts[pair + 1], grid.left_cm, grid.cell_cm) - 1,
              k, y, out);
  }
}

void add_prism(const PlacedPiece& piece, const Prism& prism, const TankGrid& grid, std::vector<CellRun>& out) {
  const double from = piece.foot_cm + prism.from * piece.height_cm, to = piece.foot_cm + prism.to * piece.height_cm;
  const int first = std::max(0, cell_from(from, grid.floor_cm, grid.cell_cm)),
            end = std::min(grid.size.y, cell_from(to, grid.floor_cm, grid.cell_cm));
  std::vector<Point> corners(prism.outline.size());
  std::vector<double> cuts;
  for (int j = first; j < end; ++j) {
    const double up = (grid.y_cm(j) - from) / (to - from), wide = 1 + (prism.top - 1) * up;
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const double u = prism.u + prism.lean_u * up + prism.outline[i].u * prism.length * wide,
                   v = prism.v + prism.lean_v * up + prism.outline[i].v * prism.depth * wide;
      const TankPoint at = piece.at(u * piece.length_cm, v * piece.depth_cm, 0);
      corners[i] = {at.x_cm, at.z_cm};
    }
    add_level(grid, corners, j, cuts, out);
  }
}

/// A stretch of a limb: the cells whose middles lie within its radius of the axis, between planes through both ends.
void add_stretch(const TankGrid& grid, const TankPoint& p, const TankPoint& q, double r, double s, std::vector<CellRun>& out) {
  const double most = std::max(r, s);
  const auto from = [&](double a, double b, double face) {
    return std::max(0, cell_from(std::min(a, b) - most, face, grid.cell_cm));
  };
  const auto end = [&](double a, double b, double face, int cells) {
    return std::min(cells, cell_from(std::max(a, b) + most, face, grid.cell_cm));
  };
  const double dx = q.x_cm - p.x_cm, dy = q.y_cm - p.y_cm, dz = q.z_cm - p.z_cm, length2 = dx * dx + dy * dy + dz * dz;
  if (!(length2 > 0)) return;
  for (int j = from(p.y_cm, q.y_cm, grid.floor_cm); j < end(p.y_cm, q.y_cm, grid.floor_cm, grid.size.y); ++j)
    for (int k = from(p.z_cm, q.z_cm, grid.front_cm); k < end(p.z_cm, q.z_cm, grid.front_cm, grid.size.z); ++k) {
      int begun = -1;
      const int last = end(p.x_cm, q.x_cm, grid.left_cm, grid.size.x);
      for (int i = from(p.x_cm, q.x_cm, grid.left_cm); i <= last; ++i) {
        const double x = grid.x_cm(i) - p.x_cm, y = grid.y_cm(j) - p.y_cm, z = grid.z_cm(k) - p.z_cm;
        const double along = (x * dx + y * dy + z * dz) / length2, radius = r + (s - r) * along;
        const bool inside =
            i < last && along >= 0 && along < 1 && x * x + y * y + z * z - along * along * length2 <= radius * radius;
        if (inside && begun < 0) begun = i;
        if (inside || begun < 0) continue;
        add_run(grid, begun, i - 1, k, j, out);
        begun = -1;
      }
    }
}

void add_limb(const PlacedPiece& piece, const Limb& limb, const TankGrid& grid, std::vector<CellRun>& out) {
  const double mean = std::sqrt(piece.length_cm * piece.height_cm), last = static_cast<double>(limb.points.size()) - 1;
  const auto radius = [&](std::size_t i) {
    return (limb.radius_from + (limb.radius_to - limb.radius_from) * static_cast<double>(i) / last) * mean;
  };
  const auto at = [&](const LimbPoint& p) {
    return piece.at(p.u * piece.length_cm, p.v * piece.depth_cm, p.up * piece.height_cm);
  };
  for (std::size_t i = 0; i + 1 < limb.points.size(); ++i)
    add_stretch(grid, at(limb.points[i]), at(limb.points[i + 1]), radius(i), radius(i + 1), out);
}

}  // namespace

std::vector<CellRun> cells_of(const PlacedPiece& piece, const TankGrid& grid) {
  std::vector<CellRun> out;
  for (const Prism& prism : piece.kind->prisms) add_prism(piece, prism, grid, out);
  for (const Limb& limb : piece.kind->limbs) add_limb(piece, limb, grid, out);
  return out;
}

}  // namespace shoalwright
