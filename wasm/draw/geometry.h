// SPDX-License-Identifier: MIT
#pragma once

#include <cmath>
#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "imgui.h"

namespace shoalwright {

/// A point or direction of the drawing, in whatever unit the caller works in.
struct Vec {
  float x = 0, y = 0;
  bool operator==(const Vec&) const = default;
};

constexpr Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y}; }
constexpr Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y}; }
constexpr Vec operator*(Vec a, float k) { return {a.x * k, a.y * k}; }
constexpr Vec lerp(Vec a, Vec b, float t) { return {a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}; }
constexpr float lerp(float a, float b, float t) { return a + (b - a) * t; }
inline float length(Vec a) { return std::sqrt(a.x * a.x + a.y * a.y); }
/// The direction of length 1, or the zero vector when there is none.
Vec unit(Vec a);

/// Even numbers from a seed, the same on every machine: next() is 0 to 1 (1 never reached).
struct Dice {
  std::uint32_t state = 0;
  float next();
  float between(float low, float high) { return low + (high - low) * next(); }
};
/// A seed from numbers that stay as they are while a thing is moved about.
std::uint32_t seed_of(std::span<const double> numbers, const char* word);

/// Open uniform Catmull-Rom curve (tension one half) through the points, `steps` chords a span, the last point included.
std::vector<Vec> smooth(std::span<const Vec> points, int steps);
/// The same curve cut into `count` points at equal distances along it (count 2 or more).
std::vector<Vec> smooth_even(std::span<const Vec> points, int count);
/// `count` points at equal distances along straight pieces.
std::vector<Vec> even(std::span<const Vec> points, int count);
/// y of a polyline at x; x must rise along it; held at the ends.
float height_at(std::span<const Vec> line, float x);

/// Whether a point lies inside a closed polygon (even-odd).
bool inside(std::span<const Vec> polygon, Vec at);
/// Where the horizontal y = level cuts a closed polygon: x values in rising order, in pairs.
std::vector<float> cuts_at_y(std::span<const Vec> polygon, float level);
/// Corners of the triangles that fill a polygon without crossings, as positions in it, three a triangle.
std::vector<std::uint32_t> triangulate(std::span<const Vec> polygon);
/// The polygon moved outwards by a distance (inwards when negative), corner by corner; sharp corners are held at twice that.
std::vector<Vec> moved_out(std::span<const Vec> polygon, float distance);
/// The convex hull, counter-clockwise in axes with y up.
std::vector<Vec> convex_hull(std::vector<Vec> points);

/// One contour line of a field. `closed` when its last point meets its first.
struct Contour {
  std::vector<Vec> points;
  bool closed = false;
};
/// Contours of `columns` x `rows` nodes (row by row) by marching squares, joined into lines in node units (x column, y row).
/// Cells with a node that is not a number are left out. A saddle is cut by the mean of its four nodes.
std::vector<Contour> contours(std::span<const float> nodes, int columns, int rows, float level);

/// Walks a polyline (pixels) in dashes: `pattern` is on, off, on, off, ... in pixels; empty means unbroken. `phase` shifts the
/// start.
void dashed_line(ImDrawList* list, std::span<const ImVec2> points, std::span<const float> pattern, ImU32 colour, float thickness,
                 float phase = 0);
/// A dashed rectangle and a dashed ellipse, for slots and shoals.
void dashed_rect(ImDrawList* list, ImVec2 from, ImVec2 to, std::span<const float> pattern, ImU32 colour, float thickness);
void dashed_ellipse(ImDrawList* list, ImVec2 centre, ImVec2 radius, std::span<const float> pattern, ImU32 colour,
                    float thickness);

/// Slanted hatching between two curves, for a region with curved sides: short strokes in rows `gap` pixels apart from top to
/// bottom, from left(y) to right(y). Rows where right is not beyond left stay empty.
void hatch_between(ImDrawList* list, float top, float bottom, float gap, const std::function<float(float)>& left,
                   const std::function<float(float)>& right, ImU32 colour, float thickness);

/// Dash patterns of the look (tokens.json, dash). key_dash counts groups from 1 like key_colour.
std::span<const float> dash_as_it_is();
std::span<const float> dash_edge_drop();
std::span<const float> dash_aim();
std::span<const float> dash_ghost_outline();
std::span<const float> key_dash(int key);

}  // namespace shoalwright
