// SPDX-License-Identifier: MIT
#include "water/chloride.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

// Tomasso, Simco & Davis 1979: no harm from 5 mg/L of nitrite beside 100 mg/L of sodium chloride, which holds 60.7 of chloride.
TEST(Chloride, SixteenForEachNitriteIsWhatKeptTheCatfishWell) {
  EXPECT_NEAR(chloride_for_nitrite_mg_l(5), 60.7, 1.2);
  EXPECT_NEAR(chloride_for_nitrite_mg_l(1, 1) * 16, chloride_for_nitrite_mg_l(1), 1e-12);
  EXPECT_EQ(chloride_for_nitrite_mg_l(0), 0);
  EXPECT_EQ(chloride_for_nitrite_mg_l(-1), 0);
}

}  // namespace
}  // namespace shoalwright
