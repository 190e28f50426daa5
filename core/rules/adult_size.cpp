// SPDX-License-Identifier: MIT
// adult-size: sold small, and too large for this tank when grown.
#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tank_fit.h"
#include "rules/tell.h"

namespace shoalwright {

void adult_size(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species || !kept.species->size.sold_cm) continue;
    const double adult_cm = kept.species->size.adult_tl_cm, sold_cm = *kept.species->size.sold_cm;
    if (!(sold_cm < limits::sold_small_share * adult_cm)) continue;
    const Species& species = *kept.species;
    std::optional<Severity> worst;
    for (const Fit& fit : {empty_run_fit(facts, species), lane_fit(facts, species), least_length_fit(facts, species),
                           width_fit(facts, species), height_fit(facts, species), volume_fit(facts, species)})
      worst = graver(worst, fit.severity);
    if (!worst || *worst == Severity::note) continue;  // within what a tape measure errs
    out.add("adult-size", *worst, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = capital(name_of(kept)) + " outgrows this tank";
      finding.why = "Sold at about " + amount(sold_cm, 1, "cm") + ", grown " + amount(adult_cm, 1, "cm") +
                    "; the tank is too small for it as an adult, and it does not stay small in a small tank.";
      rest_on(finding, facts, kept, "size.adult_tl_cm");
      remedy_by_count(facts.plan, kept, 0, finding);
    });
  }
}

}  // namespace shoalwright
