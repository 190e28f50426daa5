// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// The species that a name means: found among the keeper's own (which win) or in the catalogue; null when it is known to neither.
const Species* species_of(const Plan& plan, const Catalog& catalog, const std::string& name);

/// Its id; the name as written when it is unknown.
std::string resolved(const Plan& plan, const Catalog& catalog, const std::string& name);

/// The animals of a species on all lines, and how many of them swim already.
struct Total {
  int count = 0, have = 0;
};
Total total_of(const Plan& plan, const Catalog& catalog, const std::string& name);

/// Folds all lines of a species into its first: counts add up; sexes where every line gives them; notes one below the other. The
/// index of the line; empty when there is none.
std::optional<std::size_t> fold_lines(Plan& plan, const Catalog& catalog, const std::string& name);

}  // namespace shoalwright
