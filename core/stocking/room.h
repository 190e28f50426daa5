// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "plan/plan.h"
#include "scape/body_room.h"
#include "stocking/crowding.h"
#include "stocking/stock.h"
#include "tank/volume.h"

namespace shoalwright {

/// One third of the water over the substrate at its mean height.
struct Layer {
  std::string name;                ///< "surface", "mid", "bottom"
  double from_cm = 0, to_cm = 0;   ///< depth below the water line
  double water_l = 0;              ///< net of solids
  double plant_share = 0;          ///< of that water, drawn plants and those of the plan's word
  double open_l = 0;               ///< net of both
  double lane_cm = 0;              ///< longest clear run of a slim body
  Lane lane;                       ///< where that is
  double empty_lane_cm = 0;        ///< the same without any piece
  std::optional<double> crowding;  ///< demanded over open; empty where nothing is open
  bool operator==(const Layer&) const = default;
};

/// What one group finds.
struct GroupRoom {
  std::string species;
  double open_l = 0;                       ///< open water in the layers that it uses
  double lane_cm = 0, lane_needed_cm = 0;  ///< in its main layer; needed: lane of the life style x adult length, 0 when none
  Lane lane;                               ///< where it is
  std::optional<double> crowding;          ///< of the layer where it is highest for this group
  std::optional<int> largest_count;        ///< the most that raise no harm and no strain, others as they are
  std::string stopped_by;                  ///< rule that stops the next one
  bool operator==(const GroupRoom&) const = default;
};

struct Room {
  double open_l = 0;
  double floor_cm2 = 0;
  std::optional<double> floor_crowding;
  double sight_factor = 1;  ///< of the ground of holders: pieces that break their sight of each other spare them some
  std::array<Layer, 3> layers;
  std::vector<GroupRoom> groups;  ///< in stock order, known species only
  bool operator==(const Room&) const = default;
};

/// Layers as bodies find them.
LayerWater layer_water(const Room& room);

/// What a group asks of the layers at adult size, and what of them it reaches. Where it cannot get to a layer at all, what it
/// wants there is wanted of the others. `kept.species` must be known.
Demand demand_of(const Kept& kept, BodyRooms& bodies);

/// The room of a plan for the whole stock at adult size. An unknown species leaves every crowding empty, since it would enter
/// each sum; an unknown planting those of the layers. `largest_count` and `stopped_by` are left empty. `bodies` are of the plan's
/// scape and levels_of() it.
Room room_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume, BodyRooms& bodies);
Room room_of(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume);

}  // namespace shoalwright
