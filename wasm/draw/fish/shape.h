// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "draw/fish/animal.h"

namespace shoalwright {

/// Where a fin grows: on the back, along the belly, or on the side.
enum class FinAt { back, belly, side };

/// One fin. Its base runs along the body from `from` to `to` (x); `edge` are control points of its free edge, front to rear.
struct FinShape {
  FinAt at = FinAt::back;
  float from = 0, to = 0;
  std::vector<Vec> edge = {};
  bool pectoral = false;  ///< lies over the body, base from (from, base_y) to (to, base_y)
  float base_y = 0;
  bool grows = true;  ///< takes part in long, veil, sail and fan fins
};

/// Control points of a body in standard lengths: x from the snout (0) to the root of the tail (1), y up. It looks left.
struct FishShape {
  std::vector<Vec> top, bottom;  ///< open Catmull-Rom curves, x rising
  std::vector<FinShape> fins;
  std::vector<Vec> tail;  ///< control points of the free edge, from the upper corner to the lower
  float tail_root = 0.055f;
  float tail_bend = 0.12f;  ///< how far the outer rays bow outwards
  Vec eye;
  float eye_radius = 0.035f;
  std::vector<std::vector<Vec>> barbels = {};  ///< short strokes at the mouth
  std::vector<std::vector<Vec>> threads = {};  ///< long strokes in the colour of the fins
  float fin_accent = 0.4f;                     ///< how much of the accent the fins carry
  float fin_alpha = 0.7f;
  float gill_x = 0.24f;
  bool plates = false;    ///< armour in two rows
  bool bristles = false;  ///< on the snout
};

const FishShape& fish_shape(Form form);  ///< every form but shrimp, snail and frog

/// The shape of a form with its fins changed.
FishShape with_fins(Form form, Fins fins);

/// Colours of one drawing of an animal.
struct Coat {
  ImU32 back, flank, belly, rim_top, rim_bottom;
  ImU32 fin, fin_root, fin_edge;
  ImU32 mark, stripe, red, pale;
  ImU32 eye, pupil, line;
  bool flat = false;  ///< one tone: no shading, marks in the paper's colour
};
Coat coat_of(const AnimalLook& look, float fin_accent, float fin_alpha);
/// For silhouettes: the red channel says how much ink (255) or paper (0).
Coat silhouette_coat();

/// How finely a mesh is made: 0 for the smallest, 3 for large pictures.
struct Detail {
  int stations, fin_points, eye_corners;
  bool rays, fine_marks;
};
Detail detail_of(int level);

/// A body measured out: points on it by x and by v, 0 at the back to 1 at the belly.
struct Trunk {
  std::vector<Vec> top, bottom;
  Vec at(float x, float v) const;
  float depth(float x) const;
};
Trunk trunk_of(const FishShape& shape);

void add_marks(Mesh& mesh, const AnimalLook& look, const Trunk& trunk, const FishShape& shape, const Coat& coat,
               const Detail& detail);

Mesh fish_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh shrimp_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh snail_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh frog_mesh(const AnimalLook& look, const Coat& coat, int level);

/// Moves and sizes a mesh so that x from `from` to `to` becomes -0.5 to 0.5 and y = middle becomes 0.
void settle(Mesh& mesh, float from, float to, float middle);

}  // namespace shoalwright
