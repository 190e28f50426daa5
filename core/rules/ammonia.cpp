// SPDX-License-Identifier: MIT
// ammonia: measured ammonia and nitrite. Un-ionised ammonia harms; what was measured becomes it by pH and temperature.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "plan/more_keys.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "water/ammonia.h"

namespace shoalwright {

namespace {

// Who does not swim yet is not harmed: the tank is only not ready.
Severity softened(const Facts& facts, Severity severity) {
  const bool swims = std::any_of(facts.stock.begin(), facts.stock.end(), [](const Kept& kept) { return kept.have > 0; });
  return swims ? severity : at_most(severity, Severity::watch);
}

bool read_of_its_own(const std::optional<Measured>& measured, std::optional<double> Measured::*value) {
  return measured && (*measured).*value;
}

Severity not_on_a_guess(const Facts& facts, Severity severity) {
  const bool ph_guessed = !read_of_its_own(facts.plan.measured, &Measured::ph) && water_is_assumed(facts.plan, "ph");
  const bool warmth_guessed = !read_of_its_own(facts.plan.measured, &Measured::temperature_c) &&
                              has_aim(facts.plan, "temperature_c") && water_is_assumed(facts.plan, "temperature_c");
  return unless_assumed(facts.plan, ph_guessed || warmth_guessed ? at_most(severity, Severity::strain) : severity,
                        {"/measured/ammonia_mg_l", "/measured/ph", "/measured/temperature_c"});
}

// What one change today brings down as far as it should be, at most half the tank: fish bear no more at once.
void remedy_today(const Facts& facts, double now, double wanted, Finding& finding) {
  const double share = std::clamp(std::ceil((1 - wanted / now) / limits::change_step - 1e-9) * limits::change_step,
                                  limits::change_step, limits::change_largest);
  finding.remedy = "Change " + amount(share * facts.volume.net_l, 0, "L") + " today, then test again";
}

std::string hundredths(double mg_l) { return amount(mg_l, 2, "mg/L"); }

/// How grave by NH3, where pH and temperature are known.
std::optional<Severity> by_nh3(const Facts& facts) {
  if (!facts.load.ammonia_nh3_mg_l) return std::nullopt;
  return grade(rounded(*facts.load.ammonia_nh3_mg_l), limits::ammonia_nh3_mg_l);
}

/// What a settled tank should stay under, and natural water, mg/L of nitrogen.
double tan_allowed_mg_l(const Facts& facts) {
  const Measured& read = *facts.plan.measured;
  const std::optional<double> temperature_c = read.temperature_c ? read.temperature_c : facts.water.temperature_c.now,
                              ph = read.ph ? read.ph : facts.water.ph.now;
  if (!temperature_c || !ph) return limits::ammonia_tan_mg_l;
  return std::min(limits::ammonia_tan_mg_l, chronic_tan_mg_l(*temperature_c, *ph));
}

void tell_ammonia(const Facts& facts, bool harmful, Finding& finding) {
  const double tan = *facts.plan.measured->ammonia_mg_l;
  const std::optional<double>& nh3 = facts.load.ammonia_nh3_mg_l;
  finding.text = "Ammonia is at " + hundredths(tan);
  if (harmful) {
    finding.why = hundredths(tan) + " of ammonia nitrogen make " + hundredths(std::max(*nh3, 0.01)) +
                  " of free ammonia at this pH and temperature; " + hundredths(limits::ammonia_nh3_mg_l.strain) +
                  " is the trade's limit, from " + hundredths(limits::ammonia_nh3_mg_l.harm) + " on gills are harmed.";
    remedy_today(facts, *nh3, limits::ammonia_nh3_mg_l.watch, finding);
    return;
  }
  finding.why = "A settled filter leaves less than " + hundredths(tan_allowed_mg_l(facts)) + " of ammonia nitrogen; here it is " +
                hundredths(tan) +
                (facts.plan.source.disinfectant == Disinfectant::none
                     ? "."
                     : ". After a conditioner some kits show ammonia that is bound and does no harm.");
  remedy_today(facts, tan, tan_allowed_mg_l(facts), finding);
}

void judge_ammonia(const Facts& facts, Found& out) {
  if (!facts.plan.measured->ammonia_mg_l) return;
  const double tan = rounded(*facts.plan.measured->ammonia_mg_l);
  std::optional<Severity> severity = by_nh3(facts);
  const bool harmful = severity.has_value();
  if (tan > tan_allowed_mg_l(facts)) severity = graver(severity, Severity::watch);
  if (!severity) return;
  severity = not_on_a_guess(facts, softened(facts, *severity));
  out.add("ammonia", *severity, "ammonia", tan, [&](Finding& finding) { tell_ammonia(facts, harmful, finding); });
}

void judge_nitrite(const Facts& facts, Found& out) {
  if (!facts.plan.measured->nitrite_mg_l) return;
  const double nitrite = rounded(*facts.plan.measured->nitrite_mg_l);
  const std::optional<double> chloride = chloride_mg_l(*facts.plan.measured);
  const bool little = chloride && *chloride < limits::nitrite_little_chloride_mg_l;
  const Steps steps = limits::nitrite_steps_mg_l(little);
  std::optional<Severity> severity = grade(nitrite, steps);
  if (!severity) return;
  severity = unless_assumed(facts.plan, softened(facts, *severity), {"/measured/nitrite_mg_l"});
  out.add("ammonia", *severity, "nitrite", nitrite, [&](Finding& finding) {
    finding.text = "Nitrite is at " + hundredths(nitrite);
    finding.why = "Nitrite takes the place of oxygen in the blood. A settled filter leaves less than " + hundredths(steps.watch);
    finding.why +=
        little ? "; with as little chloride as here, " + amount(*chloride, 1, "mg/L") +
                     ", it is twice as bad: half of the trade's " + hundredths(limits::nitrite_mg_l.strain) + " is the limit."
               : ", the trade's limit is " + hundredths(steps.strain) + "; chloride in hard tap water makes it milder.";
    remedy_today(facts, nitrite, steps.watch, finding);
  });
}

}  // namespace

void ammonia(const Facts& facts, Found& out) {
  if (facts.stock.empty() || !facts.plan.measured) return;
  if (!out.keeps_findings()) return;  // no number of animals makes what was measured today
  judge_ammonia(facts, out);
  judge_nitrite(facts, out);
}

}  // namespace shoalwright
