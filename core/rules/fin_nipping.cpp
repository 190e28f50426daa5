// SPDX-License-Identifier: MIT
// fin-nipping: nippers beside long fins that are not quick enough.
#include <algorithm>

#include "catalog/plural.h"
#include "notebook/say.h"
#include "rules/bears.h"
#include "rules/company_limits.h"
#include "rules/edits.h"
#include "rules/pairs.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

/// So many of its own kind keep a nipper busy.
int calm_group(const Species& species) { return std::max(limits::nip_calm_group, species.life.group.good); }

std::optional<Severity> nipped_by(const Species& species, int count, Strictness strictness) {
  const bool always = species.temper.nips_fins == "yes", few = count < calm_group(species);
  switch (strictness) {
    case Strictness::lenient:
      if (always) return few ? Severity::strain : Severity::watch;
      return few ? std::optional(Severity::watch) : std::nullopt;
    case Strictness::usual: return always || few ? Severity::strain : Severity::watch;
    case Strictness::strict: return Severity::strain;
  }
  return std::nullopt;
}

void tell(const Facts& facts, const Matter& matter, Finding& finding) {
  const Kept& nipper = *matter.doers.front();
  const Species& species = *nipper.species;
  const bool alone = matter.doers.size() == 1, always = species.temper.nips_fins == "yes";
  finding.text =
      heading_of(matter.doers) + does(matter.doers, " nips fins of ", " nip fins of ") + name_or_number_of(matter.others);
  finding.why = capital(names_of(matter.others)) + does(matter.others, " has", " have") +
                " long fins and cannot keep them from " + names_of(matter.doers) + ". ";
  const int calm = calm_group(species);
  if (alone && nipper.count < calm)
    finding.why += std::to_string(nipper.count) + (nipper.count == 1 ? " is" : " are") + " kept; from " + std::to_string(calm) +
                   " on they are busy with each other, which lessens nipping and does not cure it.";
  else
    finding.why += "Numbers lessen nipping, they do not cure it.";
  rest_on(finding, facts, matter.doers, "temper.nips_fins");
  const std::optional<Severity> then = nipped_by(species, calm, facts.plan.strictness);
  if (alone && !always && nipper.count < calm && (!then || *then > matter.severity) && bears(facts, nipper, calm) &&
      can_set_count(facts.plan, nipper, calm))
    return remedy_by_count(facts.plan, nipper, calm, finding);
  remedy_by_parting(facts.plan, matter, finding);
}

}  // namespace

void fin_nipping(const Facts& facts, Found& out) {
  std::vector<Deed> deeds;
  for (const Kept& nipper : facts.stock) {
    if (!nipper.species || !nips(*nipper.species) || is_biter(*nipper.species)) continue;  // biters are said by predation
    const std::optional<Severity> severity = nipped_by(*nipper.species, nipper.count, facts.plan.strictness);
    if (!severity) continue;
    for (const Kept& other : facts.stock)
      if (&other != &nipper && other.species && offers_fins(*other.species) && share_a_level(*nipper.species, *other.species))
        deeds.push_back({&nipper, &other, *severity, 0});
  }
  if (!out.keeps_findings()) return add_grades("fin-nipping", deeds, out);
  add_deeds("fin-nipping", deeds, out, [&](const Matter& matter, Finding& finding) { tell(facts, matter, finding); });
}

}  // namespace shoalwright
