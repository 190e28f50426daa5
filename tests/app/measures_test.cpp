// SPDX-License-Identifier: MIT
#include "app/measures.h"

#include <gtest/gtest.h>

#include "app/retold.h"

namespace shoalwright {
namespace {

constexpr Measures metric, us{.us = true};

// Thompson, A. & Taylor, B.N. 2008. Guide for the use of the SI. NIST Special Publication 811, appendix B: the inch, the US
// gallon and the pound, and the Fahrenheit scale (from memory).
TEST(Measures, SayWhatTheKeeperReads) {
  EXPECT_EQ(metric.temperature(25), "25 °C");
  EXPECT_EQ(us.temperature(25), "77 °F");
  EXPECT_EQ(metric.temperatures(24, 27), "24 to 27 °C");
  EXPECT_EQ(us.temperatures(24, 27), "75 to 81 °F");
  EXPECT_EQ(metric.length(45), "45 cm");
  EXPECT_EQ(us.length(45), "17.7 in");
  EXPECT_EQ(metric.volume(132.4), "132 L");
  EXPECT_EQ(us.volume(132), "34.9 gal");
  EXPECT_EQ(metric.size(90, 45, 45), "90 × 45 × 45 cm");
  EXPECT_EQ(us.size(91.44, 45.72, 40.64), "36 × 18 × 16 in");
  EXPECT_EQ(metric.mass(182.3), "180 kg");
  EXPECT_EQ(metric.mass(31.4), "31 kg");
  EXPECT_EQ(metric.mass(0.44), "0.4 kg") << "a handful of pebbles is not nothing";
  EXPECT_EQ(us.mass(45.359237), "100 lb");
}

TEST(Measures, WhatIsTypedComesBackAsItWas) {
  for (const Measures& measures : {metric, us})
    for (const double value : {0.5, 4.0, 24.5, 77.0, 250.0}) {
      EXPECT_NEAR(measures.temperature_out(measures.temperature_in(value)), value, 1e-9);
      EXPECT_NEAR(measures.length_out(measures.length_in(value)), value, 1e-9);
      EXPECT_NEAR(measures.volume_out(measures.volume_in(value)), value, 1e-9);
    }
}

TEST(Retold, MetricStaysToTheLetter) {
  EXPECT_EQ(retold(metric, "Lane 12 cm short for cherry barb"), "Lane 12 cm short for cherry barb");
}

TEST(Retold, LengthsVolumesAndAreasTakeTheirUsUnits) {
  EXPECT_EQ(retold(us, "Lane 12 cm short for cherry barb"), "Lane 4.7 in short for cherry barb");
  EXPECT_EQ(retold(us, "wants 3.8 L there and 7.6 L are open"), "wants 1 gal there and 2 gal are open");
  EXPECT_EQ(retold(us, "want 1000 cm² of floor"), "want 155 in² of floor");
  EXPECT_EQ(retold(us, "weighs about 100 kg, like"), "weighs about 220 lb, like");
  EXPECT_EQ(retold(us, "40 × 20 × 25 cm"), "15.7 × 7.9 × 9.8 in");
}

TEST(Retold, ADifferenceOfTemperatureHasNoOffset) {
  EXPECT_EQ(retold(us, "Temperature 2 °C over for honey gourami"), "Temperature 3.6 °F over for honey gourami");
  EXPECT_EQ(retold(us, "needs 24 °C up, other 22 °C down: 2 °C apart"), "needs 75 °F up, other 72 °F down: 3.6 °F apart");
  EXPECT_EQ(retold(us, "all of them live in 24 to 27 °C."), "all of them live in 75 to 81 °F.");
}

TEST(Retold, WhatHasNoUsUnitStays) {
  EXPECT_EQ(retold(us, "GH 13 °dH; the limit is 40 mg/L, 30 % of pH 7.2"), "GH 13 °dH; the limit is 40 mg/L, 30 % of pH 7.2");
  EXPECT_EQ(retold(us, "8 corydoras, least 6"), "8 corydoras, least 6");
  EXPECT_EQ(retold(us, "6 Lamps"), "6 Lamps");
}

}  // namespace
}  // namespace shoalwright
