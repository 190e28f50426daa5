// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "catalog/piece_kind.h"
#include "plan/plan.h"

namespace shoalwright {

/// A point of the tank in cm: x from the left pane, y above the inside bottom, z from the front pane.
struct TankPoint {
  double x_cm = 0, y_cm = 0, z_cm = 0;
};

/// A piece where it stands: from its own axes (u along its length, v along its depth, both in cm from its middle, up from its
/// foot) to the tank.
struct PlacedPiece {
  const PieceKind* kind = nullptr;  ///< never null once placed
  double x_cm = 0, z_cm = 0, foot_cm = 0;
  double length_cm = 0, depth_cm = 0, height_cm = 0;
  double cos_turn = 1, sin_turn = 0, flip = 1;  ///< `flip` -1: mirrored along its length

  TankPoint at(double u_cm, double v_cm, double up_cm) const {
    u_cm *= flip;
    return {x_cm + u_cm * cos_turn - v_cm * sin_turn, foot_cm + up_cm, z_cm + u_cm * sin_turn + v_cm * cos_turn};
  }
  bool operator==(const PlacedPiece&) const = default;
};

/// Half of what a turned piece reaches along the tank and across it, cm.
struct HalfReach {
  double x_cm = 0, z_cm = 0;
};
HalfReach half_reach_of(const Piece& piece);

/// A piece at a place that it has. It stands on the substrate under its middle, or hangs from the water line.
PlacedPiece placed(const Plan& plan, const Piece& piece);

/// The pieces of the plan in its order, each with a place. One without is put where nothing stands yet, looked for from the back
/// left, row by row; where there is no room, in the back left corner. Floating ones make room only for each other.
std::vector<Piece> with_places(const Plan& plan);
std::vector<PlacedPiece> placed_pieces(const Plan& plan);

/// A piece of a kind of catalog/pieces.json at its usual measures, so many times as long and deep and as tall; smaller where the
/// tank or its water would not hold it. Without a place, so that it is put where there is room.
Piece usual_piece(const Plan& plan, std::string_view kind, double wider = 1, double taller = 1);

/// The solids of a piece, L. Closed forms: prisms between their levels, limbs as frusta of cones (joints, which are small, count
/// twice).
double solids_l(const PlacedPiece& piece);

/// Water that they displace below the water line, L.
double displaced_l(const Plan& plan, const PlacedPiece& piece);

/// What the piece weighs, kg; 0 for what is not weighed (wood, plants, devices).
double piece_mass_kg(const PlacedPiece& piece);

}  // namespace shoalwright
