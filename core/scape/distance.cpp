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

constexpr std::uint8_t far_along = 128;  // its square is out of reach

/// Steps along x.
void sweep_row_small(const std::uint8_t* taken, std::uint8_t* out, int n) {
  int steps = far_along;
  for (int i = 0; i < n; ++i) {
    steps = taken[i] ? 0 : std::min(steps + 1, static_cast<int>(far_along));
    out[i] = static_cast<std::uint8_t>(steps);
  }
  steps = far_along;
  for (int i = n; i-- > 0;) {
    steps = std::min<int>(out[i], steps + 1);
    out[i] = static_cast<std::uint8_t>(steps);
  }
}

void square_row(const std::uint8_t* steps, std::int16_t* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) out[i] = static_cast<std::int16_t>(std::min<int>(steps[i] * steps[i], out_of_reach));
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

/// Rows that changed among rows side by side, from one to another, and within them the cells from x to x; none where an end lies
/// below its beginning.
struct Changed {
  int from = 0, to = -1, from_x = 0, to_x = -1;

  bool none() const { return to < from; }
  int wide() const { return to_x - from_x + 1; }
  void add(int row, int first_x, int last_x) {
    *this = none() ? Changed{row, row, first_x, last_x}
                   : Changed{std::min(from, row), std::max(to, row), std::min(from_x, first_x), std::max(to_x, last_x)};
  }
};

/// Takes in a stretch of a row as it is now and notes where it differs from what was known. False where nothing does.
template <class Cell>
bool take_in(const Cell* fresh, Cell* known, int n, int row, int first_x, Changed& changed) {
  if (std::equal(fresh, fresh + n, known)) return false;  // whole words at a time
  const int from = static_cast<int>(std::mismatch(fresh, fresh + n, known).first - fresh);
  int to = n - 1;
  while (fresh[to] == known[to]) --to;
  std::copy(fresh + from, fresh + to + 1, known + from);
  changed.add(row, first_x + from, first_x + to);
  return true;
}

/// Lowers those of `n` rows, `stride` apart, that a change among them can have reached: a distance comes from the same x of other
/// rows, so what lies beside the change stays, and so does a row whose cells are all nearer to something than to any changed row.
/// `done` is told of each row and of its stretch as it is now.
template <class Done>
void lower_changed(const std::int16_t* rows, std::size_t stride, int n, int row_wide, const Changed& changed, std::int16_t* most,
                   std::size_t most_stride, std::vector<std::int16_t>& lowered, Done done) {
  for (int at = 0; at < n; ++at) {
    const int off = std::max({changed.from - at, at - changed.to, 0});
    std::int16_t& row_most = most[static_cast<std::size_t>(at) * most_stride];
    if (off * off > row_most) continue;
    const std::int16_t here = lower_row(rows + changed.from_x, stride, at, n, changed.wide(), lowered.data());
    row_most = changed.wide() == row_wide ? here : std::max(row_most, here);
    done(at, lowered.data());
  }
}

/// Nothing is known: everything will differ.
void begin_anew(Distances& distances, const GridSize& size) {
  const std::size_t rows = static_cast<std::size_t>(size.z) * static_cast<std::size_t>(size.y);
  distances.size = size;
  distances.taken.assign(size.cells(), 2);
  distances.in_row.assign(size.cells(), far_along + 1);
  distances.in_slice.assign(size.cells(), -1);
  distances.squared.assign(size.cells(), -1);
  distances.near.resize(size.cells());
  distances.row_versions.assign(rows, distances.version);
  for (std::vector<std::int16_t>* one : {&distances.slice_most, &distances.row_most}) one->assign(rows, out_of_reach);
}

/// Where a cell is too far from any other for small numbers.
void use_envelopes(Distances& distances, const GridSize& size, const Cells& taken) {
  distances.in_row.clear();
  distances.in_slice.clear();
  distances.taken = taken;
  distances.squared = by_envelopes(size, taken);
  for (std::size_t at = 0; at < distances.near.size(); ++at)
    distances.near[at] = static_cast<std::uint8_t>(std::min(distances.squared[at], 255));
  distances.row_versions.assign(distances.row_versions.size(), distances.version);
}

}  // namespace

void update(Distances& distances, const GridSize& size, const Cells& taken) {
  ++distances.version;
  if (!(distances.size == size) || distances.in_slice.empty()) begin_anew(distances, size);
  const std::size_t wide = static_cast<std::size_t>(size.x), deep = static_cast<std::size_t>(size.z), slice = slice_cells(size);
  std::vector<std::uint8_t> steps(wide);
  std::vector<std::int16_t> squares(slice), fresh(wide);
  std::vector<Changed> of_columns(deep);  // what of row k changed within the slices, by their numbers
  for (int j = 0; j < size.y; ++j) {
    const std::size_t first = size.at(0, 0, j);
    if (std::equal(&taken[first], &taken[first] + slice, &distances.taken[first])) continue;
    Changed of_slice;
    for (int k = 0; k < size.z; ++k) {
      const std::size_t row = size.at(0, k, j);
      Changed cells;
      if (!take_in(&taken[row], &distances.taken[row], size.x, k, 0, cells)) continue;
      sweep_row_small(&taken[row], steps.data(), size.x);
      take_in(steps.data(), &distances.in_row[row], size.x, k, 0, of_slice);
    }
    if (of_slice.none()) continue;
    square_row(&distances.in_row[first], squares.data(), slice);
    lower_changed(squares.data(), wide, size.z, size.x, of_slice, &distances.slice_most[static_cast<std::size_t>(j) * deep], 1,
                  fresh, [&](int k, const std::int16_t* lowered) {
                    take_in(lowered, &distances.in_slice[size.at(of_slice.from_x, k, j)], of_slice.wide(), j, of_slice.from_x,
                            of_columns[static_cast<std::size_t>(k)]);
                  });
  }
  bool too_far = false;
  for (int k = 0; k < size.z; ++k) {
    const Changed& of_row = of_columns[static_cast<std::size_t>(k)];
    if (of_row.none()) continue;
    lower_changed(&distances.in_slice[size.at(0, k, 0)], slice, size.y, size.x, of_row,
                  &distances.row_most[static_cast<std::size_t>(k)], deep, fresh, [&](int j, const std::int16_t* lowered) {
                    const std::size_t at = size.at(of_row.from_x, k, j);
                    const auto n = static_cast<std::size_t>(of_row.wide());
                    if (std::equal(lowered, lowered + n, &distances.squared[at])) return;
                    for (std::size_t i = 0; i < n; ++i) {
                      too_far |= lowered[i] == out_of_reach;
                      distances.squared[at + i] = lowered[i];
                      distances.near[at + i] = static_cast<std::uint8_t>(std::min<std::int16_t>(lowered[i], 255));
                    }
                    distances.row_versions[at / wide] = distances.version;
                  });
  }
  if (too_far) use_envelopes(distances, size, taken);
}

std::vector<std::int32_t> squared_distances(const GridSize& size, const Cells& taken) {
  if (std::min(size.z, size.y) > 64) return by_envelopes(size, taken);
  Distances distances;
  update(distances, size, taken);
  return std::move(distances.squared);
}

}  // namespace shoalwright
