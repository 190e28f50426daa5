// SPDX-License-Identifier: MIT
#include "units/power.h"

#include <gtest/gtest.h>

#include <cmath>

#include "support/dice.h"

namespace shoalwright {
namespace {

// Against the C library, whose `exp` and `pow` are good to the last place.
TEST(Power, IsTheLibrarysWithinAFewUnitsOfTheLastPlace) {
  Dice dice(3);
  for (int i = 0; i < 20000; ++i) {
    const double x = (dice.below(2000001) - 1000000.0) / 40000.0;
    EXPECT_NEAR(natural_power(x) / std::exp(x), 1, 1e-14) << x;
    const double base = std::ldexp(1 + dice.below(1 << 30) / 1.1e9, dice.whole(-20, 20)), exponent = x / 5;
    EXPECT_NEAR(raised(base, exponent) / std::pow(base, exponent), 1, 3e-14) << base << " " << exponent;
  }
}

TEST(Power, HoldsAtItsEnds) {
  EXPECT_EQ(natural_power(0), 1);
  EXPECT_EQ(raised(0, 1.5), 0);
  EXPECT_EQ(raised(1, 123.4), 1);
  EXPECT_EQ(raised(7, 0), 1);
  EXPECT_EQ(natural_power(-1000), 0);
  EXPECT_TRUE(std::isinf(natural_power(1000)));
  EXPECT_TRUE(std::isnan(raised(-1, 0.5)));
}

}  // namespace
}  // namespace shoalwright
