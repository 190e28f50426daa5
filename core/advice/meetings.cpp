// SPDX-License-Identifier: MIT
#include "advice/meetings.h"

#include <algorithm>

#include "rules/table.h"
#include "stocking/encounter.h"

namespace shoalwright {

namespace {

constexpr Rule about_two[] = {temperament, predation, fin_nipping, invertebrate_predation, feeding, hybrid, look_alike_rivalry};

bool speaks_of(const Finding& finding, const std::string& id) {
  return std::find(finding.species.begin(), finding.species.end(), id) != finding.species.end();
}

void keep_those_of(std::vector<Finding> all, const std::string& one, const std::string& other, std::vector<Finding>& kept) {
  for (Finding& finding : all)
    if (speaks_of(finding, one) && speaks_of(finding, other)) kept.push_back(std::move(finding));
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
  for (std::size_t a = 0; a < groups.size(); ++a)
    for (std::size_t b = a + 1; b < groups.size(); ++b) {
      ++out.pairs;
      const std::vector<Kept> pair = by_id({groups[a], groups[b]});
      const Facts between{plan, catalog, pair, facts.volume, facts.water, facts.room, bodies, facts.load, facts.air};
      Found found(Found::Keep::findings_at_once);
      for (const Rule rule : about_two) rule(between, found);
      Meeting meeting{a, b, {}};
      keep_those_of(found.take_findings(), groups[a].id, groups[b].id, meeting.findings);
      keep_those_of(contended, groups[a].id, groups[b].id, meeting.findings);
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
