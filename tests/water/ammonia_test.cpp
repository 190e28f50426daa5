// SPDX-License-Identifier: MIT
#include "water/ammonia.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "support/dice.h"
#include "units/convert.h"

namespace shoalwright {
namespace {

TEST(Ammonia, ShareIsWhatPublishedTablesPrint) {
  struct {
    double c, ph, share, off;
  } const printed[] = {
      // University of Florida IFAS, sheet FA-16, after Emerson et al. 1975
      {12, 7, 0.0022, 1e-4},
      {20, 7, 0.0039, 1e-4},
      {26, 7, 0.0060, 1e-4},
      {24, 8, 0.0502, 1e-4},
      // Hadfield & Clayton (eds.) 2021. Clinical Guide to Fish Medicine, table A2.3, after the same
      {10, 7, 0.0019, 3e-4},
      {10, 8, 0.0183, 3e-4},
      {14, 8.5, 0.0743, 3e-4},
      {18, 9, 0.2551, 8e-4},
      {0, 8, 0.0082, 3e-4},
  };
  for (const auto& row : printed) EXPECT_NEAR(nh3_share(row.c, row.ph), row.share, row.off) << row.c << ' ' << row.ph;
}

// Other constants (Bates & Pinching) and another program: PHREEQC 3 (US Geological Survey), phreeqc.dat, ionic strength 1e-4.
TEST(Ammonia, ShareAgreesWithPhreeqc) {
  EXPECT_NEAR(nh3_share(20, 7) / 0.0039032, 1, 0.02);
  EXPECT_NEAR(nh3_share(25, 8) / 0.053151, 1, 0.02);
  EXPECT_NEAR(nh3_share(28, 7.5) / 0.02142, 1, 0.02);
  EXPECT_NEAR(nh3_share(30, 8.5) / 0.20081, 1, 0.02);
}

TEST(Ammonia, WarmthAndHighPhMakeMoreNh3) {
  Dice dice(11);
  for (int i = 0; i < 500; ++i) {
    const double c = dice.real(0, 49), ph = dice.real(6, 9.9);
    EXPECT_GT(nh3_share(c + 1, ph), nh3_share(c, ph));
    EXPECT_GT(nh3_share(c, ph + 0.1), nh3_share(c, ph));
    EXPECT_GT(nh3_share(c, ph), 0);
    EXPECT_LT(nh3_share(c, ph), 1);
  }
  EXPECT_NEAR(nh3_share(25, ammonium_pka(25)), 0.5, 1e-12);
}

TEST(Ammonia, TheTotalForALimitHasJustThatMuchNh3) {
  Dice dice(12);
  for (int i = 0; i < 200; ++i) {
    const double c = dice.real(0, 50), ph = dice.real(6, 10), limit = dice.real(0.001, 2);
    EXPECT_NEAR(nh3_from_n(nh3_n_from_tan_mg_l(tan_for_nh3_mg_l(limit, c, ph), c, ph)), limit, 1e-12);
  }
}

TEST(Ammonia, CriteriaAreWhatTheAgencyPrints) {  // US EPA 2013, to two figures
  struct {
    double c, ph, trout, no_trout;
  } const acute[] = {{10, 6.5, 33, 51}, {10, 7.5, 13, 21}, {10, 8.5, 2.1, 3.3}};
  for (const auto& row : acute) {
    EXPECT_NEAR(acute_tan_with_trout_mg_l(row.c, row.ph) / row.trout, 1, 0.05) << row.ph;
    EXPECT_NEAR(acute_tan_without_trout_mg_l(row.c, row.ph) / row.no_trout, 1, 0.05) << row.ph;
  }
  struct {
    double c, ph, tan;
  } const chronic[] = {{20, 6.5, 2.1}, {20, 7, 1.9},  {20, 7.5, 1.4}, {20, 8.5, 0.35}, {30, 7, 0.99},
                       {30, 9, 0.081}, {5, 6.5, 4.9}, {5, 7.5, 3.2},  {5, 8.5, 0.8}};
  for (const auto& row : chronic) EXPECT_NEAR(chronic_tan_mg_l(row.c, row.ph) / row.tan, 1, 0.05) << row.c << ' ' << row.ph;
  EXPECT_NEAR(acute_tan_with_trout_mg_l(20, 7), 17, 0.5);  // the condition that the criteria are told for
  // In the cold, fish are the first to be harmed, and they do not mind how cold.
  EXPECT_EQ(acute_tan_without_trout_mg_l(0, 7), acute_tan_without_trout_mg_l(10, 7));
  EXPECT_GT(acute_tan_without_trout_mg_l(10, 7), acute_tan_without_trout_mg_l(11, 7));
  EXPECT_EQ(chronic_tan_mg_l(0, 7), chronic_tan_mg_l(7, 7));
}

TEST(Ammonia, CriteriaFallWithPhAndWarmthAndTheChronicIsStricter) {
  Dice dice(13);
  for (int i = 0; i < 500; ++i) {
    const double c = dice.real(0, 49), ph = dice.real(6, 9.9);
    for (const auto& tan : {acute_tan_with_trout_mg_l, acute_tan_without_trout_mg_l, chronic_tan_mg_l}) {
      EXPECT_LT(tan(c, ph + 0.1), tan(c, ph));
      EXPECT_LE(tan(c + 1, ph), tan(c, ph));
    }
    EXPECT_LT(chronic_tan_mg_l(c, ph), acute_tan_with_trout_mg_l(c, ph));
    EXPECT_LE(acute_tan_with_trout_mg_l(c, ph), acute_tan_without_trout_mg_l(c, ph) * 1.001);
  }
}

TEST(Ammonia, OutsideItsRangeTheNearerEdgeAnswers) {
  EXPECT_EQ(nh3_share(25, 4), nh3_share(25, 6));
  EXPECT_EQ(nh3_share(-3, 7), nh3_share(0, 7));
  EXPECT_EQ(chronic_tan_mg_l(99, 12), chronic_tan_mg_l(50, 10));
  EXPECT_TRUE(ammonia_valid(0, 6) && ammonia_valid(50, 10));
  EXPECT_FALSE(ammonia_valid(25, 5.9) || ammonia_valid(51, 7) || ammonia_valid(25, NAN));
  EXPECT_EQ(nh3_n_from_tan_mg_l(-1, 25, 7), 0);
  EXPECT_EQ(tan_for_nh3_mg_l(-1, 25, 7), 0);
  const double odd[] = {NAN, std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(), 1e300, -1e300};
  for (const double x : odd)
    for (const double y : odd) {
      EXPECT_GT(nh3_share(x, y), 0);
      EXPECT_GT(chronic_tan_mg_l(x, y), 0);
      EXPECT_GT(acute_tan_with_trout_mg_l(x, y), 0);
      EXPECT_GT(acute_tan_without_trout_mg_l(x, y), 0);
    }
}

}  // namespace
}  // namespace shoalwright
