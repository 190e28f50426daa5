// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace shoalwright {

/// The shortest decimal text that reads back as exactly this double, in the grammar of a JSON number (RFC 8259 section 6) and
/// whatever the locale: 88.4, 0.3, 1e+30. Minus zero is "0"; what is not finite is "null", since JSON has no word for it.
std::string shortest(double value);

}  // namespace shoalwright
