// SPDX-License-Identifier: MIT
// temperament: who drives off, harasses or corners others; fighters and their females.
#include <algorithm>

#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/edits.h"
#include "rules/pairs.h"
#include "rules/sexes.h"
#include "rules/table.h"
#include "rules/tank_fit.h"
#include "rules/tell.h"
#include "stocking/floor.h"

namespace shoalwright {

namespace {

bool is_invertebrate(const Species& species) { return species.kind == "shrimp" || species.kind == "snail"; }

/// What a mouth does to the other is said by predation.
bool is_said_by_mouth(const Species& one, const Species& to) { return is_biter(one) || swallowed(one, to) >= swallow_risk_from; }

bool are_of_like_size(const Species& a, const Species& b) {
  const double one = a.size.adult_tl_cm, other = b.size.adult_tl_cm;
  return std::max(one, other) <= limits::like_size_times * std::min(one, other);
}

bool match_each_other(const Species& a, const Species& b) {
  return a.temper.to_others == Toward::aggressive && b.temper.to_others == Toward::aggressive && are_of_like_size(a, b);
}

Severity bullied(const Species& bully, const Species& other) {
  const bool weak =
      other.temper.to_others == Toward::peaceful && other.size.adult_tl_cm < limits::bullied_times * bully.size.adult_tl_cm;
  return weak ? Severity::harm : Severity::strain;
}

/// How short the tank is of length and floor for a kind; what a tape measure errs and a full floor are nothing.
std::optional<Severity> shortness(const Facts& facts, const Species& species) {
  std::optional<Severity> worst = graver(lane_fit(facts, species).severity, least_length_fit(facts, species).severity);
  if (facts.room.floor_crowding && holds_floor(species))
    worst = graver(worst, grade(rounded(*facts.room.floor_crowding), in_view(limits::territory, facts.plan.strictness)));
  if (!worst || *worst == Severity::note) return std::nullopt;
  return at_most(*worst, Severity::strain);
}

/// A pair that would spawn: both sexes, or two and more of unknown sex.
bool may_spawn(const Kept& kept) {
  const std::optional<Sexes> sexes = sexes_of(kept);
  return sexes ? sexes->males > 0 && sexes->females > 0 : kept.count >= 2;
}

struct Deeds {
  std::vector<Deed> bullied, guarded, rivals, rasped, harassed;
  std::vector<const Kept*> matched;  ///< aggressive kinds of like size
};

void deeds_of(const Facts& facts, const Kept& one, Deeds& deeds) {
  const Species& species = *one.species;
  const Toward toward = species.temper.to_others;
  const auto guarding = guards_eggs(species) && may_spawn(one) && facts.volume.gross_l > 0
                            ? grade(rounded(1 - facts.volume.gross_l / limits::guarding_least_l), limits::volume_short)
                            : std::nullopt;
  const std::optional<Sexes> sexes = sexes_of(one);
  const bool all_female = sexes && sexes->males == 0;
  const auto short_of_room = toward == Toward::semi && !guarding ? shortness(facts, species) : std::nullopt;
  for (const Kept& other : facts.stock) {
    if (&other == &one || !other.species || is_invertebrate(*other.species) || is_said_by_mouth(species, *other.species) ||
        is_said_by_mouth(*other.species, species))
      continue;
    const bool meet = share_a_level(species, *other.species);
    if (toward == Toward::aggressive && meet) {
      if (match_each_other(species, *other.species)) {
        if (std::find(deeds.matched.begin(), deeds.matched.end(), &one) == deeds.matched.end()) deeds.matched.push_back(&one);
        continue;
      }
      Severity severity = unless_stock_assumed(facts.plan, bullied(species, *other.species), one);
      severity = unless_stock_assumed(facts.plan, severity, other);
      deeds.bullied.push_back({&one, &other, severity, 0});
    } else if (guarding) {
      deeds.guarded.push_back({&one, &other, *guarding, 0});
    } else if (takes_for_rival(species, *other.species) && !all_female) {
      deeds.rivals.push_back({&one, &other, limits::fighter_beside_fins[static_cast<int>(facts.plan.strictness)], 0});
    } else if (rasps_flanks(species, *other.species)) {
      deeds.rasped.push_back({&one, &other, Severity::watch, 0});
    } else if (short_of_room && meet && is_weaker(*other.species, species)) {
      deeds.harassed.push_back({&one, &other, *short_of_room, 0});
    }
  }
}

void tell_bullied(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text = heading_of(matter.doers) + does(matter.doers, " bullies ", " bully ") + name_or_number_of(matter.others);
  finding.why = capital(names_of(matter.doers)) + does(matter.doers, " drives", " drive") + " off all others; " +
                names_of(matter.others) + does(matter.others, " swims", " swim") + " where " +
                does(matter.doers, "it does", "they do") + " and cannot get away.";
  if (matter.severity == Severity::harm) finding.why += " Peaceful and no larger, they are hunted, starved or killed.";
  rest_on(finding, facts, matter.doers, "temper.to_others");
  remedy_by_parting(facts.plan, matter, finding);
}

void tell_guarded(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text = heading_of(matter.doers) + does(matter.doers, " clears", " clear") + " the tank when breeding";
  finding.why = "Over eggs and fry " + names_of(matter.doers) + does(matter.doers, " drives", " drive") + " off " +
                names_of(matter.others) + "; in " + amount(facts.volume.gross_l, 0, "L") + " they have nowhere to go, from " +
                amount(limits::guarding_least_l, 0, "L") + " on they keep their distance.";
  rest_on(finding, facts, matter.doers, "temper.to_others");
  remedy_by_parting(facts.plan, matter, finding);
}

void tell_rivals(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text =
      heading_of(matter.doers) + does(matter.doers, " fights", " fight") + " long fins of " + name_or_number_of(matter.others);
  finding.why = "A male takes long fins at his level for a rival's; " + names_of(matter.others) +
                does(matter.others, " is", " are") + " torn, or tear" + does(matter.others, "s", "") +
                " his, which are just as slow. One by itself is right, it is not lonely.";
  rest_on(finding, facts, matter.doers, "temper.to_own_kind");
  remedy_by_parting(facts.plan, matter, finding);
}

void tell_rasped(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text =
      heading_of(matter.doers) + does(matter.doers, " rasps flanks of ", " rasp flanks of ") + name_or_number_of(matter.others);
  finding.why = "Grown, " + names_of(matter.doers) + does(matter.doers, " takes", " take") +
                " to the slime of tall, slow fish; " + names_of(matter.others) + does(matter.others, " gets", " get") +
                " sores. Not all of them do, and those that are fed enough greens do it less.";
  rest_on(finding, facts, matter.doers, "mouth.eater");
  remedy_by_parting(facts.plan, matter, finding);
}

void tell_harassed(const Facts& facts, const Matter& matter, Finding& finding) {
  finding.text =
      heading_of(matter.doers) + does(matter.doers, " is rough with ", " are rough with ") + name_or_number_of(matter.others);
  finding.why = "The tank is short of length or floor for " + names_of(matter.doers) + "; " + names_of(matter.others) +
                ", smaller, slower or with long fins, " + does(matter.others, "is", "are") + " pushed about and kept from food.";
  rest_on(finding, facts, matter.doers, "temper.to_others");
  remedy_by_parting(facts.plan, matter, finding);
}

void add_matched(const Facts& facts, const std::vector<const Kept*>& matched, Found& out) {
  if (matched.empty()) return;
  out.add("temperament", Severity::watch, "", 0, [&](Finding& finding) {
    concern(finding, matched);
    finding.text = std::to_string(matched.size()) + " kinds fight for rank";
    finding.why = capital(names_of(matched)) +
                  " all drive off others. Of like size they hold out against each other, as long as "
                  "none is alone or much smaller and all find a place out of sight.";
    rest_on(finding, facts, matched, "temper.to_others");
    remedy_by_keeping_one(facts.plan, matched, finding);
  });
}

// Sexes of a fighting kind that are not to meet but under the keeper's eyes.
void add_fighters(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species || !is_fighter(*kept.species)) continue;
    const std::optional<Sexes> sexes = sexes_of(kept);
    if (!sexes || sexes->females == 0 || kept.count < 2) continue;
    const bool with_male = sexes->males > 0;
    Severity severity = with_male ? Severity::harm : limits::female_fighters[static_cast<int>(facts.plan.strictness)];
    severity = unless_stock_assumed(facts.plan, severity, kept, "females");
    if (with_male) severity = unless_stock_assumed(facts.plan, severity, kept, "males");
    out.add("temperament", severity, kept.id, kept.count, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = capital(name_of(kept)) + (with_male ? ": a male kills females" : ": females fight for rank");
      finding.why = with_male
                        ? "Outside a watched spawning a male of this kind hunts a female until she is dead; one by itself is "
                          "right, it is not lonely."
                        : std::to_string(sexes->females) +
                              " females of this kind fight for rank; it can go well for months. Watch them, with a second "
                              "tank at hand; one by itself is right.";
      rest_on(finding, facts, kept, "temper.to_own_kind");
      const int males = with_male ? 1 : 0;
      finding.edits = set_sexes(facts.plan, kept, males, 1 - males);
      if (!finding.edits.empty()) finding.remedy = say_count(kept, 1);
    });
  }
}

}  // namespace

void temperament(const Facts& facts, Found& out) {
  Deeds deeds;
  for (const Kept& one : facts.stock)
    if (one.species && !is_invertebrate(*one.species) &&
        (one.species->temper.to_others != Toward::peaceful || guards_eggs(*one.species)))
      deeds_of(facts, one, deeds);
  if (out.keeps_findings()) {
    const auto add = [&](const std::vector<Deed>& some, auto tell) {
      add_deeds("temperament", some, out, [&](const Matter& matter, Finding& finding) { tell(facts, matter, finding); });
    };
    add(deeds.bullied, tell_bullied);
    add(deeds.guarded, tell_guarded);
    add(deeds.rivals, tell_rivals);
    add(deeds.rasped, tell_rasped);
    add(deeds.harassed, tell_harassed);
  } else {
    std::vector<Deed> all = deeds.bullied;
    all.insert(all.end(), deeds.guarded.begin(), deeds.guarded.end());
    all.insert(all.end(), deeds.rivals.begin(), deeds.rivals.end());
    all.insert(all.end(), deeds.harassed.begin(), deeds.harassed.end());
    add_grades("temperament", all, out);
  }
  add_matched(facts, deeds.matched, out);
  add_fighters(facts, out);
}

}  // namespace shoalwright
