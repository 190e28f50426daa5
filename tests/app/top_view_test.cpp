// SPDX-License-Identifier: MIT
#include "views/top_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "app/keep.h"
#include "edit/command.h"

namespace shoalwright {
namespace {

TEST(TopStrip, TheNameIsTypedInItsPlaceAndIsOneStep) {
  Screen screen({});
  fill(screen, "top.name", "Riverbank by the window");
  EXPECT_EQ(plan_of(screen).name, "Riverbank by the window");
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen).name, "Reading-room riverbank");
}

TEST(TopStrip, TheSizeIsOutsideAndOpensTheTankSheet) {
  Screen screen({});
  EXPECT_NE(screen.spot("top.size")->label.find("90 × 45 × 45 cm"), std::string::npos) << screen.spot("top.size")->label;
  screen.click("top.size");
  EXPECT_EQ(screen.app().sheet, Sheet::tank);
}

TEST(TopStrip, UndoAndRedoSayWhatTheyWouldDo) {
  Screen screen({});
  EXPECT_FALSE(screen.spot("top.undo")->enabled);
  const Command command = SetCount{"hoplisoma-sterbai", 10};
  App& app = screen.app();
  carry_out(app, {EditPlan{apply(plan_of(screen), command, app.catalog), name_of(command, plan_of(screen), app.catalog), ""}});
  screen.frames(3);
  EXPECT_EQ(screen.spot("top.undo")->label, "Undo: 2 more Sterba's corydoras");
  screen.click("top.undo");
  EXPECT_EQ(screen.spot("top.redo")->label, "Redo: 2 more Sterba's corydoras");
  screen.click("top.redo");
  EXPECT_EQ(plan_of(screen).stock[1].count, 10);
}

TEST(TopStrip, UnitsAndThemeAreChosenAndKept) {
  Screen screen({});
  screen.click("top.units");
  screen.click("top.units/us");
  EXPECT_TRUE(screen.app().measures.us);
  EXPECT_NE(screen.spot("top.size")->label.find("35.4 × 17.7 × 17.7 in"), std::string::npos) << screen.spot("top.size")->label;
  screen.click("top.theme");
  EXPECT_EQ(screen.app().preferences.theme, ThemeChoice::dark);
  screen.click("top.theme");
  EXPECT_EQ(screen.app().preferences.theme, ThemeChoice::light);
  EXPECT_FALSE(platform::headless::record().settings.empty());
}

TEST(TopStrip, HardnessAndNitrateAreCountedAsTheKeeperLikes) {
  Screen screen({});
  screen.click("top.units");
  screen.click("top.units/hardness/1");
  screen.click("top.units");
  screen.click("top.units/nitrate/n");
  EXPECT_EQ(screen.app().measures.hardness_in, HardnessUnit::mg_l_caco3);
  EXPECT_TRUE(screen.app().measures.nitrate_as_n);
  EXPECT_FALSE(screen.app().measures.us) << "the other units stay";
  EXPECT_EQ(kept_preferences(), screen.app().preferences);
  EXPECT_NE(screen.spot("water.gh")->label.find("mg/L CaCO₃"), std::string::npos) << screen.spot("water.gh")->label;
}

TEST(TopStrip, FileMakesANewPlanAndSavesAndOpens) {
  Screen screen({});
  screen.click("top.file");
  screen.click("top.file/save");
  ASSERT_EQ(platform::headless::record().saved.size(), 1u);
  EXPECT_EQ(read_plan(platform::headless::record().saved[0].second).value(), plan_of(screen));
  screen.click("top.file");
  screen.click("top.file/open");
  EXPECT_EQ(platform::headless::record().files_asked_for, 1);
  screen.click("top.file");
  screen.click("top.file/new");
  EXPECT_TRUE(plan_of(screen).stock.empty());
  screen.click("top.file");
  screen.click("top.file/demo");
  EXPECT_EQ(plan_of(screen).stock.size(), 4u);
}

TEST(TopStrip, ShareCopiesALink) {
  Screen screen({});
  screen.click("top.share");
  EXPECT_NE(platform::headless::record().copied.find("#p="), std::string::npos) << platform::headless::record().copied;
}

}  // namespace
}  // namespace shoalwright
