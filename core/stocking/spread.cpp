// SPDX-License-Identifier: MIT
#include "stocking/spread.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "stocking/body.h"
#include "stocking/crowding.h"
#include "stocking/layers.h"
#include "stocking/limits.h"
#include "stocking/over_depth.h"
#include "stocking/room.h"
#include "stocking/spill.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

constexpr int rows_per_level = 6, most_rounds = 40;
constexpr double fullest_spot = 0.985;  // where the level has room

/// Rows of spots from the lowest up, and the level of each: 0 surface to 2 bottom.
struct Rows {
  double line_cm = 0, height_cm = 0;
  int count = 0;
  int of(double y_cm) const {
    return std::clamp(count - 1 - static_cast<int>(std::floor((line_cm - y_cm) / height_cm)), 0, count - 1);
  }
  std::size_t level(int row) const { return static_cast<std::size_t>(std::min((count - 1 - row) / rows_per_level, 2)); }
};

/// What one group asks of the spots.
struct Wish {
  Demand demand;
  std::array<double, 3> count{};  ///< in each level
  std::vector<float> open_l;      ///< water that is open to it
};

/// The tank in cells and spots.
struct Ground {
  const TankGrid& grid;
  const std::vector<std::int32_t>& squared;
  const Scape* scape;  ///< null: neither piece nor terrain line
  Rows rows;
  GridSize size;                      ///< in spots
  std::size_t slice;                  ///< spots of one row
  std::vector<int> of_x, of_z, of_y;  ///< the spot of each cell along each axis

  std::size_t spot(int x, int z, int y) const {
    return size.at(of_x[static_cast<std::size_t>(x)], of_z[static_cast<std::size_t>(z)], of_y[static_cast<std::size_t>(y)]);
  }
  std::size_t level(std::size_t spot) const { return rows.level(static_cast<int>(spot / slice)); }
};

/// An odd number of spots, so that no cell lies on the border of two and a mirrored tank has mirrored spots.
std::vector<int> spots_along(int cells, double cell_cm, int& count) {
  const int inner = cells - 2;  // the outermost cells are panes
  count = 2 * static_cast<int>(inner * cell_cm / spot_cm / 2) + 1;
  std::vector<int> spots;
  for (int i = -1; i <= inner; ++i) spots.push_back((2 * std::clamp(i, 0, inner - 1) + 1) * count / (2 * inner));
  return spots;
}

Ground ground_of(const TankGrid& grid, const std::vector<std::int32_t>& squared, const Scape* scape, const Plan& plan,
                 double depth_cm) {
  Ground ground{grid, squared, scape, {water_line_cm(plan.tank), depth_cm / (3 * rows_per_level), 0}, {}, 0, {}, {}, {}};
  Rows& rows = ground.rows;
  rows.count = std::max(3 * rows_per_level, static_cast<int>(std::ceil((rows.line_cm - grid.floor_cm) / rows.height_cm - 0.5)));
  ground.size.y = rows.count;
  ground.of_x = spots_along(grid.size.x, grid.cell_cm, ground.size.x);
  ground.of_z = spots_along(grid.size.z, grid.cell_cm, ground.size.z);
  for (int y = 0; y < grid.size.y; ++y) ground.of_y.push_back(rows.of(grid.y_cm(y)));
  ground.slice = static_cast<std::size_t>(ground.size.x) * static_cast<std::size_t>(ground.size.z);
  return ground;
}

/// Counts the water of each spot in cells and what grows in it, and finds how far glass and cover are.
std::vector<float> look_over(const Ground& ground, Spread& out) {
  const std::size_t spots = ground.size.cells();
  const GridSize& cells = ground.grid.size;
  std::vector<float> growth(spots, 0);
  out.water_l.assign(spots, 0);
  out.clear_cm.assign(spots, 0);
  out.cover_cm.assign(spots, no_cover_cm);
  Cells sheltering(spots, 0);
  bool any_shelter = false;
  std::size_t cell = 0;
  for (int y = 0; y < cells.y; ++y)
    for (int z = 0; z < cells.z; ++z) {
      const std::size_t first = ground.spot(0, z, y);
      for (int x = 0; x < cells.x; ++x, ++cell) {
        const std::size_t spot = first + static_cast<std::size_t>(ground.of_x[static_cast<std::size_t>(x)]);
        const std::int32_t squared = ground.squared[cell];
        if (squared) {
          ++out.water_l[spot];
          out.clear_cm[spot] = std::max(out.clear_cm[spot], static_cast<float>(squared));
        }
        if (!ground.scape) continue;
        const int number = ground.scape->solid[cell] ? ground.scape->solid[cell] : ground.scape->growth[cell];
        if (!number || ground.grid.taken[cell]) continue;
        const PieceKind& kind = *ground.scape->pieces[static_cast<std::size_t>(number - 1)].kind;
        if (kind.shelter >= sheltering_from || kind.hides > 0) sheltering[spot] = any_shelter = true;
        if (squared) growth[spot] += kind.filled;
      }
    }
  for (float& clear : out.clear_cm) clear = std::max(0.0f, (std::sqrt(clear) - 0.5f) * static_cast<float>(ground.grid.cell_cm));
  if (any_shelter) {
    const std::vector<std::int32_t> away = squared_distances(ground.size, sheltering);
    const auto step_cm = static_cast<float>((out.step_x_cm + out.step_z_cm + out.step_y_cm) / 3);
    for (std::size_t i = 0; i < spots; ++i) out.cover_cm[i] = std::sqrt(static_cast<float>(away[i])) * step_cm;
  }
  return growth;
}

/// From cells to litres, so that each level has just the water of its layer; `fenced`: what is open to those that plants keep
/// out.
LayerWater to_litres(const Ground& ground, const std::array<double, 3>& whole_l, double planted, const std::vector<float>& growth,
                     Spread& out, std::vector<float>& fenced) {
  std::array<double, 3> counted{}, open{};
  for (std::size_t i = 0; i < out.water_l.size(); ++i) counted[ground.level(i)] += static_cast<double>(out.water_l[i]);
  fenced.assign(out.water_l.size(), 0);
  for (std::size_t i = 0; i < out.water_l.size(); ++i) {
    const std::size_t level = ground.level(i);
    const float in = out.water_l[i];
    if (!(in > 0)) continue;
    out.water_l[i] *= static_cast<float>(whole_l[level] / counted[level]);
    fenced[i] = out.water_l[i] * static_cast<float>(open_share(std::min(1.0, planted + static_cast<double>(growth[i] / in))));
    open[level] += static_cast<double>(fenced[i]);
  }
  LayerWater water{whole_l, {}};
  for (std::size_t level = 0; level < 3; ++level)
    if (whole_l[level] > 0) water.plant_share[level] = (1 - open[level] / whole_l[level]) / plants_closed_share;
  return water;
}

/// What of the water is open to one group, and how it would spread over it.
void look_for_places(const Ground& ground, const Species& species, BodyRooms& bodies, const Spread& out,
                     const std::vector<float>& fenced, Wish& wish, std::vector<double>& fish) {
  wish.open_l = wish.demand.plants_are_room ? out.water_l : fenced;
  if (ground.scape) {
    const BodySize body = body_size_of(species);
    const auto litre = static_cast<float>(ground.grid.cell_cm * ground.grid.cell_cm * ground.grid.cell_cm / 1000);
    const auto take = [&](const CellRun& run, float left) {
      for (int x = run.first_x; x <= run.last_x; ++x) {
        float& open = wish.open_l[ground.spot(x, run.z, run.y)];
        open = std::max(open - litre, open * left);
      }
    };
    for (const CellRun& run : bodies.cut_off(body)) take(run, 0);
    for (std::size_t piece = 0; piece < ground.scape->pieces.size(); ++piece)
      if (const PieceKind& kind = *ground.scape->pieces[piece].kind;
          !kind.solid() && body.depth_cm > static_cast<double>(kind.gap_cm))
        for (const CellRun& run : ground.scape->runs[piece]) take(run, 0.8f);
  }
  const float shy = species.life.cover == "much" ? much_to_cover : species.life.cover == "some" ? some_to_cover : 0;
  const std::vector<double> strips = over_depth(wish.demand.depth, rows_per_level);
  for (std::size_t i = 0; i < fish.size(); ++i) {
    const int strip = std::min(ground.rows.count - 1 - static_cast<int>(i / ground.slice), 3 * rows_per_level - 1);
    const float near = std::max(0.0f, 1 - out.cover_cm[i] / cover_felt_cm);
    fish[i] = static_cast<double>(wish.open_l[i] * (1 + shy * near)) * strips[static_cast<std::size_t>(strip)];
  }
  // A level that has nothing open to it: it goes where there is something.
  std::array<double, 3> found{};
  for (std::size_t i = 0; i < fish.size(); ++i) found[ground.level(i)] += fish[i];
  if (!(found[0] + found[1] + found[2] > 0)) {
    wish.open_l = out.water_l;
    for (std::size_t i = 0; i < fish.size(); ++i) {
      fish[i] = static_cast<double>(out.water_l[i]);
      found[ground.level(i)] += fish[i];
    }
  }
  const auto most = static_cast<std::size_t>(std::max_element(found.begin(), found.end()) - found.begin());
  for (std::size_t level = 0; level < 3; ++level)
    if (!(found[level] > 0)) wish.count[most] += std::exchange(wish.count[level], 0.0);
}

/// Brings the animals of one level to their number, and those of spots that would be too full to others of it.
void settle(const Ground& ground, std::size_t level, double full, const std::vector<Wish>& wishes, Spread& out) {
  const std::size_t first = level == 2 ? 0
                                       : ground.slice * static_cast<std::size_t>(ground.rows.count -
                                                                                 static_cast<int>(level + 1) * rows_per_level),
                    end = ground.slice * static_cast<std::size_t>(ground.rows.count - static_cast<int>(level) * rows_per_level);
  // What a spot holds at most: its room, or where more is wanted than the level has, its part of that.
  const auto ceiling = static_cast<float>(std::max(fullest_spot, full * 1.0005));
  for (int round = 0; round < most_rounds; ++round) {
    for (std::size_t g = 0; g < wishes.size(); ++g) {
      std::vector<double>& fish = out.groups[g].fish;
      double sum = 0;
      for (std::size_t i = first; i < end; ++i) sum += fish[i];
      const double by = sum > 0 ? wishes[g].count[level] / sum : 0;
      for (std::size_t i = first; i < end; ++i) fish[i] *= by;
      out.groups[g].in_level[level] = wishes[g].count[level];
    }
    bool over = false;
    for (std::size_t i = first; i < end; ++i) {
      if (!(out.water_l[i] > 0)) continue;
      float here = 0;
      for (std::size_t g = 0; g < wishes.size(); ++g)
        if (wishes[g].open_l[i] > 0)
          here += static_cast<float>(out.groups[g].fish[i] * wishes[g].demand.personal_l) / wishes[g].open_l[i];
      out.crowding[i] = here;
      if (!(here > ceiling * 1.001f)) continue;
      over = true;
      if (round + 1 < most_rounds)
        for (GroupSpread& group : out.groups) group.fish[i] *= static_cast<double>(ceiling / here);
    }
    if (!over) break;
  }
}

}  // namespace

Spread spread_of(const Plan& plan, const std::vector<Kept>& stock, BodyRooms& bodies) {
  Spread out;
  const Layers layers = layers_of(plan);
  if (!(layers.depth_cm > 0)) return out;
  const Scape* scape = bodies.scape().empty() ? nullptr : &bodies.scape();
  TankGrid own;
  std::vector<std::int32_t> own_squared;
  if (!scape) {
    own = tank_grid_of(plan, std::max(1.0, cell_size_cm(plan)));
    own_squared = squared_distances(own.size, own.taken);
  }
  const TankGrid& grid = scape ? scape->grid : own;
  if (grid.size.x < 3 || grid.size.z < 3) return out;
  const Ground ground = ground_of(grid, scape ? scape->distances.squared : own_squared, scape, plan, layers.depth_cm);
  out.size = ground.size;
  out.step_x_cm = (grid.size.x - 2) * grid.cell_cm / ground.size.x;
  out.step_z_cm = (grid.size.z - 2) * grid.cell_cm / ground.size.z;
  out.step_y_cm = ground.rows.height_cm;
  out.left_cm = grid.left_cm + grid.cell_cm;
  out.front_cm = grid.front_cm + grid.cell_cm;
  out.floor_cm = ground.rows.line_cm - ground.rows.count * ground.rows.height_cm;
  out.crowding.assign(out.size.cells(), -1);

  std::array<double, 3> whole_l = layers.water_l;
  for (std::size_t level = 0; scape && level < 3; ++level) whole_l[level] *= 1 - bodies.fillings()[level].solid;
  const std::vector<float> growth = look_over(ground, out);
  std::vector<float> fenced;
  const LayerWater water = to_litres(ground, whole_l, plant_share(plan.planting.value_or(Planting::none)), growth, out, fenced);

  std::vector<Demand> demands;
  std::vector<const Species*> kinds;
  for (const Kept& kept : stock) {
    if (!kept.species) continue;
    demands.push_back(demand_of(kept, bodies));
    kinds.push_back(kept.species);
    out.groups.push_back(
        {.species = kept.id, .in_level = {}, .without_room = 0, .fish = std::vector<double>(out.size.cells(), 0)});
  }
  std::vector<Spilled> places = spilled(demands, water);
  std::vector<Wish> wishes;
  for (std::size_t g = 0; g < demands.size(); ++g) {
    wishes.push_back({demands[g], places[g].count, {}});
    out.groups[g].without_room = places[g].without_room;
    look_for_places(ground, *kinds[g], bodies, out, fenced, wishes[g], out.groups[g].fish);
    places[g].count = wishes[g].count;
  }
  for (std::size_t level = 0; level < 3; ++level) settle(ground, level, crowding_of(demands, places, water, level), wishes, out);
  return out;
}

}  // namespace shoalwright
