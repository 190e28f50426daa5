// SPDX-License-Identifier: MIT
// One trade word, several animals: who is sold under it, and what tells them apart.
#include "catalog/label.h"

#include <algorithm>
#include <set>

#include "built_in.h"
#include "catalog/fold.h"

namespace shoalwright {
namespace {

std::vector<const Species*> all_kinds() {
  std::vector<const Species*> kinds;
  for (const Species& species : built_in().species) kinds.push_back(&species);
  return kinds;
}

std::vector<std::string> sold_under(const std::string& word) {
  std::vector<std::string> ids;
  const std::vector<const Species*> kinds = all_kinds();
  if (const std::optional<Label> label = label_of(kinds, word))
    for (const Species* kind : label->kinds) ids.push_back(kind->id);
  return ids;
}

using Ids = std::vector<std::string>;

TEST(Label, TheWordsThatAdvisersAreAskedAboutLeadToAllThatIsSoldUnderThem) {
  EXPECT_EQ(sold_under("Siamese algae eater"),
            (Ids{"crossocheilus-oblongus", "epalzeorhynchos-kalopterus", "gyrinocheilus-aymonieri"}));
  EXPECT_EQ(sold_under("molly"), (Ids{"poecilia-sphenops", "poecilia-latipinna", "poecilia-velifera"}));
  EXPECT_EQ(sold_under("zebra nerite"), (Ids{"vittina-natalensis", "vittina-turrita"}));
  EXPECT_EQ(sold_under("harlequin rasbora"), (Ids{"trigonostigma-heteromorpha", "trigonostigma-espei", "trigonostigma-hengeli"}));
}

TEST(Label, ManyOfThemAndLooseWritingAreTheSameWord) {
  for (const char* word : {"mollies", "MOLLY", " molly "}) EXPECT_EQ(sold_under(word), sold_under("molly")) << word;
  EXPECT_EQ(sold_under("siamese-algae-eaters"), sold_under("Siamese algae eater"));
}

// The name that a book gave one animal and the trade another.
TEST(Label, ANameThatTheTradeMisappliesLeadsToWhatIsSold) {
  EXPECT_EQ(sold_under("Hypostomus plecostomus"), (Ids{"pterygoplichthys-pardalis", "pterygoplichthys-disjunctivus"}));
  EXPECT_EQ(sold_under("pomacea bridgesii"), (Ids{"pomacea-diffusa", "pomacea-canaliculata"}));
}

TEST(Label, TheEndOfNamesIsAWordOfTheTradeToo) {
  const Ids ids = sold_under("bumblebee catfish");
  EXPECT_EQ(std::set<std::string>(ids.begin(), ids.end()),
            (std::set<std::string>{"microglanis-iheringi", "pseudomystus-siamensis"}));
}

TEST(Label, AWholeFamilyOneKindAndNothingAreNoLabel) {
  for (const char* word : {"tetra", "corydoras", "cherry barb", "", "x", "zz", "nonsense"})
    EXPECT_TRUE(sold_under(word).empty()) << word;
}

TEST(Label, HoldsTwoToFiveDifferentKindsForEveryNameOfEveryCard) {
  const std::vector<const Species*> kinds = all_kinds();
  int labels = 0;
  for (std::size_t i = 0; i < kinds.size(); i += 2) {
    const std::string& word = display_name(*kinds[i]);
    const std::optional<Label> label = label_of(kinds, word);
    if (!label) continue;
    ++labels;
    EXPECT_EQ(label->kinds.front(), kinds[i]) << word << ": who bears it stands first";
    EXPECT_GE(label->kinds.size(), 2u) << word;
    EXPECT_LE(label->kinds.size(), Label::most_kinds) << word;
    EXPECT_EQ(std::set(label->kinds.begin(), label->kinds.end()).size(), label->kinds.size()) << word;
    EXPECT_EQ(folded(label->word), folded(word));
  }
  EXPECT_GT(labels, 50);
}

// What the catalogue says of one card it says by name: whoever is found under a label has a trait that tells it from the others.
TEST(Label, SomethingTellsTheKindsOfEveryLabelApart) {
  const std::vector<const Species*> kinds = all_kinds();
  for (const Species* kind : kinds)
    if (const std::optional<Label> label = label_of(kinds, display_name(*kind))) {
      EXPECT_FALSE(traits_apart(label->kinds).empty()) << display_name(*kind);
    }
}

TEST(Label, SaysWhichAnimalsSoldUnderItHaveNoCard) {
  const std::vector<const Species*> kinds = all_kinds();
  const std::optional<Label> label = label_of(kinds, "Siamese algae eater");
  ASSERT_TRUE(label);
  EXPECT_EQ(label->card_less, (Ids{"Crossocheilus langei", "Crossocheilus atrilimes", "Garra cambodgiensis"}));
}

TEST(LabelTraits, AreThoseThatDifferByEnough) {
  Species first = *find_species(built_in(), "danio-rerio"), second = first;
  const std::vector<const Species*> kinds{&first, &second};
  EXPECT_TRUE(traits_apart(kinds).empty());
  second.size.adult_tl_cm = first.size.adult_tl_cm * 1.1;
  second.water.temperature_c.tolerated->high += 1.5;
  EXPECT_TRUE(traits_apart(kinds).empty()) << "no eye and no thermometer tells them by that";
  second.size.adult_tl_cm = first.size.adult_tl_cm * 1.2;
  second.water.temperature_c.tolerated->high += 1;
  second.look.marks = {"spots"};
  second.mouth.eats_shrimp = "adults";
  EXPECT_EQ(traits_apart(kinds),
            (std::vector{LabelTrait::length, LabelTrait::marks, LabelTrait::temperature, LabelTrait::shrimp}));
  second.water.temperature_c.tolerated.reset();
  second.mouth.eats_shrimp = "";
  EXPECT_EQ(traits_apart(kinds), (std::vector{LabelTrait::length, LabelTrait::marks})) << "what is not known tells nothing";
}

}  // namespace
}  // namespace shoalwright
