// SPDX-License-Identifier: MIT
#include "views/held_view.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "app/easel.h"
#include "app/side_desk.h"
#include "assess/margin.h"
#include "edit/command.h"
#include "support/margin_facts.h"
#include "views/held_words.h"

namespace shoalwright {
namespace {

/// A look at the demo with something in hand, without a window.
struct Hand {
  Catalog catalog;
  History history;
  Plan shown;
  Assessment now, then;
  BodyRooms bodies;
  std::string previewing = "If you drop them here", pointed, piece_in_hand;
  std::vector<std::size_t> chosen;
  std::optional<Held> held;
  Preferences preferences;
  Measures measures;
  AnimalStore animals;
  SpreadNow spread;
  std::optional<int> chosen_terrain;

  Hand(const Catalog& cards, const Plan& plan, const std::string& species, int count)
      : catalog(cards), history(begin_history(plan)) {
    held = Held{.species = find_species(catalog, species), .count = count};
    shown = apply(plan, AddGroup{.species = species, .count = count}, catalog);
    now = assess(plan, catalog);
    then = assess(shown, catalog);
    now_margins = margin_table(plan, catalog, now, species);
    then_margins = margin_table(shown, catalog, then, species);
  }
  MarginTable now_margins, then_margins;
  Look look() {
    return {.catalog = catalog,
            .history = history,
            .plan = present(history),
            .now = now,
            .shown = shown,
            .shown_assessment = then,
            .shown_bodies = bodies,
            .spread = spread,
            .now_margins = now_margins,
            .shown_margins = then_margins,
            .previewing = previewing,
            .held = held,
            .preferences = preferences,
            .measures = measures,
            .pointed_species = pointed,
            .chosen_pieces = chosen,
            .chosen_terrain = chosen_terrain,
            .piece_in_hand = piece_in_hand,
            .sheet = Sheet::none,
            .animals = animals};
  }
};

bool says(const std::vector<Consequence>& all, const std::string& words) {
  return std::any_of(all.begin(), all.end(), [&](const Consequence& one) { return one.words.find(words) != std::string::npos; });
}

class HeldWords : public testing::Test {
 protected:
  SideDesk desk{plan_from("riverbank")};
};

TEST_F(HeldWords, SayWhatRoomIsLeftInAnimalsAsMarginsAndShelfHaveIt) {
  Hand hand(desk.catalog, plan_from("riverbank"), "rohanella-titteya", 8);
  const auto& groups = hand.then.room.groups;
  const auto barbs =
      std::find_if(groups.begin(), groups.end(), [](const GroupRoom& g) { return g.species == "rohanella-titteya"; });
  ASSERT_NE(barbs, groups.end());
  ASSERT_GT(*barbs->largest_count, 8);
  const auto margin = margin_facts(hand.shown, hand.catalog, hand.then, "crowding_l_cm", "rohanella-titteya");
  ASSERT_TRUE(margin && margin->animals);
  ASSERT_GT(*margin->animals, 0);
  const auto all = consequences(hand.look());
  EXPECT_TRUE(says(all, "cm down: " + std::to_string(*margin->animals) + " more")) << all.front().words;
  EXPECT_TRUE(says(all, "strain past " + std::to_string(*barbs->largest_count))) << all.front().words;
}

TEST_F(HeldWords, SayHowManyAreTooManyAndPutThatFirst) {
  Hand hand(desk.catalog, plan_from("riverbank"), "rohanella-titteya", 40);
  const auto all = consequences(hand.look());
  ASSERT_FALSE(all.empty());
  EXPECT_LE(all.size(), 4u);
  ASSERT_TRUE(all.front().grade);
  EXPECT_TRUE(loud(*all.front().grade));
  EXPECT_TRUE(says(all, "of the 40 too many"));
}

TEST_F(HeldWords, SayTheLaneThatIsMissing) {
  Hand hand(desk.catalog, plan_from("riverbank"), "pterygoplichthys-pardalis", 1);
  const auto all = consequences(hand.look());
  EXPECT_TRUE(says(all, "Lane 88 of 240 cm"));
  hand.measures.us = true;
  EXPECT_TRUE(says(consequences(hand.look()), "Lane 34.6 of 94.5 in"));
}

TEST_F(HeldWords, SayTheTemperatureThatIsLeftAndWhatItWas) {
  Hand hand(desk.catalog, plan_from("riverbank"), "rohanella-titteya", 8);
  const auto all = consequences(hand.look());
  EXPECT_TRUE(says(all, "Temperature 22 to 27 °C, was 28")) << all.size();
}

TEST_F(HeldWords, CountWhatIsInThePlanAlready) {
  Hand hand(desk.catalog, plan_from("riverbank"), "trigonostigma-heteromorpha", 3);
  const Look look = hand.look();
  EXPECT_EQ(held_total(look), 13);
}

TEST(HeldView, TheStepperChangesHowManyAreInHand) {
  SideDesk desk(plan_from("riverbank"));
  desk.ui.focus_wanted = "shelf.row/rohanella-titteya";
  desk.frames(3);
  desk.key(ImGuiKey_Enter);
  ASSERT_TRUE(desk.held);
  const int before = desk.held->count;
  desk.click("held.count/more");
  EXPECT_EQ(desk.held->count, before + 1);
  desk.click("held.count/less");
  desk.click("held.count/less");
  EXPECT_EQ(desk.held->count, before - 1);
}

TEST(HeldView, AddDropsAndPutBackPutsBack) {
  SideDesk desk(plan_from("riverbank"));
  for (const bool add : {false, true}) {
    desk.ui.focus_wanted = "shelf.row/rohanella-titteya";
    desk.frames(3);
    desk.key(ImGuiKey_Enter);
    ASSERT_TRUE(desk.held);
    desk.click(add ? "held.drop" : "held.back");
    EXPECT_FALSE(desk.held);
    EXPECT_EQ(present(desk.history).stock.size(), add ? 5u : 4u);
  }
}

TEST(HeldView, ArrowKeysDoNotCarryTheKeyboardAwayFromTheRow) {
  SideDesk desk(plan_from("riverbank"));
  desk.ui.focus_wanted = "shelf.row/rohanella-titteya";
  desk.frames(3);
  desk.key(ImGuiKey_Enter);
  desk.key(ImGuiKey_DownArrow);
  desk.key(ImGuiKey_DownArrow);
  desk.key(ImGuiKey_Enter);
  EXPECT_FALSE(desk.held);
  EXPECT_EQ(present(desk.history).stock.back().species, "rohanella-titteya");
}

TEST(HeldView, StandsClearOfTheRowItWasTakenFromWhileItIsCarried) {
  for (const char* id : {"shelf.row/hyphessobrycon-amandae", "shelf.row/paracheirodon-axelrodi"}) {
    SideDesk desk(plan_from("riverbank"));
    desk.move_to(desk.middle(id));
    desk.press();
    desk.move_to({600, 300});
    desk.frames(3);
    const Spots::Spot *card = desk.spot("held.card"), *row = desk.spot(id);
    ASSERT_NE(card, nullptr);
    EXPECT_TRUE(card->min.y >= row->max.y || card->max.y <= row->min.y) << id;
    EXPECT_GE(card->min.x, desk.shelf_box.x);
    EXPECT_LE(card->max.x, desk.shelf_box.right());
    EXPECT_LE(card->max.y, desk.shelf_box.bottom());
    // A pointer that carries it needs no buttons.
    EXPECT_EQ(desk.spot("held.drop"), nullptr);
  }
}

TEST(HeldView, IsDrawnInLightAndDark) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    SideDesk desk(plan_from("riverbank"), true, theme);
    desk.move_to(desk.middle("shelf.row/rohanella-titteya"));
    desk.press();
    desk.move_to({600, 300});
    desk.frames(3);
    keep_shot(desk.picture, theme == Theme::light ? "held-light" : "held-dark");
    const Spots::Spot* card = desk.spot("held.card");
    ASSERT_NE(card, nullptr);
    EXPECT_EQ(desk.picture.at(static_cast<int>(card->max.x) - 6, static_cast<int>(card->max.y) - 6), palette(theme).raised);
  }
}

}  // namespace
}  // namespace shoalwright
