// SPDX-License-Identifier: MIT
#include "scape/body_room.h"

#include <algorithm>
#include <cmath>

#include "tank/volume.h"

namespace shoalwright {

void BodyRooms::update(const Plan& plan, const WaterLevels& levels) {
  const GridSize size = scape_.grid.size;
  const double cell_cm = scape_.grid.cell_cm;
  const Tank tank = scape_.tank;
  const bool new_scape = shoalwright::update(scape_, plan), new_levels = !(levels_ == levels);
  if (!new_scape && !new_levels) return;
  levels_ = levels;
  lanes_.clear();
  if (new_levels || !(size == scape_.grid.size) || cell_cm != scape_.grid.cell_cm || !(tank == scape_.tank)) {
    classes_.clear();
    reaches_.clear();
  }
  for (BodyClass& one : classes_) one.up_to_date = false;
  slices_ = filled_cells(scape_);
  for (std::size_t level = 0; level < 3; ++level)
    fillings_[level] = filling_of(slices_, first_slice(levels_[level]), end_slice(levels_[level]));
}

Filling BodyRooms::filling_at(double height_cm) const {
  if (slices_.empty()) return {};
  const double at =
      std::clamp((height_cm - scape_.grid.floor_cm) / scape_.grid.cell_cm - 0.5, 0.0, static_cast<double>(slices_.size() - 1));
  const int low = static_cast<int>(at), high = std::min(low + 1, static_cast<int>(slices_.size()) - 1);
  const double t = at - low;
  const Filling below = filling_of(slices_, low, low + 1), above = filling_of(slices_, high, high + 1);
  return {below.solid + (above.solid - below.solid) * t, below.growth + (above.growth - below.growth) * t};
}

int BodyRooms::first_slice(const WaterLevel& level) const {
  const TankGrid& grid = scape_.grid;
  return std::clamp(static_cast<int>(std::ceil((level.low_cm - grid.floor_cm) / grid.cell_cm - 0.5)), 0, grid.size.y);
}

int BodyRooms::end_slice(const WaterLevel& level) const {
  const TankGrid& grid = scape_.grid;
  return std::clamp(static_cast<int>(std::ceil((level.high_cm - grid.floor_cm) / grid.cell_cm - 0.5)), 0, grid.size.y);
}

BodyClass& BodyRooms::class_of(const BodySize& body) {
  const BodyFit fit = fit_of(body.depth_cm, scape_);
  auto one = std::find_if(classes_.begin(), classes_.end(), [&](const BodyClass& known) { return known.fit == fit; });
  if (one == classes_.end()) {
    classes_.push_back({.fit = fit});
    reaches_.push_back({1, 1, 1});
    one = classes_.end() - 1;
  }
  if (!one->up_to_date && !scape_.empty()) {
    shoalwright::update(*one, scape_);
    reaches_[static_cast<std::size_t>(one - classes_.begin())] = reach_of(*one);
  }
  return *one;
}

std::array<double, 3> BodyRooms::reach_of(const BodyClass& one) const {
  std::array<double, 3> reach{1, 1, 1};
  if (one.all_hangs_together()) return reach;
  const auto row = [&](int y) { return static_cast<std::size_t>(y) * static_cast<std::size_t>(scape_.grid.size.z); };
  for (std::size_t level = 0; level < 3; ++level) {
    int all = 0, reached = 0;
    for (int y = first_slice(levels_[level]); y < end_slice(levels_[level]); ++y)
      for (std::size_t run = one.regions.row_begins[row(y)], end = one.regions.row_begins[row(y + 1)]; run < end; ++run) {
        const OpenRun& cells = one.regions.runs[run];
        all += cells.last - cells.first + 1;
        if (one.in_main_region(y, cells)) reached += cells.last - cells.first + 1;
      }
    if (all > 0) reach[level] = static_cast<double>(reached) / all;
  }
  return reach;
}

std::array<double, 3> BodyRooms::reach(const BodySize& body) {
  return reaches_[static_cast<std::size_t>(&class_of(body) - classes_.data())];
}

std::vector<CellRun> BodyRooms::cut_off(const BodySize& body) {
  const BodyClass& one = class_of(body);
  std::vector<CellRun> runs;
  for (int y = 0; y < static_cast<int>(one.slices.size()); ++y)
    for (const OpenRun& cells : one.slices[static_cast<std::size_t>(y)].cut_off)
      runs.push_back({cells.first, cells.last, cells.region, y});
  return runs;
}

Lane BodyRooms::straight_lane(BodyClass& one, std::size_t level) const {
  const WaterLevel& water = levels_[level];
  Lane lane;
  if (scape_.empty()) {
    const double middle_cm = inside_length_cm(scape_.tank) / 2, half_cm = water.empty_run_cm / 2,
                 z_cm = inside_width_cm(scape_.tank) / 2;
    lane.cm = water.empty_run_cm;
    lane.height_cm = (water.low_cm + water.high_cm) / 2;
    lane.path = {{middle_cm - half_cm, z_cm}, {middle_cm + half_cm, z_cm}};
    return lane;
  }
  const TankGrid& grid = scape_.grid;
  const double enough = water.empty_run_cm - grid.cell_cm;
  const auto found = longest_run(one, scape_, first_slice(water), end_slice(water), enough);
  if (!found) return lane;
  const auto& [y, best] = *found;
  lane.cm = best.length >= enough ? water.empty_run_cm : best.length;
  lane.height_cm = grid.y_cm(y);
  // From face to face.
  const double dx = best.to_x - best.from_x, dz = best.to_z - best.from_z, reach = std::max(std::abs(dx), std::abs(dz));
  const double beyond_x = reach > 0 ? dx / reach / 2 : 0.5, beyond_z = reach > 0 ? dz / reach / 2 : 0;
  lane.path = {{grid.x_cm(best.from_x - beyond_x), grid.z_cm(best.from_z - beyond_z)},
               {grid.x_cm(best.to_x + beyond_x), grid.z_cm(best.to_z + beyond_z)}};
  return lane;
}

Lane BodyRooms::lane(const BodySize& body, std::size_t level) {
  BodyClass& one = class_of(body);
  const auto number = static_cast<std::size_t>(&one - classes_.data());
  for (const KnownLane& known : lanes_)
    if (known.body_class == number && known.level == level && known.length_cm == body.length_cm) return known.lane;
  Lane lane = straight_lane(one, level);
  if (lane.cm > 0 && lane.cm < levels_[level].empty_run_cm && body.length_cm > 0) {
    const TankGrid& grid = scape_.grid;
    if (const auto round = longest_way_round(one, scape_, first_slice(levels_[level]), end_slice(levels_[level]),
                                             body.length_cm / grid.cell_cm)) {
      const double half_cm = std::min(round->second.length * grid.cell_cm / 2, levels_[level].empty_run_cm);
      if (half_cm > lane.cm) {
        lane = {half_cm, true, grid.y_cm(round->first), {}};
        for (const auto& [i, k] : round->second.cells) lane.path.push_back({grid.x_cm(i), grid.z_cm(k)});
      }
    }
  }
  lanes_.push_back({number, level, body.length_cm, lane});
  return lane;
}

}  // namespace shoalwright
