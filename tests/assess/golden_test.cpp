// SPDX-License-Identifier: MIT
// What each plan of tests/plans is told today: findings in their order, margins rounded to what is shown, the largest counts. A
// change here is meant or it is a mistake: run core_tests with SHOALWRIGHT_WRITE_GOLDEN=1 to take it over, and look at the
// difference.
#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>

#include "notebook/say.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

std::string told_of(const Plan& plan) {
  const Assessment assessment = assess(plan, the_catalog());
  std::string text;
  for (const Finding& finding : assessment.findings) {
    text += std::string(name_of(finding.severity)) + " " + finding.rule;
    for (const std::string& id : finding.species) text += " " + id;
    text += "\n";
  }
  for (const Tightest& entry : assessment.tightest) {
    const int decimals = entry.margin == "ammonia_nh3_mg_l"                                                           ? 2
                         : entry.margin == "floor_cm2" || entry.margin == "nitrate_mg_l" || entry.margin == "lane_cm" ? 0
                                                                                                                      : 1;
    text += "margin " + entry.margin + " " + amount(entry.value, decimals, entry.unit);
    if (entry.animals) text += ", " + std::to_string(*entry.animals) + " animals";
    for (const std::string& id : entry.set_by) text += " " + id;
    text += "\n";
  }
  for (const GroupRoom& group : assessment.room.groups)
    text += "largest " + group.species + " " + (group.largest_count ? std::to_string(*group.largest_count) : "not known") + " " +
            group.stopped_by + "\n";
  return text;
}

TEST(Golden, EveryPlanIsToldWhatItWasToldBefore) {
  const bool write = std::getenv("SHOALWRIGHT_WRITE_GOLDEN") != nullptr;
  for (const NamedPlan& named : all_plans()) {
    const std::string path = "assess/golden/" + named.name.substr(0, named.name.find('.')) + ".txt", told = told_of(named.plan);
    if (write) {
      std::FILE* file = std::fopen((std::string(SHOALWRIGHT_TESTS_DIR) + "/" + path).c_str(), "wb");
      ASSERT_NE(file, nullptr) << path;
      std::fwrite(told.data(), 1, told.size(), file);
      std::fclose(file);
    }
    EXPECT_EQ(told, test_file(path)) << named.name << ": see the head of this file";
  }
}

}  // namespace
}  // namespace shoalwright
