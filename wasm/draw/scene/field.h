// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "draw/geometry.h"
#include "draw/layout.h"

namespace shoalwright {

/// Values on a grid of nodes, row by row; a node without one is not a number.
struct Field {
  int columns = 0, rows = 0;
  float x0_cm = 0, x1_cm = 0;  ///< of the first and the last column
  float y0_cm = 0, y1_cm = 0;  ///< of the first and the last row
  std::vector<float> nodes;
};

/// Four values that get a contour, rising, each line heavier than the one before.
struct FieldLook {
  std::array<float, 4> steps{};
  bool falls = false;    ///< shaded where it is low instead of where it is high
  bool hatched = false;  ///< over the last step
  bool operator==(const FieldLook&) const = default;
};

/// A field made ready. Owned by the caller.
struct FieldCache {
  Field field;
  FieldLook look;
  struct Line {
    int step = 0;
    std::vector<Vec> points;
  };
  std::vector<Line> lines;
  std::array<int, 4> longest{-1, -1, -1, -1};  ///< line of each step that may carry words; -1: none is long enough
  std::vector<Vec> hatch;                      ///< middles of strokes
  /// Shading where there is any: corners (their `alpha` 0 to 1) and three of them for each triangle.
  struct Shade {
    Vec at;
    float alpha = 0;
  };
  std::vector<Shade> shades;
  std::vector<unsigned> triangles;
};
FieldCache ready(Field field, const FieldLook& look);

/// From cm to pixels: where the axes start and how long a cm of each is; rows may run up or down.
struct FieldPlace {
  ImVec2 origin;
  float x_px = 1, y_px = 1;
  ImVec2 at(Vec cm) const { return {origin.x + cm.x * x_px, origin.y + cm.y * y_px}; }
};

/// The spot of a line where its words hide none of what stands at `taken` (pixels) and none of each other: the one nearest to the
/// middle of the field. They are `half_px` to each side; the spot is taken then. Empty where there is none.
std::optional<ImVec2> place_of_words(const FieldCache& cache, int step, const FieldPlace& place, ImVec2 half_px,
                                     std::vector<ImVec2>& taken);

/// Shading, contours and hatching in one colour, within `clip`.
void draw_field(ImDrawList* list, const FieldCache& cache, const FieldPlace& place, const Box& clip, ImU32 colour);

}  // namespace shoalwright
