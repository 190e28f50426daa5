// SPDX-License-Identifier: MIT
#include "share/recipe_json.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "support/plan_files.h"

namespace shoalwright {
namespace {

nlohmann::json json_of(const Plan& plan) { return nlohmann::json::parse(recipe_json(recipe_card(plan, the_catalog()))); }

TEST(RecipeJson, HasTheKeysOfTheFormatForEveryPlan) {
  for (const NamedPlan& named : all_plans()) {
    const nlohmann::json json = json_of(named.plan);
    for (const char* key : {"ro_fraction", "salts_g", "for_l", "reached", "missed", "changes", "swing", "steps", "says"})
      EXPECT_TRUE(json.contains(key)) << named.name << " " << key;
    for (const char* key : {"gh_dgh", "kh_dkh", "ph"}) EXPECT_TRUE(json["reached"].contains(key)) << named.name << " " << key;
    EXPECT_TRUE(json["missed"].is_array() && json["salts_g"].is_object()) << named.name;
  }
}

TEST(RecipeJson, TellsWhatTheCardTells) {
  const Plan plan = find_species(the_catalog(), "danio-rerio") ? all_plans().front().plan : Plan{};
  Plan soft = plan;
  soft.source = SourceWater{};
  soft.source.gh_dgh = 13;
  soft.source.kh_dkh = 8;
  soft.water = WaterAim{};
  soft.water->gh_dgh = 7;
  soft.water->kh_dkh = 3.2;
  soft.salts.assign(usual_salts().begin(), usual_salts().end());
  const RecipeCard card = recipe_card(soft, the_catalog());
  const nlohmann::json json = nlohmann::json::parse(recipe_json(card));
  EXPECT_NEAR(json["ro_fraction"].get<double>(), 0.6, 1e-9);
  EXPECT_NEAR(json["reached"]["gh_dgh"].get<double>(), 7, 1e-9);
  EXPECT_NEAR(json["salts_g"]["calcium-sulphate-dihydrate"].get<double>(), card.salts[0].grams, 1e-9);
  EXPECT_EQ(json["steps"].size(), card.way.steps.size());
  EXPECT_EQ(json["says"][0].get<std::string>(), card.says[0]);
  EXPECT_TRUE(json["reached"]["nitrate_mg_l"].is_null());
}

TEST(RecipeJson, AnswersAnUnknownTapByNullAndSaysWhatIsMissing) {
  Plan plan = all_plans().front().plan;
  plan.source = SourceWater{};
  plan.measured.reset();
  const nlohmann::json json = json_of(plan);
  EXPECT_TRUE(json["ro_fraction"].is_null() && json["changes"].is_null() && json["reached"]["gh_dgh"].is_null());
  bool told = false;
  for (const nlohmann::json& miss : json["missed"])
    told = told || (miss["quantity"] == "gh_dgh" && miss["by"].is_null() && miss["says"].get<std::string>().size() > 10);
  EXPECT_TRUE(told);
}

}  // namespace
}  // namespace shoalwright
