// SPDX-License-Identifier: MIT
// Hides and shelter: common practice, no source.
#include "stocking/cover.h"

#include <gtest/gtest.h>

#include "support/mended.h"

namespace shoalwright {
namespace {

const Catalog none;

Species living(const std::string& active, const std::string& cover, int caves = 0) {
  Species species = sample_species("own--fish", Style::calm_mid, 5);
  species.life.active = active;
  species.life.cover = cover;
  species.needs.caves = caves;
  species.life.group.least = 1;
  return species;
}

Assessment with(const PlanBuilder& plan) { return assess(plan, none); }

Plan mended(const Plan& plan) { return mended(plan, none, "cover"); }

TEST(CoverOf, IsOutlinesTimesShelterOverTheFloorAndPlantsBeyondThem) {
  EXPECT_EQ(cover_of(a_plan()), (Cover{.pieces_share = 0, .share = 0, .hides = 0}));
  // A stem thicket of 14 x 10 cm stands on a round of sixteen corners, 0.765 of its box; shelter 0.7, floor 80 x 35 cm.
  const Cover thicket = cover_of(a_plan().piece("stem-plants").planted(Planting::light));
  EXPECT_NEAR(thicket.pieces_share, 14 * 10 * 0.765 * 0.7 / 2800, 1e-4);
  EXPECT_NEAR(*thicket.share, thicket.pieces_share + 0.10, 1e-12);
  EXPECT_EQ(thicket.hides, 0);
  EXPECT_EQ(cover_of(a_plan().piece("cave", 2).piece("shells")).hides, 5);
  EXPECT_EQ(cover_of(a_plan().piece("sunken teapot")).pieces_share, 0);
  EXPECT_EQ(cover_of(a_plan().piece("stem-plants", 100)).pieces_share, 1);
}

TEST(CoverOf, IsNotKnownWithoutThePlanting) {
  const Cover cover = cover_of(a_plan().piece("stem-plants").planted(std::nullopt));
  EXPECT_GT(cover.pieces_share, 0);
  EXPECT_FALSE(cover.share);
}

TEST(CoverOf, OfAnOutlineIsItsHull) {
  for (const PieceKind& kind : piece_kinds()) {
    const double share = outline_cm2(kind, 20, 10) / 200;
    EXPECT_GT(share, 0.1) << kind.id;
    EXPECT_LE(share, 1.0 + 1e-6) << kind.id;
  }
}

TEST(CoverRule, WantsAHideForEachThatSleepsByDay) {
  const Species sleeper = living("night", "none");
  EXPECT_EQ(severity_of(with(a_plan().piece("cave", 2).fish(sleeper, 3)), "cover"), Severity::watch);
  EXPECT_FALSE(finding_of(with(a_plan().piece("cave", 2).piece("root").fish(sleeper, 3)), "cover"));
  EXPECT_FALSE(finding_of(with(a_plan().fish(living("day", "none", 1), 3)), "cover"));
  EXPECT_EQ(severity_of(with(a_plan().piece("cave", 3).fish(living("night", "none", 2), 3)), "cover"), Severity::watch)
      << "the card asks for more";
}

TEST(CoverRule, AddsTheHidesThatAreShort) {
  const Plan few = a_plan().piece("cave").fish(living("night", "none"), 3);
  EXPECT_EQ(cover_of(mended(few)).hides, 3);
  EXPECT_FALSE(finding_of(assess(mended(few), none), "cover"));
  const Plan many = a_plan().fish(living("night", "none"), 8);
  EXPECT_EQ(cover_of(mended(many)).hides, 3) << "no more pieces than one remedy may add";
  EXPECT_EQ(finding_of(assess(many, none), "cover")->remedy.rfind("Add 3 caves of the 8 that are short", 0), 0u);
}

TEST(CoverRule, WantsShelterByTheCard) {
  const Species some = living("day", "some"), much = living("day", "much");
  const auto severity = [](const Species& species, Planting planting, Strictness view = Strictness::usual) {
    return severity_of(with(a_plan().planted(planting).strictness(view).fish(species, 6)), "cover");
  };
  EXPECT_EQ(severity(some, Planting::none), Severity::note);
  EXPECT_FALSE(severity(some, Planting::light));
  EXPECT_EQ(severity(much, Planting::light), Severity::note);
  EXPECT_FALSE(severity(much, Planting::medium));
  EXPECT_EQ(severity(much, Planting::light, Strictness::lenient), Severity::note);
  EXPECT_EQ(severity(much, Planting::light, Strictness::strict), Severity::watch);
  EXPECT_FALSE(severity(living("day", "none"), Planting::none));
}

TEST(CoverRule, IsNotJudgedWhereThePlantingIsNotKnown) {
  const Assessment unknown = with(a_plan().planted(std::nullopt).fish(living("day", "much"), 6));
  EXPECT_FALSE(finding_of(unknown, "cover"));
  ASSERT_TRUE(finding_of(unknown, "unknown-input"));
  EXPECT_NE(finding_of(unknown, "unknown-input")->why.find("cover"), std::string::npos);
}

TEST(CoverRule, IsClearedByThicketsJustLargeEnough) {
  for (const char* cover : {"some", "much"}) {
    const Plan plan = a_plan().fish(living("day", cover), 6);
    const Plan after = mended(plan);
    EXPECT_FALSE(finding_of(assess(after, none), "cover")) << cover;
    EXPECT_LE(after.pieces.size(), 3u);
    for (const Piece& piece : after.pieces) EXPECT_EQ(piece.kind, "stem-plants");
  }
  Species rasper = living("day", "much");
  rasper.mouth.eats_plants = "most";
  EXPECT_EQ(mended(a_plan().fish(rasper, 6)).pieces[0].kind, "bridge") << "plants would be food";
}

TEST(CoverRule, OfALongTankIsLessened) {
  const Plan plan = a_plan().tank(200, 60, 60).fish(living("day", "much"), 6);
  const Plan after = mended(plan);
  EXPECT_GT(*cover_of(after).share, *cover_of(plan).share);
  EXPECT_EQ(after.pieces.size(), 3u);
}

TEST(CoverRule, LeavesAPinnedScapeAlone) {
  const Assessment assessment = with(a_plan().fixed({"/pieces"}).fish(living("night", "much"), 3));
  for (const Finding& finding : assessment.findings)
    if (finding.rule == "cover") {
      EXPECT_TRUE(finding.edits.empty()) << finding.text;
    }
}

}  // namespace
}  // namespace shoalwright
