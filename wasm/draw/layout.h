// SPDX-License-Identifier: MIT
// Plain boxes in CSS pixels on the screen, and cursors that deal them out along a row or down a column.
#pragma once

#include <algorithm>

#include "imgui.h"

namespace shoalwright {

struct Box {
  float x = 0, y = 0, w = 0, h = 0;

  constexpr float right() const { return x + w; }
  constexpr float bottom() const { return y + h; }
  ImVec2 min() const { return {x, y}; }
  ImVec2 max() const { return {x + w, y + h}; }
  ImVec2 centre() const { return {x + w / 2, y + h / 2}; }
  constexpr bool has(float px, float py) const { return px >= x && py >= y && px < x + w && py < y + h; }
  /// Smaller by `by` on every side (larger if negative); never of negative size.
  constexpr Box inset(float by) const { return {x + by, y + by, std::max(0.0f, w - 2 * by), std::max(0.0f, h - 2 * by)}; }
  constexpr Box inset(float across, float down) const {
    return {x + across, y + down, std::max(0.0f, w - 2 * across), std::max(0.0f, h - 2 * down)};
  }
  constexpr Box moved(float dx, float dy) const { return {x + dx, y + dy, w, h}; }

  /// Cut a strip off one side; what is left stays in this box.
  constexpr Box cut_top(float height) {
    const Box strip{x, y, w, height};
    y += height;
    h = std::max(0.0f, h - height);
    return strip;
  }
  constexpr Box cut_bottom(float height) {
    h = std::max(0.0f, h - height);
    return {x, y + h, w, height};
  }
  constexpr Box cut_left(float width) {
    const Box strip{x, y, width, h};
    x += width;
    w = std::max(0.0f, w - width);
    return strip;
  }
  constexpr Box cut_right(float width) {
    w = std::max(0.0f, w - width);
    return {x + w, y, width, h};
  }
  bool operator==(const Box&) const = default;
};

/// From left to right, each piece centred on the height of the row.
struct Row {
  Box box;
  float gap = 8;
  float at = 0;        ///< used from the left
  float at_right = 0;  ///< used from the right

  Box take(float width, float height) {
    const Box piece{box.x + at, box.y + (box.h - height) / 2, width, height};
    at += width + gap;
    return piece;
  }
  Box take_right(float width, float height) {
    at_right += width;
    const Box piece{box.right() - at_right, box.y + (box.h - height) / 2, width, height};
    at_right += gap;
    return piece;
  }
  /// What lies between the pieces taken so far.
  Box rest(float height) const {
    const float width = std::max(0.0f, box.w - at - at_right);
    return {box.x + at, box.y + (box.h - height) / 2, width, height};
  }
};

/// From top to bottom, each piece as wide as the column.
struct Stack {
  Box box;
  float at = 0;

  Box take(float height, float gap = 0) {
    const Box piece{box.x, box.y + at, box.w, height};
    at += height + gap;
    return piece;
  }
  void skip(float height) { at += height; }
  float y() const { return box.y + at; }
};

/// Pieces of given widths in rows as wide as `width`, the next row beginning when one does not fit (chips, remedy buttons).
struct Flow {
  float x = 0, y = 0, width = 0, row_height = 26, gap = 6, row_gap = 6;
  float at = 0, down = 0;

  Box take(float piece_width) {
    if (at > 0 && at + piece_width > width + 0.01f) {
      at = 0;
      down += row_height + row_gap;
    }
    const Box piece{x + at, y + down, piece_width, row_height};
    at += piece_width + gap;
    return piece;
  }
  /// Height of all rows so far, 0 for none.
  float height() const { return at > 0 || down > 0 ? down + row_height : 0; }
};

}  // namespace shoalwright
