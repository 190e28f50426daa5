// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace shoalwright {

/// The text as a JSON string with its quotes; bytes that are no UTF-8 become U+FFFD.
std::string json_string(std::string_view text);

}  // namespace shoalwright
