// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>

#include "scape/swim_slice.h"

namespace shoalwright {

/// What growth is to a body, one mark a cell.
enum class InGrowth : std::uint8_t { none, passes, stopped };

/// What a row of cells is to a body that keeps `least` off, 1 to 255, from their squared distances, each 255 where it is that or
/// more, and what grows there. `open` gets 1 for each in which its middle can be, else 0. Returns a digest by which equal rows
/// are known. Sixteen cells at once.
std::uint64_t mark_ways(const std::uint8_t* near, const InGrowth* growth, std::size_t count, std::uint8_t least, Way* ways,
                        std::uint8_t* open);

/// Two digests in one.
constexpr std::uint64_t digest_of(std::uint64_t before, std::uint64_t next) {
  const std::uint64_t mixed = (before ^ next) * 0x9E3779B97F4A7C15u;
  return mixed ^ (mixed >> 32);
}

}  // namespace shoalwright
