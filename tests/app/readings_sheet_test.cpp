// SPDX-License-Identifier: MIT
// A keeper whose fish swim in a tank that is not ready: what swims, what the kit shows, the first step.
#include "views/readings_sheet_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "plan/more_keys.h"

namespace shoalwright {
namespace {

const Spots::Spot* shown(Screen& screen, const std::string& id) {
  screen.rest();
  return screen.spot(id);
}

ScreenKind swimming() {
  return demo_with([](Plan& plan) {
    plan.measured.reset();
    plan.water.reset();
    for (Group& group : plan.stock) group.have = group.count;
  });
}

void open_readings(Screen& screen) {
  carry_out(screen.app(), {ShowSheet{Sheet::readings}});
  screen.frames(4);
  screen.rest();
}

TEST(ReadingsSheet, OpensFromTheLoadAndSaysWhatToTestFirst) {
  Screen screen(swimming());
  screen.frames(3);
  screen.click("load.readings");
  screen.rest();
  ASSERT_NE(shown(screen, "readings.help"), nullptr);
  EXPECT_NE(shown(screen, "readings.help")->label.find("mmonia"), std::string::npos);
  EXPECT_EQ(shown(screen, "readings.change/0"), nullptr);
}

TEST(ReadingsSheet, FourReadingsGiveTheFirstStep) {
  Screen screen(swimming());
  open_readings(screen);
  fill(screen, "readings.ammonia", "1");
  fill(screen, "readings.nitrite", "0.1");
  fill(screen, "readings.ph", "7.8");
  fill(screen, "readings.temperature", "25");
  const std::optional<Measured>& measured = plan_of(screen).measured;
  ASSERT_TRUE(measured);
  EXPECT_EQ(measured->ammonia_mg_l, 1);
  EXPECT_EQ(measured->ph, 7.8);
  ASSERT_NE(shown(screen, "readings.nh3"), nullptr);
  EXPECT_NE(shown(screen, "readings.nh3")->label.find("limit 0.02"), std::string::npos);
  ASSERT_NE(shown(screen, "readings.change/0"), nullptr);
  EXPECT_EQ(shown(screen, "readings.change/0")->label.find("Today change "), 0u);
  const FirstHelp help = first_help(plan_of(screen), screen.app().catalog);
  EXPECT_EQ(help.state, HelpState::act);
  EXPECT_LE(help.changes.front().litres, 0.5 * screen.app().now.volume.net_l + 1e-9) << "never more than half at once";
  screen.shoot("readings-act");
}

TEST(ReadingsSheet, WhatSwimsIsSaidThere) {
  Screen screen(swimming());
  open_readings(screen);
  const std::string species = plan_of(screen).stock[0].species;
  const int have = plan_of(screen).stock[0].have;
  screen.click("readings.have/" + species + "/less");
  EXPECT_EQ(plan_of(screen).stock[0].have, have - 1);
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen).stock[0].have, have);
}

TEST(ReadingsSheet, AnImpossibleReadingGetsASentenceAndChangesNothing) {
  Screen screen(swimming());
  open_readings(screen);
  const Plan before = plan_of(screen);
  fill(screen, "readings.ph", "44");
  ASSERT_NE(shown(screen, "readings.sentence"), nullptr);
  EXPECT_EQ(plan_of(screen), before);
}

TEST(ReadingsSheet, AnEmptyFieldIsNotTested) {
  Screen screen(swimming());
  open_readings(screen);
  fill(screen, "readings.ammonia", "0.5");
  fill(screen, "readings.ammonia", "");
  EXPECT_FALSE(plan_of(screen).measured);
}

TEST(ReadingsSheet, FitsAPhone) {
  ScreenKind kind = swimming();
  kind.width = 390;
  kind.height = 844;
  kind.touch = true;
  Screen screen(kind);
  open_readings(screen);
  fill(screen, "readings.ammonia", "1");
  ASSERT_NE(shown(screen, "readings.ammonia"), nullptr);
  EXPECT_LE(shown(screen, "readings.ammonia")->max.x, 390);
  screen.shoot("readings-phone");
}

TEST(ReadingsSheet, ChlorideRaisesTheLimitOfNitriteAndFirstHelpIsPrinted) {
  Screen screen(swimming());
  open_readings(screen);
  fill(screen, "readings.ammonia", "1");
  fill(screen, "readings.nitrite", "0.15");
  fill(screen, "readings.ph", "7.8");
  EXPECT_NE(shown(screen, "readings.no2")->label.find("limit 0.1"), std::string::npos);
  fill(screen, "readings.chloride", "40");
  EXPECT_EQ(chloride_mg_l(*plan_of(screen).measured), 40);
  EXPECT_NE(shown(screen, "readings.no2")->label.find("limit 0.2"), std::string::npos);
  screen.click("readings.print");
  const std::string& paper = platform::headless::record().printed;
  EXPECT_EQ(paper.rfind("# First help: ", 0), 0u) << paper;
  EXPECT_LT(paper.find("Stir a conditioner"), paper.find("Change ")) << paper;
  EXPECT_NE(paper.find("Sat 31 Jan 2026"), std::string::npos) << "today";
  EXPECT_NE(paper.find("Never release"), std::string::npos);
}

}  // namespace
}  // namespace shoalwright
