// SPDX-License-Identifier: MIT
#include "advice/years.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "assess/assess.h"
#include "plan/check.h"
#include "support/builders.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

bool found(const Plan& plan, const std::string& rule) {
  const std::vector<Finding> all = assess(plan, catalog()).findings;
  return std::any_of(all.begin(), all.end(), [&](const Finding& one) { return one.rule == rule; });
}

TEST(Years, EveryKindGrowsFromItsSizeInTheShopToTheLengthOfItsCard) {
  for (const Species& one : catalog().species) {
    const double bought = length_at(one, Age::bought), later = length_at(one, Age::half_year);
    EXPECT_GT(bought, 0) << one.id;
    EXPECT_LE(bought, later) << one.id;
    EXPECT_LE(later, one.size.adult_tl_cm) << one.id;
    if (one.size.sold_cm && *one.size.sold_cm < one.size.adult_tl_cm) {
      EXPECT_DOUBLE_EQ(bought, *one.size.sold_cm) << one.id;
      EXPECT_LT(bought, later) << one.id;
    }
    EXPECT_EQ(length_at(one, Age::grown), one.size.adult_tl_cm);
    EXPECT_EQ(length_at(one, Age::old), one.size.adult_tl_cm);
  }
  // Small kinds are nearly grown after half a year, large ones are not.
  const auto share = [](const char* id) {
    const Species& one = *find_species(catalog(), id);
    return length_at(one, Age::half_year) / one.size.adult_tl_cm;
  };
  EXPECT_GT(share("danio-rerio"), 0.9);
  EXPECT_LT(share("hypostomus-plecostomus"), 0.6);
}

TEST(Years, TenThatGrowOldAreSixAndTooFewThen) {
  const Plan plan = a_plan().planted(Planting::medium).kind("danio-rerio", 9).plan();
  Plan ten = plan;
  ten.stock[0].count = 10;
  EXPECT_EQ(at_age(ten, catalog(), Age::old).stock[0].count, 6);
  Plan pair = a_plan().kind("danio-rerio", 2).plan();
  pair.stock[0].males = pair.stock[0].females = 1;
  pair.stock[0].have = 2;
  const Group left = at_age(pair, catalog(), Age::old).stock[0];
  EXPECT_EQ(left.count, 1);
  EXPECT_EQ(left.have, 1);
  EXPECT_FALSE(left.males);
  EXPECT_FALSE(found(plan, "group-size"));
  EXPECT_TRUE(found(at_age(plan, catalog(), Age::old), "group-size"));
}

TEST(Years, WhatIsBoughtSmallAsksForLessThanWhenItIsGrown) {
  const Plan plan = a_plan().planted(Planting::light).kind("carassius-auratus", 2).plan();
  const Plan young = at_age(plan, catalog(), Age::bought);
  const Assessment now = assess(plan, catalog()), then = assess(young, catalog());
  EXPECT_LT(*then.load.feed_g_d, *now.load.feed_g_d / 2);
  EXPECT_LT(*then.room.layers[1].crowding, *now.room.layers[1].crowding / 2);
  EXPECT_LT(*then.air.demand_mg_h, *now.air.demand_mg_h);
}

TEST(Years, AnyPlanAtAnyAgeIsAPlanAndGrownIsThePlanItself) {
  for (const NamedPlan& named : all_plans()) {
    EXPECT_EQ(at_age(named.plan, catalog(), Age::grown), named.plan) << named.name;
    for (const Age age : {Age::bought, Age::half_year, Age::old}) {
      const Plan then = at_age(named.plan, catalog(), age);
      EXPECT_EQ(then.stock.size(), named.plan.stock.size()) << named.name;
      assess(then, catalog());
    }
  }
}

}  // namespace
}  // namespace shoalwright
