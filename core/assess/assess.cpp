// SPDX-License-Identifier: MIT
#include "assess/assess.h"

#include <algorithm>
#include <tuple>

#include "assess/cautions.h"
#include "assess/largest.h"
#include "assess/tightest.h"
#include "rules/facts.h"
#include "units/order.h"

namespace shoalwright {

namespace {

std::vector<Finding> find_all(const Facts& facts) {
  Found found(Found::Keep::findings);
  for (const Rule rule : all_rules()) rule(facts, found);
  std::vector<Finding> findings = found.take_findings();
  sort_stable(findings, [](const Finding& a, const Finding& b) {
    return std::tie(a.severity, a.rule, a.species) < std::tie(b.severity, b.rule, b.species);
  });
  return findings;
}

}  // namespace

Assessment assess(const Plan& plan, const Catalog& catalog) {
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  std::vector<const Species*> species;
  for (const Kept& kept : stock) species.push_back(kept.species);

  Assessment assessment;
  assessment.volume = volume_of(plan);
  assessment.water = windows_of(plan, species);
  assessment.room = room_of(plan, stock, assessment.volume);
  assessment.load = load_of(plan, stock, assessment.volume, assessment.water);

  const std::vector<Kept> sorted = by_id(stock);
  const Facts facts{plan, catalog, sorted, assessment.volume, assessment.water, assessment.room, assessment.load};
  assessment.findings = find_all(facts);
  assessment.tightest = tightest_margins(facts);
  assessment.cautions = cautions_for(facts);

  LargestSearch search(plan, catalog, sorted, assessment.volume, assessment.room);
  for (GroupRoom& group : assessment.room.groups) {
    const auto kept = std::find_if(stock.begin(), stock.end(), [&](const Kept& one) { return one.id == group.species; });
    Largest largest = search.find(*kept->species);
    group.largest_count = largest.count;
    if (!largest.stopped_by.empty()) group.stopped_by = std::move(largest.stopped_by.front());
  }
  return assessment;
}

}  // namespace shoalwright
