// SPDX-License-Identifier: MIT
// predation: who fits into whose mouth, is bitten whatever its size, or sticks in a throat.
#include <algorithm>

#include "catalog/plural.h"
#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/pairs.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

std::string length(double cm) { return amount(cm, 1, "cm"); }

const Band& band_for(const Species& eater, const Species& prey) {
  const bool hunter = eater.mouth.eater == "hunter";
  if (may_choke_on(eater, prey)) return hunter ? limits::choked_on_by_hunter : limits::choked_on_by_others;
  if (hunts_asleep(eater) && prey.life.active == "day")
    return hunter ? limits::eaten_asleep_by_hunter : limits::eaten_asleep_by_others;
  return hunter ? limits::eaten_by_hunter : limits::eaten_by_others;
}

/// "angelfish, 13 cm, swallows neon tetra, 3.5 cm, up to 4.7 cm".
std::string mouth_clause(const Kept& eater, const Kept& prey) {
  const double prey_cm = prey.species->size.adult_tl_cm;
  return name_of(eater) + " grows to " + length(eater.species->size.adult_tl_cm) + " and swallows such bodies up to " +
         length(swallowed(*eater.species, *prey.species) * prey_cm) + ", " + name_of(prey) + " grows to " + length(prey_cm);
}

/// The worst of the pairs in full, and how many more there are.
std::string mouths(const Matter& matter) {
  const Kept *eater = nullptr, *prey = nullptr;
  double worst = -1;
  for (const Kept* doer : matter.doers)
    for (const Kept* other : matter.others)
      if (const double index = swallowed(*doer->species, *other->species); index > worst)
        worst = index, eater = doer, prey = other;
  const std::size_t more = matter.doers.size() * matter.others.size() - 1;
  std::string text = capital(mouth_clause(*eater, *prey));
  if (more > 0) text += "; so it is for " + std::to_string(more) + (more == 1 ? " other pair" : " other pairs");
  return text + ". ";
}

void tell_eaten(const Facts& facts, const Matter& matter, Finding& finding) {
  const bool eaten = matter.degree >= from(swallow_eaten_from), risk = matter.degree >= from(swallow_risk_from);
  const std::string who = heading_of(matter.doers), whom = name_or_number_of(matter.others);
  if (eaten)
    finding.text = who + does(matter.doers, " eats ", " eat ") + whom;
  else
    finding.text = who + (risk ? " may eat " : " may come to eat ") + whom;
  finding.why = mouths(matter);
  const bool by_night =
      std::any_of(matter.doers.begin(), matter.doers.end(), [](const Kept* kept) { return hunts_asleep(*kept->species); });
  if (by_night)
    finding.why += "By night those that sleep are taken.";
  else
    finding.why += eaten ? "What fits into a mouth ends there." : "A large one of them, or a small one, tips it.";
  rest_on(finding, facts, matter.doers, "mouth.eater");
  remedy_by_parting(facts.plan, matter, finding);
}

void tell_bitten(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text = heading_of(matter.doers) + does(matter.doers, " bites ", " bite ") + name_or_number_of(matter.others);
  finding.why = capital(names_of(matter.doers)) + does(matter.doers, " bites", " bite") + " pieces out of " +
                names_of(matter.others) + ": no size is too large for that.";
  rest_on(finding, facts, matter.doers, "mouth.eater");
  remedy_by_parting(facts.plan, matter, finding);
}

void tell_choking(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text = heading_of(matter.doers) + " may choke on " + name_or_number_of(matter.others);
  finding.why = mouths(matter) + "Its spines lock upright: they stick in the throat, and both die.";
  rest_on(finding, facts, matter.doers, "mouth.eater");
  remedy_by_parting(facts.plan, matter, finding);
}

// Safe when grown, and bought small.
void tell_small(const Facts& facts, const Matter& matter, Finding& finding) {
  const Kept *eater = nullptr, *prey = nullptr;
  double safe_cm = 0;
  for (const Kept* doer : matter.doers)
    for (const Kept* other : matter.others) {
      const double cm = swallowed_when_sold(*doer->species, *other->species) * *other->species->size.sold_cm / swallow_risk_from;
      if (cm > safe_cm) safe_cm = cm, eater = doer, prey = other;
    }
  finding.text =
      heading_of(matter.doers) + does(matter.doers, " eats ", " eat ") + name_or_number_of(matter.others) + " bought small";
  finding.why = capital(name_of(*prey)) + " is sold at " + length(*prey->species->size.sold_cm) + "; " + name_of(*eater) +
                ", once grown, swallows that. From " + length(safe_cm) + " on it is too large.";
  rest_on(finding, facts, matter.others, "size.sold_cm");
  finding.remedy = "Choose " + name_for(*prey->species, 2) + " of " + length(safe_cm) + " or more, or let both grow up together";
}

}  // namespace

void predation(const Facts& facts, Found& out) {
  std::vector<Deed> eaten, bitten, choking, small;
  for (const Kept& eater : facts.stock) {
    if (!eater.species || eater.species->mouth.eater.empty() || eater.species->mouth.eater == "grazer") continue;
    const bool bites = is_biter(*eater.species);
    for (const Kept& prey : facts.stock) {
      if (&prey == &eater || !prey.species || prey.species->kind == "snail" ||
          (prey.species->kind == "shrimp" && !eater.species->mouth.eats_shrimp.empty()))
        continue;
      const double index = bites ? limits::biter_index : rounded(swallowed(*eater.species, *prey.species));
      if (auto severity = grade(index, in_view(band_for(*eater.species, *prey.species), facts.plan.strictness))) {
        severity = unless_stock_assumed(facts.plan, *severity, eater);
        severity = unless_stock_assumed(facts.plan, *severity, prey);
        std::vector<Deed>& deeds = !out.keeps_findings() || (!bites && !may_choke_on(*eater.species, *prey.species)) ? eaten
                                   : bites                                                                           ? bitten
                                                                                                                     : choking;
        deeds.push_back({&eater, &prey, *severity, index});
        continue;
      }
      // Small mouths and what they are sold beside grow up together as a rule.
      if (eater.species->mouth.eater == "small-mouth") continue;
      const double when_sold = rounded(swallowed_when_sold(*eater.species, *prey.species));
      if (!out.keeps_findings() || prey.have >= prey.count || !(when_sold >= swallow_eaten_from)) continue;
      const bool tries = eater.species->mouth.eater == "hunter" || eater.species->mouth.eater == "opportunist";
      small.push_back({&eater, &prey, tries ? Severity::watch : Severity::note, when_sold});
    }
  }
  if (!out.keeps_findings()) return add_grades("predation", eaten, out);
  const auto add = [&](const std::vector<Deed>& deeds, auto tell) {
    add_deeds("predation", deeds, out, [&](const Matter& matter, Finding& finding) { tell(facts, matter, finding); });
  };
  add(eaten, tell_eaten);
  add(bitten, tell_bitten);
  add(choking, tell_choking);
  add(small, tell_small);
}

}  // namespace shoalwright
