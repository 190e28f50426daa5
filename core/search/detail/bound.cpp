// SPDX-License-Identifier: MIT
#include "search/detail/bound.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace shoalwright::search_detail {

namespace {

constexpr int most_cliques_tried = 6;  // later ones seldom count among the best, and trying costs more than that spares
constexpr double whole = 1 + 2 * capacity_tolerance;

void price(const Model& model, Item& item, const double* prices) {
  const double* share = model.share(item.at);
  double cost = 0;
  for (int k = 0; k < model.capacities; ++k) cost += prices[k] * share[k];
  item.margin = model.each[item.at] - cost;
  item.best = item.margin > 0 ? item.high : item.low;
  item.worth = model.present[item.at] + item.margin * item.best;
}

void take(const Model& model, const Item& item, std::vector<double>& room) {
  const double* share = model.share(item.at);
  for (int k = 0; k < model.capacities; ++k) room[k] -= share[k] * item.best;
}

/// Prices every item. The bound of the chosen alone; `desk.slope` becomes the room that their best counts leave.
double price_chosen(const Model& model, Node& node, const double* prices, BoundDesk& desk) {
  double bound = 0;
  for (int k = 0; k < model.capacities; ++k) bound += prices[k] * whole;
  desk.slope.assign(static_cast<std::size_t>(model.capacities), whole);
  for (Item& item : node.chosen) {
    price(model, item, prices);
    bound += item.worth;
    take(model, item, desk.slope);
  }
  return bound;
}

/// The best open item of each clique, and of them the best `free_places`: what they add to the bound.
double price_open(const Model& model, Node& node, int free_places, const double* prices, BoundDesk& desk) {
  const std::size_t cliques = desk.clique_count;
  desk.clique_worth.assign(cliques, 0);
  desk.clique_item.assign(cliques, -1);
  for (std::size_t i = 0; i < node.open.size(); ++i) {
    Item& item = node.open[i];
    price(model, item, prices);
    if (item.worth > desk.clique_worth[item.clique]) {
      desk.clique_worth[item.clique] = item.worth;
      desk.clique_item[item.clique] = static_cast<int>(i);
    }
  }
  const std::size_t places = std::min(static_cast<std::size_t>(free_places), cliques);
  desk.top.assign(places, 0);
  desk.top_clique.assign(places, -1);
  std::size_t taken = 0;
  for (std::size_t c = 0; c < cliques; ++c) {
    const double worth = desk.clique_worth[c];
    if (worth <= 0 || (taken == places && worth <= desk.top[taken - 1])) continue;
    std::size_t place = taken < places ? taken++ : taken - 1;
    for (; place > 0 && desk.top[place - 1] < worth; --place) {
      desk.top[place] = desk.top[place - 1];
      desk.top_clique[place] = desk.top_clique[place - 1];
    }
    desk.top[place] = worth;
    desk.top_clique[place] = static_cast<int>(c);
  }
  double sum = 0;
  for (std::size_t t = 0; t < taken; ++t) {
    sum += desk.top[t];
    take(model, node.open[desk.clique_item[desk.top_clique[t]]], desk.slope);
  }
  desk.least_counted = taken == 0 || taken < static_cast<std::size_t>(free_places) ? 0 : desk.top[taken - 1];
  return sum;
}

/// Puts each open item, best first, into the first clique all of whose members it cannot live with.
void part_into_cliques(const Model& model, Node& node, BoundDesk& desk) {
  for (auto& clique : desk.cliques) clique.clear();
  std::size_t count = 0;
  for (Item& item : node.open) {
    const std::size_t tried = std::min<std::size_t>(count, most_cliques_tried);
    std::size_t c = 0;
    for (; c < tried; ++c)
      if (std::all_of(desk.cliques[c].begin(), desk.cliques[c].end(), [&](int other) { return model.apart.has(item.at, other); }))
        break;
    if (c == tried) c = count++;
    if (c == desk.cliques.size()) desk.cliques.emplace_back();
    desk.cliques[c].push_back(item.at);
    item.clique = static_cast<int>(c);
  }
  desk.clique_count = count;
}

void best_first(std::vector<Item>& items) {
  std::sort(items.begin(), items.end(),
            [](const Item& a, const Item& b) { return a.worth != b.worth ? a.worth > b.worth : a.at < b.at; });
}

/// One step down the slope, as long as it would take to reach the aim on a straight one (Polyak, B.T. 1969, "Minimization of
/// unsmooth functionals", USSR Computational Mathematics and Mathematical Physics 9(3), 14-29; from memory). False at the
/// foot.
bool step_down(std::vector<double>& prices, std::vector<double>& slope, double distance) {
  double square = 0;
  for (std::size_t k = 0; k < prices.size(); ++k) {
    if (prices[k] <= 0 && slope[k] > 0) slope[k] = 0;  // no price falls below 0
    square += slope[k] * slope[k];
  }
  if (square < 1e-14) return false;
  for (std::size_t k = 0; k < prices.size(); ++k) prices[k] = std::max(0.0, prices[k] - distance / square * slope[k]);
  return true;
}

/// Counts of `item` that keep its worth within `spare` of the best.
bool narrow(Item& item, double spare) {
  const double loss = std::fabs(item.margin);
  if (!(spare < loss * (item.high - item.low))) return false;
  const int away = static_cast<int>(spare / loss + 1e-9);
  if (away >= item.high - item.low) return false;
  if (item.margin > 0)
    item.low = item.high - away;
  else
    item.high = item.low + away;
  return true;
}

}  // namespace

bool cut_by_capacity(const Model& model, Node& node) {
  std::vector<double> room(static_cast<std::size_t>(model.capacities), whole);
  for (Item& item : node.chosen) {
    item.best = item.low;
    take(model, item, room);
  }
  if (std::any_of(room.begin(), room.end(), [](double left) { return left < 0; })) return false;
  for (Item& item : node.chosen)
    item.high = item.low + fitting(room.data(), model.share(item.at), model.capacities, item.high - item.low);
  std::size_t kept = 0;
  for (Item item : node.open) {
    item.high = fitting(room.data(), model.share(item.at), model.capacities, item.high);
    if (item.high >= item.low) node.open[kept++] = item;
  }
  node.open.resize(kept);
  return true;
}

bool find_prices(const Model& model, Node& node, int free_places, const Aim& aim, BoundDesk& desk) {
  for (Item& item : node.open) price(model, item, node.prices.data());
  best_first(node.open);
  part_into_cliques(model, node, desk);
  desk.prices = node.prices;
  node.bound = std::numeric_limits<double>::infinity();
  double pace = 1;
  int in_vain = 0;
  const auto priced = [&](const double* prices) {
    desk.work += static_cast<std::int64_t>(node.chosen.size() + node.open.size()) + 1;
    node.chosen_bound = price_chosen(model, node, prices, desk) * aim.factor;
    return node.chosen_bound + price_open(model, node, free_places, prices, desk) * aim.factor;
  };
  for (int step = 0; step < aim.steps; ++step) {
    const double bound = priced(desk.prices.data());
    if (bound < node.bound) {
      node.bound = bound;
      node.prices = desk.prices;
      in_vain = 0;
    } else if (++in_vain == 5) {
      in_vain = 0;
      pace *= 0.6;
    }
    if (!(bound > aim.score)) return false;
    // Nothing found yet to aim at: a twentieth down.
    const double distance = std::isfinite(aim.score) ? bound - aim.score : 0.05 * std::fabs(bound);
    if (!step_down(desk.prices, desk.slope, pace * distance)) break;
  }
  node.bound = priced(node.prices.data());
  return node.bound > aim.score;
}

bool cut_by_prices(Node& node, const Aim& aim, const BoundDesk& desk) {
  const double spare = node.bound - aim.score;
  bool much = false;
  for (Item& item : node.chosen) much |= narrow(item, spare);
  const std::size_t before = node.open.size();
  std::size_t kept = 0;
  for (Item item : node.open) {
    // With this one in, the last of the best would be out, or the best of its own clique.
    const double own = desk.clique_worth[item.clique];
    const double left = spare + item.worth - std::max(own, desk.least_counted);
    if (!(left > 0)) continue;
    narrow(item, left);
    node.open[kept++] = item;
  }
  node.open.resize(kept);
  best_first(node.open);
  return much || before > kept + kept / 3;
}

}  // namespace shoalwright::search_detail
