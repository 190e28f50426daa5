// SPDX-License-Identifier: MIT
// The page's first file has some of the cards and some of the rules: what it says about the demo must be what all of them say.
#include <gtest/gtest.h>

#include "assess/assess.h"
#include "catalog/builtin.h"
#include "plan/plan.h"
#include "rules/facts.h"
#include "share/plan_json.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

TEST(FirstLook, SaysOfTheDemoWhatAllRulesSay) {
  const Catalog first = first_catalog(), whole = builtin_catalog();
  ASSERT_FALSE(first.whole);
  ASSERT_TRUE(whole.whole);
  ASSERT_LT(rules_with(first).size(), rules_with(whole).size());
  const Result<Plan> demo = read_plan(test_file("plans/riverbank.json"));
  ASSERT_TRUE(demo);
  EXPECT_TRUE(assess(*demo, first) == assess(*demo, whole));
}

TEST(FirstLook, ItsRulesAreTheBeginningOfAll) {
  const Catalog first = first_catalog();
  EXPECT_EQ(rules_with(first).data(), all_rules().data());
  EXPECT_GT(rules_with(first).size(), 10u);
}

}  // namespace
}  // namespace shoalwright
