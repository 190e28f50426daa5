// SPDX-License-Identifier: MIT
// What jumps: common practice, no source.
#include <gtest/gtest.h>

#include "support/builders.h"

namespace shoalwright {
namespace {

const Catalog none;

Species jumping(Jumps jumps, const std::string& id = "own--fish") {
  Species species = sample_species(id, Style::calm_mid, 4);
  species.life.jumps = jumps;
  species.life.group.least = 1;
  return species;
}

Assessment open_with(const Species& species) { return assess(a_plan().lid(false).fish(species, 4), none); }

TEST(Lid, IsAsGraveAsTheHabit) {
  EXPECT_EQ(severity_of(open_with(jumping(Jumps::rarely)), "lid"), Severity::note);
  EXPECT_EQ(severity_of(open_with(jumping(Jumps::when_chased)), "lid"), Severity::watch);
  EXPECT_EQ(severity_of(open_with(jumping(Jumps::readily)), "lid"), Severity::harm);
}

TEST(Lid, IsNotMissedOverACoveredOrAnEmptyTank) {
  EXPECT_FALSE(finding_of(assess(a_plan().lid(true).fish(jumping(Jumps::readily), 4), none), "lid"));
  EXPECT_FALSE(finding_of(assess(a_plan().lid(false), none), "lid"));
}

TEST(Lid, SaysWhoJumps) {
  const Assessment both =
      assess(a_plan().lid(false).fish(jumping(Jumps::readily, "own--a"), 4).fish(jumping(Jumps::when_chased, "own--b"), 4), none);
  const Finding* finding = finding_of(both, "lid");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->species, std::vector<std::string>{"own--a"});
  EXPECT_EQ(finding->edits, (std::vector<PatchStep>{{"replace", "/tank/lid", "true"}}));
}

TEST(Lid, IsNeverHarmOnAGuess) {
  const Assessment guessed = assess(a_plan().lid(false).assumed({"/tank/lid"}).fish(jumping(Jumps::readily), 4), none);
  EXPECT_EQ(severity_of(guessed, "lid"), Severity::strain);
}

TEST(Lid, OfAKindThatIsNotKnownToJumpIsNotJudgedButSaid) {
  Species silent = jumping(Jumps::rarely, "own--silent");
  silent.life.jumps.reset();
  const Assessment open = assess(a_plan().lid(false).fish(silent, 4).fish(jumping(Jumps::rarely), 4), none);
  ASSERT_TRUE(finding_of(open, "lid"));
  EXPECT_EQ(finding_of(open, "lid")->species, std::vector<std::string>{"own--fish"});
  const Assessment alone = assess(a_plan().lid(false).fish(silent, 4), none);
  ASSERT_TRUE(finding_of(alone, "lid"));
  EXPECT_EQ(finding_of(alone, "lid")->text, "Not known: whether own--silent jumps");
  EXPECT_EQ(finding_of(alone, "lid")->severity, Severity::note);
  EXPECT_FALSE(finding_of(assess(a_plan().lid(true).fish(silent, 4), none), "lid")) << "the lid keeps it";
}

TEST(Lid, NotKnownIsSaidAndNotJudged) {
  const Assessment unknown =
      assess(a_plan().surface(SurfaceMotion::gentle).lid(std::nullopt).fish(jumping(Jumps::readily), 4), none);
  EXPECT_FALSE(finding_of(unknown, "lid"));
  ASSERT_TRUE(finding_of(unknown, "unknown-input"));
  EXPECT_EQ(finding_of(unknown, "unknown-input")->text, "Not known: lid");
  EXPECT_FALSE(finding_of(assess(a_plan().surface(SurfaceMotion::gentle).lid(std::nullopt).fish(jumping(Jumps::rarely), 4), none),
                          "unknown-input"));
}

}  // namespace
}  // namespace shoalwright
