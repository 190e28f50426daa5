// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <map>
#include <string>

#include "assess/assess.h"
#include "plan/plan.h"
#include "scape/body_room.h"
#include "support/builders.h"
#include "support/dice.h"
#include "support/plan_files.h"
#include "support/quarrels.h"
#include "support/random_plan.h"

namespace shoalwright {

/// A tank as keepers have them, from a cube to a long one, with one to six kinds of the catalogue in sound to silly numbers, in
/// soft to hard tap water; the same for the same seed everywhere. Nothing assumed, nothing pinned: what random_plan() leaves rare
/// is common here.
inline Plan random_stock(std::uint64_t seed) {
  Dice dice(seed);
  struct Inside {
    double length_cm, width_cm, height_cm;
  };
  constexpr auto tanks = std::to_array<Inside>({{29.2, 29.2, 29.6},
                                                {39.2, 24.2, 27},
                                                {59, 29, 29.5},
                                                {78.8, 33.8, 39.4},
                                                {88.4, 43.4, 44.2},
                                                {118, 48, 49},
                                                {197.6, 57.6, 58.8}});
  constexpr auto floors = std::to_array({SubstrateKind::fine_sand, SubstrateKind::coarse_sand, SubstrateKind::smooth_gravel,
                                         SubstrateKind::sharp_gravel, SubstrateKind::planted_soil});
  constexpr auto scape = std::to_array<const char*>({"branch-low", "cave", "pipe", "stem-plants", "stone", "floating-plants"});
  const Inside tank = dice.pick(tanks);
  PlanBuilder plan = a_plan().tank(tank.length_cm, tank.width_cm, tank.height_cm);
  plan.tap(dice.whole(58, 84) / 10.0, dice.whole(1, 22), dice.whole(0, 14)).tap_nitrate(dice.whole(0, 45));
  if (dice.percent(60))
    plan.aim(dice.whole(19, 29));
  else
    plan.no_aim();
  plan.lid(dice.percent(60)).change(dice.whole(1, 6) / 10.0, dice.whole(3, 21));
  plan.feed(static_cast<Ration>(dice.below(3))).planted(static_cast<Planting>(dice.below(4)));
  const int kinds = dice.whole(1, 6);
  for (int i = 0; i < kinds; ++i) {
    const int count = dice.whole(1, dice.percent(30) ? 30 : 10);
    plan.kind(dice.pick(the_catalog().species).id, count, dice.percent(30) ? dice.whole(0, count) : 0);
  }
  // Half of them with a floor, a scape and a filter, from nothing to more than enough.
  if (dice.percent(50)) {
    plan.floor(dice.pick(floors), dice.whole(2, 4), dice.whole(2, 8)).running(dice.whole(0, 30));
    for (int left = dice.below(6); left > 0; --left) plan.piece(dice.pick(scape));
    plan.flow(dice.whole(50, 1200));
  }
  return plan;
}

/// Under the sanitizers and in Node, where everything takes several times as long, every eighth random plan is looked at.
#ifdef SHOALWRIGHT_FEWER_PLANS
inline constexpr int plans_step = 8;
#else
inline constexpr int plans_step = 1;
#endif

/// Every plan of tests/plans, random ones of both kinds, and quarrels(). Read once.
inline const std::vector<NamedPlan>& many_plans() {
  static const std::vector<NamedPlan> plans = [] {
    std::vector<NamedPlan> all = all_plans();
    for (std::uint64_t seed = 1; seed <= 160; seed += plans_step)
      all.push_back({"random stock " + std::to_string(seed), random_stock(seed)});
    for (std::uint64_t seed = 1; seed <= 60; seed += plans_step)
      all.push_back({"random plan " + std::to_string(seed), random_plan(seed, the_catalog(), {.notes = false, .odd = true})});
    for (NamedPlan& plan : quarrels()) all.push_back(std::move(plan));
    return all;
  }();
  return plans;
}

/// Without the remedies that need a search: what most properties are about. The grid of the last plan is kept, since properties
/// change one thing of a plan after the other.
inline Assessment assess_at_once(const Plan& plan, const Catalog& catalog) {
  static BodyRooms bodies;
  return assess(plan, catalog, bodies, Remedies::at_once);
}

/// The assessment of one of many_plans(), worked out once; with searched remedies for every plan with a name of its own and one
/// in five of the random ones, since a search takes a tenth of a second.
inline const Assessment& assessed(const NamedPlan& named) {
  static std::map<std::string, Assessment> known;
  const auto found = known.find(named.name);
  if (found != known.end()) return found->second;
  const bool random = named.name.compare(0, 7, "random ") == 0,
             searched = !random || (plans_step == 1 && (named.name.back() == '3' || named.name.back() == '7'));
  return known.emplace(named.name, searched ? assess(named.plan, the_catalog()) : assess_at_once(named.plan, the_catalog()))
      .first->second;
}

/// What a finding says, without the patch, whose pointers follow the lines of the plan.
struct Told {
  std::string rule;
  Severity severity = Severity::note;
  std::vector<std::string> species;
  std::string text, why, remedy;
  bool operator==(const Told&) const = default;
};

inline std::vector<Told> told(const Assessment& assessment) {
  std::vector<Told> all;
  for (const Finding& f : assessment.findings) all.push_back({f.rule, f.severity, f.species, f.text, f.why, f.remedy});
  return all;
}

}  // namespace shoalwright
