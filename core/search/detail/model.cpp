// SPDX-License-Identifier: MIT
#include "search/detail/model.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace shoalwright::search_detail {

namespace {

/// The greatest step of 1, 0.1, 0.01 or 0.001 times a whole number that all scores are multiples of; 0 when there is none.
double step_of(const StockProblem& problem) {
  for (const double parts : {1.0, 10.0, 100.0, 1000.0}) {
    std::int64_t common = 0;
    const auto whole = [&](double score) {
      const double scaled = score * parts, nearest = std::nearbyint(scaled);
      if (std::fabs(scaled - nearest) > 1e-12 * std::max(1.0, std::fabs(scaled))) return false;
      common = std::gcd(common, static_cast<std::int64_t>(nearest));
      return true;
    };
    if (std::all_of(problem.species.begin(), problem.species.end(),
                    [&](const Offer& offer) { return whole(offer.present) && whole(offer.each); }))
      return common == 0 ? 1 : static_cast<double>(common) / parts;
  }
  return 0;
}

/// Each range cut to what the tank's water can be, so that the tank needs no place among the pairs.
Range within(const Range& range, const Range& axis) { return {std::max(range.low, axis.low), std::min(range.high, axis.high)}; }

bool meet(const Range& a, const Range& b) { return std::max(a.low, b.low) <= std::min(a.high, b.high); }

void part_by_water(Model& model, const StockProblem& problem) {
  for (std::size_t axis = 0; axis < problem.water.size(); ++axis) {
    std::vector<Range> ranges;
    for (int from : model.origin) ranges.push_back(within(problem.species[from].water[axis], problem.water[axis]));
    for (int i = 0; i < model.species; ++i)
      for (int j = i + 1; j < model.species; ++j)
        if (!meet(ranges[i], ranges[j])) {
          model.apart.set(i, j);
          model.apart.set(j, i);
        }
  }
}

/// How many of the species fit into the empty tank; below its least number when it cannot stand in any stock.
int alone(const Offer& offer, const StockProblem& problem) {
  for (std::size_t axis = 0; axis < problem.water.size(); ++axis) {
    const Range range = within(offer.water[axis], problem.water[axis]);
    if (!(range.low <= range.high)) return 0;
  }
  int most = offer.most;
  for (std::size_t k = 0; k < problem.capacities.size(); ++k) {
    if (offer.needs[k] <= 0) continue;
    const double fit = problem.capacities[k] * (1 + capacity_tolerance) / offer.needs[k] + 1e-7;
    if (fit < most) most = static_cast<int>(fit);
  }
  return most;
}

}  // namespace

int fitting(const double* room, const double* share, int capacities, int most) {
  for (int k = 0; k < capacities; ++k) {
    // A hair more than fits: who counts on it is looked at exactly in the end.
    if (share[k] > 0 && room[k] < share[k] * most) most = static_cast<int>(std::max(0.0, room[k] / share[k] + 1e-7));
  }
  return most;
}

Model model_of(const StockProblem& problem) {
  Model model;
  model.most_species = problem.most_species;
  model.step = step_of(problem);
  std::vector<std::size_t> used;
  for (std::size_t k = 0; k < problem.capacities.size(); ++k)
    if (problem.capacities[k] > 0) used.push_back(k);  // of those at 0 only species that take nothing are left
  model.capacities = static_cast<int>(used.size());
  std::vector<int> place(problem.species.size(), -1);
  for (int i = 0; i < static_cast<int>(problem.species.size()); ++i) {
    const Offer& offer = problem.species[i];
    const int most = alone(offer, problem);
    if (most < offer.least) {
      model.impossible |= offer.must;
      continue;
    }
    place[i] = model.species++;
    if (offer.must) model.musts.push_back(place[i]);
    model.origin.push_back(i);
    model.least.push_back(offer.least);
    model.most.push_back(most);
    model.present.push_back(offer.present);
    model.each.push_back(offer.each);
    for (std::size_t k : used) model.shares.push_back(offer.needs[k] / problem.capacities[k]);
  }
  model.apart = BitRows(model.species);
  for (const auto& [a, b] : problem.conflicts) {
    if (place[a] < 0 || place[b] < 0) continue;
    model.apart.set(place[a], place[b]);
    model.apart.set(place[b], place[a]);
  }
  part_by_water(model, problem);
  for (int a : model.musts)
    for (int b : model.musts) model.impossible |= model.apart.has(a, b);
  model.impossible |= static_cast<int>(model.musts.size()) > model.most_species;
  return model;
}

}  // namespace shoalwright::search_detail
