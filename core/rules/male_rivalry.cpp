// SPDX-License-Identifier: MIT
// male-rivalry: males that fight to the death, and males without a territory each.
#include <algorithm>

#include "catalog/plural.h"
#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/edits.h"
#include "rules/pairs.h"
#include "rules/sexes.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/crowding.h"
#include "stocking/floor.h"

namespace shoalwright {

namespace {

/// Kinds whose males keep rivals off their ground. In shoals and loose company rivals mostly show off.
bool males_want_ground(const Species& species) {
  if (!species.temper.rival_males || species.temper.to_own_kind == Toward::peaceful) return false;
  switch (species.life.group.kind) {
    case GroupKind::solitary:
    case GroupKind::pair:
    case GroupKind::harem: return true;
    case GroupKind::loose:
    case GroupKind::shoal:
    case GroupKind::colony: return species.temper.to_own_kind == Toward::aggressive;
  }
  return false;
}

double ground_of_one_cm2(const Species& species) {
  const double length_cm = species.size.adult_tl_cm;
  if (holds_floor(species)) return floor_need_cm2(species.life.style, species.size.body, length_cm);
  return limits::rival_ground_bl2 * length_cm * length_cm;
}

// One male, and as many females as swim or are wanted; alone where the kind lives so.
void remedy_by_one_male(const Facts& facts, const Kept& kept, const Sexes& sexes, Finding& finding) {
  const bool fighter = is_fighter(*kept.species);
  int females = fighter ? 0 : sexes.females;
  if (!fighter && kept.have == 0) females = kept.count - 1;  // bought otherwise
  finding.edits = set_sexes(facts.plan, kept, 1, females);
  if (!finding.edits.empty()) finding.remedy = fighter ? say_count(kept, 1) : say_sexes(kept, 1, females);
}

void tell_fighters(const Facts& facts, const Kept& kept, const Sexes& sexes, Finding& finding) {
  concern(finding, {&kept});
  finding.text = capital(name_of(kept)) + ": " + std::to_string(sexes.males) + " males fight to the death";
  finding.why = "A male of this kind lives alone: " + std::to_string(sexes.males) +
                " in one tank fight until one is dead. One by itself is right, it is not lonely.";
  rest_on(finding, facts, kept, "temper.to_own_kind");
  remedy_by_one_male(facts, kept, sexes, finding);
}

void tell_rivals(const Facts& facts, const Kept& kept, const Sexes& sexes, double wanted_cm2, Finding& finding) {
  concern(finding, {&kept});
  finding.text = capital(name_of(kept)) + ": no ground for " + std::to_string(sexes.males) + " males";
  finding.why = std::to_string(sexes.males) + " rivals want " + amount(wanted_cm2, 0, "cm²") +
                " of floor, a territory each, and " + amount(facts.room.floor_cm2, 0, "cm²") +
                " can be used: the strongest drives the other" + (sexes.males > 2 ? "s" : "") + " into a corner.";
  rest_on(finding, facts, kept, "temper.rival_males");
  remedy_by_one_male(facts, kept, sexes, finding);
}

}  // namespace

void male_rivalry(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const Species& species = *kept.species;
    const std::optional<Sexes> sexes = sexes_of(kept);
    if (!sexes || sexes->males < 2) continue;
    if (is_fighter(species)) {
      const Severity severity = unless_stock_assumed(facts.plan, Severity::harm, kept, "males");
      out.add("male-rivalry", severity, kept.id, sexes->males,
              [&](Finding& finding) { tell_fighters(facts, kept, *sexes, finding); });
      continue;
    }
    const bool spread = sexes->males >= limits::rivals_spread && species.life.group.kind != GroupKind::pair;
    if (!males_want_ground(species) || spread || !(facts.room.floor_cm2 > 0)) continue;
    const double wanted_cm2 = sexes->males * ground_of_one_cm2(species) * facts.room.sight_factor;
    if (const auto severity = grade(rounded(wanted_cm2 / facts.room.floor_cm2), limits::ground_over))
      out.add("male-rivalry", *severity, kept.id, wanted_cm2,
              [&](Finding& finding) { tell_rivals(facts, kept, *sexes, wanted_cm2, finding); });
  }
}

}  // namespace shoalwright
