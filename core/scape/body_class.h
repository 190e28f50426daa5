// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "scape/circuit.h"
#include "scape/marks.h"
#include "scape/regions.h"
#include "scape/scape.h"
#include "scape/straight_run.h"

namespace shoalwright {

/// What is known of one slice until a cell of it changes.
struct KnownSlice {
  std::uint64_t digest = 0;      ///< of its cells
  std::vector<OpenRun> cut_off;  ///< water that hangs together with no more than a corner; `region` is the row
  int like = -1;                 ///< an equal slice that is looked at earlier in its level, -1: not known
  bool compared = false;
  bool searched = false;
  std::optional<StraightRun> longest;                               ///< where it was found
  double none_longer = 0;                                           ///< where it was not: no run is longer than this
  std::vector<std::pair<double, std::optional<Circuit>>> circuits;  ///< by the clearance that they keep, in cells
};

/// Bodies that fit into the same cells.
struct BodyFit {
  std::int32_t least_squared = 1;  ///< distance that the middle keeps, in cells
  float stopped_by_gap = 0;        ///< growth with gaps up to this stops them, cm
  bool operator==(const BodyFit&) const = default;
};

BodyFit fit_of(double depth_cm, const Scape& scape);

/// The scape as they find it.
struct BodyClass {
  BodyFit fit;
  bool up_to_date = false;
  std::uint32_t version = 0;               ///< of the distances that it was last brought up to
  std::vector<std::uint64_t> row_digests;  ///< of the cells of each row
  Regions regions;                         ///< its runs have the numbers of their slices
  std::vector<SliceNumbers> numbers;       ///< of each slice
  std::int32_t main_region = 0;
  std::vector<KnownSlice> slices;

  bool in_main_region(int slice, const OpenRun& run) const {
    return numbers[static_cast<std::size_t>(slice)].regions[static_cast<std::size_t>(run.region)] == main_region;
  }
  bool all_hangs_together() const { return regions.cells.size() < 2; }
};

/// Brings it up to a scape of the same grid.
void update(BodyClass& one, const Scape& scape);

/// The longest straight run within the slices from `first` to before `end`, and its slice. Of equally long ones that nearest to
/// the middle. It ends with the first that is at least `enough`, which must not change while the grid stays.
std::optional<std::pair<int, StraightRun>> longest_run(BodyClass& one, const Scape& scape, int first, int end, double enough);

/// The longest way round an island there that keeps `clearance` cells off, and its slice.
std::optional<std::pair<int, Circuit>> longest_way_round(BodyClass& one, const Scape& scape, int first, int end,
                                                         double clearance);

}  // namespace shoalwright
