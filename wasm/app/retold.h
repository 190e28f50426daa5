// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "app/measures.h"

namespace shoalwright {

/// A sentence of the core, which speaks metric, with its lengths, areas, volumes, temperatures and masses in the keeper's units:
/// "Lane 12 cm short" becomes "Lane 4.7 in short", "24 to 27 °C" becomes "75 to 81 °F", "2 °C over" (a difference) becomes "3.6
/// °F over". Hardness, mg/L, mm and all words stay. The same text where the keeper reads metric.
std::string retold(const Measures& measures, std::string_view metric);

}  // namespace shoalwright
