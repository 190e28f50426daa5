// SPDX-License-Identifier: MIT
// The second and third best stock.
#include <gtest/gtest.h>

#include "support/all_stocks.h"

namespace shoalwright {
namespace {

unsigned set_of(const StockFound& stock) {
  unsigned set = 0;
  for (const GroupChosen& group : stock.groups) set |= 1u << group.species;
  return set;
}

/// How many species a set has.
int bits(unsigned set) { return __builtin_popcount(set); }

TEST(Places, EachIsTheBestOfThoseThatDifferEnoughFromTheEarlierOnes) {
  int whole_lists = 0, short_lists = 0;
  for (std::uint64_t seed = 0; seed < 1500; ++seed) {
    SCOPED_TRACE(seed);
    const StockProblem problem = small_problem(seed);
    const std::map<unsigned, double> sets = every_set(problem);
    const StocksAsked asked{.stocks = 3 + static_cast<int>(seed % 2), .differ = 1 + static_cast<int>(seed % 3)};
    const StocksFound found = find_stocks(problem, asked);
    EXPECT_TRUE(found.proven);
    std::vector<unsigned> earlier;
    for (int place = 0;; ++place) {
      double best = -1e300;
      for (const auto& [set, score] : sets) {
        bool differs = true;
        for (unsigned other : earlier) differs &= bits(set & ~other) >= asked.differ;
        if (differs) best = std::max(best, score);
      }
      if (best == -1e300 || place == asked.stocks) {
        EXPECT_EQ(static_cast<int>(found.stocks.size()), place);
        (place == asked.stocks ? whole_lists : short_lists) += 1;
        break;
      }
      ASSERT_GT(static_cast<int>(found.stocks.size()), place);
      const StockFound& stock = found.stocks[static_cast<std::size_t>(place)];
      EXPECT_EQ(broken(problem, stock.groups), "");
      EXPECT_TRUE(stock.proven);
      EXPECT_NEAR(stock.score, best, 1e-8 * std::max(1.0, std::fabs(best)));
      for (unsigned other : earlier) EXPECT_GE(bits(set_of(stock) & ~other), asked.differ);
      earlier.push_back(set_of(stock));
    }
  }
  EXPECT_GT(whole_lists, 100);
  EXPECT_GT(short_lists, 50);
}

TEST(Places, StoppedEarlyGivesStocksThatDifferAsTheyShould) {
  int several = 0;
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const StockProblem problem = tight_problem(seed, 25, 5);
    const StocksAsked asked{.stocks = 3, .differ = 2};
    const StocksFound whole = find_stocks(problem, asked);
    for (int part = 1; part < 8; ++part) {
      const StocksFound found = find_stocks(problem, asked, {.work = whole.work * part / 8, .stop = {}});
      EXPECT_FALSE(found.proven);
      several += found.stocks.size() > 1;
      for (std::size_t i = 0; i < found.stocks.size(); ++i) {
        EXPECT_EQ(broken(problem, found.stocks[i].groups), "");
        if (found.stocks[i].proven) {
          EXPECT_EQ(found.stocks[i], whole.stocks[i]);
        }
        for (std::size_t j = 0; j < i; ++j) EXPECT_GE(bits(set_of(found.stocks[i]) & ~set_of(found.stocks[j])), asked.differ);
      }
    }
  }
  EXPECT_GT(several, 10);
}

}  // namespace
}  // namespace shoalwright
