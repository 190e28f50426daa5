// SPDX-License-Identifier: MIT
// What the search of stocks is held against: every stock of a small problem, found by trying, and a check that knows nothing of
// it.
#pragma once

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "search/search.h"
#include "support/dice.h"

namespace shoalwright {

/// What of the problem a stock breaks; empty when it keeps everything. Straight from the words of search/problem.h: one water
/// for all is looked for at once, not pair by pair.
inline std::string broken(const StockProblem& problem, const std::vector<GroupChosen>& groups) {
  std::set<int> in;
  for (const GroupChosen& group : groups) {
    if (group.species < 0 || group.species >= static_cast<int>(problem.species.size())) return "no such species";
    if (!in.insert(group.species).second) return "a species twice";
    const Offer& offer = problem.species[static_cast<std::size_t>(group.species)];
    if (group.count < offer.least || group.count > offer.most) return "count of " + std::to_string(group.species);
  }
  if (static_cast<int>(in.size()) > problem.most_species) return "too many species";
  for (std::size_t i = 0; i < problem.species.size(); ++i)
    if (problem.species[i].must && !in.count(static_cast<int>(i))) return "without " + std::to_string(i);
  for (std::size_t k = 0; k < problem.capacities.size(); ++k) {
    double taken = 0;
    for (const GroupChosen& group : groups)
      taken += problem.species[static_cast<std::size_t>(group.species)].needs[k] * group.count;
    if (taken > problem.capacities[k] * (1 + 1e-9)) return "capacity " + std::to_string(k);
  }
  for (std::size_t axis = 0; axis < problem.water.size() && !groups.empty(); ++axis) {
    Range shared = problem.water[axis];
    for (const GroupChosen& group : groups) {
      const Range& own = problem.species[static_cast<std::size_t>(group.species)].water[axis];
      shared = {std::max(shared.low, own.low), std::min(shared.high, own.high)};
    }
    if (shared.low > shared.high) return "water " + std::to_string(axis);
  }
  for (const auto& [a, b] : problem.conflicts)
    if (in.count(a) && in.count(b)) return "conflict of " + std::to_string(a) + " and " + std::to_string(b);
  return "";
}

inline double score_of(const StockProblem& problem, const std::vector<GroupChosen>& groups) {
  double score = 0;
  for (const GroupChosen& group : groups) {
    const Offer& offer = problem.species[static_cast<std::size_t>(group.species)];
    score += offer.present + offer.each * group.count;
  }
  return score;
}

/// The best score of every set of species that can live in the tank, by trying every count of every species. The sets are
/// written as bits; at most 30 species.
inline std::map<unsigned, double> every_set(const StockProblem& problem) {
  std::map<unsigned, double> best;
  std::vector<GroupChosen> groups;
  StockProblem free = problem;  // while a stock grows, who must be there may still come
  for (Offer& offer : free.species) offer.must = false;
  const std::function<void(std::size_t, unsigned)> grow = [&](std::size_t i, unsigned set) {
    if (!broken(free, groups).empty()) return;  // more animals never mend it
    if (i == problem.species.size()) {
      if (!broken(problem, groups).empty()) return;
      const double score = score_of(problem, groups);
      const auto [place, first] = best.emplace(set, score);
      if (!first) place->second = std::max(place->second, score);
      return;
    }
    grow(i + 1, set);
    for (int count = problem.species[i].least; count <= problem.species[i].most; ++count) {
      groups.push_back({static_cast<int>(i), count});
      grow(i + 1, set | 1u << i);
      groups.pop_back();
    }
  };
  grow(0, 0);
  return best;
}

/// A small problem of any shape: up to seven species, often full, in conflict, of equal scores, or not possible at all; some
/// scores below 0, some no multiples of anything.
inline StockProblem small_problem(std::uint64_t seed) {
  Dice dice(seed);
  StockProblem problem;
  const int species = dice.percent(10) ? dice.whole(0, 2) : dice.whole(3, 7), capacities = dice.whole(0, 4),
            axes = dice.whole(0, 3);
  const int conflicts = dice.pick(std::vector<int>{0, 10, 10, 30, 60, 100}), musts = dice.pick(std::vector<int>{0, 0, 0, 20});
  const int scores = dice.below(4), room = dice.whole(2, 25);
  problem.most_species = dice.percent(10) ? dice.whole(0, 1) : dice.whole(2, 5);
  for (int k = 0; k < capacities; ++k) problem.capacities.push_back(dice.percent(8) ? 0 : dice.whole(1, 160 * room) / 100.0);
  for (int axis = 0; axis < axes; ++axis) problem.water.push_back({0, 10});
  for (int i = 0; i < species; ++i) {
    Offer offer{.least = dice.whole(1, 3), .most = dice.whole(1, 5), .needs = {}, .water = {}};
    offer.present = scores == 0 ? 7 : scores == 1 ? dice.real(-2, 9) : dice.whole(-2, 20);
    offer.each = scores == 0 ? 1 : scores == 1 ? dice.real(-1, 5) : scores == 2 ? dice.whole(-1, 6) : dice.whole(0, 60) / 10.0;
    for (int k = 0; k < capacities; ++k) offer.needs.push_back(dice.percent(25) ? 0 : dice.whole(0, 200) / 100.0);
    for (int axis = 0; axis < axes; ++axis) {
      const double low = dice.whole(-1, 8);
      offer.water.push_back({low, low + dice.whole(dice.percent(5) ? -1 : 3, 9)});
    }
    offer.must = dice.percent(musts);
    problem.species.push_back(offer);
  }
  for (int i = 0; i < species; ++i)
    for (int j = i + 1; j < species; ++j)
      if (dice.percent(conflicts)) problem.conflicts.emplace_back(dice.percent(50) ? std::pair{i, j} : std::pair{j, i});
  return problem;
}

/// A problem of `species` kinds in a tank that holds a few of them, with scores that go with what an animal takes: the hard
/// kind, for the search has to weigh everything.
inline StockProblem tight_problem(std::uint64_t seed, int species, int most_species) {
  Dice dice(seed);
  StockProblem problem{.species = {}, .capacities = {27, 63, 34, 50}, .water = {{18, 30}, {5, 8.5}}, .conflicts = {}};
  problem.most_species = most_species;
  for (int i = 0; i < species; ++i) {
    const int size = dice.whole(20, 140), level = dice.below(3);
    Offer offer{.least = dice.whole(1, size < 60 ? 10 : 2), .most = 1, .needs = {}, .water = {}};
    offer.most = offer.least + dice.whole(0, 14);
    offer.present = dice.whole(20, 60) + size / 4;
    offer.each = size / 5 + dice.whole(0, 5);
    offer.needs.assign(4, 0);
    offer.needs[static_cast<std::size_t>(level)] = size * dice.whole(14, 18) / 1000.0;
    offer.needs[static_cast<std::size_t>((level + 1) % 3)] = size * dice.whole(3, 5) / 1000.0;
    offer.needs[3] = size * dice.whole(10, 13) / 1000.0;
    const double warm = dice.whole(36, 52) / 2.0, ph = dice.whole(50, 72) / 10.0;
    offer.water = {{warm, warm + dice.whole(4, 12) / 2.0}, {ph, ph + dice.whole(8, 25) / 10.0}};
    problem.species.push_back(offer);
    for (int j = 0; j < i; ++j)
      if (dice.percent(12)) problem.conflicts.emplace_back(j, i);
  }
  return problem;
}

}  // namespace shoalwright
