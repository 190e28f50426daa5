// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// A group of the plan with its species resolved. Groups of one species are merged, in order of first appearance.
struct Kept {
  const Species* species = nullptr;  ///< null: unknown species
  std::string id;                    ///< species id, or the name as written when unknown
  int count = 0, have = 0;
  std::optional<int> males, females;  ///< known only when every merged line gives them
  std::vector<int> lines;             ///< indices into Plan::stock
};

/// `catalog` and the plan's own_species (which win over a catalogue species of the same id) must outlive the result.
/// Lines with count 0 are left out.
std::vector<Kept> resolve_stock(const Plan& plan, const Catalog& catalog);

/// So many of a kind that are wished for, of no line of a plan.
Kept wished_group(const Species& species, int count);

/// The same groups by id: rules look at them so, that the order of lines never shows in what they say.
std::vector<Kept> by_id(std::vector<Kept> stock);

}  // namespace shoalwright
