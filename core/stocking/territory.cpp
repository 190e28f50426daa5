// SPDX-License-Identifier: MIT
#include "stocking/territory.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "scape/sight.h"
#include "stocking/body.h"
#include "stocking/crowding.h"
#include "stocking/floor.h"
#include "tank/outline.h"
#include "tank/volume.h"
#include "units/order.h"

namespace shoalwright {

namespace {

constexpr double slack = 1e-6;        ///< what rounding may do to mirrored measures
constexpr double least_eye_cm = 2;    ///< over the floor
constexpr double beside_cm = 2;       ///< from the edge of a hiding place
constexpr int rows = 5, columns = 9;  ///< of spots where nothing shelters

/// Where a home may be.
struct Spot {
  TankPoint eye;
  double shelter_cm = 0;  ///< what a hiding place there is worth in distance to others
  double gap_cm = 0;      ///< to the nearest home; none yet: 0
};

struct Holder {
  const Species* species = nullptr;
  int count = 0;
  double radius_cm = 0, eye_cm = 0;
  std::vector<Spot> spots;
};

struct Arrangement {
  Territories all;
  std::vector<TankPoint> eyes;
  std::vector<double> merits;  ///< of one home after the other: its worth, and how many of the others it sees
};

double distance(double x, double z) { return std::sqrt(x * x + z * z); }

double shelter_of(const PieceKind& kind) { return kind.floats ? 0 : kind.hides > 0 ? 1 : static_cast<double>(kind.shelter); }

/// The floor that a home must lie on: how far its middle is from the foremost and the hindmost glass at least.
struct Floor {
  const Plan& plan;
  const Scape& scape;
  std::vector<Point> outline;
  double near_cm = 0, far_cm = 0;
};

/// Adds a spot in the row at `z_cm` if a home can be there. `x`: cm from the left pane, held within what the row offers, or a
/// share of that.
void add_spot(const Floor& floor, double x, double z_cm, bool share, Holder& holder) {
  const double r = holder.radius_cm;
  // The panes keep off its left and right, and the corners of an octagon around it, so that a curve does not cut it.
  double from = -1e9, to = 1e9;
  std::vector<double> cuts;
  for (const double part : {-0.7, 0.7, 0.0}) {
    crossings(floor.outline, z_cm + part * floor.near_cm, cuts);
    if (cuts.empty()) return;
    const double inset = part == 0 ? r : 0.7 * r;
    from = std::max(from, cuts.front() + inset);
    to = std::min(to, cuts.back() - inset);
  }
  if (from > to) from = to = (from + to) / 2;
  x = share ? from + (to - from) * x : std::clamp(x, from, to);
  const auto panes = std::count_if(cuts.begin(), cuts.end(), [x](double cut) { return cut < x; });
  Spot spot{.eye = {x, substrate_height_cm(floor.plan, x, z_cm) + holder.eye_cm, z_cm}};
  if (panes % 2 == 0 || !sees(floor.scape, spot.eye, spot.eye)) return;
  for (const PlacedPiece& piece : floor.scape.pieces) {
    const double shelter = shelter_of(*piece.kind);
    if (!(shelter > 0) || piece.foot_cm > spot.eye.y_cm) continue;
    const double dx = x - piece.x_cm, dz = z_cm - piece.z_cm;
    // A holder keeps watch in front of its cave, not in it.
    if (piece.kind->hides > 0 && std::abs(dx * piece.cos_turn + dz * piece.sin_turn) < piece.length_cm / 2 + slack &&
        std::abs(dz * piece.cos_turn - dx * piece.sin_turn) < piece.depth_cm / 2 + slack)
      return;
    spot.shelter_cm = std::max(spot.shelter_cm, shelter * (r - distance(dx, dz)));
  }
  holder.spots.push_back(spot);
}

/// Spots all over the floor, and on the four sides of whatever shelters.
void find_spots(const Plan& plan, const Scape& scape, Holder& holder) {
  const double width_cm = inside_width_cm(plan.tank), near_cm = std::min(holder.radius_cm, width_cm / 2);
  const Floor floor{plan, scape, inside_outline(plan.tank), near_cm, width_cm - near_cm};
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column)
      add_spot(floor, column / (columns - 1.0), near_cm + (floor.far_cm - near_cm) * row / (rows - 1), true, holder);
  for (const PlacedPiece& piece : scape.pieces) {
    if (!(shelter_of(*piece.kind) > 0)) continue;
    const double u = piece.length_cm / 2 + beside_cm, v = piece.depth_cm / 2 + beside_cm;
    const double sides[][2] = {{u, 0}, {-u, 0}, {0, v}, {0, -v}};
    for (const auto& side : sides) {
      const TankPoint at = piece.at(side[0], side[1], 0);
      add_spot(floor, at.x_cm, std::clamp(at.z_cm, near_cm, floor.far_cm), false, holder);
    }
  }
}

/// Takes a home into account in what is left between others and each spot.
void keep_off(std::vector<Spot>& spots, const Territory& home, double radius_cm, bool first) {
  for (Spot& spot : spots) {
    const double gap = distance(spot.eye.x_cm - home.x_cm, spot.eye.z_cm - home.z_cm) - home.across_cm / 2 - radius_cm;
    spot.gap_cm = first ? gap : std::min(spot.gap_cm, gap);
  }
}

/// One home after the other; of spots that are worth the same the one first in `direction`, then the foremost.
Arrangement arranged(const Scape& scape, const std::vector<Holder>& holders, double direction) {
  Arrangement out;
  std::vector<Territory>& homes = out.all.homes;
  for (const Holder& holder : holders) {
    std::vector<Spot> spots = holder.spots;
    for (std::size_t i = 0; i < homes.size(); ++i) keep_off(spots, homes[i], holder.radius_cm, i == 0);
    for (int left = holder.count; left > 0 && !spots.empty() && homes.size() < most_homes; --left) {
      const Spot* best = spots.data();
      for (const Spot& spot : spots) {
        const double differences[] = {spot.gap_cm + spot.shelter_cm - best->gap_cm - best->shelter_cm,
                                      direction * (best->eye.x_cm - spot.eye.x_cm), best->eye.z_cm - spot.eye.z_cm};
        for (const double by : differences)
          if (std::abs(by) > slack) {
            if (by > 0) best = &spot;
            break;
          }
      }
      out.merits.push_back(best->gap_cm + best->shelter_cm);
      int seen = 0;
      for (std::size_t i = 0; i < homes.size(); ++i) {
        const bool sight = sees(scape, out.eyes[i], best->eye);
        out.all.lines.push_back({i, homes.size(), !sight});
        seen += sight;
      }
      out.merits.push_back(seen);
      out.eyes.push_back(best->eye);
      homes.push_back({holder.species->id, best->eye.x_cm, best->eye.z_cm, 2 * holder.radius_cm});
      keep_off(spots, homes.back(), holder.radius_cm, homes.size() == 1);
    }
  }
  return out;
}

}  // namespace

Territories territories_of(const Plan& plan, const std::vector<Kept>& stock, const BodyRooms& bodies) {
  std::vector<Holder> holders;
  for (const Kept& kept : stock) {
    if (kept.species == nullptr) continue;
    const Species& s = *kept.species;
    if (!holds_floor(s)) continue;
    const double count = std::ceil(floor_count(true, s.life.group.kind, kept.count, kept.males, kept.females) - slack);
    Holder holder{.species = &s, .count = static_cast<int>(std::min(count, static_cast<double>(most_homes)))};
    holder.radius_cm = std::sqrt(floor_need_cm2(s.life.style, s.size.body, s.size.adult_tl_cm) / std::numbers::pi);
    holder.eye_cm = std::max(body_size_of(s).depth_cm / 2, least_eye_cm);
    holders.push_back(std::move(holder));
  }
  if (holders.empty()) return {};
  sort_stable(holders, [](const Holder& a, const Holder& b) {
    return a.radius_cm > b.radius_cm || (a.radius_cm == b.radius_cm && a.species->id < b.species->id);
  });
  for (Holder& holder : holders) find_spots(plan, bodies.scape(), holder);
  Arrangement best = arranged(bodies.scape(), holders, 1), other = arranged(bodies.scape(), holders, -1);
  // Judged home by home, so that another one more does not move those before it to the other side.
  for (std::size_t i = 0; i < best.merits.size(); ++i) {
    const double by = other.merits[i] - best.merits[i];
    if (std::abs(by) <= slack) continue;
    if (by > 0) best = std::move(other);
    break;
  }
  Territories& all = best.all;
  const auto broken = std::count_if(all.lines.begin(), all.lines.end(), [](const SightLine& line) { return line.broken; });
  if (broken > 0) all.broken_share = static_cast<double>(broken) / static_cast<double>(all.lines.size());
  return std::move(all);
}

double sight_factor(const Territories& territories) { return 1 - sight_break_relief * territories.broken_share; }

}  // namespace shoalwright
