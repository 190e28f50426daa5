// SPDX-License-Identifier: MIT
#include "scape/straight_run.h"

#include <algorithm>
#include <cmath>

namespace shoalwright {

namespace {

constexpr int slopes = 25;  // steps of slope between an axis and the diagonal; odd, so that no line runs between two rows

/// Looks along parallel lines that go one cell along their main axis and `rise` / `slopes` cells across at each step. Lines begin
/// in the middles of cells at either end, or a mirrored slice would be looked at along other lines.
class Search {
 public:
  Search(int x, int z, std::span<const std::uint8_t> open) : x_(x), z_(z), open_(open) {}

  void look(bool along_x, int rise) {
    const int steps = along_x ? x_ : z_, rows = along_x ? z_ : x_;
    const double slope = static_cast<double>(rise) / slopes, step = std::hypot(1, slope);
    const double room = rise == 0 ? steps : std::min<double>(steps, rows / std::abs(slope));
    if (best_ && !(room * step > best_->length)) return;
    const int span = static_cast<int>(std::ceil(std::abs(slope) * (steps - 1)));
    const int first = rise > 0 ? -span : 0, last = rise > 0 ? rows - 1 : rows - 1 + span;
    for (int start = first; start <= last; ++start) {
      look_along({along_x, false, rise, start}, steps, rows, step);
      if (rise != 0) look_along({along_x, true, rise, start}, steps, rows, step);
    }
  }

  const std::optional<StraightRun>& best() const { return best_; }

 private:
  struct Line {
    bool along_x, from_end;
    int rise, start;
  };

  int x_, z_;
  std::span<const std::uint8_t> open_;
  std::optional<StraightRun> best_;

  /// The row of a line after some steps, rounded to the nearest.
  static int row_after(const Line& line, int steps) {
    const int twice = 2 * steps * std::abs(line.rise) + slopes, whole = twice / (2 * slopes);
    return line.start + (line.rise < 0 ? -whole : whole);
  }

  void look_along(const Line& line, int steps, int rows, double step) {
    int begun = -1;
    const auto row_at = [&](int s) { return row_after(line, line.from_end ? steps - 1 - s : s); };
    for (int s = 0; s <= steps; ++s) {
      const int row = s < steps ? row_at(s) : -1;
      const bool open = row >= 0 && row < rows && is_open(line.along_x, s, row);
      if (open && begun < 0) begun = s;
      if (open || begun < 0) continue;
      keep(line.along_x, begun, row_at(begun), s - 1, row_at(s - 1), (s - 1 - begun) * step);
      begun = -1;
    }
  }

  bool is_open(bool along_x, int s, int row) const {
    const int i = along_x ? s : row, k = along_x ? row : s;
    return open_[static_cast<std::size_t>(k) * static_cast<std::size_t>(x_) + static_cast<std::size_t>(i)] != 0;
  }

  void keep(bool along_x, int s0, int row0, int s1, int row1, double length) {
    if (best_ && !(length > best_->length)) return;
    best_ = along_x ? StraightRun{s0, row0, s1, row1, length} : StraightRun{row0, s0, row1, s1, length};
  }
};

}  // namespace

std::optional<StraightRun> longest_straight_run(int x, int z, std::span<const std::uint8_t> open) {
  Search search(x, z, open);
  search.look(true, 0);
  search.look(false, 0);
  for (int rise = 1; rise <= slopes; ++rise)
    for (const int sign : {1, -1}) {
      search.look(true, sign * rise);
      if (rise < slopes) search.look(false, sign * rise);  // the diagonals are looked along already
    }
  return search.best();
}

}  // namespace shoalwright
