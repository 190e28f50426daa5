// SPDX-License-Identifier: MIT
// lid: what jumps out of an open tank.
#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

Severity severity_of(Jumps jumps) {
  switch (jumps) {
    case Jumps::rarely: return Severity::note;
    case Jumps::when_chased: return Severity::watch;
    case Jumps::readily: return Severity::harm;
  }
  return Severity::note;
}

std::string habit(Jumps jumps) {
  switch (jumps) {
    case Jumps::rarely: return "now and then";
    case Jumps::when_chased: return "when chased or frightened";
    case Jumps::readily: return "readily";
  }
  return "";
}

// A card that does not say whether its kind jumps is no licence for an open tank. Said by this rule, so that a lid clears it.
void not_said_whether_it_jumps(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species || kept.species->life.jumps) continue;
    out.add("lid", Severity::note, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = "Not known: whether " + name_of(kept) + " jumps";
      finding.why = "The tank is open, and the card of " + name_of(kept) + " does not say whether it jumps.";
      finding.remedy = "Put a lid on, or enter on its card how readily it jumps";
      finding.edits = set_value(facts.plan, "/tank/lid", "true");
      rest_on(finding, facts, kept, "life.jumps");
    });
  }
}

}  // namespace

void lid(const Facts& facts, Found& out) {
  if (!facts.plan.tank.lid || *facts.plan.tank.lid) return;  // not known is said by unknown-input
  // One finding for each habit, so that those who jump readily are not lost among the others; those who hardly do are named alone
  // only.
  bool said = false;
  for (const Jumps jumps : {Jumps::readily, Jumps::when_chased, Jumps::rarely}) {
    std::vector<const Kept*> jumpers;
    for (const Kept& kept : facts.stock)
      if (kept.species && kept.species->life.jumps == jumps) jumpers.push_back(&kept);
    if (jumpers.empty() || (said && jumps == Jumps::rarely)) continue;
    said = true;
    const Severity severity = unless_assumed(facts.plan, severity_of(jumps), {"/tank/lid"});
    const auto tell = [&](Finding& finding) {
      concern(finding, jumpers);
      const bool one = jumpers.size() == 1;
      finding.text = (one ? capital(name_of(*jumpers.front())) + " jumps" : std::to_string(jumpers.size()) + " kinds jump") +
                     ", the tank is open";
      finding.why = capital(names_of(jumpers)) + (one ? " jumps " : " jump ") + habit(jumps) +
                    "; without a lid what jumps lands on the floor.";
      finding.remedy = "Put a lid on";
      finding.edits = set_value(facts.plan, "/tank/lid", "true");
      rest_on(finding, facts, jumpers, "life.jumps");
    };
    if (out.keeps_findings())
      out.add("lid", severity, "", 0, tell);
    else
      for (const Kept* kept : jumpers) out.add("lid", severity, kept->id, 0, tell);
  }
  not_said_whether_it_jumps(facts, out);
}

}  // namespace shoalwright
