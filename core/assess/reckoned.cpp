// SPDX-License-Identifier: MIT
#include "assess/reckoned.h"

#include <algorithm>

#include "stocking/layers.h"

namespace shoalwright {

Reckoned reckon(const Plan& plan, std::vector<Kept> stock, BodyRooms& bodies) {
  update(bodies, plan);
  return reckon(plan, std::move(stock), volume_of(plan), bodies);
}

Reckoned reckon(const Plan& plan, std::vector<Kept> stock, const Volume& volume, BodyRooms& bodies) {
  Reckoned all{.stock = by_id(std::move(stock)), .volume = volume, .water = {}, .room = {}, .load = {}, .air = {}};
  std::vector<const Species*> species;
  for (const Kept& kept : all.stock) species.push_back(kept.species);
  all.water = windows_of(plan, species);
  all.room = room_of(plan, all.stock, volume, bodies);
  all.load = load_of(plan, all.stock, volume, all.water);
  all.air = air_of(plan, all.stock, volume, all.water.temperature_c.now);
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

std::vector<Grade> grades_of(const Plan& plan, const Catalog& catalog, BodyRooms& bodies) {
  const Reckoned all = reckon(plan, resolve_stock(plan, catalog), bodies);
  return grades_of(facts_of(plan, catalog, all, bodies));
}

bool known_before(const Finding& one, const std::vector<Finding>& before) {
  return std::any_of(before.begin(), before.end(), [&](const Finding& b) {
    return b.rule == one.rule && b.species == one.species && b.severity <= one.severity;
  });
}

}  // namespace shoalwright
