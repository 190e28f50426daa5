// SPDX-License-Identifier: MIT
// oxygen: what is left before dawn, on the plan's days and in a heat wave, and after a meal.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "plan/words.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/shares.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/gas_transfer.h"
#include "stocking/ration.h"
#include "water/oxygen.h"

namespace shoalwright {

namespace {

/// One night, or an hour after a meal: what comes in and what is used.
struct Breath {
  double temperature_c = 0, saturation_mg_l = 0, supply_l_h = 0;
  OxygenUse use;
  /// Below 0 where more is used than comes in, so that more animals are always worse.
  double left_mg_l(double fish_factor = 1) const { return saturation_mg_l - use.total_mg_h(fish_factor) / supply_l_h; }
};

/// What a night rests on whatever its temperature.
struct Still {
  double k600_cm_h = 0, open_cm2 = 0, plants_mg_h = 0;
};

// Going through all pieces for leaves on and under the water is dear: what Air was reckoned from is had back from it.
std::optional<Still> still_of(const Facts& facts, double water_c) {
  const std::optional<double> k600 = k600_of(facts.plan, facts.volume);
  const std::optional<OxygenUse> animals = night_oxygen_use(facts.plan, 0.0, burden_of(facts.stock, water_c));
  if (!k600 || !animals) return std::nullopt;
  Still still{.k600_cm_h = *k600, .plants_mg_h = std::max(*facts.air.demand_mg_h - animals->total_mg_h(), 0.0)};
  if (*facts.air.dawn_mg_l > 0)
    still.open_cm2 = 1000 * *facts.air.demand_mg_h / (*facts.air.saturation_mg_l - *facts.air.dawn_mg_l) /
                     oxygen_transfer_cm_h(*k600, water_c);
  else
    still.open_cm2 = open_surface_cm2(facts.plan, facts.volume);
  return still;
}

std::optional<Breath> night_at(const Facts& facts, const Still& still, double temperature_c) {
  const std::optional<OxygenUse> use = night_oxygen_use(facts.plan, still.plants_mg_h, burden_of(facts.stock, temperature_c));
  const double supply = oxygen_supply_l_h(oxygen_transfer_cm_h(still.k600_cm_h, temperature_c), still.open_cm2);
  if (!use || !(supply > 0)) return std::nullopt;
  return Breath{temperature_c, oxygen_saturation_mg_l(temperature_c), supply, *use};
}

std::optional<Severity> by_dawn(double left_mg_l) {
  return grade(rounded(limits::oxygen_ease_mg_l - left_mg_l), limits::oxygen_short);
}

std::optional<Severity> severity_of(const Breath& night) {
  const double left = night.left_mg_l();
  // What fish use is known within a band: harm only where the least of it is too much too.
  if (left < limits::oxygen_least_mg_l && night.left_mg_l(fish_use_low) < limits::oxygen_least_mg_l) return Severity::harm;
  return by_dawn(left);
}

std::optional<Severity> one_step_milder(std::optional<Severity> severity) {
  if (!severity || *severity == Severity::note) return std::nullopt;
  return static_cast<Severity>(static_cast<int>(*severity) + 1);
}

/// Kinds whose card asks for more than is left.
std::vector<const Kept*> short_of_breath(const Facts& facts, double left_mg_l) {
  std::vector<const Kept*> kinds;
  for (const Kept& kept : facts.stock)
    if (kept.species && kept.species->water.oxygen_least_mg_l && rounded(*kept.species->water.oxygen_least_mg_l - left_mg_l) > 0)
      kinds.push_back(&kept);
  return kinds;
}

/// Which of the four makes the finding.
enum class Worst { dawn, kinds, heat, meal };

struct Judged {
  std::optional<Severity> severity;
  Worst worst = Worst::dawn;
  void weigh(std::optional<Severity> one, Worst by) {
    if (!one || (severity && *severity <= *one)) return;
    severity = one;
    worst = by;
  }
};

struct Nights {
  Still still;
  Breath plan;
  std::optional<Breath> heat;  ///< looked at only where it could say something
};

Breath meal_of(const Nights& nights) {
  Breath meal = nights.plan;
  meal.use = after_meal(meal.use);
  return meal;
}

// Kinds that breathe air gasp at no dawn; the bacteria of their filter do.
bool all_breathe_air(const Facts& facts) {
  return facts.air.limit_mg_l && *facts.air.limit_mg_l <= limits::oxygen_air_breathers_mg_l;
}

Judged judge(const Facts& facts, const Nights& nights) {
  Judged judged;
  if (all_breathe_air(facts)) {
    judged.weigh(one_step_milder(severity_of(nights.plan)), Worst::dawn);
    return judged;
  }
  judged.weigh(severity_of(nights.plan), Worst::dawn);
  if (!short_of_breath(facts, nights.plan.left_mg_l()).empty()) judged.weigh(Severity::watch, Worst::kinds);
  if (nights.heat)
    if (const std::optional<Severity> heat = one_step_milder(severity_of(*nights.heat)))
      judged.weigh(at_most(*heat, Severity::watch), Worst::heat);  // a strain is the plan's own night's
  if (meal_of(nights).left_mg_l() < limits::oxygen_least_mg_l) judged.weigh(Severity::watch, Worst::meal);
  return judged;
}

Nights with_surface(Nights nights, SurfaceMotion surface) {
  const double open_cm2 = nights.still.open_cm2;
  const auto set = [&](Breath& breath) {
    breath.supply_l_h = oxygen_supply_l_h(oxygen_transfer_cm_h(k600_cm_h(surface), breath.temperature_c), open_cm2);
  };
  set(nights.plan);
  if (nights.heat) set(*nights.heat);
  return nights;
}

Nights with_food(Nights nights, double factor) {
  const auto set = [&](Breath& breath) {
    breath.use.nitrification_mg_h *= factor;
    breath.use.decay_mg_h *= factor;
  };
  set(nights.plan);
  if (nights.heat) set(*nights.heat);
  return nights;
}

std::string say_how(SurfaceMotion surface) {
  switch (surface) {
    case SurfaceMotion::still:
    case SurfaceMotion::quiet: return "Set the outlet under the surface";
    case SurfaceMotion::gentle: return "Set the outlet so that the surface drifts";
    case SurfaceMotion::rippled: return "Set the outlet to ripple the surface";
    case SurfaceMotion::vigorous: return "Add an air stone and ripple the surface";
  }
  return "";
}

bool milder(const Judged& then, const Judged& now) { return !then.severity || *then.severity > *now.severity; }

// The least lively surface that leaves nothing to say; failing that the liveliest, if it makes it milder.
bool remedy_by_surface(const Facts& facts, const Nights& nights, const Judged& judged, Finding& finding) {
  const double now = nights.still.k600_cm_h;
  for (const SurfaceMotion surface : {SurfaceMotion::gentle, SurfaceMotion::rippled, SurfaceMotion::vigorous}) {
    if (!(k600_cm_h(surface) > now)) continue;
    const Judged then = judge(facts, with_surface(nights, surface));
    if (then.severity && !(surface == SurfaceMotion::vigorous && milder(then, judged))) continue;
    finding.remedy = say_how(surface);
    finding.edits = set_value(facts.plan, "/gear/surface", "\"" + std::string(word_of(surface)) + "\"");
    return !finding.edits.empty();
  }
  return false;
}

bool remedy_by_food(const Facts& facts, const Nights& nights, const Judged& judged, Finding& finding) {
  const Ration now = facts.plan.feeding->ration;
  for (const Ration less : {Ration::normal, Ration::light}) {
    if (!(ration_factor(less) < ration_factor(now))) continue;
    if (!milder(judge(facts, with_food(nights, ration_factor(less) / ration_factor(now))), judged)) continue;
    finding.remedy = "Feed " + std::string(word_of(less)) + " rations";
    finding.edits = set_value(facts.plan, "/feeding/ration", "\"" + std::string(word_of(less)) + "\"");
    return !finding.edits.empty();
  }
  return false;
}

void remedy_by_fewer_breaths(const Facts& facts, const Nights& nights, const Judged& judged, Finding& finding) {
  const bool heat = judged.worst == Worst::heat;
  const Breath& breath = heat ? *nights.heat : nights.plan;
  double goal = heat ? limits::oxygen_heat_goal_mg_l : limits::oxygen_goal_mg_l;
  if (judged.worst == Worst::kinds)
    for (const Kept* kept : short_of_breath(facts, breath.left_mg_l()))
      goal = std::max(goal, *kept->species->water.oxygen_least_mg_l);
  const double animals = breath.use.total_mg_h() - breath.use.plants_mg_h;
  const double allowed = largest_oxygen_use_mg_h(breath.saturation_mg_l, breath.supply_l_h, goal) - breath.use.plants_mg_h;
  if (animals > 0 && allowed > 0 && allowed < animals)
    remedy_by_fewer(facts, breath_parts(facts, breath.temperature_c), allowed / animals, in_proportion, finding);
}

void mend(const Facts& facts, const Nights& nights, const Judged& judged, Finding& finding) {
  if (remedy_by_surface(facts, nights, judged, finding)) return;
  if (remedy_by_food(facts, nights, judged, finding)) return;
  if (*judged.severity != Severity::note && judged.worst != Worst::meal) remedy_by_fewer_breaths(facts, nights, judged, finding);
  if (finding.edits.empty() && finding.remedy.empty()) finding.remedy = "Add an air stone and ripple the surface";
}

std::string mg_l(double oxygen) { return amount(std::max(oxygen, 0.0), 1, "mg/L"); }

void tell(const Facts& facts, const Nights& nights, const Judged& judged, Finding& finding) {
  const Breath meal = meal_of(nights);
  const Breath& breath = judged.worst == Worst::heat ? *nights.heat : judged.worst == Worst::meal ? meal : nights.plan;
  const double left = breath.left_mg_l();
  const char* when = judged.worst == Worst::heat ? " in heat" : judged.worst == Worst::meal ? " after meals" : " by dawn";
  if (left > 0)
    finding.text = "Oxygen falls to " + mg_l(left) + when;
  else
    finding.text = "More oxygen is used than comes in";
  const std::string use = amount(breath.use.total_mg_h(), 0, "mg");
  if (judged.worst == Worst::heat)
    finding.why =
        "In a heat wave, at " + amount(breath.temperature_c, 1, "°C") + ", the tank uses " + use + " an hour in the dark";
  else if (judged.worst == Worst::meal)
    finding.why = "For hours after a full meal the tank uses " + use + " an hour";
  else
    finding.why = "In the dark animals, bacteria and plants use " + use + " an hour";
  finding.why +=
      left > 0 ? ", and the surface keeps " + mg_l(left) + " of the " + mg_l(breath.saturation_mg_l) +
                     " that water can hold; by what is known of fish " +
                     span_of(std::max(breath.left_mg_l(fish_use_high), 0.0), breath.left_mg_l(fish_use_low), 1, "mg/L")
               : "; through this surface " + amount(breath.supply_l_h * breath.saturation_mg_l, 0, "mg") + " can come in at most";
  std::vector<const Kept*> kinds;
  if (judged.worst == Worst::dawn || judged.worst == Worst::kinds) kinds = short_of_breath(facts, left);
  concern(finding, kinds);
  if (judged.worst == Worst::kinds) {
    rest_on(finding, facts, kinds, "water.oxygen_least_mg_l");
    double most = 0;
    for (const Kept* kept : kinds) most = std::max(most, *kept->species->water.oxygen_least_mg_l);
    finding.why += ". " + capital(names_of(kinds, 2)) + (kinds.size() == 1 ? " wants " : " want ") + mg_l(most) + ".";
  } else {
    finding.why += ". From " + mg_l(limits::oxygen_ease_mg_l) + " up all breathe at ease.";
  }
  mend(facts, nights, judged, finding);
}

Severity not_on_a_guess(const Plan& plan, Severity severity) {
  return unless_assumed(plan, unless_tank_assumed(plan, severity),
                        {"/gear/surface", "/gear/filter/flow_l_h", "/feeding/ration", "/planting", "/water/temperature_c"});
}

}  // namespace

void oxygen(const Facts& facts, Found& out) {
  const std::optional<double>&dawn = facts.air.dawn_mg_l, &water_c = facts.water.temperature_c.now;
  if (facts.stock.empty() || !dawn || !water_c) return;
  // A search over counts asks for strain and harm only: down to where harm begins dawn alone tells.
  if (!out.keeps_findings() && *dawn >= limits::oxygen_least_mg_l) {
    const double used = *facts.air.saturation_mg_l - *dawn;
    if (by_dawn(*dawn) == Severity::strain && !all_breathe_air(facts))
      out.add("oxygen", Severity::strain, "", used, [](Finding&) {});
    return;
  }
  const std::optional<Still> still = still_of(facts, *water_c);
  const std::optional<Breath> night = still ? night_at(facts, *still, *water_c) : std::nullopt;
  if (!night) return;
  Nights nights{*still, *night, {}};
  if (*dawn < limits::oxygen_heat_looked_at_mg_l) nights.heat = night_at(facts, *still, *water_c + limits::heat_wave_c);
  Judged judged = judge(facts, nights);
  if (!judged.severity) return;
  const Severity severity = not_on_a_guess(facts.plan, *judged.severity);
  out.add("oxygen", severity, "", night->saturation_mg_l - night->left_mg_l(),
          [&](Finding& finding) { tell(facts, nights, judged, finding); });
}

}  // namespace shoalwright
