// SPDX-License-Identifier: MIT
#include "advice/tank_for.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>
#include <string_view>

#include "assess/reckoned.h"
#include "plan/defaults.h"
#include "tank/sizes.h"
#include "tank/terrain.h"
#include "tank/volume.h"
#include "units/order.h"

namespace shoalwright {

Tank tank_of(const TankFor& found) { return box_tank(found.length_cm, found.width_cm, found.height_cm, found.glass_mm); }

bool asks_for_room(std::string_view rule) {
  constexpr std::string_view rules[] = {"adult-size", "swim-lane", "territory", "load"};
  return rule.starts_with("tank-") || rule.starts_with("crowding-") ||
         std::find(std::begin(rules), std::end(rules), rule) != std::end(rules);
}

namespace {

constexpr std::size_t most_usual = 3;
constexpr double least_water_over_substrate_cm = 5;

/// The plan's stock in tank after tank.
struct Trial {
  Plan plan;  ///< without pieces, in the tank last tried
  const Catalog& catalog;
  std::vector<LinePoint> line;
  double line_length_cm;
  std::optional<bool> lid;
  BodyRooms bodies = {};
  std::vector<Grade> whatever_the_tank = {};

  Trial(const Plan& from, const Catalog& all)
      : plan(from), catalog(all), line(from.substrate.line_cm), line_length_cm(inside_length_cm(from.tank)), lid(from.tank.lid) {
    plan.pieces.clear();
  }

  void put(const TankFor& outside) {
    plan.tank = tank_of(outside);
    plan.tank.lid = lid;
    plan.substrate.line_cm = fitted(line, line_length_cm, plan.tank.length_cm, plan.tank.height_cm);
  }

  /// The rule that speaks against a tank, gravest first, "" when none does.
  std::string against(const TankFor& outside) {
    put(outside);
    const double bed_cm = std::max(plan.substrate.front_cm, plan.substrate.back_cm);
    if (!(plan.tank.fill_cm - bed_cm >= least_water_over_substrate_cm)) return "tank-height";
    const std::vector<Grade> grades = grades_of(plan, catalog, bodies);
    for (const Severity severity : {Severity::harm, Severity::strain})
      for (const Grade& one : grades)
        if (one.severity == severity && !known_before(one, whatever_the_tank)) return one.rule;
    return "";
  }
};

TankFor usual(const UsualSize& size) {
  return {.length_cm = size.length_cm,
          .width_cm = size.width_cm,
          .height_cm = size.height_cm,
          .glass_mm = size.glass_mm,
          .name = size.name,
          .length_set_by = {},
          .width_set_by = {},
          .height_set_by = {}};
}

double volume_l(const TankFor& outside) {
  const Tank inside = tank_of(outside);
  return inside.length_cm * inside.width_cm * inside.height_cm / 1000;
}

using Measure = double TankFor::*;
constexpr Measure measures[] = {&TankFor::height_cm, &TankFor::width_cm, &TankFor::length_cm};

TankFor shortened(TankFor tank, Measure measure, double to_cm) {
  tank.*measure = to_cm;
  tank.name.clear();
  tank.glass_mm = default_glass_mm(tank.height_cm);
  return tank;
}

/// How small one measure can be with the other two as they are, in steps from the least side on; and the rule that speaks against
/// one step less, "" where there is none.
struct Shrunk {
  double to_cm = 0;
  std::string set_by;
};

Shrunk shrink(Trial& trial, const TankFor& tank, Measure measure) {
  // `low` will not do or is under what is looked at, `high` will.
  double low = least_side_cm - tank_step_cm, high = tank.*measure;
  std::string set_by;
  while (high - low > tank_step_cm) {
    const double middle = low + tank_step_cm * std::max(std::floor((high - low) / tank_step_cm / 2), 1.0);
    const std::string against = trial.against(shortened(tank, measure, middle));
    if (against.empty()) {
      high = middle;
    } else {
      low = middle;
      set_by = against;
    }
  }
  return {high, set_by};
}

/// Every measure as small as can be with the other two as they are.
TankFor shrunk(Trial& trial, TankFor tank) {
  for (bool smaller = true; smaller;) {
    smaller = false;
    for (const Measure measure : measures) {
      const Shrunk less = shrink(trial, tank, measure);
      if (!(less.to_cm < tank.*measure)) continue;
      tank = shortened(tank, measure, less.to_cm);
      smaller = true;
    }
  }
  return tank;
}

void say_what_sets(Trial& trial, TankFor& tank) {
  tank.length_set_by = shrink(trial, tank, &TankFor::length_cm).set_by;
  tank.width_set_by = shrink(trial, tank, &TankFor::width_cm).set_by;
  tank.height_set_by = shrink(trial, tank, &TankFor::height_cm).set_by;
  tank.volume_l = volume_l(tank);
}

/// Why not even the tank that the trial is in will do.
std::string why_none(Trial& trial) {
  const Reckoned all = reckon(trial.plan, resolve_stock(trial.plan, trial.catalog), trial.bodies);
  const auto unknown = std::find_if(all.stock.begin(), all.stock.end(), [](const Kept& kept) { return !kept.species; });
  if (unknown != all.stock.end()) return "Nothing is known of " + unknown->id + ", so no tank can be named.";
  if (!trial.plan.planting) return "How densely it is planted is not known, so no tank can be named.";
  for (const Finding& one : findings_of(facts_of(trial.plan, trial.catalog, all, trial.bodies), Found::Keep::findings_at_once))
    if ((one.severity == Severity::harm || one.severity == Severity::strain) &&
        asks_for_room(one.rule))  // that the largest tank raises it too is no excuse
      return "No usual tank is large enough: " + one.text + ".";
  return "";
}

}  // namespace

TanksFor least_tanks(const Plan& plan, const Catalog& catalog) {
  Trial trial(plan, catalog);
  std::vector<TankFor> usual_tanks;
  for (const UsualSize& size : usual_sizes()) usual_tanks.push_back(usual(size));
  sort_stable(usual_tanks, [](const TankFor& a, const TankFor& b) { return volume_l(a) < volume_l(b); });
  trial.put(usual_tanks.back());
  TanksFor found;
  found.why_none = why_none(trial);
  if (!found.why_none.empty()) return found;
  trial.whatever_the_tank = grades_of(trial.plan, catalog, trial.bodies);
  for (const TankFor& tank : usual_tanks) {
    if (found.tanks.size() == most_usual) break;
    if (trial.against(tank).empty()) found.tanks.push_back(tank);
  }
  const TankFor free = shrunk(trial, found.tanks.front());
  if (!(free == found.tanks.front())) found.tanks.push_back(free);
  for (TankFor& tank : found.tanks) say_what_sets(trial, tank);
  sort_stable(found.tanks, [](const TankFor& a, const TankFor& b) { return a.volume_l < b.volume_l; });
  return found;
}

}  // namespace shoalwright
