// SPDX-License-Identifier: MIT
#include "catalog/catalog.h"

#include <algorithm>

#include "catalog/fold.h"

namespace shoalwright {

const Species* find_species(const Catalog& catalog, std::string_view name) {
  for (const Species& species : catalog.species) {
    if (species.id == name) return &species;
  }
  const std::string wanted = folded(name);
  if (wanted.empty()) return nullptr;
  const auto is_wanted = [&](const std::string& other) { return folded(other) == wanted; };
  const auto one_is_wanted = [&](const std::vector<std::string>& others) {
    return std::any_of(others.begin(), others.end(), is_wanted);
  };
  for (const Species& species : catalog.species) {
    if (is_wanted(species.id) || is_wanted(species.name.scientific)) return &species;
  }
  for (const Species& species : catalog.species) {
    if (one_is_wanted(species.aliases) || one_is_wanted(species.name.synonyms)) return &species;
  }
  // A name that the trade gives to the wrong animal helps only while a single species answers to it.
  const Species* found = nullptr;
  for (const Species& species : catalog.species) {
    if (!one_is_wanted(species.name.misapplied)) continue;
    if (found) return nullptr;
    found = &species;
  }
  return found;
}

const Species* find_species(const Catalog& catalog, int code) {
  if (!(code > 0)) return nullptr;
  for (const Species& species : catalog.species) {
    if (species.code == code) return &species;
  }
  return nullptr;
}

const EvidenceEntry* evidence_for(const Species& species, const std::string& path) {
  const EvidenceEntry* best = nullptr;
  std::size_t best_length = 0;
  for (const EvidenceEntry& entry : species.evidence) {
    const bool is_rest = entry.path == "*";
    const std::size_t length = is_rest ? 0 : entry.path.size();
    const bool matches = is_rest || (path.compare(0, length, entry.path) == 0 && (path.size() == length || path[length] == '.'));
    if (!matches || (best && length < best_length)) continue;
    best = &entry;
    best_length = length;
  }
  return best;
}

const std::string& display_name(const Species& species) {
  return species.name.common.empty() ? species.name.scientific : species.name.common.front().text;
}

}  // namespace shoalwright
