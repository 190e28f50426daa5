// SPDX-License-Identifier: MIT
#include "rules/shares.h"

#include <algorithm>

#include "rules/edits.h"
#include "rules/limits.h"
#include "stocking/body.h"
#include "stocking/layers.h"
#include "stocking/oxygen_use.h"
#include "stocking/ration.h"
#include "stocking/style.h"
#include "units/order.h"

namespace shoalwright {

namespace {

double sum_of(const std::vector<Part>& parts) {
  double sum = 0;
  for (const Part& part : parts) sum += part.amount;
  return sum;
}

void largest_first(std::vector<Part>& parts) {
  sort_stable(parts, [](const Part& a, const Part& b) { return a.amount > b.amount; });
}

}  // namespace

std::vector<Part> layer_parts(const Facts& facts, std::size_t layer) {
  std::vector<Part> parts;
  const LayerWater water = layer_water(facts.room);
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const Demand demand = demand_of(kept, facts.bodies);
    const double open = open_l(demand, water, layer);  // 0 where a body is too large for the level: it takes nothing there
    parts.push_back({&kept, open > 0 ? demand.count * demand.personal_l * demand.depth[layer] / open : 0});
  }
  return parts;
}

std::vector<Part> floor_parts(const Facts& facts) {
  std::vector<Part> parts;
  for (const Kept& kept : facts.stock)
    if (kept.species) parts.push_back({&kept, floor_taken_cm2(kept, facts.room.sight_factor)});
  return parts;
}

std::vector<Part> feed_parts(const Facts& facts) {
  constexpr double at_temperature_c = 25;
  std::vector<Part> parts;
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const double mass_g = adult_mass_g(*kept.species);
    parts.push_back({&kept, daily_feed_g(kept.count, mass_g, adult_ration_pct(mass_g), at_temperature_c)});
  }
  return parts;
}

std::vector<Part> breath_parts(const Facts& facts, double temperature_c) {
  std::vector<Part> parts;
  for (const Kept& kept : facts.stock) {
    if (!kept.species) return {};
    Burden burden = burden_of(*kept.species, temperature_c);
    burden.feed_g_d *= kept.count;
    burden.resting_oxygen_mg_h *= kept.count;
    const std::optional<OxygenUse> use = night_oxygen_use(facts.plan, 0.0, burden);
    if (!use) return {};
    parts.push_back({&kept, use->total_mg_h()});
  }
  return parts;
}

std::vector<const Kept*> main_parts(std::vector<Part> parts) {
  const double sum = sum_of(parts);
  largest_first(parts);
  std::vector<const Kept*> named;
  double said = 0;
  for (const Part& part : parts) {
    if (!(part.amount > 0) || (!named.empty() && said >= limits::named_share * sum)) break;
    named.push_back(part.kept);
    said += part.amount;
  }
  std::sort(named.begin(), named.end());
  return named;
}

double in_proportion(const Kept& kept, int count, double part) { return part * count / kept.count; }

double on_the_floor(const Kept& kept, int count, double part) {
  const double whole = floor_demand_cm2(kept, kept.count);  // more than its part where pieces break the sight of holders
  return whole > 0 ? part * floor_demand_cm2(kept, count) / whole : 0;
}

void remedy_by_fewer(const Facts& facts, std::vector<Part> parts, double share, LeftWith left_with, Finding& finding) {
  largest_first(parts);
  const double sum = sum_of(parts), allowed = sum * share;
  for (const Part& part : parts) {
    const Kept& kept = *part.kept;
    const int least = std::max(kept.species->life.group.least, 1);
    if (sum - part.amount + left_with(kept, least, part.amount) > allowed) continue;
    int few = least, many = kept.count;  // few is enough, many is too many
    while (many - few > 1) {
      const int count = few + (many - few) / 2;
      (sum - part.amount + left_with(kept, count, part.amount) > allowed ? many : few) = count;
    }
    if (few >= kept.count || !can_set_count(facts.plan, kept, few)) continue;
    remedy_by_count(facts.plan, kept, few, finding);
    return;
  }
  for (const Part& part : parts) {
    if (!(part.amount > 0) || !can_set_count(facts.plan, *part.kept, 0)) continue;
    remedy_by_count(facts.plan, *part.kept, 0, finding);
    return;
  }
}

}  // namespace shoalwright
