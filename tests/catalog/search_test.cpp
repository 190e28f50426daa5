// SPDX-License-Identifier: MIT
#include "catalog/search.h"

#include <algorithm>

#include "built_in.h"
#include "catalog/fold.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

bool finds(const Catalog& catalog, const std::string& query, const std::string& id) {
  const std::vector<SearchHit> hits = search(catalog, query);
  return std::any_of(hits.begin(), hits.end(), [&](const SearchHit& hit) { return hit.species->id == id; });
}

std::string first_id(const std::string& query) {
  const std::vector<SearchHit> hits = search(built_in(), query);
  return hits.empty() ? "none" : hits.front().species->id;
}

/// All texts that one wrong, missing, extra or swapped letter makes of a word.
std::vector<std::string> slips_of(const std::string& word) {
  std::vector<std::string> slips;
  for (std::size_t i = 0; i <= word.size(); ++i) {
    std::string extra = word;
    extra.insert(i, 1, 'q');
    slips.push_back(extra);
    if (i == word.size()) break;
    std::string wrong = word, missing = word;
    wrong[i] = 'q';
    missing.erase(i, 1);
    slips.push_back(wrong);
    slips.push_back(missing);
    if (i + 1 == word.size()) continue;
    std::string swapped = word;
    std::swap(swapped[i], swapped[i + 1]);
    slips.push_back(swapped);
  }
  return slips;
}

/// A catalogue of cards that have nothing but these common names.
Catalog shelf_of(const std::vector<std::string>& names) {
  Catalog catalog;
  for (const std::string& name : names) {
    Species species;
    species.id = "own--" + std::to_string(catalog.species.size());
    species.name.common = {{name, "en"}};
    catalog.species.push_back(species);
  }
  return catalog;
}

std::vector<std::string> found_on(const Catalog& shelf, const std::string& query) {
  std::vector<std::string> names;
  for (const SearchHit& hit : search(shelf, query)) names.push_back(hit.name);
  return names;
}

// Each name is a search of the whole catalogue: where tests run slowly (Node) every eighth card stands for all.
TEST(Search, EveryNameOnACardFindsIt) {
  int names = 0;
  for (std::size_t i = 0; i < built_in().species.size(); i += plans_step) {
    const Species& species = built_in().species[i];
    std::vector<std::string> all{species.name.scientific, species.name.family};
    for (const CommonName& name : species.name.common) all.push_back(name.text);
    for (const auto* list : {&species.name.synonyms, &species.name.misapplied, &species.name.sold_as})
      all.insert(all.end(), list->begin(), list->end());
    for (const std::string& name : all) EXPECT_TRUE(finds(built_in(), name, species.id)) << name;
    names += static_cast<int>(all.size());
  }
  EXPECT_GT(names, 2000 / plans_step);
}

TEST(Search, ACardsOwnNamesFindItFirst) {
  for (std::size_t i = 0; i < built_in().species.size(); i += plans_step) {
    const Species& species = built_in().species[i];
    EXPECT_EQ(first_id(display_name(species)), species.id) << display_name(species);
    EXPECT_EQ(first_id(species.name.scientific), species.id) << species.name.scientific;
    for (const std::string& name : species.name.synonyms) EXPECT_EQ(first_id(name), species.id) << name;
  }
}

TEST(Search, OneSlipInAWordOfFiveAndMoreLettersIsForgiven) {
  int slips = 0;
  for (std::size_t i = 0; i < built_in().species.size(); i += 7 * plans_step) {
    const Species& species = built_in().species[i];
    const std::string name = folded(display_name(species));
    for (std::size_t from = 0; from < name.size();) {
      const std::size_t to = std::min(name.find(' ', from), name.size());
      const std::string word = name.substr(from, to - from);
      if (word.size() >= 5) {
        for (const std::string& slip : slips_of(word)) {
          EXPECT_TRUE(finds(built_in(), name.substr(0, from) + slip + name.substr(to), species.id)) << slip << " for " << name;
          ++slips;
        }
      }
      from = to + 1;
    }
  }
  EXPECT_GT(slips, 1000 / plans_step);
}

TEST(Search, AWordOfFourLettersIsTakenAtItsLetters) {
  const Catalog shelf = shelf_of({"neon tetra"});
  EXPECT_TRUE(found_on(shelf, "neom").empty());
  EXPECT_TRUE(found_on(shelf, "nen").empty());
  EXPECT_TRUE(found_on(shelf, "neoon").empty());
  EXPECT_EQ(found_on(shelf, "neon").size(), 1u);
}

TEST(Search, TwoSlipsInOneWordAreTooMany) {
  const Catalog shelf = shelf_of({"angelfish"});
  EXPECT_EQ(found_on(shelf, "angelfsh").size(), 1u);
  EXPECT_TRUE(found_on(shelf, "anglfsh").empty());
  EXPECT_TRUE(found_on(shelf, "qngelfisq").empty());
}

TEST(Search, OneSlipInEachOfTwoWordsIsForgiven) { EXPECT_TRUE(finds(built_in(), "trheadfin rainbofish", "iriatherina-werneri")); }

TEST(Search, AWordIsFoundWhileItIsTypedAlsoWithASlip) {
  const Catalog shelf = shelf_of({"harlequin rasbora"});
  for (const char* query : {"h", "harl", "harlequ", "harlwqu", "halrequ", "harlqu", "rasb"})
    EXPECT_EQ(found_on(shelf, query).size(), 1u) << query;
  for (const char* query : {"x", "harx", "hxxlequ"}) EXPECT_TRUE(found_on(shelf, query).empty()) << query;
}

TEST(Search, ThreeLettersInsideAWordAreEnoughTwoAreNot) {
  const Catalog shelf = shelf_of({"angelfish"});
  EXPECT_EQ(found_on(shelf, "elf").size(), 1u);
  EXPECT_TRUE(found_on(shelf, "lf").empty());
}

TEST(Search, BestFirstWholeNamesThenWordsThenBeginningsThenTheInsideThenSlips) {
  const Catalog shelf = shelf_of({"mollz", "amolly", "mollyfish", "black molly", "molly"});
  EXPECT_EQ(found_on(shelf, "molly"), (std::vector<std::string>{"molly", "black molly", "mollyfish", "amolly", "mollz"}));
}

TEST(Search, ASlipIsAlwaysRankedBehindALetterTrueFind) {
  Catalog shelf = shelf_of({"guppi", "some other fish"});
  shelf.species[1].name.family = "Guppy family";
  EXPECT_EQ(found_on(shelf, "guppy"), (std::vector<std::string>{"Guppy family", "guppi"}));
  EXPECT_FALSE(search(shelf, "guppy")[0].forgiven);
  EXPECT_TRUE(search(shelf, "guppy")[1].forgiven);
}

TEST(Search, CommonNamesComeBeforeScientificOldTradeAndFamilyNames) {
  Catalog shelf = shelf_of({"e", "d", "c", "b", "target fish"});
  shelf.species[0].name.family = "target";
  shelf.species[1].name.sold_as = {"target"};
  shelf.species[2].name.synonyms = {"target"};
  shelf.species[3].name.scientific = "target";
  shelf.species[4].name.common = {{"target", "en"}};
  std::vector<NameKind> kinds;
  for (const SearchHit& hit : search(shelf, "target")) kinds.push_back(hit.kind);
  EXPECT_EQ(kinds, (std::vector<NameKind>{NameKind::common, NameKind::scientific, NameKind::old_name, NameKind::sold_as,
                                          NameKind::family}));
}

TEST(Search, AHitSaysWhichNameWasMet) {
  const std::vector<SearchHit> hits = search(built_in(), "colisa lalia");
  ASSERT_FALSE(hits.empty());
  EXPECT_EQ(hits[0].species->id, "trichogaster-lalius");
  EXPECT_EQ(hits[0].name, "Colisa lalia");
  EXPECT_EQ(hits[0].kind, NameKind::old_name);
  EXPECT_FALSE(hits[0].forgiven);
}

TEST(Search, WordsThatOnlyDifferentNamesOfACardHoldFindItLast) {
  Catalog shelf = shelf_of({"pygmy dwarf", "dwarf corydoras"});
  shelf.species[0].name.synonyms = {"Corydoras minor"};
  EXPECT_EQ(found_on(shelf, "dwarf corydoras"), (std::vector<std::string>{"dwarf corydoras", "pygmy dwarf"}));
  EXPECT_TRUE(found_on(shelf, "dwarf gourami").empty());
}

TEST(Search, EveryWordOfTheQueryHasToBeMet) {
  EXPECT_TRUE(finds(built_in(), "tiger barb", "puntigrus-tetrazona"));
  EXPECT_FALSE(finds(built_in(), "tiger shrimp", "puntigrus-tetrazona"));
  EXPECT_TRUE(search(built_in(), "zzzzzz").empty());
}

TEST(Search, CaseAccentsHyphensAndApostrophesDoNotCount) {
  const Catalog shelf = shelf_of({"Müller's half-beak"});
  for (const char* query : {"MULLERS", "müller\u2019s", "half beak", "HALF-BEAK", "  mullers   half  "})
    EXPECT_EQ(found_on(shelf, query).size(), 1u) << query;
}

TEST(Search, AnEmptyQueryFindsAllInOrderOfTheCode) {
  for (const char* query : {"", "  ", "'-."}) {
    const std::vector<SearchHit> hits = search(built_in(), query);
    ASSERT_EQ(hits.size(), built_in().species.size());
    for (std::size_t i = 0; i < hits.size(); ++i) EXPECT_EQ(hits[i].species, &built_in().species[i]);
  }
}

TEST(Search, AnyTextGivesAnAnswer) {
  std::string bytes;
  for (int i = 1; i < 256; ++i) bytes += static_cast<char>(i);
  EXPECT_TRUE(search(built_in(), bytes).empty());
  EXPECT_TRUE(search(built_in(), std::string(5000, 'a')).empty());
}

}  // namespace
}  // namespace shoalwright
