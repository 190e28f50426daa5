// SPDX-License-Identifier: MIT
// Numbers of load and air, and where they come from.
#include "views/value_row.h"

#include <gtest/gtest.h>

#include "app/fill.h"

namespace shoalwright {
namespace {

const Number all_numbers[] = {Number::net_volume,   Number::co2,          Number::feed,          Number::tan,
                              Number::plants,       Number::nitrate_peak, Number::change_needed, Number::kh_drift,
                              Number::media_needed, Number::free_ammonia, Number::saturation,    Number::night_use,
                              Number::dawn,         Number::heat_loss,    Number::heater,        Number::evaporation,
                              Number::top_off};

TEST(ValueRow, EveryNumberTellsFormulaInputsSourceAndValidity) {
  Screen screen(demo_with([](Plan& plan) { plan.measured->ammonia_mg_l = 0.1; }));
  screen.frames(3);
  for (const Number number : all_numbers) {
    const auto told = derivation_of(number, screen.app().shown, screen.app().catalog, screen.app().now);
    ASSERT_TRUE(told) << int(number);
    EXPECT_FALSE(told->formula.empty() || told->source.empty() || told->validity.empty()) << int(number);
    EXPECT_FALSE(told->inputs.empty()) << int(number);
    for (const Derivation::Input& input : told->inputs) EXPECT_FALSE(input.value.empty()) << told->formula << ' ' << input.name;
  }
}

TEST(ValueRow, WhatIsNotKnownHasNoDerivation) {
  Screen screen(demo_with([](Plan& plan) {
    plan.planting.reset();
    plan.place.temperature_c.reset();
  }));
  screen.frames(3);
  for (const Number number : {Number::dawn, Number::heat_loss, Number::heater})
    EXPECT_FALSE(derivation_of(number, screen.app().shown, screen.app().catalog, screen.app().now)) << int(number);
  EXPECT_EQ(screen.spot("air.dawn"), nullptr);
}

TEST(ValueRow, UnfoldsWhenPressed) {
  ScreenKind tall = demo_with([](Plan&) {});
  tall.height = 1600;
  Screen screen(tall);
  screen.frames(3);
  ASSERT_NE(screen.spot("air.dawn"), nullptr);
  const float below = screen.spot("air.use")->min.y;
  screen.click("air.dawn");
  screen.rest();
  EXPECT_GT(screen.spot("air.use")->min.y, below + 100);
  screen.shoot("air-why");
  screen.click("air.dawn");
  screen.rest();
  EXPECT_NEAR(screen.spot("air.use")->min.y, below, 0.5);
}

TEST(Ceiling, IsDrawnUpAndDownAndIsOneStep) {
  ScreenKind tall = demo_with([](Plan&) {});
  tall.height = 1600;
  Screen screen(tall);
  screen.frames(3);
  const std::optional<double> before = plan_of(screen).limits.nitrate_mg_l;
  const Spots::Spot* spot = screen.spot("load.ceiling");
  ASSERT_NE(spot, nullptr);
  const ImVec2 at{(spot->min.x + spot->max.x) / 2, (spot->min.y + spot->max.y) / 2};
  screen.drag("load.ceiling", {at.x, at.y + 12});
  screen.let_go();
  ASSERT_TRUE(plan_of(screen).limits.nitrate_mg_l);
  EXPECT_LT(*plan_of(screen).limits.nitrate_mg_l, before.value_or(40));
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen).limits.nitrate_mg_l, before);
}

TEST(ChangeSlider, ChangesTheLitresAndIsOneStep) {
  ScreenKind tall = demo_with([](Plan&) {});
  tall.height = 1600;
  Screen screen(tall);
  screen.frames(3);
  const double before = plan_of(screen).upkeep->change_fraction;
  const Spots::Spot* spot = screen.spot("load.slide");
  ASSERT_NE(spot, nullptr);
  screen.drag("load.slide", {spot->max.x - 20, (spot->min.y + spot->max.y) / 2});
  screen.let_go();
  EXPECT_GT(plan_of(screen).upkeep->change_fraction, before);
  screen.key(ImGuiMod_Ctrl | ImGuiKey_Z);
  EXPECT_EQ(plan_of(screen).upkeep->change_fraction, before);
}

TEST(RoWeek, StandsBesideTheWorkAndTakesTheKeepersRatio) {
  ScreenKind tall = demo_with([](Plan&) {});
  tall.height = 1600;
  Screen screen(tall);
  screen.frames(3);
  ASSERT_NE(screen.spot("load.ro"), nullptr);
  EXPECT_NE(screen.spot("load.ro")->label.find("common practice, no source"), std::string::npos) << screen.spot("load.ro")->label;
  fill(screen, "load.ro_drain", "2");
  EXPECT_EQ(screen.app().preferences.ro_drain_l_per_l, 2);
  EXPECT_EQ(screen.spot("load.ro")->label.find("common practice"), std::string::npos) << "it is the keeper's own figure";
  EXPECT_EQ(platform::headless::record().settings.at("ro-drain"), "2");
  ASSERT_NE(screen.spot("load.top_off"), nullptr);
  EXPECT_NE(screen.spot("load.top_off")->label.find("GH "), std::string::npos) << screen.spot("load.top_off")->label;
}

}  // namespace
}  // namespace shoalwright
