// SPDX-License-Identifier: MIT
#include "stocking/room.h"

#include <algorithm>

#include "stocking/body.h"
#include "stocking/crowding.h"
#include "stocking/floor.h"
#include "stocking/layers.h"
#include "stocking/least_tank.h"
#include "stocking/limits.h"
#include "stocking/style.h"
#include "stocking/territory.h"

namespace shoalwright {

namespace {

bool all_known(const std::vector<Kept>& stock) {
  return std::all_of(stock.begin(), stock.end(), [](const Kept& kept) { return kept.species != nullptr; });
}

/// Part of the floor that stones and devices stand on. Wood, caves and shells count as floor.
double stony_share(const Scape& scape) {
  const GridSize& size = scape.grid.size;
  int floor = 0, stony = 0;
  for (int k = 0; k < size.z; ++k)
    for (int i = 0; i < size.x; ++i) {
      int j = 0;
      while (j < size.y && scape.grid.taken[size.at(i, k, j)]) ++j;
      if (j == size.y) continue;
      ++floor;
      const std::uint16_t number = scape.solid[size.at(i, k, j)];
      if (!number) continue;
      const PieceShelf shelf = scape.pieces[number - 1u].kind->shelf;
      stony += shelf == PieceShelf::stone || shelf == PieceShelf::devices;
    }
  return floor > 0 ? static_cast<double>(stony) / floor : 0;
}

GroupRoom group_room(const Species& species, const Demand& demand, const Room& room, BodyRooms& bodies) {
  const std::size_t main = main_layer(depth_shares(species));
  GroupRoom group;
  group.species = species.id;
  group.lane = bodies.lane(body_size_of(species), main);
  group.lane_cm = group.lane.cm;
  group.lane_needed_cm = lane_needed_cm(species);
  const LayerWater water = layer_water(room);
  for (std::size_t i = 0; i < 3; ++i) {
    if (!(demand.depth[i] >= used_layer_share || i == main)) continue;
    group.open_l += open_l(demand, water, i);
    const std::optional<double>& crowding = room.layers[i].crowding;
    if (crowding && !(group.crowding >= crowding)) group.crowding = crowding;
  }
  return group;
}

}  // namespace

LayerWater layer_water(const Room& room) {
  LayerWater water;
  for (std::size_t i = 0; i < 3; ++i) {
    water.water_l[i] = room.layers[i].water_l;
    water.plant_share[i] = room.layers[i].plant_share;
  }
  return water;
}

Demand demand_of(const Kept& kept, BodyRooms& bodies) {
  Demand demand = demand_of(kept);
  demand.reach = bodies.reach(body_size_of(*kept.species));
  double reached = 0;
  for (std::size_t i = 0; i < 3; ++i)
    if (demand.reach[i] > 0) reached += demand.depth[i];
  if (!(reached > 0)) return demand;
  for (std::size_t i = 0; i < 3; ++i) demand.depth[i] = demand.reach[i] > 0 ? demand.depth[i] / reached : 0;
  return demand;
}

Room room_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume, BodyRooms& bodies) {
  Room room;
  const Layers layers = layers_of(plan);
  const double planted = plant_share(plan.planting.value_or(Planting::none));
  const char* names[] = {"surface", "mid", "bottom"};
  for (std::size_t i = 0; i < 3; ++i) {
    Layer& layer = room.layers[i];
    const Filling& filling = bodies.fillings()[i];
    layer.name = names[i];
    layer.from_cm = layers.depth_cm * static_cast<double>(i) / 3;
    layer.to_cm = layers.depth_cm * static_cast<double>(i + 1) / 3;
    layer.water_l = layers.water_l[i] * (1 - filling.solid);
    layer.plant_share = std::min(1.0, planted + (filling.solid < 1 ? filling.growth / (1 - filling.solid) : 0));
    layer.open_l = layer.water_l * open_share(layer.plant_share);
    layer.lane = bodies.lane({}, i);
    layer.lane_cm = layer.lane.cm;
    layer.empty_lane_cm = layers.run_cm[i];
    room.open_l += layer.open_l;
  }
  // What is drawn is counted, but a scape never gives more floor than the bare tank is granted.
  room.floor_cm2 = std::min(usable_floor_share, 1 - stony_share(bodies.scape())) * inside_area_cm2(plan.tank);

  std::vector<Demand> demands;
  for (const Kept& kept : stock) demands.push_back(kept.species ? demand_of(kept, bodies) : Demand{});
  if (all_known(stock)) {
    if (plan.planting || stock.empty()) {  // nobody wants room, whatever is planted
      const auto crowding = layer_crowding(demands, layer_water(room));
      for (std::size_t i = 0; i < 3; ++i) room.layers[i].crowding = crowding[i];
    }
    if (room.floor_cm2 > 0 && volume.gross_l > 0) {
      room.sight_factor = sight_factor(territories_of(plan, stock, bodies));
      room.floor_crowding = floor_wanted_cm2(stock, room.sight_factor) / room.floor_cm2;
    }
  }
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i].species) room.groups.push_back(group_room(*stock[i].species, demands[i], room, bodies));
  return room;
}

Room room_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume) {
  BodyRooms bodies = bodies_of(plan);
  return room_of(plan, stock, volume, bodies);
}

}  // namespace shoalwright
