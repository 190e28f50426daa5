// SPDX-License-Identifier: MIT
#pragma once

#include <limits>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "units/range.h"
#include "units/result.h"

namespace shoalwright {

/// One species that a stock may have: none of it, or `least` to `most` animals.
struct Offer {
  int least = 1;       ///< 1 or more
  int most = 1;        ///< below `least`: the species can never be chosen
  double present = 0;  ///< score for having it at all
  double each = 0;     ///< score for each animal
  /// What one animal takes of each capacity of the problem, in that capacity's unit; 0 or more.
  std::vector<double> needs;
  /// What it lives in, one range for each water axis of the problem; the wrong way round (low above high) suits no water.
  std::vector<Range> water;
  bool must = false;  ///< swims already: every stock has it
};

/// Which stock is the best: choose at most `most_species` species and a count for each, so that the sum of the scores is
/// greatest, no capacity is passed, no two chosen species are in conflict, and one water suits all of them.
struct StockProblem {
  std::vector<Offer> species;
  std::vector<double> capacities;              ///< 0 or more
  std::vector<Range> water;                    ///< what each axis can be in this tank
  std::vector<std::pair<int, int>> conflicts;  ///< positions in `species`, in any order, twice does no harm
  int most_species = 0;                        ///< 0 or more
};

/// The most that a problem may have: its graph of who fits whom is a square of bits.
inline constexpr int most_offers = 4096, most_capacities = 64, most_axes = 64, most_animals = 1'000'000;
/// Scores are of at most this size, so that sums of them are exact enough.
inline constexpr double greatest_score = 1e9;

/// A capacity counts as kept while what is taken passes it by no more than this share of it: sums of decimal fractions are
/// rarely exact (0.1 + 0.2 fills 0.3). A capacity of 0 is kept exactly.
inline constexpr double capacity_tolerance = 1e-9;

/// What is wrong with a problem from outside: a list of the wrong length, a number that is none or outside its range, a
/// conflict with a species that is not there or with itself. Nothing when it can be searched.
std::optional<Error> problem_error(const StockProblem& problem);

}  // namespace shoalwright
