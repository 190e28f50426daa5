// SPDX-License-Identifier: MIT
// Least groups: common practice; that more of the same kind calm small shoal fish is published: Saxby, A. et al. 2010, Applied
// Animal Behaviour Science 125: 184-189 (from memory).
#include <gtest/gtest.h>

#include "support/builders.h"

namespace shoalwright {
namespace {

const Catalog none;

Species living_as(GroupKind kind, int least, int good) {
  Species species = sample_species("own--fish", Style::calm_mid, 4);
  species.life.group = {.kind = kind, .least = least, .good = good, .all_male_ok = true, .added = "any"};
  return species;
}

std::optional<Severity> kept(const Species& species, int count, Strictness strictness = Strictness::usual) {
  return severity_of(assess(a_plan().strictness(strictness).fish(species, count), none), "group-size");
}

TEST(GroupSize, IsAStrainUnderTheLeastOfAShoal) {
  const Species shoal = living_as(GroupKind::shoal, 6, 10);
  EXPECT_EQ(kept(shoal, 1), Severity::strain);
  EXPECT_EQ(kept(shoal, 5), Severity::strain);
  EXPECT_EQ(kept(shoal, 6), std::nullopt);
}

TEST(GroupSize, ShowsTheBandOfPractice) {
  const Species shoal = living_as(GroupKind::shoal, 6, 10);
  EXPECT_EQ(kept(shoal, 5, Strictness::lenient), Severity::watch);
  EXPECT_EQ(kept(shoal, 4, Strictness::lenient), Severity::strain);
  EXPECT_EQ(kept(shoal, 6, Strictness::strict), Severity::watch);
  EXPECT_EQ(kept(shoal, 10, Strictness::strict), std::nullopt);
}

TEST(GroupSize, NeverTellsASolitaryKindThatItIsLonely) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict}) {
    EXPECT_EQ(kept(living_as(GroupKind::solitary, 1, 1), 1, view), std::nullopt);
    EXPECT_EQ(kept(living_as(GroupKind::solitary, 2, 3), 1, view), std::nullopt);
  }
}

TEST(GroupSize, CountsRivalsOfALonerThatFights) {
  Species loner = living_as(GroupKind::solitary, 1, 1);
  loner.temper.to_own_kind = Toward::aggressive;
  EXPECT_EQ(kept(loner, 2), Severity::strain);
  loner.temper.to_own_kind = Toward::peaceful;
  EXPECT_EQ(kept(loner, 2), std::nullopt);
}

TEST(GroupSize, DoesNotMindAnAllMaleGroup) {
  Plan plan = a_plan().fish(living_as(GroupKind::loose, 3, 6), 6);
  plan.stock[0].males = 6;
  plan.stock[0].females = 0;
  EXPECT_FALSE(finding_of(assess(plan, none), "group-size"));
}

TEST(GroupSize, RaisesTheCountToTheLeast) {
  const Assessment few = assess(a_plan().fish(living_as(GroupKind::shoal, 6, 10), 4), none);
  const Finding* finding = finding_of(few, "group-size");
  ASSERT_TRUE(finding);
  ASSERT_EQ(finding->edits.size(), 1u);
  EXPECT_EQ(finding->edits[0], (PatchStep{"replace", "/stock/0/count", "6"}));
  EXPECT_NE(finding->why.find('4'), std::string::npos);
  EXPECT_NE(finding->why.find('6'), std::string::npos);
  EXPECT_EQ(finding->evidence, Evidence::keeper);  // a card of the keeper's own
}

TEST(GroupSize, SaysThatLookAlikesAreNoShoal) {
  Species one = living_as(GroupKind::shoal, 6, 8), other = living_as(GroupKind::shoal, 6, 8);
  other.id = "own--other";
  for (Species* species : {&one, &other}) {
    species->life.style = Style::bottom_shoal;
    species->temper.look_alike_group = "armoured";
  }
  const Assessment mixed = assess(a_plan().fish(one, 1).fish(other, 6), none);
  ASSERT_TRUE(finding_of(mixed, "group-size"));
  EXPECT_NE(finding_of(mixed, "group-size")->why.find("Look-alikes"), std::string::npos);
}

}  // namespace
}  // namespace shoalwright
