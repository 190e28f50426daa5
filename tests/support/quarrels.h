// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "support/builders.h"
#include "support/plan_files.h"

namespace shoalwright {

/// Companies that go wrong in every way that the rules about company know, which random stocks seldom have: sexes given, law of a
/// region, look-alikes, crosses.
inline std::vector<NamedPlan> quarrels() {
  PlanBuilder small = a_plan().tank(78.8, 33.8, 39.4).tap(7.4, 12, 7).planted(Planting::light);
  small.kind("poecilia-reticulata", 6, 0).sexes(3, 3);
  small.kind("poecilia-wingei", 6, 6).sexes(2, 4);
  small.kind("trichogaster-lalius", 2, 0).sexes(2, 0);
  small.kind("trichogaster-chuna", 2, 0).sexes(1, 1);
  small.kind("betta-splendens", 2, 0).sexes(1, 1);
  PlanBuilder fighters = a_plan().tank(59, 29, 29.5);
  fighters.kind("betta-splendens", 2, 1).sexes(2, 0);
  PlanBuilder sisters = a_plan().tank(59, 29, 29.5);
  sisters.kind("betta-splendens", 4, 0).sexes(0, 4);
  PlanBuilder one_livebearer = a_plan().tank(98.4, 38.4, 44.2).tap(7.6, 14, 8);
  one_livebearer.kind("xiphophorus-maculatus", 7, 0).sexes(3, 4);
  PlanBuilder hunters = a_plan().tank(118, 48, 49).planted(Planting::medium).piece("stem-plants", 2).piece("carpet-plants");
  hunters.kind("pterophyllum-scalare", 4)
      .kind("paracheirodon-innesi", 12, 12)
      .kind("neocaridina-davidi", 12)
      .kind("hoplisoma-panda", 6);
  hunters.kind("puntigrus-tetrazona", 6).kind("vittina-natalensis", 3).kind("gyrinocheilus-aymonieri", 1);
  Plan law = hunters;
  law.place.region = "AT";
  law.stock.push_back({.species = "procambarus-clarkii", .count = 1, .note = "", .other_keys = ""});
  law.stock.push_back({.species = "xenopus-laevis", .count = 2, .have = 2, .note = "", .other_keys = ""});
  PlanBuilder lake = a_plan().tank(118, 48, 49).tap(8, 14, 9);
  lake.kind("maylandia-zebra", 6)
      .kind("maylandia-lombardoi", 6)
      .kind("melanochromis-auratus", 6)
      .kind("aulonocara-stuartgranti", 6);
  PlanBuilder cubes = a_plan().tank(59, 29, 29.5).tap(7, 6, 4);
  cubes.kind("pelvicachromis-pulcher", 2).kind("mikrogeophagus-ramirezi", 2).kind("hyphessobrycon-amandae", 10);
  return {{"quarrels, sexes", small},     {"quarrels, fighters", fighters},
          {"quarrels, sisters", sisters}, {"quarrels, young", one_livebearer},
          {"quarrels, law", law},         {"quarrels, hunters", hunters},
          {"quarrels, lake", lake},       {"quarrels, floor", cubes}};
}

}  // namespace shoalwright
