// SPDX-License-Identifier: MIT
// Oxygen before dawn: common practice, no source; the frame is that of US EPA 1986 (from memory). Figures of the four tanks were
// reckoned apart from this program.
#include <gtest/gtest.h>

#include "stocking/gas_transfer.h"
#include "support/mended.h"
#include "water/oxygen.h"

namespace shoalwright {
namespace {

const Catalog none;

Species fish(double adult_tl_cm, Body body = Body::fusiform) {
  static int made = 0;
  Species species = sample_species("own--fish-" + std::to_string(++made), Style::calm_mid, adult_tl_cm, body);
  species.life.group.least = 1;
  return species;
}

PlanBuilder open_tank(double length_cm, double width_cm, SurfaceMotion surface) {
  return a_plan().tank(length_cm, width_cm, 40).lid(false).surface(surface);
}

std::optional<Severity> of(const Plan& plan) { return severity_of(assess(plan, none), "oxygen"); }

/// The ordinary tank's own night with so many fish.
Plan with_fish(int count, SurfaceMotion surface = SurfaceMotion::quiet) {
  return a_plan().surface(surface).fish(fish(4.5), count);
}

TEST(Oxygen, JudgesFourTanksAsKeepersDo) {
  const auto sound =
      open_tank(88.4, 43.4, SurfaceMotion::gentle).fish(fish(4.5), 16).fish(fish(6.5), 8).fish(fish(5, Body::short_deep), 2);
  const auto small = open_tank(59, 29, SurfaceMotion::gentle).fish(fish(3.5), 10).fish(fish(5.5), 6);
  const auto heavy = [](SurfaceMotion surface) {
    return open_tank(119, 39, surface).fish(fish(12, Body::short_deep), 4).fish(fish(4.5), 12).fish(fish(6), 8).plan();
  };
  EXPECT_EQ(of(sound), std::nullopt);
  EXPECT_EQ(of(small), std::nullopt);
  EXPECT_EQ(of(heavy(SurfaceMotion::gentle)), Severity::watch);
  EXPECT_EQ(of(heavy(SurfaceMotion::rippled)), std::nullopt);
  EXPECT_EQ(of(open_tank(75, 30, SurfaceMotion::quiet).fish(fish(4.5), 40)), Severity::strain);
}

TEST(Oxygen, FollowsItsBands) {
  std::optional<Severity> last;
  bool seen[4] = {};
  for (int count = 1; count < 120; ++count) {
    const Assessment tank = assess(with_fish(count), none);
    const double dawn = *tank.air.dawn_mg_l;
    const std::optional<Severity> now = severity_of(tank, "oxygen");
    EXPECT_FALSE(last && (!now || *now > *last)) << "more fish never make it milder: " << count;
    if (dawn >= 6) {
      EXPECT_TRUE(!now || *now == Severity::watch) << "only what is said of a meal or a heat wave: " << dawn;
    } else {
      ASSERT_TRUE(now) << dawn;
      EXPECT_LE(*now, dawn >= 5 ? Severity::note : dawn >= 4 ? Severity::watch : Severity::strain) << dawn;
    }
    if (now) seen[static_cast<int>(*now)] = true;
    last = now;
  }
  for (const bool one : seen) EXPECT_TRUE(one) << "all four were met";
}

TEST(Oxygen, IsTheSameInAllViews) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict}) {
    Plan plan = open_tank(75, 30, SurfaceMotion::quiet).fish(fish(4.5), 40);
    plan.strictness = view;
    EXPECT_EQ(of(plan), Severity::strain);
  }
}

TEST(Oxygen, IsHarmOnlyWhereFishThatUseLittleSuffocateToo) {
  const Assessment mirror = assess(open_tank(75, 30, SurfaceMotion::quiet).fish(fish(4.5), 80), none);
  ASSERT_EQ(severity_of(mirror, "oxygen"), Severity::harm);
  EXPECT_EQ(finding_of(mirror, "oxygen")->text, "More oxygen is used than comes in") << "no number for what cannot be";
  const Assessment guessed = assess(open_tank(75, 30, SurfaceMotion::quiet).fish(fish(4.5), 80).assumed({"/gear/surface"}), none);
  EXPECT_EQ(severity_of(guessed, "oxygen"), Severity::strain);
}

TEST(Oxygen, SpeaksOfAHeatWaveOneStepMilder) {
  // Cool water holds enough on the plan's days for what is too much on the hottest.
  bool met = false;
  for (int count = 2; count < 120 && !met; ++count) {
    const Assessment tank = assess(a_plan().aim(18).surface(SurfaceMotion::gentle).fish(fish(4.5), count), none);
    const Finding* finding = finding_of(tank, "oxygen");
    if (!finding || finding->text.find("in heat") == std::string::npos) continue;
    met = true;
    EXPECT_GE(finding->severity, Severity::watch);
    EXPECT_NE(finding->why.find("21 °C"), std::string::npos) << finding->why;
  }
  EXPECT_TRUE(met);
}

TEST(Oxygen, IsAskedForByACardAndThenAWatch) {
  Species stream = fish(4.5);
  stream.water.oxygen_least_mg_l = *assess(a_plan().surface(SurfaceMotion::gentle).fish(stream, 6), none).air.dawn_mg_l + 0.2;
  const Assessment tank = assess(a_plan().surface(SurfaceMotion::gentle).fish(stream, 6), none);
  ASSERT_GT(*tank.air.dawn_mg_l, 6);
  const Finding* finding = finding_of(tank, "oxygen");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->severity, Severity::watch);
  EXPECT_EQ(finding->species, std::vector<std::string>{stream.id});
}

TEST(Oxygen, IsAStepMilderWhereAllBreatheAir) {
  Species labyrinth = fish(6);
  const auto at = [&](std::optional<double> least) {
    Species one = labyrinth;
    one.water.oxygen_least_mg_l = least;
    for (int count = 1; count < 60; ++count) {
      const Assessment tank = assess(a_plan().surface(SurfaceMotion::quiet).fish(one, count), none);
      if (*tank.air.dawn_mg_l < 5) return severity_of(tank, "oxygen");
    }
    return std::optional<Severity>();
  };
  EXPECT_EQ(at({}), Severity::watch);
  EXPECT_EQ(at(3), Severity::note);
}

TEST(Oxygen, IsMendedByTheSurfaceFirst) {
  const Plan plan = with_fish(30);
  ASSERT_TRUE(finding_of(assess(plan, none), "oxygen"));
  const Plan after = mended(plan, none, "oxygen");
  EXPECT_EQ(after.stock[0].count, 30);
  EXPECT_GT(*after.gear->surface, SurfaceMotion::quiet);
  EXPECT_FALSE(finding_of(assess(after, none), "oxygen"));
}

TEST(Oxygen, IsMendedByFoodAndThenByFewerWhereTheSurfaceIsPinned) {
  Plan plan = a_plan().surface(SurfaceMotion::quiet).feed(Ration::heavy).fish(fish(4.5), 30).fixed({"/gear"});
  for (int count = 1; count < 60; ++count) {
    plan.stock[0].count = count;
    if (of(plan) && *of(plan) <= Severity::watch) break;
  }
  const Plan less_food = mended(plan, none, "oxygen");
  EXPECT_LT(less_food.feeding->ration, Ration::heavy);
  EXPECT_EQ(less_food.stock[0].count, plan.stock[0].count);

  Plan light = a_plan().surface(SurfaceMotion::quiet).feed(Ration::light).fish(fish(4.5), 40).fixed({"/gear"});
  ASSERT_LE(*of(light), Severity::strain);
  const Plan fewer = mended(light, none, "oxygen");
  EXPECT_LT(fewer.stock[0].count, 40);
  const Assessment left = assess(fewer, none);
  EXPECT_GE(*left.air.dawn_mg_l, 5);
  EXPECT_GE(severity_of(left, "oxygen").value_or(Severity::note), Severity::watch);
}

TEST(Oxygen, IsNotJudgedWhereTheSurfaceOrTheUseIsNotKnown) {
  EXPECT_EQ(of(a_plan().fish(fish(4.5), 90)), std::nullopt);
  EXPECT_EQ(of(a_plan().flow(std::nullopt).fish(fish(4.5), 90)), std::nullopt);
  EXPECT_EQ(of(a_plan().surface(SurfaceMotion::still).planted({}).fish(fish(4.5), 90)), std::nullopt);
  EXPECT_EQ(of(a_plan().surface(SurfaceMotion::still).planted(Planting::dense)), std::nullopt) << "nobody lives there";
}

TEST(Oxygen, StopsTheOneTooMany) {
  const Species one = fish(4.5);
  const Assessment tank = assess(a_plan().tank(80, 35, 90).fill(85).surface(SurfaceMotion::still).fish(one, 1), none);
  ASSERT_EQ(tank.room.groups.size(), 1u);
  EXPECT_EQ(tank.room.groups[0].stopped_by, "oxygen");
  Plan most = a_plan().tank(80, 35, 90).fill(85).surface(SurfaceMotion::still).fish(one, *tank.room.groups[0].largest_count);
  EXPECT_FALSE(of(most) && *of(most) <= Severity::strain);
  ++most.stock[0].count;
  EXPECT_EQ(of(most), Severity::strain);
}

TEST(Oxygen, NeverMendsItselfByAnotherDegree) {
  std::optional<Severity> last;
  for (double t = 22; t < 35; ++t) {
    const std::optional<Severity> now = of(a_plan().aim(t).surface(SurfaceMotion::gentle).fish(fish(4.5), 30));
    EXPECT_FALSE(last && (!now || *now > *last)) << t;
    last = now;
  }
}

}  // namespace
}  // namespace shoalwright
