// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalog/species.h"

namespace shoalwright {

// Which kinds a plain common tank suits beside one kind: large enough for both, planted, with good groups of each. It looks at
// the cards alone; what a certain tank allows is the shelf's answer (advice/shelf.h).

/// What parts two kinds. Water: the two ranges miss each other by more than a home kit reads wrong.
enum class Parting {
  eats_it,  ///< the other one eats the kind in question
  eaten,    ///< it is eaten itself
  bitten,   ///< a biter is among the two: no size is safe
  shrimp,   ///< one is a shrimp, the other eats grown ones
  snail,    ///< one is a snail, the other eats them
  fins,     ///< one nips, the other has long fins
  bullied,  ///< one drives away all others, at a level where the other swims too
  current,  ///< still water for one, a strong current for the other
  temperature,
  ph,
  gh,
  kh,
  salt  ///< one needs brackish water, the other fresh
};

/// Water that two kinds share: where both live. Empty where one of the two cards has no figure.
struct SharedWater {
  std::optional<Range> temperature_c, ph, gh_dgh, kh_dkh;
  /// The narrowest of the four: what is shared of the narrower of the two ranges, 0 to 1; of what both live in, and of what both
  /// thrive in.
  double width = 1, ideal = 1;
  bool operator==(const SharedWater&) const = default;
};

struct GoodCompany {
  const Species* species = nullptr;
  SharedWater water;
  std::vector<std::string> mind;  ///< what to see to, sentences without a full stop; metric
};

struct PoorCompany {
  const Species* species = nullptr;
  Parting parting = Parting::salt;
  std::string text;  ///< why, about the other kind: "Would be eaten: grows to 2.2 cm beside 13 cm"; metric
  double miss = 0;   ///< water: by how many times what a kit reads wrong the ranges miss each other; else 0
};

struct Company {
  std::vector<GoodCompany> good;  ///< most shared ideal water first, each thing to mind counting as a quarter less; then most
                                  ///< shared water
  std::vector<PoorCompany> poor;  ///< whom the water would suit first, then by how far the water misses
  std::vector<const Species*> unknown;  ///< nothing parts them, but a range of water is not known
  std::string unknown_for;              ///< what `species` itself has no figure for ("GH and KH"); empty: it has all four
};

/// Every kind of `kinds` but `species` itself falls into one of the lists. Swallowing after stocking/swallow.h (its sources
/// there), all else common practice, no source: who nips, bullies, feeds fast, looks alike or crosses is what the cards say.
/// Figures of `rules/limits.h` for what a kit reads wrong. The kinds must outlive the answer.
Company company_of(const Species& species, const std::vector<const Species*>& kinds);

}  // namespace shoalwright
