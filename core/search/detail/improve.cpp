// SPDX-License-Identifier: MIT
#include "search/detail/improve.h"

#include <algorithm>

#include "search/detail/offer.h"

namespace shoalwright::search_detail {

namespace {

/// The groups of the best stock as items of the root; empty when one of them has been cut from it.
std::vector<Item> items_of_best(const SearchState& state) {
  std::vector<Item> items = state.root.chosen;
  for (const Item& item : state.root.open)
    if (std::any_of(state.best.groups.begin(), state.best.groups.end(),
                    [&](const GroupChosen& group) { return group.species == state.model.origin[item.at]; }))
      items.push_back(item);
  if (items.size() != state.best.groups.size()) items.clear();
  return items;
}

bool fits_others(const Model& model, const Item& item, const std::vector<Item>& stock) {
  return std::none_of(stock.begin(), stock.end(),
                      [&](const Item& other) { return other.at == item.at || model.apart.has(item.at, other.at); });
}

/// Tries each open species of the root beside `stock`; true at the first that makes a better stock.
bool take_one_in(SearchState& state, const std::vector<Item>& stock) {
  double bound = 0;
  for (double price : state.root.prices) bound += price;
  for (const Item& item : stock) bound += item.worth;
  Node node;
  for (const Item& item : state.root.open) {
    ++state.desk.work;
    if (!(bound + item.worth > to_beat(state))) return false;  // nor with a later one, which is worth less
    if (!fits_others(state.model, item, stock)) continue;
    node.chosen = stock;
    node.chosen.push_back(item);
    if (!cut_by_capacity(state.model, node)) continue;
    state.desk.work += static_cast<std::int64_t>(stock.size()) * 2;
    if (offer(state, round_off(state.model, node, 0))) return true;
  }
  return false;
}

bool change_one(SearchState& state) {
  const std::vector<Item> stock = items_of_best(state);
  if (static_cast<int>(stock.size()) < state.model.most_species && take_one_in(state, stock)) return true;
  for (std::size_t out = state.root.chosen.size(); out < stock.size(); ++out) {
    std::vector<Item> rest = stock;
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(out));
    if (take_one_in(state, rest)) return true;
  }
  return false;
}

}  // namespace

void improve(SearchState& state) {
  while (state.has_best && change_one(state)) {
  }
}

}  // namespace shoalwright::search_detail
