// SPDX-License-Identifier: MIT
// The small signs that carry a meaning by their shape: grades, plate numbers, the house mark for spare, levels.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "draw/layout.h"
#include "draw/text.h"
#include "notebook/finding.h"

namespace shoalwright {

/// "Fix", "Strain", "Watch", "Note": how a severity is called on the screen.
const char* grade_word(Severity severity);
/// Fix and Strain: drawn in the call colour.
bool loud(Severity severity);

/// The diamond of a severity: filled with !, filled, right half filled, open. `size` is its width and height.
void draw_grade(const Pen& pen, Severity severity, ImVec2 centre, float size = 14);

/// Marks of the water bar: today (filled) and after mixing (open). `half` is half the width.
void draw_filled_diamond(const Pen& pen, ImVec2 centre, float half, ImU32 colour);
void draw_open_diamond(const Pen& pen, ImVec2 centre, float half, ImU32 fill, ImU32 line, float stroke = 1.3f);

/// The disc with the number of a kind of fish, counted from 1.
void draw_plate(const Pen& pen, int number, ImVec2 centre, float radius = 8);
/// Several in a row from the left middle; returns the width.
float draw_plates(const Pen& pen, std::span<const int> numbers, ImVec2 left_middle, float radius = 8, float gap = 4);
/// The square with the letter of a piece.
void draw_letter(const Pen& pen, std::string_view letter, ImVec2 centre, float size = 16);
/// A place at least `apart` to the right of all that are taken, or `at` itself where it is free; it is taken then.
ImVec2 free_place(std::vector<ImVec2>& taken, ImVec2 at, float apart);
/// The letters of pieces: 0 "a" ... 25 "z", 26 "aa".
std::string piece_letter(int index);

/// The dimension arrow: a line with two cross strokes, and heads when it is longer than 14. Level or upright.
void draw_dimension(const Pen& pen, ImVec2 a, ImVec2 b, ImU32 colour, float stroke = 1.3f);

/// Slanted strokes that fill a box, for what is over a limit.
void draw_hatching(const Pen& pen, const Box& box, ImU32 colour, float gap = 4, float stroke = 1.4f);

/// The house mark at 14 px on a shelf row.
enum class Fit { spare, just, over };
void draw_fit(const Pen& pen, Fit fit, ImVec2 top_left);

/// The level ladder, 14 by 19: surface, upper, middle, floor.
struct Levels {
  bool surface = false, upper = false, middle = false, floor = false;
};
void draw_levels(const Pen& pen, const Levels& levels, ImVec2 top_left);

/// The emblem: a waterline crossed by an upright dimension arrow.
void draw_emblem(const Pen& pen, ImVec2 top_left, float size = 26);

/// A label on a raised ground, for use over the drawn tank. `at` is its top left, top middle or top right. Returns its box.
Box draw_tip(const Pen& pen, ImVec2 at, std::string_view text, ImU32 border, ImU32 ink, Align align = Align::left);

}  // namespace shoalwright
