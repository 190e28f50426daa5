// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace shoalwright {

// Bits packed by how likely they are (range coding: G. N. N. Martin 1979, "Range encoding: an algorithm for removing redundancy
// from a digitised message"; from memory). A bit that comes out as expected costs a fraction of a bit, so a plan at its defaults
// costs next to nothing. Integers only: every machine packs the same bytes. All of this is part of the link's version 1 and never
// changes.

/// How likely the next bit of one kind is 0, learnt from the bits of that kind before it.
struct Chance {
  std::uint16_t of_zero = 1 << 15;  ///< in 65536ths
  std::uint8_t seen = 0;

  /// Moves towards what came: fast at first, then slowly.
  void learn(bool bit);
};

/// A chance that expects 0 in `percent` (1 to 99) of all cases.
constexpr Chance zero_in(int percent) { return Chance{.of_zero = static_cast<std::uint16_t>(percent * 65536 / 100), .seen = 2}; }

class BitWriter {
 public:
  void bit(Chance& chance, bool value);
  /// One of `total` (1 to 65536) equally likely values from 0.
  void uniform(std::uint32_t value, std::uint32_t total);
  /// The bytes; nothing may be written after.
  std::string finish();

 private:
  void add(std::uint32_t amount);
  void normalise();

  std::uint32_t low_ = 0, range_ = 0xFFFFFFFFu;
  std::string bytes_;
};

class BitReader {
 public:
  explicit BitReader(std::string_view bytes);
  bool bit(Chance& chance);
  std::uint32_t uniform(std::uint32_t total);
  /// Whether more was read than any writer can have written into these bytes.
  bool overrun() const { return at_ > bytes_.size() + 8; }

 private:
  void normalise();

  std::string_view bytes_;
  std::size_t at_ = 0;
  std::uint32_t code_ = 0, range_ = 0xFFFFFFFFu;
};

}  // namespace shoalwright
