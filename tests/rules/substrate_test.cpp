// SPDX-License-Identifier: MIT
// What lives on which floor: common practice, no source.
#include <gtest/gtest.h>

#include "support/mended.h"

namespace shoalwright {
namespace {

const Catalog none;

Species feeding(const std::string& bed, const std::string& group) {
  Species species = sample_species("own--fish", Style::bottom_shoal, 4);
  species.needs.substrate = bed;
  species.group = group;
  species.life.group.least = 1;
  return species;
}

const Species searching = feeding("sand", "corydoras"), sifting = feeding("sand", "cichlids"), fine = feeding("fine", "frogs");

std::optional<Severity> on(SubstrateKind kind, const Species& species, Strictness strictness = Strictness::usual) {
  return severity_of(assess(a_plan().floor(kind).running(20).strictness(strictness).fish(species, 4), none), "substrate");
}

TEST(SubstrateRule, IsQuietOnRoundedSandAndForWhoeverTakesAnyFloor) {
  for (const SubstrateKind sand : {SubstrateKind::fine_sand, SubstrateKind::coarse_sand})
    for (const Species& species : {searching, sifting, fine}) EXPECT_FALSE(on(sand, species));
  EXPECT_FALSE(on(SubstrateKind::sharp_gravel, feeding("any", "tetras")));
  EXPECT_FALSE(on(SubstrateKind::sharp_gravel, feeding("", "tetras"))) << "a card that does not say";
}

TEST(SubstrateRule, IsDividedOverSmoothGravelAndSoilUnderBarbels) {
  for (const SubstrateKind kind : {SubstrateKind::smooth_gravel, SubstrateKind::planted_soil})
    for (const Species& species : {searching, fine, feeding("fine", "loaches")}) {
      EXPECT_EQ(on(kind, species, Strictness::lenient), Severity::note);
      EXPECT_EQ(on(kind, species), Severity::note);
      EXPECT_EQ(on(kind, species, Strictness::strict), Severity::watch);
    }
}

TEST(SubstrateRule, SharpGravelStrainsBarbelsInEveryView) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict}) {
    EXPECT_EQ(on(SubstrateKind::sharp_gravel, searching, view), Severity::strain);
    EXPECT_EQ(on(SubstrateKind::sharp_gravel, feeding("fine", "loaches"), view), Severity::strain);
    EXPECT_EQ(on(SubstrateKind::sharp_gravel, fine, view), Severity::watch) << "nothing to wear down";
  }
}

TEST(SubstrateRule, AnyGravelStrainsWhoSiftsIt) {
  EXPECT_EQ(on(SubstrateKind::smooth_gravel, sifting), Severity::strain);
  EXPECT_EQ(on(SubstrateKind::sharp_gravel, sifting), Severity::strain);
  EXPECT_EQ(on(SubstrateKind::planted_soil, sifting), Severity::note);
}

TEST(SubstrateRule, ABareFloorIsLeftAloneForEightWeeks) {
  const auto bare = [](std::optional<double> weeks) {
    return severity_of(assess(a_plan().running(weeks).fish(searching, 4), none), "substrate");
  };
  EXPECT_FALSE(bare(0));
  EXPECT_FALSE(bare(7.9));
  EXPECT_EQ(bare(8), Severity::note);
  EXPECT_EQ(bare(std::nullopt), Severity::note) << "not known is not taken for new";
  EXPECT_FALSE(on(SubstrateKind::bare, fine)) << "nothing that it would search for";
}

TEST(SubstrateRule, IsClearedBySand) {
  for (const Plan& plan :
       {a_plan().floor(SubstrateKind::sharp_gravel).fish(searching, 4).plan(), a_plan().running(20).fish(searching, 4).plan(),
        a_plan().tank(25, 15, 12).running(20).fish(sifting, 1).plan()}) {
    const Plan after = mended(plan, none, "substrate");
    EXPECT_EQ(after.substrate.kind, SubstrateKind::fine_sand);
    EXPECT_GT(after.substrate.front_cm, 0);
    EXPECT_FALSE(finding_of(assess(after, none), "substrate"));
  }
}

TEST(SubstrateRule, LeavesAPinnedFloorAlone) {
  for (const char* pinned : {"/substrate", "/substrate/kind", "/substrate/back_cm"}) {
    const Assessment assessment = assess(a_plan().running(20).fixed({pinned}).fish(searching, 4), none);
    ASSERT_TRUE(finding_of(assessment, "substrate"));
    EXPECT_TRUE(finding_of(assessment, "substrate")->edits.empty()) << pinned;
  }
}

}  // namespace
}  // namespace shoalwright
