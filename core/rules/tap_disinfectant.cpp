// SPDX-License-Identifier: MIT
// tap-disinfectant: chlorine or chloramine in the tap water.
#include "rules/table.h"

namespace shoalwright {

namespace {

// A plan cannot say that no conditioner is used, which would be a strain: so this is a note about every litre, no more.
void tell(Disinfectant disinfectant, Finding& finding) {
  const bool unknown = disinfectant == Disinfectant::unknown;
  finding.text = unknown                                  ? "Tap water may hold chlorine or chloramine"
                 : disinfectant == Disinfectant::chlorine ? "Tap water holds chlorine"
                                                          : "Tap water holds chloramine";
  finding.why =
      "Either burns gills and kills the bacteria of the filter; standing does not take chloramine out of the water. First fill, "
      "changes and top-up all count" +
      std::string(unknown ? ", and what is not known counts as chloramine." : ".");
  finding.remedy = "Add conditioner against chloramine to every litre";
}

}  // namespace

void tap_disinfectant(const Facts& facts, Found& out) {
  const Disinfectant disinfectant = facts.plan.source.disinfectant;
  if (facts.stock.empty() || disinfectant == Disinfectant::none) return;
  out.add("tap-disinfectant", Severity::note, "", 0, [&](Finding& finding) { tell(disinfectant, finding); });
}

}  // namespace shoalwright
