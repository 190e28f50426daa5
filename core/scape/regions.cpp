// SPDX-License-Identifier: MIT
#include "scape/regions.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <numeric>

namespace shoalwright {

namespace {

/// Sets of numbers that are joined one by one; each is known by its least member.
class Joined {
 public:
  explicit Joined(std::size_t count) : parent_(count) { std::iota(parent_.begin(), parent_.end(), 0); }
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

void add_open_runs(const std::uint8_t* open, int count, std::vector<OpenRun>& runs) {
  for (int i = 0; i < count;) {
    const void* begun = std::memchr(open + i, 1, static_cast<std::size_t>(count - i));
    if (!begun) break;
    const int first = static_cast<int>(static_cast<const std::uint8_t*>(begun) - open);
    const void* ended = std::memchr(open + first, 0, static_cast<std::size_t>(count - first));
    i = ended ? static_cast<int>(static_cast<const std::uint8_t*>(ended) - open) : count;
    runs.push_back({first, i - 1, 0});
  }
}

void number_regions(const GridSize& size, Regions& regions) {
  std::vector<OpenRun>& runs = regions.runs;
  const std::vector<std::size_t>& begins = regions.row_begins;
  const auto deep = static_cast<std::size_t>(size.z);
  Joined joined(runs.size());
  for (std::size_t row = 0; row + 1 < begins.size(); ++row) {
    if (row % deep != 0) join_rows(runs, begins[row - 1], begins[row], begins[row], begins[row + 1], joined);
    if (row >= deep) join_rows(runs, begins[row - deep], begins[row - deep + 1], begins[row], begins[row + 1], joined);
  }
  regions.cells.clear();
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
}

Regions regions_of(const GridSize& size, const Cells& open) {
  Regions regions;
  if (size.cells() == 0) return regions;
  const auto wide = static_cast<std::size_t>(size.x);
  regions.row_begins = {0};
  for (std::size_t at = 0; at < open.size(); at += wide) {
    add_open_runs(open.data() + at, size.x, regions.runs);
    regions.row_begins.push_back(regions.runs.size());
  }
  number_regions(size, regions);
  return regions;
}

Cells cells_clear_by(const std::vector<std::int32_t>& squared_distances, double clearance) {
  const auto least = static_cast<std::int32_t>(std::ceil(clearance * clearance - 1e-9));
  Cells clear(squared_distances.size());
  for (std::size_t cell = 0; cell < clear.size(); ++cell) clear[cell] = squared_distances[cell] >= least ? 1 : 0;
  return clear;
}

}  // namespace shoalwright
