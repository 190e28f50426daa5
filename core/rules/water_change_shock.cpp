// SPDX-License-Identifier: MIT
// water-change-shock: what one change at the plan's rhythm moves at once.
//
// Which water is poured in: where the plan aims at a hardness, a recipe makes the new water (osmosis water, salts, warmth), so
// that it has the hardness aimed at and the tank's temperature; only its pH is left to judge. Without such an aim the tank runs
// on the source, and new water is the source as it comes: its hardness is the tank's, but not its temperature. Which water it is
// poured into: what was measured where animals swim already, else what the plan says that the tank has. KH that the filter eats
// up between changes is the matter of kh-low.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/aimed_ph.h"
#include "rules/changes.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "water/blend.h"

namespace shoalwright {

namespace {

enum class What { ph, gh, kh };

struct Waters {
  std::optional<double> gh_before, gh_new, kh_before, kh_new;
  double temperature_c = 25;
  std::optional<Conserved> tank, bucket;  ///< empty: pH cannot be reckoned
  double ph_before = 0;
};

bool swims(const Facts& facts) {
  return std::any_of(facts.stock.begin(), facts.stock.end(), [](const Kept& kept) { return kept.have > 0; });
}

bool by_recipe(const Plan& plan) { return has_aim(plan, "gh_dgh") || has_aim(plan, "kh_dkh"); }

// Pure water in balance with outdoor air.
constexpr double osmosis_ph = 5.6;

// The tap's inorganic carbon comes along with its share of the mix; osmosis water brings what air gives it, a salt of hydrogen
// carbonate its own.
std::optional<Conserved> carbon_of_new_water(const Facts& facts, const Waters& waters) {
  const SourceWater& source = facts.plan.source;
  if (!source.ph || !source.kh_dkh || !waters.kh_new) return std::nullopt;
  const double t = waters.temperature_c;
  Conserved made = conserved_at_ph({t, *source.kh_dkh, source.gh_dgh}, *source.ph);
  if (*waters.kh_new >= *source.kh_dkh)
    made = with_bicarbonate(made, *waters.kh_new - *source.kh_dkh);
  else
    made = mixed(*waters.kh_new / *source.kh_dkh, made, conserved_at_ph({t, 0, 0.0}, osmosis_ph));
  made.gh_dgh = waters.gh_new.value_or(made.gh_dgh);
  return made;
}

std::optional<Waters> waters_of(const Facts& facts) {
  const Windows& now = facts.water;
  if (!now.temperature_c.now) return std::nullopt;
  const Measured read = swims(facts) ? facts.plan.measured.value_or(Measured{}) : Measured{};
  const auto either = [](const std::optional<double>& first, const std::optional<double>& second) {
    return first ? first : second;
  };
  Waters waters{.gh_before = either(read.gh_dgh, now.gh_dgh.now),
                .gh_new = now.gh_dgh.now,
                .kh_before = either(read.kh_dkh, now.kh_dkh.now),
                .kh_new = now.kh_dkh.now,
                .temperature_c = *now.temperature_c.now,
                .tank = {},
                .bucket = {}};
  // pH belongs to the KH that it was read with.
  if (read.ph.has_value() != read.kh_dkh.has_value()) return waters;
  // A tap's own pH says nothing about a tank, and an aim that its KH does not give is spoken of elsewhere.
  if (!read.ph) {
    if (!has_aim(facts.plan, "ph")) return waters;
    const std::optional<AimedPh> missed = missed_ph_of(facts);
    if (missed && std::max(missed->under(), missed->over()) > limits::error_ph) return waters;
  }
  const std::optional<double> ph = either(read.ph, now.ph.now);
  // With next to no KH pH cannot be told from it.
  if (!waters.kh_before || !(*waters.kh_before >= limits::unreachable_least_kh_dkh)) return waters;
  waters.ph_before = *ph;
  waters.tank = conserved_at_ph({waters.temperature_c, *waters.kh_before, waters.gh_before}, *ph);
  waters.bucket = carbon_of_new_water(facts, waters);
  return waters;
}

/// What a change of that share moves too far, the gravest first.
struct Shock {
  What what = What::ph;
  double before = 0, after = 0, amount = 0;
  Severity severity = Severity::watch;
};

std::optional<Shock> hardness_shock(What what, std::optional<double> before, std::optional<double> added, double fraction,
                                    double error) {
  if (!before || !added) return std::nullopt;
  const double after = mixed(fraction, *added, *before), by = rounded(std::abs(after - *before));
  if (!(by > error)) return std::nullopt;  // no kit would show it
  const double share = *before > 0 ? rounded(by / *before) : never;
  const std::optional<Severity> severity = grade(share, limits::change_hardness_share);
  if (!severity) return std::nullopt;
  return Shock{what, *before, after, share, *severity};
}

std::optional<Shock> ph_shock(const Waters& waters, double fraction) {
  if (!waters.tank || !waters.bucket) return std::nullopt;
  const Conserved mix = mixed(fraction, *waters.bucket, *waters.tank);
  // Carbon from pH takes no search, pH from carbon does: most changes are found mild by it. Carbon falls as pH rises.
  const CarbonateWater water{waters.temperature_c, mix.kh_dkh, mix.gh_dgh};
  if (carbon_at_ph_mol_l(water, waters.ph_before + limits::change_ph.watch) <= mix.carbon_mol_l &&
      carbon_at_ph_mol_l(water, waters.ph_before - limits::change_ph.watch) >= mix.carbon_mol_l)
    return std::nullopt;
  const double after = ph_closed(mix, waters.temperature_c);
  const double by = rounded(std::abs(after - waters.ph_before));
  const std::optional<Severity> severity = grade(by, limits::change_ph);
  if (!severity) return std::nullopt;
  return Shock{What::ph, waters.ph_before, after, by, *severity};
}

std::optional<Shock> shock_of(const Waters& waters, double fraction) {
  std::optional<Shock> worst = ph_shock(waters, fraction);
  for (const auto& one : {hardness_shock(What::gh, waters.gh_before, waters.gh_new, fraction, limits::error_gh_dgh),
                          hardness_shock(What::kh, waters.kh_before, waters.kh_new, fraction, limits::error_kh_dkh)})
    if (one && (!worst || one->severity < worst->severity)) worst = one;
  return worst;
}

const char* say(What what) {
  switch (what) {
    case What::ph: return "pH";
    case What::gh: return "GH";
    case What::kh: return "KH";
  }
  return "";
}

// As much water a week in smaller changes, the largest that moves nothing too far.
void mend(const Plan& plan, const Waters& waters, Finding& finding) {
  const Upkeep& upkeep = *plan.upkeep;
  finding.remedy = "Change less at once and more often";
  for (double fraction = std::floor(upkeep.change_fraction / limits::change_step - 1e-9) * limits::change_step;
       fraction > limits::change_step / 2; fraction -= limits::change_step) {
    if (shock_of(waters, fraction)) continue;
    const double every_days = std::max(1.0, std::floor(upkeep.every_days * fraction / upkeep.change_fraction));
    finding.edits = set_changes(plan, fraction, std::min(every_days, upkeep.every_days));
    if (!finding.edits.empty()) finding.remedy = say_change(fraction, std::min(every_days, upkeep.every_days));
    return;
  }
}

void tell(const Plan& plan, const Waters& waters, const Shock& shock, Finding& finding) {
  const double fraction = plan.upkeep->change_fraction;
  const std::string name = say(shock.what), before = amount(shock.before, 1, ""), after = amount(shock.after, 1, "");
  finding.text = "One change takes " + name + " " + before + " to " + after;
  if (shock.what == What::ph)
    finding.why = "With " + percent(fraction) + " of new water pH goes from " + before + " to " + after +
                  " at once, by the KH and the CO2 of both waters; 0.5 is as much as fish should meet.";
  else
    finding.why = "The tank has " + name + " " + before + ", new water " +
                  amount(*(shock.what == What::gh ? waters.gh_new : waters.kh_new), 1, "°dH") + ": " + percent(fraction) +
                  " of it moves " + name + " to " + after + " at once; " + percent(limits::change_hardness_share.watch) +
                  " of what it was is enough.";
  mend(plan, waters, finding);
}

// A recipe warms; a tap does not. Warming the bucket costs nothing, so this is a note however far it is.
void temperature(const Facts& facts, Found& out) {
  const std::optional<double>&tank = facts.water.temperature_c.now, &source = facts.plan.source.temperature_c;
  if (!tank || !source || by_recipe(facts.plan)) return;
  const double fraction = facts.plan.upkeep->change_fraction, by = rounded(fraction * (*source - *tank));
  if (!(std::abs(by) > limits::change_temperature_c)) return;
  out.add("water-change-shock", Severity::note, "", std::abs(by), [&](Finding& finding) {
    const std::string degrees = amount(std::abs(by), 1, "°C");
    finding.text = std::string("Each change ") + (by < 0 ? "cools" : "warms") + " by " + degrees;
    finding.why = percent(fraction) + " of tap water at " + amount(*source, 1, "°C") + " takes a tank of " +
                  amount(*tank, 1, "°C") + (by < 0 ? " down by " : " up by ") + degrees + " at once; " +
                  amount(limits::change_temperature_c, 0, "°C") + " is as much as fish should meet.";
    finding.remedy = std::string(by < 0 ? "Warm" : "Cool") + " the new water to " + amount(*tank, 1, "°C") + " first";
  });
}

}  // namespace

void water_change_shock(const Facts& facts, Found& out) {
  const Plan& plan = facts.plan;
  if (facts.stock.empty() || !plan.upkeep || !(plan.upkeep->change_fraction > 0)) return;
  if (!out.keeps_findings()) return;  // no animal makes a bucket what it is
  if (const std::optional<Waters> waters = waters_of(facts))
    if (const std::optional<Shock> shock = shock_of(*waters, plan.upkeep->change_fraction))
      out.add("water-change-shock", shock->severity, "", shock->amount,
              [&](Finding& finding) { tell(plan, *waters, *shock, finding); });
  temperature(facts, out);
}

}  // namespace shoalwright
