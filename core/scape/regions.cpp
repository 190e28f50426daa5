// SPDX-License-Identifier: MIT
#include "scape/regions.h"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace shoalwright {

namespace {

/// Sets of numbers that are joined one by one; each is known by its least member.
class Joined {
 public:
  std::int32_t add() {
    parent_.push_back(static_cast<std::int32_t>(parent_.size()));
    return parent_.back();
  }
  std::int32_t of(std::int32_t one) {
    while (parent_[static_cast<std::size_t>(one)] != one) {
      std::int32_t& up = parent_[static_cast<std::size_t>(one)];
      up = parent_[static_cast<std::size_t>(up)];
      one = up;
    }
    return one;
  }
  void join(std::int32_t a, std::int32_t b) {
    a = of(a);
    b = of(b);
    if (a != b) parent_[static_cast<std::size_t>(std::max(a, b))] = std::min(a, b);
  }

 private:
  std::vector<std::int32_t> parent_;
};

/// Joins the stretches of two neighbouring rows that lie beside each other.
void join_rows(const std::vector<OpenRun>& runs, std::size_t a, std::size_t a_end, std::size_t b, std::size_t b_end,
               Joined& joined) {
  while (a < a_end && b < b_end) {
    if (runs[a].first <= runs[b].last && runs[b].first <= runs[a].last)
      joined.join(static_cast<std::int32_t>(a), static_cast<std::int32_t>(b));
    ++(runs[a].last < runs[b].last ? a : b);
  }
}

}  // namespace

Regions regions_of(const GridSize& size, const Cells& open) {
  Regions regions;
  if (size.cells() == 0) return regions;
  std::vector<OpenRun>& runs = regions.runs;
  const std::size_t rows = static_cast<std::size_t>(size.z) * static_cast<std::size_t>(size.y),
                    deep = static_cast<std::size_t>(size.z);
  Joined joined;
  regions.row_begins.reserve(rows + 1);
  for (std::size_t row = 0; row < rows; ++row) {
    regions.row_begins.push_back(runs.size());
    const std::uint8_t* cells = open.data() + row * static_cast<std::size_t>(size.x);
    for (int i = 0; i < size.x;) {
      const void* begun = std::memchr(cells + i, 1, static_cast<std::size_t>(size.x - i));
      if (!begun) break;
      const int first = static_cast<int>(static_cast<const std::uint8_t*>(begun) - cells);
      const void* ended = std::memchr(cells + first, 0, static_cast<std::size_t>(size.x - first));
      i = ended ? static_cast<int>(static_cast<const std::uint8_t*>(ended) - cells) : size.x;
      runs.push_back({first, i - 1, 0});
      joined.add();
    }
    const std::size_t here = regions.row_begins[row];
    if (row % deep != 0) join_rows(runs, regions.row_begins[row - 1], here, here, runs.size(), joined);
    if (row >= deep)
      join_rows(runs, regions.row_begins[row - deep], regions.row_begins[row - deep + 1], here, runs.size(), joined);
  }
  regions.row_begins.push_back(runs.size());
  std::vector<std::int32_t> numbers(runs.size(), -1);
  for (std::size_t run = 0; run < runs.size(); ++run) {
    std::int32_t& number = numbers[static_cast<std::size_t>(joined.of(static_cast<std::int32_t>(run)))];
    if (number < 0) {
      number = static_cast<std::int32_t>(regions.cells.size());
      regions.cells.push_back(0);
    }
    runs[run].region = number;
    regions.cells[static_cast<std::size_t>(number)] += static_cast<std::size_t>(runs[run].last - runs[run].first + 1);
  }
  return regions;
}

Cells cells_clear_by(const std::vector<std::int32_t>& squared_distances, double clearance) {
  const auto least = static_cast<std::int32_t>(std::ceil(clearance * clearance - 1e-9));
  Cells clear(squared_distances.size());
  for (std::size_t cell = 0; cell < clear.size(); ++cell) clear[cell] = squared_distances[cell] >= least ? 1 : 0;
  return clear;
}

}  // namespace shoalwright
