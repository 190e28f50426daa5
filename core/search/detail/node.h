// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "search/detail/model.h"

namespace shoalwright::search_detail {

/// A species with the counts it may still have, and what it is worth at the prices of its node.
struct Item {
  int at = 0;         ///< in the model
  int low = 0;        ///< fewest animals, if it is in the stock
  int high = 0;       ///< most
  int best = 0;       ///< the end of the range that is worth more
  int clique = 0;     ///< of those in one clique no two can live together
  double margin = 0;  ///< what one animal more is worth, its price paid
  double worth = 0;   ///< of the group at its best
};

/// A set of stocks: all that have the chosen species, further ones of the open list only, and counts in the ranges.
struct Node {
  std::vector<Item> chosen, open;
  std::vector<double> prices;  ///< of each whole capacity, in score
  std::vector<int> missing;    ///< for each earlier stock: how many species that it lacks have still to come
  double bound = 0;            ///< no stock of the node has a greater score
  double chosen_bound = 0;     ///< the same for those stocks that have the chosen species only
  bool ready = false;          ///< bounded and cut down; its children are being searched
  std::size_t next = 0;        ///< the child that comes next
  std::size_t split = 0;       ///< nothing open: the group whose range is halved
};

}  // namespace shoalwright::search_detail
