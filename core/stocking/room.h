// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "plan/plan.h"
#include "stocking/stock.h"
#include "tank/volume.h"

namespace shoalwright {

/// One third of the water over the substrate at its mean height.
struct Layer {
  std::string name;                ///< "surface", "mid", "bottom"
  double from_cm = 0, to_cm = 0;   ///< depth below the water line
  double open_l = 0;               ///< net of plants
  double lane_cm = 0;              ///< longest clear run of the empty tank
  std::optional<double> crowding;  ///< demanded over open; empty where nothing is open
  bool operator==(const Layer&) const = default;
};

/// What one group finds.
struct GroupRoom {
  std::string species;
  double open_l = 0;                       ///< open water in the layers that it uses
  double lane_cm = 0, lane_needed_cm = 0;  ///< needed: lane of the life style x adult length; 0 when it needs none
  std::optional<double> crowding;          ///< of the layer where it is highest for this group
  std::optional<int> largest_count;        ///< the most that raise no harm and no strain, others as they are
  std::string stopped_by;                  ///< rule that stops the next one
  bool operator==(const GroupRoom&) const = default;
};

struct Room {
  double open_l = 0;
  double floor_cm2 = 0;
  std::optional<double> floor_crowding;
  std::array<Layer, 3> layers;
  std::vector<GroupRoom> groups;  ///< in stock order, known species only
  bool operator==(const Room&) const = default;
};

/// The room of the empty tank (pieces are not measured yet) for the whole stock at adult size. An unknown species leaves every
/// crowding empty, since it would enter each sum; an unknown planting those of the layers. `largest_count` and `stopped_by` are
/// left empty.
Room room_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume);

}  // namespace shoalwright
