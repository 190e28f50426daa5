// SPDX-License-Identifier: MIT
#include "water/window.h"

#include <gtest/gtest.h>

#include <random>

#include "support/samples.h"

namespace shoalwright {
namespace {

Species needing(const std::string& id, std::optional<Range> tolerated, std::optional<Range> ideal) {
  Species s = sample_species(id, Style::calm_mid, 4);
  s.water.gh_dgh = {.tolerated = tolerated, .ideal = ideal};
  return s;
}

std::vector<const Species*> pointers(const std::vector<Species>& species) {
  std::vector<const Species*> out;
  for (const Species& s : species) out.push_back(&s);
  return out;
}

/// Made-up species with whole-number edges, a few of them silent.
std::vector<Species> random_stock(std::mt19937& random, int count) {
  std::vector<Species> stock;
  for (int i = 0; i < count; ++i) {
    const double low = static_cast<double>(random() % 20), high = low + 1 + static_cast<double>(random() % 20);
    std::optional<Range> tolerated = Range{low, high}, ideal;
    if (random() % 6 == 0) tolerated.reset();
    if (tolerated && high - low >= 2 && random() % 3 != 0) ideal = Range{low + 0.5, high - 0.5};
    stock.push_back(needing("s" + std::to_string(i), tolerated, ideal));
  }
  return stock;
}

// Brute force: a value lies in the shared window when it lies in the range of every species that has one.
TEST(SharedWindow, HoldsJustWhatEverySpeciesLivesIn) {
  std::mt19937 random(7);
  for (int round = 0; round < 400; ++round) {
    const std::vector<Species> stock = random_stock(random, 1 + static_cast<int>(random() % 5));
    const Window w = windows_of(Plan{}, pointers(stock)).gh_dgh;
    bool any = false, any_ideal = false;
    for (double value = -1; value <= 42; value += 0.25) {
      bool lives = true, thrives = true, said = false, ideal_said = false;
      for (const Species& s : stock) {
        const Need& need = s.water.gh_dgh;
        const auto in = [&](const std::optional<Range>& r) { return !r || (value >= r->low && value <= r->high); };
        lives = lives && in(need.tolerated);
        thrives = thrives && in(need.ideal) && in(need.tolerated);
        said = said || need.tolerated;
        ideal_said = ideal_said || need.ideal;
      }
      const bool inside = w.tolerated && value >= w.tolerated->low && value <= w.tolerated->high;
      const bool inside_ideal = w.ideal && value >= w.ideal->low && value <= w.ideal->high;
      EXPECT_EQ(inside, said && lives) << value;
      EXPECT_EQ(inside_ideal, ideal_said && thrives) << value;
      any = any || inside;
      any_ideal = any_ideal || inside_ideal;
    }
    EXPECT_EQ(w.tolerated.has_value(), any);
    EXPECT_EQ(w.ideal.has_value(), any_ideal);
  }
}

TEST(SharedWindow, AddingASpeciesNeverWidensIt) {
  std::mt19937 random(11);
  for (int round = 0; round < 400; ++round) {
    std::vector<Species> stock = random_stock(random, 4);
    const Window before = windows_of(Plan{}, pointers({stock.begin(), stock.end() - 1})).gh_dgh;
    const Window after = windows_of(Plan{}, pointers(stock)).gh_dgh;
    if (!before.low_by.empty() && !before.tolerated) {
      EXPECT_FALSE(after.tolerated);
    }
    if (before.tolerated && after.tolerated) {
      EXPECT_GE(after.tolerated->low, before.tolerated->low);
      EXPECT_LE(after.tolerated->high, before.tolerated->high);
    }
    if (before.ideal && after.ideal) {
      EXPECT_GE(after.ideal->low, before.ideal->low);
      EXPECT_LE(after.ideal->high, before.ideal->high);
    }
  }
}

TEST(SharedWindow, IdealLiesInsideTolerated) {
  std::mt19937 random(13);
  for (int round = 0; round < 400; ++round) {
    const std::vector<Species> stock = random_stock(random, 3);
    const Window w = windows_of(Plan{}, pointers(stock)).gh_dgh;
    if (!w.ideal) continue;
    ASSERT_TRUE(w.tolerated);
    EXPECT_GE(w.ideal->low, w.tolerated->low);
    EXPECT_LE(w.ideal->high, w.tolerated->high);
  }
}

TEST(SharedWindow, NamesWhoSetsEachEdgeTheFirstOnATie) {
  const std::vector<Species> stock{needing("a", Range{2, 15}, std::nullopt), needing("b", Range{4, 18}, std::nullopt),
                                   needing("c", Range{4, 15}, std::nullopt)};
  const Window w = windows_of(Plan{}, pointers(stock)).gh_dgh;
  EXPECT_EQ(w.low_by, "b");
  EXPECT_EQ(w.high_by, "a");
}

TEST(SharedWindow, WhereRangesDoNotMeetItNamesTheTwoThatDoNot) {
  const std::vector<Species> stock{needing("soft", Range{1, 5}, std::nullopt), needing("any", Range{2, 20}, std::nullopt),
                                   needing("hard", Range{10, 25}, std::nullopt)};
  const Window w = windows_of(Plan{}, pointers(stock)).gh_dgh;
  EXPECT_FALSE(w.tolerated);
  EXPECT_FALSE(w.margin);
  EXPECT_EQ(w.low_by, "hard");
  EXPECT_EQ(w.high_by, "soft");
}

TEST(SharedWindow, TouchingRangesMeetInOnePoint) {
  const std::vector<Species> stock{needing("a", Range{1, 8}, std::nullopt), needing("b", Range{8, 25}, std::nullopt)};
  const Window w = windows_of(Plan{}, pointers(stock)).gh_dgh;
  EXPECT_EQ(w.tolerated, (Range{8, 8}));
}

TEST(SharedWindow, UnknownSpeciesAndSilentOnesSetNoEdge) {
  const Species known = needing("a", Range{2, 15}, Range{4, 10}), silent = needing("b", std::nullopt, std::nullopt);
  const Window w = windows_of(Plan{}, {nullptr, &silent, &known, nullptr}).gh_dgh;
  EXPECT_EQ(w.tolerated, (Range{2, 15}));
  EXPECT_EQ(w.low_by, "a");
  const Window nothing = windows_of(Plan{}, {nullptr, &silent}).gh_dgh;
  EXPECT_FALSE(nothing.tolerated);
  EXPECT_FALSE(nothing.ideal);
  EXPECT_TRUE(nothing.low_by.empty());
}

TEST(WaterNow, IsTheAimElseTheSource) {
  Plan plan;
  plan.source.ph = 7.6;
  plan.source.gh_dgh = 13;
  plan.source.kh_dkh = 8;
  EXPECT_EQ(windows_of(plan, {}).ph.now, 7.6);
  WaterAim aim;
  aim.ph = 6.8;
  plan.water = aim;
  const Windows w = windows_of(plan, {});
  EXPECT_EQ(w.ph.now, 6.8);
  EXPECT_EQ(w.gh_dgh.now, 13);
  EXPECT_EQ(w.kh_dkh.now, 8);
}

TEST(WaterNow, TemperatureIsTheAimElseTheStocksBestNeverTheTaps) {
  Plan plan;
  plan.source.temperature_c = 14;
  EXPECT_FALSE(windows_of(plan, {}).temperature_c.now);
  Species s = sample_species("a", Style::calm_mid, 4);  // ideal 24 to 26, tolerated 22 to 28
  EXPECT_EQ(windows_of(plan, {&s}).temperature_c.now, 25);
  s.water.temperature_c = {.tolerated = Range{20, 28}, .ideal = std::nullopt};
  EXPECT_EQ(windows_of(plan, {&s}).temperature_c.now, 24);
  WaterAim aim;
  aim.temperature_c = 27;
  plan.water = aim;
  EXPECT_EQ(windows_of(plan, {&s}).temperature_c.now, 27);
}

TEST(WaterMargin, IsTheSignedDistanceToTheNearerEdge) {
  const Species s = needing("a", Range{4, 12}, std::nullopt);
  Plan plan;
  for (const auto& [now, margin] : {std::pair{5.0, 1.0}, {8.0, 4.0}, {11.0, 1.0}, {12.0, 0.0}, {15.0, -3.0}, {2.0, -2.0}}) {
    plan.source.gh_dgh = now;
    EXPECT_EQ(windows_of(plan, {&s}).gh_dgh.margin, margin);
  }
  plan.source.gh_dgh.reset();
  EXPECT_FALSE(windows_of(plan, {&s}).gh_dgh.margin);
}

TEST(Windows, EachQuantityMovesWithItsOwnNeedOnly) {
  const Species base = sample_species("a", Style::calm_mid, 4);
  const Windows before = windows_of(Plan{}, {&base});
  for (const auto quantity : {&Species::WaterNeeds::temperature_c, &Species::WaterNeeds::ph, &Species::WaterNeeds::gh_dgh,
                              &Species::WaterNeeds::kh_dkh}) {
    Species moved = base;
    (moved.water.*quantity).tolerated->low += 0.25;
    const Windows after = windows_of(Plan{}, {&moved});
    int changed = 0;
    changed += !(after.temperature_c == before.temperature_c);
    changed += !(after.ph == before.ph);
    changed += !(after.gh_dgh == before.gh_dgh);
    changed += !(after.kh_dkh == before.kh_dkh);
    EXPECT_EQ(changed, 1);
  }
}

}  // namespace
}  // namespace shoalwright
