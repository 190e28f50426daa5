// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shoalwright {

/// Base64 with the URL-safe alphabet and without padding (RFC 4648 section 5).
std::string base64url(std::string_view bytes);

/// The bytes. Empty for anything that base64url() would not have written, a stray bit at the end included.
std::optional<std::string> bytes_of_base64url(std::string_view text);

}  // namespace shoalwright
