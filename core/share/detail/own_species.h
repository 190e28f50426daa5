// SPDX-License-Identifier: MIT
#pragma once

#include "catalog/species.h"
#include "units/json.h"

namespace shoalwright {

/// A keeper's own species of a plan, kept whole. `place` is its JSON Pointer.
Result<Species> read_own_species(const Json& json, const std::string& place);

}  // namespace shoalwright
