// SPDX-License-Identifier: MIT
#include "units/convert.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

TEST(Convert, UsGallonIsThePublishedNumberOfLitres) {
  EXPECT_DOUBLE_EQ(l_from_us_gal(1), 3.785411784);  // NIST SP 811, appendix B.8, from memory
}

TEST(Convert, WaterFreezesAndBoilsWhereBothScalesSay) {
  EXPECT_DOUBLE_EQ(f_from_c(0), 32);
  EXPECT_DOUBLE_EQ(f_from_c(100), 212);
}

TEST(Convert, ThereAndBackIsTheSame) {
  for (double v : {-40.0, 0.1, 7.3, 250.0}) {
    EXPECT_NEAR(cm_from_in(in_from_cm(v)), v, 1e-12);
    EXPECT_NEAR(l_from_us_gal(us_gal_from_l(v)), v, 1e-12);
    EXPECT_NEAR(c_from_f(f_from_c(v)), v, 1e-12);
  }
}

}  // namespace
}  // namespace shoalwright
