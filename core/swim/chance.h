// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace shoalwright {

/// Random numbers of a picture: the same for the same seed on every machine. Generator: Steele, G.L., Lea, D. & Flood, C.H. 2014.
/// Fast splittable pseudorandom number generators. OOPSLA (SplitMix64; from memory).
struct Chance {
  std::uint64_t state = 0;

  std::uint32_t bits() {
    std::uint64_t z = state += 0x9E3779B97F4A7C15u;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return static_cast<std::uint32_t>((z ^ (z >> 31)) >> 32);
  }
  /// From `low` up to, but not including, `high`; evenly.
  float between(float low, float high) { return low + (high - low) * static_cast<float>(bits() >> 8) * 0x1p-24f; }
  /// Mean 0, standard deviation 1, nearly normal, never beyond 3.5: four even throws.
  float around() { return (between(-1, 1) + between(-1, 1) + between(-1, 1) + between(-1, 1)) * 0.8660254f; }
};

}  // namespace shoalwright
