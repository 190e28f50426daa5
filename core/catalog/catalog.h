// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "catalog/species.h"

namespace shoalwright {

/// What is known: all species, in order of their code. Read once, never changed.
struct Catalog {
  std::vector<Species> species;
  bool whole = true;  ///< false: of the first of the program's two files, which has the first cards and the first rules alone
};

/// By id, alias, accepted name or any synonym in use; space or hyphen, any case. Null when there is none.
const Species* find_species(const Catalog& catalog, std::string_view name);

/// By permanent code. Null when there is none.
const Species* find_species(const Catalog& catalog, int code);

}  // namespace shoalwright
