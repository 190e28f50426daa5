// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "support/random_stock.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

const Tightest* entry_of(const Assessment& assessment, std::string_view margin) {
  for (const Tightest& entry : assessment.tightest)
    if (entry.margin == margin) return &entry;
  return nullptr;
}

double fullest(const Room& room) {
  double most = 0;
  for (const Layer& layer : room.layers) most = std::max(most, layer.crowding.value_or(0));
  return most;
}

/// Worst value over scale: width of the tolerated window for water, what is needed or allowed for the rest.
double share_of(const Tightest& entry, const Plan& plan, const Assessment& a) {
  const auto over_width = [&](const Window& window) { return entry.value / (window.tolerated->high - window.tolerated->low); };
  if (entry.margin == "temperature_c") return over_width(a.water.temperature_c);
  if (entry.margin == "ph") return over_width(a.water.ph);
  if (entry.margin == "gh_dgh") return over_width(a.water.gh_dgh);
  if (entry.margin == "kh_dkh") return over_width(a.water.kh_dkh);
  if (entry.margin == "nitrate_mg_l") return entry.value / nitrate_limit_mg_l(plan);
  if (entry.margin == "dawn_mg_l") return entry.value / *a.air.limit_mg_l;
  if (entry.margin == "ammonia_nh3_mg_l") return entry.value / 0.02;
  if (entry.margin == "floor_cm2") return entry.value / a.room.floor_cm2;
  if (entry.margin == "crowding_l_cm") return 1 - fullest(a.room);
  for (const GroupRoom& group : a.room.groups)
    if (entry.set_by.front() == group.species) return entry.value / group.lane_needed_cm;
  return NAN;
}

TEST(Tightest, WithoutChangesNitrateIsTheMarginOfAYearAndStandsFirst) {
  Plan plan;
  for (const NamedPlan& named : all_plans())
    if (named.name.rfind("riverbank", 0) == 0) plan = named.plan;
  plan.upkeep->change_fraction = 0;
  const Assessment a = assess_at_once(plan, catalog());
  ASSERT_FALSE(a.tightest.empty());
  EXPECT_EQ(a.tightest.front().margin, "nitrate_mg_l");
  const double rise = *nitrate_rise_mg_l_d(a.load, a.volume);
  EXPECT_NEAR(a.tightest.front().value, nitrate_limit_mg_l(plan) - (*plan.source.nitrate_mg_l + 365 * rise), 1e-9);
  plan.source.nitrate_mg_l.reset();
  EXPECT_EQ(entry_of(assess_at_once(plan, catalog()), "nitrate_mg_l"), nullptr) << "not known, so not judged";
}

TEST(Tightest, ListsEachMarginOnceTheWorstForItsScaleFirst) {
  for (const NamedPlan& named : many_plans()) {
    const Assessment a = assess_at_once(named.plan, catalog());
    std::set<std::string> names;
    double last = -INFINITY;
    for (const Tightest& entry : a.tightest) {
      EXPECT_TRUE(names.insert(entry.margin).second) << named.name << " " << entry.margin;
      EXPECT_FALSE(entry.set_by.empty()) << named.name << " " << entry.margin;
      const bool gap = (entry.margin == "temperature_c" && !a.water.temperature_c.tolerated) ||
                       (entry.margin == "ph" && !a.water.ph.tolerated) ||
                       (entry.margin == "gh_dgh" && !a.water.gh_dgh.tolerated) ||
                       (entry.margin == "kh_dkh" && !a.water.kh_dkh.tolerated);
      if (gap) {
        EXPECT_LT(entry.value, 0) << "windows that do not meet: " << named.name;
        EXPECT_EQ(entry.set_by.size(), 2u);
        continue;
      }
      const double share = share_of(entry, named.plan, a);
      if (!std::isfinite(share)) continue;  // a window of no width
      EXPECT_GE(share, last - 1e-9) << named.name << " " << entry.margin;
      last = std::max(last, share);
    }
  }
}

TEST(Tightest, WaterIsTheMarginOfItsWindow) {
  for (const NamedPlan& named : many_plans()) {
    const Assessment a = assess_at_once(named.plan, catalog());
    if (const Tightest* entry = entry_of(a, "gh_dgh"); entry && a.water.gh_dgh.tolerated) {
      EXPECT_EQ(entry->value, *a.water.gh_dgh.margin);
      EXPECT_EQ(entry->set_by.size(), 1u);
    }
  }
}

TEST(Tightest, NeverSaysOverWhereEveryLevelHasRoom) {
  int with_room = 0, without = 0;
  for (const NamedPlan& named : many_plans()) {
    const Assessment a = assess_at_once(named.plan, catalog());
    const Tightest* entry = entry_of(a, "crowding_l_cm");
    if (!entry) continue;
    const bool room = fullest(a.room) <= 1;
    ++(room ? with_room : without);
    EXPECT_EQ(entry->value >= 0, room) << named.name << ": " << entry->value << " at " << fullest(a.room);
    EXPECT_EQ(*entry->animals >= 0, room) << named.name;
  }
  EXPECT_GT(with_room, 40 / plans_step);
  EXPECT_GT(without, 40 / plans_step);
}

TEST(Tightest, CrowdingIsWhatTheFullestLevelHasSpareOverItsDepth) {
  // 20 L open in each third of 25 cm of water; 4 fish of 2.46 L in the middle leave 10.16 L over 8.33 cm.
  Species species = sample_species("own--fish", Style::calm_mid, 4.5);
  species.life.depth = {0, 1, 0};
  species.life.group.least = 1;
  const Assessment a = assess_at_once(a_plan().tank(60, 40, 27.5).fish(species, 4), Catalog{});
  const Tightest* entry = entry_of(a, "crowding_l_cm");
  ASSERT_TRUE(entry);
  EXPECT_NEAR(entry->value, (20 - 4 * 2.460375) / (25.0 / 3), 1e-9);
  EXPECT_EQ(entry->animals, 4);  // the fifth to eighth fit
  EXPECT_EQ(entry->unit, "L/cm");
}

TEST(Tightest, AnimalsAreHowManyMoreOfTheLimitingKindFit) {
  for (const NamedPlan& named : many_plans()) {
    const Assessment before = assess_at_once(named.plan, catalog());
    const Tightest* entry = entry_of(before, "nitrate_mg_l");
    if (!entry || !entry->animals || *entry->animals < 0 || *entry->animals > 5000 || named.plan.stock.size() != 1) continue;
    for (const int more : {0, 1}) {
      Plan plan = named.plan;
      plan.stock[0].count += *entry->animals + more;
      const Assessment after = assess_at_once(plan, catalog());
      EXPECT_EQ(entry_of(after, "nitrate_mg_l")->value < -1e-9, more == 1)
          << named.name << " with " << *entry->animals + more << " more";
    }
  }
}

TEST(Tightest, LaneAndFloorAreCountedInTheOnesWhoSetThem) {
  Species shoal = sample_species("own--catfish", Style::bottom_shoal, 5);
  shoal.life.group.least = 1;
  const Assessment a = assess_at_once(a_plan().tank(60, 30, 40).fish(shoal, 4), Catalog{});
  const Tightest *floor = entry_of(a, "floor_cm2"), *lane = entry_of(a, "lane_cm");
  ASSERT_TRUE(floor && lane);
  EXPECT_NEAR(floor->value, a.room.floor_cm2 * (1 - *a.room.floor_crowding), 1e-9);
  EXPECT_EQ(floor->set_by, std::vector<std::string>{"own--catfish"});
  EXPECT_NEAR(lane->value, 60 - 8 * 5, 1e-9);
  EXPECT_FALSE(lane->animals) << "a lane is as long for one as for many";
}

TEST(Tightest, DawnIsWhatIsLeftOverTheMostThatIsAskedFor) {
  Species small = sample_species("own--small", Style::calm_mid, 4), large = sample_species("own--large", Style::calm_mid, 9);
  small.life.group.least = large.life.group.least = 1;
  small.water.oxygen_least_mg_l = 6;
  Plan plan = a_plan().surface(SurfaceMotion::gentle).fish(small, 6).fish(large, 2);
  const Assessment a = assess_at_once(plan, Catalog{});
  const Tightest* dawn = entry_of(a, "dawn_mg_l");
  ASSERT_TRUE(dawn && dawn->animals);
  EXPECT_NEAR(dawn->value, *a.air.dawn_mg_l - 6, 1e-9);
  EXPECT_EQ(dawn->unit, "mg/L");
  for (const int more : {0, 1}) {
    Plan fuller = plan;
    fuller.stock[1].count += *dawn->animals + more;  // the large ones use the most
    const Tightest left = *entry_of(assess_at_once(fuller, Catalog{}), "dawn_mg_l");
    EXPECT_EQ(left.value < -1e-9, more == 1) << *dawn->animals + more << " more";
  }
  Plan dark = plan;
  dark.gear.reset();
  EXPECT_FALSE(entry_of(assess_at_once(dark, Catalog{}), "dawn_mg_l"));
}

TEST(Tightest, DawnCountsHowManyAreTooManyWhereMoreIsUsedThanComesIn) {
  Species fish = sample_species("own--fish", Style::calm_mid, 6);
  fish.life.group.least = 1;
  Plan plan = a_plan().surface(SurfaceMotion::still).fish(fish, 80);
  const Assessment over = assess_at_once(plan, Catalog{});
  ASSERT_EQ(*over.air.dawn_mg_l, 0);
  const Tightest* dawn = entry_of(over, "dawn_mg_l");
  ASSERT_TRUE(dawn && dawn->animals);
  EXPECT_LT(*dawn->animals, -1);
  plan.stock[0].count += *dawn->animals;
  EXPECT_GE(entry_of(assess_at_once(plan, Catalog{}), "dawn_mg_l")->value, -1e-9);
}

TEST(Tightest, AmmoniaIsWhatWasMeasuredUnderTheTradesLimit) {
  Species fish = sample_species("own--fish", Style::calm_mid, 6);
  fish.life.group.least = 1;
  Measured measured;
  measured.ammonia_mg_l = 1;
  measured.ph = 7.5;
  const Assessment a = assess_at_once(a_plan().fish(fish, 4).measured(measured), Catalog{});
  const Tightest* ammonia = entry_of(a, "ammonia_nh3_mg_l");
  ASSERT_TRUE(ammonia);
  EXPECT_NEAR(ammonia->value, 0.02 - *a.load.ammonia_nh3_mg_l, 1e-12);
  EXPECT_FALSE(ammonia->animals) << "what was measured is not counted in fish";
  EXPECT_EQ(ammonia->set_by, std::vector<std::string>{"own--fish"});
  EXPECT_FALSE(entry_of(assess_at_once(a_plan().fish(fish, 4), Catalog{}), "ammonia_nh3_mg_l"));
}

TEST(Tightest, IsNothingWithoutAnimals) { EXPECT_TRUE(assess_at_once(a_plan(), catalog()).tightest.empty()); }

}  // namespace
}  // namespace shoalwright
