// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "catalog/catalog.h"
#include "units/json.h"
#include "units/result.h"

namespace shoalwright {

/// Reads an array of species files (catalog/schema/species.json). Every value is checked for its type, its closed list and its
/// possible range; a field that the schema does not know is refused. No two species may share a code or a name that is in use.
/// Sorted by code. The error names the species by its id and the key by its path; `place` is the JSON Pointer into the array.
Result<Catalog> read_catalog(std::string_view json_array_text);

/// Reads a keeper's own entry: the same schema without `code`, where only the id, a name, `size.adult_tl_cm`, `life.style`,
/// `life.depth` and `life.group.kind` and `.least` are needed. What is left out stays unknown: empty text, no range; the counts
/// and tempers take the mildest word. Fields that this program does not know are kept in `whole_json`. An entry without evidence
/// is the keeper's own.
Result<Species> read_species(std::string_view json_object_text);
Result<Species> read_species(const Json& entry);

}  // namespace shoalwright
