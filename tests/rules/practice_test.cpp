// SPDX-License-Identifier: MIT
// What an experienced keeper would say of well-known tanks: common practice, no source.
#include <gtest/gtest.h>

#include "support/random_stock.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

Plan demo() {
  for (const NamedPlan& named : all_plans())
    if (named.name == "riverbank" || named.name == "riverbank.json") return named.plan;
  return {};
}

TEST(Demo, HoldsNoFixAndNoStrain) {
  const Assessment riverbank = assess(demo(), catalog());
  ASSERT_EQ(riverbank.room.groups.size(), 4u);
  EXPECT_TRUE(is_clean(riverbank)) << said(riverbank);
  for (const Tightest& entry : riverbank.tightest) EXPECT_GE(entry.value, 0) << entry.margin;
}

TEST(Demo, HoldsNoneOnItsHardTapEither) {
  Plan plan = demo();
  plan.water.reset();  // GH 13, KH 8, pH 7.6
  const Assessment tap = assess(plan, catalog());
  EXPECT_TRUE(is_clean(tap)) << said(tap);
}

struct Sound {
  const char* what;
  Plan plan;
};

std::vector<Sound> sound_tanks() {
  return {
      {"one fighter in 60 cm", a_plan().tank(59, 29, 29.5).kind("betta-splendens", 1)},
      {"platys and guppies at GH 18",
       a_plan().tank(98.4, 38.4, 44.2).tap(7.8, 18, 10).no_aim().kind("xiphophorus-maculatus", 6).kind("poecilia-reticulata", 6)},
      {"yellow mbuna at GH 16", a_plan().tank(118, 48, 49).tap(8, 16, 10).no_aim().kind("labidochromis-caeruleus", 8)},
      {"white clouds at 20 degrees", a_plan().tank(78.8, 33.8, 39.4).aim(20).kind("tanichthys-albonubes", 10)},
      {"six kuhlis in 60 cm", a_plan().tank(59, 29, 29.5).tap(6.8, 6, 3).kind("pangio-semicincta", 6)},
      {"ten neons in 60 cm, slightly cool", a_plan().tank(59, 29, 34.4).tap(7, 8, 4).aim(23).kind("paracheirodon-innesi", 10)},
      {"cherry shrimps in a cube", a_plan().tank(29.2, 29.2, 29.6).tap(7.2, 9, 5).aim(22).kind("neocaridina-davidi", 12)},
      {"a pair of rams with cardinals in 100 cm", a_plan()
                                                      .tank(98.4, 38.4, 44.2)
                                                      .tap(6.5, 5, 3)
                                                      .aim(27)
                                                      .kind("mikrogeophagus-ramirezi", 2)
                                                      .kind("paracheirodon-axelrodi", 12)},
      {"corydoras and harlequins in 80 cm",
       a_plan().tank(78.8, 33.8, 39.4).kind("hoplisoma-sterbai", 6).kind("trigonostigma-heteromorpha", 10)},
      {"six male guppies in 60 cm, hard tap",
       a_plan().tank(59, 29, 29.5).tap(7.8, 16, 9).no_aim().kind("poecilia-reticulata", 6)},
      {"cherry barbs and honey gouramis in 80 cm",
       a_plan().tank(78.8, 33.8, 39.4).kind("rohanella-titteya", 8).kind("trichogaster-chuna", 2)},
      {"otos, Amano shrimps and embers in 60 cm", a_plan()
                                                      .tank(59, 29, 29.5)
                                                      .tap(6.8, 6, 3)
                                                      .kind("otocinclus-vittatus", 6)
                                                      .kind("caridina-multidentata", 6)
                                                      .kind("hyphessobrycon-amandae", 10)},
      {"six X-ray tetras in the common 60 cm", a_plan().tank(59, 29, 29.5).kind("pristella-maxillaris", 6)},
      {"one pea puffer in 40 cm", a_plan().tank(39.2, 19.2, 24.6).kind("carinotetraodon-travancoricus", 1)},
      {"two fancy goldfish in 150 cm, unheated",
       a_plan().tank(147.6, 57.6, 58.8).aim(20).change(0.5, 7).kind("carassius-auratus--fancy", 2)},
  };
}

/// With the gear that such a tank has: a filter that moves the surface, and tap water that holds no chlorine.
Plan kept_well(Plan plan, SurfaceMotion surface = SurfaceMotion::rippled) {
  Gear gear;
  gear.surface = surface;
  plan.gear = gear;
  plan.source.disinfectant = Disinfectant::none;
  return plan;
}

TEST(SoundTanks, HaveAirAtDawn) {
  for (const Sound& tank : sound_tanks()) {
    const Assessment drifting = assess(kept_well(tank.plan, SurfaceMotion::gentle), catalog()),
                     rippled = assess(kept_well(tank.plan), catalog());
    EXPECT_TRUE(is_clean(drifting)) << tank.what << ": " << said(drifting);
    EXPECT_FALSE(finding_of(rippled, "oxygen")) << tank.what << ": " << said(rippled);
  }
}

TEST(SoundTanks, AreClean) {
  for (const Sound& tank : sound_tanks()) {
    const Assessment assessment = assess(tank.plan, catalog());
    EXPECT_TRUE(is_clean(assessment)) << tank.what << ": " << said(assessment);
  }
}

TEST(SoundTanks, AreNotNaggedWithManyFindings) {
  for (const Sound& tank : sound_tanks()) EXPECT_LE(assess(kept_well(tank.plan), catalog()).findings.size(), 3u) << tank.what;
}

/// Company that practice calls sound, each in a tank as it is kept: planted, run in for months, under a lid.
std::vector<Sound> sound_companies() {
  const auto tank = [](double length_cm, double width_cm, double height_cm) {
    return a_plan()
        .tank(length_cm, width_cm, height_cm)
        .floor(SubstrateKind::fine_sand)
        .planted(Planting::medium)
        .running(30)
        .filter(3 * length_cm * width_cm * height_cm / 1000, 2)
        .surface(SurfaceMotion::rippled)
        .disinfectant(Disinfectant::none)
        .piece("root", 2)
        .piece("cave", 2)
        .piece("fern", 2);
  };
  return {
      {"hard-water livebearers at GH 16", tank(118, 48, 49)
                                              .tap(7.8, 16, 10)
                                              .no_aim()
                                              .kind("poecilia-reticulata", 9)
                                              .sexes(3, 6)
                                              .kind("xiphophorus-maculatus", 6)
                                              .sexes(2, 4)},
      {"males of the guppy alone", tank(59, 29, 29.5).tap(7.8, 16, 9).no_aim().kind("poecilia-reticulata", 6).sexes(6, 0)},
      {"a lone fighter", tank(59, 29, 29.5).kind("betta-splendens", 1).sexes(1, 0)},
      {"cherry barbs with gouramis",
       tank(98.4, 38.4, 44.2).kind("rohanella-titteya", 8).sexes(3, 5).kind("trichogaster-chuna", 2).sexes(1, 1)},
      {"cherry barbs with a dwarf gourami pair",
       tank(98.4, 38.4, 44.2).kind("rohanella-titteya", 8).kind("trichogaster-lalius", 2).sexes(1, 1)},
      {"an unheated tank of cool-water fish",
       tank(98.4, 38.4, 44.2).aim(20).kind("tanichthys-albonubes", 10).kind("hoplisoma-paleatum", 6)},
      {"kuhlis in 60 cm", tank(59, 29, 29.5).tap(6.8, 6, 3).kind("pangio-semicincta", 6)},
      {"otos with shrimps",
       tank(59, 29, 34.4).tap(7, 7, 4).aim(23).kind("otocinclus-vittatus", 6).kind("neocaridina-davidi", 12)},
      {"cardinals, corydoras and a pair of cockatoo cichlids", tank(98.4, 38.4, 44.2)
                                                                   .tap(6.6, 5, 3)
                                                                   .aim(25)
                                                                   .kind("paracheirodon-axelrodi", 12)
                                                                   .kind("hoplisoma-sterbai", 6)
                                                                   .kind("apistogramma-cacatuoides", 2)
                                                                   .sexes(1, 1)},
      {"cardinals, corydoras and a pair of rams", tank(98.4, 38.4, 44.2)
                                                      .tap(6.5, 5, 3)
                                                      .aim(27)
                                                      .kind("paracheirodon-axelrodi", 12)
                                                      .kind("hoplisoma-sterbai", 6)
                                                      .kind("mikrogeophagus-ramirezi", 2)
                                                      .sexes(1, 1)},
      {"harlequins, pygmy corydoras and a pearl gourami pair", tank(118, 38.4, 49)
                                                                   .kind("trigonostigma-heteromorpha", 12)
                                                                   .kind("hoplisoma-panda", 6)
                                                                   .kind("trichopodus-leerii", 2)
                                                                   .sexes(1, 1)},
  };
}

TEST(SoundCompanies, AreCleanInEveryView) {
  for (const Sound& tank : sound_companies())
    for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict}) {
      Plan plan = tank.plan;
      plan.strictness = view;
      const Assessment assessment = assess(plan, catalog());
      EXPECT_TRUE(is_clean(assessment)) << tank.what << ": " << said(assessment);
    }
}

TEST(SoundCompanies, AreLeftInPeaceByTheRulesAboutCompany) {
  for (const Sound& tank : sound_companies())
    for (const Finding& finding : assess(tank.plan, catalog()).findings) {
      if (finding.rule == "surplus-young") continue;  // both sexes are there
      EXPECT_TRUE(finding.severity == Severity::note || finding.rule == "oxygen" || finding.rule == "cover")
          << tank.what << ": " << name_of(finding.severity) << " " << finding.rule << " " << finding.text;
    }
}

TEST(SoundCompanies, AreNotNaggedWithManyFindings) {
  for (const Sound& tank : sound_companies()) {
    const Assessment assessment = assess(tank.plan, catalog());
    EXPECT_LE(assessment.findings.size(), 4u) << tank.what << ": " << said(assessment);
  }
}

TEST(PoorCompanies, AreFound) {
  const auto of = [](PlanBuilder plan, const char* rule) { return severity_of(assess(plan, catalog()), rule); };
  const PlanBuilder tank = a_plan().tank(118, 48, 49);
  EXPECT_EQ(of(PlanBuilder(tank).kind("puntigrus-tetrazona", 6).kind("pterophyllum-scalare", 4), "fin-nipping"),
            Severity::strain);
  EXPECT_EQ(of(PlanBuilder(tank).kind("amatitlania-nigrofasciata", 2).kind("paracheirodon-innesi", 10), "temperament")
                        .value_or(Severity::note) <= Severity::strain ||
                of(PlanBuilder(tank).kind("amatitlania-nigrofasciata", 2).kind("paracheirodon-innesi", 10), "predation")
                        .value_or(Severity::note) <= Severity::strain,
            true);
  EXPECT_EQ(
      of(PlanBuilder(tank).kind("carinotetraodon-travancoricus", 3).kind("neocaridina-davidi", 10), "invertebrate-predation"),
      Severity::strain);
  EXPECT_EQ(of(PlanBuilder(tank).kind("poecilia-reticulata", 6).kind("poecilia-wingei", 6), "hybrid"), Severity::watch);
  EXPECT_EQ(of(a_plan().tank(59, 29, 29.5).kind("trichogaster-lalius", 2).kind("trichogaster-chuna", 2), "look-alike-rivalry"),
            Severity::strain);
  EXPECT_EQ(of(PlanBuilder(tank).kind("maylandia-zebra", 6).kind("hoplisoma-paleatum", 6), "temperament"), Severity::harm);
}

TEST(HardWater, IsNotScoldedForWhoLivesInIt) {
  for (const char* kind : {"xiphophorus-maculatus", "poecilia-reticulata", "poecilia-sphenops", "labidochromis-caeruleus"})
    for (const double gh : {12.0, 16.0, 18.0}) {
      const Assessment hard = assess(a_plan().tank(118, 48, 49).tap(7.8, gh, 9).no_aim().kind(kind, 6), catalog());
      EXPECT_FALSE(finding_of(hard, "water-gh") || finding_of(hard, "water-kh")) << kind << " at GH " << gh << ": " << said(hard);
    }
}

TEST(Loners, AreNeverToldTheyAreLonely) {
  for (const Strictness view : {Strictness::lenient, Strictness::usual, Strictness::strict})
    for (const Species& species : catalog().species) {
      if (species.life.group.kind != GroupKind::solitary) continue;
      EXPECT_FALSE(finding_of(assess(a_plan().tank(198, 78, 60).strictness(view).kind(species.id, 1), catalog()), "group-size"))
          << species.id;
    }
}

TEST(CubeAndLongTank, OfLikeLitresAreToldApart) {
  const Assessment cube = assess(a_plan().tank(48, 48, 48).kind("danio-rerio", 8), catalog());
  const Assessment long_tank = assess(a_plan().tank(100, 33, 33.5).kind("danio-rerio", 8), catalog());
  ASSERT_NEAR(cube.volume.gross_l, long_tank.volume.gross_l, 1);
  EXPECT_FALSE(is_clean(cube)) << said(cube);
  EXPECT_TRUE(is_clean(long_tank)) << said(long_tank);
}

TEST(PhOfATenth, IsNeverRed) {
  for (const Species& species : catalog().species) {
    const double high = species.water.ph.tolerated->high;
    const Assessment over = assess(a_plan().tank(198, 78, 60).tap(high + 0.1, 10, 6).kind(species.id, 8), catalog());
    EXPECT_EQ(severity_of(over, "water-ph"), Severity::note) << species.id;
  }
}

TEST(NeonAndMolly, ShareNoWater) {
  const Assessment pair =
      assess(a_plan().tank(118, 48, 49).no_aim().kind("boraras-brigittae", 10).kind("poecilia-sphenops", 5), catalog());
  const Finding* finding = finding_of(pair, "water-gh");
  ASSERT_TRUE(finding);
  EXPECT_EQ(finding->species, (std::vector<std::string>{"boraras-brigittae", "poecilia-sphenops"}));
  EXPECT_FALSE(pair.water.gh_dgh.tolerated);
}

TEST(LeastTank, OfTheCardIsNoHarmToItsKind) {
  for (const Species& species : catalog().species) {
    const double length_cm = *species.needs.least_length_cm;
    const double height_cm = std::max(2.2 * species.size.height_with_fins_cm.value_or(0) + 6, 30.0);
    const double width_cm =
        std::max({length_cm / 2, 2.2 * species.size.adult_tl_cm, *species.needs.least_volume_l * 1000 / length_cm / height_cm});
    const int least = std::max(species.life.group.least, 1);
    const Assessment tank =
        assess(a_plan().tank(length_cm - 1.2, width_cm, height_cm + 2.5).aim({}).kind(species.id, least), catalog());
    for (const Finding& finding : tank.findings)
      EXPECT_FALSE(finding.severity == Severity::harm && (finding.rule.rfind("tank-", 0) == 0 || finding.rule == "adult-size"))
          << species.id << ": " << finding.text;
  }
}

// Litres on a card count inside the glass: the common tank of 60 x 30 x 30 cm outside holds 50.
TEST(LeastTank, OfKindsKeptFromSixtyCentimetresIsTheCommonSixty) {
  int kinds = 0;
  for (const Species& species : catalog().species) {
    if (species.needs.least_length_cm != 60) continue;
    ++kinds;
    const Assessment sixty = assess(a_plan().tank(59, 29, 29.5).glass(5).aim({}).kind(species.id, 1), catalog());
    EXPECT_FALSE(finding_of(sixty, "tank-length")) << species.id;
    EXPECT_GE(severity_of(sixty, "tank-volume").value_or(Severity::note), Severity::note) << species.id;
  }
  EXPECT_GT(kinds, 12);
}

TEST(SizeTraps, AreCaughtInTheTanksTheyAreSoldFor) {
  for (const char* kind :
       {"pterygoplichthys-pardalis", "chromobotia-macracanthus", "carassius-auratus", "gyrinocheilus-aymonieri"}) {
    const Assessment shop = assess(a_plan().tank(59, 29, 29.5).kind(kind, 1), catalog());
    EXPECT_EQ(severity_of(shop, "adult-size"), Severity::harm) << kind << ": " << said(shop);
    EXPECT_EQ(severity_of(shop, "tank-volume"), Severity::harm) << kind;
  }
}

TEST(HatchetsUnderAnOpenTop, AreAFix) {
  const Assessment open = assess(a_plan().tap(6.5, 5, 2).lid(false).kind("carnegiella-strigata", 8), catalog());
  EXPECT_EQ(severity_of(open, "lid"), Severity::harm);
}

TEST(MisplacedGuests, AreFoundByTheirWater) {
  EXPECT_EQ(severity_of(assess(a_plan().aim(29).kind("tanichthys-albonubes", 8), catalog()), "water-temperature"),
            Severity::harm);
  EXPECT_EQ(severity_of(assess(a_plan().tap(6.5, 3, 1).kind("pomacea-diffusa", 2), catalog()), "water-gh"), Severity::harm);
  const Assessment both = assess(a_plan().no_aim().kind("mikrogeophagus-ramirezi", 2).kind("tanichthys-albonubes", 8), catalog());
  ASSERT_TRUE(finding_of(both, "water-temperature"));
  EXPECT_EQ(finding_of(both, "water-temperature")->text, "No shared temperature");
}

}  // namespace
}  // namespace shoalwright
