// SPDX-License-Identifier: MIT
// Pieces arranged by mouse and keys in both views of the tank.
#include <gtest/gtest.h>

#include <cmath>

#include "edit/history.h"
#include "plan/plan.h"
#include "support/screen.h"

namespace shoalwright {
namespace {

const Plan& plan_of(Screen& screen) { return present(screen.app().history); }
const Piece& piece_of(Screen& screen, std::size_t i) { return plan_of(screen).pieces[i]; }

ImVec2 middle_of(Screen& screen, const std::string& id) {
  const Spots::Spot* spot = screen.spot(id);
  EXPECT_TRUE(spot) << id;
  return spot ? ImVec2{(spot->min.x + spot->max.x) / 2, (spot->min.y + spot->max.y) / 2} : ImVec2{};
}

/// Chooses a piece by its row in the list.
void choose(Screen& screen, int piece) {
  screen.click("stock.piece/" + std::to_string(piece));
  screen.rest();
  ASSERT_EQ(screen.app().chosen_pieces, std::vector<std::size_t>{static_cast<std::size_t>(piece)});
}

TEST(PieceEdit, ADragFromAboveMovesThePieceInOneStepAndUndoPutsItBack) {
  Screen screen({});
  screen.rest();
  const Piece before = piece_of(screen, 2);
  const std::size_t steps = screen.app().history.at;
  const ImVec2 at = middle_of(screen, "above.piece/2");
  screen.drag("above.piece/2", {at.x + 60, at.y - 30});
  EXPECT_GT(*piece_of(screen, 2).x_cm, *before.x_cm + 5) << "the plan follows the hand";
  screen.let_go();
  screen.rest();
  const Piece after = piece_of(screen, 2);
  EXPECT_GT(*after.z_cm, *before.z_cm + 3) << "upward on the screen is back in the tank";
  EXPECT_EQ(after.length_cm, before.length_cm);
  EXPECT_EQ(screen.app().history.at, steps + 1);
  EXPECT_EQ(undo_name(screen.app().history), "Move stones");
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.rest();
  EXPECT_EQ(piece_of(screen, 2), before);
}

TEST(PieceEdit, AClickAloneChangesNothing) {
  Screen screen({});
  screen.rest();
  const Plan before = plan_of(screen);
  screen.click("above.piece/1");
  screen.rest();
  EXPECT_EQ(screen.app().chosen_pieces, std::vector<std::size_t>{1});
  EXPECT_EQ(plan_of(screen), before);
}

TEST(PieceEdit, KeysMoveRaiseTurnMirrorCopyAndTakeOut) {
  Screen screen({});
  screen.rest();
  choose(screen, 1);
  const Piece before = piece_of(screen, 1);
  screen.key(ImGuiKey_RightArrow);
  screen.key(ImGuiKey_UpArrow);
  screen.key(ImGuiKey_PageUp);
  screen.key(ImGuiKey_R);
  screen.key(ImGuiKey_M);
  screen.rest();
  const Piece after = piece_of(screen, 1);
  EXPECT_NEAR(*after.x_cm, *before.x_cm + 1, 1e-9);
  EXPECT_NEAR(*after.z_cm, *before.z_cm + 1, 1e-9);
  EXPECT_NEAR(after.base_cm, 1, 1e-9);
  EXPECT_EQ(after.turn_deg, 15);
  EXPECT_TRUE(after.mirror);
  screen.key(ImGuiKey_D);
  screen.rest();
  EXPECT_EQ(plan_of(screen).pieces.size(), 7u);
  EXPECT_EQ(screen.app().chosen_pieces, std::vector<std::size_t>{6});
  screen.key(ImGuiKey_Delete);
  screen.rest();
  EXPECT_EQ(plan_of(screen).pieces.size(), 6u);
  EXPECT_TRUE(screen.app().chosen_pieces.empty());
}

TEST(PieceEdit, ASheetTakesTheKeysAndEscapeClosesIt) {
  Screen screen({});
  screen.rest();
  choose(screen, 1);
  const Plan before = plan_of(screen);
  screen.app().sheet = Sheet::tank;
  screen.rest();
  screen.key(ImGuiKey_RightArrow);
  screen.key(ImGuiKey_Delete);
  screen.rest();
  EXPECT_EQ(plan_of(screen), before);
  screen.key(ImGuiKey_Escape);
  screen.rest();
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  EXPECT_EQ(screen.app().chosen_pieces, std::vector<std::size_t>{1}) << "the piece is still chosen";
}

TEST(PieceEdit, DeleteTakesTheChosenPieceAndNoGroupWithIt) {
  Screen screen({});
  screen.rest();
  choose(screen, 1);
  screen.app().ui.focus_wanted = "stock.row/hoplisoma-sterbai";
  screen.rest();
  screen.key(ImGuiKey_Delete);
  screen.rest();
  EXPECT_EQ(plan_of(screen).pieces.size(), 5u);
  EXPECT_EQ(plan_of(screen).stock.size(), 4u);
}

TEST(PieceEdit, ALockedPieceStaysWhereItIs) {
  Screen screen({});
  screen.rest();
  choose(screen, 1);
  screen.click("piece.lock");
  screen.rest();
  const Piece before = piece_of(screen, 1);
  EXPECT_TRUE(is_fixed(plan_of(screen), "/pieces/1"));
  screen.key(ImGuiKey_RightArrow);
  screen.key(ImGuiKey_Delete);
  screen.rest();
  EXPECT_EQ(piece_of(screen, 1), before);
  screen.click("piece.lock");
  screen.rest();
  EXPECT_FALSE(is_fixed(plan_of(screen), "/pieces/1"));
  screen.key(ImGuiKey_RightArrow);
  screen.rest();
  EXPECT_NE(piece_of(screen, 1), before);
}

TEST(PieceEdit, AKindFromTheShelfIsPutWhereItIsLetGo) {
  Screen screen({});
  screen.rest();
  screen.click("shelf.part/1");
  screen.rest();
  screen.drag("shelf.piece/stone", middle_of(screen, "tank.above"));
  screen.let_go();
  screen.rest();
  ASSERT_EQ(plan_of(screen).pieces.size(), 7u);
  EXPECT_EQ(piece_of(screen, 6).kind, "stone");
  EXPECT_NEAR(*piece_of(screen, 6).x_cm, 44.2, 0.6);
  EXPECT_NEAR(*piece_of(screen, 6).z_cm, 21.7, 0.6);
  EXPECT_EQ(screen.app().chosen_pieces, std::vector<std::size_t>{6});
  EXPECT_EQ(undo_name(screen.app().history), "Put in rounded stone");
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.rest();
  EXPECT_EQ(plan_of(screen).pieces.size(), 6u) << "the whole drag is one step";
}

TEST(PieceEdit, TheFoldedShelfClosesWhenAPieceIsTakenOffIt) {
  Screen screen({.width = 1024, .height = 768});
  screen.rest();
  screen.click("shelf.open");
  screen.click("shelf.part/1");
  screen.rest();
  ASSERT_TRUE(screen.app().views.shelf.open);
  screen.drag("shelf.piece/stone", middle_of(screen, "tank.above"));
  EXPECT_FALSE(screen.app().views.shelf.open) << "the tank is not covered while a place is looked for";
  screen.let_go();
  screen.rest();
  EXPECT_EQ(plan_of(screen).pieces.size(), 7u);
}

TEST(PieceEdit, DraggedOutOfTheTankAPieceIsTakenOut) {
  Screen screen({});
  screen.rest();
  screen.drag("above.piece/2", {700, 20});
  screen.let_go();
  screen.rest();
  EXPECT_EQ(plan_of(screen).pieces.size(), 5u);
}

TEST(PieceEdit, ThePullAtAnEndMakesItLonger) {
  Screen screen({});
  screen.rest();
  choose(screen, 1);
  const Piece before = piece_of(screen, 1);
  const Spots::Spot* glass = screen.spot("tank.above");
  ASSERT_TRUE(glass);
  const float px = (glass->max.x - glass->min.x) / 90.0f;
  const ImVec2 end{glass->min.x + (0.8f + static_cast<float>(*before.x_cm + before.length_cm / 2)) * px,
                   glass->max.y - (0.8f + static_cast<float>(*before.z_cm)) * px};
  // The spot of the view, so that the press falls on the handle.
  ImGui::GetIO().AddMousePosEvent(end.x, end.y);
  screen.frames(2);
  ImGui::GetIO().AddMouseButtonEvent(0, true);
  screen.frames(2);
  ImGui::GetIO().AddMousePosEvent(end.x + 5 * px, end.y);
  screen.frames(2);
  screen.let_go();
  screen.rest();
  EXPECT_NEAR(piece_of(screen, 1).length_cm, before.length_cm + 5, 0.6);
  EXPECT_NEAR(*piece_of(screen, 1).x_cm - piece_of(screen, 1).length_cm / 2, *before.x_cm - before.length_cm / 2, 0.3);
}

TEST(PieceEdit, AWallAcrossTheTankIsFoundAndItsRemedyIsPressed) {
  Screen screen({.plan_json = R"({"format":"shoalwright-plan","version":1,"name":"Wall",
    "tank":{"shape":"rectangular","length_cm":88.4,"width_cm":43.4,"height_cm":44.2,"glass_mm":8,"fill_cm":41.5,"lid":true},
    "water":{"temperature_c":25,"ph":6.8,"gh_dgh":7,"kh_dkh":3},"planting":"light","running_weeks":20,
    "source":{"temperature_c":14,"ph":7,"gh_dgh":8,"kh_dkh":4,"nitrate_mg_l":5,"disinfectant":"none"},
    "pieces":[{"kind":"block","x_cm":44,"z_cm":10.5,"length_cm":8,"depth_cm":21,"height_cm":42},
              {"kind":"block","x_cm":44,"z_cm":32,"length_cm":8,"depth_cm":22.8,"height_cm":42}],
    "stock":[{"species":"danio-rerio","count":10}],
    "gear":{"filter":{"kind":"internal","flow_l_h":600,"media_l":2},"heater_w":150,"surface":"gentle"}})"});
  screen.seconds(0.4);
  screen.rest();
  const auto find = [&]() -> const Finding* {
    for (const Finding& finding : screen.app().now.findings)
      if (finding.rule == "swim-lane") return &finding;
    return nullptr;
  };
  ASSERT_TRUE(find());
  EXPECT_NE(find()->remedy.find("Move the rear block 1 cm back"), std::string::npos) << find()->remedy;
  EXPECT_FALSE(find()->edits.empty());
}

}  // namespace
}  // namespace shoalwright
