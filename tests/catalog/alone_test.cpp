// SPDX-License-Identifier: MIT
// Every kind alone, in the tank that its own card asks for: nothing is wrong with it, whatever else is not known.
#include <gtest/gtest.h>

#include <array>
#include <functional>
#include <nlohmann/json.hpp>

#include "catalog/builtin.h"
#include "catalog/card_edit.h"
#include "catalog/read.h"
#include "support/dice.h"
#include "support/own_tank.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

using nlohmann::json;

int good_group(const Species& species) { return std::max(species.life.group.good, 1); }

/// What is harm or strain, in words; empty when the plan is clean. That a plan is for fresh water is said of every brackish kind.
std::string grave_in(const Plan& plan) {
  std::string words;
  for (const Finding& finding : assess_at_once(plan, the_catalog()).findings)
    if (finding.severity < Severity::watch && finding.rule != "brackish")
      words += finding.rule + ": " + finding.text + ". " + finding.why + "\n";
  return words;
}

TEST(Alone, EveryKindIsWellAsAGoodGroupInTheTankOfItsCard) {
  for (const Species& species : the_catalog().species)
    EXPECT_EQ(grave_in(own_tank(species, good_group(species))), "") << species.id;
}

TEST(Alone, ItsLeastGroupIsBearableThereToo) {
  for (const Species& species : the_catalog().species)
    EXPECT_EQ(grave_in(own_tank(species, std::max(species.life.group.least, 1))), "") << species.id;
}

// The tank is made for what it holds: the same kind in half of it is refused, so that the two tests above could fail.
TEST(Alone, InATankOfHalfTheMeasuresMostKindsAreNotWell) {
  int refused = 0, all = 0;
  for (std::size_t i = 0; i < the_catalog().species.size(); i += 4) {
    const Species& species = the_catalog().species[i];
    Plan half = own_tank(species, good_group(species));
    for (double* cm : {&half.tank.length_cm, &half.tank.width_cm, &half.tank.height_cm, &half.tank.fill_cm}) *cm /= 2;
    ++all;
    refused += grave_in(half).empty() ? 0 : 1;
  }
  EXPECT_GT(refused, all * 9 / 10);
}

/// Leaves of a card that a keeper may leave out, by their pointers.
std::vector<json::json_pointer> optional_keys(const json& card) {
  std::vector<json::json_pointer> keys;
  const std::function<void(const json&, const json::json_pointer&)> walk = [&](const json& value, const json::json_pointer& at) {
    for (const auto& [key, inside] : value.items()) {
      const json::json_pointer place = at / key;
      const std::string text = place.to_string();
      bool needed = false;
      for (const char* whole : {"/evidence", "/look", "/name", "/life/depth"}) needed = needed || text.rfind(whole, 0) == 0;
      for (const char* one : {"/id", "/size/adult_tl_cm", "/life/style", "/life/group/kind", "/life/group/least"})
        needed = needed || text == one;
      if (!needed) keys.push_back(place);
      if (inside.is_object() && text.rfind("/evidence", 0) != 0 && text.rfind("/look", 0) != 0) walk(inside, place);
    }
  };
  walk(card, json::json_pointer(""));
  return keys;
}

void leave_out(json& card, const json::json_pointer& place) {
  const std::string text = place.to_string();
  if (!card.contains(place) || text == "/size" || text == "/life" || text == "/life/group") return;  // they hold what is needed
  card[place.parent_pointer()].erase(place.back());
  // A length and its type go together.
  if (text.rfind("/size/published_max_", 0) == 0)
    for (const char* key : {"published_max_cm", "published_max_type"}) card["size"].erase(key);
}

/// The kind with such a card in the tank of its whole card.
Plan with_card(const Species& species, const json& card) {
  Plan plan = own_tank(species, good_group(species));
  const Result<Species> own = read_species(std::string_view(card.dump()));
  EXPECT_TRUE(own) << species.id << ": " << own.error().sentence;
  if (own) plan.own_species.push_back(*own);
  return plan;
}

TEST(Alone, NothingThatACardLeavesOutMakesHarmOrStrain) {
  Dice dice(517);
  int cards = 0;
  for (std::size_t i = 0; i < the_catalog().species.size(); i += plans_step) {
    const Species& species = the_catalog().species[i];
    const json whole = json::parse(dump(card_to_edit(species, builtin_cards())), nullptr, false);
    const std::vector<json::json_pointer> keys = optional_keys(whole);
    std::vector<json> asked;
    // Everything; some of it; for one kind in sixteen each key alone.
    for (const int share : {100, 60, 30, 10}) {
      asked.push_back(whole);
      for (const json::json_pointer& key : keys)
        if (dice.percent(share)) leave_out(asked.back(), key);
    }
    if (i % 16 == 0)
      for (const json::json_pointer& key : keys) leave_out(asked.emplace_back(whole), key);
    for (const json& card : asked) {
      EXPECT_EQ(grave_in(with_card(species, card)), "") << species.id << ": " << card.dump();
      ++cards;
    }
  }
  EXPECT_GT(cards, 2000 / plans_step);
}

/// What a keeper may not know of a tank.
const std::vector<std::function<void(Plan&)>>& not_known() {
  static const std::vector<std::function<void(Plan&)>> all{
      [](Plan& plan) { plan.tank.lid.reset(); },
      [](Plan& plan) { plan.place.temperature_c.reset(); },
      [](Plan& plan) { plan.source.temperature_c.reset(); },
      [](Plan& plan) { plan.source.ph.reset(); },
      [](Plan& plan) { plan.source.gh_dgh.reset(); },
      [](Plan& plan) { plan.source.kh_dkh.reset(); },
      [](Plan& plan) { plan.source.nitrate_mg_l.reset(); },
      [](Plan& plan) { plan.source.disinfectant = Disinfectant::unknown; },
      [](Plan& plan) { plan.water.reset(); },
      [](Plan& plan) { plan.gear.reset(); },
      [](Plan& plan) {
        if (plan.gear) plan.gear->heater_w.reset();
      },
      [](Plan& plan) {
        if (plan.gear) plan.gear->surface.reset();
      },
      [](Plan& plan) {
        if (plan.gear) plan.gear->filter_known = false, plan.gear->filter.reset();
      },
      [](Plan& plan) {
        if (plan.gear && plan.gear->filter) plan.gear->filter->media_l.reset();
      },
      [](Plan& plan) {
        if (plan.gear && plan.gear->filter) plan.gear->filter->flow_l_h.reset();
      },
      [](Plan& plan) { plan.feeding.reset(); },
      [](Plan& plan) { plan.planting.reset(); },
      [](Plan& plan) { plan.upkeep.reset(); },
      [](Plan& plan) { plan.running_weeks.reset(); },
  };
  return all;
}

TEST(Alone, NothingThatAPlanLeavesOutMakesHarmOrStrain) {
  Dice dice(23);
  for (std::size_t i = 0; i < the_catalog().species.size(); i += plans_step) {
    const Species& species = the_catalog().species[i];
    const Plan whole = own_tank(species, good_group(species));
    // One thing, in turn; half of all; all.
    for (const int share : {0, 50, 100}) {
      Plan plan = whole;
      for (std::size_t k = 0; k < not_known().size(); ++k)
        if (share == 0 ? k == i % not_known().size() : dice.percent(share)) not_known()[k](plan);
      EXPECT_EQ(grave_in(plan), "") << species.id << ", " << share;
    }
  }
}

}  // namespace
}  // namespace shoalwright
