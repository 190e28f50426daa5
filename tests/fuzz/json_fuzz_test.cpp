// SPDX-License-Identifier: MIT
// Any text is a plan or is refused by one sentence, and any patch is applied or refused.
#include <gtest/gtest.h>

#include "fuzz/texts.h"
#include "plan/check.h"
#include "share/patch.h"
#include "share/plan_json.h"
#include "support/plan_files.h"
#include "support/random_plan.h"

namespace shoalwright {
namespace {

/// A plan whose canonical form reads back as itself, or one sentence.
bool is_read_or_refused(const std::string& text) {
  const Result<Plan> plan = read_plan(text);
  if (!plan) return !plan.error().sentence.empty() && plan.error().sentence.back() == '.';
  if (check_plan(*plan)) return false;
  const Result<Plan> again = read_plan(plan_json(*plan));
  return again && *again == *plan;
}

TEST(HostileText, OfTheCorpusIsReadOrRefused) {
  const std::vector<std::string> files = files_of("fuzz/corpus", ".json");
  ASSERT_GE(files.size(), 10u);
  for (const std::string& name : files) EXPECT_TRUE(is_read_or_refused(test_file("fuzz/corpus/" + name))) << name;
}

TEST(HostileText, MadeFromAPlanIsReadOrRefused) {
  Dice dice(11);
  std::vector<std::string> good;
  for (const NamedPlan& named : all_plans()) good.push_back(test_file("plans/" + named.name));
  for (std::uint64_t seed = 0; seed < 30; ++seed) good.push_back(plan_json(random_plan(seed, the_catalog())));
  int read = 0;
  for (int i = 0; i < 10000; ++i) {
    const std::string text = mutated(dice.pick(good), dice);
    ASSERT_TRUE(is_read_or_refused(text)) << text;
    if (read_plan(text)) ++read;
  }
  EXPECT_GT(read, 100);  // both ways are walked
  EXPECT_LT(read, 9900);
}

TEST(HostileText, OfRandomBytesIsRefused) {
  Dice dice(12);
  for (int i = 0; i < 20000; ++i) {
    std::string text;
    for (int left = dice.below(80); left > 0; --left) text += static_cast<char>(dice.below(256));
    ASSERT_TRUE(is_read_or_refused(text));
    ASSERT_TRUE(is_read_or_refused("{\"format\":\"shoalwright-plan\",\"version\":1,\"tank\":" + text + "}"));
  }
}

TEST(HostilePatch, IsAppliedOrRefused) {
  Dice dice(13);
  const Plan plan = read_plan(test_file("plans/riverbank.json")).value();
  const std::string patch =
      R"([{"op":"replace","path":"/tank/lid","value":false},{"op":"remove","path":"/stock/1"},{"op":"add","path":"/pieces/-",)"
      R"("value":{"kind":"stone"}},{"op":"move","from":"/stock/0","path":"/stock/1"},{"op":"copy","from":"/tank","path":"/x"}])";
  int applied = 0;
  for (int i = 0; i < 3000; ++i) {
    const Result<std::vector<PatchStep>> steps = read_patch(mutated(patch, dice));
    if (!steps) continue;
    const Result<Plan> patched = apply_patch(plan, *steps);
    if (patched) ++applied;
    ASSERT_TRUE(patched ? !check_plan(*patched) : patched.error().sentence.back() == '.');
  }
  EXPECT_GT(applied, 5);
}

}  // namespace
}  // namespace shoalwright
