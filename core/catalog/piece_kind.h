// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace shoalwright {

/// Where a kind of piece lies on the shelf.
enum class PieceShelf : std::uint8_t { wood, stone, caves, plants, devices };
/// How it is drawn; `facets`: its own solids with flat faces, `outlined`: a box, for kinds that are not known.
enum class PieceDrawing : std::uint8_t {
  branch,
  facets,
  dome,
  stem_thicket,
  rosette,
  fern,
  carpet,
  moss,
  floating_cover,
  litter,
  outlined
};
enum class Material : std::uint8_t { wood, stone, slate, limestone, clay, leaf, litter, device };

/// A spot of an outline seen from above, shares of length and depth from the middle: -0.5 to 0.5.
struct Spot {
  float u = 0, v = 0;
};

/// A solid between two levels with the same outline at both, the upper one `top` times as wide and moved by `lean`. `u`, `v`:
/// middle of its foot; `length`, `depth`: of its foot; `from`, `to`: shares of the height. All shares of the piece's measures.
struct Prism {
  std::span<const Spot> outline;
  float u = 0, v = 0, length = 1, depth = 1, from = 0, to = 1, top = 1, lean_u = 0, lean_v = 0;
};

struct LimbPoint {
  float u = 0, v = 0, up = 0;  ///< shares of length, depth (from the middle) and height
};
/// A round bar along straight stretches. Its radius runs evenly over the points from first to last, in shares of the root of
/// length x height.
struct Limb {
  std::span<const LimbPoint> points;
  float radius_from = 0, radius_to = 0;
};

/// What pieces of one kind are like, whatever their measures. Shares and judgements are common practice, no source; so are
/// densities of stone (2.6 to 2.75 kg/L: handbook values for limestone, quartz-rich rock and slate, from memory).
struct PieceKind {
  std::string_view id, name;
  PieceShelf shelf = PieceShelf::stone;
  PieceDrawing drawing = PieceDrawing::outlined;
  Material material = Material::stone;
  float length_cm = 10, depth_cm = 10, height_cm = 10;  ///< of a usual one
  float gap_cm = 0;        ///< bodies up to this depth pass through; 0: solid, what is open in it is drawn as open
  float filled = 1;        ///< share of its solids that is lost as room to bodies that do not live in it
  float displaces = 1;     ///< share of its solids that displaces water
  float density_kg_l = 0;  ///< of what displaces; 0: not weighed
  float shelter = 0;       ///< cover that its outline seen from above gives, 0 to 1
  float shade = 0;         ///< light that it takes from what lies below, 0 to 1
  int hides = 0;           ///< hiding places, each for one animal or a pair
  bool lime = false;       ///< raises GH and KH
  bool leaf = false;       ///< grows, and grows over
  bool floats = false;     ///< hangs from the water line, whatever its base
  std::span<const Prism> prisms;
  std::span<const Limb> limbs;

  bool solid() const { return !(gap_cm > 0); }
};

/// All kinds of catalog/pieces.json, in its order.
std::span<const PieceKind> piece_kinds();

/// The kind with this id; for an id that is not known a plain solid box.
const PieceKind& piece_kind(std::string_view id);

/// What a piece of a kind is called in a sentence: "low branch" for "Branch, low"; an id that is not known with its hyphens as
/// spaces.
std::string called(std::string_view id);

}  // namespace shoalwright
