// SPDX-License-Identifier: MIT
#include "draw/scene/piece.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace shoalwright {

PieceForm form_of(const std::string& kind) {
  struct Word {
    const char* text;
    PieceForm form;
  };
  // Longer names of the catalogue ("branch-low", "stone-slab") keep the word of their form in them.
  constexpr Word words[] = {{"floating", PieceForm::floating_cover},
                            {"thicket", PieceForm::stem_thicket},
                            {"stem", PieceForm::stem_thicket},
                            {"rosette", PieceForm::rosette},
                            {"bulb-plant", PieceForm::rosette},
                            {"lily", PieceForm::rosette},
                            {"fern", PieceForm::fern},
                            {"carpet", PieceForm::carpet},
                            {"moss", PieceForm::moss},
                            {"mop", PieceForm::moss},
                            {"cave", PieceForm::cave},
                            {"half-shell", PieceForm::cave},
                            {"pot", PieceForm::cave},
                            {"branch", PieceForm::branch},
                            {"root", PieceForm::branch},
                            {"wood", PieceForm::branch},
                            {"stones", PieceForm::stones},
                            {"pebbles", PieceForm::stones},
                            {"stone", PieceForm::stone},
                            {"slate", PieceForm::stone},
                            {"rock", PieceForm::stone},
                            {"wall", PieceForm::block},
                            {"block", PieceForm::block}};
  for (const Word& word : words) {
    if (kind.find(word.text) != std::string::npos) return word.form;
  }
  return PieceForm::box;
}

Vec3 PieceFrame::at(float u, float v, float up) const {
  u *= flip;
  return {x + u * cos_turn - v * sin_turn, foot + up, z + u * sin_turn + v * cos_turn};
}

PieceFrame frame_of(const Scene& scene, const Piece& piece) {
  PieceFrame frame;
  frame.x = static_cast<float>(piece.x_cm.value_or(0));
  frame.z = static_cast<float>(piece.z_cm.value_or(0));
  frame.foot = static_cast<float>(ground_cm(scene, piece.z_cm.value_or(0)) + piece.base_cm);
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
  const Vec rim[4] = {root, root + along * (length_cm * 0.48f) - across * half_cm, root + along * length_cm,
                      root + along * (length_cm * 0.48f) + across * half_cm};
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  // The fading rim of a leaf leaves its root out: that end is covered by the stem.
  const ImU32 clear = colour & ~IM_COL32_A_MASK;
  if (!smooth_rim) {
    for (const Vec p : rim) add_vertex(mesh, p, colour);
    add_triangle(mesh, first, first + 1, first + 2);
    add_triangle(mesh, first, first + 2, first + 3);
    return;
  }
  add_vertex(mesh, rim[0], colour);
  add_vertex(mesh, rim[1], colour, across * 0.4f);
  add_vertex(mesh, rim[2], colour, along * -0.6f);
  add_vertex(mesh, rim[3], colour, across * -0.4f);
  add_vertex(mesh, rim[1], clear, across * -0.6f);
  add_vertex(mesh, rim[2], clear, along * 0.9f);
  add_vertex(mesh, rim[3], clear, across * 0.6f);
  constexpr std::uint32_t corners[] = {0, 1, 2, 0, 2, 3, 0, 4, 1, 1, 4, 5, 1, 5, 2, 2, 5, 6, 2, 6, 3, 3, 6, 0};
  for (size_t i = 0; i < std::size(corners); i += 3)
    add_triangle(mesh, first + corners[i], first + corners[i + 1], first + corners[i + 2]);
}

}  // namespace shoalwright
