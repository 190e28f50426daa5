// SPDX-License-Identifier: MIT
#include "advice/meetings.h"

#include <algorithm>

#include "rules/table.h"
#include "stocking/encounter.h"

namespace shoalwright {

namespace {

constexpr Rule about_two[] = {temperament, predation, fin_nipping, invertebrate_predation, feeding, hybrid, look_alike_rivalry};

std::vector<Finding> found_in(const Facts& facts, const std::vector<Kept>& stock) {
  const Facts of{facts.plan, facts.catalog, stock, facts.volume, facts.water, facts.room, facts.bodies, facts.load, facts.air};
  Found found(Found::Keep::findings_at_once);
  for (const Rule rule : about_two) rule(of, found);
  return found.take_findings();
}

bool speaks_of(const Finding& finding, const std::string& id) {
  return std::find(finding.species.begin(), finding.species.end(), id) != finding.species.end();
}

std::vector<Finding> ground_contended(const Facts& facts) {
  Found found(Found::Keep::findings_at_once);
  territory(facts, found);
  return found.take_findings();
}

}  // namespace

Meetings meetings_of(const Plan& plan, const Catalog& catalog, BodyRooms& bodies) {
  std::vector<Kept> groups = resolve_stock(plan, catalog);
  std::erase_if(groups, [](const Kept& kept) { return !kept.species; });
  const Reckoned all = reckon(plan, groups, bodies);
  const Facts facts = facts_of(plan, catalog, all, bodies);

  Meetings out;
  for (const Kept& kept : groups) out.groups.push_back({kept.id, kept.count, levels_in_order(swim_levels(*kept.species))});
  const std::vector<Finding> contended = ground_contended(facts);
  std::vector<Finding> alone;  // what a kind does among its own
  for (const Kept& kept : groups)
    for (Finding& finding : found_in(facts, {kept})) alone.push_back(std::move(finding));
  for (std::size_t a = 0; a < groups.size(); ++a)
    for (std::size_t b = a + 1; b < groups.size(); ++b) {
      ++out.pairs;
      Meeting meeting{a, b, {}};
      for (Finding& finding : found_in(facts, by_id({groups[a], groups[b]})))
        if (!known_before(finding, alone)) meeting.findings.push_back(std::move(finding));
      for (const Finding& finding : contended)
        if (speaks_of(finding, groups[a].id) && speaks_of(finding, groups[b].id)) meeting.findings.push_back(finding);
      if (meeting.findings.empty()) continue;
      const auto worse = [](const Finding& x, const Finding& y) { return x.severity < y.severity; };
      std::stable_sort(meeting.findings.begin(), meeting.findings.end(), worse);
      out.meetings.push_back(std::move(meeting));
    }
  std::stable_sort(out.meetings.begin(), out.meetings.end(),
                   [](const Meeting& x, const Meeting& y) { return x.findings.front().severity < y.findings.front().severity; });
  return out;
}

}  // namespace shoalwright
