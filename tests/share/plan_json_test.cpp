// SPDX-License-Identifier: MIT
#include "share/plan_json.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "plan/check.h"
#include "support/json_walk.h"
#include "support/plan_files.h"
#include "support/random_plan.h"

namespace shoalwright {
namespace {

using nlohmann::json;

/// Every key that FORMATS knows, each away from its default.
const json& full() {
  static const json whole = json::parse(R"({
  "format": "shoalwright-plan", "version": 1, "name": "A", "notes": "n", "start": "2026-12-05",
  "tank": { "shape": "rectangular", "length_cm": 88.4, "width_cm": 43.4, "height_cm": 44.2, "glass_mm": 9, "fill_cm": 40, "lid": true },
  "place": { "temperature_c": 21, "region": "AT" },
  "source": { "temperature_c": 14, "ph": 7.6, "gh_dgh": 13, "kh_dkh": 8, "nitrate_mg_l": 10, "disinfectant": "chlorine" },
  "water": { "temperature_c": 25, "ph": 6.8, "gh_dgh": 7, "kh_dkh": 3.2 },
  "measured": { "date": "2026-11-20", "temperature_c": 24.5, "ph": 7.1, "gh_dgh": 8, "kh_dkh": 4, "nitrate_mg_l": 18, "ammonia_mg_l": 0.1,
                "nitrite_mg_l": 0.2 },
  "limits": { "nitrate_mg_l": 40, "co2_mg_l": 25 },
  "salts": ["calcium-sulphate-dihydrate"], "ca_mg_ratio": 4,
  "substrate": { "kind": "fine-sand", "front_cm": 3, "back_cm": 7 },
  "pieces": [ { "kind": "branch", "x_cm": 20, "z_cm": 15, "base_cm": 1, "length_cm": 40, "depth_cm": 12, "height_cm": 25, "turn_deg": 30,
                "mirror": true } ],
  "stock": [ { "species": "danio-rerio", "count": 10, "have": 6, "males": 3, "females": 4, "since_weeks": 12, "arrives_week": 3,
               "note": "g" } ],
  "gear": { "filter": { "kind": "internal", "flow_l_h": 600, "media_l": 2.5 }, "heater_w": 150, "surface": "gentle" },
  "feeding": { "ration": "light", "fasting_days": 1 },
  "planting": "medium",
  "upkeep": { "change_fraction": 0.25, "every_days": 9 },
  "running_weeks": 12, "strictness": "strict",
  "assumed": ["/source/nitrate_mg_l"], "fixed": ["/tank"],
  "seen": [ { "rule": "lid", "species": ["danio-rerio"], "note": "s" } ],
  "own_values": [ { "path": "/species/danio-rerio/life/group/least", "value": 6, "note": "o" } ],
  "own_species": [ { "id": "own--snail", "name": { "common": [{ "text": "snail", "lang": "en" }] }, "size": { "adult_tl_cm": 2 },
    "life": { "style": "invertebrate", "depth": { "surface": 0.2, "mid": 0.3, "bottom": 0.5 }, "group": { "kind": "loose", "least": 1 } } } ],
  "breeding": [ { "species": "danio-rerio", "day0": "2027-03-06" } ],
  "log": [ { "date": "2026-11-20", "nitrate_mg_l": 18 } ],
  "sheet": ["first", "second"] })");
  return whole;
}

json small() {
  return json::parse(
      R"({"format":"shoalwright-plan","version":1,"tank":{"shape":"rectangular","length_cm":60,"width_cm":30,"height_cm":30}})");
}

Result<Plan> read(const json& plan) { return read_plan(plan.dump()); }
json canonical(const json& plan) {
  const Result<Plan> result = read(plan);
  EXPECT_TRUE(result) << (result ? "" : result.error().sentence);
  return result ? json::parse(plan_json(*result)) : json();
}

bool is_one_sentence(const std::string& text) {
  return !text.empty() && text.back() == '.' && text.find('\n') == std::string::npos && text[0] >= 'A' && text[0] <= 'Z';
}

/// A plan that breaks something at `pointer` is refused there.
void expect_refused_at(const json& plan, const std::string& pointer) {
  const Result<Plan> result = read(plan);
  ASSERT_FALSE(result) << "taken although wrong at " << pointer;
  EXPECT_EQ(result.error().place, pointer) << result.error().sentence;
  EXPECT_NE(result.error().sentence.find("xpected"), std::string::npos) << result.error().sentence;
  EXPECT_NE(result.error().sentence.find(pointer), std::string::npos) << result.error().sentence;
  EXPECT_TRUE(is_one_sentence(result.error().sentence)) << result.error().sentence;
}

TEST(PlanText, EveryKeyIsReadAndWrittenBack) {
  const json written = canonical(full());
  for (const std::string& pointer : leaves_of(full())) EXPECT_EQ(at(written, pointer), at(full(), pointer)) << pointer;
}

TEST(PlanText, EveryValueIsTheReadersAndNotADefault) {
  // Each leaf replaced by another valid value comes back as that value, and only there.
  const std::vector<json> others = {"lenient",    "heavy",   "dense",      "still",   "coarse-sand",
                                    "chloramine", "another", "2027-01-02", "/upkeep", "/species/danio-rerio/size/adult_tl_cm",
                                    "own--b"};
  for (const std::string& pointer : leaves_of(full())) {
    if (pointer == "/format" || pointer == "/version" || pointer == "/tank/shape" || pointer.rfind("/own_species", 0) == 0)
      continue;
    const json& value = at(full(), pointer);
    std::vector<json> candidates = others;
    if (value.is_boolean()) candidates = {!value.get<bool>()};
    if (value.is_number()) candidates = {value.get<double>() + 1, value.get<double>() - 1, value.get<double>() / 2};
    bool taken = false;
    for (std::size_t i = 0; i < candidates.size() && !taken; ++i) {
      const Result<Plan> plan = read(with(full(), pointer, candidates[i]));
      if (!plan) continue;
      taken = true;
      EXPECT_EQ(json::parse(plan_json(*plan)), with(canonical(full()), pointer, candidates[i])) << pointer;
    }
    EXPECT_TRUE(taken) << pointer;
  }
}

TEST(PlanText, KeysStandInTheOrderOfTheFormat) {
  const std::string text = plan_json(read(full()).value());
  std::size_t last = 0;
  for (const char* key : {"format", "version",    "name",        "notes",    "start",         "tank",       "place",   "source",
                          "water",  "measured",   "limits",      "salts",    "ca_mg_ratio",   "substrate",  "pieces",  "stock",
                          "gear",   "feeding",    "planting",    "upkeep",   "running_weeks", "strictness", "assumed", "fixed",
                          "seen",   "own_values", "own_species", "breeding", "log",           "sheet"}) {
    const std::size_t found = text.find(std::string("\"") + key + "\":", last);
    ASSERT_NE(found, std::string::npos) << key;
    last = found;
  }
}

TEST(CanonicalForm, OfACanonicalFormIsItself) {
  for (const NamedPlan& named : all_plans()) {
    const std::string once = plan_json(named.plan);
    const Result<Plan> again = read_plan(once);
    ASSERT_TRUE(again) << named.name;
    EXPECT_EQ(*again, named.plan) << named.name;
    EXPECT_EQ(plan_json(*again), once) << named.name;
  }
}

TEST(CanonicalForm, ReadsBackAsTheSamePlan) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    const Plan plan = random_plan(seed, the_catalog(), {.log = true});
    const Result<Plan> again = read_plan(plan_json(plan));
    ASSERT_TRUE(again) << seed << ": " << again.error().sentence;
    EXPECT_EQ(*again, plan) << seed;
  }
}

TEST(CanonicalForm, IsEqualForEqualPlansHoweverTheyWereWritten) {
  // nlohmann sorts keys; the text below has them in another order, more space, and numbers written differently.
  const std::string other = R"( {"tank":{"height_cm":3e1,"width_cm":30.0,"length_cm":0.6E2,"shape":"rectangular"},
                                  "version":1.0, "assumed":["/upkeep","/place/temperature_c"], "format":"shoalwright-plan"} )";
  const Result<Plan> a = read(small()), b = read_plan(other);
  ASSERT_TRUE(a);
  ASSERT_TRUE(b);
  EXPECT_EQ(*a, *b);
  EXPECT_EQ(plan_json(*a), plan_json(*b));
}

TEST(CanonicalForm, DiffersWhenPlansDiffer) {
  std::vector<std::string> texts;
  for (std::uint64_t seed = 0; seed < 200; ++seed) texts.push_back(plan_json(random_plan(seed, the_catalog())));
  std::sort(texts.begin(), texts.end());
  EXPECT_EQ(std::adjacent_find(texts.begin(), texts.end()), texts.end());
}

TEST(UnknownKeys, AreKeptAtEveryLevel) {
  const json tomorrow = json::parse(R"({"a/b~":[1.5,null,"Zoë"],"n":-3e-7})");
  for (const char* parent :
       {"", "/tank", "/place", "/source", "/water", "/measured", "/limits", "/substrate", "/pieces/0", "/stock/0", "/gear",
        "/gear/filter", "/feeding", "/upkeep", "/seen/0", "/own_values/0", "/own_species/0", "/breeding/0", "/log/0"}) {
    const std::string pointer = std::string(parent) + "/tomorrow";
    EXPECT_EQ(at(canonical(with(full(), pointer, tomorrow)), pointer), tomorrow) << pointer;
  }
}

TEST(UnknownKeys, KeepTheirNumbersToTheLastLetter) {
  json plan = small();
  plan["x"] = 0;
  std::string text = plan.dump();
  text.replace(text.find("\"x\":0"), 5, "\"x\":[2.50,1e2,123456789012345678901234567890]");
  EXPECT_NE(plan_json(read_plan(text).value()).find("[2.50,1e2,123456789012345678901234567890]"), std::string::npos);
}

TEST(WrongType, IsNamedByItsPointer) {
  for (const std::string& pointer : leaves_of(full())) {
    if (pointer.rfind("/own_species", 0) == 0 || pointer.rfind("/breeding", 0) == 0 || pointer.rfind("/log", 0) == 0) continue;
    if (pointer == "/own_values/0/value") continue;  // any JSON is a value
    std::vector<json> wrong = {json::array({1}), json::object({{"a", 1}})};
    const json& value = at(full(), pointer);
    if (!value.is_string()) wrong.push_back("a text");
    if (!value.is_number()) wrong.push_back(7);
    if (!value.is_boolean()) wrong.push_back(true);
    for (const json& other : wrong) expect_refused_at(with(full(), pointer, other), pointer);
  }
  for (const char* pointer :
       {"/tank", "/place", "/source", "/water", "/measured", "/limits", "/substrate", "/pieces/0", "/stock/0", "/gear",
        "/gear/filter", "/feeding", "/upkeep", "/seen/0", "/own_values/0", "/own_species/0"})
    for (const json& other : {json("a text"), json(7), json(true), json::array()})
      expect_refused_at(with(full(), pointer, other), pointer);
  for (const char* pointer : {"/salts", "/pieces", "/stock", "/assumed", "/fixed", "/seen", "/own_values", "/own_species",
                              "/breeding", "/log", "/sheet", "/seen/0/species"})
    for (const json& other : {json("a text"), json(7), json(true), json::object()})
      expect_refused_at(with(full(), pointer, other), pointer);
}

TEST(ImpossibleNumber, IsNamedByItsPointer) {
  const std::vector<std::pair<const char*, std::vector<double>>> rows = {
      {"/tank/length_cm", {0, -1, 1e9}},
      {"/tank/width_cm", {0, -1}},
      {"/tank/height_cm", {0, -3}},
      {"/tank/glass_mm", {0, -1, 1e4}},
      {"/tank/fill_cm", {0, -1, 44.3}},
      {"/place/temperature_c", {-300, 100}},
      {"/source/temperature_c", {-1, 101}},
      {"/source/ph", {-0.1, 14.1}},
      {"/source/gh_dgh", {-1, 1e6}},
      {"/source/kh_dkh", {-1, 1e6}},
      {"/source/nitrate_mg_l", {-1, 1e9}},
      {"/water/temperature_c", {-5, 120}},
      {"/water/ph", {-1, 15}},
      {"/water/gh_dgh", {-1}},
      {"/water/kh_dkh", {-1}},
      {"/measured/ph", {-1, 15}},
      {"/measured/ammonia_mg_l", {-1}},
      {"/measured/nitrite_mg_l", {-1}},
      {"/measured/nitrate_mg_l", {-1}},
      {"/measured/temperature_c", {-1}},
      {"/measured/gh_dgh", {-1}},
      {"/measured/kh_dkh", {-1}},
      {"/limits/nitrate_mg_l", {-1}},
      {"/limits/co2_mg_l", {-1}},
      {"/ca_mg_ratio", {0, -2}},
      {"/substrate/front_cm", {-1, 45}},
      {"/substrate/back_cm", {-1, 45}},
      {"/pieces/0/x_cm", {1e9}},
      {"/pieces/0/z_cm", {-1e9}},
      {"/pieces/0/base_cm", {1e9}},
      {"/pieces/0/length_cm", {0, -1}},
      {"/pieces/0/depth_cm", {0, -1}},
      {"/pieces/0/height_cm", {0, -1}},
      {"/pieces/0/turn_deg", {361, -1e9}},
      {"/stock/0/count", {-1, 2.5, 100001, 4294967295.0, 5}},
      {"/stock/0/have", {-1, 11, 0.5}},
      {"/stock/0/males", {-1, 11, 1.5}},
      {"/stock/0/females", {-1, 8}},
      {"/stock/0/since_weeks", {-1, 0.5, 1e9}},
      {"/stock/0/arrives_week", {-1, 1e9}},
      {"/gear/heater_w", {-1}},
      {"/gear/filter/flow_l_h", {-1}},
      {"/gear/filter/media_l", {-1}},
      {"/feeding/fasting_days", {-1, 7, 0.5}},
      {"/upkeep/change_fraction", {-0.1, 1.1}},
      {"/upkeep/every_days", {0, -1}},
      {"/running_weeks", {-1, 1e9}},
      {"/version", {0, 2, 1.5}},
  };
  for (const auto& [pointer, values] : rows)
    for (const double value : values) {
      const bool of_have = std::string(pointer) == "/stock/0/count" && value == 5;  // fewer than swim already: said of `have`
      expect_refused_at(with(full(), pointer, value), of_have ? "/stock/0/have" : pointer);
    }
}

TEST(ImpossibleText, IsNamedByItsPointer) {
  for (const auto& [pointer, value] : std::vector<std::pair<const char*, json>>{{"/format", "another-plan"},
                                                                                {"/start", "2026-02-30"},
                                                                                {"/start", "tomorrow"},
                                                                                {"/measured/date", "20.11.2026"},
                                                                                {"/tank/shape", "sphere"},
                                                                                {"/substrate/kind", "lava"},
                                                                                {"/planting", "wild"},
                                                                                {"/strictness", "harsh"},
                                                                                {"/gear/surface", "wavy"},
                                                                                {"/feeding/ration", "huge"},
                                                                                {"/source/disinfectant", "ozone"},
                                                                                {"/fixed/0", "tank"},
                                                                                {"/assumed/0", "source/ph"},
                                                                                {"/own_values/0/path", "/tank/lid"},
                                                                                {"/pieces/0/kind", ""},
                                                                                {"/stock/0/species", ""},
                                                                                {"/seen/0/rule", ""},
                                                                                {"/stock/0/species", std::string(501, 'x')}})
    expect_refused_at(with(full(), pointer, value), pointer);
}

TEST(WhatIsMissing, IsNamedByItsPointer) {
  for (const char* pointer :
       {"/format", "/version", "/tank", "/tank/shape", "/tank/length_cm", "/tank/width_cm", "/tank/height_cm", "/pieces/0/kind",
        "/stock/0/species", "/stock/0/count", "/seen/0/rule", "/own_values/0/path", "/own_values/0/value", "/substrate/kind"}) {
    json plan = full();
    const std::string text = pointer;
    const std::size_t slash = text.rfind('/');
    plan[json::json_pointer(text.substr(0, slash))].erase(text.substr(slash + 1));
    if (text == "/tank/shape") {
      EXPECT_TRUE(read(plan));  // a box is the usual shape
      continue;
    }
    expect_refused_at(plan, pointer);
  }
}

TEST(Null, IsNotKnownAndAbsentIsAssumed) {
  for (const char* pointer : {"/tank/lid", "/place/temperature_c", "/feeding", "/planting", "/upkeep", "/running_weeks"}) {
    json plan = small();
    const Result<Plan> absent = read(plan);
    plan[json::json_pointer(pointer)] = nullptr;
    const Result<Plan> null = read(plan);
    ASSERT_TRUE(absent);
    ASSERT_TRUE(null);
    EXPECT_TRUE(at(json::parse(plan_json(*null)), pointer).is_null()) << pointer;
    EXPECT_FALSE(at(json::parse(plan_json(*absent)), pointer).is_null()) << pointer;
    EXPECT_TRUE(is_assumed(*absent, pointer)) << pointer;
    EXPECT_FALSE(is_assumed(*null, pointer)) << pointer;
  }
  for (const char* pointer : {"/water", "/measured", "/gear", "/gear/heater_w", "/gear/surface", "/source/ph",
                              "/source/temperature_c", "/water/ph", "/measured/ph", "/limits/nitrate_mg_l", "/pieces/0/x_cm",
                              "/stock/0/males", "/stock/0/since_weeks", "/gear/filter/flow_l_h", "/ca_mg_ratio"})
    EXPECT_TRUE(at(canonical(with(full(), pointer, nullptr)), pointer).is_null()) << pointer;
  EXPECT_EQ(read(with(full(), "/source/disinfectant", nullptr))->source.disinfectant, Disinfectant::unknown);
}

TEST(Null, OfTheFilterIsNoFilterAndAbsentIsUnknown) {
  json plan = full();
  plan["gear"]["filter"] = nullptr;
  EXPECT_TRUE(read(plan)->gear->filter_known);
  EXPECT_FALSE(read(plan)->gear->filter);
  EXPECT_TRUE(canonical(plan)["gear"].contains("filter"));
  plan["gear"].erase("filter");
  EXPECT_FALSE(read(plan)->gear->filter_known);
  EXPECT_FALSE(canonical(plan)["gear"].contains("filter"));
}

TEST(Defaults, AreListedAsAssumed) {
  const std::vector<std::string> expected = {"/feeding",      "/place/temperature_c", "/planting", "/running_weeks", "/substrate",
                                             "/tank/fill_cm", "/tank/glass_mm",       "/tank/lid", "/upkeep"};
  const Result<Plan> plan = read(small());
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->assumed, expected);
  EXPECT_EQ(plan->tank.fill_cm, 27.5);
  EXPECT_EQ(plan->place.temperature_c, 20);
  EXPECT_EQ(plan->upkeep->change_fraction, 0.3);
  EXPECT_EQ(plan->upkeep->every_days, 7);
  EXPECT_EQ(plan->planting, Planting::none);
  EXPECT_EQ(plan->running_weeks, 0);
  EXPECT_EQ(plan->ca_mg_ratio, 3);
  EXPECT_FALSE(plan->gear);
  EXPECT_FALSE(plan->water);
}

TEST(Defaults, InsideAPartAreListedOneByOne) {
  json plan = small();
  plan["upkeep"]["every_days"] = 10;
  plan["feeding"]["ration"] = "light";
  plan["pieces"] = json::array({{{"kind", "block"}, {"length_cm", 5}}});
  const Result<Plan> read_back = read(plan);
  ASSERT_TRUE(read_back);
  for (const char* pointer : {"/upkeep/change_fraction", "/feeding/fasting_days", "/pieces/0/depth_cm", "/pieces/0/height_cm"})
    EXPECT_TRUE(is_assumed(*read_back, pointer)) << pointer;
  for (const char* pointer : {"/upkeep/every_days", "/feeding/ration", "/pieces/0/length_cm"})
    EXPECT_FALSE(is_assumed(*read_back, pointer)) << pointer;
}

TEST(Limits, AThousandGroupsAndNotOneMore) {
  json plan = small();
  for (int i = 0; i < most_groups; ++i) plan["stock"].push_back({{"species", "k" + std::to_string(i)}, {"count", most_count}});
  EXPECT_TRUE(read(plan));
  plan["stock"].push_back({{"species", "one more"}, {"count", 1}});
  expect_refused_at(plan, "/stock");
}

TEST(Limits, TenThousandPiecesAndNotOneMore) {
  json plan = small();
  for (int i = 0; i < most_pieces; ++i) plan["pieces"].push_back({{"kind", "floating-plants"}});
  const Result<Plan> most = read(plan);
  ASSERT_TRUE(most) << most.error().sentence;
  EXPECT_TRUE(read_plan(plan_json(*most)));
  plan["pieces"].push_back({{"kind", "stone"}});
  expect_refused_at(plan, "/pieces");
}

TEST(Limits, SixtyFourKibibytesOfTextWhereverItStands) {
  json plan = small();
  plan["notes"] = std::string(most_text - 10, 'a');
  plan["name"] = "0123456789";
  EXPECT_TRUE(read(plan));
  plan["name"] = "0123456789a";
  const Result<Plan> result = read(plan);
  ASSERT_FALSE(result);
  EXPECT_NE(result.error().sentence.find("64 KiB"), std::string::npos);
  plan["name"] = "";
  plan["tomorrow"] = std::string(1000, 'b');
  EXPECT_FALSE(read(plan));
}

TEST(PlanText, ThatIsNoPlanIsRefusedByOneSentence) {
  for (const char* text : {"",
                           " ",
                           "{",
                           "null",
                           "[]",
                           "7",
                           "\"plan\"",
                           "{}",
                           "{\"format\":1}",
                           "not json",
                           "{\"format\":\"shoalwright-plan\"}",
                           "{\"format\":\"shoalwright-plan\",\"version\":1,\"tank\":null}",
                           "\xff\xfe",
                           "{\"a\":\"\xc3\"}",
                           "{\"a\":1e999}",
                           "{\"a\":1,}",
                           "{'a':1}",
                           "{\"a\":NaN}",
                           "{\"a\":1}{\"b\":2}",
                           "/* c */{}"}) {
    const Result<Plan> plan = read_plan(text);
    ASSERT_FALSE(plan) << text;
    EXPECT_TRUE(is_one_sentence(plan.error().sentence)) << text << ": " << plan.error().sentence;
  }
}

TEST(PlanText, WithAKeyTwiceIsRefused) {
  EXPECT_FALSE(read_plan(R"({"format":"shoalwright-plan","version":1,"name":"a","name":"b",
                             "tank":{"shape":"rectangular","length_cm":60,"width_cm":30,"height_cm":30}})"));
}

TEST(PlanText, AsDeepAsAWellIsRefused) {
  for (const char* bracket : {"[", "{\"a\":"}) {
    std::string text;
    for (int i = 0; i < 200000; ++i) text += bracket;
    EXPECT_FALSE(read_plan(text));
  }
}

TEST(PlanText, OfANewerVersionSaysSo) {
  const Result<Plan> plan = read(with(full(), "/version", 2));
  ASSERT_FALSE(plan);
  EXPECT_NE(plan.error().sentence.find("newer"), std::string::npos) << plan.error().sentence;
}

TEST(PlanText, HoldsAnyCharacterInATextAndGivesItBack) {
  json plan = small();
  std::string text;
  for (char c = 0; c < 0x20; ++c) text += c;
  text += "\"\\/\x7f \xe2\x80\xa8 🐟 </script> <img src=x onerror=alert(1)>";
  plan["notes"] = text;
  const Result<Plan> read_back = read(plan);
  ASSERT_TRUE(read_back);
  EXPECT_EQ(read_back->notes, text);
  EXPECT_EQ(read_plan(plan_json(*read_back))->notes, text);
}

TEST(PlanFiles, AllCanBeRead) { EXPECT_EQ(all_plans().size(), files_of("plans", ".json").size()); }

TEST(PlanFiles, HaveEveryShape) {
  std::vector<bool> there(8, false);
  for (const NamedPlan& named : all_plans()) there[static_cast<std::size_t>(named.plan.tank.shape)] = true;
  EXPECT_EQ(std::count(there.begin(), there.end(), true), 8);
}

TEST(TerrainLine, IsReadAndWrittenAndLeavesASlopeAsItWas) {
  const Plan slope = read_plan(full().dump()).value();
  EXPECT_EQ(plan_json(slope).find("line_cm"), std::string::npos);
  Plan plan = slope;
  plan.substrate.line_cm = {{0, -1}, {20, 8.25}, {60, 0}};
  const std::string text = plan_json(plan);
  EXPECT_NE(text.find("\"back_cm\":7,\"line_cm\":[[0,-1],[20,8.25],[60,0]]"), std::string::npos) << text;
  const Result<Plan> read = read_plan(text);
  ASSERT_TRUE(read) << read.error().sentence;
  EXPECT_EQ(*read, plan);
  EXPECT_EQ(plan_json(*read), text);
  Plan emptied = plan;
  emptied.substrate.line_cm.clear();
  EXPECT_EQ(plan_json(emptied), plan_json(slope));
}

TEST(TerrainLine, OfTheWrongTypeIsRefusedWhereItStands) {
  const auto refused_at = [](const std::string& line) {
    const Result<Plan> plan = read_plan(
        "{\"format\":\"shoalwright-plan\",\"version\":1,\"tank\":{\"length_cm\":80,\"width_cm\":30,"
        "\"height_cm\":40},\"substrate\":{\"kind\":\"fine-sand\",\"line_cm\":" +
        line + "}}");
    return plan ? std::string("read") : plan.error().place;
  };
  EXPECT_EQ(refused_at("[]"), "read");
  EXPECT_EQ(refused_at("null"), "read");
  EXPECT_EQ(refused_at("[[0,1],[80,2]]"), "read");
  EXPECT_EQ(refused_at("3"), "/substrate/line_cm");
  EXPECT_EQ(refused_at("[3]"), "/substrate/line_cm/0");
  EXPECT_EQ(refused_at("[[0,1],[2]]"), "/substrate/line_cm/1");
  EXPECT_EQ(refused_at("[[0,1],[2,3,4]]"), "/substrate/line_cm/1");
  EXPECT_EQ(refused_at("[[0,1],[2,\"3\"]]"), "/substrate/line_cm/1");
  EXPECT_EQ(refused_at("[[0,1],[80.5,2]]"), "/substrate/line_cm/1/0");
  EXPECT_EQ(refused_at("[[5,1],[5,2]]"), "/substrate/line_cm/1/0");
  EXPECT_EQ(refused_at("[[5,41]]"), "/substrate/line_cm/0/1");
}

}  // namespace
}  // namespace shoalwright
