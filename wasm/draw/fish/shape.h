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

/// A row of small separate blades along the back or, as scutes, the flank.
struct Row {
  float from = 0, to = 0, height = 0;
  int count = 0;
};

/// Control points of a body in standard lengths: x from the snout (0) to the root of the tail (1), y up. It looks left.
struct FishShape {
  std::vector<Vec> top, bottom;  ///< open Catmull-Rom curves, x rising
  std::vector<FinShape> fins;
  std::vector<Vec> tail;    ///< control points of the free edge, from the upper corner to the lower
  float tail_bend = 0.12f;  ///< how far the outer rays bow outwards
  Vec eye;
  float eye_radius = 0.035f;
  std::vector<std::vector<Vec>> barbels = {};  ///< strokes at the mouth
  std::vector<std::vector<Vec>> threads = {};  ///< long strokes in the colour of the fins
  std::vector<std::vector<Vec>> beaks = {};    ///< jaws and trunks: strokes in the colour of the body
  float beak_width = 0.03f;
  Row finlets = {};         ///< blades along the back
  Row thorns = {};          ///< hooks along the middle of the flank
  float fin_accent = 0.4f;  ///< how much of the accent the fins carry
  float fin_alpha = 0.7f;
  float gill_x = 0.24f;
  int bands = 5;              ///< how many `bands` such a body wears; 3 are wedges from the back
  bool plates = false;        ///< armour in two rows
  bool bristles = false;      ///< on the snout
  bool scales = true;         ///< shown in large pictures
  bool dark_fins = false;     ///< fins that are as dark as the marks when the accent is
  bool accent_marks = false;  ///< with four colours the marks are drawn in the accent, whatever it is
};

const FishShape& fish_shape(Form form);  ///< every form that build_of() calls a fish

/// The shape of a form with its fins changed.
FishShape with_fins(Form form, Fins fins);

/// Colours of one drawing of an animal.
struct Coat {
  ImU32 back, flank, belly, rim_top, rim_bottom;
  ImU32 fin, fin_root, fin_edge;
  ImU32 dorsal, tail, tail_edge, tip;  ///< first back fin, tail fin and its rear edge, tips of the unpaired fins
  ImU32 mark, bright, red, pale;       ///< paints of the marks
  ImU32 eye, pupil, line;
  bool flat = false;  ///< one tone: no shading, marks in the paper's colour
};
Coat coat_of(const AnimalLook& look);
/// For silhouettes: the red channel says how much ink (255) or paper (0).
Coat silhouette_coat();

bool wears(const AnimalLook& look, Mark mark);
/// Too dark to colour fins: the accent of such a card is meant for its marks.
bool is_dark(ImU32 colour);

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

/// A place on the body: x along it, v from back (0) to belly (1).
struct Spot {
  float x, v;
};

/// Paints on the skin of one fish.
struct Painter {
  Mesh& mesh;
  const Trunk& trunk;
  const FishShape& shape;
  const Coat& coat;
  const Detail& detail;

  /// Between an upper and a lower line on the skin, each in a colour.
  void patch(std::span<const Spot> upper, std::span<const Spot> lower, ImU32 above, ImU32 below, int points) const;
  /// A bar across the body: its left and right end at the back and at the belly.
  void bar(float back0, float back1, float belly0, float belly1, float v0, float v1, ImU32 colour) const;
  /// Columns across the whole body with a colour each, which run into one another.
  void columns(std::span<const float> x, std::span<const ImU32> colours) const;
  void dot(float x, float v, float radius, ImU32 colour) const;
  void dot_at(Vec at, float radius, ImU32 colour) const;
  void lozenge(Vec at, float radius, ImU32 colour) const;  ///< the cheapest dot
  void line(std::span<const Spot> spots, float from, float to, ImU32 colour) const;
  /// A blotch that fits into the body there; sizes in shares of its depth and in body lengths.
  void blotch(float x, float v, float half_long, float half_high, ImU32 colour) const;
};

/// Patches of colour, which lie under the dark marks.
void add_colour_marks(const Painter& paint, const AnimalLook& look);
/// Stripes and bars, dots and nets.
void add_stripe_marks(const Painter& paint, const AnimalLook& look);
void add_spot_marks(const Painter& paint, const AnimalLook& look);
void add_fin_marks(const Painter& paint, const AnimalLook& look);

/// What single forms have beside body and fins.
void add_finlets(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat);
void add_thorns(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat);
void add_bones(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat, const Detail& detail);
void add_eye(Mesh& mesh, const FishShape& shape, const Coat& coat, const Detail& detail);
void add_plates(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat);
void add_bristles(Mesh& mesh, const Trunk& trunk, const Coat& coat);

/// A body along a bent spine: half widths go with the points, from its first to its last.
void add_limb(Mesh& mesh, std::span<const Vec> spine, std::span<const float> half, int count, ImU32 upper, ImU32 middle,
              ImU32 lower);

Mesh fish_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh shrimp_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh crayfish_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh crab_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh snail_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh frog_mesh(const AnimalLook& look, const Coat& coat, int level);
Mesh ray_mesh(const AnimalLook& look, const Coat& coat, int level);

/// Moves and sizes a mesh so that x from `from` to `to` becomes -0.5 to 0.5 and y = middle becomes 0.
void settle(Mesh& mesh, float from, float to, float middle);

}  // namespace shoalwright
