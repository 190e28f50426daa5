// SPDX-License-Identifier: MIT
// look-alike-rivalry: kinds that take each other for rivals in little water.
#include <algorithm>

#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/pairs.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

void tell(const Facts& facts, const std::vector<const Kept*>& alike, Finding& finding) {
  concern(finding, alike);
  finding.text = (alike.size() == 2 ? capital(names_of(alike)) : heading_of(alike)) + " look alike";
  finding.why = capital(names_of(alike)) + " take each other for rivals; this tank holds " +
                amount(facts.volume.gross_l, 0, "L") + ", from " + amount(look_alike_least_l, 0, "L") +
                " on they keep out of each other's way.";
  rest_on(finding, facts, alike, "temper.look_alike_group");
  remedy_by_keeping_one(facts.plan, alike, finding);
}

}  // namespace

void look_alike_rivalry(const Facts& facts, Found& out) {
  if (!(facts.volume.gross_l > 0)) return;
  const auto severity = grade(rounded(1 - facts.volume.gross_l / look_alike_least_l), limits::volume_short);
  if (!severity) return;
  for (const Kept& first : facts.stock) {
    if (!first.species || first.species->temper.look_alike_group.empty()) continue;
    std::vector<const Kept*> alike;
    for (const Kept& other : facts.stock)
      if (other.species && look_alike(*first.species, *other.species)) alike.push_back(&other);
    if (alike.size() < 2 || alike.front() != &first) continue;
    out.add("look-alike-rivalry", *severity, first.species->temper.look_alike_group, static_cast<double>(alike.size()),
            [&](Finding& finding) { tell(facts, alike, finding); });
  }
}

}  // namespace shoalwright
