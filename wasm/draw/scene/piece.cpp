// SPDX-License-Identifier: MIT
#include "draw/scene/piece.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace shoalwright {

Vec3 PieceFrame::at(float u, float v, float up) const {
  u *= flip;
  return {x + u * cos_turn - v * sin_turn, foot + up, z + u * sin_turn + v * cos_turn};
}

PieceFrame frame_of(const Scene& scene, const Piece& piece) {
  PieceFrame frame;
  frame.x = static_cast<float>(piece.x_cm.value_or(0));
  frame.z = static_cast<float>(piece.z_cm.value_or(0));
  frame.foot = static_cast<float>(piece_kind(piece.kind).floats
                                      ? scene.fill_cm - piece.height_cm
                                      : ground_cm(scene, piece.x_cm.value_or(0), piece.z_cm.value_or(0)) + piece.base_cm);
  frame.length = static_cast<float>(std::max(piece.length_cm, 0.5));
  frame.depth = static_cast<float>(std::max(piece.depth_cm, 0.5));
  frame.height = static_cast<float>(std::max(piece.height_cm, 0.3));
  const double turn = piece.turn_deg * std::numbers::pi / 180;
  frame.cos_turn = static_cast<float>(std::cos(turn));
  frame.sin_turn = static_cast<float>(std::sin(turn));
  frame.flip = piece.mirror ? -1.0f : 1.0f;
  return frame;
}

std::uint32_t piece_seed(const Piece& piece) {
  // Only what stays the same while a piece is moved, turned or mirrored.
  const double measures[3] = {piece.length_cm, piece.depth_cm, piece.height_cm};
  return seed_of(measures, piece.kind.c_str());
}

void add_leaf(Mesh& mesh, Vec root, float angle, float length_cm, float half_cm, ImU32 colour, bool smooth_rim) {
  const Vec along{std::cos(angle), std::sin(angle)}, across{-along.y, along.x};
  const auto at = [&](float far, float side) { return root + along * (length_cm * far) + across * (half_cm * side); };
  const Vec rim[6] = {root, at(0.34f, -1), at(0.74f, -0.62f), at(1, 0), at(0.74f, 0.62f), at(0.34f, 1)};
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  if (!smooth_rim) {
    for (const Vec p : rim) add_vertex(mesh, p, colour);
    for (std::uint32_t i = 1; i < 5; ++i) add_triangle(mesh, first, first + i, first + i + 1);
    return;
  }
  // The fading rim of a leaf leaves its root out: that end is covered by the stem.
  const Vec out[6] = {{}, across * -1.0f, unit(along * 0.5f - across), along, unit(along * 0.5f + across), across};
  const ImU32 clear = colour & ~IM_COL32_A_MASK;
  for (int i = 0; i < 6; ++i) add_vertex(mesh, rim[i], colour, out[i] * -0.45f);
  for (int i = 1; i < 6; ++i) add_vertex(mesh, rim[i], clear, out[i] * 0.6f);
  for (std::uint32_t i = 1; i < 5; ++i) {
    add_triangle(mesh, first, first + i, first + i + 1);
    add_triangle(mesh, first + i, first + i + 5, first + i + 6);
    add_triangle(mesh, first + i, first + i + 6, first + i + 1);
  }
  add_triangle(mesh, first, first + 6, first + 1);
  add_triangle(mesh, first, first + 5, first + 10);
}

}  // namespace shoalwright
