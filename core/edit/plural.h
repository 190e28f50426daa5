// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace shoalwright {

/// An English common name for that many animals: "cherry barb", 8 -> "cherry barbs"; "angelfish" and "pygmy corydoras" stay. A
/// scientific name (capital letter and a space) stays too.
std::string name_for(const std::string& name, int count);

}  // namespace shoalwright
