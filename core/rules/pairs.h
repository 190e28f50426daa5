// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "rules/facts.h"
#include "rules/found.h"

namespace shoalwright {

// Findings about one kind and another, folded so that one matter is said once.

/// One kind does something to another. `degree` is what was graded, larger is worse.
struct Deed {
  const Kept* doer = nullptr;
  const Kept* other = nullptr;
  Severity severity = Severity::note;
  double degree = 0;
};

/// Deeds that make one finding: each of the doers does it to each of the others.
struct Matter {
  std::vector<const Kept*> doers, others;
  Severity severity = Severity::note;
  double degree = 0;  ///< the worst of them
};

/// Deeds of one severity come together: doers of the same others, or others of the same doers, whichever gives fewer matters.
/// Deeds must come in the order of their doers, then of the others. `by_victim`: one matter for each that suffers, all its doers
/// together, whatever the number.
enum class Fold { by_fewer, by_victim };
std::vector<Matter> folded(const std::vector<Deed>& deeds, Fold fold = Fold::by_fewer);

/// Where only grades are kept: for each doer to how many it does so much or worse. All deeds of a rule at once.
void add_grades(std::string_view rule, const std::vector<Deed>& deeds, Found& out);

/// One finding for each matter, in words by `tell(matter, finding)`, which need not name the kinds in Finding::species.
template <class Tell>
void add_deeds(std::string_view rule, const std::vector<Deed>& deeds, Found& out, Tell tell, Fold fold = Fold::by_fewer) {
  for (const Matter& matter : folded(deeds, fold))
    out.add(rule, matter.severity, "", matter.degree, [&](Finding& finding) {
      for (const Kept* kept : matter.doers) finding.species.push_back(kept->id);
      for (const Kept* kept : matter.others) finding.species.push_back(kept->id);
      tell(matter, finding);
    });
}

/// "Angelfish", "Angelfish and pictus catfish", "3 kinds", for a heading that starts with them.
std::string heading_of(const std::vector<const Kept*>& groups);

/// The verb in the right number: "eats", or "eat" where there are several.
std::string does(const std::vector<const Kept*>& groups, const char* one, const char* several);

/// Parts the doers from the others by leaving out one side: rather what is only wished for, then the fewer kinds, then the doers.
void remedy_by_parting(const Plan& plan, const Matter& matter, Finding& finding);

/// Leaves one of several kinds that do not go together: that of which most swim already, then the first.
void remedy_by_keeping_one(const Plan& plan, const std::vector<const Kept*>& groups, Finding& finding);

/// No harm where a line of one of the groups was guessed, or one of its keys ("males").
Severity unless_stock_assumed(const Plan& plan, Severity severity, const Kept& kept, const char* key = nullptr);

}  // namespace shoalwright
