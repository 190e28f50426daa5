// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "search/detail/node.h"

namespace shoalwright::search_detail {

struct Count {
  int at = 0;  ///< in the model
  int count = 0;
};

/// One good stock of the node, quickly: the chosen and of the open ones, in their order, who still can come in; then as many
/// animals as fit, of those first that are worth most at the prices of the node.
std::vector<Count> round_off(const Model& model, const Node& node, int free_places);

}  // namespace shoalwright::search_detail
