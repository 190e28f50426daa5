// SPDX-License-Identifier: MIT
#include "scape/body_room.h"

#include <algorithm>
#include <cmath>
#include <cstring>

#include "scape/circuit.h"
#include "scape/marks.h"
#include "scape/straight_run.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// Faces of cells lie half a cell nearer than their middles.
double clearance_cells(const BodySize& body, double cell_cm) { return body.depth_cm / 2 / cell_cm; }

constexpr std::int32_t square(std::int32_t v) { return v * v; }

/// Length of a cell along an axis, so that the cells of the empty tank have its whole measure.
double true_cell_cm(double inside_cm, int cells) { return cells > 2 ? inside_cm / (cells - 2) : 1; }

}  // namespace

void BodyRooms::update(const Plan& plan, const WaterLevels& levels) {
  if (!shoalwright::update(scape_, plan) && levels_ == levels) return;
  levels_ = levels;
  classes_.clear();
  rounds_.clear();
  find_fillings();
}

void BodyRooms::find_fillings() {
  const GridSize& size = scape_.grid.size;
  fillings_ = {};
  of_slices_.assign(static_cast<std::size_t>(size.y), {});
  if (scape_.pieces.empty()) return;
  const std::size_t slice = static_cast<std::size_t>(size.x) * static_cast<std::size_t>(size.z);
  std::vector<double> water(of_slices_.size()), solid(water), growth(water);
  for (std::size_t y = 0; y < water.size(); ++y) {
    int wet = 0, hard = 0;
    for (std::size_t cell = slice * y, end = cell + slice; cell < end; ++cell) {
      wet += scape_.grid.taken[cell] == 0;
      hard += scape_.grid.taken[cell] == 0 && scape_.solid[cell] != 0;
    }
    water[y] = wet;
    solid[y] = hard;
  }
  for (std::size_t piece = 0; piece < scape_.pieces.size(); ++piece)
    for (const CellRun& run : scape_.growth_runs[piece])
      for (std::size_t cell = size.at(run.first_x, run.z, run.y), end = size.at(run.last_x, run.z, run.y); cell <= end; ++cell)
        if (scape_.growth[cell] == piece + 1 && !scape_.grid.taken[cell] && !scape_.solid[cell])
          growth[static_cast<std::size_t>(run.y)] += static_cast<double>(scape_.pieces[piece].kind->filled);
  const auto filling = [&](std::size_t first, std::size_t end) {
    double all = 0, hard = 0, soft = 0;
    for (std::size_t y = first; y < end; ++y) {
      all += water[y];
      hard += solid[y];
      soft += growth[y];
    }
    return all > 0 ? Filling{hard / all, soft / all} : Filling{};
  };
  for (std::size_t y = 0; y < water.size(); ++y) of_slices_[y] = filling(y, y + 1);
  for (std::size_t level = 0; level < 3; ++level)
    fillings_[level] =
        filling(static_cast<std::size_t>(first_slice(levels_[level])), static_cast<std::size_t>(end_slice(levels_[level])));
}

Filling BodyRooms::filling_at(double height_cm) const {
  if (of_slices_.empty()) return {};
  const double at =
      std::clamp((height_cm - scape_.grid.floor_cm) / scape_.grid.cell_cm - 0.5, 0.0, static_cast<double>(of_slices_.size() - 1));
  const auto low = static_cast<std::size_t>(at), high = std::min(low + 1, of_slices_.size() - 1);
  const double t = at - static_cast<double>(low);
  const auto between = [t](double a, double b) { return a + (b - a) * t; };
  return {between(of_slices_[low].solid, of_slices_[high].solid), between(of_slices_[low].growth, of_slices_[high].growth)};
}

int BodyRooms::first_slice(const WaterLevel& level) const {
  const TankGrid& grid = scape_.grid;
  return std::clamp(static_cast<int>(std::ceil((level.low_cm - grid.floor_cm) / grid.cell_cm - 0.5)), 0, grid.size.y);
}

int BodyRooms::end_slice(const WaterLevel& level) const {
  const TankGrid& grid = scape_.grid;
  return std::clamp(static_cast<int>(std::ceil((level.high_cm - grid.floor_cm) / grid.cell_cm - 0.5)), 0, grid.size.y);
}

BodyRooms::Class& BodyRooms::class_of(const BodySize& body) {
  Class wanted;
  const double clear = clearance_cells(body, scape_.grid.cell_cm);
  wanted.least_squared = std::max(1, static_cast<std::int32_t>(std::ceil((clear + 0.5) * (clear + 0.5) - 1e-9)));
  while (square(wanted.nose + 1) < wanted.least_squared) ++wanted.nose;
  for (const PlacedPiece& piece : scape_.pieces)
    if (!piece.kind->solid() && body.depth_cm > static_cast<double>(piece.kind->gap_cm))
      wanted.stopped_by_gap = std::max(wanted.stopped_by_gap, piece.kind->gap_cm);
  for (Class& one : classes_)
    if (one.least_squared == wanted.least_squared && one.stopped_by_gap == wanted.stopped_by_gap) return one;
  classes_.push_back(std::move(wanted));
  return classes_.back();
}

SwimSlice BodyRooms::slice_of(const Class& one, int y) const {
  const GridSize& size = scape_.grid.size;
  const std::size_t first = size.at(0, 0, y);
  SwimSlice slice{size.x,
                  size.z,
                  true_cell_cm(inside_length_cm(scape_.tank), size.x),
                  true_cell_cm(inside_width_cm(scape_.tank), size.z),
                  {}};
  slice.ways.resize(static_cast<std::size_t>(size.x) * static_cast<std::size_t>(size.z));
  mark_ways(scape_.distances.squared.data() + first, slice.ways.size(), one.least_squared, slice.ways.data());
  for (std::size_t piece = 0; piece < scape_.pieces.size(); ++piece)
    for (const CellRun& run : scape_.growth_runs[piece]) {
      if (run.y != y) continue;
      const bool stops = scape_.pieces[piece].kind->gap_cm <= one.stopped_by_gap;
      for (std::size_t i = size.at(run.first_x, run.z, 0), end = size.at(run.last_x, run.z, 0); i <= end; ++i) {
        Way& way = slice.ways[i];
        if (way == Way::closed || scape_.growth[first + i] != piece + 1) continue;
        way = stops ? Way::closed : way == Way::clear ? Way::slow : way;
      }
    }
  if (one.regions.runs.empty()) return slice;
  // What is clear but cut off is only water to look at.
  for (int k = 0; k < size.z; ++k) {
    const std::size_t row = static_cast<std::size_t>(y) * static_cast<std::size_t>(size.z) + static_cast<std::size_t>(k);
    for (std::size_t run = one.regions.row_begins[row]; run < one.regions.row_begins[row + 1]; ++run) {
      const OpenRun& cells = one.regions.runs[run];
      if (cells.region == one.main_region) continue;
      for (int i = cells.first; i <= cells.last; ++i)
        slice.ways[static_cast<std::size_t>(k) * static_cast<std::size_t>(size.x) + static_cast<std::size_t>(i)] = Way::near;
    }
  }
  return slice;
}

std::vector<std::pair<int, SwimSlice>> BodyRooms::unlike_slices(const Class& one, std::size_t level) const {
  const int first = first_slice(levels_[level]), count = end_slice(levels_[level]) - first, middle = first + count / 2;
  std::vector<std::pair<int, SwimSlice>> slices;
  for (int n = 0; n < count; ++n) {
    const int y = n % 2 == 0 ? middle + n / 2 : middle - (n + 1) / 2;
    SwimSlice slice = slice_of(one, y);
    const auto alike = [&](const std::pair<int, SwimSlice>& other) {
      return std::memcmp(other.second.ways.data(), slice.ways.data(), slice.ways.size()) == 0;
    };
    if (std::none_of(slices.begin(), slices.end(), alike)) slices.emplace_back(y, std::move(slice));
  }
  return slices;
}

void BodyRooms::find_reach(Class& one) {
  one.has_reach = true;
  if (scape_.pieces.empty()) return;
  const GridSize& size = scape_.grid.size;
  Cells clear(size.cells());
  mark_clear(scape_.distances.squared.data(), clear.size(), one.least_squared, clear.data());
  for (std::size_t piece = 0; piece < scape_.pieces.size(); ++piece)
    if (scape_.pieces[piece].kind->gap_cm <= one.stopped_by_gap)
      for (const CellRun& run : scape_.growth_runs[piece])
        for (std::size_t cell = size.at(run.first_x, run.z, run.y), end = size.at(run.last_x, run.z, run.y); cell <= end; ++cell)
          if (scape_.growth[cell] == piece + 1) clear[cell] = 0;
  Regions regions = regions_of(size, clear);
  if (regions.cells.size() < 2) return;
  const auto largest = std::max_element(regions.cells.begin(), regions.cells.end());
  one.main_region = static_cast<std::int32_t>(largest - regions.cells.begin());
  for (std::size_t level = 0; level < 3; ++level) {
    const auto row = [&](int y) { return static_cast<std::size_t>(y) * static_cast<std::size_t>(size.z); };
    int all = 0, reached = 0;
    for (std::size_t run = regions.row_begins[row(first_slice(levels_[level]))],
                     end = regions.row_begins[row(end_slice(levels_[level]))];
         run < end; ++run) {
      const OpenRun& cells = regions.runs[run];
      all += cells.last - cells.first + 1;
      if (cells.region == one.main_region) reached += cells.last - cells.first + 1;
    }
    if (all > 0) one.reach[level] = static_cast<double>(reached) / all;
  }
  one.regions = std::move(regions);
}

void BodyRooms::find_run(Class& one, std::size_t level) {
  one.has_run[level] = true;
  Lane& lane = one.runs[level];
  if (scape_.pieces.empty()) {
    const double middle_cm = inside_length_cm(scape_.tank) / 2, half_cm = levels_[level].empty_run_cm / 2,
                 z_cm = inside_width_cm(scape_.tank) / 2;
    lane.cm = levels_[level].empty_run_cm;
    lane.height_cm = (levels_[level].low_cm + levels_[level].high_cm) / 2;
    lane.path = {{middle_cm - half_cm, z_cm}, {middle_cm + half_cm, z_cm}};
    return;
  }
  if (!one.has_reach) find_reach(one);
  const TankGrid& grid = scape_.grid;
  const double enough = levels_[level].empty_run_cm - grid.cell_cm;
  std::optional<StraightRun> best;
  int best_y = 0;
  for (const auto& [y, slice] : unlike_slices(one, level)) {
    if (best && best->length >= enough) break;
    if (auto run = longest_straight_run(slice, one.nose, best ? best->length : 0, enough)) {
      best = run;
      best_y = y;
    }
  }
  if (!best) return;
  lane.cm = best->length >= enough ? levels_[level].empty_run_cm : best->length;
  lane.height_cm = grid.y_cm(best_y);
  // From face to face.
  const double dx = best->to_x - best->from_x, dz = best->to_z - best->from_z, reach = std::max(std::abs(dx), std::abs(dz));
  const double beyond_x = reach > 0 ? dx / reach / 2 : 0.5, beyond_z = reach > 0 ? dz / reach / 2 : 0;
  lane.path = {{grid.x_cm(best->from_x - beyond_x), grid.z_cm(best->from_z - beyond_z)},
               {grid.x_cm(best->to_x + beyond_x), grid.z_cm(best->to_z + beyond_z)}};
}

std::array<double, 3> BodyRooms::reach(const BodySize& body) {
  Class& one = class_of(body);
  if (!one.has_reach) find_reach(one);
  return one.reach;
}

std::vector<CellRun> BodyRooms::cut_off(const BodySize& body) {
  Class& one = class_of(body);
  if (!one.has_reach) find_reach(one);
  std::vector<CellRun> runs;
  for (std::size_t row = 0; row + 1 < one.regions.row_begins.size(); ++row)
    for (std::size_t run = one.regions.row_begins[row]; run < one.regions.row_begins[row + 1]; ++run) {
      const OpenRun& cells = one.regions.runs[run];
      const int in_row = static_cast<int>(row), deep = scape_.grid.size.z;
      if (cells.region != one.main_region) runs.push_back({cells.first, cells.last, in_row % deep, in_row / deep});
    }
  return runs;
}

Lane BodyRooms::lane(const BodySize& body, std::size_t level) {
  Class& one = class_of(body);
  if (!one.has_run[level]) find_run(one, level);
  const Lane& straight = one.runs[level];
  if (!(straight.cm > 0) || straight.cm >= levels_[level].empty_run_cm || !(body.length_cm > 0)) return straight;
  const auto number = static_cast<std::size_t>(&one - classes_.data());
  for (const Round& round : rounds_)
    if (round.body_class == number && round.level == level && round.length_cm == body.length_cm) return round.lane;
  Round round{number, level, body.length_cm, straight};
  const TankGrid& grid = scape_.grid;
  for (const auto& [y, slice] : unlike_slices(one, level)) {
    if (const auto circuit = longest_circuit(slice, body.length_cm / grid.cell_cm)) {
      const double half_cm = std::min(circuit->length * grid.cell_cm / 2, levels_[level].empty_run_cm);
      if (half_cm > round.lane.cm) {
        round.lane = {half_cm, true, grid.y_cm(y), {}};
        for (const auto& [i, k] : circuit->cells) round.lane.path.push_back({grid.x_cm(i), grid.z_cm(k)});
      }
    }
  }
  rounds_.push_back(std::move(round));
  return rounds_.back().lane;
}

}  // namespace shoalwright
