// SPDX-License-Identifier: MIT
#include "scape/distance.h"

#include <algorithm>

namespace shoalwright {

namespace {

/// Along x: steps to the nearest taken cell of the same row, squared.
void sweep_row(const std::uint8_t* taken, std::int32_t* out, int n) {
  constexpr std::int32_t none = 1 << 14;  // its square stays far below far_away, and far above every real distance
  std::int32_t steps = none;
  for (int i = 0; i < n; ++i) {
    steps = taken[i] ? 0 : std::min(steps + 1, none);
    out[i] = steps;
  }
  steps = none;
  for (int i = n; i-- > 0;) {
    steps = std::min(out[i], std::min(steps + 1, none));
    out[i] = steps == none ? far_away : steps * steps;
  }
}

/// The lower envelope of the parabolas (u - i)^2 + height[i] over one line.
class Envelope {
 public:
  explicit Envelope(int longest) : parts_(longest), over_twice_(longest) {
    for (int k = 1; k < longest; ++k) over_twice_[k] = 1.0 / (2 * k);
  }

  /// Replaces the `n` values of a line, which stand `stride` apart, by the envelope.
  void apply(std::int32_t* line, std::size_t stride, int n) {
    int last = -1;
    for (int u = 0; u < n; ++u) {
      const std::int32_t h = line[static_cast<std::size_t>(u) * stride];
      if (h == far_away) continue;
      while (last >= 0 && parts_[last].at(parts_[last].from) > square(parts_[last].from - u) + h) --last;
      int from = 0;
      if (last >= 0) from = 1 + meeting(parts_[last], u, h);
      if (from < n) parts_[++last] = {u, from, h};
    }
    for (int end = n; last >= 0; --last) {
      const Part part = parts_[last];
      for (int u = part.from; u < end; ++u) line[static_cast<std::size_t>(u) * stride] = part.at(u);
      end = part.from;
    }
  }

 private:
  static std::int32_t square(std::int32_t v) { return v * v; }

  /// One parabola and where it begins to be the lowest.
  struct Part {
    int apex, from;
    std::int32_t height;
    std::int32_t at(int u) const { return square(u - apex) + height; }
  };

  /// The last place where a part is not above the parabola of a later apex. Half a unit is added before the product with the
  /// reciprocal: a quotient of whole numbers is then never within rounding of the next one, and no division is needed.
  int meeting(const Part& part, int apex, std::int32_t height) const {
    const std::int32_t twice = square(apex) - square(part.apex) + height - part.height;
    return static_cast<int>((twice + 0.5) * over_twice_[apex - part.apex]);
  }

  std::vector<Part> parts_;
  std::vector<double> over_twice_;
};

/// Applies the envelope to `count` neighbouring lines at once, whose values stand `stride` apart: whole cache lines travel.
void apply_across(Envelope& envelope, std::int32_t* first, std::size_t stride, int n, int count,
                  std::vector<std::int32_t>& lines) {
  const auto length = static_cast<std::size_t>(n);
  for (std::size_t u = 0; u < length; ++u)
    for (int line = 0; line < count; ++line) lines[static_cast<std::size_t>(line) * length + u] = first[u * stride + line];
  for (int line = 0; line < count; ++line) envelope.apply(&lines[static_cast<std::size_t>(line) * length], 1, n);
  for (std::size_t u = 0; u < length; ++u)
    for (int line = 0; line < count; ++line) first[u * stride + line] = lines[static_cast<std::size_t>(line) * length + u];
}

}  // namespace

std::vector<std::int32_t> squared_distances(const GridSize& size, const Cells& taken) {
  std::vector<std::int32_t> squared(size.cells());
  for (std::size_t row = 0; row < squared.size(); row += static_cast<std::size_t>(size.x))
    sweep_row(taken.data() + row, squared.data() + row, size.x);
  constexpr int together = 16;
  const int longest = std::max(size.z, size.y);
  Envelope envelope(longest);
  std::vector<std::int32_t> lines(static_cast<std::size_t>(together * size.y));
  const std::size_t row = static_cast<std::size_t>(size.x), slice = row * static_cast<std::size_t>(size.z);
  for (int j = 0; j < size.y; ++j)
    for (int i = 0; i < size.x; ++i) envelope.apply(&squared[size.at(i, 0, j)], row, size.z);
  for (int k = 0; k < size.z; ++k)
    for (int i = 0; i < size.x; i += together)
      apply_across(envelope, &squared[size.at(i, k, 0)], slice, size.y, std::min(together, size.x - i), lines);
  return squared;
}

}  // namespace shoalwright
