// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "search/detail/bound.h"
#include "search/detail/round.h"
#include "search/search.h"

namespace shoalwright {

/// A search between two slices.
struct SearchState {
  search_detail::Model model;
  StocksAsked asked;
  double bound_factor = 1;  ///< another than 1 only in tests, which see that a bound too low is found out
  search_detail::BoundDesk desk;
  search_detail::Node root;                ///< of the place that is being filled, at its prices
  std::vector<search_detail::Node> nodes;  ///< the path from the root, and behind it nodes to use again
  std::size_t depth = 0;                   ///< length of the path
  StockFound best;                         ///< for the place that is being filled
  bool has_best = false;
  std::vector<StockFound> places;          ///< proven
  std::vector<std::vector<char>> earlier;  ///< for each of them: which species of the model it has
  std::vector<StockFound> others;          ///< every stock that was the best once
  bool ended = false;
};

namespace search_detail {

/// Sets the root for the next place.
void begin_place(SearchState& state);

/// Opens one node or makes one child; false when nothing is left for this place.
bool step(SearchState& state);

}  // namespace search_detail

}  // namespace shoalwright
