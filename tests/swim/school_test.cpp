// SPDX-License-Identifier: MIT
// Fish that swim: where they may be, how they keep together, and that the picture they make on average is the spread.
#include "swim/school.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "stocking/layers.h"
#include "stocking/spread.h"
#include "stocking/style.h"
#include "support/builders.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

/// A plan with what is worked out of it.
struct Swim {
  explicit Swim(const Plan& of, const Catalog& catalog = the_catalog())
      : plan(of), stock(resolve_stock(plan, catalog)), bodies(bodies_of(plan)) {}
  School school(std::uint64_t seed, int most = 200) const { return school_of(plan, stock, bodies, seed, most); }

  Plan plan;
  std::vector<Kept> stock;
  BodyRooms bodies;
};

PlanBuilder community() {
  return a_plan()
      .tank(100, 40, 45)
      .floor(SubstrateKind::fine_sand, 3, 5)
      .kind("danio-rerio", 10)
      .kind("hoplisoma-sterbai", 8)
      .kind("paracheirodon-innesi", 12);
}

Plan stony() {
  PlanBuilder plan = community();
  Piece rock{.kind = "rock", .x_cm = 70, .z_cm = 22, .length_cm = 26, .depth_cm = 20, .height_cm = 24};
  plan.piece("branch");
  Plan whole = plan;
  whole.pieces.push_back(rock);
  return whole;
}

Plan weedy() { return community().piece("stem-plants", 2).piece("stone", 2).piece("cave"); }

/// What the grid of the scape says of a place, asked without the field that the school swims by.
bool is_taken(const BodyRooms& bodies, const SwimGroup& group, const SwimPoint& place) {
  const Scape& scape = bodies.scape();
  const TankGrid& grid = scape.grid;
  const auto cell = [&](float at, double from) {
    return static_cast<int>(std::floor((static_cast<double>(at) - from) / grid.cell_cm));
  };
  const int i = cell(place.x, grid.left_cm), k = cell(place.z, grid.front_cm), j = cell(place.y, grid.floor_cm);
  if (i < 0 || k < 0 || j < 0 || i >= grid.size.x || k >= grid.size.z || j >= grid.size.y) return true;
  const std::size_t at = grid.size.at(i, k, j);
  if (grid.taken[at] || scape.solid[at]) return true;
  return scape.growth[at] && scape.pieces[scape.growth[at] - 1u].kind->gap_cm < 2 * group.half_depth_cm;
}

TEST(School, IsNeverInsideAnythingNorOutOfTheWater) {
  Plan bow = weedy();
  bow.tank.shape = Shape::bow_front;
  bow.tank.bow_cm = 8;
  add(bow, sample_species("deep", Style::centrepiece, 9, Body::short_deep), 2);
  add(bow, sample_species("snail", Style::invertebrate, 2), 4);
  constexpr int steps = 2400 / plans_step;
  for (const Swim& swim : {Swim(stony()), Swim(bow)})
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
      School school = swim.school(seed);
      ASSERT_GE(school.fish.size(), 30u);
      int close = 0;
      for (int t = 0; t < steps; ++t) {
        step(school, t % 2 ? 0.1f : 1.0f / 60);
        for (const Swimmer& fish : school.fish) {
          const SwimGroup& group = school.groups[fish.group];
          ASSERT_FALSE(is_taken(swim.bodies, group, fish.place)) << group.species << " seed " << seed << " step " << t;
          ASSERT_LE(static_cast<double>(fish.place.y), swim.plan.tank.fill_cm);
          close += clearance_at(school.room, group.field, fish.place).cm < group.half_depth_cm;
        }
      }
      EXPECT_LT(close, steps * static_cast<int>(school.fish.size()) / 100) << "all but always half its height off everything";
    }
}

TEST(School, OfABareTankStaysInsideTheGlass) {
  const Swim swim(a_plan().tank(60, 30, 30).kind("danio-rerio", 12));
  School school = swim.school(5);
  for (int t = 0; t < 3000 / plans_step; ++t) {
    step(school, 0.1f);
    for (const Swimmer& fish : school.fish) {
      ASSERT_TRUE(fish.place.x > 0 && fish.place.x < 60) << fish.place.x;
      ASSERT_TRUE(fish.place.z > 0 && fish.place.z < 30) << fish.place.z;
      ASSERT_TRUE(fish.place.y > 0 && fish.place.y < 27.5f) << fish.place.y;
    }
  }
}

TEST(School, GoesOnTheSameWayFromTheSameSeed) {
  const Swim swim(stony());
  School a = swim.school(7), b = swim.school(7), c = swim.school(8);
  for (int t = 0; t < 300; ++t) step(a, 0.05f), step(b, 0.05f), step(c, 0.05f);
  ASSERT_EQ(a.fish.size(), 30u);
  ASSERT_EQ(b.fish.size(), 30u);
  bool other = false;
  for (std::size_t i = 0; i < a.fish.size(); ++i) {
    EXPECT_EQ(a.fish[i].place.x, b.fish[i].place.x);
    EXPECT_EQ(a.fish[i].place.y, b.fish[i].place.y);
    EXPECT_EQ(a.fish[i].velocity.z, b.fish[i].velocity.z);
    other |= a.fish[i].place.x != c.fish[i].place.x;
  }
  EXPECT_TRUE(other);
}

TEST(School, HoldsLongStepsAtATenthOfASecond) {
  const Swim swim(stony());
  School a = swim.school(1), b = swim.school(1), still = swim.school(1);
  step(a, 30);
  step(b, 0.1f);
  step(still, -1);
  const School before = swim.school(1);
  for (std::size_t i = 0; i < a.fish.size(); ++i) {
    EXPECT_EQ(a.fish[i].place.x, b.fish[i].place.x);
    EXPECT_EQ(still.fish[i].place.x, before.fish[i].place.x);
  }
}

TEST(School, IsCutInProportionAndKeepsOneOfEach) {
  const Swim swim(
      a_plan().tank(150, 50, 50).kind("danio-rerio", 300).kind("paracheirodon-innesi", 150).kind("betta-splendens", 1));
  const auto counts = [](const School& school) {
    std::vector<int> of(school.groups.size(), 0);
    for (const Swimmer& fish : school.fish) ++of[fish.group];
    return of;
  };
  const std::vector<int> cut = counts(swim.school(1, 60));
  ASSERT_EQ(cut.size(), 3u);
  EXPECT_LE(cut[0] + cut[1] + cut[2], 60);
  EXPECT_NEAR(cut[0], 40, 2);
  EXPECT_NEAR(cut[1], 20, 2);
  EXPECT_EQ(cut[2], 1);
  EXPECT_EQ(counts(swim.school(1, 1000)), (std::vector<int>{300, 150, 1}));
  EXPECT_EQ(counts(swim.school(1, 2)), (std::vector<int>{1, 1}));
  EXPECT_TRUE(swim.school(1, 0).fish.empty());
}

TEST(School, IsEmptyWithoutWaterOrWithoutCards) {
  Plan dry = stony();
  dry.tank.fill_cm = 0;
  School school = Swim(dry).school(1);
  step(school, 0.1f);
  EXPECT_TRUE(school.fish.empty());
  EXPECT_TRUE(Swim(a_plan().kind("nobody-knows", 5)).school(1).fish.empty());
}

TEST(School, TurnsAndSpeedsUpCalmly) {
  for (const Swim& swim : {Swim(stony()), Swim(weedy())}) {
    School school = swim.school(4);
    constexpr float s = 1.0f / 60;
    for (int t = 0; t < 3600 / plans_step; ++t) {
      const std::vector<Swimmer> before = school.fish;
      step(school, s);
      for (std::size_t i = 0; i < before.size(); ++i) {
        const Swimmer &was = before[i], &is = school.fish[i];
        const float most = 2 * school.groups[is.group].cruise_cm_s;
        ASSERT_LE(std::hypot(is.heading.x - was.heading.x, is.heading.z - was.heading.z), 2.6f * s);
        ASSERT_LE(std::hypot(is.velocity.x - was.velocity.x, is.velocity.z - was.velocity.z), 3.2f * s * most);
        ASSERT_LE(std::hypot(is.velocity.x, is.velocity.z), 0.65f * most);
        ASSERT_LE(std::abs(is.velocity.y), 0.3f * most + 0.5f) << "mostly level";
      }
    }
  }
}

struct Together {
  double polarisation = 0, nearest_bl = 0;
};

/// On average over some minutes.
Together together(GroupKind kind, std::uint64_t seed) {
  Species species = sample_species("made-up", Style::calm_mid, 5);
  species.life.group.kind = kind;
  const Swim swim(a_plan().tank(120, 50, 50).fish(species, 12));
  School school = swim.school(seed);
  Together mean;
  constexpr int looks = 240 / plans_step;
  for (int t = -300; t < looks * 10; ++t) {
    step(school, 0.1f);
    if (t < 0 || t % 10) continue;
    SwimPoint sum;
    for (const Swimmer& fish : school.fish) {
      sum = sum + fish.heading;
      float nearest = 1e9f;
      for (const Swimmer& other : school.fish) {
        const SwimPoint way = other.place + fish.place * -1;
        if (&other != &fish) nearest = std::min(nearest, std::hypot(way.x, way.y, way.z));
      }
      mean.nearest_bl += static_cast<double>(nearest) / 5 / 12 / looks;
    }
    mean.polarisation += static_cast<double>(std::hypot(sum.x, sum.z)) / 12 / looks;
  }
  return mean;
}

// In schools the nearest neighbour is about one length off, in loose shoals one to three: Partridge, B.L., Pitcher, T., Cullen,
// J.M. & Wilson, J. 1980. The three-dimensional structure of fish schools. Behavioral Ecology and Sociobiology 6: 277-288 (from
// memory). Twelve with nothing in common would have a polarisation near the root of pi/48, 0.26.
TEST(School, OfAShoalingKindKeepsTogetherAndLonersDoNot) {
  for (std::uint64_t seed = 1; seed <= 3; ++seed) {
    const Together shoal = together(GroupKind::shoal, seed), loners = together(GroupKind::solitary, seed);
    EXPECT_GT(shoal.polarisation, 0.7) << seed;
    EXPECT_LT(loners.polarisation, 0.45) << seed;
    EXPECT_GT(shoal.nearest_bl, 0.7) << seed;
    EXPECT_LT(shoal.nearest_bl, 2) << seed;
    EXPECT_GT(loners.nearest_bl, 1.4 * shoal.nearest_bl) << seed;
  }
}

TEST(School, OfCrawlersStaysOnTheFloorAndIsSlow) {
  const Swim swim(a_plan().tank(60, 30, 30).fish(sample_species("snail", Style::invertebrate, 3), 5));
  School school = swim.school(1);
  for (int t = 0; t < 600; ++t) step(school, 0.1f);
  for (const Swimmer& fish : school.fish) {
    EXPECT_LT(fish.place.y, 2);
    EXPECT_LT(std::hypot(fish.velocity.x, fish.velocity.z), 0.3f);
  }
}

/// How the time of a school compares with the spread, on a grid that both are summed into.
struct Likeness {
  double correlation = 0;         ///< Pearson's, over the boxes of all groups
  std::vector<double> in_thirds;  ///< share of its time that each group is in surface, mid, bottom, one group after the other
};

constexpr int box_x = 8, box_z = 3, box_y = 9, boxes = box_x * box_z * box_y;

Likeness likeness(const Swim& swim, std::uint64_t seed, bool seeks_depth) {
  BodyRooms bodies = swim.bodies;
  const Spread spread = spread_of(swim.plan, swim.stock, bodies);
  const double line_cm = swim.bodies.levels()[0].high_cm, third_cm = line_cm - swim.bodies.levels()[0].low_cm;
  const auto part = [](double at, double from, double to, int parts) {
    return std::clamp(static_cast<int>(std::floor((at - from) / (to - from) * parts)), 0, parts - 1);
  };
  const auto box = [&](std::size_t group, double x_cm, double y_cm, double z_cm) {
    const int x = part(x_cm, spread.left_cm, spread.left_cm + spread.size.x * spread.step_x_cm, box_x),
              z = part(z_cm, spread.front_cm, spread.front_cm + spread.size.z * spread.step_z_cm, box_z),
              y = part(y_cm, line_cm - 3 * third_cm, line_cm, box_y);
    return group * boxes + static_cast<std::size_t>((y * box_z + z) * box_x + x);
  };
  std::vector<double> meant(spread.groups.size() * boxes, 0), seen(meant);
  for (std::size_t g = 0; g < spread.groups.size(); ++g)
    for (int y = 0; y < spread.size.y; ++y)
      for (int z = 0; z < spread.size.z; ++z)
        for (int x = 0; x < spread.size.x; ++x)
          meant[box(g, spread.left_cm + (x + 0.5) * spread.step_x_cm, spread.floor_cm + (y + 0.5) * spread.step_y_cm,
                    spread.front_cm + (z + 0.5) * spread.step_z_cm)] += spread.groups[g].fish[spread.size.at(x, z, y)];

  School school = swim.school(seed);
  school.seeks_depth = seeks_depth;
  // What wanders together comes round slowly: ten minutes show that it is elsewhere, fifty that it is where it should be.
  const int warm = 600, counted = (seeks_depth ? 30000 : 6000) / (plans_step > 1 ? 2 : 1);
  for (int t = 0; t < warm; ++t) step(school, 0.1f);
  for (int t = 0; t < counted; ++t) {
    step(school, 0.1f);
    for (const Swimmer& fish : school.fish)
      seen[box(fish.group, static_cast<double>(fish.place.x), static_cast<double>(fish.place.y),
               static_cast<double>(fish.place.z))] += 1.0 / counted;
  }
  const auto n = static_cast<double>(seen.size());
  double sum_a = 0, sum_b = 0, aa = 0, bb = 0, ab = 0;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    sum_a += meant[i], sum_b += seen[i];
    aa += meant[i] * meant[i], bb += seen[i] * seen[i], ab += meant[i] * seen[i];
  }
  EXPECT_NEAR(sum_a, sum_b, 1e-6) << "as many fish in both";
  Likeness found{(ab - sum_a * sum_b / n) / std::sqrt((aa - sum_a * sum_a / n) * (bb - sum_b * sum_b / n)), {}};
  for (std::size_t g = 0; g < school.groups.size(); ++g)
    for (std::size_t third = 0; third < 3; ++third) {
      double time = 0;
      const std::size_t from = g * boxes + (2 - third) * (boxes / 3);
      for (std::size_t i = from; i < from + boxes / 3; ++i) time += seen[i];
      found.in_thirds.push_back(time / swim.stock[g].count);
    }
  return found;
}

TEST(School, IsOnAverageWhereTheSpreadSays) {
  const std::uint64_t seeds = plans_step > 1 ? 1 : 3;
  for (const Swim& swim : {Swim(stony()), Swim(weedy())})
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
      const Likeness with = likeness(swim, seed, true), without = likeness(swim, seed, false);
      EXPECT_GE(with.correlation, 0.8) << seed;
      EXPECT_LT(without.correlation, 0.5) << "without its likings it is elsewhere, " << seed;
      for (std::size_t g = 0; g < swim.stock.size(); ++g)
        for (std::size_t third = 0; third < 3; ++third)
          EXPECT_NEAR(with.in_thirds[3 * g + third], depth_shares(*swim.stock[g].species)[third], 0.1) << swim.stock[g].id;
    }
}

}  // namespace
}  // namespace shoalwright
