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

// NIST SP 811, appendix B.8, from memory: printed factors, to the digits printed there.
TEST(Convert, AgreesWithThePrintedFactors) {
  EXPECT_EQ(cm_from_in(1), 2.54);
  EXPECT_EQ(kg_from_lb(1), 0.45359237);
  EXPECT_NEAR(kpa_from_psf(1), 0.04788026, 5e-9);
  EXPECT_DOUBLE_EQ(c_difference_from_f(9), 5);
}

// Atomic weights: IUPAC, abridged standard values. A degree of hardness is 10 mg of calcium oxide in a litre.
TEST(Convert, ADegreeOfHardnessIsTenMilligramsOfLime) {
  EXPECT_NEAR(mmol_l_from_degrees(1) * 56.077, 10, 1e-9);
  EXPECT_NEAR(mg_l_caco3_from_degrees(1), 17.848, 0.0005);
  EXPECT_NEAR(mg_l_hco3_from_degrees(1), 21.762, 0.0005);
}

TEST(Convert, NitrogenIsTheSameShareOfEachIonAsItsWeight) {
  EXPECT_NEAR(no3_from_n(1), 62.004 / 14.007, 1e-12);
  EXPECT_NEAR(no2_from_n(1), 46.005 / 14.007, 1e-12);
  EXPECT_NEAR(nh3_from_n(1), 17.031 / 14.007, 1e-12);
  EXPECT_NEAR(nh4_from_n(1), 18.039 / 14.007, 1e-12);
}

TEST(Convert, BothScalesMeetAtMinusForty) { EXPECT_DOUBLE_EQ(f_from_c(-40), -40); }

TEST(Convert, ThereAndBackIsTheSame) {
  for (double v : {-40.0, 0.1, 7.3, 250.0}) {
    EXPECT_NEAR(cm_from_in(in_from_cm(v)), v, 1e-12);
    EXPECT_NEAR(l_from_us_gal(us_gal_from_l(v)), v, 1e-12);
    EXPECT_NEAR(c_from_f(f_from_c(v)), v, 1e-12);
    EXPECT_NEAR(c_difference_from_f(f_difference_from_c(v)), v, 1e-12);
    EXPECT_NEAR(kg_from_lb(lb_from_kg(v)), v, 1e-12);
    EXPECT_NEAR(kpa_from_psf(psf_from_kpa(v)), v, 1e-12);
    EXPECT_NEAR(mmol_l_from_degrees(degrees_from_mmol_l(v)), v, 1e-12);
    EXPECT_NEAR(meq_l_from_degrees(degrees_from_meq_l(v)), v, 1e-12);
    EXPECT_NEAR(mg_l_caco3_from_degrees(degrees_from_mg_l_caco3(v)), v, 1e-12);
    EXPECT_NEAR(no3_from_n(n_from_no3(v)), v, 1e-12);
    EXPECT_NEAR(no2_from_n(n_from_no2(v)), v, 1e-12);
    EXPECT_NEAR(nh3_from_n(n_from_nh3(v)), v, 1e-12);
    EXPECT_NEAR(nh4_from_n(n_from_nh4(v)), v, 1e-12);
  }
}

}  // namespace
}  // namespace shoalwright
