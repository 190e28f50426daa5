// SPDX-License-Identifier: MIT
#include "water/reach.h"

#include <gtest/gtest.h>

#include "support/dice.h"
#include "water/carbonate.h"

namespace shoalwright {
namespace {

Windows windows(Range ph, Range kh_dkh) {
  Windows all;
  all.temperature_c.now = 25;
  all.ph.tolerated = ph;
  all.kh_dkh.tolerated = kh_dkh;
  return all;
}

// PHREEQC 3 (US Geological Survey), NaHCO3 water at 25 degrees C; kits read to 0.2 of pH at best.
TEST(Reach, AgreesWithPhreeqcAtBothEnds) {
  const Range ph = reachable_ph(25, {2, 8}, {}, 20);
  EXPECT_NEAR(ph.low, 6.53, 0.02);   // carbonate hardness 2, CO2 20 mg/L
  EXPECT_NEAR(ph.high, 8.61, 0.03);  // 8, in balance with 420 ppm
}

TEST(Reach, SoftAcidWaterIsReachedWithSoftWaterOnly) {
  EXPECT_EQ(carbonate_reach_of(windows({5.5, 6.5}, {0, 4}), safe_co2_mg_l).reachable, true);
  EXPECT_EQ(carbonate_reach_of(windows({5.5, 6.5}, {8, 15}), safe_co2_mg_l).reachable, false) << "acid while hardness is high";
  EXPECT_EQ(carbonate_reach_of(windows({8.8, 9.2}, {1, 2}), safe_co2_mg_l).reachable, false) << "no air makes it so alkaline";
}

TEST(Reach, WhatIsNotKnownIsNotJudged) {
  EXPECT_FALSE(carbonate_reach_of({}, safe_co2_mg_l).reachable);
  Windows without = windows({6, 7}, {2, 6});
  without.temperature_c.now = {};
  EXPECT_FALSE(carbonate_reach_of(without, safe_co2_mg_l).reachable);
  EXPECT_FALSE(carbonate_reach_of(windows({6, 7}, {2, 6}), safe_co2_mg_l).co2_mg_l);
}

TEST(Reach, IsSoExactlyWhereSomeHardnessOfTheWindowHasSomePhOfTheWindow) {
  Dice dice(5);
  int reachable = 0;
  for (int round = 0; round < 300; ++round) {
    const double low = dice.whole(50, 85) / 10.0, kh = dice.whole(0, 20);
    const Windows all = windows({low, low + dice.whole(1, 15) / 10.0}, {kh, kh + dice.whole(0, 6)});
    bool some = false;
    for (double k = all.kh_dkh.tolerated->low; k <= all.kh_dkh.tolerated->high + 1e-9; k += 0.5) {
      const double sourest = ph_with_co2({25, k, {}}, safe_co2_mg_l), airy = ph_in_air({25, k, {}}, co2_outdoors_atm);
      some = some || (sourest <= all.ph.tolerated->high && airy >= all.ph.tolerated->low);
    }
    EXPECT_EQ(carbonate_reach_of(all, safe_co2_mg_l).reachable, some) << low << " " << kh;
    reachable += some;
  }
  EXPECT_GT(reachable, 50);
  EXPECT_LT(reachable, 280);
}

}  // namespace
}  // namespace shoalwright
