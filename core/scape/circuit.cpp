// SPDX-License-Identifier: MIT
#include "scape/circuit.h"

#include <algorithm>
#include <array>

#include "scape/distance.h"
#include "scape/regions.h"

namespace shoalwright {

namespace {

struct Step {
  int x, z;
};
/// Counter-clockwise seen from above, beginning to the right.
constexpr std::array<Step, 8> around{{{1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}}};

struct Plane {
  int x = 0, z = 0;
  Cells in;
  bool has(int i, int k) const {
    return i >= 0 && k >= 0 && i < x && k < z &&
           in[static_cast<std::size_t>(k) * static_cast<std::size_t>(x) + static_cast<std::size_t>(i)];
  }
};

/// Whether something that is not in the plane cannot be reached from outside, steps over corners included.
bool has_island(const Plane& plane) {
  const int wide = plane.x + 2, deep = plane.z + 2;
  std::vector<char> seen(static_cast<std::size_t>(wide) * static_cast<std::size_t>(deep), 0);
  std::vector<std::pair<int, int>> to_visit{{-1, -1}};
  std::size_t reached = 0;
  const auto visit = [&](int i, int k) {
    if (i < -1 || k < -1 || i > plane.x || k > plane.z || plane.has(i, k)) return;
    char& mark = seen[static_cast<std::size_t>(k + 1) * static_cast<std::size_t>(wide) + static_cast<std::size_t>(i + 1)];
    if (mark) return;
    mark = 1;
    ++reached;
    to_visit.emplace_back(i, k);
  };
  visit(-1, -1);
  while (!to_visit.empty()) {
    const auto [i, k] = to_visit.back();
    to_visit.pop_back();
    for (const Step& step : around) visit(i + step.x, k + step.z);
  }
  std::size_t inside = 0;
  for (const std::uint8_t mark : plane.in) inside += mark;
  return reached + inside < seen.size();
}

/// The outermost cells of a connected plane in order, by always turning as far to the right as there is a cell.
Circuit outline_of(const Plane& plane) {
  Circuit circuit;
  int i = 0, k = 0;
  while (!plane.has(i, k))
    if (++i == plane.x) {
      i = 0;
      ++k;
    }
  const int first_x = i, first_z = k;
  std::size_t heading = 0, first_heading = 8, steps_even = 0, steps_odd = 0, corners = 0;
  std::size_t last = 8;
  for (std::size_t turns = 0; turns < 4 * plane.in.size(); ++turns) {
    std::size_t found = 8;
    for (std::size_t n = 0; n < 8 && found == 8; ++n) {
      const std::size_t way = (heading + 6 + n) % 8;
      if (plane.has(i + around[way].x, k + around[way].z)) found = way;
    }
    if (found == 8) return circuit;  // a single cell
    if (i == first_x && k == first_z) {
      if (found == first_heading) break;
      if (first_heading == 8) first_heading = found;
    }
    circuit.cells.emplace_back(i, k);
    ++(found % 2 == 0 ? steps_even : steps_odd);
    if (last != 8 && last != found) ++corners;
    last = found;
    heading = found;
    i += around[found].x;
    k += around[found].z;
  }
  circuit.length =
      0.980 * static_cast<double>(steps_even) + 1.406 * static_cast<double>(steps_odd) - 0.091 * static_cast<double>(corners);
  return circuit;
}

}  // namespace

std::optional<Circuit> longest_circuit(const SwimSlice& slice, double clearance) {
  const GridSize size{slice.x, slice.z, 1};
  Cells taken(size.cells());
  for (std::size_t cell = 0; cell < taken.size(); ++cell) taken[cell] = slice.ways[cell] == Way::closed ? 1 : 0;
  const Cells clear = cells_clear_by(squared_distances(size, taken), clearance + 0.5);
  const Regions regions = regions_of(size, clear);
  std::optional<Circuit> longest;
  for (std::size_t number = 0; number < regions.cells.size(); ++number) {
    if (regions.cells[number] < 8) continue;  // the least ring
    Plane plane{slice.x, slice.z, Cells(size.cells())};
    for (int k = 0; k < slice.z; ++k)
      for (std::size_t run = regions.row_begins[static_cast<std::size_t>(k)];
           run < regions.row_begins[static_cast<std::size_t>(k) + 1]; ++run)
        if (const OpenRun& cells = regions.runs[run]; cells.region == static_cast<std::int32_t>(number))
          std::fill_n(plane.in.begin() + static_cast<std::ptrdiff_t>(size.at(cells.first, k, 0)), cells.last - cells.first + 1,
                      std::uint8_t{1});
    if (!has_island(plane)) continue;
    Circuit circuit = outline_of(plane);
    if (!longest || circuit.length > longest->length) longest = std::move(circuit);
  }
  return longest;
}

}  // namespace shoalwright
