// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "draw/geometry.h"
#include "draw/palette.h"

namespace shoalwright {

/// A corner of a drawing made ahead of time. x, y in the drawing's own unit, y up. out is the direction of the outline there: on
/// the screen the corner is pushed along it by that many pixels, which is how edges are smooth at every size.
struct MeshVertex {
  float x, y, out_x, out_y;
  ImU32 colour;
};

/// Triangles in one colour a corner. Made when something changes, emitted in every frame.
struct Mesh {
  std::vector<MeshVertex> vertices;
  std::vector<std::uint32_t> indices;
  bool empty() const { return indices.empty(); }
};

/// One line of points across a sheet, with a colour each.
struct Rail {
  std::vector<Vec> points;
  std::vector<ImU32> colours;
};

/// A rail in one colour.
Rail rail(std::vector<Vec> points, ImU32 colour);

/// Fills between neighbouring rails (2 or more, all with the same number of points, at least 2); the rim is smoothed when asked.
void add_sheet(Mesh& mesh, std::span<const Rail> rails, bool smooth_rim = true);

/// The same, but only the last rail's edge is smoothed: for fins and leaves, whose root lies under something else.
void add_sheet_with_free_edge(Mesh& mesh, std::span<const Rail> rails);

/// Fills a polygon that its centre sees whole, with a colour at the rim and one in the middle.
void add_fan(Mesh& mesh, std::span<const Vec> rim, Vec centre, ImU32 rim_colour, ImU32 centre_colour, bool smooth_rim = true);

/// An ellipse; `corners` 6 or more.
void add_ellipse(Mesh& mesh, Vec centre, Vec radius, int corners, ImU32 colour, bool smooth_rim = true);

/// A stroke that tapers from one width to another (the mesh's unit); thin ends stay visible as a line of a pixel.
void add_stroke(Mesh& mesh, std::span<const Vec> points, float width_from, float width_to, ImU32 colour);

/// Single corners and triangles, for what the helpers above do not cover.
std::uint32_t add_vertex(Mesh& mesh, Vec at, ImU32 colour, Vec out = {});
void add_triangle(Mesh& mesh, std::uint32_t a, std::uint32_t b, std::uint32_t c);

/// Where a mesh stands on the screen: its origin, pixels a unit, tilt (radians, counter-clockwise as seen), mirrored left to
/// right.
struct Placement {
  ImVec2 origin;
  float scale = 1;
  float tilt = 0;
  float across = 1;  ///< widths so many times as wide; below 0 mirrored
};

/// How its colours come out: mixed `mix_amount` (0 to 1) of the way to `mix_to`, and their alpha times `alpha`.
struct Tint {
  ImU32 mix_to = 0;
  float mix_amount = 0;
  float alpha = 1;
};

/// Puts the mesh into the draw list with one reservation.
void emit(ImDrawList* list, const Mesh& mesh, const Placement& placement, const Tint& tint = {});

/// The same for a mesh whose red channel says how much ink (255) or paper (0) a corner carries.
void emit_tones(ImDrawList* list, const Mesh& mesh, const Placement& placement, ImU32 paper, ImU32 ink);

}  // namespace shoalwright
