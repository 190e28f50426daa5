// SPDX-License-Identifier: MIT
#include "stocking/layers.h"

#include <algorithm>

#include "stocking/limits.h"
#include "stocking/style.h"
#include "tank/open_water.h"
#include "tank/volume.h"

namespace shoalwright {

Layers layers_of(const Plan& plan) {
  Layers layers;
  const double line_cm = water_line_cm(plan.tank);
  const double depth_cm = line_cm - mean_substrate_cm(plan);
  if (!(depth_cm > 0) || !(open_water_below_l(plan, line_cm) > 0)) return layers;
  layers.depth_cm = depth_cm;
  std::vector<Point> above;
  for (std::size_t i = 0; i < 3; ++i) {
    const double top_cm = line_cm - depth_cm * static_cast<double>(i) / 3,
                 bottom_cm = line_cm - depth_cm * static_cast<double>(i + 1) / 3;
    const double below_l = i == 2 ? 0 : open_water_below_l(plan, bottom_cm);
    layers.water_l[i] = open_water_below_l(plan, top_cm) - below_l;
    std::vector<Point> outline = open_outline(plan, (top_cm + bottom_cm) / 2);
    layers.run_cm[i] = i > 0 && outline == above ? layers.run_cm[i - 1] : longest_run_cm(outline);
    above = std::move(outline);
  }
  return layers;
}

void update(BodyRooms& bodies, const Plan& plan) {
  const Layers layers = layers_of(plan);
  const double line_cm = water_line_cm(plan.tank);
  WaterLevels levels;
  for (std::size_t i = 0; i < 3; ++i) {
    const double top_cm = line_cm - layers.depth_cm * static_cast<double>(i) / 3,
                 bottom_cm = line_cm - layers.depth_cm * static_cast<double>(i + 1) / 3;
    levels[i] = {i == 2 ? 0 : bottom_cm, top_cm, layers.run_cm[i]};
  }
  bodies.update(plan, levels);
}

BodyRooms bodies_of(const Plan& plan) {
  BodyRooms bodies;
  update(bodies, plan);
  return bodies;
}

Demand demand_of(const Kept& kept) {
  const Species& species = *kept.species;
  return {.count = static_cast<double>(kept.count),
          .personal_l = personal_volume_l(style_facts(species.life.style).room_bl3, species.size.body, species.size.adult_tl_cm),
          .depth = depth_shares(species),
          .plants_are_room = species.life.style == Style::invertebrate || species.size.adult_tl_cm <= among_plants_cm};
}

}  // namespace shoalwright
