// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "app/fill.h"
#include "plan/check.h"
#include "plan/words.h"
#include "tank/glass.h"
#include "tank/sizes.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "views/tank_sheet_view.h"

namespace shoalwright {
namespace {

constexpr ImVec2 sizes_at{430, 400}, own_at{800, 500};

TEST(TankSheet, AUsualSizeIsShownWhilePointedAtAndTakenWhenPressed) {
  Screen screen({});
  open(screen, Sheet::tank);
  const auto sizes = usual_sizes();
  std::size_t index = 0;
  while (std::string_view(sizes[index].name) != "240 L") ++index;
  const std::string id = "tank_sheet.size/" + std::to_string(index);
  bring(screen, id, sizes_at);
  screen.point(id);
  screen.rest();
  EXPECT_NEAR(outside_of(screen.app().shown.tank).length_cm, 120, 1e-9);
  EXPECT_NEAR(outside_of(plan_of(screen).tank).length_cm, 90, 1e-9) << "not taken yet";
  screen.click(id);
  const Tank tank = outside_of(plan_of(screen).tank);
  EXPECT_NEAR(tank.length_cm, 120, 1e-9);
  EXPECT_NEAR(tank.width_cm, 40, 1e-9);
  EXPECT_NEAR(tank.height_cm, 50, 1e-9);
  EXPECT_EQ(plan_of(screen).tank.lid, true) << "the lid stays";
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_NEAR(outside_of(plan_of(screen).tank).length_cm, 90, 1e-9);
}

TEST(TankSheet, OwnMeasuresAreOutsideOnes) {
  Screen screen({});
  open(screen, Sheet::tank);
  fill(screen, "tank_sheet.length", "100");
  EXPECT_NEAR(plan_of(screen).tank.length_cm, 100 - 2 * 0.8, 1e-9) << "two panes of 8 mm";
  const double gap = plan_of(screen).tank.height_cm - plan_of(screen).tank.fill_cm;
  fill(screen, "tank_sheet.height", "60");
  EXPECT_NEAR(plan_of(screen).tank.height_cm, 60 - 0.8, 1e-9);
  EXPECT_NEAR(plan_of(screen).tank.height_cm - plan_of(screen).tank.fill_cm, gap, 1e-9) << "as far under the rim as before";
  fill(screen, "tank_sheet.glass", "12");
  EXPECT_NEAR(plan_of(screen).tank.length_cm, 100 - 2 * 1.2, 1e-9) << "the outside stays as it was typed";
}

TEST(TankSheet, InchesAreTakenAsInches) {
  Screen screen({});
  Preferences preferences = screen.app().preferences;
  preferences.us_units = true;
  carry_out(screen.app(), {SetPreferences{preferences}});
  open(screen, Sheet::tank);
  fill(screen, "tank_sheet.length", "48");
  EXPECT_NEAR(outside_of(plan_of(screen).tank).length_cm, cm_from_in(48), 1e-6);
}

TEST(TankSheet, AnImpossibleNumberSaysOneSentenceAndChangesNothing) {
  for (const char* impossible : {"0", "-5", "1", "99999"}) {
    Screen screen({});
    open(screen, Sheet::tank);
    const Plan before = plan_of(screen);
    const std::size_t steps = screen.app().history.steps.size();
    fill(screen, "tank_sheet.length", impossible);
    EXPECT_EQ(plan_of(screen), before) << impossible;
    EXPECT_EQ(screen.app().history.steps.size(), steps);
    const Spots::Spot* sentence = screen.spot("tank_sheet.sentence");
    ASSERT_NE(sentence, nullptr) << impossible;
    EXPECT_EQ(sentence->label.find("/tank"), std::string::npos) << sentence->label;
    EXPECT_EQ(sentence->label.back(), '.');
    fill(screen, "tank_sheet.length", "80");
    EXPECT_EQ(screen.spot("tank_sheet.sentence"), nullptr);
    EXPECT_NEAR(outside_of(plan_of(screen).tank).length_cm, 80, 1e-9);
  }
}

TEST(TankSheet, EveryShapeIsOnePressAway) {
  for (const std::string_view word : Words<Shape>::all) {
    Screen screen({});
    open(screen, Sheet::tank);
    const double before_l = screen.app().now.volume.gross_l;
    screen.click("tank_sheet.shape/" + std::string(word));
    EXPECT_EQ(word_of(plan_of(screen).tank.shape), word);
    EXPECT_FALSE(check_plan(plan_of(screen))) << word;
    EXPECT_NEAR(screen.app().now.volume.gross_l / before_l, 1, 0.12) << word << ": about as large as before";
    EXPECT_NE(screen.spot("tank_sheet.height"), nullptr) << word;
  }
}

TEST(TankSheet, ReshapedTanksHoldAboutAsMuchFromEveryShapeToEvery) {
  Tank box;
  box.length_cm = 100;
  box.width_cm = 45;
  box.height_cm = 50;
  for (std::size_t i = 0; i < Words<Shape>::all.size(); ++i) {
    const Tank from = reshaped(box, static_cast<Shape>(i));
    EXPECT_NEAR(inside_area_cm2(from), 4500, 0.08 * 4500) << Words<Shape>::all[i];
    for (std::size_t j = 0; j < Words<Shape>::all.size(); ++j) {
      const Tank to = reshaped(from, static_cast<Shape>(j));
      EXPECT_EQ(to.shape, static_cast<Shape>(j));
      // A box or bow front takes the extent of a round tank, not its area.
      if (j <= static_cast<std::size_t>(Shape::bow_front)) continue;
      EXPECT_NEAR(inside_area_cm2(to), inside_area_cm2(from), 0.07 * 4500)
          << Words<Shape>::all[i] << " to " << Words<Shape>::all[j];
    }
  }
}

TEST(TankSheet, OnAPhoneTheCautionHasRoomForAllOfIt) {
  for (const ImVec2 window : {ImVec2{390, 844}, ImVec2{320, 568}}) {
    Screen screen({.width = window.x, .height = window.y});
    open(screen, Sheet::tank);
    const Spots::Spot* sums = screen.spot("tank_sheet.sums");
    ASSERT_NE(sums, nullptr);
    EXPECT_GT(sums->max.y - sums->min.y, 112) << "six lines and more do not fit into what two need";
    EXPECT_NE(sums->label.find("structural engineer"), std::string::npos);
  }
}

TEST(TankSheet, LidAndSubstrateAreChosenThere) {
  Screen screen({});
  open(screen, Sheet::tank);
  bring(screen, "tank_sheet.lid/1", own_at);
  screen.click("tank_sheet.lid/1");
  EXPECT_EQ(plan_of(screen).tank.lid, false);
  screen.click("tank_sheet.lid/2");
  EXPECT_EQ(plan_of(screen).tank.lid, std::nullopt);
  bring(screen, "tank_sheet.substrate", own_at);
  screen.click("tank_sheet.substrate");
  screen.click("tank_sheet.substrate/0");
  EXPECT_EQ(plan_of(screen).substrate.kind, SubstrateKind::bare);
  EXPECT_EQ(plan_of(screen).substrate.back_cm, 0);
  EXPECT_EQ(screen.spot("tank_sheet.front_depth"), nullptr);
}

TEST(TankSheet, EscapeAndTheCrossCloseIt) {
  Screen screen({});
  open(screen, Sheet::tank);
  screen.key(ImGuiKey_Escape);
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  open(screen, Sheet::tank);
  screen.click("tank_sheet.close");
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  EXPECT_EQ(screen.spot("tank_sheet.length"), nullptr);
}

}  // namespace
}  // namespace shoalwright
