// SPDX-License-Identifier: MIT
#include "rules/bears.h"

#include "rules/limits.h"
#include "rules/shares.h"
#include "rules/tank_fit.h"

namespace shoalwright {

bool bears(const Facts& facts, const Kept& kept, int count) {
  const auto grave = [](const Fit& fit) { return fit.severity == Severity::harm || fit.severity == Severity::strain; };
  const Species& species = *kept.species;
  if (grave(empty_run_fit(facts, species)) || grave(lane_fit(facts, species)) || grave(least_length_fit(facts, species)) ||
      grave(width_fit(facts, species)) || grave(height_fit(facts, species)) || grave(volume_fit(facts, species)))
    return false;
  const double full = in_view(limits::crowding, facts.plan.strictness).strain;
  for (std::size_t layer = 0; layer < 3; ++layer) {
    const std::optional<double>& crowding = facts.room.layers[layer].crowding;
    if (!crowding) continue;
    for (const Part& part : layer_parts(facts, layer))
      if (part.kept == &kept && *crowding + part.amount * (count - kept.count) / kept.count > full) return false;
  }
  if (!facts.room.floor_crowding) return true;
  const double more_cm2 = floor_demand_cm2(kept, count) - floor_demand_cm2(kept, kept.count);
  return !(more_cm2 > 0) || *facts.room.floor_crowding + more_cm2 / facts.room.floor_cm2 <= full;
}

}  // namespace shoalwright
