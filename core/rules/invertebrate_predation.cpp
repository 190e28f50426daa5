// SPDX-License-Identifier: MIT
// invertebrate-predation: shrimps and snails beside those that eat them; whether grown ones or only their young.
#include <algorithm>

#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/edits.h"
#include "rules/pairs.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "rules/thickets.h"
#include "stocking/cover.h"

namespace shoalwright {

namespace {

void tell_grown(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text = heading_of(matter.doers) + does(matter.doers, " eats ", " eat ") + name_or_number_of(matter.others);
  finding.why = capital(names_of(matter.doers)) + does(matter.doers, " eats", " eat") +
                " grown ones: " + names_of(matter.others) + does(matter.others, " becomes", " become") +
                " food, one after the other.";
  rest_on(finding, facts, matter.doers,
          matter.others.front()->species->kind == "snail" ? "mouth.eats_snails" : "mouth.eats_shrimp");
  remedy_by_parting(facts.plan, matter, finding);
}

void tell_young(const Facts& facts, const Matter& matter, const std::optional<double>& cover, Finding& finding) {
  finding.text = "Young of " + name_or_number_of(matter.others) + " get eaten";
  finding.why = capital(names_of(matter.doers)) + does(matter.doers, " leaves", " leave") + " grown ones alone and " +
                does(matter.doers, "takes", "take") + " their young; ";
  const bool hidden = cover && rounded(*cover - limits::cover_much) >= 0;
  finding.why += hidden ? "in so much cover some grow up." : "some grow up where moss and thickets hide them.";
  rest_on(finding, facts, matter.doers,
          matter.others.front()->species->kind == "snail" ? "mouth.eats_snails" : "mouth.eats_shrimp");
  if (matter.severity == Severity::watch && cover) remedy_by_thickets(facts, limits::cover_much - *cover, finding);
}

}  // namespace

void invertebrate_predation(const Facts& facts, Found& out) {
  std::vector<Deed> grown, young;
  for (const Kept& eater : facts.stock) {
    if (!eater.species) continue;
    for (const Kept& prey : facts.stock) {
      if (&prey == &eater || !prey.species || (prey.species->kind != "shrimp" && prey.species->kind != "snail")) continue;
      switch (small_fry_beside(*eater.species, *prey.species)) {
        case SmallFry::unharmed: break;
        case SmallFry::picked: young.push_back({&eater, &prey, Severity::note, 0}); break;
        case SmallFry::young: young.push_back({&eater, &prey, Severity::watch, 0}); break;
        case SmallFry::grown: grown.push_back({&eater, &prey, Severity::strain, 0}); break;
      }
    }
  }
  if (!out.keeps_findings()) return add_grades("invertebrate-predation", grown, out);
  const std::optional<double> cover = young.empty() ? std::nullopt : cover_of(facts.plan).share;
  const bool hidden = cover && rounded(*cover - limits::cover_much) >= 0;
  std::vector<Deed> said;
  for (Deed deed : young) {
    const auto loses_grown = [&](const Deed& one) { return one.other == deed.other; };
    if (std::any_of(grown.begin(), grown.end(), loses_grown)) continue;  // who is eaten grown is not told of its young
    if (hidden) deed.severity = Severity::note;
    said.push_back(deed);
  }
  add_deeds(
      "invertebrate-predation", grown, out, [&](const Matter& matter, Finding& finding) { tell_grown(facts, matter, finding); },
      Fold::by_victim);
  add_deeds(
      "invertebrate-predation", said, out,
      [&](const Matter& matter, Finding& finding) { tell_young(facts, matter, cover, finding); }, Fold::by_victim);
}

}  // namespace shoalwright
