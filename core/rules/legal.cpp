// SPDX-License-Identifier: MIT
// legal: lists of the plan's region that name a kind.
#include <algorithm>
#include <array>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

/// States whose law the lists of the Union are, by ISO 3166: treaties of the European Union, as of 2026.
constexpr std::array<std::string_view, 27> union_states{"AT", "BE", "BG", "CY", "CZ", "DE", "DK", "EE", "ES",
                                                        "FI", "FR", "GR", "HR", "HU", "IE", "IT", "LT", "LU",
                                                        "LV", "MT", "NL", "PL", "PT", "RO", "SE", "SI", "SK"};

/// "US-FL" lies in "US".
bool holds_in(const std::string& of_list, const std::string& region) {
  const std::string state = region.substr(0, region.find('-'));
  return of_list == state ||
         (of_list == "EU" && std::find(union_states.begin(), union_states.end(), state) != union_states.end());
}

Severity severity_of(const Species::Law& law) { return law.effect == "check" ? Severity::note : Severity::strain; }

/// The gravest that holds there.
const Species::Law* law_for(const Species& species, const std::string& region) {
  const Species::Law* gravest = nullptr;
  for (const Species::Law& law : species.laws)
    if (holds_in(law.region, region) && (!gravest || severity_of(law) < severity_of(*gravest))) gravest = &law;
  return gravest;
}

}  // namespace

void legal(const Facts& facts, Found& out) {
  if (facts.plan.place.region.empty()) return;  // a caution
  for (const Kept& kept : facts.stock) {
    const Species::Law* law = kept.species ? law_for(*kept.species, facts.plan.place.region) : nullptr;
    if (!law) continue;
    out.add("legal", severity_of(*law), kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      const bool named = law->effect != "check";
      finding.text = capital(name_of(kept)) + (law->effect == "banned" ? " may not be kept here"
                                               : named                 ? " needs papers here"
                                                                       : ": check the law here");
      finding.why =
          law->instrument + " (" + law->region + ", as known in " + law->as_of + "). Lists change: read the present one.";
      rest_on(finding, facts, kept, "legal");
      if (!named || kept.have > 0)
        finding.remedy = named ? "Ask the authority how it may be kept or given up" : "Ask the authority before it is bought";
      else
        remedy_by_count(facts.plan, kept, 0, finding);
    });
  }
}

}  // namespace shoalwright
