// SPDX-License-Identifier: MIT
#include "stocking/profile.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "stocking/layers.h"
#include "stocking/limits.h"
#include "stocking/over_depth.h"
#include "tank/open_water.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// What solids and plants leave open of the water.
double open_of(const Filling& filling, double planted) {
  const double water = 1 - filling.solid;
  return water > 0 ? water * open_share(std::min(1.0, planted + filling.growth / water)) : 0;
}

}  // namespace

DepthProfile depth_profile_of(const Plan& plan, const std::vector<Kept>& stock, const BodyRooms& bodies, int strips_per_layer) {
  DepthProfile profile;
  const Layers layers = layers_of(plan);
  if (!(layers.depth_cm > 0)) return profile;
  const int strips = 3 * std::max(1, strips_per_layer);
  const double step = layers.depth_cm / strips, line_cm = water_line_cm(plan.tank);
  const double planted = plant_share(plan.planting.value_or(Planting::none));
  profile.step_cm = step;

  const int all_strips = std::max(strips, static_cast<int>(std::ceil((line_cm - lowest_substrate_cm(plan)) / step - 1e-9)));
  std::vector<double> edges_cm;
  for (int i = 0; i < all_strips; ++i) edges_cm.push_back(i == 0 ? line_cm : line_cm - i * step);
  const std::vector<double> edges_l = open_water_below_l(plan, edges_cm);
  double below_l = edges_l[0];
  for (int i = 1; i <= all_strips; ++i) {
    const double next_l = i == all_strips ? 0 : edges_l[static_cast<std::size_t>(i)];
    profile.open_l_cm.push_back((below_l - next_l) * open_of(bodies.filling_at(line_cm - (i - 0.5) * step), planted) / step);
    below_l = next_l;
  }
  // Strips see the scape at their middles only: brought back to what the whole layer has open.
  for (std::size_t layer = 0; layer < 3; ++layer) {
    const std::size_t per = static_cast<std::size_t>(strips / 3), first = layer * per,
                      end = layer == 2 ? profile.open_l_cm.size() : first + per;
    double sum = 0;
    for (std::size_t i = first; i < end; ++i) sum += profile.open_l_cm[i] * step;
    const double whole = layers.water_l[layer] * open_of(bodies.fillings()[layer], planted);
    if (sum > 0)
      for (std::size_t i = first; i < end; ++i) profile.open_l_cm[i] *= whole / sum;
  }
  for (const Kept& kept : stock) {
    if (!kept.species) continue;
    const Demand demand = demand_of(kept);
    GroupProfile group{.species = kept.id, .wanted_l_cm = {}};
    const std::vector<double> shares = over_depth(demand.depth, strips / 3);
    for (int i = 0; i < all_strips; ++i)
      group.wanted_l_cm.push_back(i < strips ? demand.count * demand.personal_l * shares[static_cast<std::size_t>(i)] / step : 0);
    profile.groups.push_back(std::move(group));
  }
  return profile;
}

DepthProfile depth_profile_of(const Plan& plan, const std::vector<Kept>& stock, int strips_per_layer) {
  return depth_profile_of(plan, stock, bodies_of(plan), strips_per_layer);
}

}  // namespace shoalwright
