// SPDX-License-Identifier: MIT
#include "stocking/profile.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "stocking/layers.h"
#include "stocking/limits.h"
#include "tank/open_water.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// Share of a group above relative depth z (0 water line, 1 mean substrate), before it is brought back to one.
double spread_above(const std::array<double, 3>& depth, double z) {
  double sum = 0;
  for (std::size_t layer = 0; layer < 3; ++layer) {
    const double middle = (static_cast<double>(layer) + 0.5) / 3;
    sum += depth[layer] * 0.5 * (1 + std::erf((z - middle) / (depth_spread * std::numbers::sqrt2)));
  }
  return sum;
}

}  // namespace

DepthProfile depth_profile_of(const Plan& plan, const std::vector<Kept>& stock, int strips_per_layer) {
  DepthProfile profile;
  const Layers layers = layers_of(plan);
  if (!(layers.depth_cm > 0)) return profile;
  const int strips = 3 * std::max(1, strips_per_layer);
  const double step = layers.depth_cm / strips, line_cm = std::min(plan.tank.fill_cm, plan.tank.height_cm);
  const double open = open_share(plant_share(plan.planting.value_or(Planting::none)));
  profile.step_cm = step;

  const double lowest_cm = std::min(substrate_height_cm(plan, 0), substrate_height_cm(plan, inside_width_cm(plan.tank)));
  const int all_strips = std::max(strips, static_cast<int>(std::ceil((line_cm - lowest_cm) / step - 1e-9)));
  double below_l = open_water_below_l(plan, line_cm);
  for (int i = 1; i <= all_strips; ++i) {
    const double next_l = i == all_strips ? 0 : open_water_below_l(plan, line_cm - i * step);
    profile.open_l_cm.push_back((below_l - next_l) * open / step);
    below_l = next_l;
  }
  for (const Kept& kept : stock) {
    if (!kept.species) continue;
    const Demand demand = demand_of(kept);
    GroupProfile group{.species = kept.id, .wanted_l_cm = {}};
    const double first = spread_above(demand.depth, 0), whole = spread_above(demand.depth, 1) - first;
    double above = first;
    for (int i = 1; i <= all_strips; ++i) {
      const double next = spread_above(demand.depth, std::min(1.0, static_cast<double>(i) / strips));
      group.wanted_l_cm.push_back(demand.count * demand.personal_l * (next - above) / whole / step);
      above = next;
    }
    profile.groups.push_back(std::move(group));
  }
  return profile;
}

}  // namespace shoalwright
