// SPDX-License-Identifier: MIT
// The demo in the windows that the look is drawn for. With SHOTS=<directory> each is left there as a PNG file.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "platform/headless.h"
#include "support/screen.h"

namespace shoalwright {
namespace {

struct Window {
  const char* name;
  float width, height;
  bool touch;
};
constexpr Window windows[] = {
    {"desktop", 1440, 900, false}, {"large", 1920, 1080, false}, {"tablet", 1024, 768, false}, {"phone", 390, 844, true}};
constexpr std::pair<Theme, const char*> themes[] = {{Theme::light, "light"}, {Theme::dark, "dark"}};

ScreenKind kind_of(const Window& window, Theme theme) {
  return {.width = window.width, .height = window.height, .theme = theme, .touch = window.touch};
}

bool contains(const Spots::Spot& outer, const Spots::Spot& inner) {
  constexpr float rounding = 0.6f;
  return inner.min.x >= outer.min.x - rounding && inner.min.y >= outer.min.y - rounding &&
         inner.max.x <= outer.max.x + rounding && inner.max.y <= outer.max.y + rounding;
}

/// Width and height that two boxes share, negative when they lie apart.
ImVec2 shared(const Spots::Spot& a, const Spots::Spot& b) {
  return {std::min(a.max.x, b.max.x) - std::max(a.min.x, b.min.x), std::min(a.max.y, b.max.y) - std::max(a.min.y, b.min.y)};
}

bool overlap(const Spots::Spot& a, const Spots::Spot& b) {
  // Neighbours grown together share the border of 1 px between them.
  const ImVec2 both = shared(a, b);
  return both.x > 1.1f && both.y > 1.1f;
}

/// Shoals swim through each other; a scroll bar lies over its column.
bool lies_over_others(const Spots::Spot& spot) { return spot.id.ends_with("/bar"); }
bool in_the_water(const Spots::Spot& spot) {
  return spot.id.starts_with("tank.fish/") || spot.id.starts_with("tank.piece/") || spot.id.starts_with("above.piece/");
}

void expect_sound_spots(const Screen& screen, float width, float height) {
  std::vector<const Spots::Spot*> seen;
  std::set<std::string> ids;
  for (const Spots::Spot& spot : screen.spots().list) {
    EXPECT_TRUE(ids.insert(spot.id).second) << spot.id << " twice";
    EXPECT_FALSE(spot.label.empty()) << spot.id << " has no name to be read out";
    if (!spot.visible) continue;
    EXPECT_GE(spot.min.x, -0.1f) << spot.id;
    EXPECT_GE(spot.min.y, -0.1f) << spot.id;
    EXPECT_LE(spot.max.x, width + 0.1f) << spot.id;
    EXPECT_LE(spot.max.y, height + 0.1f) << spot.id;
    EXPECT_FALSE(spot.cut_across) << spot.id << " is cut at its side";
    if (spot.enabled && !lies_over_others(spot)) seen.push_back(&spot);
  }
  EXPECT_GT(seen.size(), 15u);
  for (size_t i = 0; i < seen.size(); ++i) {
    for (size_t j = i + 1; j < seen.size(); ++j) {
      const Spots::Spot &a = *seen[i], &b = *seen[j];
      if (!overlap(a, b) || contains(a, b) || contains(b, a) || (in_the_water(a) && in_the_water(b))) continue;
      ADD_FAILURE() << a.id << " and " << b.id << " lie over each other: " << a.min.x << " " << a.min.y << " " << a.max.x << " "
                    << a.max.y << ", " << b.min.x << " " << b.min.y << " " << b.max.x << " " << b.max.y;
    }
  }
}

/// Turns the wheel over the column that holds it until it is seen. False when there is no such spot.
bool bring_into_sight(Screen& screen, const std::string& id) {
  for (int i = 0; i < 120; ++i) {
    const Spots::Spot* spot = screen.spot(id);
    if (!spot) return false;
    const float height = ImGui::GetIO().DisplaySize.y;
    if (spot->visible && spot->max.y - spot->min.y > 10) return true;
    // The middle of the screen across lies over the shelf or the assessment where it is listed.
    const ImVec2 at{(spot->min.x + spot->max.x) / 2, height * 0.75f};
    screen.wheel(at, spot->min.y > height / 2 ? -1 : 1);
  }
  return false;
}

TEST(Screens, NothingThatCanBeUsedLeavesTheWindowOrLiesOverAnother) {
  for (const Window& window : windows) {
    for (const auto& [theme, theme_name] : themes) {
      SCOPED_TRACE(std::string(window.name) + " " + theme_name);
      Screen screen(kind_of(window, theme));
      EXPECT_TRUE(screen.rest());
      expect_sound_spots(screen, window.width, window.height);
      screen.shoot(std::string("demo-") + window.name + "-" + theme_name);
    }
  }
}

TEST(Screens, APictureShowsTheThemeAndMoreThanAGround) {
  for (const auto& [theme, theme_name] : themes) {
    Screen screen({.theme = theme});
    const Picture picture = screen.picture();
    ASSERT_EQ(picture.width, 1440);
    ASSERT_EQ(picture.height, 900);
    std::set<ImU32> colours;
    for (int y = 0; y < picture.height; y += 4)
      for (int x = 0; x < picture.width; x += 4) colours.insert(picture.at(x, y));
    EXPECT_GT(colours.size(), 400u) << theme_name << ": water, wood, leaves and fish have many";
    EXPECT_EQ(picture.at(700, 894) & 0xffffff, palette(theme).panel & 0xffffff) << theme_name << ": the hint row";
  }
}

TEST(Screens, ThePlanAsKeptOnTheDeviceIsShown) {
  Screen demo({});
  ASSERT_FALSE(present(demo.app().history).stock.empty());
  const std::string first = present(demo.app().history).stock.front().species;
  EXPECT_NE(demo.spot("stock.row/" + first), nullptr);
  EXPECT_NE(demo.spot("shelf.search"), nullptr);
  EXPECT_NE(demo.spot("tank.front"), nullptr);
  EXPECT_NE(demo.spot("top.name"), nullptr);
}

TEST(Screens, TabGoesThroughTheWholeWindowInTheOrderOfTheSpots) {
  Screen screen({});
  std::map<std::string, size_t> place;
  size_t at = 0;
  for (const Spots::Spot& spot : screen.spots().list) place.emplace(spot.id, at++);
  std::vector<std::string> reached;
  for (int i = 0; i < 200; ++i) {
    screen.key(ImGuiKey_Tab);
    const std::string& id = screen.app().ui.ring_id;
    ASSERT_FALSE(id.empty()) << "the ring is lost after " << (reached.empty() ? "the start" : reached.back());
    if (!reached.empty() && id == reached.front()) break;
    reached.push_back(id);
  }
  EXPECT_GT(reached.size(), 30u);
  EXPECT_LT(reached.size(), 200u) << "it never comes round";
  EXPECT_TRUE(reached.front().starts_with("top.")) << reached.front();
  for (size_t i = 1; i < reached.size(); ++i) {
    // What comes into sight on the way (a row scrolled to) may be new.
    const auto before = place.find(reached[i - 1]), now = place.find(reached[i]);
    if (before == place.end() || now == place.end()) continue;
    EXPECT_LT(before->second, now->second) << reached[i - 1] << " then " << reached[i];
  }
}

/// The middle of the water in the front view.
ImVec2 in_the_tank(const Screen& screen) {
  const Spots::Spot* front = screen.spot("tank.front");
  EXPECT_NE(front, nullptr);
  if (!front) return {};
  return {(front->min.x + front->max.x) / 2, front->min.y + (front->max.y - front->min.y) * 0.55f};
}

int count_of(Screen& screen, const std::string& species) {
  for (const Group& group : present(screen.app().history).stock)
    if (group.species == species) return group.count;
  return 0;
}

TEST(Screens, AFishDraggedFromTheShelfIsShownBeforeItIsDroppedAndStaysAfter) {
  for (const auto& [theme, theme_name] : themes) {
    Screen screen({.theme = theme});
    const std::string barb = "puntigrus-tetrazona";
    const Assessment before = screen.app().now;
    screen.app().views.shelf.search = "tiger barb";
    screen.frames(2);
    screen.drag("shelf.row/" + barb, in_the_tank(screen));
    ASSERT_TRUE(screen.app().held.has_value());
    EXPECT_TRUE(screen.app().held->over_tank);
    EXPECT_EQ(count_of(screen, barb), 0) << "the plan is as it was";
    EXPECT_EQ(plate_of(look_at(screen.app()), barb), 5) << "but the window shows it as a fifth kind";
    EXPECT_NE(screen.app().shown_assessment.findings.size(), before.findings.size());
    screen.shoot(std::string("held-") + theme_name);
    screen.type("+");
    const int held = screen.app().held->count;
    screen.let_go();
    EXPECT_FALSE(screen.app().held.has_value());
    EXPECT_EQ(count_of(screen, barb), held);
    screen.shoot(std::string("dropped-") + theme_name);
    screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
    EXPECT_EQ(count_of(screen, barb), 0);
  }
}

TEST(Screens, AFishIsPickedUpPlacedAndPutBackByTheKeyboardAlone) {
  Screen screen({});
  screen.key(ImGuiKey_Slash);
  EXPECT_EQ(platform::headless::record().open_field, "shelf.search");
  platform::headless::type("cherry barb");
  platform::headless::leave_field();
  screen.rest();
  const std::string barb = "rohanella-titteya";
  ASSERT_NE(screen.spot("shelf.row/" + barb), nullptr);
  for (int i = 0; i < 30 && screen.app().ui.ring_id != "shelf.row/" + barb; ++i) screen.key(ImGuiKey_Tab);
  screen.key(ImGuiKey_Enter);
  ASSERT_TRUE(screen.app().held.has_value());
  EXPECT_TRUE(screen.app().held->by_keyboard);
  screen.key(ImGuiKey_Escape);
  EXPECT_FALSE(screen.app().held.has_value());
  EXPECT_EQ(count_of(screen, barb), 0);
  screen.key(ImGuiKey_Enter);
  ASSERT_TRUE(screen.app().held.has_value());
  const double x_cm = screen.app().held->x_cm;
  screen.key(ImGuiMod_Shift | ImGuiKey_RightArrow);
  EXPECT_NEAR(screen.app().held->x_cm, x_cm + 5, 0.01);
  const int held = screen.app().held->count;
  screen.key(ImGuiKey_Enter);
  EXPECT_EQ(count_of(screen, barb), held);
}

TEST(Screens, TheWholeAssessmentIsReadWithTheKeyboard) {
  Screen screen({});
  screen.app().ui.focus_wanted = "load.change";
  screen.frames(3);
  ASSERT_EQ(screen.app().ui.ring_id, "load.change");
  const float before = screen.spot("load.change")->min.y;
  screen.key(ImGuiKey_PageDown);
  EXPECT_LT(screen.spot("load.change")->min.y, before - 100) << "Page Down scrolls the column";
  screen.key(ImGuiKey_End);
  const Spots::Spot* bar = screen.spot("assessment/bar");
  ASSERT_NE(bar, nullptr);
  EXPECT_NEAR(bar->max.y, 900, 60) << "End goes to its end";
  screen.key(ImGuiKey_Home);
  EXPECT_EQ(screen.spot("load.change")->min.y, before);
  screen.key(ImGuiKey_End);
  screen.key(ImGuiMod_Shift | ImGuiKey_Tab);
  const Spots::Spot* on = screen.spot(screen.app().ui.ring_id);
  ASSERT_NE(on, nullptr);
  EXPECT_TRUE(on->visible) << "what has the keyboard is brought back into sight";
}

TEST(Screens, EverySheetAndMenuStandsInTheWindow) {
  struct Opened {
    const char *name, *by;
  };
  for (const Window& window : windows) {
    for (const Opened& opened : {Opened{"tank-sheet", "top.size"},
                                 {"water-sheet", "water.edit"},
                                 {"readings-sheet", "load.readings"},
                                 {"file-menu", "top.file"},
                                 {"units-menu", "top.units"}}) {
      const Theme theme = window.width == 1440 ? Theme::dark : Theme::light;
      SCOPED_TRACE(std::string(window.name) + " " + opened.name);
      Screen screen(kind_of(window, theme));
      ASSERT_TRUE(bring_into_sight(screen, opened.by));
      const size_t before = screen.spots().list.size();
      screen.click(opened.by);
      EXPECT_NE(screen.spots().list.size(), before) << "it opened, on top or over everything";
      for (const Spots::Spot& spot : screen.spots().list) {
        if (!spot.visible) continue;
        EXPECT_FALSE(spot.cut_across) << spot.id << " is cut at its side";
        EXPECT_LE(spot.max.y, window.height + 0.1f) << spot.id;
      }
      screen.shoot(std::string(opened.name) + "-" + window.name);
      screen.key(ImGuiKey_Escape);
      EXPECT_LE(screen.spots().list.size(), before + 1) << "Escape closes it";
    }
  }
}

TEST(Screens, AllSwitchesOnAndUsUnits) {
  Screen screen({.theme = Theme::dark});
  screen.app().preferences.us_units = true;
  screen.app().measures.us = true;
  screen.app().preferences.overlay = Overlay::crowding;
  screen.frames(3);
  screen.rest();
  expect_sound_spots(screen, 1440, 900);
  screen.shoot("us-crowding-dark");
  const std::string temperature = screen.spot("water.temperature") ? screen.spot("water.temperature")->label : "";
  EXPECT_NE(temperature.find("°F"), std::string::npos) << temperature;
}

TEST(Screens, WhatIsLookedAtStandsStillAndAsksForNoFrames) {
  Screen screen({});
  ASSERT_TRUE(screen.rest());
  const Picture before = screen.picture();
  screen.rest();
  const Picture after = screen.picture();
  EXPECT_EQ(before.rgba, after.rgba);
}

}  // namespace
}  // namespace shoalwright
