// SPDX-License-Identifier: MIT
// brackish: kinds that need salt for good. Common practice, no source.
#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

void brackish(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species || kept.species->water.salinity != Salinity::brackish) continue;
    out.add("brackish", Severity::strain, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = capital(name_of(kept)) + " needs brackish water";
      finding.why =
          "It comes from where rivers meet the sea. Fresh water wears it out over months, and the salt that it needs, measured "
          "as "
          "salinity, is too much for fresh-water kinds and for plants. This plan is for fresh water alone.";
      rest_on(finding, facts, kept, "water.salinity");
      remedy_by_count(facts.plan, kept, 0, finding);
    });
  }
}

}  // namespace shoalwright
