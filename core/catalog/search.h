// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/catalog.h"

namespace shoalwright {

/// What kind of name the query was found in, the most telling first.
enum class NameKind { common, scientific, old_name, sold_as, family };

struct SearchHit {
  const Species* species = nullptr;  ///< never null in a result; lives as long as the catalogue
  std::string name;                  ///< the name that matched best, as it is written on the card
  NameKind kind = NameKind::common;
  bool forgiven = false;  ///< one letter of a word had to be overlooked
  bool operator==(const SearchHit&) const = default;
};

/// Every species of which each word of the query begins, is or lies in a word of one of its names: common, scientific, old and
/// misapplied names, other animals sold under its label, family. Letter case, accents, hyphens and apostrophes do not count. In
/// words of five and more letters one wrong, missing, extra or swapped letter is forgiven, also while the word is still being
/// typed. Best first: whole names before whole words before beginnings, unforgiven before forgiven, common names before all
/// others; ties in the order of `kinds`. An empty query finds all, in that order.
std::vector<SearchHit> search(std::span<const Species* const> kinds, std::string_view query);
std::vector<SearchHit> search(const Catalog& catalog, std::string_view query);

}  // namespace shoalwright
