// SPDX-License-Identifier: MIT
// mature-tank: who lives on the growth of an older tank, and comes too early. Common practice, no source.
#include <algorithm>
#include <cmath>

#include "catalog/plural.h"
#include "notebook/say.h"
#include "rules/arrival_edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/arrivals.h"

namespace shoalwright {

namespace {

/// The lines of a kind that come before the tank is old enough, and the earliest age at which one of them comes.
struct Early {
  std::vector<ToCome> lines;
  double weeks = 0;
  bool week_said = false;
};

Early early_lines(const Facts& facts, const std::vector<ToCome>& coming, const Kept& kept) {
  Early early;
  for (const ToCome& one : coming) {
    if (one.kept != &kept) continue;
    const Group& line = facts.plan.stock[static_cast<std::size_t>(one.line)];
    const std::optional<double> weeks = weeks_at_arrival(facts.plan, line);
    if (!weeks || *weeks >= kept.species->needs.mature_weeks) continue;
    early.weeks = early.lines.empty() ? *weeks : std::min(early.weeks, *weeks);
    early.lines.push_back(one);
    early.week_said = early.week_said || line.arrives_week;
  }
  return early;
}

std::string weeks(double number) { return amount(number, 0, number == 1 ? "week" : "weeks"); }

}  // namespace

void mature_tank(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // waiting mends it, however many there are
  const std::vector<ToCome> coming = to_come(facts);
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const int wanted = kept.species->needs.mature_weeks;
    const Early early = early_lines(facts, coming, kept);
    if (early.lines.empty()) continue;
    // Who is wished for without a week may well come in time; who has a week that is too early does not.
    const Severity severity = early.week_said ? Severity::strain : Severity::watch;
    out.add("mature-tank", severity, kept.id, wanted - early.weeks, [&](Finding& finding) {
      const std::string name = name_for(*kept.species, 2);
      concern(finding, {&kept});
      finding.text = capital(name) + " want an older tank";
      finding.why = "They graze on growth that comes with time, and starve in a clean tank: it should have been lived in for " +
                    weeks(wanted) + ", and it will have been for " + weeks(std::floor(early.weeks)) +
                    (early.week_said ? " when they come." : " if they come now.");
      rest_on(finding, facts, kept, "needs.mature_weeks");
      finding.remedy = "Put their arrival in week " + std::to_string(wanted);
      finding.edits = move_arrivals(facts.plan, early.lines, wanted);
    });
  }
}

}  // namespace shoalwright
