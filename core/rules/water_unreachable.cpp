// SPDX-License-Identifier: MIT
// water-unreachable: windows of pH and KH that no allowed CO2 joins, and an aimed pH that the aimed KH cannot have. Hardness
// comes before pH: pH follows from KH and CO2. Where only acid would bring the aim, rule acid speaks instead.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/aimed_ph.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "water/reach.h"

namespace shoalwright {

namespace {

/// How far the pH that all take lies from what the KH that all take can have.
struct Apart {
  bool too_low = false;  ///< the pH wanted lies under what is reached
  double by = 0;
  Range reached;
};

std::optional<Apart> windows_apart(const Facts& facts) {
  const Windows& w = facts.water;
  if (!w.temperature_c.now || !w.ph.tolerated || !w.kh_dkh.tolerated) return std::nullopt;
  // CO2 from pH takes no search, pH from CO2 does: most windows are found to join by it.
  const double t = *w.temperature_c.now;
  if (co2_at_ph_mg_l({t, w.kh_dkh.tolerated->low, w.gh_dgh.now}, w.ph.tolerated->high) <= co2_ceiling_mg_l(facts.plan) &&
      co2_at_ph_mg_l({t, w.kh_dkh.tolerated->high, w.gh_dgh.now}, w.ph.tolerated->low) >= co2_in_air_mg_l(t, co2_outdoors_atm))
    return std::nullopt;
  Apart apart;
  apart.reached = reachable_ph(t, *w.kh_dkh.tolerated, w.gh_dgh.now, co2_ceiling_mg_l(facts.plan));
  apart.too_low = apart.reached.low > w.ph.tolerated->high;
  apart.by = rounded(apart.too_low ? apart.reached.low - w.ph.tolerated->high : w.ph.tolerated->low - apart.reached.high);
  if (!(apart.by > 0)) return std::nullopt;
  return apart;
}

bool joined_without(const Facts& facts, const Kept& left_out) {
  std::vector<const Species*> rest;
  for (const Kept& kept : facts.stock)
    if (&kept != &left_out) rest.push_back(kept.species);
  return carbonate_reach_of(windows_of(facts.plan, rest), co2_ceiling_mg_l(facts.plan)).reachable.value_or(false);
}

void tell_windows(const Facts& facts, const Apart& apart, Finding& finding) {
  const Windows& w = facts.water;
  const auto kept = [&](const std::string& id) {
    return &*std::find_if(facts.stock.begin(), facts.stock.end(), [&](const Kept& one) { return one.id == id; });
  };
  // Who wants the high edge of one and the low edge of the other.
  const Kept* hard = kept(apart.too_low ? w.kh_dkh.low_by : w.ph.low_by);
  const Kept* soft = kept(apart.too_low ? w.ph.high_by : w.kh_dkh.high_by);
  std::vector<const Kept*> both{std::min(hard, soft), std::max(hard, soft)};
  if (hard == soft) both.pop_back();
  concern(finding, both);
  finding.text = "No shared KH gives a shared pH";
  finding.why = "pH follows from KH and CO2: KH " + span_of(w.kh_dkh.tolerated->low, w.kh_dkh.tolerated->high, 1, "") +
                ", which all take, gives pH " + span_of(apart.reached.low, apart.reached.high, 1, "") + " with up to " +
                amount(co2_ceiling_mg_l(facts.plan), 0, "mg/L") + " of CO2; all take pH " +
                span_of(w.ph.tolerated->low, w.ph.tolerated->high, 1, "") + ".";
  rest_on(finding, facts, both, "water.ph.tolerated");
  if (both.size() == 1) return;
  // The one whose going costs less first.
  if (std::pair(both[1]->have, both[1]->count) < std::pair(both[0]->have, both[0]->count)) std::swap(both[0], both[1]);
  finding.remedy = "Keep the two apart";
  for (const Kept* one : both) {
    if (!joined_without(facts, *one)) continue;
    finding.edits = leave_out(facts.plan, {one});
    if (finding.edits.empty()) continue;
    finding.remedy = say_leave_out({one});
    return;
  }
}

// Rounded to a tenth that lies inside, since no kit reads finer.
std::optional<double> inside(double wanted, const Range& range) {
  double tenth = std::round(std::clamp(wanted, range.low, range.high) * 10) / 10;
  if (tenth < range.low) tenth += 0.1;
  if (tenth > range.high) tenth -= 0.1;
  return tenth >= range.low && tenth <= range.high ? std::optional(tenth) : std::nullopt;
}

// The pH that this KH has in a usual tank where the stock takes that, else a KH that has the pH.
void mend_aim(const Facts& facts, const AimedPh& aimed, Finding& finding) {
  const double usual = ph_with_co2(aimed.water, std::min(limits::usual_co2_mg_l, co2_ceiling_mg_l(facts.plan)));
  Range possible = aimed.reached;
  if (const std::optional<Range>& shared = facts.water.ph.tolerated)
    possible = {std::max(possible.low, shared->low), std::min(possible.high, shared->high)};
  if (possible.low <= possible.high)
    if (const std::optional<double> ph = inside(usual, possible)) {
      finding.edits = aim_water(facts, "ph", *ph);
      finding.remedy = "Aim for pH " + amount(*ph, 1, "") + ", which follows from this KH";
      if (!finding.edits.empty()) return;
    }
  const std::optional<Range>& shared = facts.water.kh_dkh.tolerated;
  for (double kh = shared ? std::ceil(shared->low) : 1; shared && kh <= shared->high; ++kh) {
    const Range reached = reachable_ph(aimed.water.temperature_c, {kh, kh}, aimed.water.gh_dgh, co2_ceiling_mg_l(facts.plan));
    if (kh < limits::unreachable_least_kh_dkh || !(aimed.ph >= reached.low && aimed.ph <= reached.high)) continue;
    finding.edits = aim_water(facts, "kh_dkh", kh);
    finding.remedy = "Aim for KH " + amount(kh, 1, "") + " first; pH follows";
    return;
  }
  finding.remedy = "Aim for a KH that has this pH";
}

void tell_aim(const Facts& facts, const AimedPh& aimed, Finding& finding) {
  const std::string kh = amount(aimed.water.kh_dkh, 1, ""), ph = amount(aimed.ph, 1, "");
  finding.text = "KH " + kh + " does not give pH " + ph;
  finding.why = "pH follows from KH and CO2: KH " + kh + " gives pH " + span_of(aimed.reached.low, aimed.reached.high, 1, "") +
                ", from " + amount(co2_ceiling_mg_l(facts.plan), 0, "mg/L") +
                " of CO2 to balance with fresh air; the aim is pH " + ph + ".";
  mend_aim(facts, aimed, finding);
}

}  // namespace

void water_unreachable(const Facts& facts, Found& out) {
  if (const std::optional<Apart> apart = windows_apart(facts)) {
    if (const std::optional<Severity> severity = grade(apart->by, limits::unreachable_windows_ph))
      out.add("water-unreachable", *severity, "", apart->by, [&](Finding& finding) { tell_windows(facts, *apart, finding); });
    return;  // no aim could be right
  }
  if (!out.keeps_findings()) return;  // an aim is a watch at most
  const std::optional<AimedPh> aimed = missed_ph_of(facts);
  if (!aimed || wants_acid(*aimed)) return;
  const double by = rounded(std::max(aimed->under(), aimed->over()));
  if (const std::optional<Severity> severity = grade(by, limits::unreachable_aim_ph))
    out.add("water-unreachable", *severity, "", by, [&](Finding& finding) { tell_aim(facts, *aimed, finding); });
}

}  // namespace shoalwright
