// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace shoalwright {

/// A box of equal cubic cells: x left to right, z front to back, y upward. Horizontal slices lie one after the other, x runs
/// fastest.
struct GridSize {
  int x = 0, z = 0, y = 0;
  std::size_t cells() const { return static_cast<std::size_t>(x) * static_cast<std::size_t>(z) * static_cast<std::size_t>(y); }
  std::size_t at(int i, int k, int j) const {
    return (static_cast<std::size_t>(j) * static_cast<std::size_t>(z) + static_cast<std::size_t>(k)) *
               static_cast<std::size_t>(x) +
           static_cast<std::size_t>(i);
  }
  bool operator==(const GridSize&) const = default;
};

/// One mark a cell, 0 or 1, in the order of `GridSize::at`.
using Cells = std::vector<std::uint8_t>;

}  // namespace shoalwright
