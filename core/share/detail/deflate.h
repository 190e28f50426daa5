// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace shoalwright {

/// Text packed by raw deflate (RFC 1951) against the fixed dictionary of link version 1.
std::string deflate_text(std::string_view text);

/// The `size` bytes that were packed. Empty when the bytes are damaged or hold more or fewer: nothing beyond `size` is ever
/// unpacked.
std::optional<std::string> inflate_text(std::string_view packed, std::size_t size);

/// CRC-32 as in gzip (RFC 1952 section 8).
std::uint32_t crc32_of(std::string_view bytes);

/// What keepers and plans often say, most often said last. Part of link version 1: never changes.
std::string_view dictionary_v1();

}  // namespace shoalwright
