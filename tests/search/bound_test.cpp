// SPDX-License-Identifier: MIT
// That the bound matters only for the time as long as it is one, and that a wrong one would be seen.
#include <gtest/gtest.h>

#include "search/detail/tree.h"
#include "support/all_stocks.h"

namespace shoalwright {
namespace {

/// The answer when every bound is taken times `factor`.
StocksFound found_with(const StockProblem& problem, double factor) {
  Search search = begin_search(problem);
  search.state->bound_factor = factor;
  while (!go_on(search, 1'000'000)) {
  }
  return found_so_far(search);
}

double best_of(const std::map<unsigned, double>& sets) {
  double best = -1e300;
  for (const auto& [set, score] : sets) best = std::max(best, score);
  return best;
}

TEST(Bound, TooWeakEndsAtTheSameStock) {
  std::int64_t work = 0, weak_work = 0;
  for (std::uint64_t seed = 0; seed < 20; ++seed) {
    const StockProblem problem = tight_problem(seed, 24, 4);
    const StocksFound exact = found_with(problem, 1), weak = found_with(problem, 1.1);
    ASSERT_EQ(weak.stocks.size(), 1u);
    EXPECT_EQ(weak.stocks[0].score, exact.stocks[0].score) << seed;
    EXPECT_TRUE(weak.proven);
    work += exact.work;
    weak_work += weak.work;
  }
  EXPECT_GT(weak_work, work * 2) << "the bound is what spares the work";
}

TEST(Bound, TooStrongIsFoundOutByTryingEverything) {
  int wrong = 0, problems = 0;
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    const StockProblem problem = tight_problem(seed, 9, 3);
    const double best = best_of(every_set(problem));
    EXPECT_EQ(found_with(problem, 1).stocks[0].score, best) << seed;
    ++problems;
    wrong += found_with(problem, 0.9).stocks[0].score != best;
  }
  EXPECT_GT(wrong, 0) << "of " << problems << ": the trying would not see a wrong bound";
}

TEST(Bound, OfTheRootIsAboveEveryStock) {
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    const StockProblem problem = tight_problem(seed, 9, 3);
    const double best = best_of(every_set(problem));
    const search_detail::Model model = search_detail::model_of(problem);
    search_detail::BoundDesk desk;
    search_detail::Node root;
    root.prices.assign(static_cast<std::size_t>(model.capacities), 0);
    for (int i = 0; i < model.species; ++i)
      root.open.push_back(
          {.at = i, .low = model.least[static_cast<std::size_t>(i)], .high = model.most[static_cast<std::size_t>(i)]});
    for (int steps : {1, 5, 60}) {
      search_detail::Node node = root;
      EXPECT_TRUE(search_detail::find_prices(model, node, model.most_species, {.score = best - 1, .steps = steps}, desk));
      EXPECT_GE(node.bound, best - 1e-6) << seed;
      if (steps < 60) continue;
      EXPECT_LT(node.bound, best * 1.25) << seed << ": prices bring it near";
    }
  }
}

}  // namespace
}  // namespace shoalwright
