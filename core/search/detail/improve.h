// SPDX-License-Identifier: MIT
#pragma once

#include "search/detail/tree.h"

namespace shoalwright::search_detail {

/// Makes the best stock better by changing one species for another, or taking one more in, as long as that helps: a good stock
/// early spares most of the tree. Needs the root at its prices.
void improve(SearchState& state);

}  // namespace shoalwright::search_detail
