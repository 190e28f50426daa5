// SPDX-License-Identifier: MIT
// temperament, male-rivalry, sex-ratio, surplus-young, and two holders of one floor (territory). Common practice, no source.
#include <gtest/gtest.h>

#include "support/mended.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const Catalog none;

constexpr auto lenient = Strictness::lenient, usual = Strictness::usual, strict = Strictness::strict;

Species fish(const char* id, double adult_tl_cm, Toward to_others = Toward::peaceful) {
  Species species = sample_species(id, Style::calm_mid, adult_tl_cm);
  species.kind = "fish";
  species.life.group = {.kind = GroupKind::loose, .least = 1, .good = 6, .all_male_ok = false, .added = "any"};
  species.life.depth = {0.15, 0.7, 0.15};
  species.mouth = {.eater = "grazer", .eats_shrimp = "no", .eats_plants = "no"};
  species.temper.to_others = to_others;
  species.temper.feeding_pace = "usual";
  species.temper.fins = "short";
  species.temper.nips_fins = "no";
  return species;
}

Assessment of(const Plan& plan) { return assess(plan, none); }
PlanBuilder large() { return a_plan().tank(198, 78, 60); }

bool says(const Assessment& assessment, const char* text) {
  return std::any_of(assessment.findings.begin(), assessment.findings.end(),
                     [&](const Finding& finding) { return finding.text == text; });
}

std::optional<Severity> between(const Species& one, const Species& other) {
  return severity_of(of(large().fish(one, 1).fish(other, 1)), "temperament");
}

TEST(Temperament, ABullyHarmsPeacefulOnesThatAreNotMuchLonger) {
  const Species bully = fish("own--bully", 10, Toward::aggressive);
  EXPECT_EQ(between(bully, fish("own--other", 14.9)), Severity::harm);
  EXPECT_EQ(between(bully, fish("own--other", 15)), Severity::strain);
  EXPECT_EQ(between(bully, fish("own--other", 8, Toward::semi)), Severity::strain);
  Species above = fish("own--other", 8);
  above.life.depth = {1, 0, 0};
  EXPECT_EQ(between(bully, above), std::nullopt) << "they do not meet";
  Species snail = fish("own--other", 3);
  snail.kind = "snail";
  EXPECT_EQ(between(bully, snail), std::nullopt) << "no rival";
  EXPECT_EQ(between(fish("own--bully", 10), fish("own--other", 8)), std::nullopt);
}

TEST(Temperament, BulliesOfLikeSizeHoldOutAgainstEachOther) {
  const Species bully = fish("own--bully", 10, Toward::aggressive);
  EXPECT_EQ(between(bully, fish("own--other", 15, Toward::aggressive)), Severity::watch);
  EXPECT_EQ(between(bully, fish("own--other", 15.1, Toward::aggressive)), Severity::strain);
}

TEST(Temperament, IsSaidOfABullyAndAllItsVictimsOnceAndParted) {
  const Plan plan =
      large().fish(fish("own--bully", 10, Toward::aggressive), 1).fish(fish("own--a", 5), 6).fish(fish("own--b", 5), 6);
  const Assessment assessment = of(plan);
  int said = 0;
  for (const Finding& finding : assessment.findings) said += finding.rule == "temperament";
  EXPECT_EQ(said, 1);
  EXPECT_EQ(finding_of(assessment, "temperament")->remedy, "Leave out own--bully");
  EXPECT_FALSE(finding_of(of(mended(plan, none, "temperament")), "temperament"));
}

TEST(Temperament, ARoughKindIsAMatterOnlyWhereTheTankIsShort) {
  const Species rough = fish("own--rough", 8, Toward::semi);  // lane 80 cm
  const auto in = [&](double length_cm, const Species& other) {
    return severity_of(of(a_plan().tank(length_cm, 50, 50).fish(rough, 1).fish(other, 1)), "temperament");
  };
  EXPECT_EQ(in(80, fish("own--other", 5)), std::nullopt);
  EXPECT_EQ(in(64, fish("own--other", 5)), std::nullopt) << "0.8 of the lane is a note of swim-lane";
  EXPECT_EQ(in(63, fish("own--other", 5)), Severity::watch);
  EXPECT_EQ(in(51, fish("own--other", 5)), Severity::strain);
  EXPECT_EQ(in(51, fish("own--other", 9)), std::nullopt) << "larger, quick and short in fins";
  Species slow = fish("own--other", 9);
  slow.temper.feeding_pace = "slow";
  EXPECT_EQ(in(51, slow), Severity::strain);
}

Species guard(GroupKind lives = GroupKind::pair) {
  Species species = fish("own--guard", 5, Toward::semi);
  species.breeding_mode = "cave-spawner";
  species.life.group = {.kind = lives, .least = 1, .good = 2, .all_male_ok = false, .added = "last"};
  return species;
}

TEST(Temperament, APairThatGuardsEggsWantsItsDistance) {
  const auto in = [](double litres, const Species& one, int count) {
    return severity_of(of(a_plan().tank(80, 30, litres * 1000 / (80 * 30)).fish(one, count).fish(fish("own--other", 4), 8)),
                       "temperament");
  };
  EXPECT_EQ(in(100, guard(), 2), std::nullopt);
  EXPECT_EQ(in(99, guard(), 2), Severity::note) << "what a tape measure errs";
  EXPECT_EQ(in(93, guard(), 2), Severity::strain);
  EXPECT_EQ(in(60, guard(), 1), std::nullopt) << "no pair";
  EXPECT_EQ(in(60, guard(GroupKind::shoal), 2), std::nullopt);
  Species peaceful = guard();
  peaceful.temper.to_others = Toward::peaceful;
  EXPECT_EQ(in(60, peaceful, 2), std::nullopt);
  EXPECT_FALSE(finding_of(of(a_plan().tank(60, 30, 30).fish(guard(), 2)), "temperament")) << "nobody to drive off";
}

TEST(Temperament, ASinglesexPairDoesNotBreed) {
  const Plan plan = a_plan().tank(60, 30, 30).fish(guard(), 2).sexes(0, 2).fish(fish("own--other", 4), 8);
  EXPECT_FALSE(finding_of(of(plan), "temperament"));
}

Species fighter() {
  Species species = fish("own--fighter", 6, Toward::semi);
  species.life.style = Style::centrepiece;
  species.life.group = {.kind = GroupKind::solitary, .least = 1, .good = 1, .all_male_ok = false, .added = "any"};
  species.temper.to_own_kind = Toward::aggressive;
  species.temper.rival_males = true;
  return species;
}

Assessment fighters(int males, int females, Strictness view = usual) {
  return of(large().strictness(view).fish(fighter(), males + females).sexes(males, females));
}

TEST(Fighters, AreEachALoneOne) {
  EXPECT_EQ(severity_of(fighters(2, 0), "male-rivalry"), Severity::harm);
  EXPECT_EQ(severity_of(fighters(1, 1), "temperament"), Severity::harm);
  EXPECT_EQ(severity_of(fighters(0, 2, lenient), "temperament"), Severity::watch);
  EXPECT_EQ(severity_of(fighters(0, 2), "temperament"), Severity::strain);
  EXPECT_EQ(severity_of(fighters(0, 2, strict), "temperament"), Severity::harm);
  for (const Strictness view : {lenient, usual, strict}) {
    EXPECT_FALSE(finding_of(fighters(1, 0, view), "male-rivalry"));
    EXPECT_FALSE(finding_of(fighters(0, 1, view), "temperament"));
    EXPECT_FALSE(finding_of(fighters(1, 0, view), "group-size")) << "not lonely";
    EXPECT_FALSE(finding_of(fighters(2, 0, view), "group-size")) << "said once";
  }
}

TEST(Fighters, OfUnknownSexAreToldAsLonersAndAsked) {
  const Assessment two = of(large().fish(fighter(), 2));
  EXPECT_EQ(severity_of(two, "group-size"), Severity::strain);
  EXPECT_FALSE(finding_of(two, "male-rivalry") || finding_of(two, "temperament"));
  EXPECT_TRUE(says(two, "Not known: sexes of own--fighter"));
}

TEST(Fighters, AreMendedByOneAlone) {
  for (const auto& [males, females] : {std::pair{2, 0}, std::pair{1, 1}, std::pair{0, 3}}) {
    const Plan plan = large().fish(fighter(), males + females).sexes(males, females);
    const Plan after = mended(plan, none, males > 1 ? "male-rivalry" : "temperament");
    EXPECT_EQ(after.stock[0].count, 1);
    EXPECT_EQ(finding_of(of(plan), males > 1 ? "male-rivalry" : "temperament")->remedy, "Keep 1 own--fighter");
    EXPECT_FALSE(finding_of(of(after), "male-rivalry") || finding_of(of(after), "temperament"));
  }
}

TEST(Fighters, OfGuessedSexAreNoHarm) {
  Plan plan = large().fish(fighter(), 2).sexes(2, 0);
  plan.assumed = {"/stock/0/males"};
  EXPECT_EQ(severity_of(of(plan), "male-rivalry"), Severity::strain);
}

Species rival(GroupKind lives = GroupKind::harem) {
  Species species = fish("own--rival", 6);
  species.life.style = Style::centrepiece;
  species.life.group = {.kind = lives, .least = 1, .good = 3, .all_male_ok = false, .added = "any"};
  species.temper.to_own_kind = Toward::semi;
  species.temper.rival_males = true;
  return species;
}

TEST(MaleRivalry, EndsWhereEachHasGround) {
  // 25 lengths squared: 900 cm2 each; nine tenths of the floor can be used.
  const auto on = [](double floor_cm2, int males, const Species& species) {
    return severity_of(of(a_plan().tank(floor_cm2 / 0.9 / 40, 40, 40).fish(species, males + 2).sexes(males, 2)), "male-rivalry");
  };
  EXPECT_EQ(on(1801, 2, rival()), std::nullopt);
  EXPECT_EQ(on(1790, 2, rival()), Severity::note) << "what a tape measure errs";
  EXPECT_EQ(on(1700, 2, rival()), Severity::strain);
  EXPECT_EQ(on(1000, 1, rival()), std::nullopt);
  EXPECT_EQ(on(2701, 3, rival()), std::nullopt);
  EXPECT_EQ(on(2500, 3, rival()), Severity::strain);
  EXPECT_EQ(on(2500, 5, rival()), Severity::strain);
  EXPECT_EQ(on(2500, 6, rival()), std::nullopt) << "six spread their fights";
  EXPECT_EQ(on(2500, 6, rival(GroupKind::pair)), Severity::strain) << "pairs do not";
  EXPECT_EQ(on(1000, 4, rival(GroupKind::shoal)), std::nullopt) << "in shoals they show off";
  Species mild = rival();
  mild.temper.to_own_kind = Toward::peaceful;
  EXPECT_EQ(on(1000, 2, mild), std::nullopt);
}

TEST(MaleRivalry, IsMendedByOneMaleAndSaysReHomeOfWhatSwims) {
  Plan plan = a_plan().tank(40, 30, 30).fish(rival(), 4).sexes(2, 2);
  EXPECT_EQ(finding_of(of(plan), "male-rivalry")->remedy, "Choose 1 male and 3 females of own--rival");
  EXPECT_FALSE(finding_of(of(mended(plan, none, "male-rivalry")), "male-rivalry"));
  plan.stock[0].have = 4;
  EXPECT_EQ(finding_of(of(plan), "male-rivalry")->remedy, "Re-home 1 own--rival, keep 1 male and 2 females");
  const Plan after = mended(plan, none, "male-rivalry");
  EXPECT_EQ(after.stock[0].count, 3);
  EXPECT_FALSE(finding_of(of(after), "male-rivalry"));
}

Species livebearer() {
  Species species = fish("own--live", 4);
  species.life.style = Style::small_livebearer;
  species.life.group = {.kind = GroupKind::loose, .least = 3, .good = 6, .all_male_ok = true, .added = "any"};
  species.breeding_mode = "livebearer";
  species.life.sex_ratio = "1m:3f";
  return species;
}

Plan live(int males, int females, int have = 0) {
  Plan plan = large().fish(livebearer(), males + females).sexes(males, females);
  plan.stock[0].have = have;
  return plan;
}

TEST(SexRatio, WantsTwoFemalesForAMale) {
  EXPECT_EQ(severity_of(of(live(2, 4)), "sex-ratio"), std::nullopt);
  EXPECT_EQ(severity_of(of(live(2, 3)), "sex-ratio"), Severity::strain);
  EXPECT_EQ(severity_of(of(live(1, 1)), "sex-ratio"), Severity::strain);
  EXPECT_EQ(severity_of(of(live(6, 0)), "sex-ratio"), std::nullopt) << "males alone are fine";
  EXPECT_EQ(severity_of(of(live(0, 6)), "sex-ratio"), std::nullopt);
}

TEST(SexRatio, IsMendedByChoosingByMoreFemalesOrByReHomingMales) {
  const Plan wished = live(3, 3);
  EXPECT_EQ(finding_of(of(wished), "sex-ratio")->remedy, "Choose 2 males and 4 females of own--live");
  EXPECT_FALSE(finding_of(of(mended(wished, none, "sex-ratio")), "sex-ratio"));
  const Plan swimming = live(3, 3, 6);
  EXPECT_EQ(finding_of(of(swimming), "sex-ratio")->remedy, "Keep 3 males and 6 females of own--live");
  EXPECT_FALSE(finding_of(of(mended(swimming, none, "sex-ratio")), "sex-ratio"));
  Plan tight = a_plan().tank(40, 20, 20).fish(livebearer(), 6).sexes(3, 3);
  tight.stock[0].have = 6;
  EXPECT_EQ(finding_of(of(tight), "sex-ratio")->remedy, "Re-home 2 own--live, keep 1 male and 3 females");
  EXPECT_FALSE(finding_of(of(mended(tight, none, "sex-ratio")), "sex-ratio"));
}

TEST(SurplusYoung, ComeOfBothSexesTogether) {
  EXPECT_EQ(severity_of(of(live(2, 4)), "surplus-young"), Severity::watch);
  EXPECT_FALSE(finding_of(of(live(6, 0)), "surplus-young"));
  EXPECT_FALSE(finding_of(of(live(0, 6)), "surplus-young"));
  EXPECT_FALSE(finding_of(of(mended(live(2, 4), none, "surplus-young")), "surplus-young"));
  EXPECT_TRUE(finding_of(of(live(2, 4, 6)), "surplus-young")->edits.empty()) << "what swims is not exchanged";
}

TEST(Sexes, ThatMatterAndAreNotGivenAreAskedForOnce) {
  Plan plan = large().fish(livebearer(), 6);
  EXPECT_FALSE(finding_of(of(plan), "sex-ratio") || finding_of(of(plan), "surplus-young"));
  EXPECT_TRUE(says(of(plan), "Not known: sexes of own--live"));
  EXPECT_FALSE(says(of(live(6, 0)), "Not known: sexes of own--live"));
  EXPECT_FALSE(says(of(large().fish(livebearer(), 1)), "Not known: sexes of own--live")) << "one alone";
}

Species holder(const char* id, Toward to_others) {
  Species species = fish(id, 6, to_others);
  species.life.style = Style::territorial_bottom;
  species.life.depth = {0.05, 0.15, 0.8};
  species.life.group = {.kind = GroupKind::solitary, .least = 1, .good = 1, .all_male_ok = true, .added = "last"};
  return species;
}

TEST(Territory, OfTwoKindsWantsTwiceTheFloor) {
  const auto on = [](double floor_cm2, Toward a, Toward b) {
    return severity_of(of(a_plan().tank(floor_cm2 / 0.9 / 40, 40, 40).fish(holder("own--a", a), 1).fish(holder("own--b", b), 1)),
                       "territory");
  };
  // 900 cm2 each.
  EXPECT_EQ(on(3610, Toward::semi, Toward::semi), std::nullopt);
  EXPECT_EQ(on(3550, Toward::semi, Toward::semi), Severity::note);
  EXPECT_EQ(on(3400, Toward::semi, Toward::peaceful), Severity::strain);
  EXPECT_EQ(on(3400, Toward::peaceful, Toward::peaceful), std::nullopt) << "they let each other be";
  const Plan plan = a_plan().tank(80, 40, 40).fish(holder("own--a", Toward::semi), 1).fish(holder("own--b", Toward::semi), 1);
  EXPECT_FALSE(finding_of(of(mended(plan, none, "territory")), "territory"));
}

TEST(Territory, IsSaidOncePerFloor) {
  const Assessment full =
      of(a_plan().tank(30, 30, 30).fish(holder("own--a", Toward::semi), 2).fish(holder("own--b", Toward::semi), 2));
  int said = 0;
  for (const Finding& finding : full.findings) said += finding.rule == "territory";
  EXPECT_EQ(said, 1);
}

}  // namespace
}  // namespace shoalwright
