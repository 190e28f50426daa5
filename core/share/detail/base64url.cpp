// SPDX-License-Identifier: MIT
#include "share/detail/base64url.h"

#include <cstdint>

namespace shoalwright {

namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

}  // namespace

std::string base64url(std::string_view bytes) {
  std::string out;
  std::uint32_t held = 0;
  int bits = 0;
  for (const char c : bytes) {
    held = held << 8 | static_cast<unsigned char>(c);
    for (bits += 8; bits >= 6; bits -= 6) out += alphabet[held >> (bits - 6) & 63];
  }
  if (bits > 0) out += alphabet[held << (6 - bits) & 63];
  return out;
}

std::optional<std::string> bytes_of_base64url(std::string_view text) {
  if (text.size() % 4 == 1) return std::nullopt;
  std::string out;
  std::uint32_t held = 0;
  int bits = 0;
  for (const char c : text) {
    const std::size_t value = alphabet.find(c);
    if (value == std::string_view::npos) return std::nullopt;
    held = held << 6 | static_cast<std::uint32_t>(value);
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    out += static_cast<char>(held >> bits);
  }
  if ((held & ((1u << bits) - 1)) != 0) return std::nullopt;
  return out;
}

}  // namespace shoalwright
