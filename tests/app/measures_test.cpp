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

constexpr Measures ppm{.hardness_in = HardnessUnit::mg_l_caco3}, moles{.hardness_in = HardnessUnit::mmol_l, .nitrate_as_n = true};

// One degree of hardness is 10 mg CaO in a litre by definition: 0.1783 mmol/L of calcium and magnesium, 0.3566 meq/L of
// alkalinity, 17.85 mg/L counted as calcium carbonate. Nitrate is 22.6 % nitrogen (IUPAC atomic weights).
TEST(Measures, HardnessAndNitrateAsTheKeeperCountsThem) {
  EXPECT_EQ(metric.hardness(7.25, Hardness::gh), "7.3 °dH");
  EXPECT_EQ(ppm.hardness(10, Hardness::gh), "178 mg/L CaCO₃");
  EXPECT_EQ(ppm.hardness(10, Hardness::kh), "178 mg/L CaCO₃");
  EXPECT_EQ(moles.hardness(10, Hardness::gh), "1.78 mmol/L") << "calcium and magnesium together";
  EXPECT_EQ(moles.hardness(10, Hardness::kh), "3.57 meq/L") << "alkalinity is told in equivalents";
  EXPECT_EQ(metric.nitrate(40), "40 mg/L");
  EXPECT_EQ(moles.nitrate(40), "9 mg/L N");
  EXPECT_NEAR(moles.nitrate_out(62.0049), 14.0067, 0.001);
  for (const Measures& measures : {metric, ppm, moles})
    for (const double value : {0.5, 7.0, 125.0}) {
      for (const Hardness of : {Hardness::gh, Hardness::kh})
        EXPECT_NEAR(measures.hardness_out(measures.hardness_back(value, of), of), value, 1e-9);
      EXPECT_NEAR(measures.nitrate_out(measures.nitrate_in(value)), value, 1e-9);
    }
}

TEST(Retold, HardnessByItsUnitOrByItsName) {
  EXPECT_EQ(retold(ppm, "GH 3 °dH over for cherry barb"), "GH 54 mg/L CaCO₃ over for cherry barb");
  EXPECT_EQ(retold(ppm, "KH 3.2 does not give pH 6.8"), "KH 57 mg/L CaCO₃ does not give pH 6.8");
  EXPECT_EQ(retold(moles, "KH falls to 1.5 between changes"), "KH falls to 0.53 meq/L between changes");
  EXPECT_EQ(retold(moles, "takes 0.4 °dH of KH a week; new water brings 5 °dH"),
            "takes 0.14 meq/L of KH a week; new water brings 1.78 meq/L");
  EXPECT_EQ(retold(moles, "GH comes to 6.3 to 7.7 and KH to 2.9 to 3.5 °dH."),
            "GH comes to 1.12 to 1.37 mmol/L and KH to 1.03 to 1.25 meq/L.");
  EXPECT_EQ(retold(moles, "The tap has GH 15; one lives up to 10 °dH"),
            "The tap has GH 2.67 mmol/L; one lives up to 1.78 mmol/L");
  EXPECT_EQ(retold(moles, "5 °dH", {.hardness = Hardness::kh}), "1.78 meq/L");
  EXPECT_EQ(retold(ppm, "KH is gone in 5 weeks, pH 7 at 25 °C in 40 L"), "KH is gone in 5 weeks, pH 7 at 25 °C in 40 L");
}

TEST(Retold, OnlyNitrateIsCountedAsNitrogen) {
  EXPECT_EQ(retold(moles, "Nitrate climbs to 62 mg/L", about_of("nitrate")), "Nitrate climbs to 14 mg/L N");
  EXPECT_EQ(retold(moles, "Feeding makes 2.5 mg/L of nitrate a day.", about_of("load")),
            "Feeding makes 0.56 mg/L N of nitrate a day.");
  EXPECT_EQ(retold(moles, "Nitrite is at 0.5 mg/L", about_of("ammonia")), "Nitrite is at 0.5 mg/L");
  EXPECT_EQ(retold(ppm, "Nitrate climbs to 62 mg/L", about_of("nitrate")), "Nitrate climbs to 62 mg/L");
}

TEST(Retold, WhatHasNoUsUnitStays) {
  EXPECT_EQ(retold(us, "GH 13 °dH; the limit is 40 mg/L, 30 % of pH 7.2"), "GH 13 °dH; the limit is 40 mg/L, 30 % of pH 7.2");
  EXPECT_EQ(retold(us, "8 corydoras, least 6"), "8 corydoras, least 6");
  EXPECT_EQ(retold(us, "6 Lamps"), "6 Lamps");
}

}  // namespace
}  // namespace shoalwright
