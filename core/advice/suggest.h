// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "advice/shelf.h"
#include "assess/assessment.h"

namespace shoalwright {

/// `fits`: its good group raises no harm and no strain that is not there. `close`: fewer than that do. `no`: none, or a value
/// that is not known withholds the answer.
enum class SuggestedFit { fits, close, no };

/// What one kind of the catalogue would be in a plan.
struct Suggestion {
  ShelfAnswer answer;
  SuggestedFit fit = SuggestedFit::no;
  int count = 0;                 ///< how many more fit: this many raise no harm and no strain, one more does
  std::optional<Tightest> first; /**< the margin with least to spare once its group is in: the good one as far as there is room,
                                    of a kind that does not fit the least one */
  std::vector<std::string> findings;  ///< rules that this group raises or worsens, gravest first
};

/// Every kind of the shelf, best first: what fits, what is close, what does not; among those by ShelfAnswer::usefulness() less
/// what there would be to watch; kinds of one rank in the order of the shelf.
std::vector<Suggestion> suggestions_for(const Plan& plan, const Catalog& catalog);

/// What a tank lacks, so that "nothing" can be said too.
struct Lacking {
  std::vector<std::string> levels;  ///< "surface", "upper", "middle", "floor": where no kind of the stock swims
  std::vector<std::string> groups;  ///< ids of those under their good size, in plan order
  bool nothing() const { return levels.empty() && groups.empty(); }
};

/// Nothing is lacking in a stock that fills every level with groups as large as is good for them; of an empty stock all levels
/// are. A kind that the catalogue does not have counts for no level.
Lacking lacking_in(const Plan& plan, const Catalog& catalog);

/// "Nothing is missing: every level has its animals, every group its number.", "Nobody swims at the surface and upper levels; 1
/// group is smaller than is good for it.": one sentence.
std::string say_lacking(const Lacking& lacking);

}  // namespace shoalwright
