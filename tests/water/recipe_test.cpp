// SPDX-License-Identifier: MIT
#include "water/recipe.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "support/dice.h"

namespace shoalwright {
namespace {

using Salts = std::vector<std::string>;

const Salts gypsum_epsom_soda(usual_salts().begin(), usual_salts().end());

SourceWater tap(std::optional<double> gh_dgh, std::optional<double> kh_dkh) {
  SourceWater water;
  water.gh_dgh = gh_dgh;
  water.kh_dkh = kh_dkh;
  water.nitrate_mg_l = 30;
  return water;
}

MixAim aim(std::optional<double> gh_dgh, std::optional<double> kh_dkh) {
  MixAim aim;
  aim.gh_dgh.aim = gh_dgh;
  aim.kh_dkh.aim = kh_dkh;
  return aim;
}

MixAim window(Range gh_dgh, Range kh_dkh) {
  MixAim aim;
  aim.gh_dgh.window = gh_dgh;
  aim.kh_dkh.window = kh_dkh;
  return aim;
}

double mg_l_of(const Recipe& recipe, std::string_view id) {
  for (const SaltDose& dose : recipe.salts)
    if (dose.salt->id == id) return dose.mg_l;
  return 0;
}

double by(const Recipe& recipe, WaterQuantity quantity) {
  for (const Miss& miss : recipe.missed)
    if (miss.quantity == quantity) return miss.by.value_or(NAN);
  return 0;
}

// Worked by hand: KH sets the share, 3.2 of 8; then GH lacks 7 - 5.2 = 1.8, three parts calcium to one of magnesium. In 40 L.
TEST(Recipe, MixesSoftWaterFromAMiddlingTap) {
  const Recipe recipe = recipe_for(tap(13, 8), aim(7, 3.2), gypsum_epsom_soda);
  EXPECT_NEAR(*recipe.ro_fraction * 40, 24, 1e-9);
  EXPECT_NEAR(mg_l_of(recipe, "calcium-sulphate-dihydrate") * 40 / 1000, 1.7, 0.05);
  EXPECT_NEAR(mg_l_of(recipe, "magnesium-sulphate-heptahydrate") * 40 / 1000, 0.8, 0.05);
  EXPECT_EQ(recipe.salts.size(), 2u);
  EXPECT_NEAR(*recipe.reached.gh_dgh, 7, 1e-9);
  EXPECT_NEAR(*recipe.reached.kh_dkh, 3.2, 1e-9);
  EXPECT_NEAR(*recipe.reached.nitrate_mg_l, 30 * 0.4, 1e-9);
  EXPECT_NEAR(recipe.reached.sulphate_mg_l, 1.8 * 17.13, 0.02);
  EXPECT_TRUE(recipe.missed.empty());
  EXPECT_NEAR(recipe.swing.kh_dkh->high, 3.2 * 1.1, 1e-9);
}

// Hard tap, soft-water wish: GH alone asks for 72 %, KH alone for 75 %; without salts one of the two is met.
TEST(Recipe, MeetsOneOfTwoTargetsThatOneKnobCannotBothMeet) {
  const Recipe recipe = recipe_for(tap(18, 12), aim(5, 3), {});
  EXPECT_NEAR(*recipe.ro_fraction, 0.75, 1e-9);
  EXPECT_NEAR(*recipe.reached.gh_dgh, 4.5, 1e-9);
  EXPECT_NEAR(*recipe.reached.kh_dkh, 3.0, 1e-9);
  EXPECT_NEAR(*recipe.ro_for_gh, 1 - 5.0 / 18, 1e-12);
  EXPECT_NEAR(*recipe.ro_for_kh, 0.75, 1e-12);
  EXPECT_NEAR(by(recipe, WaterQuantity::gh), -0.5, 1e-9);
  EXPECT_EQ(by(recipe, WaterQuantity::kh), 0);
  const Recipe with_salts = recipe_for(tap(18, 12), aim(5, 3), gypsum_epsom_soda);
  EXPECT_NEAR(*with_salts.reached.gh_dgh, 5, 1e-9);
  EXPECT_TRUE(with_salts.missed.empty());
}

// Handbook, chemistry 4.2: mg/L a degree, from pure water.
TEST(Recipe, WeighsEachSaltAsTheHandbookDoes) {
  const struct {
    const char* id;
    double gh, kh, mg_l;
  } rows[] = {{"calcium-sulphate-dihydrate", 1, 0, 30.701},     {"calcium-chloride", 1, 0, 19.790},
              {"calcium-chloride-dihydrate", 1, 0, 26.215},     {"magnesium-sulphate-heptahydrate", 1, 0, 43.951},
              {"magnesium-chloride-hexahydrate", 1, 0, 36.253}, {"sodium-bicarbonate", 0, 1, 29.961},
              {"potassium-bicarbonate", 0, 1, 35.706},          {"calcium-carbonate", 1, 1, 17.848}};
  for (const auto& row : rows) {
    const Recipe recipe = recipe_for(tap(0, 0), aim(row.gh, row.kh), Salts{row.id});
    EXPECT_NEAR(mg_l_of(recipe, row.id), row.mg_l, 0.001) << row.id;
    EXPECT_EQ(*recipe.ro_fraction, 0) << row.id;
    EXPECT_TRUE(recipe.missed.empty()) << row.id;
    EXPECT_EQ(recipe.slow, row.gh == row.kh) << row.id;
  }
}

TEST(Recipe, KeepsTheRatioOfCalciumToMagnesiumWhereItCan) {
  for (const double ratio : {0.5, 1.0, 3.0, 5.0}) {
    MixAim wish = aim(8, 0);
    wish.ca_mg_ratio = ratio;
    const Recipe recipe = recipe_for(tap(0, 0), wish, gypsum_epsom_soda);
    const double calcium = mg_l_of(recipe, "calcium-sulphate-dihydrate") / 30.701,
                 magnesium = mg_l_of(recipe, "magnesium-sulphate-heptahydrate") / 43.951;
    EXPECT_NEAR(calcium / magnesium, ratio, 0.001 * ratio);
  }
  EXPECT_NEAR(mg_l_of(recipe_for(tap(0, 0), aim(8, 0), Salts{"calcium-chloride"}), "calcium-chloride"), 8 * 19.790, 0.01);
  // The calcium of the lime counts: 4 from it and 2 from gypsum to 2 of magnesium.
  const Recipe lime = recipe_for(tap(0, 0), aim(8, 4),
                                 Salts{"calcium-carbonate", "calcium-sulphate-dihydrate", "magnesium-sulphate-heptahydrate"});
  EXPECT_NEAR(mg_l_of(lime, "calcium-carbonate"), 4 * 17.848, 0.01);
  EXPECT_NEAR(mg_l_of(lime, "calcium-sulphate-dihydrate"), 2 * 30.701, 0.01);
  EXPECT_NEAR(mg_l_of(lime, "magnesium-sulphate-heptahydrate"), 2 * 43.951, 0.01);
}

TEST(Recipe, TakesLimeOnlyWhereNothingElseAtHandDoes) {
  Salts all = gypsum_epsom_soda;
  all.insert(all.begin(), "calcium-carbonate");
  EXPECT_FALSE(recipe_for(tap(3, 1), aim(9, 5), all).slow);
  EXPECT_TRUE(recipe_for(tap(3, 1), aim(9, 5), Salts{"calcium-carbonate", "magnesium-chloride-hexahydrate"}).slow);
}

TEST(Recipe, TakesTheLightestSaltOfASort) {
  const Recipe recipe = recipe_for(
      tap(0, 0), aim(4, 4),
      Salts{"potassium-bicarbonate", "calcium-sulphate-dihydrate", "sodium-bicarbonate", "calcium-chloride-dihydrate"});
  ASSERT_EQ(recipe.salts.size(), 2u);
  EXPECT_EQ(recipe.salts[0].salt->id, "sodium-bicarbonate") << "in the keeper's order";
  EXPECT_EQ(recipe.salts[1].salt->id, "calcium-chloride-dihydrate");
}

TEST(Recipe, GoesNoFurtherThanTheNearestPointOfAWindow) {
  const Recipe recipe = recipe_for(tap(13, 8), window({4, 12}, {2, 6}), gypsum_epsom_soda);
  EXPECT_NEAR(*recipe.reached.kh_dkh, 6 - edge_in_hand_dh, 1e-9);
  EXPECT_TRUE(recipe.salts.empty());
  EXPECT_TRUE(recipe.missed.empty());
  const Recipe inside = recipe_for(tap(12, 6), window({4, 12}, {2, 6}), gypsum_epsom_soda);
  EXPECT_EQ(*inside.ro_fraction, 0) << "a tap on the edge is left as it is";
  const Recipe nowhere = recipe_for(tap(13, 8), MixAim{}, gypsum_epsom_soda);
  EXPECT_EQ(*nowhere.ro_fraction, 0);
  EXPECT_TRUE(nowhere.missed.empty());
}

TEST(Recipe, StaysInsideTheWindowsBeforeItMeetsAnAim) {
  MixAim wish = aim(10, 3);
  wish.gh_dgh.window = Range{8, 14};
  wish.kh_dkh.window = Range{0, 30};
  // KH counts little by the width of its window; still GH may not leave its own for it.
  const Recipe recipe = recipe_for(tap(16, 12), wish, {});
  EXPECT_GE(*recipe.reached.gh_dgh, 8 - 1e-9);
  wish.gh_dgh.aim = 2;  // the keeper's own aim counts even outside
  wish.kh_dkh.aim = 1.5;
  EXPECT_TRUE(recipe_for(tap(16, 12), wish, {}).missed.empty());
}

TEST(Recipe, AnswersForWhatIsKnownOfTheTap) {
  const Recipe no_kh = recipe_for(tap(13, std::nullopt), aim(6.5, 3), gypsum_epsom_soda);
  EXPECT_NEAR(*no_kh.ro_fraction, 0.5, 1e-9);
  EXPECT_FALSE(no_kh.reached.kh_dkh);
  ASSERT_EQ(no_kh.missed.size(), 1u);
  EXPECT_EQ(no_kh.missed[0], (Miss{WaterQuantity::kh, std::nullopt}));
  const Recipe nothing = recipe_for(tap(std::nullopt, std::nullopt), aim(6.5, 3), gypsum_epsom_soda);
  EXPECT_FALSE(nothing.ro_fraction);
  EXPECT_TRUE(nothing.salts.empty());
  EXPECT_EQ(nothing.missed.size(), 2u);
  EXPECT_EQ(recipe_for(SourceWater{}, MixAim{}, {}).missed.size(), 2u) << "says what to test";
}

TEST(Recipe, KeepsTheShareThatTheKeeperHolds) {
  const Recipe recipe = recipe_at(tap(13, 8), aim(7, 3.2), gypsum_epsom_soda, 0.8);
  EXPECT_EQ(*recipe.ro_fraction, 1 - (1 - 0.8));
  EXPECT_NEAR(*recipe.reached.gh_dgh, 7, 1e-9);
  EXPECT_NEAR(*recipe.reached.kh_dkh, 3.2, 1e-9);
  EXPECT_GT(mg_l_of(recipe, "sodium-bicarbonate"), 0);
  const Recipe too_little = recipe_at(tap(13, 8), aim(7, 3.2), gypsum_epsom_soda, 0.25);
  EXPECT_NEAR(by(too_little, WaterQuantity::gh), 9.75 - 7, 1e-9);
  EXPECT_NEAR(by(too_little, WaterQuantity::kh), 6 - 3.2, 1e-9);
}

// Handbook, chemistry 3.3: at KH 3 CO2 of 20 mg/L gives pH 6.71, outdoor air about 8.2 (PHREEQC).
TEST(Recipe, SaysWhatNoCo2CanMakeOfPh) {
  MixAim wish = aim(3, 3);
  wish.ph.aim = 6;
  EXPECT_NEAR(by(recipe_for(tap(3, 3), wish, {}), WaterQuantity::ph), 0.71, 0.03);
  wish.ph.aim = 7.2;
  EXPECT_EQ(by(recipe_for(tap(3, 3), wish, {}), WaterQuantity::ph), 0);
  wish.ph.aim = 9;
  EXPECT_LT(by(recipe_for(tap(3, 3), wish, {}), WaterQuantity::ph), -0.7);
}

// What follows draws taps, aims and salts, and asks nothing of the solver's own ways.

struct Drawn {
  SourceWater water;
  MixAim wish;
  Salts salts;
  bool gh_salt = false, kh_salt = false, lime = false;
};

Drawn drawn(Dice& dice) {
  Drawn d;
  d.water = tap(dice.real(0, 30), dice.real(0, 20));
  const auto axis = [&](double most) {
    AxisAim one;
    if (dice.percent(60)) {
      const double low = dice.real(0, most / 2);
      one.window = Range{low, low + dice.real(0.5, most / 2)};
    }
    if (dice.percent(70) || !one.window) one.aim = dice.percent(10) ? 0 : dice.real(0, most);
    return one;
  };
  d.wish.gh_dgh = axis(30);
  d.wish.kh_dkh = axis(20);
  d.wish.ca_mg_ratio = dice.real(0.5, 6);
  for (const Salt& salt : known_salts())
    if (dice.percent(salt.needs_co2 ? 15 : 25)) {
      d.salts.emplace_back(salt.id);
      d.lime = d.lime || salt.needs_co2;
      d.gh_salt = d.gh_salt || (!salt.needs_co2 && salt.calcium + salt.magnesium > 0);
      d.kh_salt = d.kh_salt || salt.bicarbonate > 0;
    }
  return d;
}

double out_of(double value, double low, double high) { return std::max({low - value, value - high, 0.0}); }

struct Goals {
  double outside = 0, miss = 0;
};

/// The two first goals as the header tells them; what a salt can raise counts as raised.
Goals goals_of(const Drawn& d, double gh_dgh, double kh_dkh, bool raise_gh, bool raise_kh) {
  Goals goals;
  const auto look = [&](double value, double tap_dh, const AxisAim& axis, double usual_width, bool raise) {
    double low = axis.aim.value_or(0), high = low, out_low = low, out_high = high, width = usual_width;
    if (axis.window) {
      width = axis.window->high - axis.window->low;
      if (!axis.aim) {
        const double in_hand = std::min(edge_in_hand_dh, width / 2);
        low = axis.window->low > 0 ? axis.window->low + in_hand : 0;
        high = axis.window->high - in_hand;
        if (tap_dh >= axis.window->low && tap_dh <= axis.window->high) {
          low = std::min(low, tap_dh);
          high = std::max(high, tap_dh);
        }
      }
      out_low = std::min(axis.window->low, low);
      out_high = std::max(axis.window->high, high);
    }
    if (raise) value = std::max(value, low);
    goals.outside += out_of(value, out_low, out_high) / width;
    goals.miss += out_of(value, low, high) / width;
  };
  look(gh_dgh, *d.water.gh_dgh, d.wish.gh_dgh, usual_gh_window_dgh, raise_gh);
  look(kh_dkh, *d.water.kh_dkh, d.wish.kh_dkh, usual_kh_window_dkh, raise_kh);
  return goals;
}

#ifdef SHOALWRIGHT_FEWER_PLANS
constexpr int draws = 60;
#else
constexpr int draws = 600;
#endif

TEST(Recipe, IsWhatItsSaltsAndItsSharesComeTo) {
  Dice dice(7);
  for (int n = 0; n < 10 * draws; ++n) {
    const Drawn d = drawn(dice);
    const Recipe recipe = recipe_for(d.water, d.wish, d.salts);
    ASSERT_TRUE(recipe.ro_fraction && *recipe.ro_fraction >= 0 && *recipe.ro_fraction <= 1);
    double gh = (1 - *recipe.ro_fraction) * *d.water.gh_dgh, kh = (1 - *recipe.ro_fraction) * *d.water.kh_dkh;
    for (const SaltDose& dose : recipe.salts) {
      EXPECT_GT(dose.mg_l, 0);
      EXPECT_NE(std::find(d.salts.begin(), d.salts.end(), dose.salt->id), d.salts.end()) << "not at hand";
      gh += salt_brings(*dose.salt, dose.mg_l).gh_dgh;
      kh += salt_brings(*dose.salt, dose.mg_l).kh_dkh;
    }
    EXPECT_NEAR(gh, *recipe.reached.gh_dgh, 1e-9);
    EXPECT_NEAR(kh, *recipe.reached.kh_dkh, 1e-9);
    EXPECT_NEAR(*recipe.reached.nitrate_mg_l, 30 * (1 - *recipe.ro_fraction), 1e-9);
    const auto named = [&](WaterQuantity quantity, double reached, const AxisAim& axis) {
      const double low = axis.aim ? *axis.aim : axis.window->low, high = axis.aim ? *axis.aim : axis.window->high;
      const double off = reached < low ? reached - low : reached > high ? reached - high : 0;
      EXPECT_NEAR(by(recipe, quantity), off, 1e-9) << "draw " << n;
    };
    named(WaterQuantity::gh, gh, d.wish.gh_dgh);
    named(WaterQuantity::kh, kh, d.wish.kh_dkh);
  }
}

// Every share of reverse-osmosis water in steps of a thousandth, with lime in steps of a hundredth of what could be of use.
TEST(Recipe, LosesToNoMixOfAFineGrid) {
  Dice dice(8);
  for (int n = 0; n < draws; ++n) {
    const Drawn d = drawn(dice);
    const Recipe recipe = recipe_for(d.water, d.wish, d.salts);
    const Goals ours = goals_of(d, *recipe.reached.gh_dgh, *recipe.reached.kh_dkh, false, false);
    double lime_dh = 0;
    for (const SaltDose& dose : recipe.salts)
      if (dose.salt->needs_co2) lime_dh = salt_brings(*dose.salt, dose.mg_l).kh_dkh;
    const int lime_steps = d.lime ? 100 : 0;
    for (int i = 0; i <= 1000; ++i)
      for (int j = 0; j <= lime_steps; ++j) {
        const double ro = i / 1000.0, lime = lime_steps ? 30.0 * j / lime_steps : 0;
        const Goals other =
            goals_of(d, (1 - ro) * *d.water.gh_dgh + lime, (1 - ro) * *d.water.kh_dkh + lime, d.gh_salt, d.kh_salt);
        ASSERT_GE(other.outside, ours.outside - 1e-9) << "draw " << n << " at " << ro << " lime " << lime;
        if (!(other.outside <= ours.outside + 1e-9)) continue;
        ASSERT_GE(other.miss, ours.miss - 1e-9) << "draw " << n << " at " << ro << " lime " << lime;
        if (!(other.miss <= ours.miss + 1e-9)) continue;
        ASSERT_GE(lime, lime_dh - 1e-6) << "draw " << n << " at " << ro;
        if (!(lime <= lime_dh + 1e-6)) continue;
        ASSERT_GE(ro, *recipe.ro_fraction - 1e-6) << "draw " << n;
      }
  }
}

TEST(Recipe, NeverTakesMoreTapForASofterAim) {
  Dice dice(9);
  for (int n = 0; n < draws; ++n) {
    const SourceWater water = tap(dice.real(1, 30), dice.real(1, 20));
    const double gh = dice.real(0, *water.gh_dgh), kh = dice.real(0, *water.kh_dkh), softer = dice.real(0, kh);
    const Recipe one = recipe_for(water, aim(gh, kh), gypsum_epsom_soda),
                 other = recipe_for(water, aim(gh, softer), gypsum_epsom_soda);
    EXPECT_TRUE(one.missed.empty() && other.missed.empty()) << "soft aims can always be met with salts";
    EXPECT_GE(*other.ro_fraction, *one.ro_fraction - 1e-9);
  }
}

}  // namespace
}  // namespace shoalwright
