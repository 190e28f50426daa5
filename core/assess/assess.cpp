// SPDX-License-Identifier: MIT
#include "assess/assess.h"

#include <algorithm>
#include <tuple>

#include "assess/cautions.h"
#include "assess/largest.h"
#include "assess/reckoned.h"
#include "assess/tightest.h"
#include "rules/facts.h"
#include "stocking/layers.h"
#include "units/order.h"
#include "water/reach.h"

namespace shoalwright {

namespace {

std::vector<Finding> find_all(const Facts& facts, Remedies remedies) {
  std::vector<Finding> findings =
      findings_of(facts, remedies == Remedies::searched ? Found::Keep::findings : Found::Keep::findings_at_once);
  sort_stable(findings, [](const Finding& a, const Finding& b) {
    return std::tie(a.severity, a.rule, a.species) < std::tie(b.severity, b.rule, b.species);
  });
  return findings;
}

}  // namespace

Assessment assess(const Plan& plan, const Catalog& catalog) {
  BodyRooms bodies;
  return assess(plan, catalog, bodies);
}

Assessment assess(const Plan& plan, const Catalog& catalog, BodyRooms& bodies, Remedies remedies) {
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  std::vector<const Species*> species;
  for (const Kept& kept : stock) species.push_back(kept.species);

  Assessment assessment;
  assessment.volume = volume_of(plan);
  assessment.water = windows_of(plan, species);
  update(bodies, plan);
  assessment.room = room_of(plan, stock, assessment.volume, bodies);
  assessment.load = load_of(plan, stock, assessment.volume, assessment.water);
  const std::optional<double>& water_c = assessment.water.temperature_c.now;
  const CarbonateReach reach = carbonate_reach_of(assessment.water, plan.limits.co2_mg_l.value_or(safe_co2_mg_l));
  assessment.water.reachable = reach.reachable;
  assessment.water.co2_mg_l = reach.co2_mg_l;
  assessment.air = air_of(plan, stock, assessment.volume, water_c);
  assessment.heat = heat_of(plan, assessment.volume, water_c);

  const std::vector<Kept> sorted = by_id(stock);
  const Facts facts{plan,   catalog,         sorted,        assessment.volume, assessment.water, assessment.room,
                    bodies, assessment.load, assessment.air};
  assessment.findings = find_all(facts, remedies);
  assessment.tightest = tightest_margins(facts);
  assessment.cautions = cautions_for(facts);

  LargestSearch search(plan, catalog, sorted, assessment.volume, assessment.room, bodies);
  for (GroupRoom& group : assessment.room.groups) {
    const auto kept = std::find_if(stock.begin(), stock.end(), [&](const Kept& one) { return one.id == group.species; });
    Largest largest = search.find(*kept->species);
    group.largest_count = largest.count;
    if (!largest.stopped_by.empty()) group.stopped_by = std::move(largest.stopped_by.front());
  }
  return assessment;
}

}  // namespace shoalwright
