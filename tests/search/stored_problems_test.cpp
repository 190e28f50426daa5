// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "share/fill_json.h"
#include "support/all_stocks.h"
#include "support/problem_files.h"

namespace shoalwright {
namespace {

TEST(StoredProblems, AreSolvedToTheirProvenOptima) {
  const std::vector<StoredProblem> problems = stored_problems();
  EXPECT_EQ(problems.size(), 18u);
  for (const StoredProblem& stored : problems) {
    SCOPED_TRACE(stored.name);
    const Result<StockProblem> problem = read_stock_problem(problem_text(stored.name));
    ASSERT_TRUE(problem) << problem.error().sentence;
    const StocksFound found = find_stocks(*problem);
    EXPECT_TRUE(found.proven);
    ASSERT_EQ(found.stocks.size(), 1u);
    EXPECT_EQ(found.stocks[0].score, stored.optimum);
    EXPECT_EQ(score_of(*problem, found.stocks[0].groups), stored.optimum);
    EXPECT_EQ(broken(*problem, found.stocks[0].groups), "");
    EXPECT_LT(found.work, 10'000'000) << "a hundred milliseconds, whatever the machine";
  }
}

TEST(StoredProblems, HaveThreeBestStocks) {
  for (const StoredProblem& stored : stored_problems()) {
    if (stored.name.rfind("n1000", 0) == 0 && stored.name != "n1000-k10-v240-tight") continue;
    SCOPED_TRACE(stored.name);
    const StockProblem problem = read_stock_problem(problem_text(stored.name)).value();
    const StocksFound found = find_stocks(problem, {.stocks = 3, .differ = 2});
    EXPECT_TRUE(found.proven);
    ASSERT_EQ(found.stocks.size(), 3u);
    EXPECT_EQ(found.stocks[0].score, stored.optimum);
    for (std::size_t i = 0; i < 3; ++i) {
      EXPECT_EQ(broken(problem, found.stocks[i].groups), "");
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_GE(found.stocks[j].score, found.stocks[i].score);
        const auto& other = found.stocks[j].groups;
        EXPECT_GE(std::count_if(found.stocks[i].groups.begin(), found.stocks[i].groups.end(),
                                [&](const GroupChosen& group) {
                                  return std::none_of(other.begin(), other.end(),
                                                      [&](const GroupChosen& its) { return its.species == group.species; });
                                }),
                  2);
      }
    }
  }
}

}  // namespace
}  // namespace shoalwright
