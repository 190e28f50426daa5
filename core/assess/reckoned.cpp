// SPDX-License-Identifier: MIT
#include "assess/reckoned.h"

#include <algorithm>

#include "stocking/layers.h"

namespace shoalwright {

Reckoned reckon(const Plan& plan, std::vector<Kept> stock, BodyRooms& bodies) {
  Reckoned all{.stock = by_id(std::move(stock)), .volume = volume_of(plan), .water = {}, .room = {}, .load = {}, .air = {}};
  std::vector<const Species*> species;
  for (const Kept& kept : all.stock) species.push_back(kept.species);
  update(bodies, plan);
  all.water = windows_of(plan, species);
  all.room = room_of(plan, all.stock, all.volume, bodies);
  all.load = load_of(plan, all.stock, all.volume, all.water);
  all.air = air_of(plan, all.stock, all.volume, all.water.temperature_c.now);
  return all;
}

Facts facts_of(const Plan& plan, const Catalog& catalog, const Reckoned& all, BodyRooms& bodies) {
  return {plan, catalog, all.stock, all.volume, all.water, all.room, bodies, all.load, all.air};
}

std::vector<Finding> findings_of(const Facts& facts, Found::Keep keep) {
  Found found(keep);
  for (const RuleRow& row : rules_with(facts.catalog)) row.rule(facts, found);
  return found.take_findings();
}

std::vector<Grade> grades_of(const Facts& facts) {
  Found found(Found::Keep::grades);
  for (const RuleRow& row : rules_with(facts.catalog)) row.rule(facts, found);
  std::vector<Grade> grades;
  for (const Raised& one : found.raised())
    grades.push_back({std::string(one.rule), std::string(one.subject), one.severity, one.amount});
  return grades;
}

std::vector<Grade> grades_of(const Plan& plan, const Catalog& catalog, std::vector<Kept> stock, BodyRooms& bodies) {
  const Reckoned all = reckon(plan, std::move(stock), bodies);
  return grades_of(facts_of(plan, catalog, all, bodies));
}

std::vector<Grade> grades_of(const Plan& plan, const Catalog& catalog, BodyRooms& bodies) {
  return grades_of(plan, catalog, resolve_stock(plan, catalog), bodies);
}

bool known_before(const Grade& one, const std::vector<Grade>& before) {
  constexpr double slack = 1e-9;  // sums in another order
  return std::any_of(before.begin(), before.end(), [&](const Grade& b) {
    return b.rule == one.rule && b.subject == one.subject && b.severity <= one.severity && b.amount >= one.amount - slack;
  });
}

}  // namespace shoalwright
