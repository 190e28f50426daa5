// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>

#include "scape/swim_slice.h"

namespace shoalwright {

// Marks of many cells at once, from their squared distances: simple loops that the build makes fast (core/CMakeLists.txt).

/// 1 for each cell whose squared distance is `least` or more, else 0.
void mark_clear(const std::int32_t* squared, std::size_t count, std::int32_t least, std::uint8_t* clear);

/// What each cell is to a body that keeps `least` off, growth left out: clear, near or closed.
void mark_ways(const std::int32_t* squared, std::size_t count, std::int32_t least, Way* ways);

}  // namespace shoalwright
