// SPDX-License-Identifier: MIT
#pragma once

#include "search/detail/tree.h"

namespace shoalwright::search_detail {

/// A bound has to be above this to hold a better stock than the best: the next whole step above it where scores have one.
double to_beat(const SearchState& state);

/// Whether the stock has enough species that each earlier one lacks.
bool differs_enough(const SearchState& state, const std::vector<Count>& stock);

/// Keeps a stock of species that fit one another if it is the best yet; true when it is.
bool offer(SearchState& state, std::vector<Count> stock);

}  // namespace shoalwright::search_detail
