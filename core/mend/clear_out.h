// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "assess/reckoned.h"
#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// A plan from which groups were taken until nobody is harmed.
struct Cleared {
  Plan plan;
  std::vector<PatchStep> edits;
  std::vector<std::string> says;
};

/// Takes groups out of a plan, one after another the one after which the fewest and least grave matters are left (of equal ones a
/// wish before animals that swim already), until no harm is left; then each that can stay after all stays. Groups that are pinned
/// stay. Empty where a harm is left then.
std::optional<Cleared> clear_out(const Plan& plan, const Catalog& catalog, BodyRooms& bodies);

}  // namespace shoalwright
