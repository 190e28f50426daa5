// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "scape/body_class.h"
#include "scape/filling.h"
#include "scape/scape.h"

namespace shoalwright {

/// The measures of a body that decide where it fits, cm: its height, and its length for turning.
struct BodySize {
  double depth_cm = 0, length_cm = 0;
};

/// A level of the water: heights over the inside bottom, and the run of the empty tank there, which no scape makes longer.
struct WaterLevel {
  double low_cm = 0, high_cm = 0, empty_run_cm = 0;
  bool operator==(const WaterLevel&) const = default;
};
using WaterLevels = std::array<WaterLevel, 3>;

/// A clear run and where it is: two ends of a straight one, or the whole way round an island, of which half counts.
struct Lane {
  double cm = 0;
  bool circuit = false;
  double height_cm = 0;  ///< over the inside bottom
  std::vector<Point> path;
  bool operator==(const Lane&) const = default;
};

/// What bodies of different size find in the scape of a plan. Worked out when first asked; whoever asks again and again keeps it,
/// and only what has changed is worked out anew.
class BodyRooms {
 public:
  void update(const Plan& plan, const WaterLevels& levels);

  const Scape& scape() const { return scape_; }
  const WaterLevels& levels() const { return levels_; }

  /// Share of each level's water, solids not counted, that a body reaches: a corner that is cut off is no room.
  std::array<double, 3> reach(const BodySize& body);

  /// Water in which its middle could be but which it cannot get to from the rest.
  std::vector<CellRun> cut_off(const BodySize& body);

  /// The longest clear lane within a level. Bodies keep half their depth from glass, substrate, surface and solids; growth stops
  /// those deeper than its gaps and counts 0.7 of its length for others. A way round an island must be two lengths wide. Never
  /// longer than the run of the empty tank, and as long as that where it falls short by no more than a cell.
  Lane lane(const BodySize& body, std::size_t level);

  const std::array<Filling, 3>& fillings() const { return fillings_; }
  /// The same of the water about a height over the inside bottom.
  Filling filling_at(double height_cm) const;

 private:
  struct KnownLane {
    std::size_t body_class = 0, level = 0;
    double length_cm = 0;
    Lane lane;
  };

  BodyClass& class_of(const BodySize& body);
  std::array<double, 3> reach_of(const BodyClass& one) const;
  Lane straight_lane(BodyClass& one, std::size_t level) const;
  int first_slice(const WaterLevel& level) const;
  int end_slice(const WaterLevel& level) const;

  Scape scape_;
  WaterLevels levels_{};
  std::array<Filling, 3> fillings_{};
  std::vector<FilledCells> slices_;
  std::vector<BodyClass> classes_;
  std::vector<std::array<double, 3>> reaches_;  ///< of each class
  std::vector<KnownLane> lanes_;
};

}  // namespace shoalwright
