// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "advice/recipe_card.h"
#include "app/fill.h"
#include "plan/more_keys.h"
#include "views/water_work.h"

namespace shoalwright {
namespace {

constexpr ImVec2 left{150, 500}, middle{620, 500}, right{1200, 500};

/// GH 18, KH 12, pH 7.9, and two kinds of soft water that are wished for.
ScreenKind hard_tap() {
  return demo_with([](Plan& plan) {
    plan.source.gh_dgh = 18;
    plan.source.kh_dkh = 12;
    plan.source.ph = 7.9;
    plan.water = WaterAim{};
    plan.water->gh_dgh = 5;
    plan.water->kh_dkh = 3;
    plan.stock.clear();
    plan.stock.push_back({.species = "paracheirodon-axelrodi", .count = 15});
    plan.stock.push_back({.species = "apistogramma-cacatuoides", .count = 2});
    plan.upkeep = Upkeep{.change_fraction = 0.25, .every_days = 7};
  });
}

const WaterWork& work_of(Screen& screen) { return *screen.app().views.water_sheet.work; }
double ro_of(Screen& screen) { return *work_of(screen).card.ro_l; }
ImVec2 middle_of(const Spots::Spot& spot) { return {(spot.min.x + spot.max.x) / 2, (spot.min.y + spot.max.y) / 2}; }

TEST(WaterPage, ItTakesTheWindowAndTheTabsGoToAndFro) {
  Screen screen({});
  EXPECT_NE(screen.spot("tank.front"), nullptr);
  screen.click("top.tab/water");
  screen.frames(3);
  EXPECT_EQ(screen.app().sheet, Sheet::water);
  EXPECT_EQ(screen.spot("tank.front"), nullptr) << "the tank is not beneath it";
  ASSERT_NE(screen.spot("water_sheet"), nullptr);
  EXPECT_NEAR(screen.spot("water_sheet")->max.x - screen.spot("water_sheet")->min.x, 1440, 1);
  screen.click("top.tab/tank");
  screen.frames(3);
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  EXPECT_NE(screen.spot("tank.front"), nullptr);
  for (const bool by_key : {true, false}) {
    screen.click("top.tab/water");
    if (by_key)
      screen.key(ImGuiKey_Escape);
    else
      screen.click("water_sheet.close");
    EXPECT_EQ(screen.app().sheet, Sheet::none);
  }
}

TEST(WaterPage, OnAPhoneTheTabsAreInTheMenuAndAllIsOneColumn) {
  Screen screen({.width = 390, .height = 844, .touch = true});
  EXPECT_EQ(screen.spot("top.tab/water"), nullptr);
  screen.click("top.file");
  screen.frames(3);
  screen.click("top.tab/water");
  screen.frames(3);
  EXPECT_EQ(screen.app().sheet, Sheet::water);
  for (const char* id : {"water_sheet.tap.gh", "water_sheet.ro_slider", "water_sheet.chart", "water_sheet.bucket",
                         "water_sheet.way", "water_sheet.bar/gh_dgh", "water_sheet.use", "water_sheet.strictness/0"}) {
    const Spots::Spot* spot = screen.spot(id);
    ASSERT_NE(spot, nullptr) << id;
    EXPECT_FALSE(spot->cut_across) << id;
    EXPECT_GE(spot->min.x, 0) << id;
    EXPECT_LE(spot->max.x, 390) << id;
  }
}

TEST(WaterPage, WhatIsTypedInAnotherCountIsStoredInDegreesAndNo3) {
  Screen screen({});
  Preferences preferences = screen.app().preferences;
  preferences.hardness_in = HardnessUnit::mmol_l;
  preferences.nitrate_as_n = true;
  carry_out(screen.app(), {SetPreferences{preferences}});
  open(screen, Sheet::water);
  fill(screen, "water_sheet.tap.gh", "2.5");
  fill(screen, "water_sheet.tap.kh", "2.5");
  fill(screen, "water_sheet.tap.nitrate", "2.8");
  const SourceWater& source = plan_of(screen).source;
  EXPECT_NEAR(*source.gh_dgh, 2.5 / 0.178326, 1e-3) << "mmol/L of calcium and magnesium";
  EXPECT_NEAR(*source.kh_dkh, 2.5 / 0.356652, 1e-3) << "meq/L";
  EXPECT_NEAR(*source.nitrate_mg_l, 2.8 * 62.0049 / 14.0067, 1e-2);
  EXPECT_NE(screen.spot("water_sheet.chart")->label.find("tap GH 2.5, KH 2.5"), std::string::npos)
      << screen.spot("water_sheet.chart")->label;
}

TEST(WaterPage, WhatItShowsIsTheRecipeOfThePlansAim) {
  Screen screen({});
  open(screen, Sheet::water);
  const RecipeCard card = recipe_card(plan_of(screen), screen.app().catalog);
  EXPECT_EQ(work_of(screen).card, card);
  const std::string label = screen.spot("water_sheet.bucket")->label;
  EXPECT_NE(label.find("26 L RO water"), std::string::npos) << label;
  EXPECT_NE(screen.spot("water_sheet.chart")->label.find("tap GH 13, KH 8"), std::string::npos);
  EXPECT_EQ(card.says[0].rfind("Stir in a conditioner", 0), 0u) << "the conditioner comes first";
  const std::size_t steps = steps_to_do(card);
  EXPECT_EQ(card.says[steps - 1].rfind("Bring it to", 0), 0u) << "warming is the last thing to do";
  EXPECT_EQ(card.says[steps].rfind("It has GH", 0), 0u) << "what follows is what to expect";
}

TEST(WaterPage, TheSliderSetsTheShareAndOneUndoTakesTheWaterBack) {
  Screen screen({});
  open(screen, Sheet::water);
  const Plan before = plan_of(screen);
  const double ro = ro_of(screen);
  const Spots::Spot slider = *screen.spot("water_sheet.ro_slider");
  const ImVec2 to{slider.min.x + (slider.max.x - slider.min.x) * 0.25f, middle_of(slider).y};
  screen.drag("water_sheet.ro_slider", to);
  screen.let_go();
  EXPECT_LT(ro_of(screen), ro - 5);
  EXPECT_NEAR(ro_of(screen), std::round(ro_of(screen)), 1e-9) << "whole litres";
  EXPECT_EQ(plan_of(screen), before) << "nothing is decided yet";
  screen.click("water_sheet.use");
  ASSERT_TRUE(plan_of(screen).water);
  EXPECT_NE(plan_of(screen).water, before.water);
  EXPECT_EQ(plan_of(screen).water, aim_of_bucket(work_of(screen)));
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen), before) << "one step of undo";
  screen.click("water_sheet.ro_usual");
  EXPECT_NEAR(ro_of(screen), ro, 1e-9);
  bring(screen, "water_sheet.back", middle);
  screen.click("water_sheet.back");
  EXPECT_FALSE(plan_of(screen).water);
}

TEST(WaterPage, MarksOfTheChartAreDragged) {
  Screen screen({});
  open(screen, Sheet::water);
  const Plan before = plan_of(screen);
  const ImVec2 mix = middle_of(*screen.spot("water_sheet.mark/mix")), tap = middle_of(*screen.spot("water_sheet.mark/tap"));
  const double ro = ro_of(screen);
  screen.click("water_sheet.mark/mix");
  EXPECT_EQ(ro_of(screen), ro) << "a press moves nothing";
  screen.drag("water_sheet.mark/mix", {(mix.x + tap.x) / 2, (mix.y + tap.y) / 2});
  EXPECT_LT(ro_of(screen), ro * 0.75) << "live, half way to the tap";
  screen.let_go();

  const ImVec2 aim = middle_of(*screen.spot("water_sheet.mark/aim"));
  screen.drag("water_sheet.mark/aim", {aim.x + 60, aim.y - 40});
  screen.let_go();
  ASSERT_TRUE(work_of(screen).card.aim.gh_dgh.aim);
  EXPECT_GT(*work_of(screen).card.aim.gh_dgh.aim, 7.5);
  EXPECT_GT(*work_of(screen).card.aim.kh_dkh.aim, 3.5);
  EXPECT_NE(screen.spot("water_sheet.towards/point"), nullptr);
  EXPECT_EQ(plan_of(screen), before);

  screen.drag("water_sheet.mark/tap", {tap.x + 40, tap.y - 40});
  EXPECT_EQ(plan_of(screen), before) << "not before it is let go";
  EXPECT_GT(*work_of(screen).plan.source.gh_dgh, 13);
  screen.let_go();
  screen.rest();
  EXPECT_GT(*plan_of(screen).source.gh_dgh, 13);
  EXPECT_EQ(*plan_of(screen).source.gh_dgh * 2, std::round(*plan_of(screen).source.gh_dgh * 2)) << "half degrees";
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen), before);
}

TEST(WaterPage, MarksAndSliderGoByArrowKeysAndKeepTheKeyboard) {
  Screen screen({});
  open(screen, Sheet::water);
  const auto stand_on = [&](const char* id) {
    screen.app().ui.focus_wanted = id;
    screen.frames(4);
    ASSERT_EQ(screen.app().ui.ring_id, id);
  };
  stand_on("water_sheet.ro_slider");
  double ro = ro_of(screen);
  screen.key(ImGuiKey_RightArrow);
  EXPECT_GT(ro_of(screen), ro);
  EXPECT_EQ(screen.app().ui.ring_id, "water_sheet.ro_slider");
  stand_on("water_sheet.mark/mix");
  ro = ro_of(screen);
  screen.key(ImGuiKey_UpArrow);
  EXPECT_LT(ro_of(screen), ro) << "up along the line is more tap water";
  EXPECT_EQ(screen.app().ui.ring_id, "water_sheet.mark/mix");
  stand_on("water_sheet.mark/aim");
  screen.key(ImGuiKey_RightArrow);
  EXPECT_NEAR(*work_of(screen).card.aim.kh_dkh.aim, 3.3, 1e-9);
  stand_on("water_sheet.mark/tap");
  screen.key(ImGuiKey_UpArrow);
  EXPECT_EQ(plan_of(screen).source.gh_dgh, 13.5);
  screen.key(ImGuiKey_Tab);
  EXPECT_NE(screen.app().ui.ring_id, "water_sheet.mark/tap");
}

TEST(WaterPage, WhatIsAimedAtIsChosen) {
  Screen screen(hard_tap());
  open(screen, Sheet::water);
  EXPECT_EQ(work_of(screen).towards, Towards::own);
  bring(screen, "water_sheet.towards/least", left);
  screen.click("water_sheet.towards/least");
  const double least = ro_of(screen);
  EXPECT_FALSE(work_of(screen).card.aim.gh_dgh.aim);
  screen.click("water_sheet.towards/middle");
  EXPECT_GT(ro_of(screen), least);
  screen.click("water_sheet.towards/one");
  EXPECT_EQ(screen.app().views.water_sheet.choices.kind, "paracheirodon-axelrodi");
  bring(screen, "water_sheet.kind", left);
  screen.click("water_sheet.kind");
  screen.frames(2);
  screen.click("water_sheet.kind/1");
  EXPECT_EQ(screen.app().views.water_sheet.choices.kind, "apistogramma-cacatuoides");
}

TEST(WaterPage, SaltsAtHandAndTheirRatioAreSteps) {
  Screen screen({});
  open(screen, Sheet::water);
  const Plan before = plan_of(screen);
  bring(screen, "water_sheet.salt/calcium-carbonate", left);
  screen.click("water_sheet.salt/calcium-carbonate");
  EXPECT_EQ(plan_of(screen).salts.back(), "calcium-carbonate");
  screen.click("water_sheet.salt/calcium-carbonate");
  EXPECT_EQ(plan_of(screen).salts, before.salts);
  bring(screen, "water_sheet.ratio/more", left);
  screen.click("water_sheet.ratio/more");
  EXPECT_EQ(plan_of(screen).ca_mg_ratio, 4);
  for (const std::string& id : before.salts) {
    bring(screen, "water_sheet.salt/" + id, left);
    screen.click("water_sheet.salt/" + id);
  }
  EXPECT_TRUE(plan_of(screen).salts.empty());
  ASSERT_TRUE(work_of(screen).card.with_usual_salts);
  bring(screen, "water_sheet.usual_salts", middle);
  screen.click("water_sheet.usual_salts");
  EXPECT_EQ(plan_of(screen).salts.size(), 3u);
}

TEST(WaterPage, TheChangeIsTheUpkeepOfThePlan) {
  Screen screen({});
  open(screen, Sheet::water);
  const double litres = work_of(screen).card.for_l;
  screen.click("water_sheet.change/more");
  EXPECT_NEAR(work_of(screen).card.for_l, std::round(litres) + 1, 0.6);
  EXPECT_GT(plan_of(screen).upkeep->change_fraction, 0.3);
}

TEST(WaterPage, HardTapShowsThreeRoadsAndBack) {
  Screen screen(hard_tap());
  open(screen, Sheet::water);
  for (const char* id : {"water_sheet.road/others", "water_sheet.road/mixing", "water_sheet.road/tolerant"})
    ASSERT_NE(screen.spot(id), nullptr) << id;
  EXPECT_EQ(screen.spot("water_sheet.road/others")->min.y, screen.spot("water_sheet.road/tolerant")->min.y) << "side by side";
  EXPECT_NE(screen.spot("water_sheet.road/mixing")->label.find("75 % RO"), std::string::npos)
      << screen.spot("water_sheet.road/mixing")->label;
  EXPECT_NE(screen.spot("water_sheet.bar/ph")->label.find("7.3 to 7.7"), std::string::npos)
      << screen.spot("water_sheet.bar/ph")->label;
  bring(screen, "water_sheet.way", right);
  EXPECT_NE(screen.spot("water_sheet.way")->label.find("GH is inside after"), std::string::npos);
  bring(screen, "water_sheet.fish", right);
  screen.click("water_sheet.fish");
  EXPECT_EQ(screen.app().sheet, Sheet::none);
}

TEST(WaterPage, ATapThatIsNotTooHardHasNoRoadsToChoose) {
  Screen screen({});
  open(screen, Sheet::water);
  EXPECT_EQ(screen.spot("water_sheet.road/others"), nullptr);
}

TEST(WaterPage, WhereNoWaterSuitsAllItSaysWhoDoesNotMeetWhom) {
  Screen screen(demo_with([](Plan& plan) {
    plan.stock.clear();
    plan.stock.push_back({.species = "boraras-brigittae", .count = 12});
    plan.stock.push_back({.species = "poecilia-sphenops", .count = 6});
  }));
  open(screen, Sheet::water);
  ASSERT_FALSE(work_of(screen).windows.gh_dgh.tolerated);
  EXPECT_FALSE(work_of(screen).least_ro_fraction);
  const std::string label = screen.spot("water_sheet.chart")->label;
  EXPECT_NE(label.find("No shared GH: 2 needs 10 up, 1 needs 8 down."), std::string::npos) << label;
}

TEST(WaterPage, AnUnknownTapIsAskedFor) {
  Screen screen(demo_with([](Plan& plan) { plan.source = SourceWater{}; }));
  open(screen, Sheet::water);
  EXPECT_EQ(screen.spot("water_sheet.mark/tap"), nullptr);
  EXPECT_EQ(screen.spot("water_sheet.bucket"), nullptr);
  EXPECT_FALSE(screen.spot("water_sheet.use")->enabled);
  fill(screen, "water_sheet.tap.gh", "13");
  fill(screen, "water_sheet.tap.kh", "8");
  EXPECT_NE(screen.spot("water_sheet.mark/tap"), nullptr);
  EXPECT_NE(screen.spot("water_sheet.bucket"), nullptr);
}

TEST(WaterPage, ItHoldsWithoutAnimalsAndWithManyAndWithPureTap) {
  for (const int kind : {0, 1, 2, 3}) {
    Screen screen(demo_with([&](Plan& plan) {
      if (kind == 0) plan.stock.clear();
      if (kind == 1) plan.stock.push_back({.species = "somebody-unknown", .count = 3});
      if (kind == 2) plan.source.gh_dgh = plan.source.kh_dkh = 0;
      if (kind == 3) plan.upkeep.reset(), plan.water.reset(), plan.salts.clear();
    }));
    open(screen, Sheet::water);
    EXPECT_NE(screen.spot("water_sheet.chart"), nullptr) << kind;
    EXPECT_TRUE(screen.rest()) << kind;
  }
}

TEST(WaterPage, AtRestNothingIsDrawnAndNothingWorkedOut) {
  Screen screen({});
  open(screen, Sheet::water);
  const WaterWork* work = screen.app().views.water_sheet.work.get();
  screen.frames(5);
  EXPECT_EQ(screen.app().views.water_sheet.work.get(), work);
  EXPECT_EQ(platform::headless::record().frames_owed, 0);
}

TEST(WaterPage, GallonsAreTakenAsSuch) {
  Screen screen({});
  Preferences preferences = screen.app().preferences;
  preferences.us_units = true;
  carry_out(screen.app(), {SetPreferences{preferences}});
  open(screen, Sheet::water);
  screen.app().ui.focus_wanted = "water_sheet.ro";
  screen.frames(4);
  fill(screen, "water_sheet.ro", "4");
  EXPECT_NEAR(ro_of(screen), 4 * 3.785411784, 1e-6);
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
  bring(screen, "water_sheet.aim/0", left);
  screen.click("water_sheet.aim/0");
  EXPECT_FALSE(plan_of(screen).water);
  EXPECT_EQ(screen.spot("water_sheet.aim.ph"), nullptr);
  bring(screen, "water_sheet.aim/1", left);
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
  bring(screen, "water_sheet.strictness/2", left);
  screen.click("water_sheet.strictness/2");
  EXPECT_EQ(plan_of(screen).strictness, Strictness::strict);
  bring(screen, "water_sheet.planting/3", left);
  screen.click("water_sheet.planting/3");
  EXPECT_EQ(plan_of(screen).planting, Planting::dense);
  bring(screen, "water_sheet.feeding/0", left);
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

TEST(WaterPage, SaltsAreSteppedByHandAndGoBackToTheRecipe) {
  Screen screen({});
  open(screen, Sheet::water);
  const std::string gypsum = "water_sheet.grams/calcium-sulphate-dihydrate";
  bring(screen, gypsum, left);
  const RecipeCard card = work_of(screen).card;
  EXPECT_EQ(screen.spot("water_sheet.to_recipe"), nullptr);
  const Plan before = plan_of(screen);
  for (int i = 0; i < 10; ++i) screen.click(gypsum + "/more");
  const RecipeCard by_hand = work_of(screen).card;
  EXPECT_TRUE(by_hand.by_hand);
  EXPECT_NEAR(by_hand.salts[0].weighed_g, card.salts[0].weighed_g + 1, 1e-6) << "ten steps of a tenth";
  EXPECT_GT(*by_hand.weighed.gh_dgh, *card.weighed.gh_dgh + 0.3);
  EXPECT_NEAR(*by_hand.weighed.kh_dkh, *card.weighed.kh_dkh, 1e-9);
  EXPECT_EQ(by_hand.ro_l, card.ro_l) << "the blend stands";
  EXPECT_NE(screen.spot("water_sheet.outcome")->label.find("; aim GH"), std::string::npos)
      << screen.spot("water_sheet.outcome")->label;
  EXPECT_EQ(plan_of(screen), before) << "nothing is decided yet";
  bring(screen, "water_sheet.to_recipe", left);
  screen.click("water_sheet.to_recipe");
  EXPECT_EQ(work_of(screen).card, card);
}

TEST(WaterPage, TheWayHasItsDays) {
  Screen screen(hard_tap());
  open(screen, Sheet::water);
  ASSERT_GE(work_of(screen).card.way.steps.size(), 2u);
  ASSERT_NE(screen.spot("water_sheet.day/1"), nullptr);
  const auto day = [&](const char* id) {
    const std::string label = screen.spot(id)->label;
    return label.substr(0, label.find(':'));
  };
  ASSERT_EQ(plan_of(screen).start, "2026-12-05");
  EXPECT_EQ(day("water_sheet.day/0"), "Sat 5 Dec") << "when the plan starts";
  EXPECT_EQ(day("water_sheet.day/1"), "Sat 12 Dec");
  Plan begun = plan_of(screen);
  begun.start = "2025-12-05";
  carry_out(screen.app(), {EditPlan{begun, "", ""}});
  screen.frames(3);
  EXPECT_EQ(day("water_sheet.day/0"), "Sat 31 Jan") << "never before today";
}

TEST(WaterPage, ThePaperHasTheConditionerFirstAndTheCautions) {
  Screen screen({});
  open(screen, Sheet::water);
  bring(screen, "water_sheet.print", middle);
  screen.click("water_sheet.print");
  const std::string& paper = platform::headless::record().printed;
  EXPECT_EQ(paper.rfind("# Water for a change: Reading-room riverbank", 0), 0u) << paper;
  const std::size_t first = paper.find("1. ");
  EXPECT_EQ(paper.compare(first, 24, "1. Stir in a conditioner"), 0) << paper;
  EXPECT_NE(paper.find("Never add acid"), std::string::npos);
  EXPECT_NE(paper.find("Unplug before hands go in"), std::string::npos);
}

TEST(WaterPage, PrivateWaterIsSaidAndToldOf) {
  Screen screen({});
  open(screen, Sheet::water);
  screen.click("water_sheet.tap.private");
  EXPECT_TRUE(is_private(plan_of(screen).source));
  EXPECT_TRUE(std::any_of(screen.app().now.findings.begin(), screen.app().now.findings.end(),
                          [](const Finding& one) { return one.rule == "private-water"; }));
  screen.click("water_sheet.tap.private");
  EXPECT_FALSE(is_private(plan_of(screen).source));
}

TEST(WaterPage, FishForThisTapAreJudgedByTheTap) {
  Screen screen(hard_tap());
  open(screen, Sheet::water);
  bring(screen, "water_sheet.fish", right);
  screen.click("water_sheet.fish");
  screen.rest();
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  ASSERT_NE(screen.spot("shelf.by_tap"), nullptr);
  EXPECT_NE(screen.spot("shelf.by_tap")->label.find("GH 18, KH 12, pH 7.9"), std::string::npos)
      << screen.spot("shelf.by_tap")->label;
  const ShelfWork& work = screen.app().views.shelf.work;
  ASSERT_TRUE(work.done());
  EXPECT_EQ(answer_of(work, "paracheirodon-innesi")->fit, ShelfFit::over) << "GH 18 is no water for it";
  screen.click("shelf.by_plan");
  screen.rest();
  EXPECT_EQ(screen.spot("shelf.by_tap"), nullptr);
  EXPECT_NE(answer_of(work, "paracheirodon-innesi")->fit, ShelfFit::over) << "the aim is GH 5";
}

}  // namespace
}  // namespace shoalwright
