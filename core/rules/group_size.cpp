// SPDX-License-Identifier: MIT
// group-size: too few of a kind that lives in company, or company of its own for one that lives alone.
#include <algorithm>
#include <string>

#include "notebook/say.h"
#include "rules/bears.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/sexes.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/encounter.h"

namespace shoalwright {

namespace {

// How many too few weigh how much, by how the kind lives. Practice is divided on the number, not on the kind.
std::optional<Severity> too_few(const Species& species, int count, Strictness strictness) {
  const Species::Life::Group& group = species.life.group;
  switch (group.kind) {
    case GroupKind::solitary: return std::nullopt;
    case GroupKind::shoal:
      if (count < group.least) {
        const bool one_short = count >= group.least - limits::lenient_group_short && count > 1;
        return strictness == Strictness::lenient && one_short ? Severity::watch : Severity::strain;
      }
      if (strictness == Strictness::strict && count < group.good) return Severity::watch;
      return std::nullopt;
    case GroupKind::loose:
    case GroupKind::colony:
      if (count >= group.least) return std::nullopt;
      switch (strictness) {
        case Strictness::lenient: return Severity::note;
        case Strictness::usual: return Severity::watch;
        case Strictness::strict: return Severity::strain;
      }
      return std::nullopt;
    case GroupKind::pair:
    case GroupKind::harem:
      if (count >= group.least || strictness == Strictness::lenient) return std::nullopt;
      return strictness == Strictness::strict ? Severity::watch : Severity::note;
  }
  return std::nullopt;
}

// Kinds that live alone, kept in number: as grave as they are to their own.
std::optional<Severity> too_many(const Species& species, int count) {
  const Species::Life::Group& group = species.life.group;
  if (group.kind != GroupKind::solitary || count <= group.good || count <= 1) return std::nullopt;
  switch (species.temper.to_own_kind) {
    case Toward::aggressive: return Severity::strain;
    case Toward::semi: return Severity::watch;
    case Toward::peaceful: return std::nullopt;
  }
  return std::nullopt;
}

std::string why_company(GroupKind kind) {
  switch (kind) {
    case GroupKind::shoal: return "A shoal too small for its kind stays shy, pale or nippy";
    case GroupKind::loose: return "This kind lives in loose company and is restless with too little of it";
    case GroupKind::colony: return "This kind lives in a colony and hides or dwindles in too small a one";
    case GroupKind::pair: return "This kind lives in pairs";
    case GroupKind::harem: return "This kind lives as one male with several females";
    case GroupKind::solitary: return "";
  }
  return "";
}

// Bottom shoals beside another kind that looks like them: company to the keeper's eye only.
bool has_look_alike(const Facts& facts, const Kept& kept) {
  const Species& kind = *kept.species;
  if (kind.life.style != Style::bottom_shoal) return false;
  const auto looks_like_it = [&](const Species& other) {
    return other.life.style == Style::bottom_shoal &&
           (look_alike(kind, other) || (!kind.look.form.empty() && kind.look.form == other.look.form));
  };
  return std::any_of(facts.stock.begin(), facts.stock.end(),
                     [&](const Kept& other) { return &other != &kept && other.species && looks_like_it(*other.species); });
}

// Fighters of known sexes are spoken of by male-rivalry and temperament.
bool is_said_of_sexes(const Kept& kept) { return is_fighter(*kept.species) && sexes_of(kept); }

void tell_few(const Facts& facts, const Kept& kept, Finding& finding) {
  const Species::Life::Group& group = kept.species->life.group;
  const bool under_least = kept.count < group.least;
  const int goal = under_least ? group.least : group.good;
  concern(finding, {&kept});
  finding.text =
      capital(name_of(kept)) + ": " + std::to_string(kept.count) + (under_least ? ", least " : ", good ") + std::to_string(goal);
  finding.why = why_company(group.kind) + "; " + (kept.count == 1 ? std::string("one is") : std::to_string(kept.count) + " are") +
                " kept, " + std::to_string(group.least) + " is the least" +
                (group.good > group.least ? ", " + std::to_string(group.good) + " a good group." : ".");
  if (group.kind == GroupKind::shoal && kept.count == 1) finding.why += " Alone it is under stress all day.";
  if (has_look_alike(facts, kept)) finding.why += " Look-alikes do not count: it groups with its own kind.";
  const bool more = bears(facts, kept, goal) || !can_set_count(facts.plan, kept, 0);
  if (!more) finding.why += " This tank does not bear so many.";
  remedy_by_count(facts.plan, kept, more ? goal : 0, finding);
  rest_on(finding, facts, kept, "life.group");
}

void tell_many(const Facts& facts, const Kept& kept, Finding& finding) {
  const int goal = kept.species->life.group.good;
  concern(finding, {&kept});
  finding.text = capital(name_of(kept)) + ": " + std::to_string(kept.count) + " of a loner";
  finding.why = "This kind lives alone and takes its own kind for a rival; " + std::to_string(kept.count) + " are kept, " +
                std::to_string(goal) + " is right.";
  remedy_by_count(facts.plan, kept, goal, finding);
  rest_on(finding, facts, kept, "life.group");
}

}  // namespace

void group_size(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const Species::Life::Group& group = kept.species->life.group;
    if (const auto severity = too_few(*kept.species, kept.count, facts.plan.strictness))
      out.add("group-size", *severity, kept.id, group.good - kept.count,
              [&](Finding& finding) { tell_few(facts, kept, finding); });
    else if (const auto rivals = too_many(*kept.species, kept.count); rivals && !is_said_of_sexes(kept))
      out.add("group-size", *rivals, kept.id, kept.count - group.good,
              [&](Finding& finding) { tell_many(facts, kept, finding); });
  }
}

}  // namespace shoalwright
