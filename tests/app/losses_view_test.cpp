// SPDX-License-Identifier: MIT
#include "views/losses_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "edit/losses.h"

namespace shoalwright {
namespace {

const std::string rasbora = "trigonostigma-heteromorpha";

const Group& group_of(Screen& screen) { return plan_of(screen).stock.front(); }

void lose(Screen& screen, int count) {
  screen.click("stock.menu/" + rasbora);
  screen.frames(3);
  for (int i = 0; i < count; ++i) screen.click("stock.lost/more");
  screen.key(ImGuiKey_Escape);
  screen.rest();
}

TEST(Losses, OfAGroupAreAskedAboutBelowItsRow) {
  Screen screen(demo_with([](Plan& plan) { plan.stock.front().have = 10; }));
  screen.rest();
  EXPECT_EQ(screen.spot("stock.loss/" + rasbora), nullptr);
  lose(screen, 4);
  EXPECT_EQ(group_of(screen).count, 6);
  EXPECT_EQ(group_of(screen).have, 6);
  ASSERT_NE(screen.spot("stock.loss/" + rasbora), nullptr);
  EXPECT_EQ(screen.spot("stock.loss/" + rasbora)->label, "6 of 10 left");
  screen.shoot("losses-light");

  screen.click("stock.loss/" + rasbora + "/top_up");
  screen.rest();
  EXPECT_EQ(group_of(screen).count, 10);
  EXPECT_EQ(group_of(screen).have, 6);
  EXPECT_EQ(screen.spot("stock.loss/" + rasbora), nullptr);
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.rest();
  EXPECT_EQ(group_of(screen).count, 6) << "one step";
  ASSERT_NE(screen.spot("stock.loss/" + rasbora), nullptr) << "and the question stands again";
  screen.click("stock.loss/" + rasbora + "/run_out");
  screen.rest();
  EXPECT_EQ(group_of(screen).count, 6);
  EXPECT_EQ(screen.spot("stock.loss/" + rasbora), nullptr);
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.rest();
  screen.click("stock.loss/" + rasbora + "/re_home");
  screen.rest();
  EXPECT_NE(group_of(screen).species, rasbora);
}

TEST(Losses, AreOneStepOfUndoWhenCountedQuickly) {
  Screen screen(demo_with([](Plan& plan) { plan.stock.front().have = 10; }));
  screen.rest();
  const Plan before = plan_of(screen);
  lose(screen, 3);
  EXPECT_EQ(group_of(screen).count, 7);
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.rest();
  EXPECT_EQ(plan_of(screen), before);
}

TEST(Losses, StandInTheListOnAPhoneInTheDark) {
  ScreenKind kind = demo_with([](Plan& plan) { plan.stock.front().have = 10; });
  kind.width = 390;
  kind.height = 844;
  kind.theme = Theme::dark;
  kind.touch = true;
  Screen screen(kind);
  screen.rest();
  if (!screen.spot("stock.menu/" + rasbora)) screen.click("foot.stock");
  screen.rest();
  lose(screen, 2);
  ASSERT_NE(screen.spot("stock.loss/" + rasbora), nullptr);
  screen.shoot("losses-phone");
}

}  // namespace
}  // namespace shoalwright
