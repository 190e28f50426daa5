// SPDX-License-Identifier: MIT
#include "units/shortest.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "support/dice.h"

namespace shoalwright {
namespace {

TEST(Shortest, WritesWhatAKeeperWouldType) {
  EXPECT_EQ(shortest(88.4), "88.4");
  EXPECT_EQ(shortest(0.3), "0.3");
  EXPECT_EQ(shortest(-0.07), "-0.07");
  EXPECT_EQ(shortest(7), "7");
  EXPECT_EQ(shortest(1200), "1200");
  EXPECT_EQ(shortest(0.1 + 0.2), "0.30000000000000004");
}

TEST(Shortest, TakesAnExponentOnlyWhereFiguresWouldRunOn) {
  EXPECT_EQ(shortest(1e16), "10000000000000000");
  EXPECT_EQ(shortest(1e17), "1e+17");
  EXPECT_EQ(shortest(1e-6), "0.000001");
  EXPECT_EQ(shortest(1.5e-7), "1.5e-7");
  EXPECT_EQ(shortest(-2.5e30), "-2.5e+30");
}

TEST(Shortest, HasNoMinusZeroAndNoWordForWhatIsNoNumber) {
  EXPECT_EQ(shortest(-0.0), "0");
  EXPECT_EQ(shortest(std::nan("")), "null");
  EXPECT_EQ(shortest(INFINITY), "null");
}

int figures_of(const std::string& text) {
  std::string figures;
  for (const char c : text.substr(0, text.find('e')))
    if (c >= '0' && c <= '9') figures += c;
  figures.erase(0, figures.find_first_not_of('0'));
  return static_cast<int>(figures.find_last_not_of('0') + 1);
}

TEST(Shortest, WritesEveryShortDecimalAsItWasTyped) {
  Dice dice(11);
  for (int i = 0; i < 20000; ++i) {
    const int decimals = dice.whole(0, 9);
    const long long figures = dice.below(1 << 30) + 1;
    char typed[64];
    std::snprintf(typed, sizeof typed, "%.*f", decimals, static_cast<double>(figures) / std::pow(10, decimals));
    const double value = std::strtod(typed, nullptr);
    std::string plain = typed;
    if (plain.find('.') != std::string::npos) plain.erase(plain.find_last_not_of('0') + 1);
    if (plain.back() == '.') plain.pop_back();
    if (value < 1e-6) continue;
    ASSERT_EQ(shortest(value), plain);
  }
}

TEST(Shortest, ReadsBackAsTheSameDoubleAndOneFigureLessDoesNot) {
  Dice dice(7);
  for (int i = 0; i < 4000; ++i) {
    const double value = std::ldexp(1.0 + dice.below(1 << 30) / 3.0e8, dice.whole(-200, 200)) * (dice.percent(50) ? 1 : -1);
    const std::string text = shortest(value);
    ASSERT_EQ(std::strtod(text.c_str(), nullptr), value) << text;
    const int figures = figures_of(text);
    if (figures < 2) continue;
    char less[64];
    std::snprintf(less, sizeof less, "%.*e", figures - 2, value);
    ASSERT_NE(std::strtod(less, nullptr), value) << text << " could be " << less;
  }
}

}  // namespace
}  // namespace shoalwright
