// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "rules/facts.h"

namespace shoalwright {

/// A line of the stock that brings animals later.
struct ToCome {
  const Kept* kept = nullptr;
  int line = 0;  ///< index into Plan::stock
  int animals = 0;
};

/// All lines with animals that are not there yet, by id of their kind, of known species only.
std::vector<ToCome> to_come(const Facts& facts);

/// The lines with another week of arrival. Empty where one of them is pinned.
std::vector<PatchStep> move_arrivals(const Plan& plan, const std::vector<ToCome>& lines, int week);

}  // namespace shoalwright
