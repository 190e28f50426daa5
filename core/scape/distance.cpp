// SPDX-License-Identifier: MIT
#include "scape/distance.h"

#include <algorithm>
#include <utility>

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

constexpr int together = 16;  // columns that are swept at once

std::size_t slice_cells(const GridSize& size) { return static_cast<std::size_t>(size.x) * static_cast<std::size_t>(size.z); }

/// Grids of any measures: each line by its envelope.
std::vector<std::int32_t> by_envelopes(const GridSize& size, const Cells& taken) {
  std::vector<std::int32_t> squared(size.cells());
  const std::size_t row = static_cast<std::size_t>(size.x);
  for (std::size_t at = 0; at < squared.size(); at += row) sweep_row(taken.data() + at, squared.data() + at, size.x);
  Envelope envelope(std::max(size.z, size.y));
  for (int j = 0; j < size.y; ++j)
    for (int i = 0; i < size.x; ++i) envelope.apply(&squared[size.at(i, 0, j)], row, size.z);
  std::vector<std::int32_t> lines(static_cast<std::size_t>(together * size.y));
  for (int k = 0; k < size.z; ++k)
    for (int i = 0; i < size.x; i += together)
      apply_across(envelope, &squared[size.at(i, k, 0)], slice_cells(size), size.y, std::min(together, size.x - i), lines);
  return squared;
}

// Where no cell is far from a taken one, small numbers and whole rows at a time are quicker: a row is lowered by its neighbours,
// one more step away each time, until they are too far to lower anything.

constexpr std::int16_t out_of_reach = 16383;  // twice that is still a small number

/// Along x.
void sweep_row_small(const std::uint8_t* taken, std::int16_t* out, int n) {
  constexpr int none = 128;  // its square is out of reach
  int steps = none;
  for (int i = 0; i < n; ++i) {
    steps = taken[i] ? 0 : std::min(steps + 1, none);
    out[i] = static_cast<std::int16_t>(steps);
  }
  steps = none;
  for (int i = n; i-- > 0;) {
    steps = std::min<int>(out[i], steps + 1);
    out[i] = static_cast<std::int16_t>(std::min(steps * steps, static_cast<int>(out_of_reach)));
  }
}

/// The row `at` of `n` rows that stand `stride` apart, lowered by the others; written to `out`. Returns the
/// largest of it.
std::int16_t lower_row(const std::int16_t* rows, std::size_t stride, int at, int n, int wide, std::int16_t* out) {
  const std::int16_t* own = rows + static_cast<std::size_t>(at) * stride;
  std::int16_t most = 0;
  for (int i = 0; i < wide; ++i) {
    out[i] = own[i];
    most = std::max(most, own[i]);
  }
  for (int r = 1; r * r < most && (at - r >= 0 || at + r < n); ++r) {
    const auto far = static_cast<std::int16_t>(r * r);
    const std::int16_t* low = at - r >= 0 ? own - static_cast<std::size_t>(r) * stride : own;
    const std::int16_t* high = at + r < n ? own + static_cast<std::size_t>(r) * stride : own;
    most = 0;
    for (int i = 0; i < wide; ++i) {
      const auto other = static_cast<std::int16_t>(std::min(low[i], high[i]) + far);
      out[i] = std::min(out[i], other);
      most = std::max(most, out[i]);
    }
  }
  return most;
}

/// Within one slice; `swept` is room for it.
void sweep_slice_small(const GridSize& size, const std::uint8_t* taken, std::int16_t* out, std::vector<std::int16_t>& swept) {
  const std::size_t row = static_cast<std::size_t>(size.x);
  for (std::size_t at = 0; at < swept.size(); at += row) sweep_row_small(taken + at, &swept[at], size.x);
  for (int k = 0; k < size.z; ++k) lower_row(swept.data(), row, k, size.z, size.x, out + static_cast<std::size_t>(k) * row);
}

/// Slices from one to another, none where that lies below it.
struct Slices {
  int from = 0, to = -1;
};

/// Row k of all slices, of which those changed; false where a cell of it is too far for small numbers.
bool lower_column(Distances& distances, int k, const Slices& changed, std::vector<std::int16_t>& lowered) {
  const GridSize& size = distances.size;
  for (int j = 0; j < size.y; ++j) {
    // What is nearer to something else all along the row than to a changed slice neither came from there nor will.
    const int off = std::max({changed.from - j, j - changed.to, 0});
    std::int16_t& most = distances.row_most[static_cast<std::size_t>(j * size.z + k)];
    if (off * off > most) continue;
    most = lower_row(&distances.in_slice[size.at(0, k, 0)], slice_cells(size), j, size.y, size.x, lowered.data());
    if (most == out_of_reach) return false;
    const std::size_t at = size.at(0, k, j);
    if (std::equal(lowered.begin(), lowered.end(), distances.squared.begin() + static_cast<std::ptrdiff_t>(at))) continue;
    for (std::size_t i = 0; i < lowered.size(); ++i) {
      distances.squared[at + i] = lowered[i];
      distances.near[at + i] = static_cast<std::uint8_t>(std::min<std::int16_t>(lowered[i], 255));
    }
    distances.row_versions[at / lowered.size()] = distances.version;
  }
  return true;
}

}  // namespace

void update(Distances& distances, const GridSize& size, const Cells& taken) {
  const std::size_t slice = slice_cells(size);
  const bool anew = !(distances.size == size) || distances.in_slice.empty();
  if (anew) {
    distances.size = size;
    distances.taken.assign(size.cells(), 2);
    distances.in_slice.resize(size.cells());
    distances.squared.resize(size.cells());
    distances.near.resize(size.cells());
  }
  ++distances.version;
  if (anew) {
    const std::size_t rows = static_cast<std::size_t>(size.z) * static_cast<std::size_t>(size.y);
    distances.row_versions.assign(rows, distances.version);
    distances.row_most.assign(rows, out_of_reach);
  }
  std::vector<std::int16_t> swept(slice), fresh(slice), lowered(static_cast<std::size_t>(size.x));
  std::vector<Slices> changed(static_cast<std::size_t>(size.z));
  for (std::size_t first = 0; first < taken.size(); first += slice) {
    const auto here = static_cast<std::ptrdiff_t>(first), end = static_cast<std::ptrdiff_t>(first + slice);
    if (std::equal(taken.begin() + here, taken.begin() + end, distances.taken.begin() + here)) continue;
    std::copy(taken.begin() + here, taken.begin() + end, distances.taken.begin() + here);
    sweep_slice_small(size, taken.data() + first, fresh.data(), swept);
    const int slice_now = static_cast<int>(first / slice);
    for (std::size_t k = 0; k < changed.size(); ++k) {
      const auto row = static_cast<std::ptrdiff_t>(k) * size.x;
      if (std::equal(fresh.begin() + row, fresh.begin() + row + size.x, distances.in_slice.begin() + here + row)) continue;
      changed[k] = {changed[k].to < 0 ? slice_now : changed[k].from, slice_now};
      std::copy(fresh.begin() + row, fresh.begin() + row + size.x, distances.in_slice.begin() + here + row);
    }
  }
  for (int k = 0; k < size.z; ++k) {
    const Slices of_row = anew ? Slices{0, size.y - 1} : changed[static_cast<std::size_t>(k)];
    if (of_row.to >= 0 && !lower_column(distances, k, of_row, lowered)) {
      distances.in_slice.clear();
      distances.squared = by_envelopes(size, taken);
      for (std::size_t at = 0; at < distances.near.size(); ++at)
        distances.near[at] = static_cast<std::uint8_t>(std::min(distances.squared[at], 255));
      distances.row_versions.assign(distances.row_versions.size(), distances.version);
      return;
    }
  }
}

std::vector<std::int32_t> squared_distances(const GridSize& size, const Cells& taken) {
  if (std::min(size.z, size.y) > 64) return by_envelopes(size, taken);
  Distances distances;
  update(distances, size, taken);
  return std::move(distances.squared);
}

}  // namespace shoalwright
