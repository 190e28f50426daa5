// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "assess/reckoned.h"
#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// One thing that could be done about a plan.
struct Repair {
  std::string says;              ///< "Leave out rams", "Put a lid on"
  std::vector<PatchStep> edits;  ///< of the canonical plan; never empty
};

/// How far repairs are looked for. Tanks and other kinds are tried one after another, which takes time.
enum class RepairsOf { small_things, all };

/// What could be done about the harms and strains of a plan: the remedies of their findings; for each kind that they name, as
/// many as there is room for, the kind left out or re-homed, a like one in its place; a larger tank where room is short. Each
/// repair is there once. Nothing that Plan::fixed pins is changed.
std::vector<Repair> repairs_of(const Plan& plan, const Catalog& catalog, BodyRooms& bodies, RepairsOf extent);

/// Whether no value under a pointer of Plan::fixed is another one.
bool keeps_what_is_pinned(const Plan& before, const Plan& after);

/// A like kind for one that cannot stay: the catalogue's kinds by how unlike they are in size, level and looks, the most alike
/// first, at most `most`; none of those that the plan has.
std::vector<const Species*> like_kinds(const Plan& plan, const Catalog& catalog, const Species& species, std::size_t most);

}  // namespace shoalwright
