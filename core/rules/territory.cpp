// SPDX-License-Identifier: MIT
// territory: ground for all that hold some, and twice as much where two kinds do.
#include <algorithm>

#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/floor_told.h"
#include "rules/pairs.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

/// Kinds that hold ground and do not suffer each other on it: at least one of them is no peaceful neighbour.
std::vector<const Kept*> contending(const std::vector<Part>& holders) {
  std::vector<const Kept*> kinds;
  bool peaceful = true;
  for (const Part& part : holders) {
    kinds.push_back(part.kept);
    peaceful = peaceful && part.kept->species->temper.to_others == Toward::peaceful;
  }
  if (kinds.size() < 2 || peaceful) kinds.clear();
  return kinds;
}

// The one kind fewer that leaves enough.
void tell_contending(const Facts& facts, const std::vector<const Kept*>& kinds, double wanted_cm2, Finding& finding) {
  concern(finding, kinds);
  finding.text = heading_of(kinds) + " hold ground on one floor";
  finding.why = capital(names_of(kinds)) + " fight over the border: so that they keep apart, their " +
                amount(wanted_cm2, 0, "cm²") + " want twice as much floor, and " + amount(facts.room.floor_cm2, 0, "cm²") +
                " can be used.";
  rest_on(finding, facts, kinds, "life.style");
  remedy_by_keeping_one(facts.plan, kinds, finding);
}

}  // namespace

void territory(const Facts& facts, Found& out) {
  if (!facts.room.floor_crowding) return;
  const std::vector<Part> holders = parts_of(facts, Holders::yes);
  if (holders.empty()) return;
  std::optional<Severity> crowded = grade(rounded(*facts.room.floor_crowding), in_view(limits::territory, facts.plan.strictness));
  if (crowded) crowded = unless_floor_assumed(facts.plan, *crowded);

  const std::vector<const Kept*> kinds = contending(holders);
  double wanted_cm2 = 0;
  for (const Part& part : holders) wanted_cm2 += part.amount;
  const std::optional<Severity> contended =
      kinds.empty() ? std::nullopt : grade(rounded(two_holders_floor * wanted_cm2 / facts.room.floor_cm2), limits::ground_over);
  // Said once: that the floor is short where it is as grave.
  if (crowded && (!contended || *crowded <= *contended))
    out.add("territory", *crowded, "", *facts.room.floor_crowding,
            [&](Finding& finding) { tell_floor(facts, Holders::yes, *crowded, finding); });
  else if (contended)
    out.add("territory", *contended, "kinds", static_cast<double>(kinds.size()),
            [&](Finding& finding) { tell_contending(facts, kinds, wanted_cm2, finding); });
}

}  // namespace shoalwright
