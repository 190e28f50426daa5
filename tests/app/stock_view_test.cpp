// SPDX-License-Identifier: MIT
#include "views/stock_view.h"

#include <gtest/gtest.h>

#include "app/easel.h"
#include "app/side_desk.h"
#include "views/stock_words.h"

namespace shoalwright {
namespace {

const Group& group_of(const SideDesk& desk, const std::string& species) {
  static const Group none;
  for (const Group& group : present(desk.history).stock)
    if (group.species == species) return group;
  return none;
}

TEST(StockView, SaysWhatSwimsAlreadyAndTheGroupAdvice) {
  SideDesk desk(plan_from("riverbank"));
  const std::vector<Kept> stock = resolve_stock(present(desk.history), desk.catalog);
  EXPECT_EQ(stock_advice(stock[0]), "6 of 10 swim here; least 6");
  EXPECT_EQ(stock_advice(stock[1]), "least 6; good group at 8");
  EXPECT_EQ(stock_advice(stock[2]), "least 6; 2 males, 4 females");
  EXPECT_EQ(stock_advice(stock[3]), "one pair; male and female");
  EXPECT_EQ(stock_sum(stock), "26 fish, 4 species");
  Kept all = stock[0];
  all.have = 10;
  EXPECT_EQ(stock_advice(all), "all 10 swim here; least 6");
}

TEST(StockView, NamesPiecesByTheirKind) {
  EXPECT_EQ(piece_name("branch-bank"), "Branch, bank");
  EXPECT_EQ(piece_name("stem-plants"), "Stem thicket");
  EXPECT_EQ(piece_name("stones"), "Stones");
  EXPECT_EQ(piece_name("sunken-teapot"), "Sunken teapot");
}

TEST(StockView, TheStepperChangesTheCountAsOneNamedStep) {
  SideDesk desk(plan_from("riverbank"));
  desk.click("stock.count/hoplisoma-sterbai/more");
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").count, 9);
  ASSERT_NE(desk.last_edit(), nullptr);
  EXPECT_FALSE(desk.last_edit()->name.empty());
  EXPECT_FALSE(desk.last_edit()->join.empty());
  desk.click("stock.count/hoplisoma-sterbai/less");
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").count, 8);
}

TEST(StockView, TheCountNeverReachesNothingByItsStepper) {
  Plan plan = plan_from("riverbank");
  plan.stock[3] = Group{.species = "trichogaster-chuna", .count = 1};
  SideDesk desk(plan);
  const Spots::Spot* less = desk.spot("stock.count/trichogaster-chuna/less");
  ASSERT_NE(less, nullptr);
  EXPECT_FALSE(less->enabled);
  desk.click("stock.count/trichogaster-chuna/less");
  EXPECT_EQ(group_of(desk, "trichogaster-chuna").count, 1);
}

TEST(StockView, KeysStepAndDeleteTakesOut) {
  SideDesk desk(plan_from("riverbank"));
  desk.ui.focus_wanted = "stock.row/hoplisoma-sterbai";
  desk.frames(3);
  desk.character('+');
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").count, 9);
  desk.character('-');
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").count, 8);
  desk.key(ImGuiKey_Delete);
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").count, 0);
  EXPECT_EQ(desk.last_edit()->name, "Take out 8 Sterba's corydoras");
  EXPECT_EQ(desk.wished<Tell>(), 1);
}

TEST(StockView, TheRowsMenuSetsWhatSwimsAlreadyAndTheSexes) {
  SideDesk desk(plan_from("riverbank"));
  desk.click("stock.menu/hoplisoma-sterbai");
  desk.frames(3);
  desk.click("stock.have/more");
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").have, 1);
  desk.click("stock.males/more");
  desk.click("stock.males/more");
  desk.click("stock.females/more");
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").males, 2);
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").females, 1);
  desk.click("stock.out");
  EXPECT_EQ(group_of(desk, "hoplisoma-sterbai").count, 0);
}

TEST(StockView, BothSexesBackToNothingAreNotSaidAnyMore) {
  SideDesk desk(plan_from("riverbank"));
  desk.click("stock.menu/hoplisoma-sterbai");
  desk.frames(3);
  desk.click("stock.males/more");
  desk.click("stock.males/less");
  EXPECT_FALSE(group_of(desk, "hoplisoma-sterbai").males);
  EXPECT_FALSE(group_of(desk, "hoplisoma-sterbai").females);
}

TEST(StockView, AnUnknownKindKeepsItsRowItsTextAndItsCount) {
  Plan plan = plan_from("riverbank");
  plan.stock.push_back(Group{.species = "Piscis ignotus", .count = 4});
  SideDesk desk(plan);
  const Spots::Spot* row = desk.spot("stock.row/Piscis ignotus");
  ASSERT_NE(row, nullptr);
  EXPECT_NE(row->label.find("Piscis ignotus, 4"), std::string::npos) << row->label;
  const std::vector<Kept> stock = resolve_stock(plan, desk.catalog);
  EXPECT_EQ(stock_sum(stock), "30 animals, 5 species");
}

TEST(StockView, IsDrawnInLightAndDark) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    SideDesk desk(plan_from("riverbank"), true, theme);
    desk.frames(2);
    keep_shot(desk.picture, theme == Theme::light ? "stock-light" : "stock-dark");
    for (int key = 1; key <= 4; ++key) {
      int found = 0;
      for (int y = 590; y < 820; ++y)
        for (int x = 730; x < 770; ++x) found += desk.picture.at(x, y) == key_colour(palette(theme), key);
      EXPECT_GT(found, 60) << key;
    }
  }
}

}  // namespace
}  // namespace shoalwright
