// SPDX-License-Identifier: MIT
// A keeper writes a kind of their own, or their own values over a kind of the catalogue, with real clicks and keys.
#include "views/own_species_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "catalog/card_edit.h"
#include "share/link.h"

namespace shoalwright {
namespace {

const Spots::Spot* shown(Screen& screen, const std::string& id) {
  screen.rest();
  return screen.spot(id);
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

void open_form(Screen& screen, const std::string& species = "", bool copy = false) {
  carry_out(screen.app(), {WriteSpecies{species, copy}});
  screen.frames(4);
  screen.rest();
}

/// Brings a spot of the form into sight and presses it.
void press(Screen& screen, const std::string& id) {
  screen.app().ui.focus_wanted = id;
  screen.frames(4);
  screen.rest();
  screen.key(ImGuiKey_Space);
  screen.frames(2);
  screen.rest();
}

/// Opens a choice and takes a row of it.
void choose(Screen& screen, const std::string& id, int row) {
  press(screen, id);
  press(screen, id + "/" + std::to_string(row));
}

void fill_least(Screen& screen, const char* name = "Blue thing") {
  fill(screen, "own.name.common", name);
  fill(screen, "own.size.adult_tl_cm", "6");
}

const Species* own(Screen& screen) {
  const std::vector<Species>& all = plan_of(screen).own_species;
  return all.empty() ? nullptr : &all.front();
}

TEST(OwnSpecies, IsBegunFromTheFileMenuAndSavedByOneStep) {
  Screen screen({});
  const Plan before = plan_of(screen);
  screen.click("top.file");
  screen.frames(3);
  screen.click("top.file/own");
  screen.frames(4);
  ASSERT_EQ(screen.app().sheet, Sheet::own_species);
  fill_least(screen);
  screen.click("own.save");
  ASSERT_NE(own(screen), nullptr);
  EXPECT_EQ(own(screen)->id, "own--blue-thing");
  EXPECT_EQ(own(screen)->size.adult_tl_cm, 6);
  EXPECT_EQ(screen.app().sheet, Sheet::species) << "its page comes";
  EXPECT_EQ(shown(screen, "species.own")->label, "Your own kind");
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen), before);
}

TEST(OwnSpecies, WhatIsMissingIsSaidAtItsFieldAndNothingChanges) {
  Screen screen({});
  open_form(screen);
  const Plan before = plan_of(screen);
  EXPECT_EQ(shown(screen, "own.error/name.common"), nullptr) << "not before saving is tried";
  screen.click("own.save");
  screen.frames(3);
  ASSERT_NE(shown(screen, "own.error/name.common"), nullptr);
  EXPECT_EQ(shown(screen, "own.error/name.common")->label, "Name is needed.");
  EXPECT_EQ(shown(screen, "own.error/size.adult_tl_cm")->label, "Adult length is needed.");
  EXPECT_TRUE(has(shown(screen, "own.sentence")->label, "Name and Adult length"));
  EXPECT_EQ(screen.app().ui.ring_id, "own.name.common") << "the keyboard goes there";
  EXPECT_EQ(plan_of(screen), before);
  fill_least(screen);
  EXPECT_EQ(shown(screen, "own.error/name.common"), nullptr);
  EXPECT_EQ(shown(screen, "own.sentence"), nullptr);
}

TEST(OwnSpecies, AnImpossibleValueSaysOneSentenceAtItsField) {
  Screen screen({});
  open_form(screen);
  fill_least(screen);
  fill(screen, "own.size.adult_tl_cm", "900");
  EXPECT_TRUE(has(shown(screen, "own.error/size.adult_tl_cm")->label, "150 cm."))
      << shown(screen, "own.error/size.adult_tl_cm")->label;
  fill(screen, "own.size.adult_tl_cm", "6");
  EXPECT_EQ(shown(screen, "own.error/size.adult_tl_cm"), nullptr);
  fill(screen, "own.water.ph.tolerated/low", "6");
  EXPECT_TRUE(has(shown(screen, "own.error/water.ph.tolerated")->label, "eeds both ends"));
  fill(screen, "own.water.ph.tolerated/high", "7");
  EXPECT_EQ(shown(screen, "own.error/water.ph.tolerated"), nullptr);
  fill(screen, "own.water.ph.ideal/low", "5");
  fill(screen, "own.water.ph.ideal/high", "6.5");
  EXPECT_EQ(shown(screen, "own.error/water.ph.ideal")->label, "Has to lie inside what it lives in.");
  fill(screen, "own.water.ph.ideal/low", "6.2");
  fill(screen, "own.life.depth.surface", "50");
  EXPECT_EQ(shown(screen, "own.error/life.depth.bottom")->label, "The three shares have to sum to 100 %.");
  fill(screen, "own.life.depth.mid", "30");
  EXPECT_EQ(shown(screen, "own.error/life.depth.bottom"), nullptr);
  fill(screen, "own.life.group.good", "3");
  EXPECT_NE(shown(screen, "own.error/life.group.good"), nullptr);
  fill(screen, "own.life.group.good", "9");
  screen.click("own.save");
  ASSERT_NE(own(screen), nullptr);
  EXPECT_EQ(own(screen)->water.ph.ideal, (Range{6.2, 6.5}));
  EXPECT_EQ(own(screen)->life.depth, (std::array<double, 3>{0.5, 0.3, 0.2}));
}

TEST(OwnSpecies, WordsFlagsFoodsAndColoursAreChosen) {
  Screen screen({});
  open_form(screen);
  fill_least(screen);
  choose(screen, "own.life.style", 5);
  choose(screen, "own.life.sexes.ratio", 2);
  press(screen, "own.mouth.digs/1");
  press(screen, "own.diet.foods/live");
  press(screen, "own.look.marks/bars");
  choose(screen, "own.look.form", 11);
  press(screen, "own.colour/0");
  press(screen, "own.paint/10");
  fill(screen, "own.hex", "#D98A55");
  screen.click("own.save");
  ASSERT_NE(own(screen), nullptr);
  EXPECT_EQ(own(screen)->life.style, Style::bottom_shoal);
  EXPECT_EQ(own(screen)->life.sex_ratio, "1m:2f");
  EXPECT_TRUE(own(screen)->mouth.digs);
  EXPECT_EQ(own(screen)->diet.foods, (std::vector<std::string>{"flake", "live"}));
  EXPECT_EQ(own(screen)->look.marks, std::vector<std::string>{"bars"}) << "none is no longer said";
  EXPECT_EQ(own(screen)->look.form, "corydoras");
  EXPECT_EQ(own(screen)->look.colours[0], "#d98a55");
}

TEST(OwnSpecies, LivesOnTheShelfGoesIntoTheTankAndTravels) {
  Screen screen({});
  open_form(screen);
  fill_least(screen);
  screen.click("own.save");
  screen.key(ImGuiKey_Escape);
  fill(screen, "shelf.search", "blue thing");
  ASSERT_NE(shown(screen, "shelf.row/own--blue-thing"), nullptr);
  EXPECT_TRUE(has(shown(screen, "shelf.row/own--blue-thing")->label, "Your own kind"));
  screen.shoot("own-on-the-shelf");
  screen.app().ui.focus_wanted = "shelf.row/own--blue-thing";
  screen.frames(4);
  screen.key(ImGuiKey_Enter);
  screen.frames(2);
  screen.key(ImGuiKey_Enter);
  screen.rest();
  ASSERT_EQ(plan_of(screen).stock.back().species, "own--blue-thing");
  const Plan& plan = plan_of(screen);
  EXPECT_EQ(read_plan(plan_json(plan)).value(), plan);
  EXPECT_EQ(decode_link(encode_link(plan, screen.app().catalog), screen.app().catalog).value(), plan);
}

TEST(OwnSpecies, OwnValuesOverAKindAreSaidAndTakenBack) {
  Screen screen({});
  const Plan before = plan_of(screen);
  carry_out(screen.app(), {ShowSpecies{"hoplisoma-sterbai"}});
  screen.frames(4);
  screen.rest();
  screen.click("species.write");
  screen.frames(3);
  ASSERT_EQ(screen.app().sheet, Sheet::own_species);
  EXPECT_TRUE(has(shown(screen, "own")->label, "Your own values for"));
  fill(screen, "own.water.ph.tolerated/high", "8.2");
  screen.click("own.save");
  ASSERT_NE(own(screen), nullptr);
  EXPECT_EQ(own(screen)->id, "hoplisoma-sterbai");
  EXPECT_EQ(own(screen)->water.ph.tolerated->high, 8.2);
  EXPECT_EQ(evidence_for(*own(screen), "water.ph.tolerated")->evidence, Evidence::keeper);
  EXPECT_NE(evidence_for(*own(screen), "water.gh_dgh.tolerated")->evidence, Evidence::keeper);
  EXPECT_EQ(plan_of(screen).stock, before.stock);
  EXPECT_EQ(shown(screen, "species.own")->label, "Your own values");
  EXPECT_TRUE(has(shown(screen, "species.facts/Water")->label, "8.2, yours"));
  screen.click("species.write");
  screen.frames(3);
  screen.click("own.remove");
  EXPECT_EQ(plan_of(screen), before);
  EXPECT_EQ(screen.app().sheet, Sheet::species);
  EXPECT_EQ(shown(screen, "species.own"), nullptr);
}

TEST(OwnSpecies, ACopyStandsBesideTheKindAndIsRemovedWithItsGroup) {
  Screen screen({});
  const Plan before = plan_of(screen);
  carry_out(screen.app(), {ShowSpecies{"danio-rerio"}});
  screen.frames(4);
  screen.rest();
  screen.click("species.copy");
  screen.frames(3);
  fill(screen, "own.name.common", "long-finned danio");
  screen.click("own.save");
  ASSERT_NE(own(screen), nullptr);
  EXPECT_EQ(own(screen)->id.rfind("own--", 0), 0u);
  EXPECT_EQ(display_name(*own(screen)), "long-finned danio");
  screen.click("species.add");
  EXPECT_EQ(plan_of(screen).stock.size(), before.stock.size() + 1);
  screen.click("species.write");
  screen.frames(3);
  screen.click("own.remove");
  EXPECT_EQ(plan_of(screen), before);
  EXPECT_EQ(screen.app().sheet, Sheet::none);
}

TEST(OwnSpecies, IsOfferedWhereTheShelfFindsNothing) {
  Screen screen({});
  fill(screen, "shelf.search", "zzqx");
  ASSERT_NE(shown(screen, "shelf.own"), nullptr);
  screen.click("shelf.own");
  EXPECT_EQ(screen.app().sheet, Sheet::own_species);
}

TEST(OwnSpecies, ADraftIsNotLostByClosing) {
  Screen screen({});
  open_form(screen);
  fill(screen, "own.name.common", "Half written");
  screen.key(ImGuiKey_Escape);
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  open_form(screen);
  EXPECT_EQ(card_name(screen.app().views.own_species.draft.card), "Half written");
  screen.click("own.again");
  EXPECT_EQ(card_name(screen.app().views.own_species.draft.card), "");
}

TEST(OwnSpecies, TakesTheKeepersUnits) {
  Screen screen({});
  Preferences preferences = screen.app().preferences;
  preferences.us_units = true;
  carry_out(screen.app(), {SetPreferences{preferences}});
  open_form(screen);
  fill(screen, "own.name.common", "Inch fish");
  fill(screen, "own.size.adult_tl_cm", "2");
  fill(screen, "own.water.temperature_c.tolerated/low", "72");
  fill(screen, "own.water.temperature_c.tolerated/high", "81");
  screen.click("own.save");
  ASSERT_NE(own(screen), nullptr);
  EXPECT_NEAR(own(screen)->size.adult_tl_cm, 5.08, 1e-9);
  EXPECT_NEAR(own(screen)->water.temperature_c.tolerated->low, (72 - 32) / 1.8, 1e-9);
}

TEST(OwnSpecies, StaysInsideEveryWindowByDayAndNight) {
  struct Window {
    float width, height;
    bool touch;
  };
  for (const Theme theme : {Theme::light, Theme::dark})
    for (const Window& window : {Window{1440, 900, false}, Window{1024, 768, false}, Window{390, 844, true}}) {
      Screen screen({.width = window.width, .height = window.height, .theme = theme, .touch = window.touch});
      const std::string name = "own-" + std::to_string(int(window.width)) + (theme == Theme::dark ? "-dark" : "-light");
      open_form(screen, window.width > 1100 ? "" : "puntigrus-tetrazona", window.width > 600);
      if (window.width > 1100) {
        screen.click("own.save");
        screen.frames(4);
      }
      for (const Spots::Spot& spot : screen.spots().list) {
        if (spot.id.rfind("own", 0) != 0 || !spot.visible) continue;
        EXPECT_FALSE(spot.cut_across) << name << " " << spot.id;
        EXPECT_LE(spot.max.x, window.width) << name << " " << spot.id;
      }
      screen.shoot(name + "-1");
      const ImVec2 middle{window.width / 2, window.height * 0.6f};
      for (int part = 2; part <= 4; ++part) {
        for (int i = 0; i < 14; ++i) screen.wheel(middle, -1);
        screen.shoot(name + "-" + std::to_string(part));
      }
    }
}

}  // namespace
}  // namespace shoalwright
