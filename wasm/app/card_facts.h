// SPDX-License-Identifier: MIT
// What a card says, fact by fact, in the words of the screen and the keeper's units: for the page of a kind and for paper.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "app/measures.h"
#include "catalog/catalog.h"
#include "catalog/rest_of_card.h"

namespace shoalwright {

/// One fact with where it comes from: "Adult length", "4.5 cm".
struct CardFact {
  std::string name, value;
  const EvidenceEntry* evidence = nullptr;  ///< of the card; null where it says nothing
};
struct CardChapter {
  std::string_view heading;  ///< "Body", "Water", "Life", "Temper", "Food", "Needs"
  std::vector<CardFact> facts;
};

/// All that the card knows; what it does not know is left out.
std::vector<CardChapter> card_chapters(const Species& species, const RestOfCard& rest, const Measures& measures);
/// How it breeds, in short: mode, told apart, water, times, first food, young.
std::vector<CardFact> breeding_facts(const Species& species, const RestOfCard& rest, const Measures& measures);
/// What to take care of with the kind, whole sentences: jumps, salt, size, the note of the card, lists that name it, and that no
/// animal is ever released. `region`: the plan's, empty: none.
std::vector<std::string> card_cautions(const Species& species, std::string_view region, const Measures& measures);

/// Published sources of a card in the order in which its facts name them: "Froese and Pauly 2024. FishBase. Species table".
struct CardSources {
  std::vector<std::string> cited;
  /// "1" of a source that it adds where it is new, "practice", "memory", "yours"; empty for null.
  std::string mark(const EvidenceEntry* evidence);
};

/// "cave-spawner" is "cave spawner".
std::string spaced_word(std::string word);
/// A word of a closed list as the screen says it, by the path of its field: "short and deep", "calm, in the middle".
std::string said_word(std::string_view path, std::string_view word);

}  // namespace shoalwright
