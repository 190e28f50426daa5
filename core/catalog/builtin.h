// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "catalog/catalog.h"

namespace shoalwright {

/// The catalogue that the program brings along: catalog/species, sorted by code. Its tests have checked it against the schema;
/// here it is only read.
Catalog builtin_catalog();

/// A small part of it: what the first look of the page needs until the whole is there.
Catalog first_catalog();

/// The cards of a text packed by catalog/bundle.py (units/packed_json.h), in the order of their codes.
Catalog packed_catalog(std::string_view packed);

/// The packed cards of both.
std::string_view builtin_cards();
std::string_view first_cards();

}  // namespace shoalwright
