// SPDX-License-Identifier: MIT
#include "water/cycle.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "support/dice.h"
#include "water/growth.h"
#include "water/nitrogen.h"

namespace shoalwright {
namespace {

Cycle fishless() {
  Cycle c{.temperature_c = 26, .oxygen_mg_l = 7.3, .ph = 7.8};
  c.start.water = {.tan_mg_l = 2, .kh_dkh = 10};
  c.dosing = CycleDosing{};
  return c;
}

Cycle with_fish(double load_mg_l_d = 0.3) {
  Cycle c{.temperature_c = 25, .oxygen_mg_l = 7.4, .ph = 7.4, .load_mg_l_d = load_mg_l_d};
  c.start = {.water = {.kh_dkh = 8}, .bacteria = lightly_seeded};
  c.fresh = {.nitrate_n_mg_l = 1, .kh_dkh = 8};
  return c;
}

double nitrogen(const CycleWater& w) { return w.tan_mg_l + w.nitrite_n_mg_l + w.nitrate_n_mg_l; }

/// Any cycle that the model takes.
Cycle any(Dice& dice) {
  Cycle c{.temperature_c = dice.real(5, 33), .oxygen_mg_l = dice.real(0, 15), .ph = dice.real(6, 9)};
  c.load_mg_l_d = dice.percent(50) ? dice.real(0, 50) : dice.real(0, 1);
  c.equivalents_per_mole = dice.real(0, 2);
  c.start.water = {dice.real(0, 20), dice.real(0, 20), dice.real(0, 40), dice.real(0, 20)};
  c.start.bacteria = {dice.percent(50) ? dice.real(0, 200) : 1e-5, dice.percent(50) ? dice.real(0, 200) : 0};
  c.fresh = {dice.real(0, 1), 0, dice.real(0, 10), dice.real(0, 20)};
  if (dice.percent(50)) c.dosing = CycleDosing{dice.real(0, 1), dice.real(0.5, 5)};
  for (int i = dice.below(6); i > 0; --i) c.changes.push_back({dice.whole(1, 12), dice.real(0, 1)});
  return c;
}

// The end of each day tells what was in the water before its change: what is left is the rest of it and the new water.
TEST(Cycle, NitrogenInIsNitrogenOutAndNitrogenStored) {
  Dice dice(71);
  for (int round = 0; round < 40; ++round) {
    Cycle c = any(dice);
    std::vector<CycleChange> once;  // one a day, that its water can be told
    for (const CycleChange& change : c.changes)
      if (change.fraction < 0.95 &&
          std::none_of(once.begin(), once.end(), [&change](const CycleChange& other) { return other.day == change.day; }))
        once.push_back(change);
    c.changes = once;
    const auto run = run_cycle(c, 12);
    ASSERT_TRUE(run);
    double in = nitrogen(c.start.water), out = 0;
    for (std::size_t day = 1; day < run->day_ends.size(); ++day) {
      in += c.load_mg_l_d;
      const CycleWater& end = run->day_ends[day].water;
      for (const CycleChange& change : c.changes) {
        if (change.day != static_cast<int>(day)) continue;
        in += change.fraction * nitrogen(c.fresh);
        out += change.fraction * (nitrogen(end) - change.fraction * nitrogen(c.fresh)) / (1 - change.fraction);
      }
      EXPECT_NEAR(in, out + nitrogen(end), 1e-9 * in) << "day " << day;
      if (c.dosing && end.tan_mg_l < c.dosing->below_mg_l) in += std::max(c.dosing->up_to_mg_l - end.tan_mg_l, 0.0);
    }
  }
}

TEST(Cycle, NothingIsEverBelowZero) {
  Dice dice(72);
  for (int round = 0; round < 60; ++round) {
    const auto run = run_cycle(any(dice), 12);
    ASSERT_TRUE(run);
    for (const CycleState& s : run->day_ends) {
      for (const double x : {s.water.tan_mg_l, s.water.nitrite_n_mg_l, s.water.nitrate_n_mg_l, s.bacteria.ammonia_oxidisers_mg_l,
                             s.bacteria.nitrite_oxidisers_mg_l}) {
        EXPECT_GE(x, 0);
        EXPECT_TRUE(std::isfinite(x));
      }
      EXPECT_TRUE(std::isfinite(s.water.kh_dkh));
      EXPECT_LE(s.water.tan_mg_l, run->highest_tan_mg_l);
      EXPECT_LE(s.water.nitrite_n_mg_l, run->highest_nitrite_n_mg_l);
    }
  }
}

/// The same equations by the simplest method, in steps so small that it will do.
CycleState by_small_steps(const Cycle& c, int days) {
  const Growth g = growth_in(c.temperature_c, c.oxygen_mg_l, c.ph);
  CycleState s = c.start;
  constexpr int steps = 20000;
  for (int i = 0; i < days * steps; ++i) {
    const double a = ammonia_oxidisers_growth_d(g, s.water.tan_mg_l) * s.bacteria.ammonia_oxidisers_mg_l;
    const double n = nitrite_oxidisers_growth_d(g, s.water.nitrite_n_mg_l, s.water.tan_mg_l) * s.bacteria.nitrite_oxidisers_mg_l;
    const double to_nitrite = a / 0.15, to_nitrate = n / 0.04;
    s.water.tan_mg_l += (c.load_mg_l_d - to_nitrite) / steps;
    s.water.nitrite_n_mg_l += (to_nitrite - to_nitrate) / steps;
    s.water.nitrate_n_mg_l += to_nitrate / steps;
    s.bacteria.ammonia_oxidisers_mg_l += (a - 0.05 * s.bacteria.ammonia_oxidisers_mg_l) / steps;
    s.bacteria.nitrite_oxidisers_mg_l += (n - 0.05 * s.bacteria.nitrite_oxidisers_mg_l) / steps;
  }
  return s;
}

TEST(Cycle, IsWhatSmallStepsGive) {
  Cycle crowded = with_fish(5);  // so many bacteria that a hundredth of a day is long
  crowded.start.bacteria = seeded(1, 8);
  for (const Cycle& c : {with_fish(), crowded}) {
    const CycleState slow = by_small_steps(c, 18), fast = run_cycle(c, 18)->day_ends.back();
    EXPECT_NEAR(fast.water.tan_mg_l, slow.water.tan_mg_l, 2e-3 * slow.water.tan_mg_l + 1e-6);
    EXPECT_NEAR(fast.water.nitrite_n_mg_l, slow.water.nitrite_n_mg_l, 2e-3 * slow.water.nitrite_n_mg_l + 1e-6);
    EXPECT_NEAR(fast.water.nitrate_n_mg_l, slow.water.nitrate_n_mg_l, 2e-3 * slow.water.nitrate_n_mg_l + 1e-6);
    EXPECT_NEAR(fast.bacteria.ammonia_oxidisers_mg_l, slow.bacteria.ammonia_oxidisers_mg_l,
                2e-3 * slow.bacteria.ammonia_oxidisers_mg_l);
  }
}

TEST(Cycle, EndsAtTheBalanceOfGrowthAndDeath) {
  const Cycle c = with_fish();
  const CycleState end = run_cycle(c, 400)->day_ends.back();
  EXPECT_NEAR(end.water.tan_mg_l, *tan_at_balance_mg_l(growth_in(c.temperature_c, c.oxygen_mg_l, c.ph)), 1e-4);
  const Bacteria settled = seeded(1, c.load_mg_l_d);
  EXPECT_NEAR(end.bacteria.ammonia_oxidisers_mg_l, settled.ammonia_oxidisers_mg_l, 1e-4);
  EXPECT_NEAR(end.bacteria.nitrite_oxidisers_mg_l, settled.nitrite_oxidisers_mg_l, 1e-4);
}

TEST(Cycle, AmmoniaPeaksFirstThenNitriteThenNitrateStays) {
  const auto run = run_cycle(with_fish(), 60);
  const auto day_of = [&run](double CycleWater::*what) {
    const auto less = [what](const CycleState& a, const CycleState& b) { return a.water.*what < b.water.*what; };
    return std::max_element(run->day_ends.begin(), run->day_ends.end(), less) - run->day_ends.begin();
  };
  EXPECT_LT(day_of(&CycleWater::tan_mg_l), day_of(&CycleWater::nitrite_n_mg_l));
  EXPECT_EQ(day_of(&CycleWater::nitrate_n_mg_l), 60);
}

// Common practice: three to six weeks without anything brought along.
TEST(Cycle, AFishlessStartTakesAboutFourWeeksAndMoreBacteriaShortenIt) {
  const Cycle c = fishless();
  const auto ready = run_cycle(c, 75)->ready_day;
  ASSERT_TRUE(ready);
  EXPECT_GE(*ready, 21);
  EXPECT_LE(*ready, 42);
  int before = 76;
  for (const double times : {0.1, 1.0, 10.0, 100.0}) {
    Cycle other = c;
    other.start.bacteria = {unseeded.ammonia_oxidisers_mg_l * times, unseeded.nitrite_oxidisers_mg_l * times};
    const auto day = run_cycle(other, 75)->ready_day;
    ASSERT_TRUE(day) << times;
    EXPECT_LT(*day, before) << times;
    before = *day;
  }
}

TEST(Cycle, ReadyMeansThatADoseIsGoneADayLater) {
  const Cycle c = fishless();
  const auto run = run_cycle(c, 75);
  const auto clear = [&run](int day) {
    const CycleWater& w = run->day_ends[static_cast<std::size_t>(day)].water;
    return w.tan_mg_l < cycle_ready_below_mg_l && w.nitrite_n_mg_l < cycle_ready_below_mg_l;
  };
  EXPECT_TRUE(clear(*run->ready_day));
  EXPECT_LT(run->day_ends[static_cast<std::size_t>(*run->ready_day - 1)].water.tan_mg_l, c.dosing->below_mg_l);
  EXPECT_FALSE(run_cycle(c, *run->ready_day - 1)->ready_day);
  EXPECT_FALSE(run_cycle(with_fish(), 75)->ready_day);
  Cycle grown = fishless();  // a whole settled filter: ready at once, the first dose being in the water
  grown.start.bacteria = seeded(1, 2);
  EXPECT_EQ(run_cycle(grown, 75)->ready_day, 1);
}

TEST(Cycle, SeedingKeepsAmmoniaAndNitriteLow) {
  Cycle c = with_fish(0.2);
  c.start.bacteria = seeded(0.25, 0.2);
  const auto run = run_cycle(c, 60);
  EXPECT_LT(run->highest_tan_mg_l, 0.3);
  EXPECT_LT(run->highest_nitrite_n_mg_l, 0.3);
}

TEST(Cycle, NitrateFromFoodCostsOneEquivalentAndFromAmmoniumTwo) {
  for (const double equivalents : {0.0, 1.0}) {
    Cycle c = with_fish();
    c.equivalents_per_mole = equivalents;
    c.start.bacteria = seeded(1, 0.3);
    const auto run = run_cycle(c, 40);
    const CycleWater& end = run->day_ends.back().water;
    const double to_nitrite = end.nitrite_n_mg_l + end.nitrate_n_mg_l, given = 40 * c.load_mg_l_d;
    EXPECT_NEAR(8 - end.kh_dkh, kh_drop_dkh(to_nitrite, 2) - kh_drop_dkh(given, equivalents), 1e-9);
  }
}

TEST(Cycle, AChangeTakesItsShareAtTheEndOfItsDay) {
  Cycle c = with_fish();
  const CycleState without = run_cycle(c, 7)->day_ends.back();
  c.changes = {{.day = 7, .fraction = 0.3}};
  const auto run = run_cycle(c, 8);
  const CycleState& with = run->day_ends[7];
  EXPECT_NEAR(with.water.tan_mg_l, 0.7 * without.water.tan_mg_l, 1e-12);
  EXPECT_NEAR(with.water.nitrate_n_mg_l, 0.7 * without.water.nitrate_n_mg_l + 0.3, 1e-12);
  EXPECT_NEAR(with.water.kh_dkh, 0.7 * without.water.kh_dkh + 0.3 * 8, 1e-12);
  EXPECT_EQ(with.bacteria.ammonia_oxidisers_mg_l, without.bacteria.ammonia_oxidisers_mg_l);
  EXPECT_NEAR(run->highest_tan_mg_l, without.water.tan_mg_l, 1e-12);  // the moment before the change counts
}

TEST(Cycle, OutsideItsRangeTheNearerEdgeAnswersOrNothingDoes) {
  Cycle c = with_fish();
  EXPECT_TRUE(cycle_valid(c) && cycle_valid(fishless()));
  EXPECT_EQ(run_cycle(c, 0)->day_ends.size(), 1u);
  EXPECT_FALSE(run_cycle(c, -1));
  EXPECT_FALSE(run_cycle(c, cycle_most_days + 1));
  for (const double temperature_c : {4.9, 33.1, static_cast<double>(NAN)}) {
    c.temperature_c = temperature_c;
    EXPECT_FALSE(run_cycle(c, 5));
    EXPECT_FALSE(cycle_valid(c));
  }
  c = with_fish();
  c.temperature_c = 33;
  Cycle at_30 = with_fish();
  at_30.temperature_c = 30;
  EXPECT_GT(run_cycle(c, 12)->day_ends.back().water.tan_mg_l, 0);
  EXPECT_NEAR(run_cycle(c, 12)->day_ends.back().water.tan_mg_l, run_cycle(at_30, 12)->day_ends.back().water.tan_mg_l, 1e-9);

  c = with_fish();
  c.load_mg_l_d = -3;
  c.oxygen_mg_l = 1e300;
  c.start.water = {-1, NAN, 1e300, -4};
  c.start.bacteria = {NAN, -1};
  c.fresh = {NAN, NAN, NAN, NAN};
  c.dosing = CycleDosing{NAN, NAN};
  c.changes = {{3, NAN}, {4, -1}, {5, 7}, {-2, 0.5}};
  EXPECT_FALSE(cycle_valid(c));
  const auto run = run_cycle(c, 8);
  ASSERT_TRUE(run);
  for (const CycleState& s : run->day_ends)
    for (const double x : {s.water.tan_mg_l, s.water.nitrite_n_mg_l, s.water.nitrate_n_mg_l, s.water.kh_dkh,
                           s.bacteria.ammonia_oxidisers_mg_l, s.bacteria.nitrite_oxidisers_mg_l}) {
      EXPECT_TRUE(std::isfinite(x));
      EXPECT_GE(x, 0);
    }
  EXPECT_EQ(seeded(NAN, 1).ammonia_oxidisers_mg_l, 0);
}

}  // namespace
}  // namespace shoalwright
