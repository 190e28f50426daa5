// SPDX-License-Identifier: MIT
#include "plan/more_keys.h"

#include <gtest/gtest.h>

#include "share/link.h"
#include "share/plan_json.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const char* const with_both = R"({"format":"shoalwright-plan","version":1,
  "tank":{"shape":"rectangular","length_cm":60,"width_cm":30,"height_cm":30},
  "source":{"gh_dgh":8,"private":true,"well_m":12},"measured":{"chloride_mg_l":4.5}})";

TEST(MoreKeys, AreReadKeptAndTravel) {
  const Plan plan = read_plan(with_both).value();
  EXPECT_TRUE(is_private(plan.source));
  EXPECT_EQ(chloride_mg_l(*plan.measured), 4.5);
  const Plan again = read_plan(plan_json(plan)).value(),
             linked = decode_link(encode_link(plan, the_catalog()), the_catalog()).value();
  for (const Plan& one : {again, linked}) {
    EXPECT_TRUE(is_private(one.source));
    EXPECT_EQ(chloride_mg_l(*one.measured), 4.5);
    EXPECT_NE(one.source.other_keys.find("well_m"), std::string::npos) << "what nobody knows stays";
  }
}

TEST(MoreKeys, SetAndTakenBackLeaveNothing) {
  SourceWater source;
  Measured measured;
  set_private(source, true);
  set_chloride_mg_l(measured, 30);
  EXPECT_TRUE(is_private(source));
  EXPECT_EQ(chloride_mg_l(measured), 30);
  set_chloride_mg_l(measured, 31.5);
  EXPECT_EQ(chloride_mg_l(measured), 31.5);
  set_private(source, false);
  set_chloride_mg_l(measured, std::nullopt);
  EXPECT_EQ(source, SourceWater{});
  EXPECT_EQ(measured, Measured{});
}

TEST(MoreKeys, WhatIsNoSuchValueCountsAsNotSaid) {
  SourceWater source;
  Measured measured;
  for (const char* keys : {R"({"private":1})", R"({"private":"yes"})", R"({"private":false})", "{}", "", "no json"}) {
    source.other_keys = keys;
    EXPECT_FALSE(is_private(source)) << keys;
  }
  for (const char* keys : {R"({"chloride_mg_l":"4"})", R"({"chloride_mg_l":-1})", R"({"chloride_mg_l":null})", ""}) {
    measured.other_keys = keys;
    EXPECT_FALSE(chloride_mg_l(measured)) << keys;
  }
}

}  // namespace
}  // namespace shoalwright
