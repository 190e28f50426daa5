// SPDX-License-Identifier: MIT
#include "app/look.h"

#include "stocking/stock.h"

namespace shoalwright {

int plate_of(const Look& look, const std::string& species) {
  const std::vector<Kept> stock = resolve_stock(look.shown, look.catalog);
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i].id == species) return int(i) + 1;
  return 0;
}

const Species* species_of(const Look& look, const std::string& species) {
  for (const Species& own : look.shown.own_species)
    if (own.id == species) return &own;
  return find_species(look.catalog, species);
}

std::string name_of_species(const Look& look, const std::string& species) {
  const Species* card = species_of(look, species);
  return card ? display_name(*card) : species;
}

}  // namespace shoalwright
