// SPDX-License-Identifier: MIT
#include "assess/margin.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "assess/assess.h"
#include "catalog/builtin.h"
#include "share/plan_json.h"
#include "support/margin_facts.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

const Catalog& catalog() {
  static const Catalog read = builtin_catalog();
  return read;
}

Plan riverbank() {
  std::ifstream file(std::string(SHOALWRIGHT_TESTS_DIR) + "/plans/riverbank.json");
  std::ostringstream text;
  text << file.rdbuf();
  return read_plan(text.str()).value();
}

const Tightest* entry_of(const Assessment& assessment, const char* margin) {
  for (const Tightest& entry : assessment.tightest)
    if (entry.margin == margin) return &entry;
  return nullptr;
}

/// The demo with every group at each of several sizes: roomy, full and far over.
TEST(MarginFacts, WantedAndThereIsDifferByTheMarginAndAreCountedInTheSameAnimals) {
  int looked_at = 0;
  for (const double times : {0.5, 1.0, 2.0, 6.0, 20.0}) {
    Plan plan = riverbank();
    for (Group& group : plan.stock) group.count = std::max(1, static_cast<int>(group.count * times));
    const Assessment assessment = assess(plan, catalog());
    for (const char* margin : {"lane_cm", "crowding_l_cm", "floor_cm2", "nitrate_mg_l", "dawn_mg_l"}) {
      const Tightest* entry = entry_of(assessment, margin);
      ASSERT_NE(entry, nullptr) << margin;
      const auto facts = margin_facts(plan, catalog(), assessment, margin);
      ASSERT_TRUE(facts) << margin;
      EXPECT_NEAR(facts->there_is - facts->wanted, entry->value, 1e-9) << margin;
      EXPECT_EQ(facts->animals, entry->animals) << margin << " at " << times;
      ++looked_at;
    }
  }
  EXPECT_EQ(looked_at, 25);
}

TEST(MarginFacts, TheKindInHandIsCountedWhereItTakesPart) {
  const Plan plan = riverbank();
  const Assessment assessment = assess(plan, catalog());
  const auto harlequins = margin_facts(plan, catalog(), assessment, "nitrate_mg_l");
  const auto corydoras = margin_facts(plan, catalog(), assessment, "nitrate_mg_l", "hoplisoma-sterbai");
  ASSERT_TRUE(harlequins && corydoras);
  const auto air = margin_facts(plan, catalog(), assessment, "dawn_mg_l", "trichogaster-chuna");
  ASSERT_TRUE(air);
  EXPECT_EQ(air->kind, "trichogaster-chuna");
  EXPECT_EQ(harlequins->kind, "trigonostigma-heteromorpha");
  EXPECT_EQ(corydoras->kind, "hoplisoma-sterbai");
  EXPECT_LT(*corydoras->animals, *harlequins->animals) << "the heavier fish takes more of what is spare";
  const auto floor = margin_facts(plan, catalog(), assessment, "floor_cm2", "iriatherina-werneri");
  ASSERT_TRUE(floor);
  EXPECT_EQ(floor->kind, "hoplisoma-sterbai") << "a kind that never stands on the floor is not counted there";
}

TEST(MarginFacts, TheTightestDepthLiesInTheWater) {
  const Plan plan = riverbank();
  const auto facts = margin_facts(plan, catalog(), assess(plan, catalog()), "crowding_l_cm");
  ASSERT_TRUE(facts && facts->depth_cm);
  EXPECT_GT(*facts->depth_cm, 0);
  EXPECT_LT(*facts->depth_cm, plan.tank.fill_cm);
}

TEST(MarginFacts, WaterAndWhatIsNotThereHaveNone) {
  const Plan plan = riverbank();
  const Assessment assessment = assess(plan, catalog());
  EXPECT_FALSE(margin_facts(plan, catalog(), assessment, "kh_dkh"));
  EXPECT_FALSE(margin_facts(plan, catalog(), assessment, "no such margin"));
  Plan empty = plan;
  empty.stock.clear();
  EXPECT_FALSE(margin_facts(empty, catalog(), assess(empty, catalog()), "lane_cm"));
}

}  // namespace
}  // namespace shoalwright
