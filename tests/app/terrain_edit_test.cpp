// SPDX-License-Identifier: MIT
// Hills and valleys drawn by mouse and keys in the front view.
#include <gtest/gtest.h>

#include <cmath>

#include "edit/history.h"
#include "plan/plan.h"
#include "support/screen.h"

namespace shoalwright {
namespace {

const Plan& plan_of(Screen& screen) { return present(screen.app().history); }
const std::vector<LinePoint>& line_of(Screen& screen) { return plan_of(screen).substrate.line_cm; }

ImVec2 middle_of(Screen& screen, const std::string& id) {
  const Spots::Spot* spot = screen.spot(id);
  EXPECT_TRUE(spot) << id;
  return spot ? ImVec2{(spot->min.x + spot->max.x) / 2, (spot->min.y + spot->max.y) / 2} : ImVec2{};
}

/// As the tank's sheet does.
void choose_terrain(Screen& screen) {
  screen.app().chosen_terrain = -1;
  screen.frames(2);
  screen.rest();
}

TEST(TerrainEdit, AddsAPointInTheMiddleAndADragRaisesItInOneStep) {
  Screen screen({});
  screen.rest();
  choose_terrain(screen);
  const std::size_t steps = screen.app().history.at;
  screen.click("line.add");
  screen.rest();
  ASSERT_EQ(line_of(screen).size(), 3u);
  EXPECT_NEAR(line_of(screen)[1].x_cm, 44.2, 0.5);
  EXPECT_EQ(screen.app().chosen_terrain, 1);
  const ImVec2 at = middle_of(screen, "tank.line/1");
  screen.drag("tank.line/1", {at.x + 40, at.y - 60});
  EXPECT_GT(line_of(screen)[1].rise_cm, 4) << "the plan follows the hand";
  screen.let_go();
  screen.rest();
  EXPECT_GT(line_of(screen)[1].x_cm, 47);
  EXPECT_EQ(screen.app().history.at, steps + 2);
  EXPECT_EQ(undo_name(screen.app().history), "Terrain line");
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.rest();
  EXPECT_TRUE(line_of(screen).empty());
  EXPECT_EQ(screen.app().chosen_terrain, -1) << "a point that is gone is not chosen";
}

TEST(TerrainEdit, APointStaysBetweenItsNeighboursTheBottomAndTheWaterLine) {
  Screen screen({});
  screen.rest();
  choose_terrain(screen);
  screen.click("line.add");
  screen.rest();
  for (int i = 0; i < 12; ++i) screen.key(ImGuiMod_Shift | ImGuiKey_RightArrow);
  screen.rest();
  EXPECT_LT(line_of(screen)[1].x_cm, line_of(screen)[2].x_cm);
  EXPECT_GT(line_of(screen)[1].x_cm, line_of(screen)[2].x_cm - 1);
  for (int i = 0; i < 12; ++i) screen.key(ImGuiMod_Shift | ImGuiKey_UpArrow);
  screen.rest();
  EXPECT_NEAR(line_of(screen)[1].rise_cm, plan_of(screen).tank.fill_cm - plan_of(screen).substrate.back_cm, 1e-9);
  for (int i = 0; i < 12; ++i) screen.key(ImGuiMod_Shift | ImGuiKey_DownArrow);
  screen.rest();
  EXPECT_EQ(line_of(screen)[1].rise_cm, -plan_of(screen).substrate.back_cm);
}

TEST(TerrainEdit, KeysTakeAPointOutAndEscapeEndsInTwoSteps) {
  Screen screen({});
  screen.rest();
  choose_terrain(screen);
  screen.click("line.add");
  screen.rest();
  screen.key(ImGuiKey_UpArrow);
  screen.key(ImGuiKey_Delete);
  screen.rest();
  EXPECT_TRUE(line_of(screen).empty()) << "feet alone are no hill";
  EXPECT_EQ(plan_of(screen).pieces.size(), 6u);
  EXPECT_EQ(plan_of(screen).stock.size(), 4u);
  screen.click("line.add");
  screen.rest();
  screen.key(ImGuiKey_Escape);
  EXPECT_EQ(screen.app().chosen_terrain, -1);
  screen.key(ImGuiKey_Escape);
  EXPECT_EQ(screen.app().chosen_terrain, std::nullopt);
}

TEST(TerrainEdit, APieceThatIsChosenTakesTheHandlesAway) {
  Screen screen({});
  screen.rest();
  choose_terrain(screen);
  EXPECT_TRUE(screen.spot("line.done"));
  screen.click("stock.piece/1");
  screen.rest();
  EXPECT_EQ(screen.app().chosen_terrain, std::nullopt);
  EXPECT_TRUE(screen.spot("piece.out"));
  EXPECT_FALSE(screen.spot("line.done"));
}

TEST(TerrainEdit, ATankWithoutSubstrateHasNoLine) {
  Screen screen({});
  screen.rest();
  choose_terrain(screen);
  Plan bare = plan_of(screen);
  bare.substrate = {};
  remember(screen.app().history, bare, "bare", "", 0);
  plan_changed(screen.app());
  screen.rest();
  EXPECT_EQ(screen.app().chosen_terrain, std::nullopt);
}

}  // namespace
}  // namespace shoalwright
