// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// One thing that is another in a plan than in the plan it came from.
struct Change {
  std::string what;  ///< "count danio-rerio", "sexes danio-rerio", "tank", "lid", "piece 3", …: the same for the same thing
  double cost = 0;   ///< above 0
  bool operator==(const Change&) const = default;
};

/// What a keeper would have to do to get from one plan to the other. The costs are in trouble for the keeper, whole things to
/// do being about 1, and only compare ways of mending; common practice, no source. The dearest is to take out an animal that
/// swims already, so that one such animal costs more than a tank; then a larger tank, and more so where somebody lives in the
/// old one; then a wish given up, or filled by another kind; then water that has to be mixed and floors that have to be changed;
/// all else is small.
std::vector<Change> changes_between(const Plan& before, const Plan& after, const Catalog& catalog);

double cost_of(const std::vector<Change>& changes);

}  // namespace shoalwright
