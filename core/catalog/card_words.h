// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "catalog/species.h"

namespace shoalwright {

/// The word that the species files have for a value.
std::string_view word_of(Body value);
std::string_view word_of(Style value);
std::string_view word_of(GroupKind value);
std::string_view word_of(Jumps value);
std::string_view word_of(Toward value);
std::string_view word_of(Salinity value);

/// The closed list of words that a field of the species files takes, by its path ("mouth.eater", "diet.foods"), in the order of
/// the schema; empty for a field that has none.
std::vector<std::string_view> words_for(std::string_view path);

}  // namespace shoalwright
