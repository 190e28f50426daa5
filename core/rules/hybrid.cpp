// SPDX-License-Identifier: MIT
// hybrid: kinds in one tank that cross.
#include <algorithm>

#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/pairs.h"
#include "rules/sexes.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

/// All that cross with the first, and with those in turn.
std::vector<const Kept*> crossing_with(const Facts& facts, const Kept& first) {
  std::vector<const Kept*> all{&first};
  for (std::size_t i = 0; i < all.size(); ++i)
    for (const Kept& other : facts.stock)
      if (other.species && may_cross(*all[i]->species, *other.species) && may_breed(*all[i], other) &&
          std::find(all.begin(), all.end(), &other) == all.end())
        all.push_back(&other);
  std::sort(all.begin(), all.end());
  return all;
}

}  // namespace

void hybrid(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // never a strain
  for (const Kept& first : facts.stock) {
    if (!first.species) continue;
    const std::vector<const Kept*> crossing = crossing_with(facts, first);
    if (crossing.size() < 2 || crossing.front() != &first) continue;
    out.add("hybrid", Severity::watch, "", 0, [&](Finding& finding) {
      concern(finding, crossing);
      finding.text = (crossing.size() == 2 ? capital(names_of(crossing)) : heading_of(crossing)) + " may cross";
      finding.why = "Their young are hybrids, neither the one nor the other: keep one of them, or never pass young on as pure.";
      rest_on(finding, facts, crossing, "temper.breeds_with");
      remedy_by_keeping_one(facts.plan, crossing, finding);
    });
  }
}

}  // namespace shoalwright
