// SPDX-License-Identifier: MIT
#include "stocking/crowding.h"

#include <algorithm>
#include <cmath>

#include "stocking/limits.h"
#include "stocking/style.h"
#include "units/power.h"

namespace shoalwright {

double room_length_cm(Body body, double length_cm) { return body == Body::eel ? eel_length_share * length_cm : length_cm; }

double personal_volume_l(double room_bl3, Body body, double length_cm) {
  const double length = std::clamp(room_length_cm(body, length_cm), room_length_least_cm, room_length_most_cm);
  return room_bl3 * length * length * length * raised(length / reference_length_cm, room_length_power - 3) / 1000;
}

double open_share(double plant_share) { return 1 - plants_closed_share * plant_share; }

double open_l(const Demand& demand, const LayerWater& water, std::size_t layer) {
  return water.water_l[layer] * demand.reach[layer] * (demand.plants_are_room ? 1 : open_share(water.plant_share[layer]));
}

std::array<std::optional<double>, 3> layer_crowding(const std::vector<Demand>& stock, const LayerWater& water) {
  std::array<std::optional<double>, 3> crowding;
  for (std::size_t layer = 0; layer < 3; ++layer) {
    double sum = 0;
    bool fits = true;
    for (const Demand& demand : stock) {
      const double wanted_l = demand.count * demand.depth[layer] * demand.personal_l;
      if (wanted_l == 0) continue;
      const double open = open_l(demand, water, layer);
      fits = fits && open > 0;
      if (fits) sum += wanted_l / open;
    }
    if (fits) crowding[layer] = sum;
  }
  return crowding;
}

double plant_share(Planting planting) {
  switch (planting) {
    case Planting::none: return 0;
    case Planting::light: return plants_light;
    case Planting::medium: return plants_medium;
    case Planting::dense: return plants_dense;
  }
  return 0;
}

double floor_need_cm2(Style style, Body body, double length_cm) {
  const StyleFacts facts = style_facts(style);
  if (facts.holds_floor) return facts.floor_bl2 * length_cm * length_cm;
  const double length = room_length_cm(body, length_cm);
  return facts.floor_bl2 * length * length * raised(length / reference_length_cm, room_length_power - 2);
}

double floor_count(bool holds_floor, GroupKind kind, int count, std::optional<int> males, std::optional<int> females) {
  if (!(holds_floor && count > 0)) return std::max(count, 0);
  const bool sexed = males || females;
  double m = males ? *males : std::max(0, count - females.value_or(count));
  double f = females ? *females : std::max(0, count - males.value_or(count));
  switch (kind) {
    case GroupKind::pair:
      if (!sexed) return (count + 1) / 2;
      return std::max(m, f);  // each pair one territory, and one for each that is left over
    case GroupKind::harem:
    case GroupKind::colony:
      if (!sexed) {
        f = std::min(std::round(assumed_female_share * count), count - 1.0);
        m = count - f;
      }
      return m + extra_female_ground * std::max(0.0, f - m);
    case GroupKind::solitary:
    case GroupKind::loose:
    case GroupKind::shoal: return count;
  }
  return count;
}

const char* crowding_word(double crowding) {
  if (crowding <= roomy_to) return "roomy";
  if (crowding <= comfortable_to) return "comfortable";
  if (crowding <= full_to) return "full";
  if (crowding <= crowded_to) return "crowded";
  return "overcrowded";
}

}  // namespace shoalwright
