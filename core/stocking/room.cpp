// SPDX-License-Identifier: MIT
#include "stocking/room.h"

#include <algorithm>

#include "stocking/crowding.h"
#include "stocking/layers.h"
#include "stocking/least_tank.h"
#include "stocking/limits.h"
#include "stocking/style.h"

namespace shoalwright {

namespace {

bool all_known(const std::vector<Kept>& stock) {
  return std::all_of(stock.begin(), stock.end(), [](const Kept& kept) { return kept.species != nullptr; });
}

/// Floor wanted by the whole stock, cm2. Every species must be known.
double floor_wanted_cm2(const std::vector<Kept>& stock) {
  double wanted = 0;
  for (const Kept& kept : stock) {
    const Species& s = *kept.species;
    const StyleFacts facts = style_facts(s.life.style);
    if (!(facts.floor_bl2 > 0)) continue;
    wanted += floor_count(facts.holds_floor, s.life.group.kind, kept.count, kept.males, kept.females) *
              floor_need_cm2(s.life.style, s.size.body, s.size.adult_tl_cm);
  }
  return wanted;
}

GroupRoom group_room(const Species& species, const Demand& demand, const Room& room, const Layers& layers, double plants) {
  const auto main = std::max_element(demand.depth.begin(), demand.depth.end());
  const std::size_t main_layer = static_cast<std::size_t>(main - demand.depth.begin());
  GroupRoom group;
  group.species = species.id;
  group.lane_cm = layers.run_cm[main_layer];
  group.lane_needed_cm = lane_needed_cm(species);
  for (std::size_t i = 0; i < 3; ++i) {
    if (!(demand.depth[i] >= used_layer_share || i == main_layer)) continue;
    group.open_l += layers.water_l[i] * (demand.plants_are_room ? 1 : open_share(plants));
    const std::optional<double>& crowding = room.layers[i].crowding;
    if (crowding && !(group.crowding >= crowding)) group.crowding = crowding;
  }
  return group;
}

}  // namespace

Room room_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume) {
  Room room;
  const Layers layers = layers_of(plan);
  const double plants = plant_share(plan.planting.value_or(Planting::none));
  const char* names[] = {"surface", "mid", "bottom"};
  for (std::size_t i = 0; i < 3; ++i) {
    Layer& layer = room.layers[i];
    layer.name = names[i];
    layer.from_cm = layers.depth_cm * static_cast<double>(i) / 3;
    layer.to_cm = layers.depth_cm * static_cast<double>(i + 1) / 3;
    layer.open_l = layers.water_l[i] * open_share(plants);
    layer.lane_cm = layers.run_cm[i];
    room.open_l += layer.open_l;
  }
  room.floor_cm2 = usable_floor_share * inside_area_cm2(plan.tank);

  std::vector<Demand> demands;
  for (const Kept& kept : stock) demands.push_back(kept.species ? demand_of(kept) : Demand{});
  if (all_known(stock)) {
    if (plan.planting || stock.empty()) {  // nobody wants room, whatever is planted
      const auto crowding = layer_crowding(demands, layers.water_l, plants);
      for (std::size_t i = 0; i < 3; ++i) room.layers[i].crowding = crowding[i];
    }
    if (room.floor_cm2 > 0 && volume.gross_l > 0) room.floor_crowding = floor_wanted_cm2(stock) / room.floor_cm2;
  }
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i].species) room.groups.push_back(group_room(*stock[i].species, demands[i], room, layers, plants));
  return room;
}

}  // namespace shoalwright
