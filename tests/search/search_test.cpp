// SPDX-License-Identifier: MIT
#include "search/search.h"

#include <gtest/gtest.h>

#include "support/all_stocks.h"

namespace shoalwright {
namespace {

constexpr int small_problems = 1500;

double tolerance_at(double score) { return 1e-8 * std::max(1.0, std::fabs(score)); }

/// The stock keeps the problem, its score is what it says, and its groups are in order.
void expect_sound(const StockProblem& problem, const StockFound& stock) {
  EXPECT_EQ(broken(problem, stock.groups), "");
  EXPECT_NEAR(score_of(problem, stock.groups), stock.score, tolerance_at(stock.score));
  for (std::size_t i = 1; i < stock.groups.size(); ++i) EXPECT_LT(stock.groups[i - 1].species, stock.groups[i].species);
}

TEST(FindStocks, FindsWhatTryingEverythingFinds) {
  int impossible = 0, empty = 0, mixed = 0;
  for (int seed = 0; seed < small_problems; ++seed) {
    SCOPED_TRACE(seed);
    const StockProblem problem = small_problem(static_cast<std::uint64_t>(seed));
    ASSERT_FALSE(problem_error(problem)) << problem_error(problem)->sentence;
    const std::map<unsigned, double> sets = every_set(problem);
    const StocksFound found = find_stocks(problem);
    EXPECT_TRUE(found.proven);
    ASSERT_EQ(found.stocks.size(), sets.empty() ? 0u : 1u);
    if (sets.empty()) {
      ++impossible;
      continue;
    }
    const StockFound& stock = found.stocks[0];
    EXPECT_TRUE(stock.proven);
    expect_sound(problem, stock);
    double best = -1e300;
    for (const auto& [set, score] : sets) best = std::max(best, score);
    EXPECT_NEAR(stock.score, best, tolerance_at(best));
    empty += stock.groups.empty();
    mixed += stock.groups.size() > 1;
  }
  // The problems are not all of one sort.
  EXPECT_GT(impossible, 10);
  EXPECT_GT(empty, 30);
  EXPECT_GT(mixed, 500);
}

TEST(FindStocks, AnswersProblemsWithNothingInThem) {
  const StockFound nothing{.score = 0, .groups = {}, .proven = true};
  StockProblem problem;
  EXPECT_EQ(find_stocks(problem).stocks, std::vector{nothing}) << "no species";
  problem.most_species = 3;
  EXPECT_EQ(find_stocks(problem).stocks, std::vector{nothing});
  problem.species.assign(4, Offer{.least = 2, .most = 5, .present = 3, .each = 2, .needs = {1}, .water = {}});
  problem.capacities = {0};
  EXPECT_EQ(find_stocks(problem).stocks, std::vector{nothing}) << "no room at all";
  problem.capacities = {1.9};
  EXPECT_EQ(find_stocks(problem).stocks, std::vector{nothing}) << "no room for the least group";
  problem.capacities = {1e9};
  problem.most_species = 0;
  EXPECT_EQ(find_stocks(problem).stocks, std::vector{nothing}) << "no species may be chosen";
  problem.most_species = 3;
  for (Offer& offer : problem.species) offer.most = 1;
  EXPECT_EQ(find_stocks(problem).stocks, std::vector{nothing}) << "at most fewer than at least";
  for (Offer& offer : problem.species) offer.most = 5;
  EXPECT_EQ(find_stocks(problem).stocks[0].score, 3 * (3 + 5 * 2)) << "three of four alike";
  for (int i = 0; i < 4; ++i)
    for (int j = 0; j < i; ++j) problem.conflicts.emplace_back(i, j);
  EXPECT_EQ(find_stocks(problem).stocks[0].score, 3 + 5 * 2) << "nobody lives with anybody";
  problem.species[1].must = problem.species[2].must = true;
  const StocksFound found = find_stocks(problem);
  EXPECT_TRUE(found.stocks.empty() && found.proven) << "two that must be there cannot live together";
}

TEST(FindStocks, WithoutCapacitiesTakesTheMostOfTheBest) {
  StockProblem problem;
  problem.most_species = 2;
  for (int each : {3, 9, -1, 5})
    problem.species.push_back({.least = 2, .most = 7, .present = 10, .each = double(each), .needs = {}, .water = {}});
  const StocksFound found = find_stocks(problem);
  EXPECT_EQ(found.stocks[0].groups, (std::vector<GroupChosen>{{1, 7}, {3, 7}}));
  EXPECT_EQ(found.stocks[0].score, 20 + 7 * 14);
}

TEST(FindStocks, TakesADecimalSumThatIsJustFullForFull) {
  StockProblem problem;
  problem.capacities = {0.3};
  problem.most_species = 2;
  problem.species = {{.least = 1, .most = 9, .present = 1, .each = 1, .needs = {0.1}, .water = {}},
                     {.least = 1, .most = 9, .present = 1, .each = 1, .needs = {0.2}, .water = {}}};
  EXPECT_EQ(find_stocks(problem).stocks[0].score, 4) << "0.1 + 0.2, or three times 0.1";
  problem.capacities = {0.3 - 1e-6};
  EXPECT_EQ(find_stocks(problem).stocks[0].score, 3);
}

TEST(FindStocks, EndsAloneAndAlike) {
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const StockProblem problem = tight_problem(seed, 60, 6);
    const StocksFound found = find_stocks(problem, {.stocks = 3});
    const StocksFound again = find_stocks(problem, {.stocks = 3});
    EXPECT_EQ(found.stocks, again.stocks);
    EXPECT_EQ(found.work, again.work);
    ASSERT_EQ(found.stocks.size(), 3u);
    for (const StockFound& stock : found.stocks) expect_sound(problem, stock);
    for (std::int64_t slice : {std::int64_t{1}, std::int64_t{1000}}) {
      Search search = begin_search(problem, {.stocks = 3});
      int slices = 1;
      while (!go_on(search, slice)) ++slices;
      EXPECT_GT(slices, 3);
      EXPECT_EQ(found_so_far(search).stocks, found.stocks) << "slices of " << slice;
      EXPECT_TRUE(go_on(search, slice)) << "ended stays ended";
    }
  }
}

TEST(FindStocks, StoppedEarlyGivesAValidStockUnproven) {
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const StockProblem problem = tight_problem(seed, 120, 7);
    const StocksFound whole = find_stocks(problem);
    ASSERT_TRUE(whole.proven);
    double before = 0;
    for (std::int64_t work : {whole.work / 2, whole.work * 3 / 4, whole.work * 9 / 10}) {
      const StocksFound part = find_stocks(problem, {}, {.work = work, .stop = {}});
      EXPECT_FALSE(part.proven);
      ASSERT_EQ(part.stocks.size(), 1u);
      EXPECT_FALSE(part.stocks[0].proven);
      expect_sound(problem, part.stocks[0]);
      EXPECT_GE(part.stocks[0].score, before) << "more work never gives less";
      EXPECT_LE(part.stocks[0].score, whole.stocks[0].score);
      EXPECT_LE(part.work, whole.work);
      before = part.stocks[0].score;
    }
    int asked = 0;
    const StocksFound stopped = find_stocks(problem, {}, {.stop = [&] { return ++asked == 1; }});
    EXPECT_EQ(asked, 1);
    EXPECT_FALSE(stopped.proven);
    expect_sound(problem, stopped.stocks[0]);
  }
  const StocksFound none = find_stocks(tight_problem(1, 120, 7), {}, {.work = 0, .stop = {}});
  EXPECT_FALSE(none.proven);
  EXPECT_TRUE(none.stocks.empty());
}

TEST(ProblemError, NamesThePlaceOfWhatCannotBeSearched) {
  const auto place = [](const auto& change) {
    StockProblem problem = tight_problem(1, 5, 3);
    change(problem);
    const std::optional<Error> error = problem_error(problem);
    return error ? error->place : "";
  };
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(place([](StockProblem&) {}), "");
  EXPECT_EQ(place([](StockProblem& p) { p.most_species = -1; }), "/most_species");
  EXPECT_EQ(place([](StockProblem& p) { p.capacities[1] = -1; }), "/capacities");
  EXPECT_EQ(place([&](StockProblem& p) { p.capacities[1] = nan; }), "/capacities");
  EXPECT_EQ(place([&](StockProblem& p) { p.water[0].high = nan; }), "/water");
  EXPECT_EQ(place([](StockProblem& p) { p.species[4].least = 0; }), "/species/4/least");
  EXPECT_EQ(place([](StockProblem& p) { p.species[4].most = 2'000'000; }), "/species/4/most");
  EXPECT_EQ(place([&](StockProblem& p) { p.species[2].present = nan; }), "/species/2/present");
  EXPECT_EQ(place([](StockProblem& p) { p.species[2].each = 1e10; }), "/species/2/each");
  EXPECT_EQ(place([](StockProblem& p) { p.species[2].needs.pop_back(); }), "/species/2/needs");
  EXPECT_EQ(place([](StockProblem& p) { p.species[2].needs[0] = -0.1; }), "/species/2/needs");
  EXPECT_EQ(place([](StockProblem& p) { p.species[0].water.pop_back(); }), "/species/0/water");
  EXPECT_EQ(place([&](StockProblem& p) { p.species[0].water[1].low = nan; }), "/species/0/water");
  EXPECT_EQ(place([](StockProblem& p) { p.conflicts.emplace_back(0, 5); }), "/conflicts");
  EXPECT_EQ(place([](StockProblem& p) { p.conflicts.emplace_back(3, 3); }), "/conflicts");
  EXPECT_EQ(place([](StockProblem& p) { p.species.resize(5000, p.species[0]); }), "/species");
}

}  // namespace
}  // namespace shoalwright
