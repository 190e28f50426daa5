// SPDX-License-Identifier: MIT
#include "tank/placed_piece.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "tank/outline.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// The floor in squares of a centimetre: where pieces may still be put.
class Ground {
 public:
  explicit Ground(const Tank& tank) : x_(cells(inside_length_cm(tank))), z_(cells(inside_width_cm(tank))) {
    free_.assign(static_cast<std::size_t>(x_ * z_), 0);
    const std::vector<Point> outline = inside_outline(tank);
    std::vector<double> cuts;
    for (int k = 0; k < z_; ++k) {
      crossings(outline, k + 0.5, cuts);
      for (std::size_t pair = 0; pair + 1 < cuts.size(); pair += 2)
        for (int i = 0; i < x_; ++i)
          if (i + 0.5 >= cuts[pair] && i + 0.5 < cuts[pair + 1]) free_[at(i, k)] = 1;
    }
  }

  void take(const Piece& piece) {
    const HalfReach reach = half_reach_of(piece);
    const auto from = [](double middle, double half, int most) {
      return static_cast<int>(std::clamp(std::floor(middle - half), 0.0, static_cast<double>(most)));
    };
    const auto to = [](double middle, double half, int most) {
      return static_cast<int>(std::clamp(std::ceil(middle + half), 0.0, static_cast<double>(most)));
    };
    for (int k = from(*piece.z_cm, reach.z_cm, z_); k < to(*piece.z_cm, reach.z_cm, z_); ++k)
      for (int i = from(*piece.x_cm, reach.x_cm, x_); i < to(*piece.x_cm, reach.x_cm, x_); ++i) free_[at(i, k)] = 0;
  }

  /// Gives the piece a place and takes it.
  void settle(Piece& piece) {
    const HalfReach reach = half_reach_of(piece);
    const int wide = cells(2 * reach.x_cm), deep = cells(2 * reach.z_cm);
    piece.x_cm = std::min(reach.x_cm, x_ / 2.0);
    piece.z_cm = std::max(z_ - reach.z_cm, z_ / 2.0);
    if (wide >= least_wide_ && deep >= least_deep_) return;  // a smaller one found no room any more
    for (int k = z_ - deep; k >= 0; --k)
      for (int i = 0; i + wide <= x_;) {
        const int taken = last_taken(i, k, wide, deep);
        if (taken < 0) {
          piece.x_cm = i + wide / 2.0;
          piece.z_cm = k + deep / 2.0;
          take(piece);
          return;
        }
        i = taken + 1;
      }
    least_wide_ = wide;
    least_deep_ = deep;
  }

 private:
  int x_, z_, least_wide_ = 1 << 20, least_deep_ = 1 << 20;
  std::vector<char> free_;

  static int cells(double length_cm) { return std::max(1, static_cast<int>(std::ceil(length_cm - 1e-9))); }
  std::size_t at(int i, int k) const { return static_cast<std::size_t>(k * x_ + i); }

  /// The rightmost column of a rectangle in which a square is taken; -1: none.
  int last_taken(int i, int k, int wide, int deep) const {
    for (int column = i + wide - 1; column >= i; --column)
      for (int row = k; row < k + deep; ++row)
        if (!free_[at(column, row)]) return column;
    return -1;
  }
};

/// Area of an outline of unit length and depth.
double outline_area(std::span<const Spot> outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Spot &p = outline[i], &q = outline[(i + 1) % outline.size()];
    twice += static_cast<double>(p.u) * q.v - static_cast<double>(q.u) * p.v;
  }
  return std::abs(twice) / 2;
}

/// Part of a prism between its foot and a height above the foot of the piece, cm3.
double prism_cm3(const PlacedPiece& piece, const Prism& prism, double up_to_cm) {
  const double from = prism.from * piece.height_cm, whole = (prism.to - prism.from) * piece.height_cm;
  const double tall = std::clamp(up_to_cm - from, 0.0, whole);
  if (!(tall > 0)) return 0;
  const double top = 1 + (static_cast<double>(prism.top) - 1) * tall / whole;
  const double foot_cm2 = outline_area(prism.outline) * prism.length * piece.length_cm * prism.depth * piece.depth_cm;
  return foot_cm2 * tall * (1 + top + top * top) / 3;
}

double limb_cm3(const PlacedPiece& piece, const Limb& limb, double up_to_cm) {
  double sum = 0;
  const double mean = std::sqrt(piece.length_cm * piece.height_cm), last = static_cast<double>(limb.points.size()) - 1;
  for (std::size_t i = 0; i + 1 < limb.points.size(); ++i) {
    const LimbPoint &p = limb.points[i], &q = limb.points[i + 1];
    const auto radius = [&](double share) { return (limb.radius_from + (limb.radius_to - limb.radius_from) * share) * mean; };
    const double r = radius(static_cast<double>(i) / last), s = radius(static_cast<double>(i + 1) / last);
    const double low = std::min(p.up, q.up) * piece.height_cm, high = std::max(p.up, q.up) * piece.height_cm;
    const double wet = high > low ? std::clamp((up_to_cm - low) / (high - low), 0.0, 1.0) : (up_to_cm > low ? 1.0 : 0.0);
    const double length = std::hypot((q.u - p.u) * piece.length_cm, (q.v - p.v) * piece.depth_cm, high - low);
    sum += wet * length * std::numbers::pi * (r * r + r * s + s * s) / 3;
  }
  return sum;
}

double solids_cm3(const PlacedPiece& piece, double up_to_cm) {
  double sum = 0;
  for (const Prism& prism : piece.kind->prisms) sum += prism_cm3(piece, prism, up_to_cm);
  for (const Limb& limb : piece.kind->limbs) sum += limb_cm3(piece, limb, up_to_cm);
  return sum;
}

}  // namespace

HalfReach half_reach_of(const Piece& piece) {
  const double turn = piece.turn_deg * std::numbers::pi / 180, c = std::abs(std::cos(turn)), s = std::abs(std::sin(turn));
  return {(c * piece.length_cm + s * piece.depth_cm) / 2, (s * piece.length_cm + c * piece.depth_cm) / 2};
}

PlacedPiece placed(const Plan& plan, const Piece& piece) {
  PlacedPiece out;
  out.kind = &piece_kind(piece.kind);
  out.x_cm = piece.x_cm.value_or(0);
  out.z_cm = piece.z_cm.value_or(0);
  out.length_cm = piece.length_cm;
  out.depth_cm = piece.depth_cm;
  out.height_cm = piece.height_cm;
  out.foot_cm = out.kind->floats ? water_line_cm(plan.tank) - piece.height_cm
                                 : substrate_height_cm(plan, out.x_cm, out.z_cm) + piece.base_cm;
  const double turn = piece.turn_deg * std::numbers::pi / 180;
  out.cos_turn = std::cos(turn);
  out.sin_turn = std::sin(turn);
  out.flip = piece.mirror ? -1 : 1;
  return out;
}

std::vector<Piece> with_places(const Plan& plan) {
  std::vector<Piece> pieces = plan.pieces;
  const auto has_place = [](const Piece& piece) { return piece.x_cm && piece.z_cm; };
  if (std::all_of(pieces.begin(), pieces.end(), has_place)) return pieces;
  for (const bool floating : {false, true}) {
    Ground ground(plan.tank);
    for (const Piece& piece : pieces)
      if (has_place(piece) && piece_kind(piece.kind).floats == floating) ground.take(piece);
    for (Piece& piece : pieces)
      if (!has_place(piece) && piece_kind(piece.kind).floats == floating) ground.settle(piece);
  }
  return pieces;
}

std::vector<PlacedPiece> placed_pieces(const Plan& plan) {
  std::vector<PlacedPiece> out;
  for (const Piece& piece : with_places(plan)) out.push_back(placed(plan, piece));
  return out;
}

Piece usual_piece(const Plan& plan, std::string_view kind, double wider, double taller) {
  // It leaves water beside it and above it.
  constexpr double most_share = 0.8;
  const PieceKind& usual = piece_kind(kind);
  const double length_cm = usual.length_cm * wider, depth_cm = usual.depth_cm * wider, height_cm = usual.height_cm * taller;
  const double smaller =
      std::min({1.0, most_share * inside_length_cm(plan.tank) / length_cm, most_share * inside_width_cm(plan.tank) / depth_cm});
  const double water_cm = water_line_cm(plan.tank) - mean_substrate_cm(plan);
  const auto measure = [](double cm) { return std::max(std::round(cm * 2) / 2, 1.0); };
  Piece piece;
  piece.kind = kind;
  piece.length_cm = measure(length_cm * smaller);
  piece.depth_cm = measure(depth_cm * smaller);
  piece.height_cm = measure(std::min(height_cm * smaller, most_share * water_cm));
  return piece;
}

double displaced_l(const Plan& plan, const PlacedPiece& piece) {
  return piece.kind->displaces * solids_cm3(piece, water_line_cm(plan.tank) - piece.foot_cm) / 1000;
}

double piece_mass_kg(const PlacedPiece& piece) { return piece.kind->density_kg_l * piece.kind->displaces * solids_l(piece); }

double solids_l(const PlacedPiece& piece) { return solids_cm3(piece, piece.height_cm) / 1000; }

}  // namespace shoalwright
