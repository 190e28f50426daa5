// SPDX-License-Identifier: MIT
#include "water/salts.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "units/convert.h"

namespace shoalwright {
namespace {

const Salt& salt(std::string_view id) {
  const Salt* found = find_salt(id);
  EXPECT_TRUE(found) << id;
  return found ? *found : known_salts()[0];
}

TEST(Salts, MolarMassesAreThoseOfTheLabels) {  // suppliers' labels to one decimal, from memory
  EXPECT_NEAR(salt_g_mol(salt("calcium-sulphate-dihydrate")), 172.17, 0.02);
  EXPECT_NEAR(salt_g_mol(salt("calcium-chloride")), 110.98, 0.02);
  EXPECT_NEAR(salt_g_mol(salt("calcium-chloride-dihydrate")), 147.01, 0.02);
  EXPECT_NEAR(salt_g_mol(salt("magnesium-sulphate-heptahydrate")), 246.47, 0.02);
  EXPECT_NEAR(salt_g_mol(salt("magnesium-chloride-hexahydrate")), 203.30, 0.02);
  EXPECT_NEAR(salt_g_mol(salt("sodium-bicarbonate")), 84.01, 0.02);
  EXPECT_NEAR(salt_g_mol(salt("potassium-bicarbonate")), 100.12, 0.02);
  EXPECT_NEAR(salt_g_mol(salt("calcium-carbonate")), 100.09, 0.02);
}

TEST(Salts, EveryOneHasItsOwnIdAndName) {
  std::set<std::string> seen;
  for (const Salt& s : known_salts()) {
    EXPECT_TRUE(seen.insert(std::string(s.id)).second && seen.insert(std::string(s.name)).second) << s.id;
    EXPECT_EQ(find_salt(s.id), &s);
  }
  EXPECT_EQ(find_salt("table salt"), nullptr);
  EXPECT_EQ(find_salt(""), nullptr);
}

TEST(Salts, ChargesOfEveryOneBalance) {
  for (const Salt& s : known_salts())
    EXPECT_EQ(2 * (s.calcium + s.magnesium) + s.sodium + s.potassium, 2 * (s.sulphate + s.carbonate) + s.chloride + s.bicarbonate)
        << s.id;
}

TEST(Salts, WhatIsWeighedBringsTheDegreesAskedFor) {
  for (const Salt& s : known_salts())
    for (const double rise : {0.0, 0.5, 3.0, 12.0})
      for (const double litres : {1.0, 54.0, 300.0}) {
        const auto for_gh = salt_g_for_dgh(s, rise, litres), for_kh = salt_g_for_dkh(s, rise, litres);
        EXPECT_TRUE(for_gh || for_kh) << s.id;
        if (for_gh) {
          EXPECT_NEAR(salt_brings(s, *for_gh * 1000 / litres).gh_dgh, rise, 1e-12) << s.id;
        }
        if (for_kh) {
          EXPECT_NEAR(salt_brings(s, *for_kh * 1000 / litres).kh_dkh, rise, 1e-12) << s.id;
        }
      }
}

// The degree is defined by lime: 10 mg CaO is 17.85 mg of calcium carbonate.
TEST(Salts, CalciumCarbonateRaisesBothAndCountsAsItself) {
  const Salt& lime = salt("calcium-carbonate");
  EXPECT_NEAR(*salt_mg_l_per_dgh(lime), mg_l_caco3_per_degree, 1e-12);
  EXPECT_NEAR(*salt_mg_l_per_dkh(lime), mg_l_caco3_per_degree, 1e-12);
  EXPECT_TRUE(lime.needs_co2);
}

TEST(Salts, TellWhatTheyBringBesides) {  // of one degree; stoichiometry
  const auto of_a_degree = [](std::string_view id) {
    const Salt& s = salt(id);
    return salt_brings(s, salt_mg_l_per_dgh(s).value_or(salt_mg_l_per_dkh(s).value_or(0)));
  };
  EXPECT_NEAR(of_a_degree("magnesium-sulphate-heptahydrate").sulphate_mg_l, 17.13, 0.01);
  EXPECT_NEAR(of_a_degree("calcium-chloride-dihydrate").chloride_mg_l, 12.64, 0.01);
  EXPECT_NEAR(of_a_degree("sodium-bicarbonate").sodium_mg_l, 8.20, 0.01);
  EXPECT_NEAR(of_a_degree("potassium-bicarbonate").potassium_mg_l, 13.94, 0.01);
  EXPECT_EQ(of_a_degree("sodium-bicarbonate").gh_dgh, 0);
}

TEST(Salts, NoneLowersHardnessOrRaisesWhatItDoesNotHold) {
  const Salt& soda = salt("sodium-bicarbonate");
  EXPECT_FALSE(salt_mg_l_per_dgh(soda));
  EXPECT_FALSE(salt_g_for_dgh(soda, 1, 100));
  EXPECT_FALSE(salt_g_for_dkh(soda, -1, 100));
  EXPECT_FALSE(salt_g_for_dkh(soda, 1, -100));
  EXPECT_FALSE(salt_mg_l_per_dkh(salt("magnesium-sulphate-heptahydrate")));
  EXPECT_EQ(salt_brings(soda, -5).kh_dkh, 0);
}

}  // namespace
}  // namespace shoalwright
