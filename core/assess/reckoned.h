// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "rules/facts.h"

namespace shoalwright {

/// What the rules look at, for a stock in a plan's tank.
struct Reckoned {
  std::vector<Kept> stock;  ///< by id
  Volume volume;
  Windows water;
  Room room;
  Load load;
  Air air;
};

/// `stock` may be another than the plan's own. `bodies` are brought up to the plan.
Reckoned reckon(const Plan& plan, std::vector<Kept> stock, BodyRooms& bodies);

/// The same for many stocks of one plan: `volume` and `bodies` are of it already.
Reckoned reckon(const Plan& plan, std::vector<Kept> stock, const Volume& volume, BodyRooms& bodies);

/// All must outlive the facts.
Facts facts_of(const Plan& plan, const Catalog& catalog, const Reckoned& reckoned, BodyRooms& bodies);

/// Every finding, in the order of the rules.
std::vector<Finding> findings_of(const Facts& facts, Found::Keep keep);

/// A harm or a strain without its words, which owns its names.
struct Grade {
  std::string rule, subject;
  Severity severity = Severity::harm;
  double amount = 0;  ///< the quantity that was judged, larger is worse
  bool operator==(const Grade&) const = default;
};

/// Every harm and strain, in the order of the rules.
std::vector<Grade> grades_of(const Facts& facts);
std::vector<Grade> grades_of(const Plan& plan, const Catalog& catalog, BodyRooms& bodies);

/// Whether a finding about the same kinds is among `before`, as grave.
bool known_before(const Finding& one, const std::vector<Finding>& before);

}  // namespace shoalwright
