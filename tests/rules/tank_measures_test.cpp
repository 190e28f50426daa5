// SPDX-License-Identifier: MIT
// Runs, widths, heights and least tanks: common practice, no source.
#include <gtest/gtest.h>

#include "stocking/least_tank.h"
#include "support/builders.h"
#include "support/pieces.h"

namespace shoalwright {
namespace {

const Catalog none;

Assessment in_tank(double length_cm, double width_cm, double height_cm, const Species& species,
                   Strictness view = Strictness::usual) {
  return assess(a_plan().tank(length_cm, width_cm, height_cm).strictness(view).fish(species, 1), none);
}

Species swimmer(double adult_tl_cm) {
  Species species = sample_species("own--fish", Style::active_mid, adult_tl_cm);  // lane: 15 lengths
  species.life.group.least = 1;
  return species;
}

TEST(SwimLane, FollowsTheBandsOfTheEmptyRun) {
  const auto at = [&](double length_cm) { return severity_of(in_tank(length_cm, 60, 40, swimmer(10)), "swim-lane"); };
  EXPECT_EQ(at(150), std::nullopt);
  EXPECT_EQ(at(149), Severity::note);
  EXPECT_EQ(at(120), Severity::note);
  EXPECT_EQ(at(119), Severity::watch);
  EXPECT_EQ(at(97.5), Severity::watch);
  EXPECT_EQ(at(97), Severity::strain);
}

TEST(TankLength, IsHarmWhereTheEmptyTankIsUnderSixTenthsOfTheLane) {
  EXPECT_EQ(severity_of(in_tank(89, 60, 40, swimmer(10)), "tank-length"), Severity::harm);
  EXPECT_FALSE(finding_of(in_tank(89, 60, 40, swimmer(10)), "swim-lane"));  // said once
  EXPECT_FALSE(finding_of(in_tank(91, 60, 40, swimmer(10)), "tank-length"));
}

TEST(TankLength, IsNoHarmByItsRunWhereTheCardsOwnLeastIsMet) {
  Species molly = swimmer(9);  // lane 135 cm, kept from 80 cm on
  molly.needs.least_length_cm = 80;
  const Assessment least = in_tank(78.8, 60, 40, molly), shorter = in_tank(77, 60, 40, molly);
  EXPECT_FALSE(finding_of(least, "tank-length")) << said(least);
  EXPECT_EQ(severity_of(least, "swim-lane"), Severity::watch);
  EXPECT_EQ(severity_of(shorter, "tank-length"), Severity::harm) << said(shorter);
}

// Whoever has the least tank of a card and leaves four fifths of it open has done what keepers of the kind do.
TEST(SwimLane, IsAStrainOnlyUnderFourFifthsOfTheCardsOwnLeastTank) {
  Species molly = swimmer(9);
  molly.needs.least_length_cm = 80;
  EXPECT_DOUBLE_EQ(bearable_lane_cm(molly), 64);
  const auto with_stone = [&](double clear_cm) {
    Plan plan = a_plan().tank(80, 30, 40).fish(molly, 1);
    plan.pieces.push_back(piece_at("block", clear_cm + (80 - clear_cm) / 2, 15, 80 - clear_cm, 30, 40));
    return severity_of(assess(plan, none), "swim-lane");
  };
  EXPECT_EQ(with_stone(70), Severity::watch);
  EXPECT_EQ(with_stone(50), Severity::strain);
  molly.needs.least_length_cm = 200;
  EXPECT_DOUBLE_EQ(bearable_lane_cm(molly), 0.65 * 135) << "a longer least tank asks for no longer run";
}

// Eel shapes want 4 lengths of run where others want 15: of which shape it is nobody said.
TEST(SwimLane, OfAShapeThatIsNotKnownIsAStrainOnlyWhereItIsOneForEveryShape) {
  Species fish = swimmer(10);
  fish.size.body = Body::unknown;
  EXPECT_EQ(severity_of(in_tank(91, 60, 40, fish), "swim-lane"), Severity::watch);
  EXPECT_FALSE(finding_of(in_tank(60, 60, 40, fish), "tank-length"));
  EXPECT_EQ(severity_of(in_tank(23, 20, 40, fish), "tank-length"), Severity::harm);
}

TEST(TankLength, IsNeverHarmOnAGuess) {
  const Assessment guessed = assess(a_plan().tank(60, 60, 40).assumed({"/tank/length_cm"}).fish(swimmer(10), 1), none);
  EXPECT_EQ(severity_of(guessed, "tank-length"), Severity::strain);
}

TEST(TankLength, JudgesTheLeastLengthByOutsideMeasures) {
  Species species = sample_species("own--fish", Style::centrepiece, 5);
  species.needs.least_length_cm = 60;
  const auto at = [&](double outside_cm, Strictness view = Strictness::usual) {
    return severity_of(in_tank(outside_cm - 1.2, 30, 30, species, view), "tank-length");  // 6 mm glass
  };
  EXPECT_EQ(at(60), std::nullopt);
  EXPECT_EQ(at(59), Severity::note);
  EXPECT_EQ(at(50), Severity::strain);
  EXPECT_EQ(at(41), Severity::harm);
  EXPECT_EQ(at(50, Strictness::lenient), Severity::watch);
  EXPECT_EQ(at(50, Strictness::strict), Severity::strain);
}

TEST(TankVolume, JudgesTheGrossVolume) {
  Species species = sample_species("own--fish", Style::centrepiece, 5);
  species.needs.least_volume_l = 100;
  EXPECT_EQ(severity_of(in_tank(80, 35, 40, species), "tank-volume"), std::nullopt);
  EXPECT_EQ(severity_of(in_tank(80, 30, 40, species), "tank-volume"), Severity::note);    // 96 L
  EXPECT_EQ(severity_of(in_tank(60, 40, 35, species), "tank-volume"), Severity::strain);  // 84 L
  EXPECT_EQ(severity_of(in_tank(60, 30, 35, species), "tank-volume"), Severity::harm);    // 63 L
}

TEST(TankWidth, IsHarmWhereAFishCannotTurn) {
  const auto at = [&](double width_cm) {
    return severity_of(in_tank(120, width_cm, 50, sample_species("own--fish", Style::centrepiece, 20)), "tank-width");
  };
  EXPECT_EQ(at(40), std::nullopt);
  EXPECT_EQ(at(39.5), Severity::note);
  EXPECT_EQ(at(35), Severity::watch);
  EXPECT_EQ(at(29), Severity::harm);
}

TEST(TankWidth, FoldsAnEelShapeAndLeavesInvertebratesAlone) {
  EXPECT_FALSE(finding_of(in_tank(120, 22, 50, sample_species("own--eel", Style::bottom_shoal, 20, Body::eel)), "tank-width"));
  EXPECT_FALSE(finding_of(in_tank(60, 8, 20, sample_species("own--snail", Style::invertebrate, 10)), "tank-width"));
}

TEST(TankHeight, MeasuresWaterOverTheSubstrateForTallFishOnly) {
  Species tall = sample_species("own--tall", Style::centrepiece, 15);
  tall.size.height_with_fins_cm = 21;  // an angelfish's span
  const auto at = [&](double fill_cm) {
    return severity_of(assess(a_plan().tank(120, 50, 60).fill(fill_cm).fish(tall, 1), none), "tank-height");
  };
  EXPECT_EQ(at(42), std::nullopt);
  EXPECT_EQ(at(38), Severity::watch);
  EXPECT_EQ(at(33), Severity::strain);
  tall.size.height_with_fins_cm = 10;
  EXPECT_EQ(at(15), std::nullopt);
}

TEST(AdultSize, WarnsOfWhatIsSoldSmallAndOutgrowsTheTank) {
  Species species = sample_species("own--giant", Style::centrepiece, 40);
  species.size.sold_cm = 6;
  const Assessment small = in_tank(100, 40, 40, species);
  EXPECT_EQ(severity_of(small, "adult-size"), Severity::harm);  // as grave as the width that it lacks
  EXPECT_FALSE(finding_of(in_tank(250, 100, 60, species), "adult-size"));
  species.size.sold_cm = 20;
  EXPECT_FALSE(finding_of(in_tank(100, 40, 40, species), "adult-size"));
}

TEST(LargerTank, IsTheSmallestUsualOneThatClearsTheFinding) {
  Species species = sample_species("own--fish", Style::centrepiece, 5);
  species.needs.least_length_cm = 100;
  const Assessment small = in_tank(59, 29, 29.5, species);
  const Finding* finding = finding_of(small, "tank-length");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->remedy, "Take a tank of 100 x 40 x 40 cm");
  ASSERT_EQ(finding->edits.size(), 5u);
  EXPECT_EQ(finding->edits[0], (PatchStep{"add", "/tank/length_cm", "98.4"}));
}

TEST(LargerTank, WhereNoneWillDoSaysSo) {
  Species species = sample_species("own--fish", Style::centrepiece, 5);
  species.needs.least_length_cm = 400;
  const Assessment small = in_tank(59, 29, 29.5, species);
  const Finding* finding = finding_of(small, "tank-length");
  ASSERT_TRUE(finding);
  EXPECT_NE(finding->why.find("No usual tank will do"), std::string::npos) << finding->why;
  EXPECT_EQ(finding->remedy, "Leave out own--fish");
  ASSERT_FALSE(finding->edits.empty());
  EXPECT_EQ(finding->edits[0], (PatchStep{"remove", "/stock/0", ""}));
}

}  // namespace
}  // namespace shoalwright
