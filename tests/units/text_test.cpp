// SPDX-License-Identifier: MIT
#include "units/text.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace shoalwright {
namespace {

TEST(NumberText, HasJustTheDecimalsThatWereAskedFor) {
  EXPECT_EQ(fixed_text(25, 0), "25");
  EXPECT_EQ(fixed_text(25, 2), "25.00");
  EXPECT_EQ(fixed_text(0.05, 1), "0.1");
  EXPECT_EQ(fixed_text(0.04, 1), "0.0");
  EXPECT_EQ(fixed_text(-0.26, 1), "-0.3");
  EXPECT_EQ(fixed_text(1234567.89, 1), "1234567.9");
  EXPECT_EQ(fixed_text(0.123456789012, 9), "0.123456789");
  EXPECT_EQ(fixed_text(0.5, 40), "0.500000000");
  EXPECT_EQ(fixed_text(2.5, -3), "3");
}

TEST(NumberText, RoundsHalvesAwayFromZero) {
  EXPECT_EQ(fixed_text(0.5, 0), "1");
  EXPECT_EQ(fixed_text(2.5, 0), "3");
  EXPECT_EQ(fixed_text(-2.5, 0), "-3");
}

TEST(NumberText, NeverSaysMinusZero) {
  EXPECT_EQ(fixed_text(-0.0, 0), "0");
  EXPECT_EQ(fixed_text(-0.001, 2), "0.00");
  EXPECT_EQ(short_text(-0.001, 2), "0");
  EXPECT_EQ(known_text(-0.2, 1), "0");
}

TEST(NumberText, SaysADashForWhatIsNoNumber) {
  EXPECT_EQ(fixed_text(NAN, 1), "-");
  EXPECT_EQ(fixed_text(INFINITY, 1), "-");
  EXPECT_EQ(known_text(-INFINITY, 1), "-");
  EXPECT_EQ(significant_text(NAN, 2), "-");
}

TEST(NumberText, HasNoExponentHoweverLarge) {
  EXPECT_EQ(fixed_text(1e18, 3), "1000000000000000000");
  EXPECT_EQ(fixed_text(std::numeric_limits<double>::max(), 2).find('e'), std::string::npos);
}

TEST(NumberText, ShortTextDropsEmptyDecimals) {
  EXPECT_EQ(short_text(25, 1), "25");
  EXPECT_EQ(short_text(25.5, 2), "25.5");
  EXPECT_EQ(short_text(100, 0), "100");
}

TEST(NumberText, SaysNoMoreDigitsThanAreKnown) {
  EXPECT_EQ(known_text(1.0858, 0.1), "1.1");
  EXPECT_EQ(known_text(147.2, 5), "145");
  EXPECT_EQ(known_text(147.6, 5), "150");
  EXPECT_EQ(known_text(7.3, 0.25), "7.25");
  EXPECT_EQ(known_text(7.31, 0.2), "7.4");
  EXPECT_EQ(known_text(0.0123, 0.005), "0.010");
  EXPECT_EQ(known_text(26.2, 2.5), "25.0");
  EXPECT_EQ(known_text(1234, 100), "1200");
  EXPECT_EQ(known_text(1234, 25), "1225");
}

TEST(NumberText, AStepThatIsNoneCountsAsOne) {
  EXPECT_EQ(known_text(7.31, 0), "7");
  EXPECT_EQ(known_text(7.31, -1), "7");
  EXPECT_EQ(known_text(7.31, 0.3), "7");
  EXPECT_EQ(known_text(7.31, NAN), "7");
}

TEST(NumberText, KeepsSoManySignificantDigits) {
  EXPECT_EQ(significant_text(1.0858, 2), "1.1");
  EXPECT_EQ(significant_text(14832, 2), "15000");
  EXPECT_EQ(significant_text(9.97, 2), "10");
  EXPECT_EQ(significant_text(0.00972, 1), "0.01");
  EXPECT_EQ(significant_text(0.0123, 2), "0.012");
  EXPECT_EQ(significant_text(-3.14159, 3), "-3.14");
  EXPECT_EQ(significant_text(0, 3), "0");
}

}  // namespace
}  // namespace shoalwright
