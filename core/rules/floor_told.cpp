// SPDX-License-Identifier: MIT
#include "rules/floor_told.h"

#include <algorithm>

#include "notebook/say.h"
#include "rules/limits.h"
#include "rules/tell.h"

namespace shoalwright {

std::vector<Part> parts_of(const Facts& facts, Holders holders) {
  std::vector<Part> parts = floor_parts(facts);
  parts.erase(std::remove_if(parts.begin(), parts.end(),
                             [&](const Part& part) {
                               return !(part.amount > 0) || holds_floor(*part.kept->species) != (holders == Holders::yes);
                             }),
              parts.end());
  return parts;
}

double goal_of(const Steps& steps) { return steps.watch; }

void tell_floor(const Facts& facts, Holders holders, Severity severity, Finding& finding) {
  const std::vector<Part> parts = floor_parts(facts);
  const std::vector<const Kept*> named = main_parts(parts_of(facts, holders));
  concern(finding, named);
  const double share = *facts.room.floor_crowding, open = facts.room.floor_cm2, wanted = share * open;
  const std::string over = amount(std::max(wanted - open, 0.0), 0, "cm²");
  if (holders == Holders::yes)
    finding.text = "Floor " + over + " short for territories";
  else
    finding.text = severity == Severity::note ? "Floor is full" : "Floor over by " + over;
  finding.why = std::string(holders == Holders::yes ? "Territories and shoals want " : "Grown up, the stock wants ") +
                amount(wanted, 0, "cm²") + " of floor and " + amount(open, 0, "cm²") + " can be used; most of it is wanted by " +
                names_of(named) + ".";
  if (holders == Holders::yes && facts.room.sight_factor < 1)
    finding.why += " What pieces hide of them from each other is reckoned in.";
  if (severity == Severity::note) {
    finding.remedy = "Add nothing more on the floor";
    return;
  }
  const Band& band = holders == Holders::yes ? limits::territory : limits::crowding;
  remedy_by_fewer(facts, parts, goal_of(in_view(band, facts.plan.strictness)) / share, on_the_floor, finding);
}

}  // namespace shoalwright
