// SPDX-License-Identifier: MIT
#include "scape/marks.h"

#include <cstring>

namespace shoalwright {

namespace {

constexpr std::size_t at_once = 16;
using Bytes = std::uint8_t __attribute__((vector_size(at_once)));

inline Bytes loaded(const void* from, std::size_t count) {
  Bytes bytes{};
  std::memcpy(&bytes, from, count);
  return bytes;
}

/// `count` cells, at most as many as go at once.
inline std::uint64_t mark(const std::uint8_t* near, const InGrowth* growth, std::size_t count, std::uint8_t least, Way* ways,
                          std::uint8_t* open, std::uint64_t digest) {
  static_assert(static_cast<int>(Way::closed) == 0 && static_cast<int>(Way::clear) == 1 && static_cast<int>(Way::slow) == 2 &&
                static_cast<int>(Way::near) == 3);
  static_assert(static_cast<int>(InGrowth::passes) == 1 && static_cast<int>(InGrowth::stopped) == 2);
  const Bytes distance = loaded(near, count), grows = loaded(growth, count);
  const Bytes wet = (Bytes)(distance > 0) & (Bytes)(grows != 2), middle = wet & (Bytes)(distance >= least);
  const Bytes way = (middle & (grows + 1)) | (wet & ~middle & 3), can_be = middle & 1;
  std::memcpy(ways, &way, count);
  std::memcpy(open, &can_be, count);
  std::uint64_t halves[2];
  std::memcpy(halves, &way, sizeof halves);
  return digest_of(digest_of(digest, halves[0]), halves[1]);
}

}  // namespace

// Not folded into its caller, which is made small.
[[gnu::noinline]] std::uint64_t mark_ways(const std::uint8_t* near, const InGrowth* growth, std::size_t count, std::uint8_t least,
                                          Way* ways, std::uint8_t* open) {
  std::uint64_t digest = count;
  std::size_t at = 0;
  for (; at + at_once <= count; at += at_once)
    digest = mark(near + at, growth + at, at_once, least, ways + at, open + at, digest);
  if (at == count) return digest;
  if (count < at_once) return mark(near, growth, count, least, ways, open, digest);
  // The rest of the row with some that are done already.
  at = count - at_once;
  return mark(near + at, growth + at, at_once, least, ways + at, open + at, digest);
}

}  // namespace shoalwright
