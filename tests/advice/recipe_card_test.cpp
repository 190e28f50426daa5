// SPDX-License-Identifier: MIT
#include "advice/recipe_card.h"

#include <gtest/gtest.h>

#include <cmath>

#include "advice/first_help.h"
#include "advice/roads.h"
#include "share/recipe_json.h"
#include "support/plan_files.h"
#include "support/random_plan.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

/// 40 L for each change: 132 L would be 30.3 %.
Plan riverside() {
  Plan plan;
  plan.tank.length_cm = 100;
  plan.tank.width_cm = 40;
  plan.tank.height_cm = 40;
  plan.tank.fill_cm = 33;
  plan.tank.glass_mm = 8;
  plan.source.gh_dgh = 13;
  plan.source.kh_dkh = 8;
  plan.source.nitrate_mg_l = 10;
  plan.water = WaterAim{};
  plan.water->gh_dgh = 7;
  plan.water->kh_dkh = 3.2;
  plan.water->temperature_c = 25;
  plan.salts.assign(usual_salts().begin(), usual_salts().end());
  plan.ca_mg_ratio = 3;
  plan.upkeep = Upkeep{.change_fraction = 40.0 / 132, .every_days = 7, .other_keys = ""};
  return plan;
}

bool says(const RecipeCard& card, const std::string& part) {
  for (const std::string& line : card.says)
    if (line.find(part) != std::string::npos) return true;
  return false;
}

TEST(RecipeCard, TellsTheBucketInLitresAndGrams) {
  const RecipeCard card = recipe_card(riverside(), the_catalog());
  EXPECT_NEAR(card.for_l, 40, 1e-9);
  EXPECT_NEAR(*card.ro_l, 24, 1e-9);
  EXPECT_NEAR(*card.tap_l, 16, 1e-9);
  EXPECT_NEAR(*card.ro_l_week, 24, 1e-9);
  EXPECT_NEAR(*card.ro_l_year, 24 * 365 / 7.0, 1e-6);
  EXPECT_NEAR(card.reject_l->low, 24, 1e-9);
  EXPECT_NEAR(card.reject_l->high, 96, 1e-9);
  ASSERT_EQ(card.salts.size(), 2u);
  EXPECT_NEAR(card.salts[0].grams, 1.66, 0.01);
  EXPECT_NEAR(card.salts[1].grams, 0.79, 0.01);
  EXPECT_NEAR(card.salts[0].weighed_g, 1.7, 1e-9) << "as a kitchen scale tells it";
  EXPECT_NEAR(card.salts[1].weighed_g, 0.8, 1e-9);
  EXPECT_NEAR(*card.weighed.gh_dgh, 7, 0.1);
  EXPECT_NE(card.weighed, card.recipe.reached) << "it is a little more than was meant";
  EXPECT_TRUE(says(card, "Dissolve 1.7 g calcium sulphate"));
  EXPECT_EQ(card.way.changes, 5);
  EXPECT_FALSE(card.with_usual_salts);
  EXPECT_EQ(card.says[0],
            "Stir in a conditioner that treats chloramine, for all 40 L, as its label says. Standing is not enough.");
  EXPECT_EQ(card.says[1], "Mix 24 L RO and 16 L tap.");
  EXPECT_EQ(card.says[2], "Dissolve 1.7 g calcium sulphate dihydrate (gypsum).");
  EXPECT_EQ(card.says[3], "Dissolve 0.8 g magnesium sulphate heptahydrate (Epsom salt).");
  EXPECT_TRUE(says(card, "25 °C"));
  EXPECT_TRUE(says(card, "Do not add acid."));
  EXPECT_TRUE(says(card, "5 changes of up to 40 L"));
}

TEST(RecipeCard, PutsTheConditionerFirstAndTakesTheUnknownForChloramine) {
  Plan plan = riverside();
  for (const Disinfectant disinfectant :
       {Disinfectant::unknown, Disinfectant::chloramine, Disinfectant::chlorine, Disinfectant::none}) {
    plan.source.disinfectant = disinfectant;
    const std::string first = recipe_card(plan, the_catalog()).says[0];
    EXPECT_NE(first.find("onditioner"), std::string::npos) << first;
    EXPECT_NE(first.find("all 40 L"), std::string::npos) << first;
    EXPECT_NE(first.find(disinfectant == Disinfectant::chlorine ? "treats chlorine" : "treats chloramine"), std::string::npos);
  }
}

TEST(RecipeCard, SaysWhatTheUsualSaltsWouldDoForAKeeperWithoutAny) {
  Plan plan = riverside();
  plan.salts = {"moonstone"};
  const RecipeCard card = recipe_card(plan, the_catalog());
  EXPECT_TRUE(card.salts.empty());
  EXPECT_EQ(card.salts_not_known, std::vector<std::string>{"moonstone"});
  ASSERT_TRUE(card.with_usual_salts);
  EXPECT_TRUE(card.with_usual_salts->missed.empty());
  EXPECT_TRUE(says(card, "Two targets, one knob"));
  EXPECT_TRUE(says(card, "\"moonstone\" is not known"));
}

TEST(RecipeCard, TakesTheUsualChangeWhereThePlanMakesNone) {
  Plan plan = riverside();
  plan.upkeep->change_fraction = 0;
  EXPECT_NEAR(recipe_card(plan, the_catalog()).for_l, 0.3 * 132, 1e-9);
  plan.upkeep.reset();
  EXPECT_NEAR(recipe_card(plan, the_catalog()).for_l, 0.3 * 132, 1e-9);
}

TEST(RecipeCard, AnswersEveryPlanWithFiniteNumbersAndSentences) {
  for (const NamedPlan& named : all_plans()) {
    const RecipeCard card = recipe_card(named.plan, the_catalog());
    ASSERT_FALSE(card.says.empty()) << named.name;
    EXPECT_NE(card.says[0].find("onditioner"), std::string::npos) << named.name;
    for (const std::string& line : card.says) {
      EXPECT_EQ(line.back(), '.') << line;
      EXPECT_EQ(line.find("- "), std::string::npos) << "a number that is none: " << line;
    }
    EXPECT_TRUE(std::isfinite(card.for_l)) << named.name;
    EXPECT_EQ(card.recipe.ro_fraction.has_value(), named.plan.source.gh_dgh || named.plan.source.kh_dkh) << named.name;
  }
}

// Whatever a valid plan says: no number that is none, and roads and first help answer too.
TEST(RecipeCard, AnswersRandomPlans) {
#ifdef SHOALWRIGHT_FEWER_PLANS
  constexpr int plans = 40;
#else
  constexpr int plans = 400;
#endif
  for (int seed = 1; seed <= plans; ++seed) {
    Plan plan = random_plan(static_cast<std::uint64_t>(seed), the_catalog());
    for (Group& group : plan.stock)
      if (seed % 2 == 0) group.have = group.count;
    const RecipeCard card = recipe_card(plan, the_catalog());
    for (const char* none : {"nan", "inf"}) EXPECT_EQ(recipe_json(card).find(std::string(":") + none), std::string::npos) << seed;
    if (card.ro_l) {
      EXPECT_NEAR(*card.ro_l + *card.tap_l, card.for_l, 1e-9) << seed;
    }
    if (const std::optional<Roads> all = roads(plan, the_catalog())) {
      EXPECT_FALSE(all->others.misses.empty()) << seed;
    }
    const FirstHelp help = first_help(plan, the_catalog());
    for (const HelpChange& change : help.changes) {
      EXPECT_TRUE(std::isfinite(change.litres) && change.litres > 0) << seed;
      EXPECT_LE(change.litres, help_most_at_once * volume_of(plan).net_l + 1e-9) << seed;
    }
    EXPECT_EQ(help.state == HelpState::nobody_swims, help.says.empty() && help.tests_first.empty()) << seed;
  }
}

TEST(RecipeCard, TellsWhatTheKeepersOwnGramsGive) {
  const Plan plan = riverside();
  RecipeCard card = recipe_card(plan, the_catalog());
  const Salt* gypsum = find_salt("calcium-sulphate-dihydrate");
  take_grams(plan, 0.6, std::vector<SaltGrams>{{gypsum, 5, 5}}, card);
  EXPECT_TRUE(card.by_hand);
  EXPECT_NEAR(*card.ro_l, 24, 1e-9);
  EXPECT_NEAR(*card.weighed.gh_dgh, 13 * 0.4 + 5 * 1000 / 40.0 / *salt_mg_l_per_dgh(*gypsum), 1e-9);
  EXPECT_EQ(card.salts.size(), 1u);
  EXPECT_EQ(card.salts[0].weighed_g, 5);
  EXPECT_TRUE(says(card, "GH comes out")) << "what it misses is told";
  EXPECT_EQ(card.says[0].rfind("Stir in a conditioner", 0), 0u);
}

}  // namespace
}  // namespace shoalwright
