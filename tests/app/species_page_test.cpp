// SPDX-License-Identifier: MIT
// All about one kind: opened from the shelf and the stock by pointer and keyboard, read, printed, left again.
#include "views/species_page_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "edit/command.h"

namespace shoalwright {
namespace {

const Spots::Spot* shown(Screen& screen, const std::string& id) {
  screen.rest();
  return screen.spot(id);
}

std::string label_of(Screen& screen, const std::string& id) {
  const Spots::Spot* spot = shown(screen, id);
  EXPECT_NE(spot, nullptr) << id;
  return spot == nullptr ? "" : spot->label;
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

void open_page(Screen& screen, const std::string& species) {
  carry_out(screen.app(), {ShowSpecies{species}});
  screen.frames(4);
  screen.rest();
}

TEST(SpeciesPage, OpensFromTheSpotOnARowOfTheShelfAndEscapeCloses) {
  Screen screen({});
  screen.app().views.shelf.search = "ember tetra";
  screen.frames(2);
  screen.point("shelf.row/hyphessobrycon-amandae");
  screen.frames(2);
  ASSERT_NE(screen.spot("shelf.more/hyphessobrycon-amandae"), nullptr);
  for (const Spots::Spot& spot : screen.spots().list)
    EXPECT_FALSE(spot.id.starts_with("shelf.more/") && spot.id != "shelf.more/hyphessobrycon-amandae")
        << "only on the row under the pointer";
  screen.shoot("species-more");
  screen.click("shelf.more/hyphessobrycon-amandae");
  EXPECT_EQ(screen.app().sheet, Sheet::species);
  EXPECT_FALSE(screen.app().held) << "the row is not picked up";
  EXPECT_TRUE(has(label_of(screen, "species"), "Ember tetra"));
  screen.key(ImGuiKey_Escape);
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  EXPECT_EQ(screen.spot("species"), nullptr);
}

TEST(SpeciesPage, OpensByAFingerFromTheShelfOfAPhone) {
  Screen screen({.width = 390, .height = 844, .touch = true});
  const std::string id = "shelf.more/hyphessobrycon-amandae";
  screen.app().views.shelf.search = "ember tetra";
  screen.frames(2);
  screen.wheel({195, 600}, -6.0f);  // rows far below are not drawn
  bring(screen, "shelf.row/hyphessobrycon-amandae", {195, 360});
  bring(screen, id, {195, 360});  // at the foot of its row
  screen.shoot("species-more-phone");
  screen.click(id);
  EXPECT_EQ(screen.app().sheet, Sheet::species);
  EXPECT_FALSE(screen.app().held);
  screen.click("species.close");
  EXPECT_EQ(screen.app().sheet, Sheet::none);
}

TEST(SpeciesPage, TheKeyIOpensItAndTheKeyboardComesBackToTheRow) {
  Screen screen({});
  screen.app().ui.focus_wanted = "shelf.row/danio-rerio";
  screen.frames(4);
  screen.key(ImGuiKey_I);
  screen.frames(4);
  ASSERT_EQ(screen.app().sheet, Sheet::species);
  EXPECT_EQ(screen.app().ui.ring_id, "species.close") << "the keyboard is on the page";
  screen.key(ImGuiKey_Tab);
  EXPECT_EQ(screen.app().ui.ring_id, "species.add");
  screen.key(ImGuiKey_Tab);
  EXPECT_EQ(screen.app().ui.ring_id, "species.print");
  screen.key(ImGuiKey_Tab);
  EXPECT_EQ(screen.app().ui.ring_id, "species.write");
  screen.key(ImGuiKey_Tab);
  EXPECT_EQ(screen.app().ui.ring_id, "species.copy");
  screen.key(ImGuiKey_Tab);
  EXPECT_EQ(screen.app().ui.ring_id.rfind("species.good/", 0), 0u) << screen.app().ui.ring_id;
  screen.key(ImGuiKey_Escape);
  screen.frames(3);
  EXPECT_EQ(screen.app().ui.ring_id, "shelf.row/danio-rerio");
}

TEST(SpeciesPage, OpensFromTheStockList) {
  Screen screen({});
  screen.click("stock.menu/hoplisoma-sterbai");
  screen.frames(3);
  screen.click("stock.page");
  EXPECT_EQ(screen.app().sheet, Sheet::species);
  EXPECT_EQ(screen.app().views.species_page.species, "hoplisoma-sterbai");
  EXPECT_TRUE(has(label_of(screen, "species.fit"), "In the plan: 8"));
  screen.key(ImGuiKey_Escape);
  screen.app().ui.focus_wanted = "stock.row/hoplisoma-sterbai";
  screen.frames(4);
  screen.key(ImGuiKey_I);
  EXPECT_EQ(screen.app().sheet, Sheet::species);
}

TEST(SpeciesPage, SaysWhatTheKindIsAndWhereEachFactComesFrom) {
  Screen screen({});
  open_page(screen, "puntigrus-tetrazona");
  EXPECT_TRUE(has(label_of(screen, "species.picture"), "Grown 6.5 cm, when sold 3 cm."));
  EXPECT_TRUE(has(label_of(screen, "species.facts/Body"), "Adult length: 6.5 cm, practice"));
  EXPECT_TRUE(has(label_of(screen, "species.facts/Body"), "Largest printed: 7 cm, TL, source 1"));
  EXPECT_TRUE(has(label_of(screen, "species.source/1"), "Ref. 7050"));
  EXPECT_TRUE(has(label_of(screen, "species.facts/Water"), "Temperature, lives in: 20 to 27 °C, practice"));
  EXPECT_TRUE(has(label_of(screen, "species.facts/Breeding"), "Way: Egg scatterer"));
  EXPECT_TRUE(has(label_of(screen, "species.facts/Breeding"), "First food: Infusoria"));
  EXPECT_TRUE(has(label_of(screen, "species.facts/Breeding"), "Told apart: When grown"));
  const std::string cautions = label_of(screen, "species.cautions");
  EXPECT_TRUE(has(cautions, "Jumps when chased")) << cautions;
  EXPECT_TRUE(has(cautions, "Never release it"));
  EXPECT_TRUE(has(cautions, "Keep eight or more")) << "the note of the card";
}

TEST(SpeciesPage, ShowsMaleAndFemaleWhereTheyLookLikeTwo) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    ScreenKind kind;
    kind.theme = theme;
    Screen screen(kind);
    open_page(screen, "xiphophorus-hellerii");
    const std::string both = label_of(screen, "species.sexes");
    EXPECT_TRUE(has(both, "Male, ")) << both;
    EXPECT_TRUE(has(both, "Female, ")) << both;
    screen.shoot(theme == Theme::light ? "species-sexes-light" : "species-sexes-dark");
    open_page(screen, "hoplisoma-sterbai");
    EXPECT_EQ(screen.spot("species.sexes"), nullptr) << "they look alike";
  }
  ScreenKind phone;
  phone.width = 390;
  phone.height = 844;
  Screen screen(phone);
  open_page(screen, "poecilia-reticulata");
  EXPECT_NE(screen.spot("species.sexes"), nullptr);
  screen.shoot("species-sexes-phone");
}

TEST(SpeciesPage, SaysWhatDroppingAGroupWouldRaiseAndHowToMendIt) {
  Screen screen({});
  open_page(screen, "pterygoplichthys-pardalis");
  const Species& pleco = *find_species(screen.app().catalog, std::string_view("pterygoplichthys-pardalis"));
  const std::string said = shelf_words(shelf_answer(plan_of(screen), screen.app().catalog, pleco));
  EXPECT_EQ(label_of(screen, "species.fit").rfind(said, 0), 0u) << label_of(screen, "species.fit");
  const std::string first = label_of(screen, "species.raised/0");
  EXPECT_EQ(first.rfind("Fix: ", 0), 0u) << first;
  open_page(screen, "hyphessobrycon-amandae");
  EXPECT_TRUE(has(label_of(screen, "species.fit"), "Up to "));
}

TEST(SpeciesPage, WaterStandsBesideThePlans) {
  Screen screen({});
  open_page(screen, "labidochromis-caeruleus");
  EXPECT_TRUE(has(label_of(screen, "species.water.ph"), "too low")) << label_of(screen, "species.water.ph");
  Preferences preferences = screen.app().preferences;
  preferences.us_units = true;
  carry_out(screen.app(), {SetPreferences{preferences}});
  screen.frames(3);
  EXPECT_TRUE(has(label_of(screen, "species.water.temperature"), "°F"));
  EXPECT_TRUE(has(label_of(screen, "species.picture"), " in"));
}

TEST(SpeciesPage, CompanyOpensAndBackLeadsBack) {
  Screen screen({});
  open_page(screen, "trigonostigma-heteromorpha");
  const auto first_of = [&](const std::string& start) {
    for (const Spots::Spot& spot : screen.spots().list)
      if (spot.id.rfind(start, 0) == 0) return spot.id;
    return std::string();
  };
  const std::string good = first_of("species.good/");
  ASSERT_FALSE(good.empty());
  ASSERT_FALSE(first_of("species.poor/").empty());
  int rows = 0;
  for (const Spots::Spot& spot : screen.spots().list) rows += spot.id.rfind("species.good/", 0) == 0;
  EXPECT_EQ(rows, 4) << "a few at a time";
  const ImVec2 middle{700, 500};
  bring(screen, "species.good.more", middle);
  screen.click("species.good.more");
  rows = 0;
  for (const Spots::Spot& spot : screen.spots().list) rows += spot.id.rfind("species.good/", 0) == 0;
  EXPECT_GT(rows, 4);
  bring(screen, good, middle);
  screen.click(good);
  EXPECT_EQ(screen.app().views.species_page.species, good.substr(std::string("species.good/").size()));
  ASSERT_NE(shown(screen, "species.back"), nullptr);
  screen.click("species.back");
  EXPECT_EQ(screen.app().views.species_page.species, "trigonostigma-heteromorpha");
  EXPECT_EQ(shown(screen, "species.back"), nullptr);
}

TEST(SpeciesPage, AddsTheGoodGroupByOneUndoableStep) {
  Screen screen({});
  open_page(screen, "hyphessobrycon-amandae");
  const Plan before = plan_of(screen);
  const std::string words = label_of(screen, "species.add");
  screen.click("species.add");
  ASSERT_EQ(plan_of(screen).stock.size(), before.stock.size() + 1);
  EXPECT_EQ("Add " + std::to_string(plan_of(screen).stock.back().count), words);
  EXPECT_TRUE(has(label_of(screen, "species.fit"), "In the plan: "));
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen), before);
  EXPECT_EQ(screen.app().sheet, Sheet::species);
}

TEST(SpeciesPage, IsPrintedOnPaper) {
  Screen screen({});
  open_page(screen, "puntigrus-tetrazona");
  screen.click("species.print");
  const std::string& paper = platform::headless::record().printed;
  EXPECT_EQ(paper.rfind("# Tiger barb\n", 0), 0u) << paper;
  for (const char* part :
       {"## In this plan", "## Company", "| Adult length | 6.5 cm | practice", "| Largest printed | 7 cm, TL | source 1",
        "- Source 1: ", "## Breeding", "## Take care", "Never release it", "Sat 31 Jan 2026"})
    EXPECT_TRUE(has(paper, part)) << part << "\n" << paper;
}

TEST(SpeciesPage, ClosesWhenItsKindIsUndone) {
  Screen screen({});
  Plan plan = plan_of(screen);
  Species own = *find_species(screen.app().catalog, std::string_view("danio-rerio"));
  own.id = "own--danio";
  own.code = 0;
  plan.own_species.push_back(own);
  carry_out(screen.app(), {EditPlan{plan, "Own", ""}, ShowSpecies{"own--danio"}});
  screen.frames(4);
  EXPECT_EQ(label_of(screen, "species.own"), "Your own kind");
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  screen.rest();
  EXPECT_EQ(screen.app().sheet, Sheet::none);
}

/// Pictures of the page, from its top and further down, in every size; what stands there stays inside the window.
TEST(SpeciesPage, StaysInsideEveryWindowByDayAndNight) {
  struct Window {
    float width, height;
    bool touch;
  };
  for (const Theme theme : {Theme::light, Theme::dark})
    for (const Window& window : {Window{1440, 900, false}, Window{1024, 768, false}, Window{390, 844, true}}) {
      Screen screen({.width = window.width, .height = window.height, .theme = theme, .touch = window.touch});
      const std::string name = "species-" + std::to_string(int(window.width)) + (theme == Theme::dark ? "-dark" : "-light");
      open_page(screen, window.width > 1100  ? "puntigrus-tetrazona"
                        : window.width > 600 ? "pterophyllum-scalare"
                                             : "hoplisoma-sterbai");
      for (const Spots::Spot& spot : screen.spots().list) {
        if (spot.id.rfind("species", 0) != 0 || !spot.visible) continue;
        EXPECT_FALSE(spot.cut_across) << name << " " << spot.id;
        EXPECT_GE(spot.min.x, 0) << name << " " << spot.id;
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
