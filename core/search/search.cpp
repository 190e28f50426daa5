// SPDX-License-Identifier: MIT
#include "search/search.h"

#include <algorithm>

#include "search/detail/tree.h"

namespace shoalwright {

namespace {

using namespace search_detail;

bool has(const StockFound& stock, int species) {
  return std::any_of(stock.groups.begin(), stock.groups.end(),
                     [&](const GroupChosen& group) { return group.species == species; });
}

bool differs(const StockFound& stock, const std::vector<StockFound>& others, int differ) {
  return std::all_of(others.begin(), others.end(), [&](const StockFound& other) {
    return std::count_if(stock.groups.begin(), stock.groups.end(),
                         [&](const GroupChosen& group) { return !has(other, group.species); }) >= differ;
  });
}

/// The best of the stocks met so far that could stand behind `places`; null when there is none.
const StockFound* best_other(const std::vector<StockFound>& others, const std::vector<StockFound>& places, int differ) {
  const StockFound* best = nullptr;
  for (const StockFound& other : others)
    if ((best == nullptr || other.score > best->score) && differs(other, places, differ)) best = &other;
  return best;
}

void end_place(SearchState& state) {
  if (!state.has_best) {
    state.ended = true;
    return;
  }
  state.best.proven = true;
  state.places.push_back(state.best);
  if (static_cast<int>(state.places.size()) >= state.asked.stocks) {
    state.ended = true;
    return;
  }
  std::vector<char> members(static_cast<std::size_t>(state.model.species));
  for (int i = 0; i < state.model.species; ++i) members[i] = has(state.best, state.model.origin[i]);
  state.earlier.push_back(std::move(members));
  begin_place(state);
  if (const StockFound* best = best_other(state.others, state.places, state.asked.differ)) {
    state.best = *best;
    state.has_best = true;
  }
}

}  // namespace

Search::Search() = default;
Search::Search(Search&&) noexcept = default;
Search& Search::operator=(Search&&) noexcept = default;
Search::~Search() = default;

Search begin_search(const StockProblem& problem, const StocksAsked& asked) {
  Search search;
  search.state = std::make_unique<SearchState>();
  search.state->model = model_of(problem);
  search.state->asked = asked;
  search.state->ended = search.state->model.impossible || asked.stocks < 1;
  SearchState& state = *search.state;
  for (const std::vector<int>& other : asked.unlike) {
    std::vector<char> members(static_cast<std::size_t>(state.model.species));
    for (int i = 0; i < state.model.species; ++i)
      members[i] = std::find(other.begin(), other.end(), state.model.origin[i]) != other.end();
    state.earlier.push_back(std::move(members));
  }
  if (!state.ended) begin_place(state);
  return search;
}

bool go_on(Search& search, std::int64_t work) {
  SearchState& state = *search.state;
  const std::int64_t from = state.desk.work;
  while (!state.ended) {
    if (!step(state)) end_place(state);
    if (state.desk.work - from >= work) break;
  }
  return state.ended;
}

StocksFound found_so_far(const Search& search) {
  const SearchState& state = *search.state;
  StocksFound found{.stocks = state.places, .proven = state.ended, .work = state.desk.work};
  if (state.ended) return found;
  if (state.has_best) found.stocks.push_back(state.best);
  while (static_cast<int>(found.stocks.size()) < state.asked.stocks) {
    const StockFound* other = best_other(state.others, found.stocks, state.asked.differ);
    if (other == nullptr) break;
    found.stocks.push_back(*other);
  }
  return found;
}

StocksFound find_stocks(const StockProblem& problem, const StocksAsked& asked, const SearchLimits& limits) {
  Search search = begin_search(problem, asked);
  std::int64_t left = limits.work;
  while (left > 0) {
    const std::int64_t before = search.state->desk.work;
    if (go_on(search, std::min(left, work_between_stops))) break;
    left -= search.state->desk.work - before;
    if (limits.stop && limits.stop()) break;
  }
  return found_so_far(search);
}

}  // namespace shoalwright
