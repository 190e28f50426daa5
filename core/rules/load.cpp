// SPDX-License-Identifier: MIT
// load and nitrate: waste per litre, and how high nitrate climbs under the present changes.
#include "stocking/load.h"

#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "plan/words.h"
#include "rules/changes.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/shares.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/ration.h"

namespace shoalwright {

namespace {

Severity not_on_a_guess(const Plan& plan, Severity severity) {
  return unless_assumed(plan, unless_tank_assumed(plan, severity),
                        {"/tank/fill_cm", "/substrate/kind", "/substrate/front_cm", "/substrate/back_cm", "/feeding/ration",
                         "/feeding/fasting_days", "/water/temperature_c"});
}

// The next smaller ration, where that brings the load index down to `goal`.
bool remedy_by_ration(const Facts& facts, double index, double goal, Finding& finding) {
  const Ration now = facts.plan.feeding->ration;
  for (const Ration less : {Ration::normal, Ration::light}) {
    if (!(ration_factor(less) < ration_factor(now)) || index * ration_factor(less) / ration_factor(now) > goal) continue;
    finding.edits = set_value(facts.plan, "/feeding/ration", "\"" + std::string(word_of(less)) + "\"");
    finding.remedy = "Feed " + std::string(word_of(less)) + " rations";
    return !finding.edits.empty();
  }
  return false;
}

/// "2.3 tanks", of what is more than one.
std::string weekly_tanks(double index) { return amount(std::max(index, 1.1), index < 10 ? 1 : 0, "tanks"); }

}  // namespace

void load(const Facts& facts, Found& out) {
  const std::optional<double> rise = nitrate_rise_mg_l_d(facts.load, facts.volume);
  if (!rise) return;
  const double index = load_index(*rise);
  std::optional<Severity> severity = grade(rounded(index), limits::load);
  if (!severity) return;
  severity = not_on_a_guess(facts.plan, *severity);
  out.add("load", *severity, "", index, [&](Finding& finding) {
    finding.text = "Waste asks " + (index > 1 ? weekly_tanks(index) + " of water weekly" : percent(index) + " new water weekly");
    finding.why = "Feeding makes " + amount(*rise, 1, "mg/L") + " of nitrate a day. Holding it " +
                  amount(load_nitrate_mg_l, 0, "mg/L") + " above the tap takes " +
                  (index > 1 ? weekly_tanks(index) + " of" : percent(index)) +
                  " new water a week; half a tank is as much as most people keep up.";
    const double goal = *severity == Severity::watch ? limits::load.watch : limits::load.strain;
    if (!remedy_by_ration(facts, index, goal, finding))
      remedy_by_fewer(facts, feed_parts(facts), goal / index, in_proportion, finding);
  });
}

namespace {

struct Climb {
  double source = 0, limit = 0;
  std::optional<double> peak;
  bool unchanged = false;
  bool by_source() const { return source >= limit; }
  double reached() const { return peak.value_or(source); }
};

Climb climb_of(const Facts& facts) {
  return {.source = *facts.plan.source.nitrate_mg_l,
          .limit = nitrate_limit_mg_l(facts.plan),
          .peak = nitrate_reached_mg_l(facts.plan, facts.load, facts.volume),
          .unchanged = never_changed(facts.plan)};
}

// Shrimps and kinds that live in soft water only stand less of it.
bool sensitive(const Facts& facts) {
  return std::any_of(facts.stock.begin(), facts.stock.end(), [](const Kept& kept) {
    if (!kept.species) return false;
    const std::optional<Range>& gh = kept.species->water.gh_dgh.tolerated;
    return kept.species->kind == "shrimp" || (gh && gh->high <= limits::soft_water_high_dgh);
  });
}

std::optional<Severity> nitrate_severity(const Facts& facts, const Climb& climb) {
  const double reached = rounded(climb.reached());
  if (reached > limits::nitrate_harm_mg_l) return Severity::harm;
  if (reached <= climb.limit) return std::nullopt;
  if (reached <= climb.limit * (1 + limits::error_nitrate_share)) return Severity::note;
  const auto view = static_cast<std::size_t>(facts.plan.strictness);
  double line = limits::nitrate_strain_mg_l[view];
  if (sensitive(facts))
    line = facts.plan.strictness == Strictness::lenient ? limits::nitrate_strain_mg_l[1] : limits::nitrate_strain_sensitive_mg_l;
  return reached > std::max(line, climb.limit) ? Severity::strain : Severity::watch;
}

/// No kit reads, and no keeper waits for, what lies far past every limit.
std::string climbs(double peak_mg_l) {
  constexpr double far_past_mg_l = 500;
  return (peak_mg_l > far_past_mg_l ? "past " + amount(far_past_mg_l, 0, "mg/L") : "to " + amount(peak_mg_l, 0, "mg/L"));
}

void tell_nitrate(const Facts& facts, const Climb& climb, Finding& finding) {
  const std::string limit = amount(climb.limit, 0, "mg/L");
  if (climb.by_source()) {
    finding.text = "Tap nitrate is at " + amount(climb.source, 0, "mg/L");
    finding.why =
        "The limit is " + limit + " and the tap alone brings " + amount(climb.source, 0, "mg/L") + ": no change gets under it.";
    finding.remedy = "Mix RO water or rain water into the tap water";
    return;
  }
  const Upkeep& upkeep = *facts.plan.upkeep;
  finding.text = "Nitrate climbs " + climbs(*climb.peak);
  finding.why = (climb.unchanged ? "No water is changed, so that nitrate climbs " + climbs(*climb.peak) + " in a year"
                                 : "Changing " + percent(upkeep.change_fraction) + " " + say_every(upkeep.every_days) +
                                       " lets it climb " + climbs(*climb.peak) + " before each change") +
                "; the limit is " + limit + ", the tap brings " + amount(climb.source, 0, "mg/L") + ".";
  // The cause is named whatever may be done about it: upkeep can be pinned.
  const bool too_small = load_index(*nitrate_rise_mg_l_d(facts.load, facts.volume)) <= limits::nitrate_stock_cause;
  if (!climb.unchanged) finding.why += too_small ? " The change is too small." : " The stock makes more than changes can carry.";
  if ((too_small || climb.unchanged) &&
      remedy_by_more_change(facts.plan, *nitrate_rise_mg_l_d(facts.load, facts.volume), climb.limit - climb.source, finding))
    return;
  remedy_by_fewer(facts, feed_parts(facts), (climb.limit - climb.source) / (*climb.peak - climb.source), in_proportion, finding);
}

}  // namespace

void nitrate(const Facts& facts, Found& out) {
  if (!facts.plan.source.nitrate_mg_l) return;
  const Climb climb = climb_of(facts);
  if (!climb.peak && !climb.by_source()) return;
  std::optional<Severity> severity = nitrate_severity(facts, climb);
  if (!severity && climb.by_source()) severity = Severity::note;
  if (!severity) return;
  severity = unless_assumed(facts.plan, not_on_a_guess(facts.plan, *severity),
                            {"/source/nitrate_mg_l", "/upkeep/change_fraction", "/upkeep/every_days"});
  // Where the tap alone is past the limit, more animals are not what makes it so.
  out.add("nitrate", *severity, "", climb.by_source() ? climb.source : *climb.peak,
          [&](Finding& finding) { tell_nitrate(facts, climb, finding); });
}

}  // namespace shoalwright
