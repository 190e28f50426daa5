// SPDX-License-Identifier: MIT
#include "search/detail/tree.h"

#include <algorithm>
#include <cmath>

#include "search/detail/improve.h"
#include "search/detail/offer.h"

namespace shoalwright::search_detail {

namespace {

constexpr int root_steps = 200, node_steps = 12;

Aim aim_of(const SearchState& state, int steps) {
  return {.score = to_beat(state), .factor = state.bound_factor, .steps = steps};
}

int free_places(const SearchState& state, const Node& node) {
  return state.model.most_species - static_cast<int>(node.chosen.size());
}

/// Species that have still to come because earlier stocks lack them. False when they cannot all come in.
bool keep_different(const SearchState& state, Node& node, int places) {
  for (std::size_t j = 0; j < node.missing.size(); ++j) {
    if (node.missing[j] > places) return false;
    if (node.missing[j] <= 0 || node.missing[j] < places) continue;
    const std::vector<char>& other = state.earlier[j];  // every place has to go to one that it lacks
    node.open.erase(std::remove_if(node.open.begin(), node.open.end(), [&](const Item& item) { return other[item.at]; }),
                    node.open.end());
  }
  return true;
}

bool may_stay_as_it_is(const Node& node) {
  return std::all_of(node.missing.begin(), node.missing.end(), [](int missing) { return missing <= 0; });
}

/// The group whose counts are least settled. False when all are.
bool choose_split(const Model& model, Node& node) {
  double widest = -1;
  for (std::size_t i = 0; i < node.chosen.size(); ++i) {
    const Item& item = node.chosen[i];
    const double width = (item.high - item.low) * (std::fabs(model.each[item.at]) + 1e-9);
    if (item.high > item.low && width > widest) {
      widest = width;
      node.split = i;
    }
  }
  return widest >= 0;
}

/// Bounds a node and cuts it down. False when nothing of interest is in it, or what is has been offered.
bool open_node(SearchState& state, Node& node, bool root) {
  const Model& model = state.model;
  if (!cut_by_capacity(model, node)) return false;
  const int places = free_places(state, node);
  if (places == 0) node.open.clear();
  if (!keep_different(state, node, places)) return false;
  for (int again = 0; again < 2; ++again) {
    if (node.open.empty() && !may_stay_as_it_is(node)) return false;
    const Aim aim = aim_of(state, root ? root_steps : node_steps);
    if (!find_prices(model, node, places, aim, state.desk)) return false;
    if (!cut_by_prices(node, aim, state.desk)) break;
    if (!cut_by_capacity(model, node)) return false;
  }
  if (root) state.root = node;
  const bool better = offer(state, round_off(model, node, node.open.empty() ? 0 : places));
  if (better || root) improve(state);
  if (!node.open.empty()) return true;
  return may_stay_as_it_is(node) && choose_split(model, node) && node.bound > to_beat(state);
}

/// The node for a child of the last one on the path, with its chosen, prices and what is missing.
Node& push_child(SearchState& state) {
  if (state.depth == state.nodes.size()) state.nodes.emplace_back();
  const Node& parent = state.nodes[state.depth - 1];
  Node& child = state.nodes[state.depth++];
  child.chosen = parent.chosen;
  child.open.clear();
  child.prices = parent.prices;
  child.missing = parent.missing;
  child.ready = false;
  child.next = 0;
  return child;
}

/// Children of a node with open species: each with one of them chosen and only later ones open; then none of them. The order is
/// by worth, so that the sum of the next ones bounds all children that follow.
bool push_next_species(SearchState& state) {
  const std::size_t at = state.depth - 1;
  {
    Node& node = state.nodes[at];
    const std::size_t places = static_cast<std::size_t>(free_places(state, node));
    double bound = node.chosen_bound;
    for (std::size_t i = node.next; i < std::min(node.open.size(), node.next + places); ++i)
      bound += std::max(0.0, node.open[i].worth) * state.bound_factor;
    state.desk.work += static_cast<std::int64_t>(places);
    if (node.next < node.open.size() && !(bound > to_beat(state))) node.next = node.open.size();
    if (node.next > node.open.size()) return false;
    if (node.next == node.open.size() && !(node.chosen_bound > to_beat(state) && may_stay_as_it_is(node))) return false;
  }
  Node& child = push_child(state);
  Node& node = state.nodes[at];
  const std::size_t next = node.next++;
  if (next == node.open.size()) return true;
  const Item& in = node.open[next];
  child.chosen.push_back(in);
  for (std::size_t j = 0; j < child.missing.size(); ++j) child.missing[j] -= !state.earlier[j][in.at];
  for (std::size_t i = next + 1; i < node.open.size(); ++i)
    if (!state.model.apart.has(in.at, node.open[i].at)) child.open.push_back(node.open[i]);
  state.desk.work += static_cast<std::int64_t>(node.open.size() - next);
  return true;
}

/// Children of a node with nothing open: the more numerous half of the split group's counts, then the other.
bool push_next_half(SearchState& state) {
  const std::size_t at = state.depth - 1;
  if (state.nodes[at].next == 2 || !(state.nodes[at].bound > to_beat(state))) return false;
  Node& child = push_child(state);
  Node& node = state.nodes[at];
  Item& item = child.chosen[node.split];
  const int middle = item.low + (item.high - item.low) / 2;
  if (node.next++ == 0)
    item.low = middle + 1;
  else
    item.high = middle;
  return true;
}

}  // namespace

void begin_place(SearchState& state) {
  const Model& model = state.model;
  if (state.nodes.empty()) state.nodes.emplace_back();
  Node& root = state.nodes[0];
  root = Node{};
  root.prices.assign(static_cast<std::size_t>(model.capacities), 0);
  root.missing.assign(state.earlier.size(), state.asked.differ);
  for (int i = 0; i < model.species; ++i) {
    const Item item{.at = i, .low = model.least[i], .high = model.most[i]};
    const bool must = std::find(model.musts.begin(), model.musts.end(), i) != model.musts.end();
    const bool may = std::none_of(model.musts.begin(), model.musts.end(), [&](int other) { return model.apart.has(i, other); });
    if (must)
      root.chosen.push_back(item);
    else if (may)
      root.open.push_back(item);
    if (must)
      for (std::size_t j = 0; j < root.missing.size(); ++j) root.missing[j] -= !state.earlier[j][i];
  }
  state.depth = 1;
  state.has_best = false;
  state.best = {};
}

bool step(SearchState& state) {
  if (state.depth == 0) return false;
  Node& node = state.nodes[state.depth - 1];
  ++state.desk.work;
  bool goes_on = false;
  if (!node.ready)
    goes_on = node.ready = open_node(state, node, state.depth == 1);
  else
    goes_on = node.open.empty() ? push_next_half(state) : push_next_species(state);
  if (!goes_on) --state.depth;
  return state.depth > 0;
}

}  // namespace shoalwright::search_detail
