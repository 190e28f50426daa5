// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "catalog/piece_kind.h"
#include "draw/mesh.h"
#include "plan/plan.h"

namespace shoalwright {

enum class TimeOfDay { day, dusk, night };

/// All that the drawing of the tank depends on, by value. `outline_cm` is the inside seen from above (x left to right, z front to
/// back, in order, at least three points); gear is drawn because it is said to be there.
struct Scene {
  Theme theme = Theme::light;
  std::vector<Point> outline_cm;
  double height_cm = 0, fill_cm = 0, glass_mm = 8;
  double front_cm = 0, back_cm = 0;     ///< substrate at the front and at the back pane
  std::vector<LinePoint> line_cm = {};  ///< what hills and valleys rise over that
  bool contours = true;                 ///< whether what draws their contours from above is here
  SubstrateKind substrate = SubstrateKind::fine_sand;
  std::vector<Piece> pieces;  ///< each with its place; one without a place is not drawn
  bool lid = true, lamp = true, heater = true, filter = true;
  double stream = 0.5;  ///< 0 to 1, how far the outlet's stream reaches
  bool operator==(const Scene&) const = default;
};

/// Where a piece comes in the drawing.
enum class PieceLayer { standing, over_sand, floating };

/// A piece as it is drawn.
struct PieceMeshes {
  Piece piece;
  PieceLayer layer = PieceLayer::standing;
  Mesh front, above;
  Mesh roots;  ///< hanging from the surface, from the front only
};

/// Tessellated once for a Scene, emitted in each frame. Owned by the caller.
struct SceneCache {
  Scene built_for;
  bool built = false;
  float length_cm = 0, width_cm = 0;
  std::vector<Vec> outline;
  Mesh front_far;    ///< water, rear bank and the gear behind the pieces
  Mesh front_near;   ///< front sand with its grain
  Mesh front_pads;   ///< outlet and stream
  Mesh front_glass;  ///< shade and edges of panes that are not flat to the eye
  Mesh plan_floor;
  std::vector<PieceMeshes> pieces;      ///< back to front
  std::vector<std::size_t> from_above;  ///< their numbers, the lowest first
};

/// Builds again only what differs from what the cache was built for. True when something did.
bool update(SceneCache& cache, const Scene& scene);

/// The front view on the screen: top left corner of the outer glass (left pane, rim) and pixels a cm.
struct FrontView {
  ImVec2 corner;
  float px_per_cm = 1;
};
/// The view from above: top left corner of the outer glass (left pane, back pane) and pixels a cm. Front glass is at the bottom.
struct PlanView {
  ImVec2 corner;
  float px_per_cm = 1;
};

/// Outer size of the glass in cm as the views draw it.
Vec front_size_cm(const Scene& scene);
Vec plan_size_cm(const Scene& scene);

/// From the plan's axes (x from the left inside glass, height over the inside bottom, z from the front inside glass) to the
/// screen.
ImVec2 front_point(const FrontView& view, const Scene& scene, double x_cm, double height_cm);
ImVec2 plan_point(const PlanView& view, const Scene& scene, double x_cm, double z_cm);
/// And back: Vec{x_cm, height_cm}, Vec{x_cm, z_cm}.
Vec front_place(const FrontView& view, const Scene& scene, ImVec2 at);
Vec plan_place(const PlanView& view, const Scene& scene, ImVec2 at);

/// Height of the substrate's surface over the inside bottom at x from the left and z from the front, cm.
double ground_cm(const Scene& scene, double x_cm, double z_cm);

/// Height of what is seen of it from the front at x, cm: the higher of its edges at the front and at the back pane.
double crest_cm(const Scene& scene, double x_cm);

/// What a piece covers, cm: in the front view from left bottom to right top, from above from left front to right back.
struct Extent {
  float x0 = 0, y0 = 0, x1 = 0, y1 = 0;
};
Extent front_extent(const Scene& scene, const Piece& piece);
Extent plan_extent(const Scene& scene, const Piece& piece);

/// The front view in three calls, so that fish go between the first and the second and the crowding field between the second and
/// the third: back pane, water, light, bank, gear, pieces, sand; then roots; then pads, outlet and stream, waterline, glass, lid.
void draw_front_back(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time = TimeOfDay::day);
void draw_front_roots(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time = TimeOfDay::day);
void draw_front_glass(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time = TimeOfDay::day);

/// Lamp above and stand below: drawn first, outside the glass.
void draw_front_stand(ImDrawList* list, const SceneCache& cache, const FrontView& view, TimeOfDay time = TimeOfDay::day);

/// Depth scale at the left of the glass: ticks and figures of cm below the waterline (or inches), with the current font.
void draw_depth_scale(ImDrawList* list, const SceneCache& cache, const FrontView& view, bool inches, float font_px);

/// The whole view from above: floor with contours every 2 cm, pieces, floating leaves, glass.
void draw_plan_view(ImDrawList* list, const SceneCache& cache, const PlanView& view);

/// Colour of the water at a depth, 0 at the surface to 1 at the bottom, for ghosts and fading.
ImU32 water_colour(const Palette& colours, TimeOfDay time, float depth_share);

/// A piece of a usual size alone, from the front, for a list.
struct PiecePicture {
  std::vector<Mesh> layers;  ///< back to front
  Extent box;                ///< cm
};
PiecePicture piece_picture(const PieceKind& kind, Theme theme);
/// Its lower left corner at `at`.
void draw_piece_picture(ImDrawList* list, const PiecePicture& picture, ImVec2 at, float px_per_cm);

/// Outline round a piece for selection and hover (front and plan), in pixels.
void outline_piece_front(ImDrawList* list, const Scene& scene, const FrontView& view, const Piece& piece, ImU32 colour,
                         float thickness);
void outline_piece_plan(ImDrawList* list, const Scene& scene, const PlanView& view, const Piece& piece, ImU32 colour,
                        float thickness);

}  // namespace shoalwright
