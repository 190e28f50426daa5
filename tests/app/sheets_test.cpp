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

void open(Screen& screen, Sheet sheet) {
  carry_out(screen.app(), {ShowSheet{sheet}});
  screen.frames(4);
  screen.rest();
}

/// Scrolls a column of a sheet until the spot can be pressed.
void bring(Screen& screen, const std::string& id, ImVec2 over) {
  for (int i = 0; i < 60; ++i) {
    const Spots::Spot* spot = screen.spot(id);
    ASSERT_NE(spot, nullptr) << id;
    if (spot->visible && spot->max.y - spot->min.y >= 24) return;
    screen.wheel(over, spot->max.y > over.y ? -1.0f : 1.0f);
  }
  ADD_FAILURE() << id << " cannot be scrolled to";
}

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

TEST(WaterSheet, WhatIsTypedIsTheTapAndWhatIsClearedIsNotKnown) {
  Screen screen({});
  open(screen, Sheet::water);
  fill(screen, "water_sheet.tap.gh", "17,5");
  EXPECT_EQ(plan_of(screen).source.gh_dgh, 17.5);
  fill(screen, "water_sheet.tap.gh", "");
  EXPECT_EQ(plan_of(screen).source.gh_dgh, std::nullopt);
  screen.click("water_sheet.tap.ph/clear");
  EXPECT_EQ(plan_of(screen).source.ph, std::nullopt);
  fill(screen, "water_sheet.tap.nitrate", "25");
  EXPECT_EQ(plan_of(screen).source.nitrate_mg_l, 25);
  EXPECT_FALSE(is_assumed(plan_of(screen), "/source/nitrate_mg_l")) << "what the keeper types is decided";
}

TEST(WaterSheet, TheTankRunsOnTheTapOrHasAnAim) {
  Screen screen({});
  open(screen, Sheet::water);
  screen.click("water_sheet.aim/0");
  EXPECT_FALSE(plan_of(screen).water);
  EXPECT_EQ(screen.spot("water_sheet.aim.ph"), nullptr);
  screen.click("water_sheet.aim/1");
  ASSERT_TRUE(plan_of(screen).water);
  EXPECT_EQ(plan_of(screen).water->ph, plan_of(screen).source.ph) << "it begins with what the tap has";
  fill(screen, "water_sheet.aim.temperature", "26");
  EXPECT_EQ(plan_of(screen).water->temperature_c, 26);
}

TEST(WaterSheet, DegreesFahrenheitAreTakenAsSuch) {
  Screen screen({});
  Preferences preferences = screen.app().preferences;
  preferences.us_units = true;
  carry_out(screen.app(), {SetPreferences{preferences}});
  open(screen, Sheet::water);
  fill(screen, "water_sheet.aim.temperature", "77");
  EXPECT_NEAR(*plan_of(screen).water->temperature_c, 25, 1e-9);
}

TEST(WaterSheet, WhatCannotBeIsRefusedByOneSentence) {
  Screen screen({});
  open(screen, Sheet::water);
  const Plan before = plan_of(screen);
  fill(screen, "water_sheet.tap.ph", "21");
  EXPECT_EQ(plan_of(screen), before);
  const Spots::Spot* sentence = screen.spot("water_sheet.sentence");
  ASSERT_NE(sentence, nullptr);
  EXPECT_EQ(sentence->label.rfind("pH: ", 0), 0u) << sentence->label;
  EXPECT_EQ(sentence->label.find('/'), std::string::npos) << sentence->label;
}

TEST(WaterSheet, ViewPlantsFoodAndCeilingAreSteps) {
  Screen screen({});
  open(screen, Sheet::water);
  screen.click("water_sheet.strictness/2");
  EXPECT_EQ(plan_of(screen).strictness, Strictness::strict);
  screen.click("water_sheet.planting/3");
  EXPECT_EQ(plan_of(screen).planting, Planting::dense);
  screen.click("water_sheet.feeding/0");
  EXPECT_EQ(plan_of(screen).feeding->ration, Ration::light);
  EXPECT_EQ(plan_of(screen).feeding->fasting_days, 1) << "the rest of the feeding stays";
  fill(screen, "water_sheet.nitrate_limit", "30");
  EXPECT_EQ(plan_of(screen).limits.nitrate_mg_l, 30);
  fill(screen, "water_sheet.place", "22");
  EXPECT_EQ(plan_of(screen).place.temperature_c, 22);
  for (int i = 0; i < 5; ++i) screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen).strictness, Strictness::usual);
}

}  // namespace
}  // namespace shoalwright
