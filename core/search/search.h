// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <functional>
#include <limits>
#include <memory>
#include <vector>

#include "search/problem.h"

namespace shoalwright {

struct GroupChosen {
  int species = 0;  ///< position in the problem's species
  int count = 0;
  bool operator==(const GroupChosen&) const = default;
};

struct StockFound {
  double score = 0;
  std::vector<GroupChosen> groups;  ///< by position, ascending
  bool proven = false;              ///< no stock that could stand in this place has a better score
  bool operator==(const StockFound&) const = default;
};

/// What is asked: the first stock is the best of all; each later one is the best of those that have at least `differ` species
/// which the first lacks, at least `differ` which the second lacks, and so on. So a stock that only leaves out a species of an
/// earlier one, or only counts otherwise, is no other stock. There may be fewer than asked for.
struct StocksAsked {
  int stocks = 1;  ///< 1 or more
  int differ = 1;  ///< 1 or more
  /// Stocks from elsewhere, as positions in the problem's species, that stand before the first: it has to differ from each.
  std::vector<std::vector<int>> unlike = {};
};

/// How long a search may go on. One unit of work is the price of one species reckoned once, some 10 to 20 ns.
struct SearchLimits {
  std::int64_t work = std::numeric_limits<std::int64_t>::max();
  std::function<bool()> stop;  ///< asked about every `work_between_stops`; true ends the search
};
inline constexpr std::int64_t work_between_stops = 10'000;

struct StocksFound {
  /// In the order of StocksAsked. Without `must` the empty stock is always one, score 0. None at all and proven: species that
  /// must be there cannot live together.
  std::vector<StockFound> stocks;
  bool proven = false;    ///< the search ended by itself: every stock is proven and there are no further ones
  std::int64_t work = 0;  ///< done so far
};

/// Searches to the end, or as far as the limits let it. The problem must have no `problem_error`. The answer depends on nothing
/// but the problem, what is asked and the limit of work: no clock, no chance; natively and in WASM the same.
///
/// Scores that are whole multiples of 1, 0.1, 0.01 or 0.001 are compared exactly; others to a billionth of the best score.
///
/// Method: branch and bound over the graph of who can live with whom. Ranges on axes have a point in common exactly when each
/// two of them have one (Helly's theorem for boxes, a textbook matter, from memory), so water is a matter of pairs too. Bound:
/// the capacities are given prices (Lagrangian relaxation; Geoffrion, A.M. 1974, "Lagrangean relaxation for integer programming",
/// Mathematical Programming Study 2, 82-114; from memory), which leaves the dearest animals of each species and the best
/// `most_species` of them, only one from each set of species that are all in conflict with one another. Counts are settled in
/// the same tree, by halving what is left of their ranges.
StocksFound find_stocks(const StockProblem& problem, const StocksAsked& asked = {}, const SearchLimits& limits = {});

struct SearchState;

/// A search that is done in slices.
struct Search {
  std::unique_ptr<SearchState> state;
  Search();
  Search(Search&&) noexcept;
  Search& operator=(Search&&) noexcept;
  ~Search();
};

/// The problem is copied as far as it is needed.
Search begin_search(const StockProblem& problem, const StocksAsked& asked = {});

/// Goes on by about that much work, at least one step; true when the search has ended. Slices of any size end in the same
/// answer.
bool go_on(Search& search, std::int64_t work);

/// The best so far: later stocks may be missing that a longer search would find.
StocksFound found_so_far(const Search& search);

}  // namespace shoalwright
