// SPDX-License-Identifier: MIT
// How pieces are moved and grown by hand: within the tank, on a grid, against the glass, onto the substrate.
#pragma once

#include "plan/plan.h"

namespace shoalwright {

/// How far something is moved, cm: to the right, to the back, upward.
struct Shift {
  double x_cm = 0, z_cm = 0, up_cm = 0;
};

/// What a moving hand is drawn to.
enum class Snap { none, grid };

/// Side of the grid, and how near a pane or the substrate draws a piece to it, cm.
inline constexpr double snap_grid_cm = 0.5, snap_reach_cm = 1.2;

/// The piece shifted from where it is (it must have a place). Its outline stays within the panes' extent where it fits; its base
/// stays within the height of the tank. With a grid its middle lies on halves of a centimetre, a side near a pane touches it, a
/// foot near the substrate stands on it.
Piece shifted(const Plan& plan, Piece piece, const Shift& shift, Snap snap);

/// One end of a piece pulled out along its length (`ends` -1: its left end, 1: its right) or its depth, cm; the other end stays.
/// No measure gets under 0.5 cm.
Piece lengthened(const Plan& plan, Piece piece, double by_cm, int end, Snap snap);
Piece deepened(const Plan& plan, Piece piece, double by_cm, int end, Snap snap);
Piece heightened(const Plan& plan, Piece piece, double by_cm, Snap snap);

/// Turned by so many degrees counter-clockwise seen from above; held within 0 and 360.
Piece turned(Piece piece, double by_deg);

/// Turned round along its length, or back.
Piece mirrored(Piece piece);

/// The same piece again, a little to the right and in front.
Piece again(const Plan& plan, Piece piece);

/// A piece of a kind as usual_piece() gives it (tank/placed_piece.h), its middle at a place.
Piece usual_piece_at(const Plan& plan, const std::string& kind, double x_cm, double z_cm);

}  // namespace shoalwright
