// SPDX-License-Identifier: MIT
#pragma once

#include "catalog/piece_kind.h"
#include "draw/scene/scene.h"

namespace shoalwright {

/// A point of the tank, cm: x to the right, h up from the inside bottom, z to the back.
struct Vec3 {
  float x = 0, h = 0, z = 0;
};

/// Where a piece stands: from its own axes (u along its length, v along its depth, both from its middle, up from its foot) to the
/// tank.
struct PieceFrame {
  float x = 0, z = 0, foot = 0;
  float length = 0, depth = 0, height = 0;
  float cos_turn = 1, sin_turn = 0, flip = 1;
  Vec3 at(float u, float v, float up) const;
};
PieceFrame frame_of(const Scene& scene, const Piece& piece);

/// From which side a mesh is made.
enum class Side { front, above };
inline Vec seen(Vec3 p, Side side) { return side == Side::front ? Vec{p.x, p.h} : Vec{p.x, p.z}; }

/// Colours and light of one making: `far` is how much of the water's colour lies before the piece, 0 to 1.
struct PieceLight {
  const Palette* colours = nullptr;
  ImU32 water = 0;
  float far = 0;
  ImU32 tone(ImU32 colour) const { return mix(colour, water, far); }
};

/// Where a solid piece stands the ground is darker.
void add_shadow(Mesh& mesh, const PieceFrame& frame, Side side, const PieceLight& light);
/// The limbs of a kind as wood.
void add_limbs(Mesh& mesh, const PieceFrame& frame, const PieceKind& kind, Side side, const PieceLight& light);
/// The prisms of a kind with flat faces, rough where the material breaks so.
void add_facets(Mesh& mesh, const PieceFrame& frame, const PieceKind& kind, std::uint32_t seed, Side side,
                const PieceLight& light);
/// A round shelter with one low door.
void add_dome(Mesh& mesh, const PieceFrame& frame, const PieceKind& kind, Side side, const PieceLight& light);
void add_box(Mesh& mesh, const PieceFrame& frame, Side side, const PieceLight& light);
void add_thicket(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light);
/// A crown of blades; `feathered` ones carry leaflets on both sides.
void add_rosette(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light, bool feathered);
void add_carpet(Mesh& mesh, const Scene& scene, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light);
/// Fallen leaves, flat on the ground.
void add_litter(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light);
void add_moss(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light);
/// Pads and, from the front, roots go into meshes of their own.
void add_floating(Mesh& pads, Mesh* roots, const PieceFrame& frame, float surface_cm, std::uint32_t seed, Side side,
                  const PieceLight& light);

/// A pointed leaf of six corners, with or without a fading rim.
void add_leaf(Mesh& mesh, Vec root, float angle, float length_cm, float half_cm, ImU32 colour, bool smooth_rim);

std::uint32_t piece_seed(const Piece& piece);

}  // namespace shoalwright
