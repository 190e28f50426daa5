// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// 0 degrees C in kelvin; exact by definition.
inline constexpr double kelvin_at_0_c = 273.15;

// Molar masses in g/mol beyond those of units/convert.h. IUPAC abridged standard atomic weights (from memory).
inline constexpr double molar_mg = 24.305, molar_na = 22.990, molar_k = 39.098, molar_s = 32.06, molar_cl = 35.45;

}  // namespace shoalwright
