// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"
#include "scape/body_room.h"
#include "scape/grid.h"

namespace shoalwright {

/// A place or a way in the tank, cm: x from the left pane, y above the inside bottom, z from the front pane.
struct SwimPoint {
  float x = 0, y = 0, z = 0;
};
inline SwimPoint operator+(const SwimPoint& a, const SwimPoint& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
inline SwimPoint operator*(const SwimPoint& a, float by) { return {a.x * by, a.y * by, a.z * by}; }

/// How far it is to glass, substrate, air, solids and growth too dense for some bodies: one distance a cell.
struct SwimRoom {
  GridSize size;
  float cell_cm = 1;
  SwimPoint corner;                       ///< outer faces of the first cells
  float line_cm = 0;                      ///< the water line
  float third_cm = 0;                     ///< height of each of the three levels, down from the water line
  std::vector<std::vector<float>> clear;  ///< cm from the middle of a cell to the nearest face; below 0: taken
  std::vector<float> stopped_by_gap;      ///< growth with gaps up to this is taken in the field of the same number, cm
};

/// The inside of a plan without any field. Without cells where no water stands in it.
SwimRoom swim_room_of(const Plan& plan, const BodyRooms& bodies);

/// Number of the field of bodies so deep, which is added where it is new. `plan` and `bodies` as the room was made from.
std::size_t field_for(SwimRoom& room, const Plan& plan, const BodyRooms& bodies, float body_depth_cm);

/// Room about a place: cm from it to the nearest face, and the way on which that grows, in cm a cm.
struct Clearance {
  float cm = 0;
  SwimPoint away;
};
Clearance clearance_at(const SwimRoom& room, std::size_t field, const SwimPoint& place);

/// Whether a place is water that is not taken.
bool is_open(const SwimRoom& room, std::size_t field, const SwimPoint& place);

}  // namespace shoalwright
