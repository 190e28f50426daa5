// SPDX-License-Identifier: MIT
#include "share/assessment_json.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "assess/assess.h"
#include "share/json_text.h"
#include "share/plan_json.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

using nlohmann::json;

std::set<std::string> keys_of(const json& object) {
  std::set<std::string> keys;
  for (const auto& [key, value] : object.items()) keys.insert(key);
  return keys;
}

using Keys = std::set<std::string>;

TEST(AssessmentText, HasEveryKeyOfTheFormat) {
  const Plan plan = read_plan(test_file("plans/overstocked.json")).value();
  const json out = json::parse(assessment_json(assess(plan, the_catalog())));
  EXPECT_EQ(keys_of(out), (Keys{"volume", "water", "room", "load", "air", "heat", "findings", "tightest", "cautions"}));
  EXPECT_EQ(keys_of(out["volume"]),
            (Keys{"gross_l", "net_l", "substrate_l", "pieces_l", "footprint_cm2", "surface_cm2", "filled_mass_kg"}));
  EXPECT_EQ(keys_of(out["water"]), (Keys{"temperature_c", "ph", "gh_dgh", "kh_dkh", "reachable", "co2_mg_l"}));
  for (const char* window : {"temperature_c", "ph", "gh_dgh", "kh_dkh"})
    EXPECT_EQ(keys_of(out["water"][window]), (Keys{"tolerated", "ideal", "now", "margin", "low_by", "high_by"})) << window;
  EXPECT_EQ(keys_of(out["room"]), (Keys{"open_l", "floor_cm2", "floor_crowding", "layers", "groups"}));
  ASSERT_EQ(out["room"]["layers"].size(), 3u);
  EXPECT_EQ(keys_of(out["room"]["layers"][0]), (Keys{"name", "from_cm", "to_cm", "open_l", "lane_cm", "crowding"}));
  ASSERT_FALSE(out["room"]["groups"].empty());
  EXPECT_EQ(keys_of(out["room"]["groups"][0]),
            (Keys{"species", "open_l", "lane_cm", "lane_needed_cm", "crowding", "largest_count", "stopped_by"}));
  EXPECT_EQ(keys_of(out["load"]), (Keys{"feed_g_d", "tan_mg_d", "nitrate_peak_mg_l", "nitrate_trough_mg_l",
                                        "change_needed_fraction", "kh_drift_dkh_week", "media_needed_l", "ammonia_nh3_mg_l"}));
  EXPECT_EQ(keys_of(out["air"]), (Keys{"saturation_mg_l", "dawn_mg_l", "dawn_low_mg_l", "limit_mg_l", "demand_mg_h"}));
  EXPECT_EQ(keys_of(out["heat"]), (Keys{"loss_w", "heater_needed_w", "evaporation_l_d"}));
  ASSERT_FALSE(out["findings"].empty());
  for (const json& finding : out["findings"])
    EXPECT_EQ(keys_of(finding), (Keys{"rule", "severity", "species", "text", "why", "remedy", "edits", "evidence", "source"}));
  ASSERT_FALSE(out["tightest"].empty());
  for (const json& tightest : out["tightest"])
    EXPECT_EQ(keys_of(tightest), (Keys{"margin", "value", "unit", "animals", "set_by"}));
}

TEST(AssessmentText, WritesWhatIsNotKnownAsNull) {
  const json out = json::parse(assessment_json(Assessment{}));
  for (const char* window : {"temperature_c", "ph", "gh_dgh", "kh_dkh"})
    for (const char* key : {"tolerated", "ideal", "now", "margin", "low_by", "high_by"})
      EXPECT_TRUE(out["water"][window][key].is_null()) << window << ' ' << key;
  for (const char* part : {"load", "air", "heat"})
    for (const auto& [key, value] : out[part].items()) EXPECT_TRUE(value.is_null()) << part << ' ' << key;
}

TEST(AssessmentText, NeverWritesANumberThatIsNone) {
  Assessment assessment;
  assessment.volume.gross_l = std::numeric_limits<double>::quiet_NaN();
  assessment.water.ph.now = std::numeric_limits<double>::infinity();
  assessment.air.dawn_mg_l = -std::numeric_limits<double>::infinity();
  const json out = json::parse(assessment_json(assessment), nullptr, false);
  ASSERT_FALSE(out.is_discarded());
  EXPECT_TRUE(out["volume"]["gross_l"].is_null());
  EXPECT_TRUE(out["water"]["ph"]["now"].is_null());
  EXPECT_TRUE(out["air"]["dawn_mg_l"].is_null());
}

TEST(AssessmentText, OfEveryPlanIsJsonWithTheNumbersOfTheAssessment) {
  for (const NamedPlan& named : all_plans()) {
    const Assessment assessment = assess(named.plan, the_catalog());
    const json out = json::parse(assessment_json(assessment), nullptr, false);
    ASSERT_FALSE(out.is_discarded()) << named.name;
    EXPECT_EQ(out["volume"]["net_l"].get<double>(), assessment.volume.net_l) << named.name;
    EXPECT_EQ(out["findings"].size(), assessment.findings.size()) << named.name;
    for (std::size_t i = 0; i < assessment.findings.size(); ++i) {
      EXPECT_EQ(out["findings"][i]["rule"], assessment.findings[i].rule);
      EXPECT_EQ(out["findings"][i]["severity"], name_of(assessment.findings[i].severity));
      EXPECT_EQ(out["findings"][i]["edits"].size(), assessment.findings[i].edits.size());
    }
    EXPECT_EQ(out["tightest"].size(), assessment.tightest.size()) << named.name;
  }
}

TEST(AssessmentText, CarriesEachStepOfARemedyAsAPatch) {
  Finding finding;
  finding.edits = {{"replace", "/tank/lid", "true"}, {"remove", "/stock/1", ""}};
  Assessment assessment;
  assessment.findings = {finding};
  const json edits = json::parse(assessment_json(assessment))["findings"][0]["edits"];
  EXPECT_EQ(edits, json::parse(R"([{"op":"replace","path":"/tank/lid","value":true},{"op":"remove","path":"/stock/1"}])"));
}

TEST(JsonString, KeepsAnyTextAndMendsWhatIsNoUtf8) {
  EXPECT_EQ(json_string("a\"b\\\n"), R"("a\"b\\\n")");
  EXPECT_EQ(json::parse(json_string("Zoë 🐟")).get<std::string>(), "Zoë 🐟");
  EXPECT_EQ(json::parse(json_string("a\xff")).get<std::string>(), "a\xEF\xBF\xBD");
}

}  // namespace
}  // namespace shoalwright
