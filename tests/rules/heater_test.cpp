// SPDX-License-Identifier: MIT
// Heat lost by ISO 6946 (tank/heat.h); reserve, sizes and when to split are common practice, no source.
#include <gtest/gtest.h>

#include "support/mended.h"
#include "tank/heat.h"

namespace shoalwright {
namespace {

const Catalog none;

/// Lives from 22 to 28 degrees.
Species fish(double from_c = 22) {
  Species species = sample_species("own--fish", Style::calm_mid, 4);
  species.life.group.least = 1;
  species.water.temperature_c = {.tolerated = Range{from_c, 28}, .ideal = {}};
  return species;
}

std::optional<Severity> of(const Plan& plan) { return severity_of(assess(plan, none), "heater"); }

PlanBuilder in_room(double room_c, double heater_w) { return a_plan().room(room_c).heater(heater_w); }

double loss_w(double room_c, double water_c) {
  const Plan plan = in_room(room_c, 0);
  return *heat_of(plan, volume_of(plan), water_c).loss_w;
}

TEST(Heater, IsJudgedByHowColdItGets) {
  // Under a lid water settles at 0.2 to 0.5 degrees under the room.
  EXPECT_EQ(of(in_room(22.6, 0).fish(fish(), 4)), Severity::note) << "not what is aimed at, but all live there";
  EXPECT_EQ(of(in_room(22.1, 0).fish(fish(), 4)), Severity::note) << "within what a thermometer reads wrong";
  EXPECT_EQ(of(in_room(21.5, 0).fish(fish(), 4)), Severity::watch);
  EXPECT_EQ(of(in_room(20, 0).fish(fish(), 4)), Severity::strain);
  EXPECT_EQ(of(in_room(17, 0).fish(fish(), 4)), Severity::harm);
  EXPECT_EQ(of(in_room(25, 0).fish(fish(), 4)), std::nullopt) << "as warm as the water";
}

TEST(Heater, IsTheSameInAllViews) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict})
    EXPECT_EQ(of(in_room(20, 0).strictness(view).fish(fish(), 4)), Severity::strain);
}

TEST(Heater, ThatIsTooWeakIsOnAllTheTime) {
  const double half = loss_w(15, 20);  // holds 20 degrees in a room of 15
  const Assessment tank = assess(in_room(15, half).fish(fish(), 4), none);
  const Finding* finding = finding_of(tank, "heater");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->text, "Heater holds only 20 °C");
  EXPECT_EQ(finding->severity, Severity::strain);
  EXPECT_EQ(finding->species, std::vector<std::string>{"own--fish"});
}

TEST(Heater, WithoutReserveIsANote) {
  const double loss = loss_w(20, 25);
  EXPECT_EQ(of(in_room(20, loss * 1.1).fish(fish(), 4)), Severity::note);
  EXPECT_EQ(of(in_room(20, loss * 1.6).fish(fish(), 4)), std::nullopt);
}

TEST(Heater, ThatIsFarTooStrongIsANoteToTakeTwo) {
  const Assessment strong = assess(in_room(20, 300).fish(fish(), 4), none);
  ASSERT_EQ(severity_of(strong, "heater"), Severity::note);
  EXPECT_EQ(of(in_room(20, 200).fish(fish(), 4)), std::nullopt);
  EXPECT_EQ(of(in_room(25, 300).fish(fish(), 4)), Severity::note);
  Plan cold_room = a_plan().tank(200, 70, 60).room(12).heater(0).fish(fish(), 4);
  cold_room.gear->heater_w = assess(cold_room, none).heat.heater_needed_w;
  ASSERT_GT(*cold_room.gear->heater_w, 600);
  EXPECT_EQ(of(cold_room), std::nullopt) << "as much as is needed is never too much";
}

TEST(Heater, IsMendedByWhatIsSold) {
  for (const Plan& plan : {in_room(17, 0).fish(fish(), 4).plan(), in_room(20, 25).fish(fish(), 4).plan(),
                           in_room(20, loss_w(20, 25) * 1.1).fish(fish(), 4).plan(), in_room(20, 300).fish(fish(), 4).plan(),
                           a_plan().tank(200, 70, 60).room(12).heater(100).fish(fish(), 4).plan()}) {
    const Plan after = mended(plan, none, "heater");
    EXPECT_EQ(of(after), std::nullopt) << plan.gear->heater_w.value();
  }
}

TEST(Heater, IsNotForcedOnATankThatIsMeantToBeCool) {
  const Plan plan = in_room(19, 0).fish(fish(16), 4);
  const Assessment cool = assess(plan, none);
  ASSERT_EQ(severity_of(cool, "heater"), Severity::note);
  EXPECT_EQ(finding_of(cool, "heater")->remedy.rfind("Set the temperature to ", 0), 0u);
  const Plan after = mended(plan, none, "heater");
  EXPECT_EQ(*after.gear->heater_w, 0);
  EXPECT_EQ(of(after), std::nullopt);
}

TEST(Heater, OnAGuessedRoomIsNoHarm) {
  EXPECT_EQ(of(in_room(17, 0).assumed({"/place/temperature_c"}).fish(fish(), 4)), Severity::strain);
}

TEST(Heater, IsNotJudgedWhereAnyOfItIsNotKnown) {
  EXPECT_EQ(of(a_plan().room(15).fish(fish(), 4)), std::nullopt);
  EXPECT_EQ(of(a_plan().room({}).heater(0).fish(fish(), 4)), std::nullopt);
  EXPECT_EQ(of(in_room(15, 0).lid({}).fish(fish(), 4)), std::nullopt);
  EXPECT_EQ(of(in_room(15, 0)), std::nullopt) << "nobody lives there";
}

TEST(Heater, StopsAKindThatWouldBeTooCold) {
  Species warm = fish(24);
  warm.id = "own--warm";
  const Assessment tank = assess(in_room(20, 0).fish(fish(17), 4).fish(warm, 4), none);
  for (const GroupRoom& group : tank.room.groups)
    EXPECT_EQ(group.stopped_by == "heater", group.species == "own--warm") << group.species;
}

}  // namespace
}  // namespace shoalwright
