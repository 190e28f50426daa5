// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// What a random plan may hold beside tank, water, scape, stock and gear.
struct PlanTaste {
  bool notes = true;  ///< a name, notes of up to 200 characters, notes on groups, lines of the care sheet
  bool odd =
      true;  ///< unknown keys, unknown kinds and species, own species and values, breeding, numbers between the grid points
  bool log = false;
};

/// A valid plan, the same for the same seed everywhere: every shape of tank, up to 24 pieces and 12 groups, every choice, what is
/// not known and what is assumed. In the order and spelling of the canonical form.
Plan random_plan(std::uint64_t seed, const Catalog& catalog, PlanTaste taste = {});

}  // namespace shoalwright
