// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "draw/palette.h"
#include "imgui.h"

namespace shoalwright {

enum class Face { regular, medium, semibold, italic };

/// Kind of lettering: face, size in whole CSS pixels (the em, as in a style sheet) and height of the line it sits in.
struct Type {
  Face face = Face::regular;
  float size = 13;
  float line = 18;
};

namespace type {
inline constexpr Type axis{Face::regular, 11, 14};
inline constexpr Type small{Face::regular, 12, 16};
inline constexpr Type body{Face::regular, 13, 18};
inline constexpr Type lead{Face::regular, 15, 20};
inline constexpr Type head{Face::semibold, 18, 24};
inline constexpr Type title{Face::semibold, 24, 30};
}  // namespace type

constexpr Type regular(Type t) { return {Face::regular, t.size, t.line}; }
constexpr Type medium(Type t) { return {Face::medium, t.size, t.line}; }
constexpr Type semibold(Type t) { return {Face::semibold, t.size, t.line}; }
constexpr Type italic(Type t) { return {Face::italic, t.size, t.line}; }

enum class Align { left, centre, right };

/// The four loaded faces, in the order of `Face`, and their measures, read from the fonts themselves.
struct Faces {
  ImFont* font[4] = {};
  float box_per_em[4] = {};     ///< ascender to descender
  float ascent_per_em[4] = {};  ///< ascender to base line
};

/// Loads the four faces (OpenType or TrueType bytes, in the order of `Face`) into the atlas. The bytes must outlive the atlas.
/// What a face lacks is set in the regular one. False, and nothing loaded, when one of them is no font.
bool load_faces(ImFontAtlas& atlas, const std::string_view (&bytes)[4], Faces& faces);

/// What everything is drawn with: where to, in which colours, which letters, how fine.
struct Pen {
  ImDrawList* dl = nullptr;
  const Palette* palette = nullptr;
  const Faces* faces = nullptr;
  float device_scale = 1;  ///< device pixels in one CSS pixel
};

/// To the nearest whole device pixel.
float snapped(const Pen& pen, float v);
ImVec2 snapped(const Pen& pen, ImVec2 p);
/// To the middle of a device pixel, where a line one device pixel wide is sharp.
float snapped_to_middle(const Pen& pen, float v);

/// From ascender to descender (line_px of a text field).
float box_height(const Pen& pen, Type t);

/// Width in CSS pixels of one line.
float text_width(const Pen& pen, Type t, std::string_view text);

/// One line in its line box: `at` is the top left, top middle or top right of the box, by `align`. Returns its width.
float draw_text(const Pen& pen, Type t, ImVec2 at, ImU32 colour, std::string_view text, Align align = Align::left);

/// The same with `at` on the base line.
float draw_text_on(const Pen& pen, Type t, ImVec2 at, ImU32 colour, std::string_view text, Align align = Align::left);

/// The text, or as much of its beginning as fits into `width` with "…" after it.
std::string elided(const Pen& pen, Type t, std::string_view text, float width);

/// The text cut into lines no wider than `width`, at spaces and at line feeds; a word wider than that is cut inside.
std::vector<std::string_view> wrapped(const Pen& pen, Type t, std::string_view text, float width);

/// Wrapped text from its top left; at most `most_lines`, the last one then ends with "…". Returns the height, 0 for no text.
float draw_wrapped(const Pen& pen, Type t, ImVec2 at, float width, ImU32 colour, std::string_view text, int most_lines = 1000);
float wrapped_height(const Pen& pen, Type t, std::string_view text, float width, int most_lines = 1000);

}  // namespace shoalwright
