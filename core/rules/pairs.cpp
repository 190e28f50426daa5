// SPDX-License-Identifier: MIT
#include "rules/pairs.h"

#include <algorithm>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

using Groups = std::vector<const Kept*>;

/// By the kinds on one side: what each of them has on the other side; the same on the other side makes one matter.
std::vector<Matter> fold_by(const std::vector<Deed>& deeds, const Kept* Deed::*from, const Kept* Deed::*to) {
  struct Side {
    Groups from, to;
    double degree;
  };
  std::vector<Side> sides;
  for (const Deed& deed : deeds) {
    const auto same = std::find_if(sides.begin(), sides.end(), [&](const Side& side) { return side.from.front() == deed.*from; });
    Side& side = same == sides.end() ? sides.emplace_back(Side{{deed.*from}, {}, deed.degree}) : *same;
    side.to.push_back(deed.*to);
    side.degree = std::max(side.degree, deed.degree);
  }
  std::vector<Matter> matters;
  for (const Side& side : sides) {
    Groups Matter::*const mine = from == &Deed::doer ? &Matter::doers : &Matter::others;
    Groups Matter::*const theirs = from == &Deed::doer ? &Matter::others : &Matter::doers;
    const auto same =
        std::find_if(matters.begin(), matters.end(), [&](const Matter& matter) { return matter.*theirs == side.to; });
    if (same != matters.end()) {
      ((*same).*mine).push_back(side.from.front());
      same->degree = std::max(same->degree, side.degree);
      continue;
    }
    Matter matter;
    matter.*mine = side.from;
    matter.*theirs = side.to;
    matter.severity = deeds.front().severity;
    matter.degree = side.degree;
    matters.push_back(std::move(matter));
  }
  return matters;
}

int swimming(const Groups& groups) {
  int all = 0;
  for (const Kept* kept : groups) all += kept->have;
  return all;
}

bool leave_these_out(const Plan& plan, const Groups& groups, Finding& finding) {
  finding.edits = leave_out(plan, groups);
  if (finding.edits.empty()) return false;
  finding.remedy = say_leave_out(groups);
  return true;
}

}  // namespace

std::vector<Matter> folded(const std::vector<Deed>& deeds, Fold fold) {
  std::vector<Matter> all;
  for (const Severity severity : {Severity::harm, Severity::strain, Severity::watch, Severity::note}) {
    std::vector<Deed> alike;
    std::copy_if(deeds.begin(), deeds.end(), std::back_inserter(alike),
                 [&](const Deed& deed) { return deed.severity == severity; });
    if (alike.empty()) continue;
    std::vector<Matter> by_doer = fold_by(alike, &Deed::doer, &Deed::other), by_other = fold_by(alike, &Deed::other, &Deed::doer);
    std::vector<Matter>& fewer = fold == Fold::by_victim || by_other.size() < by_doer.size() ? by_other : by_doer;
    all.insert(all.end(), fewer.begin(), fewer.end());
  }
  return all;
}

void add_grades(std::string_view rule, const std::vector<Deed>& deeds, Found& out) {
  for (const Deed& deed : deeds) {
    const auto so_bad = std::count_if(deeds.begin(), deeds.end(), [&](const Deed& other) {
      return other.doer == deed.doer && other.severity <= deed.severity;
    });
    out.add(rule, deed.severity, deed.doer->id, static_cast<double>(so_bad), [](Finding&) {});
  }
}

std::string heading_of(const std::vector<const Kept*>& groups) { return capital(name_or_number_of(groups)); }

std::string does(const std::vector<const Kept*>& groups, const char* one, const char* several) {
  return groups.size() == 1 ? one : several;
}

void remedy_by_parting(const Plan& plan, const Matter& matter, Finding& finding) {
  const int doers = swimming(matter.doers), others = swimming(matter.others);
  const bool rather_others = doers != others ? others < doers : matter.others.size() < matter.doers.size();
  const Groups &first = rather_others ? matter.others : matter.doers, &second = rather_others ? matter.doers : matter.others;
  if (!leave_these_out(plan, first, finding)) leave_these_out(plan, second, finding);
}

void remedy_by_keeping_one(const Plan& plan, const std::vector<const Kept*>& groups, Finding& finding) {
  Groups dearest_first = groups;
  std::stable_sort(dearest_first.begin(), dearest_first.end(), [](const Kept* a, const Kept* b) { return a->have > b->have; });
  for (const Kept* stays : dearest_first) {
    Groups others = groups;
    others.erase(std::find(others.begin(), others.end(), stays));
    if (leave_these_out(plan, others, finding)) return;
  }
}

Severity unless_stock_assumed(const Plan& plan, Severity severity, const Kept& kept, const char* key) {
  if (severity != Severity::harm) return severity;
  const bool assumed = std::any_of(kept.lines.begin(), kept.lines.end(), [&](int line) {
    const std::string pointer = "/stock/" + std::to_string(line);
    return is_assumed(plan, pointer) || is_assumed(plan, pointer + "/species") || (key && is_assumed(plan, pointer + "/" + key));
  });
  return assumed ? Severity::strain : Severity::harm;
}

}  // namespace shoalwright
