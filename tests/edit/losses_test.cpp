// SPDX-License-Identifier: MIT
#include "edit/losses.h"

#include <gtest/gtest.h>

#include "share/plan_json.h"
#include "support/builders.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const std::string kind = "trigonostigma-heteromorpha";

Plan ten(int have = 10) { return a_plan().kind(kind, 10, have).plan(); }

int left(const Plan& plan) { return plan.stock.empty() ? 0 : plan.stock.front().count; }
int open(const Plan& plan) { return open_losses(plan, the_catalog(), kind); }
Plan lose(const Plan& plan, int count, const char* day = "2026-12-01") {
  return with_loss(plan, the_catalog(), kind, count, day);
}

TEST(Losses, TakeThoseThatSwimAndAreKeptInTheLog) {
  const Plan six = lose(lose(ten(), 3), 1);
  EXPECT_EQ(left(six), 6);
  EXPECT_EQ(six.stock.front().have, 6);
  EXPECT_EQ(open(six), 4);
  EXPECT_EQ(six.log_json, R"([{"date":"2026-12-01","lost":[{"count":4,"species":"trigonostigma-heteromorpha"}]}])");
  const Plan next_day = lose(six, 1, "2026-12-03");
  EXPECT_EQ(open(next_day), 5);
  const Result<Plan> read = read_plan(plan_json(next_day));
  ASSERT_TRUE(read);
  EXPECT_EQ(open(*read), 5) << "they travel in the file";
  EXPECT_EQ(open_losses(next_day, the_catalog(), "Rasbora heteromorpha"), 5) << "by any name of the kind";
}

TEST(Losses, AreNoMoreThanSwimAndAreTakenBackNoFurtherThanTheyGo) {
  EXPECT_EQ(left(lose(ten(4), 7)), 6) << "only four swim";
  EXPECT_EQ(lose(ten(0), 1), ten(0));
  const Plan three = lose(ten(), 3);
  EXPECT_EQ(lose(three, -3), ten());
  EXPECT_EQ(lose(three, -9), ten());
  EXPECT_EQ(open(lose(three, -1)), 2);
  EXPECT_EQ(left(lose(three, -1)), 8);
}

TEST(Losses, OfAllTakeTheGroupOut) {
  const Plan none = lose(ten(), 10);
  EXPECT_TRUE(none.stock.empty());
  EXPECT_EQ(open(none), 0);
  EXPECT_NE(none.log_json.find("taken-out"), std::string::npos);
}

TEST(Losses, AreAnsweredOnce) {
  const Plan six = lose(ten(), 4);
  const Plan topped = with_answer(six, the_catalog(), kind, LossAnswer::top_up);
  EXPECT_EQ(left(topped), 10);
  EXPECT_EQ(topped.stock.front().have, 6) << "the new ones are still to come";
  EXPECT_EQ(open(topped), 0);
  EXPECT_EQ(with_answer(topped, the_catalog(), kind, LossAnswer::top_up), topped);

  const Plan out = with_answer(six, the_catalog(), kind, LossAnswer::run_out);
  EXPECT_EQ(left(out), 6);
  EXPECT_EQ(open(out), 0);
  EXPECT_EQ(open(lose(out, 1, "2026-12-09")), 1) << "a later loss is asked about anew";

  EXPECT_TRUE(with_answer(six, the_catalog(), kind, LossAnswer::re_home).stock.empty());
}

TEST(Losses, LeaveAloneWhatElseTheLogHas) {
  Plan plan = ten();
  plan.log_json =
      R"([{"date":"2026-11-20","lost":[{"count":1,"species":"danio-rerio"},7],"nitrate_mg_l":18,"note":"x"},"odd",{"date":"2026-12-01","kh":3}])";
  const Plan back = lose(lose(plan, 2), -2);
  EXPECT_EQ(left(back), 10);
  EXPECT_NE(back.log_json.find("\"nitrate_mg_l\":18"), std::string::npos);
  EXPECT_NE(back.log_json.find("\"odd\""), std::string::npos);
  EXPECT_NE(back.log_json.find("\"kh\":3"), std::string::npos);
  EXPECT_EQ(open_losses(back, the_catalog(), "danio-rerio"), 1);
  plan.log_json = "no list";
  EXPECT_EQ(open(plan), 0);
}

TEST(Losses, HaveNames) {
  const Plan six = lose(ten(), 4);
  EXPECT_EQ(name_of_loss(ten(), the_catalog(), kind, 4), "Lost 4 harlequin rasboras");
  EXPECT_EQ(name_of(LossAnswer::top_up, six, the_catalog(), kind), "Top up to 10 harlequin rasboras");
  EXPECT_EQ(name_of(LossAnswer::run_out, six, the_catalog(), kind), "Let 6 harlequin rasboras run out");
  EXPECT_EQ(name_of(LossAnswer::re_home, six, the_catalog(), kind), "Re-home 6 harlequin rasboras");
}

}  // namespace
}  // namespace shoalwright
