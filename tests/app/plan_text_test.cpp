// SPDX-License-Identifier: MIT
#include "app/plan_text.h"

#include <gtest/gtest.h>

#include <sstream>

#include "app/fill.h"

namespace shoalwright {
namespace {

std::vector<std::string> lines_of(Screen& screen) {
  std::vector<std::string> lines;
  std::istringstream text(plan_text(look_at(screen.app())));
  for (std::string line; std::getline(text, line);) lines.push_back(line);
  return lines;
}

bool has(const std::vector<std::string>& lines, const std::string& part) {
  for (const std::string& line : lines)
    if (line.find(part) != std::string::npos) return true;
  return false;
}

TEST(PlanText, SaysAllThatTheScreenSays) {
  Screen screen({});
  const auto lines = lines_of(screen);
  EXPECT_EQ(lines[0], "# Reading-room riverbank");
  EXPECT_TRUE(has(lines, "90 × 45 × 45 cm outside"));
  EXPECT_TRUE(has(lines, "| 1 | harlequin rasbora (Trigonostigma heteromorpha) | 10 | 6 | least 6, good 10"));
  EXPECT_TRUE(has(lines, "GH: 3 to 15 °dH suits all; the tank has 7 °dH"));
  for (const Tightest& margin : screen.app().now.tightest) EXPECT_FALSE(margin.set_by.empty());
  std::size_t margins = 0;
  for (const std::string& line : lines) margins += line.find("; set by ") != std::string::npos;
  EXPECT_EQ(margins, screen.app().now.tightest.size());
  for (const std::string& caution : screen.app().now.cautions) EXPECT_TRUE(has(lines, caution)) << caution;
}

TEST(PlanText, EveryFindingIsALineWithItsGradeRemedyAndEvidence) {
  Screen screen(demo_with([](Plan& plan) {
    plan.tank.lid = false;
    plan.stock[1].count = 2;
  }));
  const auto lines = lines_of(screen);
  ASSERT_FALSE(screen.app().now.findings.empty());
  for (const Finding& finding : screen.app().now.findings) {
    EXPECT_TRUE(has(lines, finding.text)) << finding.text;
    if (!finding.remedy.empty()) {
      EXPECT_TRUE(has(lines, "What to do: " + finding.remedy)) << finding.remedy;
    }
  }
  EXPECT_TRUE(has(lines, "- Strain: ") || has(lines, "- Watch: "));
}

TEST(PlanText, WhatAKeeperWroteNeverBecomesALineOfItsOwn) {
  Screen screen(demo_with([](Plan& plan) {
    plan.name = "Mine\n! undo Gone";
    plan.notes = "one | two\n## three";
    plan.stock[0].species = "made up | name";
  }));
  const auto lines = lines_of(screen);
  EXPECT_EQ(lines[0], "# Mine ! undo Gone");
  int undos = 0, threes = 0;
  for (const std::string& line : lines) {
    undos += line.rfind("! undo", 0) == 0;
    threes += line.rfind("## three", 0) == 0;
  }
  EXPECT_EQ(undos, 1);
  EXPECT_EQ(threes, 0);
  EXPECT_TRUE(has(lines, "made up   name"));
}

TEST(PlanText, IsKeptInStepWithThePlanAndItsButtonsWork) {
  Screen screen({});
  EXPECT_EQ(platform::headless::record().plan_text, plan_text(look_at(screen.app())));
  fill(screen, "top.name", "Another name");
  EXPECT_EQ(platform::headless::record().plan_text.rfind("# Another name\n", 0), 0u);
}

}  // namespace
}  // namespace shoalwright
