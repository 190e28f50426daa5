// SPDX-License-Identifier: MIT
#include "plan/assumed.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

using Pointers = std::vector<std::string>;

Plan assuming(Pointers pointers) {
  Plan plan;
  plan.tank.length_cm = 60;
  plan.tank.width_cm = 30;
  plan.assumed = std::move(pointers);
  return plan;
}

TEST(Decide, TakesTheValueAndAllBelowItOut) {
  Plan plan = assuming({"/gear/filter", "/gear/heater_w", "/source/ph"});
  decide(plan, "/gear");
  EXPECT_EQ(plan.assumed, Pointers{"/source/ph"});
}

TEST(Decide, LeavesTheOtherPartsOfAnAssumedWholeAssumed) {
  Plan plan = assuming({"/upkeep"});
  decide(plan, "/upkeep/every_days");
  EXPECT_EQ(plan.assumed, Pointers{"/upkeep/change_fraction"});
  decide(plan, "/upkeep/change_fraction");
  EXPECT_TRUE(plan.assumed.empty());
}

TEST(Decide, BelowAPartKeepsNothingOfThatPart) {
  Plan plan = assuming({"/gear"});
  decide(plan, "/gear/filter/flow_l_h");
  EXPECT_EQ(plan.assumed, (Pointers{"/gear/heater_w", "/gear/surface"}));
}

TEST(Decide, OneEntryOfAListSaysNothingOfTheOthers) {
  Plan plan = assuming({"/stock"});
  decide(plan, "/stock/0/count");
  EXPECT_EQ(plan.assumed, Pointers{"/stock"});
}

TEST(Decide, OfANeighbourWithTheSameBeginningChangesNothing) {
  Plan plan = assuming({"/stock/1", "/stock/10/count"});
  decide(plan, "/stock/1");
  EXPECT_EQ(plan.assumed, Pointers{"/stock/10/count"});
}

TEST(Assume, KeepsASet) {
  Plan plan;
  for (const char* pointer : {"/tank/lid", "/gear", "/tank/lid"}) assume(plan, pointer);
  EXPECT_EQ(plan.assumed, (Pointers{"/gear", "/tank/lid"}));
}

TEST(ListEntries, TakeTheirPointersAlong) {
  Plan plan = assuming({"/pieces/0", "/pieces/1/length_cm", "/pieces/12/kind", "/pieces/x", "/stock/3"});
  plan.fixed = {"/pieces/2"};
  forget_entry(plan, "/pieces", 1);
  EXPECT_EQ(plan.assumed, (Pointers{"/pieces/0", "/pieces/11/kind", "/pieces/x", "/stock/3"}));
  EXPECT_EQ(plan.fixed, Pointers{"/pieces/1"});
  make_room_for_entry(plan, "/pieces", 1);
  EXPECT_EQ(plan.assumed, (Pointers{"/pieces/0", "/pieces/12/kind", "/pieces/x", "/stock/3"}));
  EXPECT_EQ(plan.fixed, Pointers{"/pieces/2"});
}

}  // namespace
}  // namespace shoalwright
