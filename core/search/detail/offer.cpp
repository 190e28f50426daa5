// SPDX-License-Identifier: MIT
#include "search/detail/offer.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace shoalwright::search_detail {

namespace {

bool keeps_capacities(const Model& model, const std::vector<Count>& stock) {
  for (int k = 0; k < model.capacities; ++k) {
    double taken = 0;
    for (const Count& group : stock) taken += model.share(group.at)[k] * group.count;
    if (!(taken <= 1 + capacity_tolerance)) return false;
  }
  return true;
}

}  // namespace

double to_beat(const SearchState& state) {
  if (!state.has_best) return -std::numeric_limits<double>::infinity();
  const double best = state.best.score;
  return state.model.step > 0 ? best + state.model.step * (1 - 1e-6) : best + 1e-9 * std::max(1.0, std::fabs(best));
}

bool differs_enough(const SearchState& state, const std::vector<Count>& stock) {
  return std::all_of(state.earlier.begin(), state.earlier.end(), [&](const std::vector<char>& other) {
    return std::count_if(stock.begin(), stock.end(), [&](const Count& group) { return !other[group.at]; }) >= state.asked.differ;
  });
}

bool offer(SearchState& state, std::vector<Count> stock) {
  const Model& model = state.model;
  std::sort(stock.begin(), stock.end(), [](const Count& a, const Count& b) { return a.at < b.at; });
  double score = 0;
  for (const Count& group : stock) score += model.present[group.at] + model.each[group.at] * group.count;
  if (state.has_best && !(score > state.best.score)) return false;
  if (!keeps_capacities(model, stock) || !differs_enough(state, stock)) return false;
  state.has_best = true;
  state.best = StockFound{.score = score, .groups = {}};
  for (const Count& group : stock) state.best.groups.push_back({model.origin[group.at], group.count});
  state.others.push_back(state.best);
  return true;
}

}  // namespace shoalwright::search_detail
