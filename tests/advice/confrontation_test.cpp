// SPDX-License-Identifier: MIT
#include "advice/confrontation.h"

#include <gtest/gtest.h>

#include "assess/assess.h"
#include "support/builders.h"
#include "support/plan_files.h"
#include "support/quarrels.h"

namespace shoalwright {
namespace {

struct Told {
  std::vector<Kept> stock;
  std::optional<Confrontation> found;
};

Told told(const Plan& plan, const char* rule) {
  Told told{.stock = resolve_stock(plan, the_catalog()), .found = {}};
  const Assessment assessment = assess(plan, the_catalog());
  if (const Finding* finding = finding_of(assessment, rule)) told.found = confrontation_of(*finding, told.stock);
  return told;
}

TEST(Confrontation, OfAMouthHasTheFiguresThatTheRuleJudges) {
  const Told one = told(a_plan().tank(118, 48, 58).kind("pterophyllum-scalare", 4).kind("paracheirodon-innesi", 12), "predation");
  ASSERT_TRUE(one.found);
  EXPECT_EQ(one.found->doer->id, "pterophyllum-scalare");
  EXPECT_EQ(one.found->other->id, "paracheirodon-innesi");
  // 13 cm with a mouth of 0.12 of its length; a neon of 4 cm, a quarter as deep as long (class figures, common practice).
  ASSERT_TRUE(one.found->opens_cm && one.found->takes_cm && one.found->deep_cm);
  EXPECT_NEAR(*one.found->opens_cm, 1.56, 1e-9);
  EXPECT_NEAR(*one.found->takes_cm, 0.33 * 13, 1e-9);
  EXPECT_LT(*one.found->deep_cm, *one.found->opens_cm);
}

TEST(Confrontation, OfFinsAndTempersHasNoMouth) {
  const Told fins =
      told(a_plan().tank(118, 48, 58).kind("puntigrus-tetrazona", 8).kind("pterophyllum-scalare", 4), "fin-nipping");
  ASSERT_TRUE(fins.found);
  EXPECT_EQ(fins.found->doer->id, "puntigrus-tetrazona");
  EXPECT_EQ(fins.found->other->id, "pterophyllum-scalare");
  EXPECT_FALSE(fins.found->opens_cm);
  const Told rivals = told(a_plan().kind("betta-splendens", 1).sexes(1, 0).kind("poecilia-reticulata", 6), "temperament");
  ASSERT_TRUE(rivals.found);
  EXPECT_EQ(rivals.found->doer->id, "betta-splendens");
}

TEST(Confrontation, EveryFindingAboutMouthsFinsAndTempersOfTwoHasOneAndOthersHaveNone) {
  int seen = 0;
  std::vector<NamedPlan> plans = all_plans();
  for (NamedPlan& named : quarrels()) plans.push_back(std::move(named));
  for (const NamedPlan& named : plans) {
    const std::vector<Kept> stock = resolve_stock(named.plan, the_catalog());
    for (const Finding& finding : assess(named.plan, the_catalog()).findings) {
      const std::optional<Confrontation> found = confrontation_of(finding, stock);
      const bool bodies = finding.rule == "predation" || finding.rule == "fin-nipping";
      if (bodies && finding.text.find("bought small") == std::string::npos) {
        EXPECT_TRUE(found) << named.name << ": " << finding.text;
      }
      if (finding.species.size() < 2) {
        EXPECT_FALSE(found) << named.name << ": " << finding.text;
      }
      if (!found) continue;
      ++seen;
      for (const Species* one : {found->doer, found->other})
        EXPECT_NE(std::find(finding.species.begin(), finding.species.end(), one->id), finding.species.end()) << finding.text;
      EXPECT_NE(found->doer, found->other);
    }
  }
  EXPECT_GT(seen, 8);
}

}  // namespace
}  // namespace shoalwright
