// SPDX-License-Identifier: MIT
// cycle: animals that are in, or are to come in, before the filter carries them. What is only wished for is judged as settled.
// Common practice, no source, but for the limits of ammonia and nitrite.
#include <algorithm>
#include <map>

#include "notebook/say.h"
#include "plan/more_keys.h"
#include "rules/arrival_edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/arrivals.h"
#include "stocking/burden.h"

namespace shoalwright {

namespace {

const char* const the_gate = "The tests decide, no date: 24 hours after a full dose neither ammonia nor nitrite, on two days.";

std::vector<const Kept*> who_swims(const Facts& facts) {
  std::vector<const Kept*> there;
  for (const Kept& kept : facts.stock)
    if (kept.have > 0) there.push_back(&kept);
  return there;
}

/// "ammonia", "nitrite": those that were read past their limits.
std::vector<std::string> past_limits(const Facts& facts) {
  const Measured read = facts.plan.measured.value_or(Measured{});
  const std::optional<double> chloride = chloride_mg_l(read);
  const bool little = chloride && *chloride < limits::nitrite_little_chloride_mg_l;
  std::vector<std::string> past;
  if (facts.load.ammonia_nh3_mg_l && *facts.load.ammonia_nh3_mg_l > limits::ammonia_nh3_mg_l.strain) past.push_back("ammonia");
  if (read.nitrite_mg_l && *read.nitrite_mg_l > limits::nitrite_steps_mg_l(little).strain) past.push_back("nitrite");
  return past;
}

bool anything_measured(const Facts& facts) {
  return facts.plan.measured && (facts.plan.measured->ammonia_mg_l || facts.plan.measured->nitrite_mg_l);
}

void not_carried(const std::vector<const Kept*>& there, const std::vector<std::string>& past, Found& out) {
  out.add("cycle", Severity::strain, "", 0, [&](Finding& finding) {
    concern(finding, there);
    finding.text = "The filter does not carry them yet";
    finding.why = capital(joined(past)) + (past.size() > 1 ? " stand" : " stands") +
                  " past what animals bear, with animals in the tank: what turns waste over does not keep up with what they "
                  "give off. Change water by the tests, feed little, buy none.";
    finding.remedy = "Test every day until two days read none";
  });
}

void not_tested(const Facts& facts, const std::vector<const Kept*>& there, double weeks, Found& out) {
  const Severity severity = is_assumed(facts.plan, "/running_weeks") ? Severity::watch : Severity::strain;
  out.add("cycle", severity, "", 0, [&](Finding& finding) {
    concern(finding, there);
    finding.text = "A young filter, and nothing measured";
    finding.why = "Animals are in, and the filter has run for " + amount(weeks, 1, "weeks") + " of the " +
                  amount(settling_weeks, 0, "") + " or so that it takes. What poisons them then can be neither seen nor smelt.";
    finding.remedy = "Test ammonia and nitrite today";
  });
}

int week_of(const Facts& facts, const ToCome& one) {
  return facts.plan.stock[static_cast<std::size_t>(one.line)].arrives_week.value_or(0);
}

/// Lines with a week, as they come.
std::vector<ToCome> dated(const Facts& facts) {
  std::vector<ToCome> lines;
  for (const ToCome& one : to_come(facts))
    if (facts.plan.stock[static_cast<std::size_t>(one.line)].arrives_week) lines.push_back(one);
  std::stable_sort(lines.begin(), lines.end(),
                   [&](const ToCome& a, const ToCome& b) { return week_of(facts, a) < week_of(facts, b); });
  return lines;
}

std::vector<const Kept*> kinds_of(const std::vector<ToCome>& lines) {
  std::vector<const Kept*> kinds;
  for (const ToCome& one : lines)
    if (std::find(kinds.begin(), kinds.end(), one.kept) == kinds.end()) kinds.push_back(one.kept);
  return kinds;
}

/// Nobody swims yet: the first animals wait until a new filter carries them.
void first_too_early(const Facts& facts, const std::vector<ToCome>& coming, Found& out) {
  std::vector<ToCome> early;
  double first = settling_weeks;
  for (const ToCome& one : coming) {
    const std::optional<double> weeks = weeks_at_arrival(facts.plan, facts.plan.stock[static_cast<std::size_t>(one.line)]);
    if (!weeks || *weeks >= settling_weeks) continue;
    first = std::min(first, *weeks);
    early.push_back(one);
  }
  const std::optional<Severity> severity = grade(settling_weeks - first, limits::arrival_weeks_early);
  if (!severity) return;
  out.add("cycle", *severity, "", settling_weeks - first, [&](Finding& finding) {
    const std::vector<const Kept*> kinds = kinds_of(early);
    concern(finding, kinds);
    finding.text = capital(name_or_number_of(kinds)) + " set for week " + amount(first, 0, "");
    finding.why =
        "A new filter takes three to six weeks until it carries animals, less with ripe media. " + std::string(the_gate);
    finding.remedy = "Put their arrival in week " + amount(settling_weeks, 0, "");
    finding.edits = move_arrivals(facts.plan, early, static_cast<int>(settling_weeks));
  });
}

/// What comes in between two gates.
struct Stage {
  int opens_week = 0;
  double feed_g_d = 0;
  std::vector<const Kept*> kinds;

  /// A group is never split, and kinds that quarrel over who was first come on one day.
  bool takes_whatever_the_feed(const Kept& kept) const {
    const auto at_once = [](const Kept* one) { return one->species->life.group.added == "together"; };
    return std::all_of(kinds.begin(), kinds.end(),
                       [&](const Kept* one) { return one == &kept || (at_once(one) && at_once(&kept)); });
  }
};

/// Where animals swim nobody doses ammonia, and nothing proves more than the filter carries now: arrivals come in stages, each
/// after its gate. Gives those that are set too early, by the week of their stage.
std::map<int, std::vector<ToCome>> held_back(const Facts& facts, const std::vector<ToCome>& coming, double all_g_d,
                                             double water_c) {
  std::map<int, std::vector<ToCome>> held;
  Stage stage;
  for (const ToCome& one : coming) {
    const double feed_g_d = one.animals * burden_of(*one.kept->species, water_c).feed_g_d;
    const int week = week_of(facts, one), next = stage.opens_week + static_cast<int>(weeks_to_gate);
    const bool fits = stage.feed_g_d + feed_g_d <= stage_share * all_g_d + 1e-9 || stage.takes_whatever_the_feed(*one.kept);
    if (stage.kinds.empty() || week >= next)
      stage = {week, 0, {}};
    else if (!fits)
      stage = {next, 0, {}};
    stage.feed_g_d += feed_g_d;
    stage.kinds.push_back(one.kept);
    if (week < stage.opens_week) held[stage.opens_week].push_back(one);
  }
  return held;
}

void more_than_a_stage(const Facts& facts, const std::vector<ToCome>& coming, Found& out) {
  if (!facts.load.feed_g_d || !facts.water.temperature_c.now) return;
  const std::optional<Burden> all = burden_of(facts.stock, facts.water.temperature_c.now);
  if (!all) return;
  const std::map<int, std::vector<ToCome>> held = held_back(facts, coming, all->feed_g_d, *facts.water.temperature_c.now);
  if (held.empty()) return;
  out.add("cycle", Severity::watch, "", 0, [&](Finding& finding) {
    std::vector<ToCome> lines;
    for (const auto& [week, of_week] : held) lines.insert(lines.end(), of_week.begin(), of_week.end());
    const std::vector<const Kept*> kinds = kinds_of(lines);
    concern(finding, kinds);
    finding.text = "Arrivals follow too close on each other";
    finding.why = "Each stage should add no more than " + percent(stage_share) +
                  " of all food, unless it is one group, and the next one comes after clean tests, about " +
                  amount(weeks_to_gate, 0, "weeks") + " later: bacteria do not grow faster.";
    finding.remedy = "Put " + name_or_number_of(kinds) + " in week " + std::to_string(held.begin()->first) +
                     (held.size() > 1 ? " and after" : "");
    for (const auto& [week, of_week] : held) {
      const std::vector<PatchStep> steps = move_arrivals(facts.plan, of_week, week);
      if (steps.empty()) {
        finding.edits.clear();
        return;
      }
      finding.edits.insert(finding.edits.end(), steps.begin(), steps.end());
    }
  });
}

}  // namespace

void cycle(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // what is wished for is judged as settled
  const std::vector<const Kept*> there = who_swims(facts);
  const std::vector<ToCome> coming = dated(facts);
  if (there.empty()) {
    first_too_early(facts, coming, out);
    return;
  }
  const std::vector<std::string> past = past_limits(facts);
  const std::optional<double> weeks = weeks_lived_in(facts.plan);
  if (!past.empty())
    not_carried(there, past, out);
  else if (weeks && *weeks < settling_weeks && !anything_measured(facts))
    not_tested(facts, there, *weeks, out);
  more_than_a_stage(facts, coming, out);
}

}  // namespace shoalwright
