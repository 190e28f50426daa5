// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

#include "scape/grid.h"

namespace shoalwright {

/// A grid with random boxes in it, the same for the same seed everywhere: a linear congruential generator modulo 2^32 (multiplier
/// 1664525, increment 1013904223), its high bits scaled. Axes in the order x, z, y.
inline Cells grid_with_boxes(const GridSize& size, int boxes, std::uint32_t seed) {
  Cells taken(size.cells(), 0);
  const auto below = [&seed](int n) {
    seed = seed * 1664525u + 1013904223u;
    return static_cast<int>((static_cast<std::uint64_t>(seed) * static_cast<std::uint64_t>(n)) >> 32);
  };
  for (int box = 0; box < boxes; ++box) {
    const int w = 2 + below(size.x / 8), d = 2 + below(size.z / 5), h = 2 + below(size.y / 3);
    const int x = below(size.x - w), z = below(size.z - d), y = below(size.y - h);
    for (int j = y; j < y + h; ++j)
      for (int k = z; k < z + d; ++k)
        for (int i = x; i < x + w; ++i) taken[size.at(i, k, j)] = 1;
  }
  return taken;
}

}  // namespace shoalwright
