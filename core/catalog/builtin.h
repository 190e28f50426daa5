// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace shoalwright {

/// The text of all species files of catalog/species, joined into one JSON array by the build (catalog/bundle.cmake).
std::string_view builtin_catalog_json();

}  // namespace shoalwright
