// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "search/detail/node.h"

namespace shoalwright::search_detail {

/// Room for the reckoning of bounds, kept from node to node.
struct BoundDesk {
  std::vector<double> slope, prices, clique_worth, top;
  std::vector<int> clique_item, top_clique;
  std::vector<std::vector<int>> cliques;  ///< the first `clique_count`
  std::size_t clique_count = 0;
  double least_counted = 0;  ///< the worth from which a clique counts among the best
  std::int64_t work = 0;     ///< prices reckoned in all
};

/// What the bound is to be held against.
struct Aim {
  double score = 0;   ///< a node whose bound is not above this holds nothing of interest
  double factor = 1;  ///< of the bound; only tests have another than 1, to see that a wrong bound is found out
  int steps = 0;      ///< tries at better prices
};

/// Takes out what the capacities rule out, counts and whole species. False when the chosen do not fit.
bool cut_by_capacity(const Model& model, Node& node);

/// Sets the node's prices and bounds: `free_places` of the open ones may come in. False when the bound is not above the aim.
/// Items keep their worth at those prices; open ones are sorted by it, best first.
bool find_prices(const Model& model, Node& node, int free_places, const Aim& aim, BoundDesk& desk);

/// Takes out counts and open species with which no stock would be above the aim; after find_prices. True when it was much, so
/// that looking for prices again may pay.
bool cut_by_prices(Node& node, const Aim& aim, const BoundDesk& desk);

}  // namespace shoalwright::search_detail
