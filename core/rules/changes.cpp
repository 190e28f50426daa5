// SPDX-License-Identifier: MIT
#include "rules/changes.h"

#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "units/text.h"
#include "water/change.h"

namespace shoalwright {

namespace {

double practical_share(double share) { return std::ceil(share / limits::change_step - 1e-9) * limits::change_step; }

bool remedy_by(const Plan& plan, double fraction, double every_days, Finding& finding) {
  finding.edits = set_changes(plan, fraction, every_days);
  if (finding.edits.empty()) return false;
  finding.remedy = say_change(fraction, every_days);
  return true;
}

}  // namespace

std::string say_every(double days) { return days == 1 ? "every day" : "every " + short_text(days, 1) + " days"; }

std::string say_change(double fraction, double every_days) { return "Change " + percent(fraction) + " " + say_every(every_days); }

std::vector<PatchStep> set_changes(const Plan& plan, double fraction, double every_days) {
  std::vector<PatchStep> edits;
  const auto set = [&](const char* pointer, double now, double then) {
    if (now == then) return true;
    const std::vector<PatchStep> one = set_value(plan, pointer, json_number(then));
    edits.insert(edits.end(), one.begin(), one.end());
    return !one.empty();
  };
  const Upkeep& upkeep = *plan.upkeep;
  if (!set("/upkeep/every_days", upkeep.every_days, every_days) ||
      !set("/upkeep/change_fraction", upkeep.change_fraction, fraction))
    return {};
  return edits;
}

bool remedy_by_more_change(const Plan& plan, double rise_per_day, double limit, Finding& finding) {
  const Upkeep& upkeep = *plan.upkeep;
  SawTooth changes{
      .rise_per_day = rise_per_day, .every_days = upkeep.every_days, .fraction = upkeep.change_fraction, .source = 0};
  const double largest = std::max(limits::change_largest, upkeep.change_fraction);
  const std::optional<double> needed = fraction_for_peak(changes, limit);
  if (needed && practical_share(*needed) <= largest) return remedy_by(plan, practical_share(*needed), upkeep.every_days, finding);
  changes.fraction = largest;
  const std::optional<double> interval = interval_for_peak(changes, limit);
  return interval && *interval >= 1 && remedy_by(plan, largest, std::floor(*interval), finding);
}

}  // namespace shoalwright
