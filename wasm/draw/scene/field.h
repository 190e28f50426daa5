// SPDX-License-Identifier: MIT
#pragma once

#include <array>
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

/// Where a contour may carry its words, in the field's axes.
struct ContourLabel {
  int step = 0;
  Vec at;
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
  std::vector<ContourLabel> labels;
  std::vector<Vec> hatch;  ///< middles of strokes
};
FieldCache ready(Field field, const FieldLook& look);

/// From cm to pixels: where the axes start and how long a cm of each is; rows may run up or down.
struct FieldPlace {
  ImVec2 origin;
  float x_px = 1, y_px = 1;
  ImVec2 at(Vec cm) const { return {origin.x + cm.x * x_px, origin.y + cm.y * y_px}; }
};

/// Shading, contours and hatching in one colour, within `clip`.
void draw_field(ImDrawList* list, const FieldCache& cache, const FieldPlace& place, const Box& clip, ImU32 colour);

}  // namespace shoalwright
