// SPDX-License-Identifier: MIT
// softened-water: a tap that has been through a softener.
#include "notebook/say.h"
#include "rules/limits.h"
#include "rules/table.h"

namespace shoalwright {

void softened_water(const Facts& facts, Found& out) {
  const SourceWater& source = facts.plan.source;
  if (!source.gh_dgh || !source.kh_dkh) return;
  const double gh = *source.gh_dgh, kh = *source.kh_dkh;
  if (!(gh <= limits::softened_most_gh_dgh && kh >= limits::softened_least_kh_dkh)) return;
  out.add("softened-water", Severity::watch, "", kh - gh, [&](Finding& finding) {
    finding.text = "The tap water looks softened";
    finding.why = "GH " + amount(gh, 1, "") + " beside KH " + amount(kh, 1, "") +
                  ": a softener puts sodium in the place of calcium and magnesium. Plants, snails and fish miss the calcium, and "
                  "no test for GH or KH shows the sodium.";
    finding.remedy = "Take the water from before the softener";
  });
}

}  // namespace shoalwright
