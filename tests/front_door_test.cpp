// SPDX-License-Identifier: MIT
// What a program outside may rely on comes with this one header. The sample of the README is the function below.
#include "shoalwright.h"

#include <gtest/gtest.h>

using namespace shoalwright;

/// Reads a plan and says the worst that is to be known of it.
static std::string worst_finding(std::string_view plan_text) {
  const Result<Plan> plan = read_plan(plan_text);
  if (!plan) return plan.error().sentence;
  const Assessment assessment = assess(*plan, builtin_catalog());
  if (assessment.findings.empty()) return "Nothing to say.";
  const Finding& worst = assessment.findings.front();
  return std::string(name_of(worst.severity)) + ": " + worst.text + ". " + worst.remedy;
}

namespace {

constexpr const char* goldfish_in_a_bowl = R"({
  "format": "shoalwright-plan", "version": 1,
  "tank": { "shape": "cylinder", "diameter_cm": 27, "height_cm": 24 },
  "stock": [ { "species": "carassius-auratus", "count": 1, "have": 1 } ]
})";

TEST(FrontDoor, ReadsAPlanAndSaysTheWorst) {
  EXPECT_EQ(worst_finding(goldfish_in_a_bowl).rfind("harm: ", 0), 0u) << worst_finding(goldfish_in_a_bowl);
}

TEST(FrontDoor, SaysWhatIsWrongWithATextThatIsNoPlan) {
  EXPECT_EQ(
      worst_finding(R"({"format":"shoalwright-plan","version":1,"tank":{"shape":"cylinder","diameter_cm":-1,"height_cm":24}})"),
      "Expected a number above 0 and up to 2000 at /tank/diameter_cm, found -1.");
}

TEST(FrontDoor, MakesALinkAndOpensIt) {
  const Catalog catalog = builtin_catalog();
  const Plan plan = read_plan(goldfish_in_a_bowl).value();
  const Result<Plan> opened = decode_link("https://example.org/tank/" + encode_link(plan, catalog), catalog);
  ASSERT_TRUE(opened);
  EXPECT_EQ(plan_json(*opened), plan_json(plan));
}

TEST(FrontDoor, TakesARemedyUp) {
  const Catalog catalog = builtin_catalog();
  const Plan plan = read_plan(goldfish_in_a_bowl).value();
  const Assessment before = assess(plan, catalog);
  for (const Finding& finding : before.findings) {
    if (finding.edits.empty()) continue;
    const Result<Plan> mended = take_remedy(plan, finding.edits);
    ASSERT_TRUE(mended) << finding.rule << ": " << mended.error().sentence;
    EXPECT_NE(plan_json(*mended), plan_json(plan)) << finding.rule;
    return;
  }
  FAIL() << "no finding had a remedy to press";
}

}  // namespace
