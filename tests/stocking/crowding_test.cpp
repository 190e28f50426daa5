// SPDX-License-Identifier: MIT
#include "stocking/crowding.h"

#include <gtest/gtest.h>

#include <cmath>

#include "stocking/least_tank.h"
#include "stocking/limits.h"
#include "stocking/style.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

constexpr Style all_styles[] = {Style::darting_surface,  Style::surface_hover, Style::calm_mid,           Style::active_mid,
                                Style::small_livebearer, Style::bottom_shoal,  Style::territorial_bottom, Style::centrepiece,
                                Style::grazer,           Style::invertebrate};

Demand group(int n, double length_cm, Style style) {
  return {.count = static_cast<double>(n),
          .personal_l = personal_volume_l(style_facts(style).room_bl3, Body::fusiform, length_cm),
          .depth = style_facts(style).depth};
}

LayerWater evenly(const std::array<double, 3>& water_l, double plants) { return {water_l, {plants, plants, plants}}; }

double busiest(const std::vector<Demand>& stock, double open_l) {
  double worst = 0;
  for (const auto& c : layer_crowding(stock, evenly({open_l / 3, open_l / 3, open_l / 3}, 0)))
    worst = std::max(worst, c.value_or(1e9));
  return worst;
}

double on_floor(double n, double length_cm, Style style, double floor_cm2) {
  return n * floor_need_cm2(style, Body::fusiform, length_cm) / floor_cm2;
}

// Common practice, no source: what keepers' rules of thumb say of ordinary plans, as crowding of the busiest of three equal
// layers. Open litres: 38 L tank 28.5, 75 L long 53.2 (75 x 30 x 24.9 less a twentieth), 75 L tall 58.0, 200 L 153.0.
TEST(CrowdingByPractice, SmallShoalsInSmallTanks) {
  EXPECT_NEAR(busiest({group(6, 4.5, Style::calm_mid)}, 28.5), 0.93, 0.005);
  EXPECT_NEAR(busiest({group(8, 4.5, Style::calm_mid)}, 28.5), 1.24, 0.005);
  EXPECT_NEAR(busiest({group(12, 4.5, Style::calm_mid)}, 28.5), 1.86, 0.005);
  EXPECT_NEAR(busiest({group(12, 4.5, Style::calm_mid)}, 53.2), 1.00, 0.005);
  EXPECT_NEAR(busiest({group(12, 4.5, Style::calm_mid)}, 58.0), 0.92, 0.005);
  EXPECT_NEAR(busiest({group(8, 4.5, Style::calm_mid)}, 53.2), 0.67, 0.005);
  EXPECT_NEAR(busiest({group(10, 1.8, Style::calm_mid)}, 14), 0.61, 0.005);
}

TEST(CrowdingByPractice, ActiveAndLargeFish) {
  EXPECT_NEAR(busiest({group(8, 5, Style::active_mid)}, 53.2), 0.79, 0.006);
  EXPECT_NEAR(busiest({group(8, 5, Style::active_mid)}, 28.5), 1.48, 0.006);
  EXPECT_NEAR(busiest({group(6, 10, Style::active_mid)}, 153), 0.72, 0.005);
  EXPECT_NEAR(busiest({group(1, 6, Style::centrepiece)}, 7.5), 1.101, 0.0005);
  EXPECT_NEAR(busiest({group(1, 6, Style::centrepiece)}, 14), 0.59, 0.005);
  EXPECT_NEAR(busiest({group(1, 6, Style::centrepiece)}, 28.5), 0.29, 0.005);
  EXPECT_NEAR(busiest({group(1, 12, Style::centrepiece)}, 53.2), 0.54, 0.005);
}

TEST(CrowdingByPractice, PlantedTanksOfDiscFish) {
  const auto planted = [](int n, double length_cm, double length, double width, double depth) {
    const double third = length * width * depth / 3000;
    double worst = 0;
    for (const auto& c : layer_crowding({group(n, length_cm, Style::centrepiece)}, evenly({third, third, third}, 0.10)))
      worst = std::max(worst, *c);
    return worst;
  };
  EXPECT_NEAR(planted(6, 18, 150, 60, 52), 0.82, 0.006);
  EXPECT_NEAR(planted(2, 15, 90, 40, 38), 0.68, 0.006);
}

TEST(CrowdingByPractice, FloorOfShoalsAndHolders) {
  EXPECT_NEAR(on_floor(6, 5.5, Style::bottom_shoal, 2025), 0.69, 0.005);
  EXPECT_NEAR(on_floor(6, 5.5, Style::bottom_shoal, 1125), 1.24, 0.005);
  EXPECT_NEAR(on_floor(8, 2.5, Style::bottom_shoal, 1125), 0.40, 0.005);
  EXPECT_NEAR(on_floor(1, 7, Style::territorial_bottom, 1620), 0.76, 0.005);
  EXPECT_NEAR(on_floor(2, 6, Style::territorial_bottom, 1620), 1.11, 0.005);
  EXPECT_NEAR(on_floor(2, 6, Style::territorial_bottom, 2520), 0.71, 0.005);
  // six eel shapes of 9 and of 10 cm on 60 x 30
  EXPECT_NEAR(6 * floor_need_cm2(Style::bottom_shoal, Body::eel, 9) / 1620, 0.60, 0.005);
  EXPECT_NEAR(6 * floor_need_cm2(Style::bottom_shoal, Body::eel, 10) / 1620, 0.73, 0.005);
}

// Open water for one fish at crowding 1.10, common practice, no source.
TEST(CrowdingByPractice, WaterForOneFish) {
  const auto litres = [](Style style, double length_cm) { return busiest({group(1, length_cm, style)}, 1) / 1.10; };
  EXPECT_NEAR(litres(Style::calm_mid, 4.5), 4.0, 0.05);
  EXPECT_NEAR(litres(Style::calm_mid, 10), 17, 0.5);
  EXPECT_NEAR(litres(Style::calm_mid, 15), 35, 0.5);
  EXPECT_NEAR(litres(Style::centrepiece, 6), 7.5, 0.05);
  EXPECT_NEAR(litres(Style::centrepiece, 15), 39, 0.5);
  EXPECT_NEAR(litres(Style::centrepiece, 18), 54, 0.5);
  EXPECT_NEAR(litres(Style::centrepiece, 32), 153, 0.5);
}

TEST(Crowding, SharesOfEveryStyleAddUpToOne) {
  for (const Style style : all_styles) {
    const auto& depth = style_facts(style).depth;
    EXPECT_NEAR(depth[0] + depth[1] + depth[2], 1, 1e-12);
  }
}

TEST(Crowding, TwiceTheFishIsTwiceTheCrowding) {
  const std::array<double, 3> water{10, 20, 15};
  const auto one = layer_crowding({group(5, 4, Style::calm_mid)}, evenly(water, 0.1)),
             two = layer_crowding({group(10, 4, Style::calm_mid)}, evenly(water, 0.1));
  const auto split = layer_crowding({group(5, 4, Style::calm_mid), group(5, 4, Style::calm_mid)}, evenly(water, 0.1));
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_NEAR(*two[i], 2 * *one[i], 1e-12);
    EXPECT_NEAR(*two[i], *split[i], 1e-12);
  }
}

TEST(Crowding, PlantsTakeRoomFromLargerFishOnly) {
  Demand small = group(8, 2.2, Style::calm_mid);
  const std::array<double, 3> water{10, 10, 10};
  const double kept_out = *layer_crowding({small}, evenly(water, 0.2))[1];
  small.plants_are_room = true;
  EXPECT_NEAR(kept_out, *layer_crowding({small}, evenly(water, 0.2))[1] / (1 - 0.7 * 0.2), 1e-12);
  EXPECT_EQ(layer_crowding({small}, evenly(water, 0.2)), layer_crowding({small}, evenly(water, 0)));
  EXPECT_LT(plant_share(Planting::none), plant_share(Planting::light));
  EXPECT_LT(plant_share(Planting::light), plant_share(Planting::medium));
  EXPECT_LT(plant_share(Planting::medium), plant_share(Planting::dense));
}

TEST(Crowding, ALayerWithoutWaterHasNoNumberUnlessNobodyWantsIt) {
  const auto crowding = layer_crowding({group(5, 4, Style::calm_mid)}, evenly({10, 10, 0}, 0));
  EXPECT_TRUE(crowding[1]);
  EXPECT_FALSE(crowding[2]);
  EXPECT_EQ(layer_crowding({}, evenly({10, 10, 0}, 0))[2], 0);
}

TEST(Crowding, RoomGrowsAsThe1point8thPowerOfLengthAndStopsAtTheEdges) {
  EXPECT_NEAR(personal_volume_l(27, Body::fusiform, 10) / personal_volume_l(27, Body::fusiform, 5), std::pow(2, 1.8), 1e-9);
  EXPECT_EQ(personal_volume_l(27, Body::fusiform, 0.2), personal_volume_l(27, Body::fusiform, 1));
  EXPECT_EQ(personal_volume_l(27, Body::fusiform, 90), personal_volume_l(27, Body::fusiform, 40));
  EXPECT_EQ(personal_volume_l(8, Body::eel, 11), personal_volume_l(8, Body::fusiform, 5.5));
}

// At the reference length 27 cubed body lengths is (3 lengths) cubed, hand-counted: 13.5^3 = 2460 cm3.
TEST(Crowding, AtTheReferenceLengthRoomIsJustTheCubedLengths) {
  EXPECT_NEAR(personal_volume_l(27, Body::fusiform, 4.5), 13.5 * 13.5 * 13.5 / 1000, 1e-12);
}

TEST(Floor, APairHoldsOneGroundAndEachLeftOverFishItsOwn) {
  const auto pairs = [](int n, std::optional<int> m, std::optional<int> f) {
    return floor_count(true, GroupKind::pair, n, m, f);
  };
  EXPECT_EQ(pairs(2, 1, 1), 1);
  EXPECT_EQ(pairs(4, 2, 2), 2);
  EXPECT_EQ(pairs(3, 2, 1), 2);
  EXPECT_EQ(pairs(3, 3, 0), 3);
  EXPECT_EQ(pairs(2, std::nullopt, std::nullopt), 1);
  EXPECT_EQ(pairs(3, std::nullopt, std::nullopt), 2);
  EXPECT_EQ(pairs(3, 2, std::nullopt), 2);
  EXPECT_EQ(pairs(3, std::nullopt, 3), 3);
}

TEST(Floor, FemalesOfAHaremCountTwoFifths) {
  const auto harem = [](int n, std::optional<int> m, std::optional<int> f) {
    return floor_count(true, GroupKind::harem, n, m, f);
  };
  EXPECT_NEAR(harem(4, 1, 3), 1.8, 1e-12);
  EXPECT_NEAR(harem(4, 4, 0), 4, 1e-12);
  EXPECT_NEAR(harem(4, std::nullopt, std::nullopt), 1.8, 1e-12);
  EXPECT_NEAR(harem(1, std::nullopt, std::nullopt), 1, 1e-12);
  EXPECT_NEAR(harem(4, 1, std::nullopt), 1.8, 1e-12);
  EXPECT_EQ(harem(0, std::nullopt, std::nullopt), 0);
}

TEST(Floor, OneMoreAnimalNeverHoldsLess) {
  for (const GroupKind kind :
       {GroupKind::solitary, GroupKind::pair, GroupKind::harem, GroupKind::loose, GroupKind::shoal, GroupKind::colony})
    for (int n = 0; n < 40; ++n) {
      EXPECT_GE(floor_count(true, kind, n + 1, {}, {}), floor_count(true, kind, n, {}, {}));
      EXPECT_EQ(floor_count(false, kind, n, {}, {}), n);
    }
}

// Common practice, no source: a dwarf cichlid pair is given 38 to 50 cm, a brooding female 25 to 30.
TEST(Floor, TerritoriesAreAsWideAsKeepersGiveThem) {
  const auto across = [](double length_cm) {
    return std::sqrt(4 * floor_need_cm2(Style::territorial_bottom, Body::fusiform, length_cm) / 3.14159265358979);
  };
  EXPECT_GT(across(7), 38);
  EXPECT_LT(across(7), 50);
  EXPECT_GT(across(5), 25);
  EXPECT_LT(across(5), 30);
}

TEST(CrowdingWord, ChangesJustPastEachBand) {
  EXPECT_STREQ(crowding_word(0), "roomy");
  EXPECT_STREQ(crowding_word(0.50), "roomy");
  EXPECT_STREQ(crowding_word(0.51), "comfortable");
  EXPECT_STREQ(crowding_word(0.86), "full");
  EXPECT_STREQ(crowding_word(1.11), "crowded");
  EXPECT_STREQ(crowding_word(1.51), "overcrowded");
}

TEST(LeastTank, AsksForALaneByStyleAndShortOfItForEels) {
  EXPECT_NEAR(lane_needed_cm(sample_species("a", Style::calm_mid, 4.5)), 45, 1e-12);
  EXPECT_NEAR(lane_needed_cm(sample_species("a", Style::active_mid, 10)), 150, 1e-12);
  EXPECT_NEAR(lane_needed_cm(sample_species("a", Style::bottom_shoal, 9, Body::eel)), 36, 1e-12);
  EXPECT_EQ(lane_needed_cm(sample_species("a", Style::invertebrate, 3)), 0);
}

TEST(LeastTank, GivesEveryMeasureItsBands) {
  Species s = sample_species("a", Style::centrepiece, 15);
  s.size.height_with_fins_cm = 21;
  s.needs.least_length_cm = 90;
  s.needs.least_volume_l = 160;
  const LeastTank least = least_tank_of(s);
  EXPECT_NEAR(least.run_cm, 75, 1e-12);
  EXPECT_NEAR(least.run_least_cm, 45, 1e-12);
  EXPECT_NEAR(least.width_cm, 30, 1e-12);
  EXPECT_NEAR(least.width_least_cm, 22.5, 1e-12);
  EXPECT_NEAR(*least.height_cm, 42, 1e-12);
  EXPECT_NEAR(*least.height_least_cm, 33.6, 1e-12);
  EXPECT_EQ(least.length_cm, 90);
  EXPECT_EQ(least.volume_l, 160);
}

TEST(LeastTank, OnlyTallFishAskForHeightAndOnlySwimmersForWidth) {
  Species s = sample_species("a", Style::calm_mid, 10);
  EXPECT_FALSE(least_tank_of(s).height_cm);
  s.size.height_with_fins_cm = 7.9;
  EXPECT_FALSE(least_tank_of(s).height_cm);
  s.size.height_with_fins_cm = 8;
  EXPECT_TRUE(least_tank_of(s).height_cm);
  EXPECT_EQ(least_tank_of(sample_species("a", Style::invertebrate, 3)).width_cm, 0);
  EXPECT_EQ(least_tank_of(sample_species("a", Style::bottom_shoal, 9, Body::eel)).width_cm, 9);
}

TEST(LeastTank, RunInLengthsNeedsALength) {
  EXPECT_NEAR(run_in_lengths(50, 4.5), 11.111, 0.001);
  EXPECT_EQ(run_in_lengths(50, 0), 0);
}

}  // namespace
}  // namespace shoalwright
