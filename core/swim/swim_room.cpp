// SPDX-License-Identifier: MIT
#include "swim/swim_room.h"

#include <algorithm>
#include <cmath>

#include "scape/distance.h"

namespace shoalwright {

namespace {

/// The grid of the scape; where it has no cells one like it.
TankGrid grid_of(const Plan& plan, const BodyRooms& bodies) {
  const TankGrid& grid = bodies.scape().grid;
  return grid.size.cells() ? grid : tank_grid_of(plan, cell_size_cm(plan));
}

/// Cells from the outer face of the first one.
SwimPoint in_cells(const SwimRoom& room, const SwimPoint& place) { return (place + room.corner * -1) * (1 / room.cell_cm); }

}  // namespace

SwimRoom swim_room_of(const Plan& plan, const BodyRooms& bodies) {
  const WaterLevel& surface = bodies.levels()[0];
  SwimRoom room;
  if (!(surface.high_cm > surface.low_cm)) return room;
  const TankGrid grid = grid_of(plan, bodies);
  room.size = grid.size;
  room.cell_cm = static_cast<float>(grid.cell_cm);
  room.corner = {static_cast<float>(grid.left_cm), static_cast<float>(grid.floor_cm), static_cast<float>(grid.front_cm)};
  room.line_cm = static_cast<float>(surface.high_cm);
  room.third_cm = static_cast<float>(surface.high_cm - surface.low_cm);
  return room;
}

std::size_t field_for(SwimRoom& room, const Plan& plan, const BodyRooms& bodies, float body_depth_cm) {
  const Scape& scape = bodies.scape();
  float gap_cm = 0;
  for (const PlacedPiece& piece : scape.pieces)
    if (body_depth_cm > piece.kind->gap_cm) gap_cm = std::max(gap_cm, piece.kind->gap_cm);
  const auto known = std::find(room.stopped_by_gap.begin(), room.stopped_by_gap.end(), gap_cm);
  if (known != room.stopped_by_gap.end()) return static_cast<std::size_t>(known - room.stopped_by_gap.begin());
  Cells taken = grid_of(plan, bodies).taken;
  for (std::size_t cell = 0; cell < scape.solid.size(); ++cell)
    taken[cell] |= scape.solid[cell] || (scape.growth[cell] && scape.pieces[scape.growth[cell] - 1u].kind->gap_cm <= gap_cm);
  std::vector<float> clear;
  for (const std::int32_t squared : squared_distances(room.size, taken))
    clear.push_back((std::sqrt(static_cast<float>(squared)) - 0.5f) * room.cell_cm);
  room.clear.push_back(std::move(clear));
  room.stopped_by_gap.push_back(gap_cm);
  return room.clear.size() - 1;
}

Clearance clearance_at(const SwimRoom& room, std::size_t field, const SwimPoint& place) {
  const SwimPoint at = in_cells(room, place);
  const auto corner = [](float cells, int count) { return std::clamp(static_cast<int>(cells - 0.5f), 0, count - 2); };
  const int i = corner(at.x, room.size.x), j = corner(at.y, room.size.y), k = corner(at.z, room.size.z);
  const auto part = [](float cells, int from) { return std::clamp(cells - 0.5f - static_cast<float>(from), 0.0f, 1.0f); };
  const float u = part(at.x, i), v = part(at.y, j), w = part(at.z, k);
  // Between the middles of eight cells the distance is taken as linear along each axis.
  const float* clear = &room.clear[field][room.size.at(i, k, j)];
  const std::size_t row = static_cast<std::size_t>(room.size.x), slice = row * static_cast<std::size_t>(room.size.z);
  float at_x[2][2];  // below and above, at the front and at the back
  Clearance found;
  for (std::size_t y = 0; y < 2; ++y)
    for (std::size_t z = 0; z < 2; ++z) {
      const float* pair = clear + y * slice + z * row;
      at_x[y][z] = pair[0] + (pair[1] - pair[0]) * u;
      found.away.x += (pair[1] - pair[0]) * (y ? v : 1 - v) * (z ? w : 1 - w);
    }
  const float low = at_x[0][1] - at_x[0][0], high = at_x[1][1] - at_x[1][0];
  const float below = at_x[0][0] + low * w, above = at_x[1][0] + high * w;
  found.away.y = above - below;
  found.away.z = low + (high - low) * v;
  found.away = found.away * (1 / room.cell_cm);
  found.cm = below + (above - below) * v;
  return found;
}

bool is_open(const SwimRoom& room, std::size_t field, const SwimPoint& place) {
  const SwimPoint at = in_cells(room, place);
  const int i = static_cast<int>(at.x), j = static_cast<int>(at.y), k = static_cast<int>(at.z);
  return place.y < room.line_cm && at.x > 0 && at.y > 0 && at.z > 0 && i < room.size.x && j < room.size.y && k < room.size.z &&
         room.clear[field][room.size.at(i, k, j)] > 0;
}

}  // namespace shoalwright
