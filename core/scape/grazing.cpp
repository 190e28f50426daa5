// SPDX-License-Identifier: MIT
#include "scape/grazing.h"

#include <algorithm>
#include <cmath>

#include "tank/terrain.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

double glass_cm2(const Plan& plan) {
  constexpr double front_from = 0.75;  // cosine of the angle to the viewer
  const double line_cm = water_line_cm(plan.tank);
  const std::vector<Point> outline = inside_outline(plan.tank);
  // Mean of the part over 0 of what runs evenly from a to b.
  const auto mean_over_0 = [](double a, double b) {
    const double low = std::min(a, b), high = std::max(a, b);
    return low >= 0 ? (low + high) / 2 : high > 0 ? high * high / (2 * (high - low)) : 0;
  };
  // Between two places of one pane: with a terrain line in parts that end at its points, over ground that ends at the bottom.
  const std::vector<LinePoint>& line = plan.substrate.line_cm;
  const auto mean_depth_cm = [&](const Point& p, const Point& q) {
    if (!has_line(plan)) return mean_over_0(line_cm - slope_cm(plan, p.z_cm), line_cm - slope_cm(plan, q.z_cm));
    std::vector<double> at = {0, 1};
    for (const LinePoint& point : line)
      if ((p.x_cm < point.x_cm) != (q.x_cm < point.x_cm)) at.push_back((point.x_cm - p.x_cm) / (q.x_cm - p.x_cm));
    std::sort(at.begin(), at.end());
    double mean_cm = 0;
    for (std::size_t i = 1; i < at.size(); ++i) {
      const auto ground_cm = [&](double t) {
        return slope_cm(plan, p.z_cm + (q.z_cm - p.z_cm) * t) + rise_at(line, p.x_cm + (q.x_cm - p.x_cm) * t);
      };
      const double a = ground_cm(at[i - 1]), b = ground_cm(at[i]);
      mean_cm += (at[i] - at[i - 1]) * (mean_over_0(line_cm - a, line_cm - b) - mean_over_0(-a, -b));
    }
    return mean_cm;
  };
  double sum = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point &p = outline[i], &q = outline[i + 1 < outline.size() ? i + 1 : 0];
    const double x = q.x_cm - p.x_cm, z = q.z_cm - p.z_cm, length_cm = std::sqrt(x * x + z * z);
    if (x > front_from * length_cm) continue;  // counter-clockwise: only what faces the front runs to the right
    sum += length_cm * mean_depth_cm(p, q);
  }
  return sum;
}

}  // namespace

GrazingSurface grazing_surface_of(const Plan& plan, const Scape& scape) {
  GrazingSurface out{.glass_cm2 = glass_cm2(plan)};
  const TankGrid& grid = scape.grid;
  const GridSize& size = grid.size;
  const std::size_t row = static_cast<std::size_t>(size.x), slice = row * static_cast<std::size_t>(size.z);
  const double face_cm2 = grid.cell_cm * grid.cell_cm;
  const auto hard = [&](std::size_t at) {
    return scape.solid[at] && !grid.taken[at] && scape.pieces[scape.solid[at] - 1u].kind->material != Material::device;
  };
  // A cell with one face at a solid has that; on stairs of cells, where it has two or three, they stand for one slanting face.
  // With 0.3 a plane at any slope is met within 8.1 %: the worst are 45 degrees (1.3 for 1.414) and slopes near 0.4 along both
  // axes.
  constexpr double straight = 1, slanting = 0.3;
  // 1: open, with something closed right beside it. The outermost cells are all taken, so each open one has six beside it.
  for (std::size_t at = 0; at < size.cells(); ++at) {
    if (scape.distances.squared[at] != 1) continue;
    const std::uint16_t* near = scape.solid.data() + at;
    if (!(*(near - 1) | near[1] | *(near - row) | near[row] | *(near - slice) | near[slice])) continue;
    const int x = hard(at - 1) + hard(at + 1), z = hard(at - row) + hard(at + row), y = hard(at - slice) + hard(at + slice);
    const int faces = x * x + y * y + z * z;
    if (faces > 0) out.hard_cm2 += (straight + slanting * (faces - 1)) * face_cm2;
  }
  Cells leafy(slice);
  for (std::size_t i = 0; i < scape.pieces.size(); ++i)
    if (const PieceKind& kind = *scape.pieces[i].kind; !kind.solid() && kind.leaf && !kind.floats)
      for (const CellRun& run : scape.runs[i])
        for (int x = run.first_x; x <= run.last_x; ++x)
          if (!grid.taken[size.at(x, run.z, run.y)]) leafy[size.at(x, run.z, 0)] = 1;
  out.leaf_cm2 = leaf_faces * face_cm2 * static_cast<double>(std::count(leafy.begin(), leafy.end(), 1));
  return out;
}

}  // namespace shoalwright
