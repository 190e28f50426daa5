// SPDX-License-Identifier: MIT
#include "edit/arrange.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "tank/placed_piece.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

constexpr double least_cm = 0.5;

double on_grid(double value, double grid) { return std::round(value / grid) * grid; }

double tenths(double value) { return std::round(value * 10) / 10; }

double measure(double value_cm, Snap snap) {
  return std::max(least_cm, snap == Snap::grid ? on_grid(value_cm, snap_grid_cm) : tenths(value_cm));
}

/// The middle along one axis: on the grid, a side near a pane against it, all of it inside where it fits.
double along_axis(double at_cm, double half_cm, double inside_cm, Snap snap) {
  at_cm = snap == Snap::grid ? on_grid(at_cm, snap_grid_cm) : at_cm;
  if (2 * half_cm > inside_cm) return tenths(std::clamp(at_cm, 0.0, inside_cm));
  if (snap == Snap::grid && std::abs(at_cm - half_cm) < snap_reach_cm) at_cm = half_cm;
  if (snap == Snap::grid && std::abs(at_cm + half_cm - inside_cm) < snap_reach_cm) at_cm = inside_cm - half_cm;
  return tenths(std::clamp(at_cm, half_cm, inside_cm - half_cm));
}

Piece within(const Plan& plan, Piece piece, Snap snap) {
  const HalfReach reach = half_reach_of(piece);
  piece.x_cm = along_axis(*piece.x_cm, reach.x_cm, inside_length_cm(plan.tank), snap);
  piece.z_cm = along_axis(*piece.z_cm, reach.z_cm, inside_width_cm(plan.tank), snap);
  return piece;
}

/// Moves the middle along the piece's own axes.
void move_own(Piece& piece, double u_cm, double v_cm) {
  const double turn = piece.turn_deg * std::numbers::pi / 180, c = std::cos(turn), s = std::sin(turn);
  *piece.x_cm += u_cm * c - v_cm * s;
  *piece.z_cm += u_cm * s + v_cm * c;
}

}  // namespace

Piece shifted(const Plan& plan, Piece piece, const Shift& shift, Snap snap) {
  *piece.x_cm += shift.x_cm;
  *piece.z_cm += shift.z_cm;
  if (shift.up_cm != 0) {
    const double up = piece.base_cm + shift.up_cm;
    piece.base_cm = snap == Snap::grid ? on_grid(up, snap_grid_cm) : tenths(up);
    if (snap == Snap::grid && std::abs(piece.base_cm) < snap_reach_cm) piece.base_cm = 0;
    piece.base_cm = std::clamp(piece.base_cm, -piece.height_cm / 2, std::max(plan.tank.height_cm - 1, 0.0));
  }
  return within(plan, piece, snap);
}

Piece lengthened(const Plan& plan, Piece piece, double by_cm, int end, Snap snap) {
  const double before = piece.length_cm;
  piece.length_cm = measure(before + by_cm, snap);
  move_own(piece, end * (piece.length_cm - before) / 2, 0);
  return within(plan, piece, Snap::none);
}

Piece deepened(const Plan& plan, Piece piece, double by_cm, int end, Snap snap) {
  const double before = piece.depth_cm;
  piece.depth_cm = measure(before + by_cm, snap);
  move_own(piece, 0, end * (piece.depth_cm - before) / 2);
  return within(plan, piece, Snap::none);
}

Piece heightened(const Plan& plan, Piece piece, double by_cm, Snap snap) {
  piece.height_cm = std::min(measure(piece.height_cm + by_cm, snap), std::max(plan.tank.height_cm, least_cm));
  return piece;
}

Piece turned(Piece piece, double by_deg) {
  piece.turn_deg = std::fmod(std::round(piece.turn_deg + by_deg), 360);
  if (piece.turn_deg < 0) piece.turn_deg += 360;
  return piece;
}

Piece mirrored(Piece piece) {
  piece.mirror = !piece.mirror;
  return piece;
}

Piece again(const Plan& plan, Piece piece) {
  const double by_cm = std::max(2.0, std::min(piece.length_cm, piece.depth_cm) / 2);
  const Piece right = shifted(plan, piece, {by_cm, -by_cm / 2, 0}, Snap::grid);
  return right.x_cm == piece.x_cm ? shifted(plan, piece, {-by_cm, -by_cm / 2, 0}, Snap::grid) : right;
}

Piece usual_piece_at(const Plan& plan, const std::string& kind, double x_cm, double z_cm) {
  Piece piece = usual_piece(plan, kind);
  piece.x_cm = x_cm;
  piece.z_cm = z_cm;
  return within(plan, piece, Snap::grid);
}

}  // namespace shoalwright
