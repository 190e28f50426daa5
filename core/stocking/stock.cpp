// SPDX-License-Identifier: MIT
#include "stocking/stock.h"
#include "units/order.h"

#include <algorithm>

namespace shoalwright {

namespace {

/// The keeper's own cards are looked at first, and again by the id of the catalogue's card, which they may override.
const Species* resolve(const std::string& name, const Plan& plan, const Catalog& own, const Catalog& catalog) {
  const auto mine = [&](std::string_view wanted) -> const Species* {
    const Species* found = find_species(own, wanted);
    return found ? &plan.own_species[static_cast<std::size_t>(found - own.species.data())] : nullptr;
  };
  if (own.species.empty()) return find_species(catalog, name);
  if (const Species* found = mine(name)) return found;
  const Species* found = find_species(catalog, name);
  if (!found) return nullptr;
  for (const Species& species : plan.own_species)
    if (species.id == found->id) return &species;
  return found;
}

/// Known only when both are.
void add(std::optional<int>& sum, const std::optional<int>& part) {
  if (sum && part)
    *sum += *part;
  else
    sum.reset();
}

}  // namespace

std::vector<Kept> resolve_stock(const Plan& plan, const Catalog& catalog) {
  const Catalog own{plan.own_species};
  std::vector<Kept> stock;
  for (std::size_t line = 0; line < plan.stock.size(); ++line) {
    const Group& group = plan.stock[line];
    if (!(group.count > 0)) continue;
    const Species* species = resolve(group.species, plan, own, catalog);
    const std::string& id = species ? species->id : group.species;
    const auto same = std::find_if(stock.begin(), stock.end(), [&](const Kept& kept) { return kept.id == id; });
    if (same == stock.end()) {
      stock.push_back({.species = species,
                       .id = id,
                       .count = group.count,
                       .have = group.have,
                       .males = group.males,
                       .females = group.females,
                       .lines = {static_cast<int>(line)}});
      continue;
    }
    same->count += group.count;
    same->have += group.have;
    add(same->males, group.males);
    add(same->females, group.females);
    same->lines.push_back(static_cast<int>(line));
  }
  return stock;
}

Kept wished_group(const Species& species, int count) {
  return {.species = &species, .id = species.id, .count = count, .have = 0, .males = {}, .females = {}, .lines = {}};
}

std::vector<Kept> by_id(std::vector<Kept> stock) {
  sort_stable(stock, [](const Kept& a, const Kept& b) { return a.id < b.id; });
  return stock;
}

}  // namespace shoalwright
