// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace shoalwright {

// What every sentence of a finding is put together from: metric, number text of units/text.h.

/// "a", "a and b", "a, b and c"; empty for an empty list.
std::string joined(const std::vector<std::string>& parts);

/// A number with at most `decimals` decimals, a space, the unit; the number alone for an empty unit.
std::string amount(double value, int decimals, std::string_view unit);

/// "4 to 12 °dH"; one figure where both ends read the same.
std::string span_of(double low, double high, int decimals, std::string_view unit);

/// A share as a whole percentage: 0.3 gives "30 %".
std::string percent(double share);

/// The same text with its first letter as a capital (ASCII letters only; others stay).
std::string capital(std::string text);

}  // namespace shoalwright
