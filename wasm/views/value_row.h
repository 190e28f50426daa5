// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "advice/derivation.h"
#include "views/pane.h"

namespace shoalwright {

/// A line with a number of the assessment that shows where it comes from when pressed: formula, inputs, source, validity.
/// Spot: `id`.
void value_row(Pane& pane, std::string_view id, std::string_view name, std::string_view value, Number number);

}  // namespace shoalwright
