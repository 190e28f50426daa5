// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace shoalwright {

/// All files of catalog/species as they were written, as one JSON array.
std::string card_texts();

}  // namespace shoalwright
