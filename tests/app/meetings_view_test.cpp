// SPDX-License-Identifier: MIT
#include "views/meetings_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "draw/geometry.h"
#include "support/quarrels.h"

namespace shoalwright {
namespace {

bool overlap(const Box& a, const Box& b) { return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom(); }

TEST(MeetingsLayout, PutsNoGroupOverAnotherAndAllOntoTheirLevels) {
  Screen screen(demo_with([](Plan&) {}));
  screen.rest();
  const Ui& ui = screen.app().ui;
  const Pen pen{nullptr, ui.palette, ui.faces, ui.device_scale};
  Dice dice{7};
  const auto below = [&](int count) { return static_cast<int>(dice.next() * static_cast<float>(count)); };
  for (int turn = 0; turn < 300; ++turn) {
    std::vector<MeetingGroup> groups(static_cast<std::size_t>(below(14)));
    for (MeetingGroup& group : groups) {
      group.count = 1 + below(turn % 3 == 0 ? 90 : 14);
      for (bool& level : group.levels) level = below(3) == 0;
    }
    const float width = 220 + static_cast<float>(below(300));
    const MeetingsLayout layout = meetings_layout(pen, groups, {100, 50}, width);
    ASSERT_EQ(layout.capsules.size(), groups.size());
    for (std::size_t i = 0; i < groups.size(); ++i) {
      const Capsule& one = layout.capsules[i];
      EXPECT_EQ(one.dots + one.more, groups[i].count);
      EXPECT_GE(one.box.x, 100);
      EXPECT_LE(one.box.right(), 100 + width);
      EXPECT_GE(one.box.y, 50);
      EXPECT_LE(one.box.bottom(), 50 + layout.height);
      if (one.row % 2 == 0) {
        EXPECT_GE(one.box.y, layout.lanes[one.row / 2].y);
        EXPECT_LE(one.box.bottom(), layout.lanes[one.row / 2].bottom());
      }
      for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(overlap(one.box, layout.capsules[j].box));
    }
    for (std::size_t lane = 1; lane < 4; ++lane) EXPECT_GT(layout.lanes[lane].y, layout.lanes[lane - 1].bottom());
  }
}

ScreenKind quarrel(const std::string& name, Theme theme = Theme::light, float width = 1440, float height = 900) {
  ScreenKind kind;
  for (const NamedPlan& named : quarrels())
    if (named.name == name) kind.plan_json = plan_json(named.plan);
  kind.theme = theme;
  kind.width = width;
  kind.height = height;
  return kind;
}

void open_meetings(Screen& screen) {
  screen.rest();
  for (int i = 0; i < 60; ++i) {
    const Spots::Spot* spot = screen.spot("meetings");
    ASSERT_NE(spot, nullptr);
    if (spot->visible && spot->max.y < 700) break;
    screen.wheel({1300, 400}, -1);
  }
  screen.click("meetings");
  screen.rest();
}

TEST(MeetingsView, ShowsEachPairOfWhomThereIsSomethingToSay) {
  Screen screen(quarrel("quarrels, hunters"));
  open_meetings(screen);
  const MeetingsDesk& desk = screen.app().views.assessment.meetings;
  ASSERT_TRUE(desk.open);
  ASSERT_GE(desk.found.meetings.size(), 4u);
  for (std::size_t i = 0; i < desk.found.meetings.size(); ++i) {
    EXPECT_NE(screen.spot("meetings/" + std::to_string(i)), nullptr);
    EXPECT_NE(screen.spot("meetings/" + std::to_string(i) + "/arc"), nullptr);
  }
  screen.shoot("meetings-light");
  screen.click("meetings");
  screen.rest();
  EXPECT_EQ(screen.spot("meetings/0"), nullptr);
}

TEST(MeetingsView, AnArcAndItsWordsArePointedAtTogether) {
  Screen screen(quarrel("quarrels, hunters", Theme::dark));
  open_meetings(screen);
  for (int i = 0; i < 30 && screen.spot("meetings/1/arc")->max.y > 800; ++i) screen.wheel({1300, 400}, -1);
  screen.point("meetings/1/arc");
  screen.rest();
  EXPECT_EQ(screen.app().views.assessment.meetings.pointed, 1);
  screen.shoot("meetings-dark-pointed");
  screen.point("meetings");
  screen.rest();
  EXPECT_EQ(screen.app().views.assessment.meetings.pointed, -1);
}

TEST(MeetingsView, FollowsWhatIsShown) {
  Screen screen(quarrel("quarrels, hunters"));
  open_meetings(screen);
  const std::size_t before = screen.app().views.assessment.meetings.found.groups.size();
  screen.click("stock.count/" + screen.app().views.assessment.meetings.found.groups.front().species + "/more");
  screen.rest();
  EXPECT_EQ(screen.app().views.assessment.meetings.found.groups.size(), before);
  EXPECT_EQ(screen.app().views.assessment.meetings.found.groups.front().count, screen.app().shown.stock.front().count);
}

TEST(ToScale, AFindingAboutMouthsShowsBothAnimalsWhenItsWhyIsOpen) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    Screen screen(quarrel("quarrels, hunters", theme));
    screen.rest();
    std::string why;
    for (const Spots::Spot& spot : screen.spots().list)
      if (why.empty() && spot.id.rfind("finding/predation/", 0) == 0 && spot.id.find("innesi") != std::string::npos &&
          spot.id.ends_with("/why"))
        why = spot.id;
    for (int i = 0; i < 60; ++i) {
      const Spots::Spot* spot = screen.spot(why);
      ASSERT_NE(spot, nullptr);
      if (spot->visible && spot->max.y < 500) break;
      screen.wheel({1300, 400}, -1);
    }
    screen.click(why);
    screen.rest();
    EXPECT_NE(screen.spot("to_scale/pterophyllum-scalare/paracheirodon-innesi"), nullptr);
    screen.shoot(theme == Theme::light ? "to-scale-light" : "to-scale-dark");
    screen.click(why);
    screen.rest();
    EXPECT_EQ(screen.spot("to_scale/pterophyllum-scalare/paracheirodon-innesi"), nullptr);
  }
}

}  // namespace
}  // namespace shoalwright
