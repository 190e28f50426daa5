// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

namespace shoalwright {

/// What a cell of a slice is to the middle of a body.
enum class Way : std::uint8_t {
  closed,  ///< glass, substrate, a solid, or growth too dense for this body
  clear,   ///< its middle can be here
  slow,    ///< the same among growth that it passes through
  near     ///< water, but too near to something: only nose or tail reach here
};

/// One horizontal slice of a tank as one body finds it: x left to right, z front to back, x fastest.
struct SwimSlice {
  int x = 0, z = 0;
  double step_x = 1, step_z = 1;  ///< length of a cell along each axis, in the unit that runs are wanted in
  std::vector<Way> ways;

  Way at(int i, int k) const {
    return ways[static_cast<std::size_t>(k) * static_cast<std::size_t>(x) + static_cast<std::size_t>(i)];
  }
};

}  // namespace shoalwright
