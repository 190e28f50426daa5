// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "catalog/species.h"

namespace shoalwright {

/// An English common name for that many animals: "cherry barb", 8 -> "cherry barbs"; "angelfish" and "pygmy corydoras" stay.
std::string name_for(const std::string& common_name, int count);

/// The same of a species; a scientific name, where it has no other, stays.
std::string name_for(const Species& species, int count);

}  // namespace shoalwright
