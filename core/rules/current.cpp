// SPDX-License-Identifier: MIT
// current: still-water kinds in a strong flow, kinds of streams in a weak one.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/cover.h"

namespace shoalwright {

namespace {

/// What the filter moves, L/h; 0 where there is none. Empty where it is not known.
std::optional<double> flow_l_h(const Plan& plan) {
  if (!plan.gear || !plan.gear->filter_known) return std::nullopt;
  return plan.gear->filter ? plan.gear->filter->flow_l_h : 0.0;
}

std::vector<const Kept*> kinds_of(const Facts& facts, std::string_view current) {
  std::vector<const Kept*> kinds;
  for (const Kept& kept : facts.stock)
    if (kept.species && kept.species->life.current == current) kinds.push_back(&kept);
  return kinds;
}

// Tens of litres: no pump is set finer.
double down_to_tens(double flow) { return flow >= 20 ? std::floor(flow / 10) * 10 : flow; }
double up_to_tens(double flow) { return std::ceil(flow / 10) * 10; }

void remedy_by_flow(const Plan& plan, double flow, const char* bound, Finding& finding) {
  const std::string litres = amount(flow, flow < 20 ? 1 : 0, "L an hour");
  if (!plan.gear->filter) {
    finding.remedy = "Add a pump that moves " + litres;
    return;
  }
  finding.remedy = "Set the filter to " + litres + bound;
  finding.edits = set_value(plan, "/gear/filter/flow_l_h", json_number(flow));
}

/// The side that costs less to part with: fewer animals that swim already, then fewer in all, then the kinds of streams.
const std::vector<const Kept*>& cheaper(const std::vector<const Kept*>& still, const std::vector<const Kept*>& streams) {
  const auto animals = [](const std::vector<const Kept*>& groups) {
    std::pair<std::int64_t, std::int64_t> sum;
    for (const Kept* kept : groups) {
      sum.first += kept->have;
      sum.second += kept->count;
    }
    return sum;
  };
  return animals(still) < animals(streams) ? still : streams;
}

std::string times(double turnovers) { return amount(turnovers, turnovers < 10 ? 1 : 0, "") + " times"; }

struct Judged {
  std::vector<const Kept*> still, streams;  // who is short of what it wants
  double turnovers = 0;
};

// Where both live no flow is right for both: least wanted is more than most borne.
void no_flow_for_both(const Facts& facts, const Judged& judged, Finding& finding) {
  const std::vector<const Kept*> still = kinds_of(facts, "still"), streams = kinds_of(facts, "strong");
  std::vector<const Kept*> all = still;
  all.insert(all.end(), streams.begin(), streams.end());
  std::sort(all.begin(), all.end(), [](const Kept* a, const Kept* b) { return a->id < b->id; });
  concern(finding, all);
  finding.text = "No current suits all " + std::to_string(all.size()) + " kinds";
  finding.why = capital(names_of(still, 2)) + (still.size() == 1 ? " tires" : " tire") +
                " where the water turns over more than " + amount(limits::current_still_most, 0, "") + " times an hour, " +
                names_of(streams, 2) + (streams.size() == 1 ? " wants " : " want ") +
                amount(limits::current_strong_least, 0, "") + " times or more; here it is " + times(judged.turnovers) + ".";
  rest_on(finding, facts, all, "life.current");
  const std::vector<const Kept*>& leaving = cheaper(still, streams);
  finding.edits = leave_out(facts.plan, leaving);
  finding.remedy = say_leave_out(leaving);
}

void too_strong(const Facts& facts, const Judged& judged, bool calm, Finding& finding) {
  concern(finding, judged.still);
  finding.text = "Current too strong for " + name_or_number_of(judged.still);
  finding.why = "The filter turns the water over " + times(judged.turnovers) + " an hour; " + names_of(judged.still) +
                (judged.still.size() == 1 ? " comes" : " come") + " from still water and " +
                (judged.still.size() == 1 ? "tires" : "tire") + " past " + amount(limits::current_still_most, 0, "") + " times" +
                (calm ? ", though plants give calm places." : ".");
  rest_on(finding, facts, judged.still, "life.current");
  remedy_by_flow(facts.plan, down_to_tens(limits::current_still_most * facts.volume.net_l), " or less", finding);
}

void too_weak(const Facts& facts, const Judged& judged, Finding& finding) {
  concern(finding, judged.streams);
  finding.text = "Current too weak for " + name_or_number_of(judged.streams);
  finding.why = "The filter turns the water over " + times(judged.turnovers) + " an hour; " + names_of(judged.streams) +
                (judged.streams.size() == 1 ? " comes" : " come") + " from streams and " +
                (judged.streams.size() == 1 ? "wants " : "want ") + amount(limits::current_strong_least, 0, "") +
                " times or more.";
  rest_on(finding, facts, judged.streams, "life.current");
  remedy_by_flow(facts.plan, up_to_tens(limits::current_strong_least * facts.volume.net_l), " or more", finding);
}

// One finding for all of them; a search over counts must know each by itself.
template <class Tell>
void raise(Found& out, Severity severity, const std::vector<const Kept*>& kinds, double amount, Tell tell) {
  if (out.keeps_findings())
    out.add("current", severity, "", amount, tell);
  else
    for (const Kept* kept : kinds) out.add("current", severity, kept->id, amount, tell);
}

}  // namespace

void current(const Facts& facts, Found& out) {
  const std::optional<double> flow = flow_l_h(facts.plan);
  if (!flow || !(facts.volume.net_l > 0)) return;
  Judged judged;
  judged.turnovers = *flow / facts.volume.net_l;
  const double short_by = limits::current_strong_least - judged.turnovers;
  std::optional<Severity> strong = grade(rounded(judged.turnovers), limits::current_over);
  const std::optional<Severity> weak = grade(rounded(short_by), limits::current_short);
  if (strong) judged.still = kinds_of(facts, "still");
  if (weak) judged.streams = kinds_of(facts, "strong");
  if (judged.still.empty() && judged.streams.empty()) return;

  bool calm = false;
  if (!judged.still.empty()) {
    // A watch either way where planting is not known: it may be what makes the calm.
    const Cover cover = cover_of(facts.plan);
    calm = rounded(cover.share.value_or(cover.pieces_share)) >= limits::calm_zone_cover;
    if (calm || !cover.share) strong = at_most(*strong, Severity::watch);
  }
  if (out.keeps_findings() && !kinds_of(facts, "still").empty() && !kinds_of(facts, "strong").empty()) {
    const std::optional<Severity> worst =
        graver(judged.still.empty() ? std::nullopt : strong, judged.streams.empty() ? std::nullopt : weak);
    out.add("current", *worst, "", 0, [&](Finding& finding) { no_flow_for_both(facts, judged, finding); });
    return;
  }
  if (!judged.still.empty())
    raise(out, *strong, judged.still, judged.turnovers, [&](Finding& finding) { too_strong(facts, judged, calm, finding); });
  if (!judged.streams.empty())
    raise(out, *weak, judged.streams, short_by, [&](Finding& finding) { too_weak(facts, judged, finding); });
}

}  // namespace shoalwright
