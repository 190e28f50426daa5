// SPDX-License-Identifier: MIT
#pragma once

#include "assess/margin.h"

namespace shoalwright {

/// What stands behind one margin; empty when it has no facts.
inline std::optional<MarginFacts> margin_facts(const Plan& plan, const Catalog& catalog, const Assessment& assessment,
                                               std::string_view margin, std::string_view in_hand = {}) {
  const MarginTable table = margin_table(plan, catalog, assessment, in_hand);
  const MarginFacts* found = find_margin(table, margin);
  return found == nullptr ? std::nullopt : std::optional(*found);
}

}  // namespace shoalwright
