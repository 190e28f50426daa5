// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

#include "app/parts_sheet.h"
#include "draw/fields.h"
#include "imgui_internal.h"
#include "platform/headless.h"
#include "support/raster.h"

namespace shoalwright {
namespace {

// Inter as Debian's fonts-inter installs it; the page's own fonts are subsets of these files.
std::string font(const char* face) {
  std::ifstream file(std::string("/usr/share/fonts/opentype/inter/Inter-") + face + ".otf", std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return bytes.str();
}

/// The sheet of parts on a platform without a screen, one a test.
struct Desk {
  std::string bytes[4] = {font("Regular"), font("Medium"), font("SemiBold"), font("Italic")};
  Faces faces;
  Ui ui;
  PartsSheet sheet;
  Theme theme = Theme::light;
  float scale = 1;
  bool painting = false;  ///< frames are made into pictures, which takes its time

  explicit Desk(bool paints = false) : painting(paints) {
    platform::headless::begin({.surface = {1440, 900, 1}});
    set_imgui_style();
    const std::string_view views[4] = {bytes[0], bytes[1], bytes[2], bytes[3]};
    EXPECT_TRUE(load_faces(*ImGui::GetIO().Fonts, views, faces)) << "fonts-inter is not installed";
    platform::Listener listener;
    listener.start = [] {};
    listener.frame = [this] {
      begin_ui(ui, palette(theme), faces, scale);
      draw_parts_sheet(ui, sheet);
    };
    platform::run(listener);
    frames(3);
  }
  Desk(const Desk&) = delete;
  Desk& operator=(const Desk&) = delete;

  Picture frames(int count = 4) {
    Picture last;
    platform::headless::world().surface.pixel_ratio = scale;
    for (int i = 0; i < count; ++i) {
      if (!painting)
        platform::headless::frame();
      else if (i + 1 < count)
        platform::headless::frame([](ImDrawData*) {});  // textures stay wanted until a picture is made
      else
        platform::headless::frame([&](ImDrawData* data) { last = rasterise(data, 0xff000000, scale, 1); });
    }
    return last;
  }
  void seconds(double s) { frames(static_cast<int>(std::ceil(s * 60))); }
  const Spots::Spot* spot(const std::string& id) const { return ui.spots.find(id); }
  ImVec2 middle(const std::string& id) {
    const Spots::Spot* at = spot(id);
    EXPECT_NE(at, nullptr) << id;
    if (!at) return {};
    return {(at->min.x + at->max.x) / 2, (at->min.y + at->max.y) / 2};
  }
  void point(const std::string& id) {
    const ImVec2 at = middle(id);
    ImGui::GetIO().AddMousePosEvent(at.x, at.y);
    frames();
  }
  void click(const std::string& id) {
    point(id);
    ImGui::GetIO().AddMouseButtonEvent(0, true);
    frames();
    ImGui::GetIO().AddMouseButtonEvent(0, false);
    frames();
  }
  Picture stand_on(const std::string& id) {
    ui.focus_wanted = id;
    const Picture seen = frames();
    EXPECT_EQ(ui.ring_id, id);
    return seen;
  }
  void key(ImGuiKeyChord chord) {
    ImGuiIO& io = ImGui::GetIO();
    const ImGuiKey k = static_cast<ImGuiKey>(chord & ~ImGuiMod_Mask_);
    if (chord & ImGuiMod_Shift) io.AddKeyEvent(ImGuiMod_Shift, true);
    io.AddKeyEvent(k, true);
    frames();
    io.AddKeyEvent(k, false);
    if (chord & ImGuiMod_Shift) io.AddKeyEvent(ImGuiMod_Shift, false);
    frames();
  }
  void type(const char* text) {
    ImGui::GetIO().AddInputCharactersUTF8(text);
    frames();
  }
};

/// Ids that Tab is to reach, in the order of the sheet.
std::vector<std::string> reached_by_tab(const Desk& desk) {
  std::vector<std::string> ids;
  for (const Spots::Spot& spot : desk.ui.spots.list) {
    const bool pointer_only = spot.id.ends_with("/less") || spot.id.ends_with("/more") || spot.id.ends_with("/bar");
    const bool only_told = spot.id.starts_with("ruler/") || spot.id.starts_with("limit/") || spot.id.starts_with("water/") ||
                           spot.id == "finding/nips" || spot.id == "finding/lane" || spot.id == "note/1" || spot.id == "note/2";
    if (spot.enabled && !pointer_only && !only_told) ids.push_back(spot.id);
  }
  return ids;
}

TEST(Widgets, AButtonIsPressedByMouseAndByEnter) {
  Desk desk;
  desk.click("share");
  EXPECT_EQ(desk.sheet.shares, 1);
  desk.stand_on("share");
  desk.key(ImGuiKey_Enter);
  EXPECT_EQ(desk.sheet.shares, 2);
  desk.key(ImGuiKey_Space);
  EXPECT_EQ(desk.sheet.shares, 3);
}

TEST(Widgets, TabReachesEveryControlOnceAndInReadingOrder) {
  Desk desk;
  const std::vector<std::string> expected = reached_by_tab(desk);
  ASSERT_GT(expected.size(), 35u);
  desk.stand_on(expected.front());
  std::vector<std::string> reached = {desk.ui.ring_id};
  for (size_t i = 1; i < expected.size(); ++i) {
    desk.key(ImGuiKey_Tab);
    reached.push_back(desk.ui.ring_id);
  }
  EXPECT_EQ(reached, expected);
  for (size_t i = 1; i < 6; ++i) desk.key(ImGuiMod_Shift | ImGuiKey_Tab);
  EXPECT_EQ(desk.ui.ring_id, expected[expected.size() - 6]) << "and back with Shift";
}

TEST(Widgets, ThePageIsToldOfAsManyStopsAsTabReaches) {
  Desk desk;
  EXPECT_EQ(platform::headless::record().tab_stops, static_cast<int>(reached_by_tab(desk).size()));
}

TEST(Widgets, WhatIsScrolledOutOfSightComesIntoSightWithTheKeyboard) {
  Desk desk;
  ASSERT_NE(desk.ui.spots.find("long/last"), nullptr);
  EXPECT_FALSE(desk.ui.spots.find("long/last")->visible);
  desk.stand_on("note/2/action");
  desk.key(ImGuiKey_Tab);
  EXPECT_EQ(desk.ui.ring_id, "long/last");
  desk.frames(4);
  EXPECT_TRUE(desk.ui.spots.find("long/last")->visible);
}

TEST(Widgets, AStepperCountsByItsEndsAndByPlusAndMinus) {
  Desk desk;
  desk.click("group/more");
  EXPECT_EQ(desk.sheet.group, 9);
  desk.click("group/less");
  EXPECT_EQ(desk.sheet.group, 8);
  desk.stand_on("group");
  desk.type("+");
  desk.type("+");
  EXPECT_EQ(desk.sheet.group, 10);
  desk.type("−");
  desk.type("-");
  desk.type("-");
  desk.type("-");
  desk.type("-");
  EXPECT_EQ(desk.sheet.group, 6) << "it stops at the least";
}

TEST(Widgets, KeysTypedElsewhereDoNotStep) {
  Desk desk;
  desk.stand_on("share");
  desk.type("+");
  EXPECT_EQ(desk.sheet.group, 8);
  EXPECT_EQ(desk.sheet.change_l, 40);
}

TEST(Widgets, ANumberStepsByItsStepAndStaysWithinItsEnds) {
  Desk desk;
  desk.click("change/more");
  EXPECT_EQ(desk.sheet.change_l, 45);
  desk.sheet.change_l = 130;
  desk.click("change/more");
  EXPECT_EQ(desk.sheet.change_l, 132);
  EXPECT_FALSE(desk.ui.spots.find("change/more")->enabled);
}

TEST(Widgets, ChipsSwitchesAndSegmentsAnswerToTheirOwnSpot) {
  Desk desk;
  desk.click("shoals");
  EXPECT_TRUE(desk.sheet.chip_on);
  desk.click("crowding");
  EXPECT_TRUE(desk.sheet.crowding);
  desk.click("lane");
  EXPECT_FALSE(desk.sheet.lane);
  desk.click("shelf/2");
  EXPECT_EQ(desk.sheet.shelf, 2);
}

TEST(Widgets, AMenuOpensChoosesAndGivesTheKeyboardBack) {
  Desk desk;
  desk.click("light");
  desk.frames(3);
  ASSERT_NE(desk.ui.spots.find("light/1"), nullptr);
  desk.click("light/1");
  EXPECT_EQ(desk.sheet.light, 1);
  EXPECT_EQ(desk.ui.spots.find("light/1"), nullptr) << "it closes when chosen";
  desk.stand_on("light");
  desk.key(ImGuiKey_Enter);
  desk.frames(3);
  ASSERT_NE(desk.ui.spots.find("light/0"), nullptr);
  EXPECT_EQ(desk.ui.ring_id, "light/1") << "it opens on what is chosen";
  desk.key(ImGuiKey_DownArrow);
  EXPECT_EQ(desk.ui.ring_id, "light/2");
  desk.key(ImGuiKey_UpArrow);
  EXPECT_EQ(desk.ui.ring_id, "light/1");
  desk.key(ImGuiKey_DownArrow);
  desk.key(ImGuiKey_Enter);
  EXPECT_EQ(desk.sheet.light, 2);
  desk.frames(2);
  EXPECT_EQ(desk.ui.ring_id, "light");
}

TEST(Widgets, AMenuLeavesTheScreenOnNoSideAndItsFieldUncovered) {
  Desk desk;
  desk.click("light");
  desk.frames(3);
  const Spots::Spot* field = desk.spot("light");
  ASSERT_NE(field, nullptr);
  for (const char* id : {"light/0", "light/1", "light/2"}) {
    const Spots::Spot* row = desk.spot(id);
    ASSERT_NE(row, nullptr) << id;
    EXPECT_TRUE(row->max.y <= field->min.y || row->min.y >= field->max.y) << id;
    EXPECT_GE(row->min.y, 0);
    EXPECT_LE(row->max.y, 900);
  }
}

TEST(Widgets, EscapeClosesAMenuWithoutChoosing) {
  Desk desk;
  desk.click("light");
  desk.frames(3);
  desk.key(ImGuiKey_Escape);
  EXPECT_EQ(desk.ui.spots.find("light/1"), nullptr);
  EXPECT_EQ(desk.sheet.light, 0);
  desk.stand_on("light");
  desk.key(ImGuiKey_Enter);
  ASSERT_NE(desk.spot("light/1"), nullptr);
  desk.key(ImGuiKey_Escape);
  EXPECT_EQ(desk.spot("light/1"), nullptr);
  EXPECT_EQ(desk.ui.ring_id, "light") << "the keyboard is back where it came from";
}

TEST(Widgets, EscapeLeavesTheKeyboardWhereItIs) {
  Desk desk;
  desk.stand_on("print");
  desk.key(ImGuiKey_Escape);
  EXPECT_EQ(desk.ui.ring_id, "print");
}

bool tip_shown() { return ImGui::GetForegroundDrawList()->VtxBuffer.Size > 0; }

TEST(Widgets, ATipComesAfterFourTenthsOfASecondOfPointing) {
  Desk desk;
  desk.point("undo");
  EXPECT_GT(platform::headless::record().wake_in_ms, 0) << "a frame is asked for when it is due";
  EXPECT_LE(platform::headless::record().wake_in_ms, 450);
  desk.frames(14);
  EXPECT_FALSE(tip_shown()) << "18 frames are 0.3 s";
  desk.seconds(0.2);
  EXPECT_TRUE(tip_shown());
  desk.point("share");
  EXPECT_FALSE(tip_shown());
}

TEST(Widgets, ATipComesToTheKeyboardAsWell) {
  Desk desk;
  desk.stand_on("undo");
  EXPECT_FALSE(tip_shown());
  desk.seconds(0.5);
  EXPECT_TRUE(tip_shown());
}

TEST(Widgets, AColumnScrollsByWheelAndStopsAtItsEnds) {
  Desk desk;
  ImGuiIO& io = ImGui::GetIO();
  io.AddMousePosEvent(1330, 700);
  desk.frames();
  ASSERT_FALSE(desk.spot("long/last")->visible);
  const float before = desk.spot("long/last")->min.y;
  for (int i = 0; i < 20; ++i) {
    io.AddMouseWheelEvent(0, -1);
    desk.frames(2);
  }
  EXPECT_TRUE(desk.spot("long/last")->visible);
  const float down = desk.spot("long/last")->min.y;
  EXPECT_NEAR(before - down, 240 - 110, 1) << "as far as it is higher than its view";
  for (int i = 0; i < 20; ++i) {
    io.AddMouseWheelEvent(0, 1);
    desk.frames(2);
  }
  EXPECT_EQ(desk.spot("long/last")->min.y, before);
}

TEST(Widgets, AColumnScrollsByItsBar) {
  Desk desk;
  const Spots::Spot* bar = desk.spot("long/bar");
  ASSERT_NE(bar, nullptr);
  const ImVec2 at{(bar->min.x + bar->max.x) / 2, bar->min.y + 5};
  ImGuiIO& io = ImGui::GetIO();
  io.AddMousePosEvent(at.x, at.y);
  desk.frames();
  io.AddMouseButtonEvent(0, true);
  desk.frames();
  for (int i = 1; i <= 12; ++i) {
    io.AddMousePosEvent(at.x, at.y + 8.0f * static_cast<float>(i));
    desk.frames(1);
  }
  io.AddMouseButtonEvent(0, false);
  desk.frames();
  EXPECT_TRUE(desk.spot("long/last")->visible);
}

TEST(Widgets, AFingerScrollsAColumnAndPressesNothing) {
  Desk desk;
  desk.ui.touch = true;
  ImGuiIO& io = ImGui::GetIO();
  const auto swipe = [&](ImVec2 from, float down) {
    io.AddMouseSourceEvent(ImGuiMouseSource_TouchScreen);
    io.AddMousePosEvent(from.x, from.y);
    io.AddMouseButtonEvent(0, true);
    desk.frames();
    for (int i = 1; i <= 10; ++i) {
      io.AddMousePosEvent(from.x, from.y + down * static_cast<float>(i) / 10);
      desk.frames(1);
    }
    io.AddMouseButtonEvent(0, false);
    desk.frames();
  };
  const float before = desk.spot("long/last")->min.y;
  swipe({1330, 740}, -70);
  EXPECT_NEAR(before - desk.spot("long/last")->min.y, 70, 15) << "as far as the finger went, but for its first pixels";
  swipe({1330, 740}, -70);
  ASSERT_TRUE(desk.spot("long/last")->visible);
  const ImVec2 last = desk.middle("long/last");
  swipe(last, 40);
  EXPECT_EQ(desk.sheet.toast.left_s, 0) << "the button that the finger came down on is not pressed";
  swipe({200, 560}, 30);
  EXPECT_EQ(desk.sheet.lifted, 0) << "a row is lifted sideways only";
}

const platform::TextField* field_of(std::string_view id) {
  for (const platform::TextField& field : platform::headless::record().fields)
    if (field.id == id) return &field;
  return nullptr;
}

TEST(Fields, LieWhereTheirTextIsDrawn) {
  Desk desk;
  const platform::TextField* field = field_of("search");
  const Spots::Spot* box = desk.spot("search");
  const Spots::Spot* cross = desk.spot("search/clear");
  ASSERT_TRUE(field && box && cross);
  EXPECT_GE(field->x, box->min.x + 16) << "right of the icon";
  EXPECT_LE(field->x + field->width, cross->min.x);
  EXPECT_GE(field->y, box->min.y);
  EXPECT_LE(field->y + field->height, box->max.y);
  EXPECT_EQ(field->value, "barb");
}

TEST(Fields, OpenWhenTheKeyboardComesToThemAndTellEveryLetter) {
  Desk desk;
  desk.stand_on("search");
  EXPECT_EQ(platform::headless::record().open_field, "search");
  platform::headless::type("rasb");
  desk.frames();
  EXPECT_EQ(desk.sheet.search, "rasb") << "while typing";
  platform::headless::leave_field();
  desk.frames();
  EXPECT_EQ(platform::headless::record().open_field, "");
  EXPECT_EQ(desk.sheet.search, "rasb");
}

TEST(Fields, EscapePutsBackWhatWasThere) {
  Desk desk;
  desk.stand_on("name");
  platform::headless::type("Another name");
  desk.frames();
  EXPECT_EQ(desk.sheet.name, "Another name");
  platform::headless::cancel_field();
  desk.frames();
  EXPECT_EQ(desk.sheet.name, "Riverbank, reading room");
}

TEST(Fields, ANumberIsReadWhenItIsLeftAndHeldWithinItsEnds) {
  Desk desk;
  desk.stand_on("tap_gh");
  platform::headless::type("7,4");
  desk.frames();
  EXPECT_EQ(desk.sheet.tap_gh, 13) << "not yet";
  platform::headless::leave_field();
  desk.frames();
  EXPECT_EQ(desk.sheet.tap_gh, 7) << "no decimals in this field";
  desk.stand_on("share");
  desk.stand_on("tap_gh");
  platform::headless::type("4000");
  platform::headless::leave_field();
  desk.frames();
  EXPECT_EQ(desk.sheet.tap_gh, 40);
  desk.stand_on("share");
  desk.stand_on("tap_gh");
  platform::headless::type("soft");
  platform::headless::leave_field();
  desk.frames();
  EXPECT_EQ(desk.sheet.tap_gh, 40) << "what is no number changes nothing";
}

TEST(Fields, ArrowsStepANumberWhileItIsTyped) {
  Desk desk;
  desk.stand_on("tap_gh");
  platform::headless::step_field(1);
  desk.frames();
  EXPECT_EQ(desk.sheet.tap_gh, 14);
  platform::headless::step_field(-1);
  desk.frames();
  EXPECT_EQ(desk.sheet.tap_gh, 13);
}

TEST(Fields, TheFiguresOfAStepperOpenByEnter) {
  Desk desk;
  desk.stand_on("change");
  EXPECT_EQ(platform::headless::record().open_field, "") << "Tab alone does not, so that + and − step";
  desk.key(ImGuiKey_Enter);
  EXPECT_EQ(platform::headless::record().open_field, "change");
  platform::headless::type("25");
  platform::headless::leave_field();
  desk.frames();
  EXPECT_EQ(desk.sheet.change_l, 25);
}

TEST(Widgets, AStillSheetAsksForNoMoreFrames) {
  Desk desk;
  platform::headless::frames_until_rest();
  for (int i = 0; i < 5; ++i) {
    desk.frames(1);
    EXPECT_EQ(platform::headless::record().frames_owed, 0);
    EXPECT_LT(platform::headless::record().wake_in_ms, 0);
  }
  desk.click("crowding");
  EXPECT_LT(platform::headless::frames_until_rest(), 30) << "and comes to rest after a change";
}

TEST(Widgets, TheRingIsSeenInBothThemesOnEveryKindOfControl) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    Desk desk(true);
    desk.theme = theme;
    const ImU32 focus = palette(theme).focus & 0xffffff;
    const Picture without = desk.stand_on("long/last");
    for (const char* id :
         {"share", "print", "shoals", "group", "search", "crowding", "shelf/1", "row/cherry", "tab/tank", "light"}) {
      const Picture with = desk.stand_on(id);
      const Spots::Spot* at = desk.spot(id);
      int pixels = 0;
      for (int y = static_cast<int>(at->min.y) - 5; y < static_cast<int>(at->max.y) + 5; ++y)
        for (int x = static_cast<int>(at->min.x) - 32; x < static_cast<int>(at->max.x) + 32; ++x)
          if (x >= 0 && (with.at(x, y) & 0xffffff) == focus && (without.at(x, y) & 0xffffff) != focus) ++pixels;
      // A ring 2 px wide around the box has at least its perimeter in pixels, give or take its round corners.
      EXPECT_GT(pixels, static_cast<int>(at->max.x - at->min.x)) << id;
    }
  }
}

TEST(Widgets, ARowIsLiftedByADragAndEnteredByTheKeyboardOnly) {
  Desk desk;
  desk.click("row/cherry");
  EXPECT_EQ(desk.sheet.lifted, 0);
  EXPECT_EQ(desk.sheet.entered, 0);
  const ImVec2 at = desk.middle("row/cherry");
  ImGuiIO& io = ImGui::GetIO();
  io.AddMousePosEvent(at.x, at.y);
  io.AddMouseButtonEvent(0, true);
  desk.frames();
  io.AddMousePosEvent(at.x + 3, at.y);
  desk.frames();
  EXPECT_EQ(desk.sheet.lifted, 0) << "less than 4 px is no drag";
  io.AddMousePosEvent(at.x + 30, at.y);
  desk.frames(4);
  io.AddMousePosEvent(at.x, at.y);
  desk.frames();
  io.AddMouseButtonEvent(0, false);
  desk.frames();
  EXPECT_EQ(desk.sheet.lifted, 1) << "told once a drag";
  EXPECT_EQ(desk.sheet.entered, 0);
  desk.stand_on("row/cherry");
  desk.key(ImGuiKey_Enter);
  EXPECT_EQ(desk.sheet.entered, 1);
}

TEST(Widgets, ATapOnARowEntersItButTheEndOfADragByFingerDoesNot) {
  Desk desk;
  desk.ui.touch = true;
  desk.click("row/cherry");
  EXPECT_EQ(desk.sheet.entered, 1);
  const ImVec2 at = desk.middle("row/cherry");
  ImGuiIO& io = ImGui::GetIO();
  io.AddMouseButtonEvent(0, true);
  desk.frames();
  io.AddMousePosEvent(at.x + 20, at.y);
  desk.frames();
  io.AddMouseButtonEvent(0, false);
  desk.frames();
  EXPECT_EQ(desk.sheet.lifted, 1);
  EXPECT_EQ(desk.sheet.entered, 1);
}

TEST(Widgets, ARemedyIsPreviewedUnderThePointerAndUnderTheKeyboard) {
  Desk desk;
  EXPECT_EQ(desk.sheet.previewed, "");
  desk.point("finding/nips/remedy/1");
  EXPECT_EQ(desk.sheet.previewed, "Swap 3");
  desk.point("share");
  EXPECT_EQ(desk.sheet.previewed, "");
  desk.stand_on("finding/nips/remedy/0");
  EXPECT_EQ(desk.sheet.previewed, "Show calmer barbs");
  desk.key(ImGuiKey_Enter);
  EXPECT_EQ(desk.sheet.remedies, 1);
}

TEST(Widgets, WhyUnfoldsAndPushesWhatFollowsDown) {
  Desk desk;
  const float before = desk.ui.spots.find("finding/lane")->min.y;
  desk.click("finding/nips/why");
  EXPECT_TRUE(desk.sheet.why_open);
  EXPECT_GT(desk.ui.spots.find("finding/lane")->min.y, before + 15);
}

TEST(Widgets, AToastGoesAfterEightSecondsButWaitsWhilePointedAt) {
  Desk desk;
  show_toast(desk.ui, desk.sheet.toast, "Removed 6 threadfin rainbowfish", "Undo");
  desk.frames(2);
  ASSERT_NE(desk.ui.spots.find("toast"), nullptr);
  desk.point("toast");
  desk.seconds(10);
  ASSERT_NE(desk.ui.spots.find("toast"), nullptr);
  desk.point("share");
  desk.seconds(5);
  EXPECT_NE(desk.ui.spots.find("toast"), nullptr);
  desk.seconds(3.5);
  EXPECT_EQ(desk.ui.spots.find("toast"), nullptr);
}

TEST(Widgets, AToastsActionIsReachedByMouse) {
  Desk desk;
  show_toast(desk.ui, desk.sheet.toast, "Removed 6 threadfin rainbowfish", "Undo");
  desk.frames(2);
  desk.click("toast/action");
  EXPECT_EQ(desk.sheet.undone, 1);
  EXPECT_EQ(desk.ui.spots.find("toast"), nullptr);
}

TEST(Widgets, TheGroupRuleFollowsThePointerAndTheKeys) {
  Desk desk;
  const Spots::Spot* rule = desk.ui.spots.find("rule");
  ASSERT_NE(rule, nullptr);
  ImGuiIO& io = ImGui::GetIO();
  io.AddMousePosEvent(rule->min.x + 10, rule->min.y + 12);
  desk.frames();
  io.AddMouseButtonEvent(0, true);
  desk.frames();
  EXPECT_EQ(desk.sheet.rule_size, 1);
  io.AddMousePosEvent(rule->max.x + 50, rule->min.y + 12);
  desk.frames();
  EXPECT_EQ(desk.sheet.rule_size, 14);
  io.AddMouseButtonEvent(0, false);
  desk.frames();
  desk.stand_on("rule");
  desk.type("-");
  EXPECT_EQ(desk.sheet.rule_size, 13);
}

// WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 CSS pixels. The fingers' 44 is our own rule (2.5.5 names the same figure).
TEST(Widgets, SmallThingsCanBeHitAroundTheirEdge) {
  Desk desk;
  const Spots::Spot* cross = desk.ui.spots.find("search/clear");
  ASSERT_NE(cross, nullptr);
  ASSERT_LT(cross->max.y - cross->min.y, 20);
  ImGuiIO& io = ImGui::GetIO();
  const ImVec2 at = desk.middle("search/clear");
  io.AddMousePosEvent(at.x + 11, at.y + 11);
  desk.frames();
  io.AddMouseButtonEvent(0, true);
  desk.frames();
  io.AddMouseButtonEvent(0, false);
  desk.frames();
  EXPECT_EQ(desk.sheet.search, "");
  desk.frames();
  EXPECT_EQ(desk.ui.ring_id, "search") << "the keyboard goes to the emptied field";
}

TEST(Widgets, AFingerOnOneOfTwoCloseThingsDoesNotPressTheOther) {
  Desk desk;
  desk.ui.touch = true;
  desk.frames();
  // 34 px between two rows of controls, so that their areas of 44 px overlap.
  const Spots::Spot *levels = desk.spot("levels/0"), *crowding = desk.spot("crowding");
  ASSERT_TRUE(levels && crowding);
  ASSERT_LT(crowding->min.y - levels->max.y, 18);
  ImGuiIO& io = ImGui::GetIO();
  const auto tap = [&](ImVec2 at) {
    io.AddMousePosEvent(at.x, at.y);
    desk.frames();
    io.AddMouseButtonEvent(0, true);
    desk.frames();
    io.AddMouseButtonEvent(0, false);
    desk.frames();
  };
  tap({crowding->min.x + 30, crowding->min.y + 1});
  EXPECT_TRUE(desk.sheet.crowding);
  tap({crowding->min.x + 30, crowding->max.y + 6});
  EXPECT_FALSE(desk.sheet.crowding) << "but below it, where nothing else is, the finger still reaches it";
}

TEST(Widgets, IdsAreUniqueSoThatATestHitsWhatItMeans) {
  Desk desk;
  std::set<std::string> seen;
  for (const Spots::Spot& spot : desk.ui.spots.list) {
    EXPECT_TRUE(seen.insert(spot.id).second) << spot.id;
    EXPECT_FALSE(spot.label.empty()) << spot.id;
  }
}

TEST(Widgets, ReducedMotionMakesEveryChangeInstant) {
  Desk desk;
  desk.ui.reduced_motion = true;
  desk.frames();
  EXPECT_EQ(eased(desk.ui, "some value", 1), 1);
  EXPECT_EQ(eased(desk.ui, "some value", 5), 5);
}

TEST(Widgets, AChangeEasesThereAndArrives) {
  Desk desk;
  desk.frames();
  eased(desk.ui, "some value", 0);
  desk.frames(1);
  EXPECT_LT(eased(desk.ui, "some value", 100), 1) << "it sets out from where it was";
  desk.frames(1);
  const float under_way = eased(desk.ui, "some value", 100);
  EXPECT_GT(under_way, 1);
  EXPECT_LT(under_way, 100);
  for (int i = 0; i < 11; ++i) {
    desk.frames(1);
    eased(desk.ui, "some value", 100);
  }
  EXPECT_EQ(eased(desk.ui, "some value", 100), 100);
}

TEST(Text, ASizeIsTheEmAsInAStyleSheet) {
  Desk desk;
  const Pen pen{nullptr, desk.ui.palette, &desk.faces, 1};
  // Advance widths in the hmtx table of Inter 3.19 Regular, read with fontTools: H 2084, 0 1760, n 1648, em dash 2816; em 2816.
  const Type em{Face::regular, 44, 60};
  EXPECT_NEAR(text_width(pen, em, "H"), 44 * 2084 / 2816.0f, 0.01f);
  EXPECT_NEAR(text_width(pen, em, "0n"), 44 * (1760 + 1648) / 2816.0f, 0.01f);
  EXPECT_NEAR(text_width(pen, em, "—"), 44, 0.01f);
  EXPECT_GT(box_height(pen, type::body), 13 * 1.15f) << "ascender to descender is more than the em";
  EXPECT_LT(box_height(pen, type::body), 13 * 1.3f);
}

TEST(Text, WrappedLinesFitAndLoseNothingButSpaces) {
  Desk desk;
  const Pen pen{nullptr, desk.ui.palette, &desk.faces, 1};
  const std::string text = "Part of it is missing, so nothing was opened.\nYour own plan is as you left it: 24 °C, 4 to 12 °dH.";
  for (const float width : {60.0f, 90.0f, 133.0f, 300.0f}) {
    std::string joined;
    for (const std::string_view line : wrapped(pen, type::small, text, width)) {
      EXPECT_LE(text_width(pen, type::small, line), width + 0.02f) << line;
      joined += line;
    }
    std::string without;
    for (const char c : text)
      if (c != ' ' && c != '\n') without += c;
    std::erase(joined, ' ');
    EXPECT_EQ(joined, without) << width;
  }
  EXPECT_EQ(wrapped(pen, type::small, "Rohanella", 1).size(), 9u) << "narrower than a letter still ends";
}

TEST(Text, AnElidedTextFitsAndEndsWithAnEllipsis) {
  Desk desk;
  const Pen pen{nullptr, desk.ui.palette, &desk.faces, 1};
  EXPECT_EQ(elided(pen, type::body, "Cherry barb", 500), "Cherry barb");
  const std::string cut = elided(pen, type::body, "Boeseman's rainbowfish", 80);
  EXPECT_TRUE(cut.ends_with("…"));
  EXPECT_LE(text_width(pen, type::body, cut), 80.02f);
}

TEST(Text, BrokenUtf8IsShownAsAReplacementAndDoesNotRunOverTheEnd) {
  Desk desk;
  const Pen pen{nullptr, desk.ui.palette, &desk.faces, 1};
  EXPECT_GT(text_width(pen, type::body, std::string_view("a\xc3", 2)), text_width(pen, type::body, "a"));
  EXPECT_GT(text_width(pen, type::body, std::string_view("\xe2\x82", 2)), 0);
}

TEST(Numbers, AreReadAsAKeeperTypesThem) {
  EXPECT_EQ(number_from("7,2"), 7.2);
  EXPECT_EQ(number_from("  24 "), 24);
  EXPECT_EQ(number_from("−1.5"), -1.5);
  EXPECT_EQ(number_from("-3"), -3);
  EXPECT_EQ(number_from(".5"), 0.5);
  EXPECT_EQ(number_from(""), std::nullopt);
  EXPECT_EQ(number_from("7 2"), std::nullopt);
  EXPECT_EQ(number_from("1.2.3"), std::nullopt);
  EXPECT_EQ(number_from("12 L"), std::nullopt);
  EXPECT_EQ(number_from("-"), std::nullopt);
}

TEST(Numbers, AreWrittenWithAMinusSignAndNeverAsMinusNothing) {
  EXPECT_EQ(number_text(7.25, 1), "7.3");
  EXPECT_EQ(number_text(-2, 0), "−2");
  EXPECT_EQ(number_text(-0.04, 1), "0.0");
  EXPECT_EQ(held(7.26, 0, 14, 1), 7.3);
  EXPECT_EQ(held(99, 0, 14, 1), 14);
}

TEST(Sheet, IsDrawnInBothThemesAndAtTwoDeviceScales) {
  Desk desk(true);
  for (const Theme theme : {Theme::light, Theme::dark}) {
    for (const float scale : {1.0f, 2.0f}) {
      desk.theme = theme;
      desk.scale = scale;
      const Picture picture = desk.frames(3);
      ASSERT_EQ(picture.width, static_cast<int>(1440 * scale));
      std::set<ImU32> colours;
      for (int y = 0; y < picture.height; y += 3)
        for (int x = 0; x < picture.width; x += 3) colours.insert(picture.at(x, y));
      EXPECT_GT(colours.size(), 60u);
      EXPECT_EQ(picture.at(2, 2) & 0xffffff, desk.ui.palette->ground & 0xffffff);
    }
  }
}

}  // namespace
}  // namespace shoalwright
