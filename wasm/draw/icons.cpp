// SPDX-License-Identifier: MIT
#include "draw/icons.h"

#include <cmath>

namespace shoalwright {
namespace {

/// Strokes on a grid of 18: M x y begins, L x y goes on, A x y r from to is an arc (degrees, clockwise from the right), Z closes.
const char* strokes_of(Icon icon) {
  switch (icon) {
    case Icon::undo: return "M4 7 L11 7 A11 11 4 -90 90 L7 15 M7 4 L4 7 L7 10";
    case Icon::redo: return "M14 7 L7 7 A7 11 4 270 90 L11 15 M11 4 L14 7 L11 10";
    case Icon::search: return "A8 8 5 0 360 M12 12 L16 16";
    case Icon::clear:
    case Icon::close: return "M4 4 L14 14 M14 4 L4 14";
    case Icon::sun:
      return "A9 9 3.4 0 360 M9 1.5 L9 3.5 M9 14.5 L9 16.5 M1.5 9 L3.5 9 M14.5 9 L16.5 9 M3.7 3.7 L5.1 5.1 M12.9 12.9 L14.3 14.3 "
             "M3.7 14.3 L5.1 12.9 M12.9 5.1 L14.3 3.7";
    case Icon::moon: return "A7.54 9 6 24.6 269.6 A10.25 7.25 5.06 237.1 57.1 Z";
    case Icon::chevron: return "M5 7 L9 11 L13 7";
    case Icon::share: return "M9 11 L9 3 M6 6 L9 3 L12 6 M4 9 L4 15 L14 15 L14 9";
    case Icon::plus: return "M9 3 L9 15 M3 9 L15 9";
    case Icon::minus: return "M3 9 L15 9";
    case Icon::folder: return "M2.5 14.5 L2.5 4 L7 4 L9 6 L15.5 6 L15.5 14.5 Z";
    case Icon::save: return "M9 3 L9 11 M6 8 L9 11 L12 8 M4 11 L4 15 L14 15 L14 11";
    case Icon::sheet: return "M4.5 2.5 L10.5 2.5 L13.5 5.5 L13.5 15.5 L4.5 15.5 Z M10.5 2.5 L10.5 5.5 L13.5 5.5";
    case Icon::plate: return "A9 9 6.5 0 360 M7.4 7 L9.4 5.6 L9.4 12.4";
    case Icon::print: return "M5 7 L5 3 L13 3 L13 7 M5 12 L3 12 L3 7 L15 7 L15 12 L13 12 M5 10 L13 10 L13 15 L5 15 Z";
    case Icon::grip: return "M6 4 L6 5 M6 8.5 L6 9.5 M6 13 L6 14 M11 4 L11 5 M11 8.5 L11 9.5 M11 13 L11 14";
    case Icon::tick: return "M4 9.5 L7.5 13 L14 5.5";
  }
  return "";
}

/// The next number of the strokes, whole or with decimals. Our own reading: the library's asks the page for each.
float next_number(const char*& s) {
  while (*s == ' ') ++s;
  const float sign = *s == '-' ? -1.0f : 1.0f;
  if (*s == '-') ++s;
  int figures = 0, of = 1;
  for (bool behind_point = false; (*s >= '0' && *s <= '9') || *s == '.'; ++s) {
    if (*s == '.') {
      behind_point = true;
      continue;
    }
    figures = 10 * figures + (*s - '0');
    if (behind_point) of *= 10;
  }
  return sign * static_cast<float>(figures) / static_cast<float>(of);
}

}  // namespace

void draw_icon(const Pen& pen, Icon icon, ImVec2 at, float size, ImU32 colour) {
  const float k = size / 18, thickness = 1.5f * k;
  at = snapped(pen, at);
  const char* s = strokes_of(icon);
  const auto number = [&] { return next_number(s); };
  const auto finish = [&](bool closed) {
    ImVector<ImVec2>& path = pen.dl->_Path;
    if (path.Size == 0) return;
    const ImVec2 ends[] = {path.front(), path.back()};
    pen.dl->PathStroke(colour, closed ? ImDrawFlags_Closed : 0, thickness);
    // Round ends, which the line drawer does not have.
    if (!closed)
      for (const ImVec2& e : ends) pen.dl->AddCircleFilled(e, thickness / 2, colour, 8);
  };
  while (*s) {
    const char what = *s++;
    if (what == 'M') {
      finish(false);
      const float x = number(), y = number();
      pen.dl->PathLineTo({at.x + x * k, at.y + y * k});
    } else if (what == 'L') {
      const float x = number(), y = number();
      pen.dl->PathLineTo({at.x + x * k, at.y + y * k});
    } else if (what == 'A') {
      const float x = number(), y = number(), r = number(), from = number(), to = number();
      const float turn = 3.14159265f / 180;
      pen.dl->PathArcTo({at.x + x * k, at.y + y * k}, r * k, from * turn, to * turn,
                        8 + static_cast<int>(std::fabs(to - from) / 15));
      if (std::fabs(to - from) >= 360) {
        pen.dl->_Path.pop_back();
        finish(true);
      }
    } else if (what == 'Z') {
      finish(true);
    }
  }
  finish(false);
}

}  // namespace shoalwright
