// SPDX-License-Identifier: MIT
#include "scape/regions.h"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace shoalwright {

namespace {

/// Numbers of what hangs together, given as runs are met and joined where two turn out to be one; each is known by its least.
class Numbers {
 public:
  std::int32_t fresh() {
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
  std::int32_t join(std::int32_t a, std::int32_t b) {
    if (a == b) return a;
    a = of(a);
    b = of(b);
    return parent_[static_cast<std::size_t>(std::max(a, b))] = std::min(a, b);
  }
  std::size_t size() const { return parent_.size(); }

 private:
  std::vector<std::int32_t> parent_;
};

constexpr std::int32_t unnumbered = -1;

/// Gives the stretches from `b` to `b_end` the numbers of those beside them in an earlier row.
void number_by(std::vector<OpenRun>& runs, std::size_t a, std::size_t a_end, std::size_t b, std::size_t b_end, Numbers& numbers) {
  while (a < a_end && b < b_end) {
    const OpenRun& known = runs[a];
    OpenRun& own = runs[b];
    if (known.first <= own.last && own.first <= known.last)
      own.region = own.region == unnumbered ? known.region : numbers.join(own.region, known.region);
    ++(known.last < own.last ? a : b);
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

namespace {

std::size_t cells_of(const OpenRun& run) { return static_cast<std::size_t>(run.last - run.first + 1); }

/// Numbers the runs of the rows from `first` to before `end` by what hangs together within them, from 0 in the order of their
/// first cells, and counts cells.
void number_slice(Regions& regions, std::size_t first, std::size_t end, SliceNumbers& slice) {
  std::vector<OpenRun>& runs = regions.runs;
  const std::vector<std::size_t>& begins = regions.row_begins;
  Numbers numbers;
  for (std::size_t row = first; row < end; ++row) {
    for (std::size_t run = begins[row]; run < begins[row + 1]; ++run) runs[run].region = unnumbered;
    if (row > first) number_by(runs, begins[row - 1], begins[row], begins[row], begins[row + 1], numbers);
    for (std::size_t run = begins[row]; run < begins[row + 1]; ++run)
      if (runs[run].region == unnumbered) runs[run].region = numbers.fresh();
  }
  slice.cells.clear();
  std::vector<std::int32_t> in_order(numbers.size(), unnumbered);
  for (std::size_t run = begins[first]; run < begins[end]; ++run) {
    std::int32_t& number = in_order[static_cast<std::size_t>(numbers.of(runs[run].region))];
    if (number == unnumbered) {
      number = static_cast<std::int32_t>(slice.cells.size());
      slice.cells.push_back(0);
    }
    runs[run].region = number;
    slice.cells[static_cast<std::size_t>(number)] += cells_of(runs[run]);
  }
}

/// Which numbers of a slice touch which of the next, whose rows begin at `next`.
void find_touching(const Regions& regions, std::size_t first, std::size_t next,
                   std::vector<std::pair<std::int32_t, std::int32_t>>& touching) {
  const std::vector<OpenRun>& runs = regions.runs;
  const std::vector<std::size_t>& begins = regions.row_begins;
  touching.clear();
  for (std::size_t row = 0; row < next - first; ++row) {
    std::size_t a = begins[first + row], b = begins[next + row];
    const std::size_t a_end = begins[first + row + 1], b_end = begins[next + row + 1];
    while (a < a_end && b < b_end) {
      const OpenRun &below = runs[a], &above = runs[b];
      if (below.first <= above.last && above.first <= below.last) {
        const std::pair pair(below.region, above.region);
        if ((touching.empty() || touching.back() != pair) && std::find(touching.begin(), touching.end(), pair) == touching.end())
          touching.push_back(pair);
      }
      ++(below.last < above.last ? a : b);
    }
  }
}

}  // namespace

void number_regions(const GridSize& size, Regions& regions, std::vector<SliceNumbers>& slices, const std::vector<char>& changed) {
  const auto deep = static_cast<std::size_t>(size.z);
  for (std::size_t y = 0; y < slices.size(); ++y)
    if (changed[y]) number_slice(regions, y * deep, (y + 1) * deep, slices[y]);
  for (std::size_t y = 0; y + 1 < slices.size(); ++y)
    if (changed[y] || changed[y + 1]) find_touching(regions, y * deep, (y + 1) * deep, slices[y].touching);

  Numbers numbers;
  for (SliceNumbers& slice : slices) {
    slice.regions.clear();
    for (std::size_t number = 0; number < slice.cells.size(); ++number) slice.regions.push_back(numbers.fresh());
  }
  for (std::size_t y = 0; y + 1 < slices.size(); ++y)
    for (const auto& [below, above] : slices[y].touching)
      numbers.join(slices[y].regions[static_cast<std::size_t>(below)], slices[y + 1].regions[static_cast<std::size_t>(above)]);
  regions.cells.clear();
  std::vector<std::int32_t> in_order(numbers.size(), unnumbered);
  for (SliceNumbers& slice : slices)
    for (std::size_t number = 0; number < slice.cells.size(); ++number) {
      std::int32_t& region = in_order[static_cast<std::size_t>(numbers.of(slice.regions[number]))];
      if (region == unnumbered) {
        region = static_cast<std::int32_t>(regions.cells.size());
        regions.cells.push_back(0);
      }
      slice.regions[number] = region;
      regions.cells[static_cast<std::size_t>(region)] += slice.cells[number];
    }
}

Regions regions_of(const GridSize& size, const Cells& open) {
  Regions regions;
  if (size.cells() == 0) return regions;
  const auto wide = static_cast<std::size_t>(size.x), deep = static_cast<std::size_t>(size.z),
             slices = static_cast<std::size_t>(size.y);
  regions.row_begins = {0};
  for (std::size_t at = 0; at < open.size(); at += wide) {
    add_open_runs(open.data() + at, size.x, regions.runs);
    regions.row_begins.push_back(regions.runs.size());
  }
  std::vector<SliceNumbers> numbers(slices);
  number_regions(size, regions, numbers, std::vector<char>(slices, 1));
  for (std::size_t y = 0; y < slices; ++y)
    for (std::size_t run = regions.row_begins[y * deep]; run < regions.row_begins[(y + 1) * deep]; ++run)
      regions.runs[run].region = numbers[y].regions[static_cast<std::size_t>(regions.runs[run].region)];
  return regions;
}

Cells cells_clear_by(const std::vector<std::int32_t>& squared_distances, double clearance) {
  const auto least = static_cast<std::int32_t>(std::ceil(clearance * clearance - 1e-9));
  Cells clear(squared_distances.size());
  for (std::size_t cell = 0; cell < clear.size(); ++cell) clear[cell] = squared_distances[cell] >= least ? 1 : 0;
  return clear;
}

}  // namespace shoalwright
