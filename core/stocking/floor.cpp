// SPDX-License-Identifier: MIT
#include "stocking/floor.h"

#include "stocking/crowding.h"
#include "stocking/style.h"

namespace shoalwright {

bool holds_floor(const Species& species) { return style_facts(species.life.style).holds_floor; }

double floor_demand_cm2(const Kept& kept, int count) {
  const Species& species = *kept.species;
  const StyleFacts style = style_facts(species.life.style);
  if (!(style.floor_bl2 > 0) || !(count > 0)) return 0;
  const bool same = count == kept.count;
  return floor_count(style.holds_floor, species.life.group.kind, count, same ? kept.males : std::nullopt,
                     same ? kept.females : std::nullopt) *
         floor_need_cm2(species.life.style, species.size.body, species.size.adult_tl_cm);
}

double floor_taken_cm2(const Kept& kept, double sight_factor) {
  return floor_demand_cm2(kept, kept.count) * (holds_floor(*kept.species) ? sight_factor : 1);
}

double floor_wanted_cm2(const std::vector<Kept>& stock, double sight_factor) {
  double wanted = 0;
  for (const Kept& kept : stock) wanted += floor_taken_cm2(kept, sight_factor);
  return wanted;
}

}  // namespace shoalwright
