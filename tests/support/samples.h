// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "catalog/species.h"
#include "plan/plan.h"

namespace shoalwright {

// Small plans and made-up species for tests: every value that a test does not set is an ordinary one. No real kind is meant.

/// A box of those inside measures in 6 mm glass, filled to `fill_cm`; bare, unplanted, fed normally, changed 30 % a week.
inline Plan box_plan(double length_cm, double width_cm, double height_cm, double fill_cm) {
  Plan plan;
  plan.tank.length_cm = length_cm;
  plan.tank.width_cm = width_cm;
  plan.tank.height_cm = height_cm;
  plan.tank.fill_cm = fill_cm;
  plan.tank.glass_mm = 6;
  plan.tank.lid = true;
  plan.source.nitrate_mg_l = 10;
  plan.feeding = Feeding{};
  plan.planting = Planting::none;
  plan.upkeep = Upkeep{.change_fraction = 0.3, .every_days = 7, .other_keys = ""};
  WaterAim aim;
  aim.temperature_c = 25;
  plan.water = aim;
  return plan;
}

inline Species sample_species(const std::string& id, Style style, double adult_tl_cm, Body body = Body::fusiform) {
  Species s;
  s.id = id;
  s.name.scientific = id;
  s.size.adult_tl_cm = adult_tl_cm;
  s.size.body = body;
  s.life.style = style;
  s.water.temperature_c = {.tolerated = Range{22, 28}, .ideal = Range{24, 26}};
  s.water.ph = {.tolerated = Range{6, 8}, .ideal = Range{6.5, 7.5}};
  s.water.gh_dgh = {.tolerated = Range{2, 15}, .ideal = Range{4, 10}};
  s.water.kh_dkh = {.tolerated = Range{0, 10}, .ideal = Range{1, 6}};
  return s;
}

/// Adds `count` of a species to a plan, its card among the keeper's own.
inline void add(Plan& plan, const Species& species, int count) {
  plan.own_species.push_back(species);
  Group group;
  group.species = species.id;
  group.count = count;
  plan.stock.push_back(group);
}

}  // namespace shoalwright
