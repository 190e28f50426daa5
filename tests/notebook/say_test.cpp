// SPDX-License-Identifier: MIT
#include "notebook/say.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

TEST(Say, JoinsAsASentenceDoes) {
  EXPECT_EQ(joined({}), "");
  EXPECT_EQ(joined({"1"}), "1");
  EXPECT_EQ(joined({"1", "2"}), "1 and 2");
  EXPECT_EQ(joined({"1", "2", "3"}), "1, 2 and 3");
}

TEST(Say, PutsASpaceBetweenNumberAndUnit) {
  EXPECT_EQ(amount(24.0, 1, "°C"), "24 °C");
  EXPECT_EQ(amount(7.46, 1, ""), "7.5");
  EXPECT_EQ(amount(-0.04, 1, "cm"), "0 cm");
}

TEST(Say, WritesARangeWithTo) {
  EXPECT_EQ(span_of(4, 12.5, 1, "°dH"), "4 to 12.5 °dH");
  EXPECT_EQ(span_of(7.01, 7.04, 1, ""), "7");
}

TEST(Say, WritesAShareAsAWholePercentage) {
  EXPECT_EQ(percent(0.3), "30 %");
  EXPECT_EQ(percent(0.426), "43 %");
}

TEST(Say, BeginsASentenceWithACapital) {
  EXPECT_EQ(capital("harlequin rasbora"), "Harlequin rasbora");
  EXPECT_EQ(capital(""), "");
  EXPECT_EQ(capital("pH"), "PH");  // callers keep pH away from the beginning
}

}  // namespace
}  // namespace shoalwright
