// SPDX-License-Identifier: MIT
#include "advice/company.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "support/plan_files.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

/// An ordinary kind with mouth, fins and pace that do nothing to anybody.
Species calm(const std::string& id, double adult_tl_cm = 5) {
  Species s = sample_species(id, Style::calm_mid, adult_tl_cm);
  s.kind = "fish";
  s.mouth = {.eater = "small-mouth", .eats_shrimp = "no", .eats_plants = "no"};
  s.temper.nips_fins = "no";
  s.temper.fins = "short";
  s.temper.feeding_pace = "usual";
  s.life.depth = {0.2, 0.6, 0.2};
  return s;
}

const PoorCompany* poor_of(const Company& company, const Species& one) {
  for (const PoorCompany& poor : company.poor)
    if (poor.species == &one) return &poor;
  return nullptr;
}

const GoodCompany* good_of(const Company& company, const Species& one) {
  for (const GoodCompany& good : company.good)
    if (good.species == &one) return &good;
  return nullptr;
}

Parting parting_of(const Species& kind, const Species& other) {
  const Company company = company_of(kind, {&other});
  EXPECT_EQ(company.poor.size(), 1u);
  return company.poor.empty() ? Parting{} : company.poor.front().parting;
}

TEST(Company, EveryOtherKindFallsIntoOneListAndTheKindItselfIntoNone) {
  std::vector<const Species*> kinds;
  for (const Species& species : the_catalog().species) kinds.push_back(&species);
  for (const Species& species : the_catalog().species) {
    const Company company = company_of(species, kinds);
    std::set<const Species*> seen(company.unknown.begin(), company.unknown.end());
    for (const GoodCompany& good : company.good) seen.insert(good.species);
    for (const PoorCompany& poor : company.poor) seen.insert(poor.species);
    EXPECT_EQ(seen.size(), kinds.size() - 1) << species.id;
    EXPECT_EQ(company.good.size() + company.poor.size() + company.unknown.size(), kinds.size() - 1) << species.id;
    EXPECT_EQ(seen.count(&species), 0u);
    for (const PoorCompany& poor : company.poor) EXPECT_FALSE(poor.text.empty()) << species.id;
  }
}

TEST(Company, IsTheSameFromBothSides) {
  const std::vector<Species>& all = the_catalog().species;
  for (std::size_t i = 0; i < all.size(); ++i)
    for (std::size_t j = i + 1; j < std::min(all.size(), i + 60); ++j) {
      const Company there = company_of(all[i], {&all[j]}), back = company_of(all[j], {&all[i]});
      EXPECT_EQ(there.good.size(), back.good.size()) << all[i].id << " and " << all[j].id;
      if (there.good.empty()) continue;
      EXPECT_EQ(there.good[0].water, back.good[0].water) << all[i].id << " and " << all[j].id;
      EXPECT_EQ(there.good[0].mind, back.good[0].mind) << all[i].id << " and " << all[j].id;
    }
}

TEST(Company, SharedWaterIsWhereBothLiveAndItsWidthTheNarrowest) {
  Species kind = calm("a-b"), other = calm("c-d");
  other.water.temperature_c = {.tolerated = Range{26, 32}, .ideal = Range{27, 30}};
  const Company company = company_of(kind, {&other});
  ASSERT_EQ(company.good.size(), 1u);
  const SharedWater& water = company.good[0].water;
  EXPECT_EQ(water.temperature_c, (Range{26, 28}));
  EXPECT_EQ(water.ph, (Range{6, 8}));
  EXPECT_NEAR(water.width, 2.0 / 6, 1e-12) << "2 of 6 degrees; all other ranges are equal";
  EXPECT_EQ(water.ideal, 0) << "24 to 26 and 27 to 30 do not meet";
}

TEST(Company, WaterPartsByMoreThanAKitReadsWrongAndSaysByHowMuch) {
  const Species kind = calm("a-b");  // pH 6 to 8
  Species near = calm("c-d"), far = calm("e-f"), hard = calm("g-h");
  near.water.ph = {.tolerated = Range{8.3, 9}, .ideal = std::nullopt};
  far.water.ph = {.tolerated = Range{8.4, 9}, .ideal = std::nullopt};
  hard.water.gh_dgh = {.tolerated = Range{18, 25}, .ideal = std::nullopt};
  const Company company = company_of(kind, {&near, &far, &hard});
  ASSERT_NE(good_of(company, near), nullptr) << "0.3 is what a kit reads wrong";
  EXPECT_EQ(good_of(company, near)->water.width, 0);
  ASSERT_NE(poor_of(company, far), nullptr);
  EXPECT_EQ(poor_of(company, far)->parting, Parting::ph);
  EXPECT_EQ(poor_of(company, far)->text, "pH 0.4 apart: lives from 8.4 up");
  ASSERT_NE(poor_of(company, hard), nullptr);
  EXPECT_EQ(poor_of(company, hard)->text, "GH 3 °dH apart: lives from 18 °dH up");
  EXPECT_EQ(company.poor[0].species, &far) << "the nearer miss comes first";
  Species cold = calm("i-j");
  cold.water.temperature_c = {.tolerated = Range{10, 20}, .ideal = std::nullopt};
  EXPECT_EQ(company_of(kind, {&cold}).poor[0].text, "Temperature 2 °C apart: lives up to 20 °C");
}

TEST(Company, WhoFitsIntoAMouthIsNoCompany) {
  Species small = calm("a-b", 2), large = calm("c-d", 13);
  large.mouth.eater = "opportunist";
  Company company = company_of(small, {&large});
  ASSERT_EQ(company.poor.size(), 1u);
  EXPECT_EQ(company.poor[0].parting, Parting::eats_it);
  EXPECT_EQ(company.poor[0].text, "Would eat this kind: grows to 13 cm beside 2 cm");
  company = company_of(large, {&small});
  EXPECT_EQ(company.poor[0].parting, Parting::eaten);
  EXPECT_EQ(company.poor[0].text, "Would be eaten: grows to 2 cm beside 13 cm");
  small.size.adult_tl_cm = 4.7;  // index 0.91
  EXPECT_EQ(company_of(small, {&large}).poor[0].text, "May eat this kind: grows to 13 cm beside 4.7 cm");
  small.size.adult_tl_cm = 6;  // 0.72
  ASSERT_EQ(company_of(small, {&large}).good.size(), 1u);
  EXPECT_EQ(company_of(small, {&large}).good[0].mind, std::vector<std::string>{"Close to what the larger one can swallow"});
  small.size.adult_tl_cm = 9;
  small.size.sold_cm = 3;
  EXPECT_EQ(company_of(small, {&large}).good[0].mind.size(), 1u) << "eaten while it is small";
  large.mouth.eater = "grazer";
  EXPECT_TRUE(company_of(small, {&large}).good[0].mind.empty());
  large.mouth.eater = "biter";
  EXPECT_EQ(parting_of(small, large), Parting::bitten);
  EXPECT_EQ(parting_of(large, small), Parting::bitten);
}

TEST(Company, ANightHunterReachesFurther) {
  Species small = calm("a-b", 5), hunter = calm("c-d", 11);
  small.size.body_depth_share = 0.1;  // slender: its length decides, 0.33 x 11 / 5 = 0.73
  hunter.mouth.eater = "opportunist";
  hunter.life.active = "day";
  EXPECT_EQ(company_of(small, {&hunter}).good.size(), 1u);
  hunter.life.active = "night";  // 0.38 x 11 / 5 = 0.84
  EXPECT_EQ(parting_of(small, hunter), Parting::eats_it);
}

TEST(Company, ShrimpsAndSnailsGoByWhatTheCardSays) {
  Species shrimp = calm("a-b", 2.5), fish = calm("c-d", 30), snail = calm("e-f", 3);
  shrimp.kind = "shrimp";
  shrimp.mouth.eater = "grazer";
  snail.kind = "snail";
  snail.mouth.eater = "grazer";
  fish.mouth.eater = "hunter";
  fish.mouth.eats_shrimp = "no";
  EXPECT_EQ(company_of(fish, {&shrimp}).good.size(), 1u) << "the card wins over the mouth";
  fish.mouth.eats_shrimp = "young";
  EXPECT_EQ(company_of(fish, {&shrimp}).good[0].mind, std::vector<std::string>{"Young shrimps get eaten"});
  fish.mouth.eats_shrimp = "adults";
  EXPECT_EQ(parting_of(fish, shrimp), Parting::shrimp);
  EXPECT_EQ(parting_of(shrimp, fish), Parting::shrimp);
  fish.mouth.eats_shrimp.clear();
  EXPECT_EQ(parting_of(shrimp, fish), Parting::eats_it) << "without a word the mouth decides";
  EXPECT_EQ(company_of(fish, {&snail}).good.size(), 1u);
  fish.mouth.eats_snails = true;
  EXPECT_EQ(parting_of(snail, fish), Parting::snail);
}

TEST(Company, NippersBulliesAndCurrentsPart) {
  Species kind = calm("a-b"), other = calm("c-d");
  kind.temper.fins = "long";
  other.temper.nips_fins = "when-few";
  EXPECT_EQ(parting_of(kind, other), Parting::fins);
  EXPECT_EQ(parting_of(other, kind), Parting::fins);
  kind.temper.fins = "short";
  EXPECT_TRUE(company_of(kind, {&other}).poor.empty());
  other.temper.to_others = Toward::aggressive;
  EXPECT_EQ(parting_of(kind, other), Parting::bullied);
  kind.life.depth = {1, 0, 0};
  other.life.depth = {0, 0, 1};
  EXPECT_TRUE(company_of(kind, {&other}).poor.empty()) << "they do not meet";
  kind.life.current = "still";
  other.life.current = "strong";
  EXPECT_EQ(parting_of(kind, other), Parting::current);
}

TEST(Company, SaltPartsWhatNeedsItFromFreshWaterAlone) {
  Species fresh = calm("a-b"), either = calm("c-d"), salty = calm("e-f");
  either.water.salinity = Salinity::fresh_to_brackish;
  salty.water.salinity = Salinity::brackish;
  EXPECT_EQ(parting_of(fresh, salty), Parting::salt);
  EXPECT_EQ(company_of(salty, {&fresh}).poor[0].text, "Lives in fresh water alone");
  EXPECT_EQ(company_of(salty, {&either}).good.size(), 1u);
}

TEST(Company, WhatOnlyWantsCareIsSaidAndComesLater) {
  Species kind = calm("a-b"), plain = calm("z-z"), careful = calm("c-d"), twin = calm("e-f");
  kind.temper.feeding_pace = "slow";
  careful.temper.feeding_pace = "fast";
  kind.temper.look_alike_group = twin.temper.look_alike_group = "striped";
  kind.temper.breeds_with = {"e-f"};
  const Company company = company_of(kind, {&twin, &careful, &plain});
  ASSERT_EQ(company.good.size(), 3u);
  EXPECT_EQ(company.good[0].species, &plain) << "equal water, nothing to mind";
  EXPECT_EQ(company.good[1].species, &careful);
  EXPECT_EQ(company.good[2].mind, (std::vector<std::string>{"Look alike: rivals in less than 120 L", "May cross with it"}));
}

TEST(Company, WhatIsNotKnownIsNoPromise) {
  Species kind = calm("a-b"), other = calm("c-d"), cold = calm("e-f");
  kind.water.gh_dgh = kind.water.kh_dkh = {};
  cold.water.temperature_c = {.tolerated = Range{10, 18}, .ideal = std::nullopt};
  const Company company = company_of(kind, {&other, &cold});
  EXPECT_TRUE(company.good.empty());
  EXPECT_EQ(company.unknown, std::vector<const Species*>{&other});
  EXPECT_EQ(company.unknown_for, "GH and KH");
  EXPECT_NE(poor_of(company, cold), nullptr) << "what is known parts them all the same";
  EXPECT_EQ(company_of(other, {&cold}).unknown_for, "");
}

}  // namespace
}  // namespace shoalwright
