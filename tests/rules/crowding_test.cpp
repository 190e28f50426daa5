// SPDX-License-Identifier: MIT
// Bands of crowding, of the floor and of territories: common practice, no source.
#include <gtest/gtest.h>

#include "support/builders.h"

namespace shoalwright {
namespace {

const Catalog none;

/// A fish that lives in one layer only and never touches the floor.
Species living_at(std::size_t layer) {
  Species species = sample_species("own--fish", Style::calm_mid, 4.5);
  species.life.depth = {};
  species.life.depth[layer] = 1;
  species.life.group.least = 1;
  return species;
}

/// 20 L open in each layer: a 4.5 cm fish wants 2.46 L (27 cubed lengths).
PlanBuilder sixty_litres() { return a_plan().tank(60, 40, 27.5); }

TEST(CrowdingLayers, AreJudgedEachByItself) {
  const char* rules[] = {"crowding-top", "crowding-mid", "crowding-bottom"};
  for (std::size_t layer = 0; layer < 3; ++layer) {
    const Assessment over = assess(sixty_litres().fish(living_at(layer), 14), none);
    for (std::size_t i = 0; i < 3; ++i)
      EXPECT_EQ(finding_of(over, rules[i]) != nullptr, i == layer) << rules[i] << ", fish in layer " << layer;
  }
}

TEST(CrowdingLayers, FollowTheBands) {
  const auto at = [](int count, Strictness view = Strictness::usual) {
    return severity_of(assess(sixty_litres().strictness(view).fish(living_at(1), count), none), "crowding-mid");
  };
  EXPECT_EQ(at(6), std::nullopt);       // 0.74
  EXPECT_EQ(at(7), Severity::note);     // 0.86
  EXPECT_EQ(at(8), Severity::note);     // 0.98
  EXPECT_EQ(at(9), Severity::watch);    // 1.11
  EXPECT_EQ(at(11), Severity::strain);  // 1.35
  EXPECT_EQ(at(16), Severity::strain);  // 1.97
  EXPECT_EQ(at(17), Severity::harm);    // 2.09
  EXPECT_EQ(at(8, Strictness::lenient), std::nullopt);
  EXPECT_EQ(at(11, Strictness::lenient), Severity::watch);
  EXPECT_EQ(at(8, Strictness::strict), Severity::watch);
}

TEST(CrowdingLayers, NameWhoFillsThem) {
  Species large = living_at(1);
  large.id = "own--large";
  large.size.adult_tl_cm = 9;
  const Assessment over = assess(sixty_litres().fish(living_at(1), 1).fish(large, 3), none);
  const Finding* finding = finding_of(over, "crowding-mid");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->species, std::vector<std::string>{"own--large"}) << "one small fish among three large is not the cause";
}

TEST(CrowdingLayers, SayWhatStandsInTheWayAndWhoFindsRoomElsewhere) {
  Species species = living_at(1);
  species.life.depth = {0.2, 0.7, 0.1};
  Plan plan = sixty_litres().fish(species, 14);
  const std::string open = finding_of(assess(plan, none), "crowding-mid")->why;
  EXPECT_NE(open.find("At other levels "), std::string::npos) << open;
  EXPECT_EQ(open.find("takes"), std::string::npos) << open;
  plan.pieces = {Piece{.kind = "block", .x_cm = 20, .z_cm = 20, .length_cm = 24, .depth_cm = 24, .height_cm = 24}};
  const std::string blocked = finding_of(assess(plan, none), "crowding-mid")->why;
  EXPECT_NE(blocked.find("takes 5."), std::string::npos) << blocked << ": 24 x 24 cm in a third of 27.5 cm";
  plan.stock[0].count = 60;
  const std::string full = finding_of(assess(plan, none), "crowding-mid")->why;
  EXPECT_NE(full.find("No other level has room for them."), std::string::npos) << full;
}

TEST(CrowdingBottom, IsAlsoShortOfFloorForShoals) {
  // Shallow demands on the water, a small floor: 1080 cm2 can be used, one catfish wants 194.
  Species catfish = sample_species("own--catfish", Style::bottom_shoal, 5);
  catfish.life.group.least = 1;
  const auto at = [&](int count) {
    return severity_of(assess(a_plan().tank(40, 30, 60).fish(catfish, count), none), "crowding-bottom");
  };
  EXPECT_EQ(at(4), std::nullopt);
  EXPECT_EQ(at(5), Severity::note);
  EXPECT_EQ(at(8), Severity::strain);
  EXPECT_FALSE(finding_of(assess(a_plan().tank(40, 30, 60).fish(catfish, 8), none), "territory")) << "shoals hold no ground";
}

Species holder(GroupKind kind) {
  Species cichlid = sample_species("own--cichlid", Style::territorial_bottom, 6);
  cichlid.life.group.kind = kind;
  cichlid.life.group.least = 1;
  return cichlid;
}

TEST(Territory, CountsPairsOnceAndRivalsEach) {
  const auto at = [](GroupKind kind, int count) {
    return severity_of(assess(a_plan().tank(60, 30, 40).fish(holder(kind), count), none), "territory");
  };
  EXPECT_EQ(at(GroupKind::pair, 2), std::nullopt);  // one ground of 900 cm2 in 1620
  EXPECT_EQ(at(GroupKind::pair, 4), Severity::watch);
  EXPECT_EQ(at(GroupKind::solitary, 1), std::nullopt);
  EXPECT_EQ(at(GroupKind::solitary, 3), Severity::strain);
  EXPECT_EQ(at(GroupKind::solitary, 4), Severity::harm);
}

TEST(Territory, WantsLessFloorWherePiecesBreakTheSight) {
  Plan open = a_plan().tank(90, 30, 40).fish(holder(GroupKind::solitary), 2), broken = open;
  broken.pieces = {Piece{.kind = "slate", .x_cm = 45, .z_cm = 15, .length_cm = 2, .depth_cm = 30, .height_cm = 30}};
  const Room before = assess(open, none).room, after = assess(broken, none).room;
  EXPECT_EQ(before.sight_factor, 1);
  EXPECT_NEAR(after.sight_factor, 0.6, 1e-12) << "handbook: 1 - 0.4 s, and neither sees the other";
  EXPECT_LT(*after.floor_crowding, *before.floor_crowding * 0.7);
}

TEST(Territory, GivesAFemaleOfAHaremLessThanAMale) {
  Plan harem = a_plan().tank(60, 30, 40).fish(holder(GroupKind::harem), 4);
  harem.stock[0].males = 1;
  harem.stock[0].females = 3;
  Plan males = harem;
  males.stock[0].males = 4;
  males.stock[0].females = 0;
  EXPECT_LT(*assess(harem, none).room.floor_crowding, *assess(males, none).room.floor_crowding);
  EXPECT_EQ(severity_of(assess(harem, none), "territory"), std::nullopt);
  EXPECT_EQ(severity_of(assess(males, none), "territory"), Severity::harm);
}

TEST(Territory, AndBottomAreBothSaidWhereBothShareTheExcess) {
  Species catfish = sample_species("own--catfish", Style::bottom_shoal, 5);
  const Assessment both = assess(a_plan().tank(60, 30, 40).fish(holder(GroupKind::pair), 2).fish(catfish, 8), none);
  ASSERT_TRUE(finding_of(both, "territory")) << said(both);
  ASSERT_TRUE(finding_of(both, "crowding-bottom")) << said(both);
  EXPECT_EQ(finding_of(both, "territory")->species, std::vector<std::string>{"own--cichlid"});
}

// An eel shape wants 0.29 of the room of another of its length. A shape that nobody gave may be one.
TEST(Crowding, OfAShapeThatIsNotKnownIsAStrainOnlyWhereItIsOneForEveryShape) {
  const auto of = [](Body body, int count) {
    return severity_of(assess(a_plan().fish(sample_species("own--fish", Style::calm_mid, 6, body), count), Catalog{}),
                       "crowding-mid");
  };
  int count = 10;
  while (of(Body::fusiform, count) != Severity::strain) ++count;
  EXPECT_EQ(of(Body::unknown, count), Severity::watch);
  EXPECT_EQ(of(Body::fusiform, 8 * count), Severity::harm);
  EXPECT_EQ(of(Body::unknown, 8 * count), Severity::harm);
}

TEST(Crowding, WithoutWaterOverTheSubstrateIsHarm) {
  Plan dry = a_plan().tank(60, 30, 30).fill(4).fish(living_at(1), 1);
  dry.substrate = Substrate{.kind = SubstrateKind::fine_sand, .front_cm = 5, .back_cm = 5, .other_keys = ""};
  const Assessment nothing = assess(dry, none);
  EXPECT_EQ(severity_of(nothing, "crowding-mid"), Severity::harm);
  EXPECT_FALSE(finding_of(nothing, "swim-lane") || finding_of(nothing, "tank-length")) << "said once: " << said(nothing);
  EXPECT_FALSE(finding_of(assess(a_plan().tank(60, 30, 30).fill(4), none), "crowding-mid")) << "nobody lives there";
}

TEST(Crowding, IsNotJudgedWithoutThePlanting) {
  const Assessment unknown = assess(sixty_litres().planted(std::nullopt).fish(living_at(1), 30), none);
  EXPECT_FALSE(finding_of(unknown, "crowding-mid"));
  ASSERT_TRUE(finding_of(unknown, "unknown-input"));
  EXPECT_EQ(finding_of(unknown, "unknown-input")->text, "Not known: planting");
}

TEST(Crowding, RemedyKeepsAGroupAGroup) {
  Species shoal = living_at(1);
  shoal.life.group.least = 6;
  const Assessment over = assess(sixty_litres().fish(shoal, 14), none);
  const Finding* finding = finding_of(over, "crowding-mid");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->remedy, "Keep 8 own--fish");  // down to a note
  ASSERT_FALSE(finding->edits.empty());
  EXPECT_EQ(finding->edits[0], (PatchStep{"replace", "/stock/0/count", "8"}));
}

}  // namespace
}  // namespace shoalwright
