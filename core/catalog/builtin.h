// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "catalog/catalog.h"

namespace shoalwright {

/// The catalogue that the program brings along: catalog/species, sorted by code. Its tests have checked it against the schema;
/// here it is only read.
Catalog builtin_catalog();

/// The packed cards (units/packed_json.h) that catalog/bundle.py makes of all species files.
std::string_view builtin_cards();

}  // namespace shoalwright
