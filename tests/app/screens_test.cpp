// SPDX-License-Identifier: MIT
// The demo in the windows that the look is drawn for. With SHOTS=<directory> each is left there as a PNG file.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

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
bool in_the_water(const Spots::Spot& spot) { return spot.id.starts_with("tank.fish/"); }

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
    EXPECT_EQ(picture.at(1000, 894) & 0xffffff, palette(theme).panel & 0xffffff) << theme_name << ": the hint row";
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
