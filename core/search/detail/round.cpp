// SPDX-License-Identifier: MIT
#include "search/detail/round.h"

#include <algorithm>

namespace shoalwright::search_detail {

namespace {

void take(const Model& model, int at, int count, std::vector<double>& room) {
  const double* share = model.share(at);
  for (int k = 0; k < model.capacities; ++k) room[k] -= share[k] * count;
}

bool fits_in(const Model& model, const Item& item, const std::vector<Item>& stock, const std::vector<double>& room) {
  return fitting(room.data(), model.share(item.at), model.capacities, item.low) == item.low &&
         std::none_of(stock.begin(), stock.end(), [&](const Item& other) { return model.apart.has(item.at, other.at); });
}

}  // namespace

std::vector<Count> round_off(const Model& model, const Node& node, int free_places) {
  std::vector<double> room(static_cast<std::size_t>(model.capacities), 1 + capacity_tolerance);
  std::vector<Item> stock = node.chosen;
  for (const Item& item : stock) take(model, item.at, item.low, room);
  for (const Item& item : node.open) {
    if (free_places == 0 || item.worth <= 0) break;
    if (!fits_in(model, item, stock, room)) continue;
    take(model, item.at, item.low, room);
    stock.push_back(item);
    --free_places;
  }
  std::sort(stock.begin(), stock.end(),
            [](const Item& a, const Item& b) { return a.margin != b.margin ? a.margin > b.margin : a.at < b.at; });
  std::vector<Count> counts;
  for (const Item& item : stock) {
    int more = 0;
    if (model.each[item.at] > 0) more = fitting(room.data(), model.share(item.at), model.capacities, item.high - item.low);
    take(model, item.at, more, room);
    counts.push_back({item.at, item.low + more});
  }
  return counts;
}

}  // namespace shoalwright::search_detail
