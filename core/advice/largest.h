// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "assess/assess.h"

namespace shoalwright {

/// The most of a kind that may swim with the others as they are, and what stops the next one.
struct Largest {
  int count = 0;                        ///< of this species in all, 0 when even one raises a harm or a strain
  std::vector<std::string> stopped_by;  ///< rules that count + 1 newly raises or worsens to harm or strain
};

/// The largest count that raises no `harm` and no `strain` that is not there without the species. `species` must be known.
Largest largest_count(const Plan& plan, const Catalog& catalog, const Species& species);

}  // namespace shoalwright
