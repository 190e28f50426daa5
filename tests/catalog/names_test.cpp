// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cctype>

#include "built_in.h"
#include "catalog/fold.h"

namespace shoalwright {
namespace {

std::string with_gaps(std::string text, char gap) {
  std::replace_if(
      text.begin(), text.end(), [](char c) { return c == ' ' || c == '-'; }, gap);
  return text;
}

std::string upper(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
  return text;
}

const std::string id_of(const Species* species) { return species ? species->id : "none"; }

void expect_every_spelling(const std::string& name, const Species& species) {
  for (const std::string& spelling : {name, with_gaps(name, ' '), with_gaps(name, '-'), upper(name), upper(with_gaps(name, '-'))})
    EXPECT_EQ(id_of(find_species(built_in(), spelling)), species.id) << spelling;
}

TEST(FindSpecies, EveryIdAliasAndSynonymResolvesInEverySpelling) {
  int names = 0;
  for (const Species& species : built_in().species) {
    expect_every_spelling(species.id, species);
    expect_every_spelling(species.name.scientific, species);
    for (const std::string& alias : species.aliases) expect_every_spelling(alias, species);
    for (const std::string& synonym : species.name.synonyms) expect_every_spelling(synonym, species);
    names += 2 + static_cast<int>(species.aliases.size() + species.name.synonyms.size());
  }
  EXPECT_GT(names, 120);
}

TEST(FindSpecies, ANameThatTheTradeMisappliesLeadsToTheAnimalInTheTank) {
  for (const Species& species : built_in().species) {
    for (const std::string& name : species.name.misapplied) EXPECT_EQ(id_of(find_species(built_in(), name)), species.id) << name;
  }
}

// Old and current names as the literature has them: the splits of Puntius, Corydoras, Colisa, Botia and Tetraodon, the renamed
// Caridina japonica, and the labels that name another animal.
TEST(FindSpecies, TheOldNamesThatBooksStillUseAreKnown) {
  const std::vector<std::pair<std::string, std::string>> pairs{{"Puntius titteya", "rohanella-titteya"},
                                                               {"Puntius tetrazona", "puntigrus-tetrazona"},
                                                               {"Barbus tetrazona", "puntigrus-tetrazona"},
                                                               {"Rasbora heteromorpha", "trigonostigma-heteromorpha"},
                                                               {"Brachydanio rerio", "danio-rerio"},
                                                               {"Corydoras sterbai", "hoplisoma-sterbai"},
                                                               {"Corydoras pygmaeus", "gastrodermus-pygmaeus"},
                                                               {"Colisa lalia", "trichogaster-lalius"},
                                                               {"Colisa chuna", "trichogaster-chuna"},
                                                               {"Botia macracantha", "chromobotia-macracanthus"},
                                                               {"Pangio kuhlii", "pangio-semicincta"},
                                                               {"Acanthophthalmus kuhlii", "pangio-semicincta"},
                                                               {"Papiliochromis ramirezi", "mikrogeophagus-ramirezi"},
                                                               {"Tetraodon travancoricus", "carinotetraodon-travancoricus"},
                                                               {"Caridina japonica", "caridina-multidentata"},
                                                               {"Neocaridina heteropoda", "neocaridina-davidi"},
                                                               {"Neritina natalensis", "vittina-natalensis"},
                                                               {"Pomacea bridgesii", "pomacea-diffusa"},
                                                               {"Pterygoplichthys gibbiceps", "pterygoplichthys-pardalis"},
                                                               {"Ancistrus cf. cirrhosus", "ancistrus-cirrhosus"}};
  for (const auto& [old_name, id] : pairs) EXPECT_EQ(id_of(find_species(built_in(), old_name)), id) << old_name;
}

TEST(FindSpecies, TheFormThatKeepsDifferentlyIsNeverMistakenForTheSpecies) {
  EXPECT_EQ(id_of(find_species(built_in(), "carassius-auratus")), "carassius-auratus");
  EXPECT_EQ(id_of(find_species(built_in(), "Carassius auratus")), "carassius-auratus");
  EXPECT_EQ(id_of(find_species(built_in(), "carassius-auratus--fancy")), "carassius-auratus--fancy");
}

TEST(FindSpecies, WhatIsInNoCardIsNotFound) {
  for (const char* name : {"", " ", "-", "nemo", "pangio", "pangio-semicinct", "paracheirodon innesi tetra", "own--pangio"})
    EXPECT_EQ(find_species(built_in(), name), nullptr) << name;
}

TEST(FindSpecies, AMisappliedNameOfTwoCardsLeadsToNeither) {
  Catalog catalog;
  for (const char* id : {"first-animal", "second-animal"}) {
    Species species;
    species.id = id;
    species.name.misapplied = {"Labellum commune"};
    catalog.species.push_back(species);
  }
  EXPECT_EQ(find_species(catalog, "labellum-commune"), nullptr);
  catalog.species.pop_back();
  EXPECT_EQ(id_of(find_species(catalog, "labellum-commune")), "first-animal");
  // Once the true bearer of the name has a card of its own, the name is its.
  Species bearer;
  bearer.id = "labellum-commune";
  catalog.species.push_back(bearer);
  EXPECT_EQ(id_of(find_species(catalog, "Labellum commune")), "labellum-commune");
}

TEST(FindSpecies, ByItsPermanentCodeAndNoOther) {
  for (const Species& species : built_in().species) EXPECT_EQ(find_species(built_in(), species.code), &species);
  for (const int code : {-1, 0, 65535}) EXPECT_EQ(find_species(built_in(), code), nullptr) << code;
}

TEST(Folding, CaseGapsAccentsAndApostrophesDoNotCount) {
  EXPECT_EQ(folded("  Ancistrus cf. CIRRHOSUS "), "ancistrus cf cirrhosus");
  EXPECT_EQ(folded("carassius-auratus--fancy"), "carassius auratus fancy");
  EXPECT_EQ(folded("Sterba's corydoras"), "sterbas corydoras");
  EXPECT_EQ(folded("Sterba\u2019s corydoras"), "sterbas corydoras");
  EXPECT_EQ(folded("Müller (1845), Ährenfisch × Ñandú"), "muller 1845 ahrenfisch nandu");
  EXPECT_EQ(folded("ネオン"), "ネオン");
  EXPECT_EQ(folded("\xc3"), "\xc3");
  EXPECT_EQ(folded(""), "");
}

TEST(EvidenceFor, TheLongestPathWinsAndTheStarIsTheRest) {
  Species species;
  const auto add = [&](const char* path, Evidence evidence) { species.evidence.push_back({path, evidence, "", ""}); };
  EXPECT_EQ(evidence_for(species, "life"), nullptr);
  add("life.group", Evidence::published);
  add("*", Evidence::from_memory);
  add("life", Evidence::common_practice);
  EXPECT_EQ(evidence_for(species, "life.group.least")->evidence, Evidence::published);
  EXPECT_EQ(evidence_for(species, "life.group")->evidence, Evidence::published);
  EXPECT_EQ(evidence_for(species, "life.groups")->evidence, Evidence::common_practice);
  EXPECT_EQ(evidence_for(species, "life.jumps")->evidence, Evidence::common_practice);
  EXPECT_EQ(evidence_for(species, "lifespan")->evidence, Evidence::from_memory);
  EXPECT_EQ(evidence_for(species, "water")->evidence, Evidence::from_memory);
}

TEST(DisplayName, IsTheFirstCommonNameElseTheScientificOne) {
  Species species;
  species.name.scientific = "Exemplum plenum";
  EXPECT_EQ(display_name(species), "Exemplum plenum");
  species.name.common = {{"full example", "en"}, {"example", "en"}};
  EXPECT_EQ(display_name(species), "full example");
}

}  // namespace
}  // namespace shoalwright
