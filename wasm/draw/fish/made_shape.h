// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "draw/fish/shapes.h"

namespace shoalwright {

inline Vec vec_of(Point p) { return {static_cast<float>(p.x) / 1000, static_cast<float>(p.y) / 1000}; }

template <class Points>
std::vector<Vec> line_of(const Points& points) {
  std::vector<Vec> out;
  for (const Point p : points) out.push_back(vec_of(p));
  return out;
}

template <class Lines>
std::vector<std::vector<Vec>> lines_of(const Lines& lines) {
  std::vector<std::vector<Vec>> out;
  for (const auto& one : lines) out.push_back(line_of(one));
  return out;
}

/// The working shape of a table. Compiled into whoever uses it: the function of later forms is to be large enough to stand alone,
/// or the optimiser folds it, and all its tables, into the first file.
[[gnu::always_inline]] inline FishShape made(const ShapeData& table) {
  FishShape out;
  out.top = line_of(table.top);
  out.bottom = line_of(table.bottom);
  for (const FinData& fin : table.fins) {
    const Vec base = vec_of(fin.base);
    out.fins.push_back(
        {fin.at, base.x, base.y, line_of(fin.edge), fin.pectoral, static_cast<float>(fin.base_y) / 1000, fin.grows});
  }
  out.tail = line_of(table.tail);
  out.tail_bend = table.tail_bend;
  out.eye = vec_of(table.eye);
  out.eye_radius = table.eye_radius;
  out.barbels = lines_of(table.barbels);
  out.threads = lines_of(table.threads);
  out.beaks = lines_of(table.beaks);
  out.beak_width = table.beak_width;
  out.finlets = table.finlets;
  out.thorns = table.thorns;
  out.fin_accent = table.fin_accent;
  out.fin_alpha = table.fin_alpha;
  out.gill_x = table.gill_x;
  out.bands = table.bands;
  out.plates = table.plates;
  out.bristles = table.bristles;
  out.scales = table.scales;
  out.dark_fins = table.dark_fins;
  out.accent_marks = table.accent_marks;
  return out;
}

}  // namespace shoalwright
