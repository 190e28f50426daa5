// SPDX-License-Identifier: MIT
#include "views/assessment_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "app/rule_words.h"
#include "app/say.h"
#include "support/quarrels.h"
#include "views/pane.h"

namespace shoalwright {
namespace {

Group group(const char* species, int count) {
  Group one;
  one.species = species;
  one.count = count;
  return one;
}

/// An open tank with fish that outgrow it and a shoal too small: findings of every grade.
ScreenKind troubled() {
  return demo_with([](Plan& plan) {
    plan.fixed.clear();
    plan.tank.lid = false;
    plan.stock.push_back(group("carassius-auratus", 3));
    plan.stock.push_back(group("paracheirodon-innesi", 3));
  });
}

/// Nothing is known of the tap, the changes, the planting and the lid.
ScreenKind unknown() {
  return demo_with([](Plan& plan) {
    plan.source = SourceWater{};
    plan.water.reset();
    plan.upkeep.reset();
    plan.planting.reset();
    plan.tank.lid.reset();
    plan.stock.push_back(group("carnegiella-strigata", 6));
  });
}

std::string id_of_finding(Screen& screen, const std::string& rule) {
  const std::vector<Finding>& findings = screen.app().now.findings;
  const std::vector<std::string> ids = finding_ids(findings);
  for (std::size_t i = 0; i < ids.size(); ++i)
    if (findings[i].rule == rule) return ids[i];
  return "";
}

/// Scrolls the column until the spot can be pressed.
void bring(Screen& screen, const std::string& id) {
  for (int i = 0; i < 60; ++i) {
    const Spots::Spot* spot = screen.spot(id);
    ASSERT_NE(spot, nullptr) << id;
    if (spot->visible && spot->max.y < 850 && spot->min.y > 100) return;
    screen.wheel({1300, 400}, spot->max.y >= 850 ? -1.0f : 1.0f);
  }
  ADD_FAILURE() << id << " cannot be scrolled to";
}

TEST(AssessmentColumn, EveryFindingHasACardOfItsOwn) {
  for (const ScreenKind& kind : {troubled(), unknown()}) {
    Screen screen(kind);
    const std::vector<std::string> ids = finding_ids(screen.app().now.findings);
    ASSERT_GT(ids.size(), 3u);
    EXPECT_EQ(std::set<std::string>(ids.begin(), ids.end()).size(), ids.size());
    for (const std::string& id : ids) EXPECT_NE(screen.spot(id), nullptr) << id;
  }
}

TEST(AssessmentColumn, ARemedyIsShownWhileItIsPointedAtAndIsOneStepWhenPressed) {
  Screen screen(troubled());
  const std::string remedy = id_of_finding(screen, "lid") + "/remedy/0";
  bring(screen, remedy);
  const std::size_t steps = screen.app().history.steps.size();
  screen.point(remedy);
  screen.rest();
  EXPECT_EQ(screen.app().previewing, "Put a lid on");
  EXPECT_EQ(screen.app().shown.tank.lid, true);
  EXPECT_EQ(plan_of(screen).tank.lid, false) << "pointing at it changes nothing";
  ASSERT_NE(screen.spot(remedy), nullptr) << "the button stays under the pointer";
  screen.click(remedy);
  EXPECT_EQ(plan_of(screen).tank.lid, true);
  EXPECT_EQ(screen.app().history.steps.size(), steps + 1);
  EXPECT_EQ(undo_name(screen.app().history), "Put a lid on");
  EXPECT_EQ(id_of_finding(screen, "lid"), "");
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen).tank.lid, false);
}

TEST(AssessmentColumn, WhyUnfoldsAndFoldsAgain) {
  Screen screen(troubled());
  const std::string id = id_of_finding(screen, "lid");
  bring(screen, id + "/why");
  const auto height = [&] { return screen.app().views.assessment.open_why.count(id); };
  EXPECT_EQ(height(), 0u);
  screen.click(id + "/why");
  EXPECT_EQ(height(), 1u);
  bring(screen, id + "/why");
  screen.click(id + "/why");
  EXPECT_EQ(height(), 0u);
}

TEST(AssessmentColumn, EveryRuleThatSpeaksTellsHowItJudgesAndWhatItRestsOn) {
  for (const ScreenKind& kind : {troubled(), unknown(), demo_with([](Plan& plan) { plan.stock.clear(); })}) {
    Screen screen(kind);
    for (const Finding& finding : screen.app().now.findings) {
      EXPECT_FALSE(rule_words(finding.rule).empty()) << finding.rule;
      const std::string evidence = evidence_words(finding);
      EXPECT_GT(evidence.size(), 12u) << finding.rule;
      if (finding.evidence == Evidence::published) {
        EXPECT_GT(citation(finding.source).size(), 40u) << finding.source;
      }
    }
  }
}

TEST(AssessmentColumn, TellsOfQuarrelsHowEachIsJudged) {
  for (const NamedPlan& named : quarrels())
    for (const Finding& finding : assess(named.plan, the_catalog()).findings)
      EXPECT_FALSE(rule_words(finding.rule).empty()) << finding.rule;
  for (const Theme theme : {Theme::light, Theme::dark})
    for (const bool phone : {false, true})
      for (const NamedPlan& named : quarrels()) {
        if (named.name != "quarrels, hunters" && named.name != "quarrels, sexes") continue;
        ScreenKind kind = demo_with([&](Plan& plan) { plan = named.plan; });
        kind.theme = theme;
        kind.width = phone ? 390 : 1440;
        kind.height = 2400;
        kind.touch = phone;
        Screen screen(kind);
        EXPECT_TRUE(screen.rest());
        int company = 0;
        for (const Finding& finding : screen.app().now.findings) company += section_of(finding) == Section::company;
        EXPECT_GT(company, 3);
        screen.shoot(std::string(named.name == "quarrels, sexes" ? "sexes" : "hunters") + (phone ? "-phone" : "-desktop") +
                     (theme == Theme::light ? "-light" : "-dark"));
      }
}

TEST(AssessmentColumn, IKnowIsOfferedForWhatIsQuietAndCanBeTakenBack) {
  Screen screen(troubled());
  const std::string lid = id_of_finding(screen, "lid"), grown = id_of_finding(screen, "adult-size");
  ASSERT_FALSE(grown.empty());
  EXPECT_EQ(screen.spot(grown + "/know"), nullptr) << "a Fix keeps its mark";
  bring(screen, lid + "/know");
  screen.click(lid + "/know");
  ASSERT_EQ(plan_of(screen).seen.size(), 1u);
  EXPECT_EQ(plan_of(screen).seen[0].rule, "lid");
  bring(screen, lid + "/know");
  screen.click(lid + "/know");
  EXPECT_TRUE(plan_of(screen).seen.empty());
}

TEST(AssessmentColumn, AFixBelowTheFoldIsToldAtTheFootAndComesIntoView) {
  Screen screen(troubled());
  const std::string grown = id_of_finding(screen, "adult-size");
  ASSERT_FALSE(screen.spot(grown)->visible);
  ASSERT_NE(screen.spot("assessment.below"), nullptr);
  EXPECT_NE(screen.spot("assessment.below")->label.find("to fix"), std::string::npos);
  for (int i = 0; i < 6 && screen.spot("assessment.below") != nullptr && !screen.spot(grown)->visible; ++i)
    screen.click("assessment.below");
  EXPECT_TRUE(screen.spot(grown)->visible);
}

TEST(AssessmentColumn, AWaterBarAndEditOpenTheWaterSheet) {
  for (const char* id : {"water.temperature", "water.ph", "water.gh", "water.kh", "water.edit"}) {
    Screen screen({});
    EXPECT_EQ(screen.app().sheet, Sheet::none);
    screen.click(id);
    EXPECT_EQ(screen.app().sheet, Sheet::water) << id;
    EXPECT_NE(screen.spot("water_sheet.tap.ph"), nullptr);
  }
}

TEST(AssessmentColumn, MarksOfAWaterBarAreDrawnAlongIt) {
  Screen screen({});
  const Plan before = plan_of(screen);
  for (const auto& [id, of] : {std::pair("water.gh/aim", 0), std::pair("water.kh/tap", 1)}) {
    const Spots::Spot* spot = screen.spot(id);
    ASSERT_NE(spot, nullptr) << id;
    const float x = (spot->min.x + spot->max.x) / 2, y = (spot->min.y + spot->max.y) / 2;
    screen.drag(id, {x - 14, y});
    screen.let_go();
    EXPECT_EQ(screen.app().sheet, Sheet::none) << "drawn along, not pressed";
    if (of == 0) {
      EXPECT_LT(*plan_of(screen).water->gh_dgh, *before.water->gh_dgh);
    } else {
      EXPECT_LT(*plan_of(screen).source.kh_dkh, *before.source.kh_dkh);
    }
    screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
    EXPECT_EQ(plan_of(screen).water, before.water);
    EXPECT_EQ(plan_of(screen).source, before.source);
  }
}

TEST(AssessmentColumn, WaterBarsSayTheWindowAndWhatIsInHand) {
  Screen screen({});
  const Window& gh = screen.app().now.water.gh_dgh;
  const std::string label = screen.spot("water.gh")->label;
  EXPECT_NE(label.find("3 to 15 °dH"), std::string::npos) << label;
  ASSERT_TRUE(gh.margin);
  EXPECT_NE(label.find("4 °dH in hand"), std::string::npos) << label;
}

TEST(AssessmentColumn, UnknownWaterSaysSoAndOffersToEnterIt) {
  Screen screen(unknown());
  EXPECT_NE(screen.spot("water.gh")->label.find("not known"), std::string::npos);
  screen.click("water.enter");
  EXPECT_EQ(screen.app().sheet, Sheet::water);
}

TEST(AssessmentColumn, TwoThatShareNoTemperatureAreNamedWithTheirFigures) {
  Screen screen(demo_with([](Plan& plan) {
    plan.stock = {group("tanichthys-albonubes", 8), group("mikrogeophagus-ramirezi", 2)};
  }));
  if (screen.app().now.water.temperature_c.tolerated) GTEST_SKIP() << "the cards have moved together";
  const std::string label = screen.spot("water.temperature")->label;
  EXPECT_NE(label.find("none shared"), std::string::npos) << label;
  EXPECT_NE(label.find("needs"), std::string::npos) << label;
}

TEST(AssessmentColumn, TheChangeStepsByLitresAndQuickStepsAreOne) {
  Screen screen({});
  const double net_l = screen.app().now.volume.net_l, before = plan_of(screen).upkeep->change_fraction;
  const std::size_t steps = screen.app().history.steps.size();
  bring(screen, "load.change/more");
  screen.click("load.change/more");
  screen.click("load.change/more");
  EXPECT_NEAR((plan_of(screen).upkeep->change_fraction - before) * net_l, 10, 0.51) << "two steps of 5 L, from whole litres";
  EXPECT_EQ(screen.app().history.steps.size(), steps + 1);
  screen.click("load.days/less");
  EXPECT_EQ(plan_of(screen).upkeep->every_days, 6);
}

TEST(AssessmentColumn, AHeadingFoldsItsSection) {
  Screen screen({});
  ASSERT_NE(screen.spot("room.floor"), nullptr);
  screen.click("room");
  EXPECT_EQ(screen.spot("room.floor"), nullptr);
  screen.click("room");
  EXPECT_NE(screen.spot("room.floor"), nullptr);
}

TEST(AssessmentColumn, UsUnitsReachEveryLine) {
  Screen screen(troubled());
  Preferences preferences = screen.app().preferences;
  preferences.us_units = true;
  carry_out(screen.app(), {SetPreferences{preferences}});
  screen.frames(3);
  for (const Spots::Spot& spot : screen.spots().list) {
    const auto begins = [&](const char* with) { return spot.id.rfind(with, 0) == 0; };
    if (!begins("room") && !begins("finding") && !begins("first")) continue;
    for (const char* metric : {" cm ", " cm:", " °C", " L "})
      EXPECT_EQ((spot.label + " ").find(metric), std::string::npos) << spot.id << ": " << spot.label;
  }
}

}  // namespace
}  // namespace shoalwright
