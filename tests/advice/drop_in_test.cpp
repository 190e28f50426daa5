// SPDX-License-Identifier: MIT
#include "advice/drop_in.h"

#include <gtest/gtest.h>

#include "edit/command.h"
#include "share/plan_json.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

Plan riverbank() { return read_plan(test_file("plans/riverbank.json")).value(); }
const Species& kind(const char* id) { return *find_species(the_catalog(), id); }

TEST(DropIn, SaysWhatALargeFishWouldRaiseWithItsRemedy) {
  const Plan plan = riverbank();
  const Assessment now = assess(plan, the_catalog());
  const std::vector<Finding> raised = raised_by_dropping(plan, the_catalog(), kind("pterophyllum-scalare"), 6, now);
  ASSERT_FALSE(raised.empty());
  EXPECT_TRUE(
      std::is_sorted(raised.begin(), raised.end(), [](const Finding& a, const Finding& b) { return a.severity < b.severity; }));
  EXPECT_LE(raised.front().severity, Severity::strain);
  for (const Finding& finding : raised)
    for (const Finding& before : now.findings) EXPECT_FALSE(before == finding) << finding.rule << " is there already";
}

TEST(DropIn, WhatIsThereAlreadyIsNotRaisedAgain) {
  Plan plan = riverbank();
  plan = apply(plan, AddGroup{.species = "pterophyllum-scalare", .count = 6}, the_catalog());
  const Assessment now = assess(plan, the_catalog());
  const std::vector<Finding> raised = raised_by_dropping(plan, the_catalog(), kind("pterophyllum-scalare"), 1, now);
  for (const Finding& finding : raised) EXPECT_NE(finding.rule, "tank-height");
  EXPECT_TRUE(raised_by_dropping(plan, the_catalog(), kind("danio-rerio"), 0, now).empty());
}

}  // namespace
}  // namespace shoalwright
