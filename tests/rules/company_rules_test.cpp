// SPDX-License-Identifier: MIT
// invertebrate-predation, fin-nipping, look-alike-rivalry, hybrid, feeding, plant-eater, legal. Common practice, no source; law
// after the lists that the cards name.
#include <gtest/gtest.h>

#include "support/mended.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const Catalog none;

constexpr auto lenient = Strictness::lenient, usual = Strictness::usual, strict = Strictness::strict;

Species calm(const char* id, double adult_tl_cm = 5) {
  Species species = sample_species(id, Style::calm_mid, adult_tl_cm);
  species.kind = "fish";
  species.life.group = {.kind = GroupKind::loose, .least = 1, .good = 1, .all_male_ok = true, .added = "any"};
  species.life.depth = {0.15, 0.7, 0.15};
  species.life.active = "day";
  species.mouth = {.eater = "grazer", .eats_shrimp = "no", .eats_plants = "no"};
  species.temper.nips_fins = "no";
  species.temper.fins = "short";
  species.temper.feeding_pace = "usual";
  species.diet = {.kind = "omnivore", .feeds_at = "mid", .foods = {"flake"}};
  return species;
}

Species of_kind(const char* id, const char* kind, double adult_tl_cm) {
  Species species = calm(id, adult_tl_cm);
  species.kind = kind;
  species.life.style = Style::invertebrate;
  species.breeding_mode = "berried";
  return species;
}

Assessment of(const Plan& plan) { return assess(plan, none); }
PlanBuilder large() { return a_plan().tank(198, 78, 60).planted(Planting::none); }

// --- invertebrate-predation

std::optional<Severity> small_fry(const Species& eater, const Species& prey) {
  return severity_of(of(large().fish(eater, 2).fish(prey, 10)), "invertebrate-predation");
}

TEST(InvertebratePredation, SaysWhetherGrownOnesOrOnlyYoung) {
  Species eater = calm("own--eater", 6);
  const Species shrimp = of_kind("own--shrimp", "shrimp", 2.5);
  eater.mouth = {.eater = "micropredator", .eats_shrimp = "no", .eats_plants = "no"};
  EXPECT_EQ(small_fry(eater, shrimp), std::nullopt) << "the card wins over the mouth";
  eater.mouth.eats_shrimp = "young";
  EXPECT_EQ(small_fry(eater, shrimp), Severity::watch);
  eater.mouth.eats_shrimp = "adults";
  EXPECT_EQ(small_fry(eater, shrimp), Severity::strain);
  eater.mouth = {.eater = "picker", .eats_shrimp = "young", .eats_plants = "no"};
  EXPECT_EQ(small_fry(eater, shrimp), Severity::note);
  eater.mouth = {.eater = "grazer", .eats_shrimp = "no", .eats_plants = "no"};
  EXPECT_EQ(small_fry(eater, shrimp), std::nullopt);
}

TEST(InvertebratePredation, WithoutAWordOnTheCardGoesByTheMouth) {
  Species eater = calm("own--eater", 6);
  const Species shrimp = of_kind("own--shrimp", "shrimp", 2.5);
  eater.mouth = {.eater = "opportunist", .eats_shrimp = "", .eats_plants = "no"};
  EXPECT_EQ(small_fry(eater, shrimp), Severity::strain);
  eater.mouth.eater = "micropredator";  // 2.40 of a shrimplet, 0.48 of a grown one
  EXPECT_EQ(small_fry(eater, shrimp), Severity::watch);
  eater.mouth.eater = "grazer";
  EXPECT_EQ(small_fry(eater, shrimp), std::nullopt);
}

TEST(InvertebratePredation, SparesWhatIsAsLongAsItsEaterAndHasNoYoungHere) {
  Species eater = calm("own--eater", 6);
  eater.mouth = {.eater = "opportunist", .eats_shrimp = "adults", .eats_plants = "no"};
  EXPECT_EQ(small_fry(eater, of_kind("own--shrimp", "shrimp", 5.9)), Severity::strain);
  Species large_shrimp = of_kind("own--shrimp", "shrimp", 6);
  EXPECT_EQ(small_fry(eater, large_shrimp), Severity::watch) << "its young";
  large_shrimp.breeding_mode = "salt-larvae";
  EXPECT_EQ(small_fry(eater, large_shrimp), std::nullopt);
  Species armed = of_kind("own--shrimp", "shrimp", 2.5);
  armed.mouth.eater = "biter";
  EXPECT_EQ(small_fry(eater, armed), Severity::watch) << "it bites back, its young do not";
  eater.mouth.eater = "biter";
  EXPECT_EQ(small_fry(eater, large_shrimp), Severity::strain);
}

TEST(InvertebratePredation, OfSnailsIsForThoseThatEatThem) {
  Species eater = calm("own--eater", 10);
  const Species snail = of_kind("own--snail", "snail", 3);
  EXPECT_EQ(small_fry(eater, snail), std::nullopt);
  eater.mouth.eats_snails = true;
  EXPECT_EQ(small_fry(eater, snail), Severity::strain);
}

TEST(InvertebratePredation, FivePredatorsAreOneFinding) {
  PlanBuilder plan = large();
  for (const char* id : {"own--a", "own--b", "own--c", "own--d", "own--e"}) {
    Species eater = calm(id, 6);
    eater.mouth.eats_shrimp = "adults";
    plan.fish(eater, 2);
  }
  const Assessment assessment = of(plan.fish(of_kind("own--shrimp", "shrimp", 2.5), 10));
  int said = 0;
  for (const Finding& finding : assessment.findings) said += finding.rule == "invertebrate-predation";
  EXPECT_EQ(said, 1);
  EXPECT_EQ(finding_of(assessment, "invertebrate-predation")->species.size(), 6u);
  EXPECT_EQ(finding_of(assessment, "invertebrate-predation")->remedy, "Leave out own--shrimp") << "one kind rather than five";
}

TEST(InvertebratePredation, OfYoungIsMilderUnderCoverAndCoverIsItsRemedy) {
  Species eater = calm("own--eater", 6);
  eater.mouth.eats_shrimp = "young";
  const Species shrimp = of_kind("own--shrimp", "shrimp", 2.5);
  const Plan bare = a_plan().tank(59, 29, 29.5).planted(Planting::light).fish(eater, 2).fish(shrimp, 10);
  EXPECT_EQ(severity_of(of(bare), "invertebrate-predation"), Severity::watch);
  EXPECT_EQ(severity_of(of(mended(bare, none, "invertebrate-predation")), "invertebrate-predation"), Severity::note);
  Plan planted = bare;
  planted.planting = Planting::medium;  // a quarter of the floor
  EXPECT_EQ(severity_of(of(planted), "invertebrate-predation"), Severity::note);
}

// --- fin-nipping

Species nipper(const char* when, int good) {
  Species species = calm("own--nipper");
  species.temper.nips_fins = when;
  species.life.group = {.kind = GroupKind::shoal, .least = 1, .good = good, .all_male_ok = true, .added = "any"};
  return species;
}

Species long_finned(const char* pace = "slow") {
  Species species = calm("own--veil", 8);
  species.temper.fins = "long";
  species.temper.feeding_pace = pace;
  return species;
}

std::optional<Severity> nipping(const Species& one, int count, Strictness view, const Species& other = long_finned()) {
  return severity_of(of(large().strictness(view).fish(one, count).fish(other, 2)), "fin-nipping");
}

TEST(FinNipping, IsLessenedByNumbersAsFarAsPracticeAgrees) {
  const Species always = nipper("yes", 6), few = nipper("when-few", 6);
  EXPECT_EQ(nipping(few, 7, lenient), Severity::watch);
  EXPECT_EQ(nipping(few, 8, lenient), std::nullopt);
  EXPECT_EQ(nipping(few, 7, usual), Severity::strain);
  EXPECT_EQ(nipping(few, 8, usual), Severity::watch);
  EXPECT_EQ(nipping(few, 20, strict), Severity::strain);
  EXPECT_EQ(nipping(always, 7, lenient), Severity::strain);
  EXPECT_EQ(nipping(always, 8, lenient), Severity::watch);
  EXPECT_EQ(nipping(always, 20, usual), Severity::strain);
  EXPECT_EQ(nipping(nipper("when-few", 10), 9, usual), Severity::strain) << "the good group of its card is larger";
}

TEST(FinNipping, IsNoMatterForShortQuickOrDistantFins) {
  const Species always = nipper("yes", 6);
  EXPECT_EQ(nipping(always, 4, strict, long_finned("fast")), std::nullopt);
  Species short_fins = long_finned();
  short_fins.temper.fins = "short";
  EXPECT_EQ(nipping(always, 4, strict, short_fins), std::nullopt);
  Species above = long_finned();
  above.life.depth = {1, 0, 0};
  EXPECT_EQ(nipping(always, 4, strict, above), std::nullopt) << "no level is shared";
  EXPECT_EQ(nipping(nipper("no", 6), 2, strict), std::nullopt) << "a bare barb is no nipper";
}

TEST(FinNipping, IsMendedByMoreOfTheirOwnWhereThereIsRoom) {
  const Plan plan = large().fish(nipper("when-few", 6), 5).fish(long_finned(), 2);
  EXPECT_EQ(finding_of(of(plan), "fin-nipping")->remedy, "Keep 8 own--nipper");
  EXPECT_EQ(severity_of(of(mended(plan, none, "fin-nipping")), "fin-nipping"), Severity::watch);
  const Plan stern = large().strictness(strict).fish(nipper("when-few", 6), 5).fish(long_finned(), 2);
  EXPECT_EQ(finding_of(of(stern), "fin-nipping")->remedy.rfind("Leave out", 0), 0u) << "numbers change nothing there";
  EXPECT_FALSE(finding_of(of(mended(stern, none, "fin-nipping")), "fin-nipping"));
}

TEST(FinNipping, OfThreeKindsIsOneFinding) {
  Species second = long_finned(), third = long_finned();
  second.id = second.name.scientific = "own--veil-b";
  third.id = third.name.scientific = "own--veil-c";
  const Assessment assessment = of(large().fish(nipper("yes", 6), 8).fish(long_finned(), 2).fish(second, 2).fish(third, 2));
  int said = 0;
  for (const Finding& finding : assessment.findings) said += finding.rule == "fin-nipping";
  EXPECT_EQ(said, 1);
  EXPECT_EQ(finding_of(assessment, "fin-nipping")->text, "Own--nipper nips fins of 3 kinds");
}

// --- look-alike-rivalry

TEST(LookAlikeRivalry, EndsAtTheLeastVolume) {
  Species a = calm("own--a", 4), b = calm("own--b", 4);
  a.temper.look_alike_group = b.temper.look_alike_group = "twins";
  const auto in = [&](double litres) {
    return severity_of(of(a_plan().tank(80, 30, litres * 1000 / (80 * 30)).fish(a, 1).fish(b, 1)), "look-alike-rivalry");
  };
  EXPECT_EQ(in(120), std::nullopt);
  EXPECT_EQ(in(119), Severity::note) << "what a tape measure errs";
  EXPECT_EQ(in(112), Severity::strain);
  b.temper.look_alike_group = "others";
  EXPECT_EQ(in(60), std::nullopt);
}

TEST(LookAlikeRivalry, OfThreeIsOneFindingAndOneStays) {
  PlanBuilder plan = a_plan().tank(59, 29, 29.5);
  for (const char* id : {"own--a", "own--b", "own--c"}) {
    Species species = calm(id, 4);
    species.temper.look_alike_group = "twins";
    plan.fish(species, 1);
  }
  Plan kept = plan;
  kept.stock[1].have = 1;
  const Finding* finding = nullptr;
  const Assessment assessment = of(kept);
  finding = finding_of(assessment, "look-alike-rivalry");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->species.size(), 3u);
  EXPECT_EQ(finding->remedy, "Leave out own--a and own--c") << "what swims already stays";
  EXPECT_FALSE(finding_of(of(mended(kept, none, "look-alike-rivalry")), "look-alike-rivalry"));
}

// --- hybrid

TEST(Hybrid, IsAWatchForWhatCrossesAndHasBothSexes) {
  Species a = calm("own--a", 4), b = calm("own--b", 4);
  b.temper.breeds_with = {"own--a"};
  Plan plan = large().fish(a, 2).fish(b, 2);
  EXPECT_EQ(severity_of(of(plan), "hybrid"), Severity::watch) << "listed on one card";
  EXPECT_FALSE(finding_of(of(mended(plan, none, "hybrid")), "hybrid"));
  for (Group& group : plan.stock) group.males = 2, group.females = 0;
  EXPECT_FALSE(finding_of(of(plan), "hybrid")) << "males alone";
  plan.stock[1].males = 1, plan.stock[1].females = 1;
  EXPECT_EQ(severity_of(of(plan), "hybrid"), Severity::watch);
  b.temper.breeds_with = {"own--c"};
  EXPECT_FALSE(finding_of(of(large().fish(a, 2).fish(b, 2)), "hybrid"));
}

// --- feeding

TEST(Feeding, SlowOnesBesideFastOnesAtOnePlaceAreAWatch) {
  Species slow = calm("own--slow"), fast = calm("own--fast");
  slow.temper.feeding_pace = "slow";
  fast.temper.feeding_pace = "fast";
  const auto fed = [&] { return severity_of(of(large().fish(slow, 2).fish(fast, 2)), "feeding"); };
  EXPECT_EQ(fed(), Severity::watch);
  fast.diet.feeds_at = "surface";
  EXPECT_EQ(fed(), std::nullopt) << "fed elsewhere";
  fast.diet.feeds_at = "any";
  EXPECT_EQ(fed(), Severity::watch);
  slow.life.active = "night";
  EXPECT_EQ(fed(), std::nullopt) << "fed after lights out";
  slow.life.active = "day";
  slow.diet.kind = "aufwuchs";
  EXPECT_EQ(fed(), std::nullopt) << "grazes all day";
  slow.diet.kind = "omnivore";
  fast.temper.feeding_pace = "usual";
  EXPECT_EQ(fed(), std::nullopt);
}

TEST(Feeding, PlantEatersBesideMeatEatersAreAWatch) {
  Species plants = calm("own--plants"), meat = calm("own--meat");
  plants.diet.kind = "herbivore";
  meat.diet.kind = "carnivore";
  EXPECT_EQ(severity_of(of(large().fish(plants, 2).fish(meat, 2)), "feeding"), Severity::watch);
  meat.diet.kind = "omnivore";
  EXPECT_FALSE(finding_of(of(large().fish(plants, 2).fish(meat, 2)), "feeding"));
}

// --- plant-eater

TEST(PlantEater, IsAWatchBesideDrawnPlantsThatItSpoils) {
  Species eater = calm("own--eater", 8);
  const auto with = [&](const char* plant) { return severity_of(of(large().piece(plant).fish(eater, 1)), "plant-eater"); };
  eater.mouth.eats_plants = "soft";
  EXPECT_EQ(with("stem-plants"), Severity::watch);
  EXPECT_EQ(with("rosette-plant"), std::nullopt) << "too tough for it";
  eater.mouth.eats_plants = "most";
  EXPECT_EQ(with("rosette-plant"), Severity::watch);
  EXPECT_EQ(with("fern"), std::nullopt);
  EXPECT_EQ(with("moss"), std::nullopt);
  EXPECT_EQ(with("stone"), std::nullopt);
  eater.mouth.eats_plants = "no";
  EXPECT_EQ(with("stem-plants"), std::nullopt);
  eater.mouth.digs = true;
  EXPECT_EQ(with("rosette-plant"), Severity::watch);
  EXPECT_EQ(with("floating-plants"), std::nullopt) << "nothing to dig up";
  eater.size.adult_tl_cm = 6.9;
  EXPECT_EQ(with("rosette-plant"), std::nullopt) << "too small to uproot";
}

TEST(PlantEater, OfPlantsThatAreNotDrawnIsANote) {
  Species eater = calm("own--eater", 8);
  eater.mouth.eats_plants = "most";
  EXPECT_EQ(severity_of(of(large().planted(Planting::dense).fish(eater, 1)), "plant-eater"), Severity::note);
  EXPECT_FALSE(finding_of(of(large().fish(eater, 1)), "plant-eater"));
}

TEST(PlantEater, IsMendedByToughPlantsInTheSamePlace) {
  Species eater = calm("own--eater", 8);
  eater.mouth.eats_plants = "most";
  const Plan plan = large().piece("stone").piece("stem-plants", 2).fish(eater, 1);
  const Plan after = mended(plan, none, "plant-eater");
  EXPECT_FALSE(finding_of(of(after), "plant-eater"));
  EXPECT_EQ(after.pieces[0], plan.pieces[0]);
  EXPECT_EQ(after.pieces[2].kind, "fern");
  EXPECT_EQ(after.pieces[2].length_cm, plan.pieces[2].length_cm);
}

// --- legal

TEST(Legal, IsSaidForTheRegionThatTheListHoldsIn) {
  Species species = calm("own--listed");
  species.laws = {{.region = "EU", .effect = "banned", .instrument = "Example list", .as_of = "2026-11", .note = ""}};
  const auto in = [&](const char* region, int have = 0) {
    Plan plan = large().fish(species, 1);
    plan.place.region = region;
    plan.stock[0].have = have;
    return of(plan);
  };
  EXPECT_EQ(severity_of(in("AT"), "legal"), Severity::strain);
  EXPECT_EQ(severity_of(in("AT-9"), "legal"), Severity::strain);
  EXPECT_FALSE(finding_of(in("US"), "legal"));
  EXPECT_FALSE(finding_of(in("CH"), "legal"));
  EXPECT_NE(finding_of(in("AT"), "legal")->why.find("2026-11"), std::string::npos) << "with its date";
  EXPECT_FALSE(finding_of(in("AT"), "legal")->edits.empty());
  EXPECT_TRUE(finding_of(in("AT", 1), "legal")->edits.empty()) << "passing it on may be banned too";
  species.laws[0].effect = "check";
  EXPECT_EQ(severity_of(in("AT"), "legal"), Severity::note);
}

TEST(Legal, WithoutARegionIsACautionAndNoFinding) {
  Species species = calm("own--listed");
  const auto cautioned = [](const Assessment& assessment) {
    return std::any_of(assessment.cautions.begin(), assessment.cautions.end(),
                       [](const std::string& one) { return one.find("own--listed") != std::string::npos; });
  };
  EXPECT_FALSE(cautioned(of(large().fish(species, 1))));
  species.laws = {{.region = "EU", .effect = "banned", .instrument = "Example list", .as_of = "2026-11", .note = ""}};
  EXPECT_FALSE(finding_of(of(large().fish(species, 1)), "legal"));
  EXPECT_TRUE(cautioned(of(large().fish(species, 1))));
}

TEST(Quarantine, IsACautionWhereSomebodyJoinsOthers) {
  const auto cautioned = [](const Plan& plan) {
    const Assessment assessment = of(plan);
    EXPECT_FALSE(finding_of(assessment, "quarantine"));
    return std::any_of(assessment.cautions.begin(), assessment.cautions.end(),
                       [](const std::string& one) { return one.rfind("New animals wait", 0) == 0; });
  };
  Plan plan = large().fish(calm("own--a"), 6);
  EXPECT_FALSE(cautioned(plan));
  plan.stock[0].have = 3;
  EXPECT_TRUE(cautioned(plan));
  plan.stock[0].have = 6;
  EXPECT_FALSE(cautioned(plan));
}

}  // namespace
}  // namespace shoalwright
