// SPDX-License-Identifier: MIT
// private-water: the keeper's own well, spring or rain. Common practice, no source.
#include "plan/more_keys.h"
#include "rules/table.h"

namespace shoalwright {

void private_water(const Facts& facts, Found& out) {
  if (!is_private(facts.plan.source)) return;
  out.add("private-water", Severity::note, "", 0, [](Finding& finding) {
    finding.text = "Nobody else tests private water";
    finding.why =
        "A well, a spring or rain from a roof may hold nitrate or metals, differs with the season and has no supplier’s report. "
        "It "
        "holds no disinfectant, unless somebody puts it in: have it tested.";
    finding.remedy = "Test it for nitrate and metals once a year";
  });
}

}  // namespace shoalwright
