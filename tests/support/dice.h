// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <iterator>

namespace shoalwright {

/// The same throws for the same seed on every machine and compiler, which the standard library's distributions do not promise.
/// Generator: Steele, G.L., Lea, D. & Flood, C.H. 2014, "Fast splittable pseudorandom number generators", OOPSLA (SplitMix64;
/// from memory).
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}

  std::uint64_t bits() {
    std::uint64_t z = state_ += 0x9E3779B97F4A7C15u;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return z ^ (z >> 31);
  }
  /// 0 to count - 1; `count` above 0.
  int below(int count) { return static_cast<int>(bits() % static_cast<std::uint64_t>(count)); }
  /// Both ends included.
  int whole(int low, int high) { return low + below(high - low + 1); }
  bool percent(int share) { return below(100) < share; }
  /// Any double of the range, hardly ever a round one.
  double real(double low, double high) { return low + (high - low) * (static_cast<double>(bits() >> 11) / 9007199254740992.0); }
  template <class List>
  const auto& pick(const List& list) {
    return list[static_cast<std::size_t>(below(static_cast<int>(std::size(list))))];
  }

 private:
  std::uint64_t state_;
};

}  // namespace shoalwright
