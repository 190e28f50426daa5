// SPDX-License-Identifier: MIT
// sex-ratio: live-bearing fish whose males are too many for their females. surplus-young: both sexes of them.
#include <algorithm>

#include "catalog/plural.h"
#include "notebook/say.h"
#include "rules/bears.h"
#include "rules/company_limits.h"
#include "rules/edits.h"
#include "rules/pairs.h"
#include "rules/sexes.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

/// Live-bearing fish of which both sexes are here.
std::optional<Sexes> mixed_livebearer(const Kept& kept) {
  if (!kept.species || kept.species->kind == "snail" || !is_livebearer(*kept.species)) return std::nullopt;
  const std::optional<Sexes> sexes = sexes_of(kept);
  return sexes && sexes->males > 0 && sexes->females > 0 ? sexes : std::nullopt;
}

int females_wanted(const Species& species) { return species.life.sex_ratio == "1m:1f" ? 1 : limits::females_for_a_male; }

// Those to be bought are chosen otherwise; beside those that swim come females where there is room, else males are re-homed.
void remedy(const Facts& facts, const Kept& kept, Sexes now, Finding& finding) {
  const int wanted = females_wanted(*kept.species);
  Sexes then{std::max(kept.count / (wanted + 1), 1), 0};
  then.females = std::max(kept.count - then.males, wanted);
  if (kept.have > 0 || then.males + then.females > kept.count) {
    const Sexes more{now.males, wanted * now.males}, fewer{std::max(now.females / wanted, 1), std::max(now.females, wanted)};
    const bool room = bears(facts, kept, more.males + more.females);
    then = room ? more : fewer;
  }
  finding.edits = set_sexes(facts.plan, kept, then.males, then.females);
  if (!finding.edits.empty()) finding.remedy = say_sexes(kept, then.males, then.females);
}

}  // namespace

void sex_ratio(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    const std::optional<Sexes> sexes = mixed_livebearer(kept);
    if (!sexes) continue;
    const int wanted = females_wanted(*kept.species);
    if (sexes->males * wanted <= sexes->females) continue;
    out.add("sex-ratio", Severity::strain, kept.id, static_cast<double>(sexes->males) / sexes->females, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = capital(name_of(kept)) + ": males harry the females";
      finding.why = std::to_string(sexes->males) + (sexes->males == 1 ? " male courts " : " males court ") +
                    std::to_string(sexes->females) + (sexes->females == 1 ? " female" : " females") +
                    " all day and wear them out; " + std::to_string(wanted) + (wanted == 1 ? " female" : " females") +
                    " for each male bear" + (wanted == 1 ? "s" : "") + " it" +
                    (kept.species->life.group.all_male_ok ? ", and males alone are fine too." : ".");
      rest_on(finding, facts, kept, "life.sexes");
      remedy(facts, kept, *sexes, finding);
    });
  }
}

void surplus_young(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // never a strain
  std::vector<const Kept*> bearing;
  bool by_one_sex = true;
  for (const Kept& kept : facts.stock)
    if (mixed_livebearer(kept)) {
      bearing.push_back(&kept);
      by_one_sex = by_one_sex && kept.species->life.group.all_male_ok && kept.have == 0;
    }
  if (bearing.empty()) return;
  out.add("surplus-young", Severity::watch, "", 0, [&](Finding& finding) {
    concern(finding, bearing);
    finding.text = "Young of " + name_or_number_of(bearing) + " will come";
    finding.why = capital(names_of(bearing)) + does(bearing, " bears", " bear") +
                  " live young every few weeks, and those bear young in their turn: within months there are several times as "
                  "many.";
    rest_on(finding, facts, bearing, "breeding.mode");
    finding.remedy = "Keep one sex, or know beforehand who takes the young";
    if (bearing.size() > 1 || !by_one_sex) return;
    const Kept& kept = *bearing.front();
    finding.edits = set_sexes(facts.plan, kept, kept.count, 0);
    if (!finding.edits.empty()) finding.remedy = say_sexes(kept, kept.count, 0);
  });
}

}  // namespace shoalwright
