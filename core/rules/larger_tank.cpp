// SPDX-License-Identifier: MIT
#include "rules/larger_tank.h"

#include "notebook/say.h"
#include "rules/edits.h"
#include "tank/glass.h"
#include "units/text.h"

namespace shoalwright {

namespace {

// A measuring tape's millimetre, so that a tank is not thought smaller than itself.
constexpr double slack_cm = 0.1;

bool nowhere_smaller(const UsualSize& size, const Tank& outside) {
  return size.length_cm >= inside_length_cm(outside) - slack_cm && size.width_cm >= inside_width_cm(outside) - slack_cm &&
         size.height_cm >= outside.height_cm - slack_cm;
}

std::vector<PatchStep> exchange_tank(const Plan& plan, const Tank& tank) {
  if (plan.tank.shape != Shape::rectangular) return {};
  const struct {
    const char* pointer;
    double value;
  } all[] = {{"/tank/length_cm", tank.length_cm},
             {"/tank/width_cm", tank.width_cm},
             {"/tank/height_cm", tank.height_cm},
             {"/tank/glass_mm", tank.glass_mm},
             {"/tank/fill_cm", tank.fill_cm}};
  std::vector<PatchStep> steps;
  for (const auto& one : all) {
    if (is_fixed(plan, one.pointer)) return {};
    steps.push_back({"replace", one.pointer, json_number(one.value)});
  }
  return steps;
}

}  // namespace

void remedy_by_larger_tank(const Facts& facts, const Kept& kept, Finding& finding,
                           const std::function<bool(const UsualSize&, const Tank&)>& clears) {
  const Tank outside = outside_of(facts.plan.tank);
  for (const UsualSize& size : usual_sizes()) {
    if (size.us || !nowhere_smaller(size, outside)) continue;
    const Tank inside = tank_of(size);
    if (!clears(size, inside)) continue;
    finding.remedy = "Take a tank of " + short_text(size.length_cm, 0) + " x " + short_text(size.width_cm, 0) + " x " +
                     amount(size.height_cm, 0, "cm");
    finding.edits = exchange_tank(facts.plan, inside);
    return;
  }
  finding.remedy = "No usual tank will do. " + say_count(kept, 0);
  finding.edits = set_count(facts.plan, kept, 0);
}

}  // namespace shoalwright
