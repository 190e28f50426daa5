// SPDX-License-Identifier: MIT
// Every value of an assessment follows from an input: each is seen to move when that input is changed, and nothing is null where
// all is given.
#include <gtest/gtest.h>

#include <functional>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "share/assessment_json.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

using Json = nlohmann::json;

/// The demo without pins, three findings in it: too few catfish, no lid, chlorine in the tap.
Plan base() {
  Plan plan;
  for (const NamedPlan& named : all_plans())
    if (named.name == "riverbank" || named.name == "riverbank.json") plan = named.plan;
  plan.fixed.clear();
  plan.stock[1].count = 4;
  plan.tank.lid = false;
  plan.gear->heater_w = 200;  // as an open tank wants
  return plan;
}

/// Margins by their name, so that a change of order moves nothing.
Json shown(const Plan& plan) {
  Json json = Json::parse(assessment_json(assess_at_once(plan, the_catalog())), nullptr, false);
  Json by_name = Json::object();
  for (const Json& margin : json["tightest"]) by_name[margin["margin"].get<std::string>()] = margin;
  json["tightest"] = by_name;
  return json;
}

const std::map<std::string, std::function<void(Plan&)>>& changes() {
  static const std::map<std::string, std::function<void(Plan&)>> all = {
      {"larger tank",
       [](Plan& plan) {
         plan.tank.length_cm += 30;
         plan.tank.width_cm += 10;
         plan.tank.height_cm += 10;
         plan.tank.fill_cm += 9;
         plan.substrate.front_cm += 2;
       }},
      {"a stone across the tank",
       [](Plan& plan) {
         plan.pieces.push_back({.kind = "block",
                                .x_cm = plan.tank.length_cm / 2,
                                .z_cm = plan.tank.width_cm / 2,
                                .length_cm = 20,
                                .depth_cm = plan.tank.width_cm,
                                .height_cm = plan.tank.height_cm});
       }},
      {"small tank", [](Plan& plan) { plan.tank.length_cm = plan.tank.width_cm = 25; }},
      {"other animals",
       [](Plan& plan) {
         plan.stock.resize(1);
         plan.stock[0].species = "xiphophorus-maculatus";
       }},
      {"other order", [](Plan& plan) { std::reverse(plan.stock.begin(), plan.stock.end()); }},
      {"fish of swift streams", [](Plan& plan) { plan.stock[0].species = "chromobotia-macracanthus"; }},
      {"twice as many",
       [](Plan& plan) {
         for (Group& group : plan.stock) group.count *= 2;
       }},
      {"other water",
       [](Plan& plan) {
         *plan.water->temperature_c += 1;
         *plan.water->ph += 0.3;
         *plan.water->gh_dgh += 1;
         *plan.water->kh_dkh += 0.5;
       }},
      {"hardly any CO2", [](Plan& plan) { plan.limits.co2_mg_l = 0.0001; }},
      {"ammonia in the water", [](Plan& plan) { plan.measured->ammonia_mg_l = 0.5; }},
      {"more food", [](Plan& plan) { plan.feeding->ration = Ration::heavy; }},
      {"no disinfectant", [](Plan& plan) { plan.source.disinfectant = Disinfectant::none; }},
      {"fewer catfish still", [](Plan& plan) { plan.stock[1].count = 3; }},
      {"lenient, five catfish",
       [](Plan& plan) {
         plan.stock[1].count = 5;
         plan.strictness = Strictness::lenient;
       }},
      {"neon tetras instead", [](Plan& plan) { plan.stock[1].species = "paracheirodon-innesi"; }},
      {"pinned",
       [](Plan& plan) {
         plan.fixed = {"/stock/1/count", "/tank/lid"};
       }},
      {"catfish enough", [](Plan& plan) { plan.stock[1].count = 8; }},
      {"catfish enough, no disinfectant",
       [](Plan& plan) {
         plan.stock[1].count = 8;
         plan.source.disinfectant = Disinfectant::none;
       }},
  };
  return all;
}

struct Moves {
  const char* pattern;  ///< JSON Pointer; * stands for one step
  std::vector<const char*> by;
};

const std::vector<Moves>& table() {
  static const std::vector<Moves> all = {
      {"/volume/*", {"larger tank", "a stone across the tank"}},
      {"/water/*/tolerated/*", {"other animals"}},
      {"/water/*/ideal/*", {"other animals"}},
      {"/water/*/now", {"other water"}},
      {"/water/*/margin", {"other water"}},
      {"/water/*/low_by", {"other animals"}},
      {"/water/*/high_by", {"other animals"}},
      {"/water/reachable", {"hardly any CO2"}},
      {"/water/co2_mg_l", {"other water"}},
      {"/room/open_l", {"larger tank"}},
      {"/room/floor_cm2", {"larger tank"}},
      {"/room/floor_crowding", {"twice as many"}},
      {"/room/layers/*/from_cm", {"larger tank"}},
      {"/room/layers/*/to_cm", {"larger tank"}},
      {"/room/layers/*/open_l", {"larger tank"}},
      {"/room/layers/*/lane_cm", {"larger tank"}},
      {"/room/layers/*/crowding", {"twice as many"}},
      {"/room/groups/*/species", {"other order"}},
      {"/room/groups/*/open_l", {"larger tank"}},
      {"/room/groups/*/lane_cm", {"larger tank"}},
      {"/room/groups/*/lane_needed_cm", {"other order"}},
      {"/room/groups/*/crowding", {"twice as many"}},
      {"/room/groups/*/largest_count", {"larger tank"}},
      {"/room/groups/*/stopped_by", {"small tank"}},
      {"/load/feed_g_d", {"more food"}},
      {"/load/tan_mg_d", {"more food"}},
      {"/load/nitrate_peak_mg_l", {"more food"}},
      {"/load/nitrate_trough_mg_l", {"more food"}},
      {"/load/change_needed_fraction", {"more food"}},
      {"/load/kh_drift_dkh_week", {"more food"}},
      {"/load/media_needed_l", {"more food"}},
      {"/load/ammonia_nh3_mg_l", {"ammonia in the water"}},
      {"/air/*", {"other water", "fish of swift streams"}},
      {"/heat/*", {"other water"}},
      {"/findings/*/rule", {"catfish enough"}},
      {"/findings/*/severity", {"lenient, five catfish", "catfish enough"}},
      {"/findings/*/species/*", {"catfish enough", "other animals"}},
      {"/findings/*/text", {"fewer catfish still", "other animals"}},
      {"/findings/*/why", {"fewer catfish still", "other animals"}},
      {"/findings/*/remedy", {"pinned", "catfish enough"}},
      {"/findings/*/edits/*/*", {"pinned", "other order"}},
      {"/findings/*/evidence", {"neon tetras instead", "catfish enough, no disinfectant"}},
      {"/findings/*/source", {"neon tetras instead", "catfish enough, no disinfectant"}},
      {"/tightest/temperature_c/value", {"other water"}},
      {"/tightest/ph/value", {"other water"}},
      {"/tightest/gh_dgh/value", {"other water"}},
      {"/tightest/kh_dkh/value", {"other water"}},
      {"/tightest/lane_cm/value", {"larger tank"}},
      {"/tightest/crowding_l_cm/value", {"twice as many"}},
      {"/tightest/floor_cm2/value", {"twice as many"}},
      {"/tightest/nitrate_mg_l/value", {"more food"}},
      {"/tightest/dawn_mg_l/value", {"more food"}},
      {"/tightest/ammonia_nh3_mg_l/value", {"ammonia in the water"}},
      {"/tightest/*/animals", {"twice as many"}},
      {"/tightest/*/set_by/*", {"other animals"}},
      {"/cautions/*", {"larger tank", "no disinfectant"}},
  };
  return all;
}

/// Said alike of every plan.
bool is_constant(const std::string& pointer) {
  static const std::set<std::string> all = {"/room/layers/0/name", "/room/layers/1/name", "/room/layers/2/name",
                                            "/room/layers/0/from_cm"};  // the water line
  const auto ends = [&](const char* end) {
    return pointer.size() > std::string(end).size() && pointer.rfind(end) == pointer.size() - std::string(end).size();
  };
  return all.count(pointer) || ((ends("/unit") || ends("/margin")) && pointer.rfind("/tightest/", 0) == 0);
}

bool matches(const std::string& pointer, const std::string& pattern) {
  std::size_t i = 0, k = 0;
  while (i < pointer.size() && k < pattern.size()) {
    if (pattern[k] == '*') {
      while (i < pointer.size() && pointer[i] != '/') ++i;
      ++k;
    } else if (pointer[i++] != pattern[k++]) {
      return false;
    }
  }
  return i == pointer.size() && k == pattern.size();
}

/// Values that are neither lists nor objects, by pointer.
std::map<std::string, Json> leaves(const Json& json) {
  std::map<std::string, Json> all;
  const Json flat = json.flatten();
  for (const auto& [pointer, value] : flat.items())
    if (!value.is_null() || json[Json::json_pointer(pointer)].is_null()) all[pointer] = json[Json::json_pointer(pointer)];
  return all;
}

TEST(Fields, EachMovesWithItsInput) {
  const std::map<std::string, Json> before = leaves(shown(base()));
  std::map<std::string, std::map<std::string, Json>> after;
  for (const auto& [name, change] : changes()) {
    Plan plan = base();
    change(plan);
    after[name] = leaves(shown(plan));
  }
  std::set<std::string> constant_cautions;
  int moved = 0;
  for (const auto& [pointer, value] : before) {
    if (value.is_null() || is_constant(pointer)) continue;
    const auto row =
        std::find_if(table().begin(), table().end(), [&, p = pointer](const Moves& one) { return matches(p, one.pattern); });
    ASSERT_NE(row, table().end()) << pointer << " is not in the table of what moves it";
    bool moves = false;
    for (const char* name : row->by) {
      const auto there = after.at(name).find(pointer);
      moves = moves || there == after.at(name).end() || there->second != value;
    }
    if (pointer.rfind("/cautions/", 0) == 0 && !moves) {
      constant_cautions.insert(pointer);
      continue;
    }
    EXPECT_TRUE(moves) << pointer << " = " << value << " stays whatever is changed";
    ++moved;
  }
  EXPECT_GT(moved, 100);
  EXPECT_LT(constant_cautions.size(), leaves(shown(base())["cautions"]).size()) << "some caution follows from the plan";
}

TEST(Fields, NothingThatIsGivenLeavesAHole) {
  for (const auto& [pointer, value] : leaves(shown(base()))) {
    if (!value.is_null()) continue;
    EXPECT_TRUE(pointer.rfind("/tightest/", 0) == 0 && pointer.rfind("/animals") == pointer.size() - 8) << pointer;
  }
}

TEST(Fields, NoNumberIsEverNotANumber) {
  for (const NamedPlan& named : many_plans()) {
    const Json json = Json::parse(assessment_json(assess_at_once(named.plan, the_catalog())), nullptr, false);
    EXPECT_FALSE(json.is_discarded()) << named.name << ": a NaN or an infinity is no JSON";
  }
}

}  // namespace
}  // namespace shoalwright
