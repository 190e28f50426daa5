// SPDX-License-Identifier: MIT
#include "views/gives_first_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "app/say.h"

namespace shoalwright {
namespace {

std::vector<const Spots::Spot*> cells(const Screen& screen) {
  std::vector<const Spots::Spot*> found;
  for (const Spots::Spot& spot : screen.spots().list)
    if (spot.id.rfind("first/", 0) == 0) found.push_back(&spot);
  return found;
}

TEST(GivesFirst, SixMarginsStandInTheOrderOfTheAssessment) {
  Screen screen({});
  const auto shown = cells(screen);
  ASSERT_EQ(shown.size(), 6u);
  // The demo is over nowhere: the core's own order.
  for (std::size_t i = 0; i < 6; ++i) EXPECT_EQ(shown[i]->id, "first/" + screen.app().now.tightest[i].margin);
}

TEST(GivesFirst, WhatIsOverComesFirstByItsGrade) {
  Screen screen(demo_with([](Plan& plan) {
    Group many;
    many.species = "puntigrus-tetrazona";
    many.count = 40;
    plan.stock.push_back(many);
  }));
  const Told told = told_now(look_at(screen.app()));
  const std::vector<MarginWords> words = first_margins(told);
  int rank = 0;
  for (const MarginWords& one : words) {
    const int mine = one.grade ? static_cast<int>(*one.grade) : 3;
    if (one.grade != Severity::note) {
      EXPECT_GE(mine, rank) << one.margin;
    }
    rank = std::max(rank, mine);
    if (one.grade) {
      EXPECT_LT(one.value, 0) << one.margin;
    }
  }
  EXPECT_TRUE(words.front().grade);
}

TEST(GivesFirst, ALimitThatIsJustPassedStandsBeforeOneThatIsNot) {
  Screen screen(demo_with([](Plan& plan) {
    plan.tank.length_cm = 78.8;
    plan.tank.width_cm = 33.8;
    plan.tank.height_cm = 39.4;
    plan.tank.fill_cm = 36.7;
  }));
  const std::vector<MarginWords> words = first_margins(told_now(look_at(screen.app())));
  ASSERT_LT(words.front().value, 0);
  bool spare = false;
  for (const MarginWords& one : words) {
    if (one.value >= 0) spare = true;
    EXPECT_FALSE(spare && one.value < 0) << one.margin;
  }
}

TEST(GivesFirst, OverByMoreAnimalsThanThereAreTellsTheAmount) {
  Screen screen(demo_with([](Plan& plan) { plan.upkeep->change_fraction = 0; }));
  const MarginWords first = first_margins(told_now(look_at(screen.app()))).front();
  EXPECT_EQ(first.name, "Nitrate in a year");
  EXPECT_EQ(first.words, "mg/L over");
}

TEST(GivesFirst, WhileHeldTheCountsAreOfTheKindInHand) {
  Screen screen({});
  carry_out(screen.app(), {PickUp{"rohanella-titteya", 6, true}});
  screen.frames(3);
  const Spots::Spot* nitrate = screen.spot("first/nitrate_mg_l");
  ASSERT_NE(nitrate, nullptr);
  EXPECT_NE(nitrate->label.find("cherry barbs"), std::string::npos) << nitrate->label;
  EXPECT_NE(nitrate->label.find("was "), std::string::npos) << nitrate->label;
  carry_out(screen.app(), {PutBack{}});
  screen.frames(3);
  EXPECT_EQ(screen.spot("first/nitrate_mg_l")->label.find("was "), std::string::npos);
}

TEST(GivesFirst, APressBringsItsSectionIntoView) {
  // A low window, so that Load lies below the fold.
  Screen screen({.height = 450});
  ASSERT_NE(screen.spot("first/nitrate_mg_l"), nullptr);
  ASSERT_FALSE(screen.spot("load.nitrate")->visible);
  screen.click("first/nitrate_mg_l");
  screen.frames(4);
  EXPECT_TRUE(screen.spot("load.nitrate")->visible);
  screen.click("first/kh_dkh");
  screen.frames(4);
  EXPECT_TRUE(screen.spot("water.kh")->visible);
}

TEST(GivesFirst, AnEmptyTankSaysWhatToDo) {
  Screen screen(demo_with([](Plan& plan) { plan.stock.clear(); }));
  EXPECT_TRUE(cells(screen).empty());
}

}  // namespace
}  // namespace shoalwright
