// SPDX-License-Identifier: MIT
// Who rasps wood: common practice.
#include <gtest/gtest.h>

#include "support/mended.h"

namespace shoalwright {
namespace {

const Catalog none;

Species rasping(bool wood) {
  Species species = sample_species("own--fish", Style::grazer, 10);
  species.needs.wood = wood;
  species.life.group.least = 1;
  return species;
}

TEST(WoodNeeded, IsANoteWhereThereIsNone) {
  EXPECT_EQ(severity_of(assess(a_plan().fish(rasping(true), 1), none), "wood-needed"), Severity::note);
  EXPECT_EQ(severity_of(assess(a_plan().piece("stone").piece("half-shell").fish(rasping(true), 1), none), "wood-needed"),
            Severity::note)
      << "a coconut shell is nothing to rasp";
}

TEST(WoodNeeded, IsQuietWithWoodOrWithoutRaspers) {
  for (const char* wood : {"branch", "root", "driftwood", "stump"})
    EXPECT_FALSE(finding_of(assess(a_plan().piece(wood).fish(rasping(true), 1), none), "wood-needed")) << wood;
  EXPECT_FALSE(finding_of(assess(a_plan().fish(rasping(false), 1), none), "wood-needed"));
}

TEST(WoodNeeded, IsClearedByABranchThatFindsItsPlace) {
  for (const Plan& plan : {a_plan().fish(rasping(true), 1).plan(), a_plan().tank(25, 15, 12).fish(rasping(true), 1).plan()}) {
    const Plan after = mended(plan, none, "wood-needed");
    ASSERT_EQ(after.pieces.size(), 1u);
    EXPECT_EQ(after.pieces[0].kind, "branch-low");
    EXPECT_FALSE(after.pieces[0].x_cm);
    EXPECT_LT(after.pieces[0].length_cm, plan.tank.length_cm);
    EXPECT_LT(after.pieces[0].height_cm, plan.tank.fill_cm);
    EXPECT_FALSE(finding_of(assess(after, none), "wood-needed"));
  }
}

TEST(WoodNeeded, LeavesAPinnedScapeAlone) {
  const Assessment assessment = assess(a_plan().fixed({"/pieces"}).fish(rasping(true), 1), none);
  ASSERT_TRUE(finding_of(assessment, "wood-needed"));
  EXPECT_TRUE(finding_of(assessment, "wood-needed")->edits.empty());
}

}  // namespace
}  // namespace shoalwright
