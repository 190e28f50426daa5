// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace shoalwright {

// Number text without a locale: always a point, never a group separator, never "-0". A value that is not finite is "-".

/// With exactly `decimals` digits after the point (0 to 9, held there), halves away from zero: 2.345, 1 -> "2.3"; 25, 0 -> "25".
std::string fixed_text(double value, int decimals);

/// The same without zeros at the end: 25.0, 1 -> "25".
std::string short_text(double value, int decimals);

/// No more digits than are known: rounded to a multiple of `known_to`, which is 1, 2, 2.5 or 5 times a power of ten from 1e-9 to
/// 1e9, with just the decimals that it needs: 1.0858, 0.1 -> "1.1"; 147.2, 5 -> "145". Anything else for `known_to` counts as 1.
std::string known_text(double value, double known_to);

/// Rounded to `digits` significant digits (1 to 15, held there), without an exponent: 1.0858, 2 -> "1.1"; 14832, 2 -> "15000".
std::string significant_text(double value, int digits);

}  // namespace shoalwright
