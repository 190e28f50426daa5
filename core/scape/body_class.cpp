// SPDX-License-Identifier: MIT
#include "scape/body_class.h"

#include <algorithm>
#include <cmath>

#include "tank/volume.h"

namespace shoalwright {

namespace {

constexpr std::int32_t square(std::int32_t v) { return v * v; }

/// Length of a cell along an axis, so that the cells of the empty tank have its whole measure.
double true_cell_cm(double inside_cm, int cells) { return cells > 2 ? inside_cm / (cells - 2) : 1; }

/// Tells the cells of a scape row by row.
class Rows {
 public:
  Rows(const BodyFit& fit, const Scape& scape)
      : fit_(fit),
        scape_(scape),
        wide_(static_cast<std::size_t>(scape.grid.size.x)),
        nothing_(wide_, InGrowth::none),
        growing_(wide_),
        own_(fit.least_squared > most ? wide_ : 0) {
    of_piece_.assign(scape.pieces.size() + 1, InGrowth::none);
    for (std::size_t piece = 0; piece < scape.pieces.size(); ++piece)
      of_piece_[piece + 1] = scape.pieces[piece].kind->gap_cm <= fit.stopped_by_gap ? InGrowth::stopped : InGrowth::passes;
  }

  std::uint64_t mark(std::size_t row, Way* ways, std::uint8_t* open) {
    const std::size_t at = row * wide_;
    const bool grown = scape_.rows_have[row] & Scape::has_growth;
    if (grown)
      for (std::size_t i = 0; i < wide_; ++i) growing_[i] = of_piece_[scape_.growth[at + i]];
    for (std::size_t i = 0; i < own_.size(); ++i) {
      const std::int32_t squared = scape_.distances.squared[at + i];
      own_[i] = static_cast<std::uint8_t>(squared >= fit_.least_squared ? most : std::min(squared, most - 1));
    }
    return mark_ways(own_.empty() ? scape_.distances.near.data() + at : own_.data(), (grown ? growing_ : nothing_).data(), wide_,
                     static_cast<std::uint8_t>(std::min(fit_.least_squared, most)), ways, open);
  }

 private:
  static constexpr std::int32_t most = 255;
  const BodyFit& fit_;
  const Scape& scape_;
  std::size_t wide_;
  std::vector<InGrowth> of_piece_, nothing_, growing_;
  Cells own_;  ///< instead of the scape's bytes where a body keeps farther off than those tell
};

/// Rows of cells that may have changed since a class was last brought up to date.
std::vector<std::size_t> rows_to_look_at(const BodyClass& one, const Scape& scape) {
  const std::vector<std::uint32_t>& versions = scape.distances.row_versions;
  // Growth that has gone has left rows that are not grown now.
  const bool all = scape.growth_version > one.version;
  std::vector<std::size_t> rows;
  for (std::size_t row = 0; row < versions.size(); ++row)
    if (all || versions[row] > one.version) rows.push_back(row);
  return rows;
}

/// Looks at what may have changed and joins what hangs together; true for each slice in which a cell has changed, empty where
/// none has.
std::vector<char> look_again(BodyClass& one, const Scape& scape) {
  const GridSize& size = scape.grid.size;
  const auto wide = static_cast<std::size_t>(size.x), deep = static_cast<std::size_t>(size.z);
  const std::size_t rows = deep * static_cast<std::size_t>(size.y);
  one.row_digests.resize(rows);
  one.regions.row_begins.resize(rows + 1);
  std::vector<char> changed;
  Regions fresh;
  fresh.runs.reserve(one.regions.runs.size() + 64);
  fresh.row_begins.reserve(rows + 1);
  // The rows before one that has changed stay as they are.
  const auto keep_until = [&](std::size_t row) {
    const std::size_t first = fresh.row_begins.size(), from = one.regions.row_begins[first];
    for (std::size_t k = first; k < row; ++k) fresh.row_begins.push_back(fresh.runs.size() + one.regions.row_begins[k] - from);
    fresh.runs.insert(fresh.runs.end(), one.regions.runs.begin() + static_cast<std::ptrdiff_t>(from),
                      one.regions.runs.begin() + static_cast<std::ptrdiff_t>(one.regions.row_begins[row]));
  };
  Rows of_scape(one.fit, scape);
  std::vector<Way> ways(wide);
  Cells open(wide);
  for (const std::size_t row : rows_to_look_at(one, scape)) {
    const std::uint64_t digest = of_scape.mark(row, ways.data(), open.data());
    if (digest == one.row_digests[row]) continue;
    one.row_digests[row] = digest;
    changed.resize(static_cast<std::size_t>(size.y));
    changed[row / deep] = 1;
    keep_until(row);
    fresh.row_begins.push_back(fresh.runs.size());
    add_open_runs(open.data(), size.x, fresh.runs);
  }
  one.version = scape.distances.version;
  if (changed.empty()) return changed;
  keep_until(rows);
  fresh.row_begins.push_back(fresh.runs.size());
  one.numbers.resize(changed.size());
  number_regions(size, fresh, one.numbers, changed);
  one.regions = std::move(fresh);
  return changed;
}

/// What of slice `y` cannot be reached from the main region.
std::vector<OpenRun> cut_off_in(const BodyClass& one, const GridSize& size, int y) {
  std::vector<OpenRun> cut_off;
  if (one.all_hangs_together()) return cut_off;
  for (int k = 0; k < size.z; ++k) {
    const std::size_t row = static_cast<std::size_t>(y * size.z + k);
    for (std::size_t run = one.regions.row_begins[row]; run < one.regions.row_begins[row + 1]; ++run)
      if (const OpenRun& cells = one.regions.runs[run]; !one.in_main_region(y, cells))
        cut_off.push_back({cells.first, cells.last, k});
  }
  return cut_off;
}

/// The slices of a level from its middle outward.
template <class Work>
void from_the_middle(int first, int end, Work work) {
  const int count = end - first, middle = first + count / 2;
  for (int n = 0; n < count; ++n)
    if (!work(n % 2 == 0 ? middle + n / 2 : middle - (n + 1) / 2)) return;
}

/// Whether slice `y` is equal to one that is looked at before it, whose runs are its own.
bool like_an_earlier_one(BodyClass& one, int first, int end, int y) {
  KnownSlice& own = one.slices[static_cast<std::size_t>(y)];
  if (!own.compared) {
    own.compared = true;
    from_the_middle(first, end, [&](int other) {
      if (other == y) return false;
      const KnownSlice& known = one.slices[static_cast<std::size_t>(other)];
      if (known.like < 0 && known.digest == own.digest && known.cut_off == own.cut_off) own.like = other;
      return own.like < 0;
    });
  }
  return own.like >= 0;
}

/// Slice `y`; what is cut off is only water to look at.
SwimSlice slice_of(const BodyClass& one, const Scape& scape, int y) {
  const GridSize& size = scape.grid.size;
  const auto wide = static_cast<std::size_t>(size.x), deep = static_cast<std::size_t>(size.z);
  SwimSlice slice{.x = size.x,
                  .z = size.z,
                  .step_x = true_cell_cm(inside_length_cm(scape.tank), size.x),
                  .step_z = true_cell_cm(inside_width_cm(scape.tank), size.z),
                  .ways = std::vector<Way>(wide * deep)};
  Rows rows(one.fit, scape);
  Cells open(wide);
  for (std::size_t k = 0; k < deep; ++k)
    rows.mark(static_cast<std::size_t>(y) * deep + k, slice.ways.data() + k * wide, open.data());
  for (const OpenRun& cells : one.slices[static_cast<std::size_t>(y)].cut_off)
    std::fill_n(slice.ways.begin() + static_cast<std::ptrdiff_t>(size.at(cells.first, cells.region, 0)),
                cells.last - cells.first + 1, Way::near);
  return slice;
}

/// Cells by which the end of a run reaches beyond the middle.
int nose_of(const BodyFit& fit) {
  int nose = 0;
  while (square(nose + 1) < fit.least_squared) ++nose;
  return nose;
}

}  // namespace

BodyFit fit_of(double depth_cm, const Scape& scape) {
  BodyFit fit;
  const double clear = depth_cm / 2 / scape.grid.cell_cm + 0.5;  // faces of cells lie half a cell nearer than their middles
  fit.least_squared = std::max(1, static_cast<std::int32_t>(std::ceil(clear * clear - 1e-9)));
  for (const PlacedPiece& piece : scape.pieces)
    if (!piece.kind->solid() && depth_cm > static_cast<double>(piece.kind->gap_cm))
      fit.stopped_by_gap = std::max(fit.stopped_by_gap, piece.kind->gap_cm);
  return fit;
}

void update(BodyClass& one, const Scape& scape) {
  one.up_to_date = true;
  const GridSize& size = scape.grid.size;
  one.slices.resize(static_cast<std::size_t>(size.y));
  const std::vector<char> changed = look_again(one, scape);
  if (changed.empty()) return;
  const std::vector<std::size_t>& cells = one.regions.cells;
  one.main_region = static_cast<std::int32_t>(std::max_element(cells.begin(), cells.end()) - cells.begin());
  std::vector<char> anew = changed;
  for (int y = 0; y < size.y; ++y) {
    KnownSlice& known = one.slices[static_cast<std::size_t>(y)];
    std::vector<OpenRun> cut_off = cut_off_in(one, size, y);
    if (changed[static_cast<std::size_t>(y)] || !(cut_off == known.cut_off)) {
      known = {};
      for (int k = 0; k < size.z; ++k)
        known.digest = digest_of(known.digest, one.row_digests[static_cast<std::size_t>(y * size.z + k)]);
      known.cut_off = std::move(cut_off);
      anew[static_cast<std::size_t>(y)] = 1;
    }
  }
  for (KnownSlice& known : one.slices)
    if (known.like >= 0 && anew[static_cast<std::size_t>(known.like)]) {
      known.like = -1;
      known.compared = false;
    }
}

std::optional<std::pair<int, StraightRun>> longest_run(BodyClass& one, const Scape& scape, int first, int end, double enough) {
  // Runs a little shorter than the best are found as well: when the best gets shorter, not every slice is searched again.
  constexpr double looked_for = 0.9;
  std::optional<std::pair<int, StraightRun>> best;
  from_the_middle(first, end, [&](int y) {
    const double longest = best ? best->second.length : 0;
    if (like_an_earlier_one(one, first, end, y)) return true;
    KnownSlice& known = one.slices[static_cast<std::size_t>(y)];
    if (!known.searched || (!known.longest && known.none_longer > longest)) {
      known.none_longer = looked_for * longest;
      known.longest = longest_straight_run(slice_of(one, scape, y), nose_of(one.fit), known.none_longer, enough);
      known.searched = true;
    }
    if (known.longest && known.longest->length > longest) best.emplace(y, *known.longest);
    return !(best && best->second.length >= enough);
  });
  return best;
}

std::optional<std::pair<int, Circuit>> longest_way_round(BodyClass& one, const Scape& scape, int first, int end,
                                                         double clearance) {
  std::optional<std::pair<int, Circuit>> best;
  // Glass, the way, an island, the way again, glass.
  if (std::min(scape.grid.size.x, scape.grid.size.z) < 4 * clearance + 3) return best;
  from_the_middle(first, end, [&](int y) {
    if (like_an_earlier_one(one, first, end, y)) return true;
    auto& known = one.slices[static_cast<std::size_t>(y)].circuits;
    auto found = std::find_if(known.begin(), known.end(), [&](const auto& circuit) { return circuit.first == clearance; });
    if (found == known.end()) {
      known.emplace_back(clearance, longest_circuit(slice_of(one, scape, y), clearance));
      found = known.end() - 1;
    }
    if (found->second && !(best && best->second.length >= found->second->length)) best.emplace(y, *found->second);
    return true;
  });
  return best;
}

}  // namespace shoalwright
