// SPDX-License-Identifier: MIT
#include "scape/straight_run.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <vector>

namespace shoalwright {

namespace {

constexpr int slopes = 25;  // steps of slope between an axis and the diagonal; odd, so that no line runs between two rows

/// Looks along parallel lines that go one cell along their main axis and `rise` / `slopes` cells across at each step. Lines begin
/// in the middles of cells at either end, or a mirrored slice would be looked at along other lines.
class Search {
 public:
  Search(const SwimSlice& slice, int nose, double longer_than, double enough)
      : slice_(slice), nose_(nose), longest_(longer_than), enough_(enough) {}

  void look(bool along_x, int rise) {
    if (longest_ >= enough_) return;
    steps_ = along_x ? slice_.x : slice_.z;
    rows_ = along_x ? slice_.z : slice_.x;
    const double slope = static_cast<double>(rise) / slopes;
    step_ = along_x ? std::hypot(slice_.step_x, slope * slice_.step_z) : std::hypot(slice_.step_z, slope * slice_.step_x);
    const double room = rise == 0 ? steps_ : std::min<double>(steps_, rows_ / std::abs(slope) + 1);
    if (!(room * step_ > longest_)) return;
    const int per_step = along_x ? 1 : slice_.x;
    per_row_ = along_x ? slice_.x : 1;
    for (const bool from_end : {false, true}) {
      if (from_end && rise == 0) continue;
      across_.clear();
      cell_.clear();
      for (int s = 0; s < steps_; ++s) {
        const int twice = 2 * (from_end ? steps_ - 1 - s : s) * std::abs(rise) + slopes, whole = twice / (2 * slopes);
        across_.push_back(rise < 0 ? -whole : whole);
        cell_.push_back(s * per_step + across_.back() * per_row_);
      }
      const auto [low, high] = std::minmax(across_.front(), across_.back());
      // From the middle outward: of equally long runs the one in open water.
      const int first = -high, count = rows_ - low + high, middle = first + count / 2;
      for (int n = 0; n < count; ++n) look_along(along_x, n % 2 == 0 ? middle + n / 2 : middle - (n + 1) / 2);
    }
  }

  const std::optional<StraightRun>& best() const { return best_; }

 private:
  const SwimSlice& slice_;
  const int nose_;
  double longest_, enough_;
  std::optional<StraightRun> best_;
  // Of the direction that is looked along: cells on the main axis, rows beside it, length of a step, and for each step of a line
  // how far across it is and how far its cell lies from that of its start.
  int steps_ = 0, rows_ = 0, per_row_ = 1;
  double step_ = 1;
  std::vector<int> across_, cell_;

  /// A run longer than the longest so far has at least so many cells in which the body's middle can be.
  int cells_needed() const { return std::max(1, static_cast<int>(longest_ / step_) + 1 - 2 * nose_); }

  void look_along(bool along_x, int start) {
    // The part of the line that lies in the slice.
    const bool rising = across_.back() >= across_.front();
    const auto before = [&](int row) {
      return static_cast<int>(std::partition_point(across_.begin(), across_.end(),
                                                   [&](int a) { return rising ? start + a < row : start + a >= row; }) -
                              across_.begin());
    };
    const int first = rising ? before(0) : before(rows_), end = rising ? before(rows_) : before(0);
    const auto open = [&](int s) {
      const Way way = way_at(start, s);
      return way == Way::clear || way == Way::slow;
    };
    // A long run covers one of the places that stand so far apart: only they are looked at.
    for (int s = first + cells_needed() - 1; s < end; s += cells_needed()) {
      if (!open(s)) continue;
      int from = s, to = s;
      while (from > first && open(from - 1)) --from;
      while (to + 1 < end && open(to + 1)) ++to;
      keep(along_x, start, first, end, from, to);
      s = to + 1;
    }
  }

  Way way_at(int start, int s) const {
    return slice_.ways[static_cast<std::size_t>(start * per_row_ + cell_[static_cast<std::size_t>(s)])];
  }

  void keep(bool along_x, int start, int first, int end, int from, int to) {
    const auto way = [&](int s) { return way_at(start, s); };
    double cells = 0;
    for (int s = from; s <= to; ++s) cells += way(s) == Way::slow ? slow_share : 1;
    for (int n = 0; n < nose_ && from > first && way(from - 1) == Way::near; ++n, ++cells) --from;
    for (int n = 0; n < nose_ && to + 1 < end && way(to + 1) == Way::near; ++n, ++cells) ++to;
    if (!(cells * step_ > longest_)) return;
    longest_ = cells * step_;
    const int row0 = start + across_[static_cast<std::size_t>(from)], row1 = start + across_[static_cast<std::size_t>(to)];
    best_ = along_x ? StraightRun{from, row0, to, row1, longest_} : StraightRun{row0, from, row1, to, longest_};
  }
};

}  // namespace

std::optional<StraightRun> longest_straight_run(const SwimSlice& slice, int nose, double longer_than, double enough) {
  Search search(slice, nose, longer_than, enough);
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
