// SPDX-License-Identifier: MIT
#include "units/day.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

TEST(Day, IsCountedFromTheFirstOf1970) {
  EXPECT_EQ(day_number("1970-01-01"), 0);
  EXPECT_EQ(day_number("1970-01-02"), 1);
  EXPECT_EQ(day_number("1969-12-31"), -1);
  EXPECT_EQ(day_number("2000-01-01"), 10957);  // thirty years, seven of them leap
  EXPECT_EQ(day_number("2000-03-01"), 10957 + 31 + 29);
}

TEST(Day, LeapsEveryFourthYearButThreeCenturiesInFour) {
  EXPECT_TRUE(day_number("2024-02-29"));
  EXPECT_TRUE(day_number("2000-02-29"));
  EXPECT_FALSE(day_number("2026-02-29"));
  EXPECT_FALSE(day_number("1900-02-29"));
  EXPECT_FALSE(day_number("2100-02-29"));
  EXPECT_EQ(*day_number("2400-01-01") - *day_number("2000-01-01"), 146097);  // days of four Gregorian centuries
}

TEST(Day, IsSaidWithItsWeekday) {
  EXPECT_EQ(said_day(0), "Thu 1 Jan");
  EXPECT_EQ(said_day(-1, true), "Wed 31 Dec 1969");
  EXPECT_EQ(said_day(*day_number("2026-12-05"), true), "Sat 5 Dec 2026");
  EXPECT_EQ(said_day(*day_number("2000-02-29")), "Tue 29 Feb");
  EXPECT_EQ(said_day(*day_number("1583-01-01"), true),
            "Sat 1 Jan 1583");  // ten days after the Gregorian calendar's first Christmas
}

TEST(Day, ThatIsNoneIsRefused) {
  for (const char* text : {"", "2026-13-01", "2026-00-10", "2026-04-31", "2026-12-00", "2026-1-05", "05-12-2026", "2026/12/05",
                           "2026-12-05 ", "2026-12-5x", "1582-12-31", "+026-12-05", "2026-12-05T00:00"})
    EXPECT_FALSE(day_number(text)) << text;
}

TEST(Day, ThereAndBackIsTheSame) {
  const int first = *day_number("1583-01-01"), last = *day_number("9999-12-31");
  int previous = first - 1;
  for (int day = first; day <= last; day += day % 400 == 0 ? 1 : 61) {
    const std::string text = day_text(day);
    ASSERT_EQ(day_number(text), day) << text;
    ASSERT_GT(day, previous);
    previous = day;
  }
  EXPECT_EQ(day_text(last), "9999-12-31");
  EXPECT_EQ(day_text(-1), "1969-12-31");
}

}  // namespace
}  // namespace shoalwright
