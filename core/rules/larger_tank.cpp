// SPDX-License-Identifier: MIT
#include "rules/larger_tank.h"

#include <string_view>

#include "notebook/say.h"
#include "rules/edits.h"
#include "stocking/least_tank.h"
#include "stocking/limits.h"
#include "tank/glass.h"
#include "tank/terrain.h"
#include "units/text.h"

namespace shoalwright {

bool nowhere_smaller(const UsualSize& size, const Tank& outside) {
  constexpr double slack_cm = 0.1;  // a measuring tape's millimetre, so that a tank is not thought smaller than itself
  return size.length_cm >= inside_length_cm(outside) - slack_cm && size.width_cm >= inside_width_cm(outside) - slack_cm &&
         size.height_cm >= outside.height_cm - slack_cm;
}

std::string say_take(const UsualSize& size) {
  return "Take a tank of " + short_text(size.length_cm, 0) + " x " + short_text(size.width_cm, 0) + " x " +
         amount(size.height_cm, 0, "cm");
}

namespace {

bool suits(const LeastTank& least, const UsualSize& size, const Tank& inside, double substrate_cm) {
  return size.length_cm >= least.length_cm.value_or(0) &&
         inside.length_cm * inside.width_cm * inside.height_cm / 1000 >= least.volume_l.value_or(0) &&
         inside.width_cm >= least.width_cm && inside.fill_cm - substrate_cm >= least.height_cm.value_or(0);
}

// The measures of a shape that a box does not have.
std::vector<const char*> measures_to_drop(Shape shape) {
  switch (shape) {
    case Shape::rectangular: return {};
    case Shape::bow_front: return {"/tank/bow_cm"};
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: return {"/tank/diameter_cm"};
    case Shape::hexagon: return {"/tank/side_cm"};
    case Shape::pentagon_corner: return {"/tank/side_cm", "/tank/front_cm"};
    case Shape::prism: return {"/tank/outline_cm"};
  }
  return {};
}

}  // namespace

std::vector<PatchStep> exchange_tank(const Plan& plan, const Tank& tank) {
  const struct {
    const char* pointer;
    double value;
  } all[] = {{"/tank/length_cm", tank.length_cm},
             {"/tank/width_cm", tank.width_cm},
             {"/tank/height_cm", tank.height_cm},
             {"/tank/glass_mm", tank.glass_mm},
             {"/tank/fill_cm", tank.fill_cm}};
  std::vector<PatchStep> steps;
  if (plan.tank.shape != Shape::rectangular) steps.push_back({"replace", "/tank/shape", "\"rectangular\""});
  for (const char* pointer : measures_to_drop(plan.tank.shape)) steps.push_back({"remove", pointer, ""});
  for (const auto& one : all) steps.push_back({"add", one.pointer, json_number(one.value)});
  const std::vector<LinePoint>& line = plan.substrate.line_cm;
  const std::vector<LinePoint> there = fitted(line, inside_length_cm(plan.tank), inside_length_cm(tank), tank.height_cm);
  if (there != line) steps.push_back({"replace", "/substrate/line_cm", line_json(there)});
  for (const PatchStep& step : steps)
    if (is_fixed(plan, step.path)) return {};
  return steps;
}

namespace {

bool tank_is_pinned(const Plan& plan) { return exchange_tank(plan, plan.tank).empty(); }

bool put_larger_tank(const Facts& facts, const Kept& kept, double run_cm, Finding& finding) {
  if (tank_is_pinned(facts.plan)) return false;
  const Tank outside = outside_of(facts.plan.tank);
  const LeastTank least = least_tank_of(*kept.species);
  for (const UsualSize& size : usual_sizes()) {
    const Tank inside = tank_of(size);
    if (size.us || !nowhere_smaller(size, outside) || inside.length_cm < run_cm) continue;
    if (!suits(least, size, inside, mean_substrate_cm(facts.plan))) continue;
    finding.remedy = say_take(size);
    finding.edits = exchange_tank(facts.plan, inside);
    return true;
  }
  return false;
}

void leave_out(const Facts& facts, const Kept& kept, Finding& finding) {
  if (!tank_is_pinned(facts.plan)) finding.why += " No usual tank will do.";
  remedy_by_count(facts.plan, kept, 0, finding);
}

}  // namespace

void remedy_by_larger_tank(const Facts& facts, const Kept& kept, double run_cm, Finding& finding) {
  if (!put_larger_tank(facts, kept, run_cm, finding)) leave_out(facts, kept, finding);
}

void remedy_by_longer_tank(const Facts& facts, const Kept& kept, double have_cm, Finding& finding) {
  const double lane_cm = lane_needed_cm(*kept.species);
  for (const double share : {lane_quiet_from, lane_note_from, lane_watch_from})
    if (share * lane_cm > have_cm && put_larger_tank(facts, kept, share * lane_cm, finding)) return;
  leave_out(facts, kept, finding);
}

}  // namespace shoalwright
