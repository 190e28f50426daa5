// SPDX-License-Identifier: MIT
#include "water/weighing.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/dice.h"
#include "water/recipe.h"

namespace shoalwright {
namespace {

TEST(Weighing, TenthsOfAGramAndWholeGramsFromTwentyOn) {
  const SaltDose gypsum{find_salt("calcium-sulphate-dihydrate"), 41.5}, soda{find_salt("sodium-bicarbonate"), 250};
  const std::vector<double> grams = weighed_g(std::vector{gypsum, soda}, 100);
  EXPECT_NEAR(grams[0], 4.2, 1e-9);  // 4.15 g, halves away from zero
  EXPECT_NEAR(grams[1], 25, 1e-9);
  EXPECT_EQ(weighing_step_g(19.9), 0.1);
  EXPECT_EQ(weighing_step_g(20), 1);
}

TEST(Weighing, FinerWhereATenthWouldMoveTheWater) {
  // A tenth of a gram of soda in 2 L is 50 mg/L: more than a degree and a half.
  const SaltDose soda{find_salt("sodium-bicarbonate"), 35};
  const std::vector<double> grams = weighed_g(std::vector{soda}, 2);
  EXPECT_NEAR(grams[0], 0.07, 1e-9);
  EXPECT_TRUE(weighed_g(std::vector{soda}, 0) == std::vector<double>{0});
}

// Every recipe weighed out and blended forward stays within a tenth of a degree, from a jug to a pond.
TEST(Weighing, BlendedForwardItIsTheWaterThatWasMeant) {
  Dice dice(4711);
  const std::vector<std::string> salts(usual_salts().begin(), usual_salts().end());
  int rounded = 0;
  for (int n = 0; n < 400; ++n) {
    SourceWater tap;
    tap.gh_dgh = dice.real(0, 25);
    tap.kh_dkh = dice.real(0, 18);
    MixAim aim;
    aim.gh_dgh.aim = dice.real(1, 15);
    aim.kh_dkh.aim = dice.real(0.5, 10);
    const Recipe recipe = recipe_for(tap, aim, salts);
    const double litres = std::exp(dice.real(std::log(1.0), std::log(1000.0)));
    const std::vector<double> grams = weighed_g(recipe.salts, litres);
    std::vector<SaltDose> doses = recipe.salts;
    for (std::size_t i = 0; i < doses.size(); ++i) {
      rounded += std::abs(doses[i].mg_l * litres / 1000 - grams[i]) > 1e-6;
      doses[i].mg_l = grams[i] * 1000 / litres;
      EXPECT_GE(grams[i], 0);
    }
    const MixedWater water = mixed_water(tap, *recipe.ro_fraction, doses, 25);
    EXPECT_NEAR(*water.gh_dgh, *recipe.reached.gh_dgh, weighed_within_dh + 1e-9) << litres << " L";
    EXPECT_NEAR(*water.kh_dkh, *recipe.reached.kh_dkh, weighed_within_dh + 1e-9) << litres << " L";
  }
  EXPECT_GT(rounded, 200) << "the weights are not the exact ones";
}

// 24 L of RO and 16 L of tap with twice the gypsum: what is known by hand comes out forwards.
TEST(RecipeWith, TellsWhatTheKeepersOwnSaltsGive) {
  SourceWater tap;
  tap.gh_dgh = 13;
  tap.kh_dkh = 8;
  MixAim aim;
  aim.gh_dgh.aim = 7;
  aim.kh_dkh.aim = 3.2;
  const Salt* gypsum = find_salt("calcium-sulphate-dihydrate");
  const Recipe recipe = recipe_with(tap, aim, std::vector<SaltDose>{{gypsum, 3 * *salt_mg_l_per_dgh(*gypsum)}}, 0.6);
  EXPECT_NEAR(*recipe.reached.gh_dgh, 13 * 0.4 + 3, 1e-9);
  EXPECT_NEAR(*recipe.reached.kh_dkh, 3.2, 1e-9);
  ASSERT_EQ(recipe.missed.size(), 1u);
  EXPECT_EQ(recipe.missed[0].quantity, WaterQuantity::gh);
  EXPECT_NEAR(*recipe.missed[0].by, 1.2, 1e-9);
  EXPECT_EQ(recipe.ro_for_gh, recipe_at(tap, aim, {}, 0.6).ro_for_gh);
  EXPECT_FALSE(recipe_with({}, aim, {}, 0.6).ro_fraction) << "of a tap that is not known nothing can be told";
}

}  // namespace
}  // namespace shoalwright
