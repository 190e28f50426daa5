// SPDX-License-Identifier: MIT
#include "rules/lane_move.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

#include "notebook/say.h"
#include "rules/edits.h"
#include "stocking/layers.h"
#include "tank/placed_piece.h"

namespace shoalwright {

namespace {

constexpr int farthest_cm = 40;         // that a piece is moved
constexpr std::size_t most_pieces = 8;  // that are looked at, so that a crowded scape is answered in time

struct Way4 {
  int x, z;
};
constexpr Way4 ways[] = {{0, 1}, {0, -1}, {-1, 0}, {1, 0}};  // back, front, left, right

bool is_pinned(const Plan& plan, std::size_t piece) {
  const std::string pointer = "/pieces/" + std::to_string(piece);
  return is_fixed(plan, pointer + "/x_cm") || is_fixed(plan, pointer + "/z_cm");
}

Piece with_place(const Facts& facts, std::size_t piece) {
  Piece out = facts.plan.pieces[piece];
  const PlacedPiece& placed = facts.bodies.scape().pieces[piece];
  out.x_cm = placed.x_cm;
  out.z_cm = placed.z_cm;
  return out;
}

/// Whether the middle of a piece stays within the outline's extent.
bool stays_inside(const Tank& tank, const Piece& piece) {
  return *piece.x_cm >= 0 && *piece.x_cm <= inside_length_cm(tank) && *piece.z_cm >= 0 && *piece.z_cm <= inside_width_cm(tank);
}

/// Lanes of one body in one level of the plan with one piece elsewhere; the grid is kept from one try to the next.
class Tries {
 public:
  Tries(const Facts& facts, const BodySize& body, std::size_t level) : body_(body), level_(level), plan_(facts.plan) {
    for (std::size_t i = 0; i < plan_.pieces.size(); ++i) plan_.pieces[i] = with_place(facts, i);
  }

  double without(std::size_t piece) {
    Piece out = plan_.pieces[piece];
    // Far outside: the others keep their numbers.
    out.x_cm = -1e4;
    return lane_with(piece, out);
  }
  /// Empty where the piece would leave the tank.
  std::optional<double> moved(std::size_t piece, const Way4& way, int by_cm) {
    Piece out = plan_.pieces[piece];
    *out.x_cm += way.x * by_cm;
    *out.z_cm += way.z * by_cm;
    if (!stays_inside(plan_.tank, out)) return std::nullopt;
    return lane_with(piece, out);
  }

 private:
  double lane_with(std::size_t piece, const Piece& other) {
    const Piece own = std::exchange(plan_.pieces[piece], other);
    update(bodies_, plan_);
    plan_.pieces[piece] = own;
    return bodies_.lane(body_, level_).cm;
  }

  const BodySize body_;
  const std::size_t level_;
  Plan plan_;
  BodyRooms bodies_;
};

/// The smallest of a rising row of moves that is enough; moves farther on are taken to be no worse until the first that is
/// enough.
std::optional<LaneMove> least_of(Tries& tries, std::size_t piece, const Way4& way, int most_cm, double wanted_cm) {
  const auto lane = [&](int by_cm) { return tries.moved(piece, way, by_cm).value_or(0); };
  int enough = 0, short_of = 0;
  double lane_cm = 0;
  for (const int by_cm : {2, 5, 9, 14, 20, 28, farthest_cm}) {
    const int at_cm = std::min(by_cm, most_cm);
    if (at_cm <= short_of) break;
    lane_cm = lane(at_cm);
    if (lane_cm >= wanted_cm) {
      enough = at_cm;
      break;
    }
    short_of = at_cm;
  }
  if (enough == 0) return std::nullopt;
  while (enough - short_of > 1) {
    const int between = short_of + (enough - short_of) / 2;
    const double there = lane(between);
    if (there >= wanted_cm) {
      enough = between;
      lane_cm = there;
    } else {
      short_of = between;
    }
  }
  return LaneMove{piece, static_cast<double>(way.x * enough), static_cast<double>(way.z * enough), lane_cm};
}

}  // namespace

std::optional<LaneMove> least_lane_move(const Facts& facts, const BodySize& body, std::size_t level,
                                        const std::vector<double>& wanted_cm) {
  const WaterLevel& here = facts.bodies.levels()[level];
  const std::vector<PlacedPiece>& pieces = facts.bodies.scape().pieces;
  Tries tries(facts, body, level);
  // Those that end the lane first; one that helps bounds how far the others are tried.
  std::vector<std::size_t> order = pieces_at_ends(facts, facts.bodies.lane(body, level), body);
  for (std::size_t i = 0; i < pieces.size(); ++i)
    if (std::find(order.begin(), order.end(), i) == order.end()) order.push_back(i);
  struct Candidate {
    std::size_t piece;
    double without_cm;  // the lane were it not there
  };
  std::vector<Candidate> candidates;
  for (const std::size_t i : order) {
    const bool reaches_level =
        pieces[i].foot_cm < here.high_cm + body.depth_cm && pieces[i].foot_cm + pieces[i].height_cm > here.low_cm - body.depth_cm;
    if (!reaches_level || is_pinned(facts.plan, i)) continue;
    candidates.push_back({i, tries.without(i)});
    if (candidates.size() == most_pieces) break;
  }
  const auto size = [](const LaneMove& move) { return std::abs(move.dx_cm) + std::abs(move.dz_cm); };
  for (const double wanted : wanted_cm) {
    std::optional<LaneMove> best;
    for (const Candidate& candidate : candidates) {
      if (!(candidate.without_cm >= wanted)) continue;
      for (const Way4& way : ways) {
        const int most_cm = best ? static_cast<int>(size(*best)) - 1 : farthest_cm;
        if (auto move = least_of(tries, candidate.piece, way, most_cm, wanted)) best = move;
      }
    }
    if (best) return best;
  }
  return std::nullopt;
}

std::vector<std::size_t> pieces_at_ends(const Facts& facts, const Lane& lane, const BodySize& body) {
  std::vector<std::size_t> found;
  if (lane.circuit || lane.path.size() != 2) return found;
  const Scape& scape = facts.bodies.scape();
  const TankGrid& grid = scape.grid;
  if (grid.size.cells() == 0) return found;
  const auto cell_at = [](double at_cm, double face_cm, double cell_cm, int cells) {
    return std::clamp(static_cast<int>(std::floor((at_cm - face_cm) / cell_cm)), 0, cells - 1);
  };
  const int j = cell_at(lane.height_cm, grid.floor_cm, grid.cell_cm, grid.size.y);
  const int around = 1 + static_cast<int>(std::ceil(body.depth_cm / 2 / grid.cell_cm));
  for (const bool second : {false, true}) {
    const Point& end = lane.path[second ? 1 : 0];
    const Point& other = lane.path[second ? 0 : 1];
    const double length = std::max(std::hypot(end.x_cm - other.x_cm, end.z_cm - other.z_cm), 1e-6);
    const double ahead_cm = grid.cell_cm * 0.5;
    const int i = cell_at(end.x_cm + (end.x_cm - other.x_cm) / length * ahead_cm, grid.left_cm, grid.cell_cm, grid.size.x);
    const int k = cell_at(end.z_cm + (end.z_cm - other.z_cm) / length * ahead_cm, grid.front_cm, grid.cell_cm, grid.size.z);
    double nearest = 1e9;
    std::size_t number = 0;
    for (int dj = -around; dj <= around; ++dj)
      for (int dk = -around; dk <= around; ++dk)
        for (int di = -around; di <= around; ++di) {
          const int x = i + di, z = k + dk, y = j + dj;
          if (x < 0 || z < 0 || y < 0 || x >= grid.size.x || z >= grid.size.z || y >= grid.size.y) continue;
          const std::size_t cell = grid.size.at(x, z, y);
          const std::uint16_t growth = scape.growth[cell];
          const bool stops = growth && body.depth_cm > static_cast<double>(scape.pieces[growth - 1u].kind->gap_cm);
          const std::size_t here = scape.solid[cell] ? scape.solid[cell] : stops ? growth : 0u;
          const double far = di * di + dk * dk + dj * dj;
          if (here == 0 || far >= nearest) continue;
          nearest = far;
          number = here;
        }
    if (number > 0) found.push_back(number - 1);
  }
  std::sort(found.begin(), found.end());
  found.erase(std::unique(found.begin(), found.end()), found.end());
  return found;
}

std::string piece_words(const Plan& plan, std::size_t piece) {
  const std::string& kind = plan.pieces[piece].kind;
  const std::string name = called(kind);
  std::vector<std::size_t> alike;
  const std::vector<Piece> pieces = with_places(plan);
  for (std::size_t i = 0; i < pieces.size(); ++i)
    if (pieces[i].kind == kind) alike.push_back(i);
  if (alike.size() < 2) return name;
  const Piece &one = pieces[alike[0]], &other = pieces[alike[1]];
  if (alike.size() == 2 && std::abs(*one.x_cm - *other.x_cm) < std::abs(*one.z_cm - *other.z_cm)) {
    const bool first_in_front = *one.z_cm < *other.z_cm;
    return ((alike[0] == piece) == first_in_front ? "front " : "rear ") + name;
  }
  std::sort(alike.begin(), alike.end(), [&](std::size_t a, std::size_t b) {
    return *pieces[a].x_cm != *pieces[b].x_cm ? *pieces[a].x_cm < *pieces[b].x_cm : a < b;
  });
  const auto place = static_cast<std::size_t>(std::find(alike.begin(), alike.end(), piece) - alike.begin());
  if (place == 0) return "left " + name;
  if (place + 1 == alike.size()) return "right " + name;
  static constexpr std::string_view ordinals[] = {"second", "third", "fourth", "fifth", "sixth", "seventh"};
  if (alike.size() == 3) return "middle " + name;
  return place <= std::size(ordinals) ? std::string(ordinals[place - 1]) + " " + name + " from the left" : name;
}

std::string move_words(const LaneMove& move) {
  const char* where = move.dz_cm > 0 ? "back" : move.dz_cm < 0 ? "forward" : move.dx_cm < 0 ? "to the left" : "to the right";
  return amount(std::abs(move.dx_cm) + std::abs(move.dz_cm), 0, "cm") + " " + where;
}

std::vector<PatchStep> move_edits(const Facts& facts, const LaneMove& move) {
  const std::string pointer = "/pieces/" + std::to_string(move.piece);
  const Piece piece = with_place(facts, move.piece);
  return {{"replace", pointer + "/x_cm", json_number(*piece.x_cm + move.dx_cm)},
          {"replace", pointer + "/z_cm", json_number(*piece.z_cm + move.dz_cm)}};
}

}  // namespace shoalwright
