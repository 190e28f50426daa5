// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"
#include "tank/terrain.h"
#include "tank/volume.h"

namespace shoalwright {

/// A piece that stands on the floor, its middle at x, z.
inline Piece piece_at(const char* kind, double x_cm, double z_cm, double length_cm, double depth_cm, double height_cm) {
  return {.kind = kind, .x_cm = x_cm, .z_cm = z_cm, .length_cm = length_cm, .depth_cm = depth_cm, .height_cm = height_cm};
}

/// The same piece in a tank seen in a mirror that stands across it.
inline Piece mirrored(Piece piece, double length_cm) {
  piece.x_cm = length_cm - *piece.x_cm;
  piece.turn_deg = -piece.turn_deg;
  piece.mirror = !piece.mirror;
  return piece;
}

/// All pieces of a plan and its terrain line mirrored; each piece must have its place.
inline Plan mirrored(Plan plan) {
  const double length_cm = inside_length_cm(plan.tank);
  for (Piece& piece : plan.pieces) piece = mirrored(piece, length_cm);
  plan.substrate.line_cm = mirrored(plan.substrate.line_cm, length_cm);
  return plan;
}

}  // namespace shoalwright
