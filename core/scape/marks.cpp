// SPDX-License-Identifier: MIT
#include "scape/marks.h"

namespace shoalwright {

// Not folded into their callers, which are made small.

[[gnu::noinline]] void mark_clear(const std::int32_t* squared, std::size_t count, std::int32_t least, std::uint8_t* clear) {
  for (std::size_t i = 0; i < count; ++i) clear[i] = squared[i] >= least;
}

[[gnu::noinline]] void mark_ways(const std::int32_t* squared, std::size_t count, std::int32_t least, Way* ways) {
  static_assert(static_cast<int>(Way::closed) == 0 && static_cast<int>(Way::clear) == 1 && static_cast<int>(Way::near) == 3);
  for (std::size_t i = 0; i < count; ++i)
    ways[i] = static_cast<Way>(static_cast<std::uint8_t>((squared[i] > 0) * 3 - (squared[i] >= least) * 2));
}

}  // namespace shoalwright
