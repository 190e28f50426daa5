// SPDX-License-Identifier: MIT
#include "views/shelf_view.h"

#include <gtest/gtest.h>

#include "app/easel.h"
#include "app/side_desk.h"
#include "catalog/fold.h"
#include "views/shelf_card.h"

namespace shoalwright {
namespace {

std::vector<std::string> rows_of(const SideDesk& desk) {
  std::vector<std::string> rows;
  for (const Spots::Spot& spot : desk.ui.spots.list)
    if (spot.id.compare(0, 10, "shelf.row/") == 0) rows.push_back(spot.id.substr(10));
  return rows;
}

TEST(ShelfView, EveryKindOfTheCatalogueHasItsRowWithItsAnswer) {
  SideDesk desk(plan_from("riverbank"));
  EXPECT_EQ(desk.shelf.rows.kinds.size(), desk.catalog.species.size());
  EXPECT_TRUE(desk.shelf.work.done());
  EXPECT_GT(rows_of(desk).size(), 10u);
  EXPECT_LT(rows_of(desk).size(), 30u) << "those out of sight are not drawn";
  desk.shelf.search = "ember tetra";
  desk.frames(2);
  const Spots::Spot* ember = desk.spot("shelf.row/hyphessobrycon-amandae");
  ASSERT_NE(ember, nullptr);
  EXPECT_NE(ember->label.find("Ember tetra, Room for"), std::string::npos) << ember->label;
  desk.shelf.search = "harlequin rasbora";
  desk.frames(2);
  EXPECT_NE(desk.spot("shelf.row/trigonostigma-heteromorpha")->label.find("In the plan: 10"), std::string::npos);
}

TEST(ShelfView, FiltersLevelsAndSearchNarrowWhatIsShown) {
  SideDesk desk(plan_from("riverbank"));
  const auto found = [&] { return desk.shelf.rows.kinds.size(); };
  const std::size_t all = found();
  desk.click("shelf.filter/small");
  const std::size_t small = found();
  EXPECT_LT(small, all);
  desk.click("shelf.level/3");
  EXPECT_LT(found(), small);
  for (const std::string& id : rows_of(desk)) {
    const Species& kind = *find_species(desk.catalog, id);
    EXPECT_LE(kind.size.adult_tl_cm, 5) << id;
    EXPECT_TRUE(swim_levels(kind).floor) << id;
  }
  desk.click("shelf.level/3");
  desk.click("shelf.filter/small");
  desk.ui.focus_wanted = "shelf.search";
  desk.frames(3);
  platform::headless::type("cherry barb");
  desk.rest();
  EXPECT_EQ(desk.shelf.search, "cherry barb");
  ASSERT_FALSE(rows_of(desk).empty());
  EXPECT_EQ(rows_of(desk).front(), "rohanella-titteya");
  EXPECT_LT(found(), 5u);
}

TEST(ShelfView, HasRoomLeavesOnlyKindsThatRoomIsSaidFor) {
  SideDesk desk(plan_from("riverbank"));
  desk.click("shelf.filter/has-room");
  ASSERT_FALSE(rows_of(desk).empty());
  EXPECT_LT(rows_of(desk).size(), desk.catalog.species.size());
  for (const std::string& id : rows_of(desk)) EXPECT_GT(answer_of(desk.shelf.work, id)->room_for.value_or(0), 0) << id;
}

TEST(ShelfView, ASearchThatFindsNothingNamesTheFiltersAndOffersTwoWaysOut) {
  SideDesk desk(plan_from("riverbank"));
  desk.click("shelf.filter/has-room");
  desk.ui.focus_wanted = "shelf.search";
  desk.frames(3);
  platform::headless::type("barbqz");
  desk.rest();
  EXPECT_TRUE(rows_of(desk).empty());
  platform::headless::leave_field();
  desk.rest();
  desk.click("shelf.closest");
  EXPECT_EQ(desk.shelf.search, "barb");
  EXPECT_FALSE(rows_of(desk).empty());
  desk.shelf.search = "barbqz";
  desk.frames(3);
  desk.click("shelf.clear");
  EXPECT_FALSE(desk.shelf.filter.has_room);
}

TEST(ShelfView, TheOrderMenuOrdersByName) {
  SideDesk desk(plan_from("riverbank"));
  desk.click("shelf.order");
  desk.frames(3);
  desk.click("shelf.order/2");
  const std::vector<const Species*>& rows = desk.shelf.rows.kinds;
  for (std::size_t i = 1; i < rows.size(); ++i)
    EXPECT_LE(folded(display_name(*rows[i - 1])), folded(display_name(*rows[i]))) << rows[i]->id;
  EXPECT_EQ(rows_of(desk).front(), rows.front()->id);
}

TEST(ShelfView, FourPixelsOfDragPickUpTheGoodGroupAndTwoDoNot) {
  SideDesk desk(plan_from("riverbank"));
  const ImVec2 at = desk.middle("shelf.row/rohanella-titteya");
  desk.move_to(at);
  desk.press();
  desk.move_to({at.x + 2, at.y});
  EXPECT_EQ(desk.wished<PickUp>(), 0);
  desk.move_to({at.x + 5, at.y});
  ASSERT_EQ(desk.wished<PickUp>(), 1);
  ASSERT_TRUE(desk.held);
  EXPECT_EQ(desk.held->species->id, "rohanella-titteya");
  EXPECT_EQ(desk.held->count, desk.held->species->life.group.good);
  EXPECT_FALSE(desk.held->by_keyboard);
}

TEST(ShelfView, AClickAloneChangesNothingAndADoubleClickAddsTheGoodGroup) {
  SideDesk desk(plan_from("riverbank"));
  desk.click("shelf.row/rohanella-titteya");
  EXPECT_EQ(desk.wished<EditPlan>(), 0);
  EXPECT_FALSE(desk.held);
  desk.frames(60);
  desk.double_click("shelf.row/rohanella-titteya");
  ASSERT_EQ(desk.wished<EditPlan>(), 1);
  EXPECT_EQ(desk.last_edit()->name, "Add 8 cherry barbs");
  EXPECT_EQ(present(desk.history).stock.back().species, "rohanella-titteya");
  EXPECT_EQ(present(desk.history).stock.back().count, 8);
}

TEST(ShelfView, EnterPicksUpAndEnterAgainAdds) {
  SideDesk desk(plan_from("riverbank"));
  desk.ui.focus_wanted = "shelf.row/rohanella-titteya";
  desk.frames(3);
  desk.key(ImGuiKey_Enter);
  ASSERT_TRUE(desk.held);
  EXPECT_TRUE(desk.held->by_keyboard);
  desk.key(ImGuiKey_Enter);
  EXPECT_FALSE(desk.held);
  EXPECT_EQ(present(desk.history).stock.back().species, "rohanella-titteya");
}

TEST(ShelfView, AnswersComeInSlicesAndOldOnesStandUntilThen) {
  const Plan plan = plan_from("riverbank");
  SideDesk desk(plan);
  ShelfWork work;
  // No time at all still answers one kind a call, so that it ends.
  const std::size_t kinds = desk.catalog.species.size();
  std::size_t calls = 1;
  while (!work_on(work, plan, desk.catalog, 0)) ++calls;
  EXPECT_EQ(calls, kinds);
  const ShelfAnswer before = *answer_of(work, "hyphessobrycon-amandae");
  Plan fuller = plan;
  fuller.stock[0].count += 12;
  EXPECT_FALSE(work_on(work, fuller, desk.catalog, 0));
  EXPECT_EQ(*answer_of(work, "hyphessobrycon-amandae"), before);
  while (!work_on(work, fuller, desk.catalog, 0)) continue;
  EXPECT_LT(*answer_of(work, "hyphessobrycon-amandae")->room_for, *before.room_for);
}

TEST(ShelfView, NothingIsWorkedOutAgainForAPlanThatStaysTheSame) {
  SideDesk desk(plan_from("riverbank"));
  const int revision = desk.shelf.work.revision;
  const ShelfSearch* search = desk.shelf.work.search.get();
  desk.frames(5);
  EXPECT_EQ(desk.shelf.work.revision, revision);
  EXPECT_EQ(desk.shelf.work.search.get(), search);
}

TEST(ShelfView, PointingForFourTenthsOfASecondShowsMoreAndLeavingEndsIt) {
  SideDesk desk(plan_from("riverbank"));
  desk.move_to(desk.middle("shelf.row/hyphessobrycon-amandae"));
  desk.frames(4);
  const auto drawn_over = [] { return ImGui::GetForegroundDrawList()->VtxBuffer.Size; };
  EXPECT_EQ(drawn_over(), 0);
  desk.frames(40);
  EXPECT_GT(drawn_over(), 200);
  desk.move_to({700, 300});
  desk.frames(2);
  EXPECT_EQ(drawn_over(), 0);
}

TEST(ShelfView, AGroupDraggedFromTheStockToTheShelfIsTakenOut) {
  SideDesk desk(plan_from("riverbank"));
  desk.move_to(desk.middle("stock.row/hoplisoma-sterbai"));
  desk.press();
  desk.move_to({500, 600});
  desk.move_to({150, 500});
  desk.release();
  ASSERT_NE(desk.last_edit(), nullptr);
  EXPECT_EQ(desk.last_edit()->name, "Take out 8 Sterba's corydoras");
  EXPECT_EQ(present(desk.history).stock.size(), 3u);
}

TEST(ShelfView, AGroupDraggedFromTheStockAndLetGoElsewhereStays) {
  SideDesk desk(plan_from("riverbank"));
  desk.move_to(desk.middle("stock.row/hoplisoma-sterbai"));
  desk.press();
  desk.move_to({500, 600});
  desk.release();
  EXPECT_EQ(desk.wished<EditPlan>(), 0);
}

TEST(ShelfView, FoldedToARailItOpensByAButton) {
  SideDesk desk(plan_from("riverbank"));
  desk.with_shelf_rail = true;
  desk.frames(2);
  desk.click("shelf.open");
  EXPECT_TRUE(desk.shelf.open);
}

TEST(ShelfCard, SaysCompanyFoodAndTheOneCaution) {
  SideDesk desk(plan_from("riverbank"));
  const Species& ember = *find_species(desk.catalog, "hyphessobrycon-amandae");
  EXPECT_EQ(said_company(ember), "Shoal of 8 or more, good from 12");
  EXPECT_EQ(said_food(ember), "Omnivore: micro pellet, small frozen and small live");
  EXPECT_EQ(said_caution(ember, present(desk.history)), ember.note);
  EXPECT_EQ(said_company(*find_species(desk.catalog, "betta-splendens")), "Lives alone");
  Plan young = present(desk.history);
  young.running_weeks = 3;
  EXPECT_EQ(said_caution(*find_species(desk.catalog, "otocinclus-vittatus"), young),
            "Wants a tank that has run 12 weeks; this one has run 3.");
}

TEST(ShelfView, IsDrawnInLightAndDark) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    SideDesk desk(plan_from("riverbank"), true, theme);
    desk.frames(2);
    keep_shot(desk.picture, theme == Theme::light ? "shelf-light" : "shelf-dark");
    // A plate of the first kind in its key colour on its row.
    const Spots::Spot* row = desk.spot("shelf.row/trigonostigma-heteromorpha");
    ASSERT_NE(row, nullptr);
    int keyed = 0;
    for (int y = static_cast<int>(row->min.y); y < static_cast<int>(row->max.y); ++y)
      for (int x = 70; x < 290; ++x) keyed += desk.picture.at(x, y) == key_colour(palette(theme), 1);
    EXPECT_GT(keyed, 60);
  }
}

}  // namespace
}  // namespace shoalwright
