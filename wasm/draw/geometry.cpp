// SPDX-License-Identifier: MIT
#include "draw/geometry.h"

#include <algorithm>
#include <cstring>
#include <map>

namespace shoalwright {

Vec unit(Vec a) {
  const float size = length(a);
  return size > 1e-9f ? a * (1 / size) : Vec{};
}

float Dice::next() {
  // One round of a 32-bit mixer over a counter: every bit of the counter reaches every bit of the answer.
  state += 0x9E3779B9u;
  std::uint32_t v = state;
  v = (v ^ (v >> 16)) * 0x21F0AAADu;
  v = (v ^ (v >> 15)) * 0x735A2D97u;
  v ^= v >> 15;
  return static_cast<float>(v >> 8) * (1.0f / 16777216.0f);
}

std::uint32_t seed_of(std::span<const double> numbers, const char* word) {
  std::uint32_t seed = 2166136261u;
  const auto take = [&seed](std::uint32_t byte) { seed = (seed ^ byte) * 16777619u; };
  for (const char* c = word; *c != 0; ++c) take(static_cast<unsigned char>(*c));
  for (const double number : numbers) {
    // A tenth of a millimetre is finer than any piece is measured, and rounding keeps both compilers on the same seed.
    const auto value =
        static_cast<std::uint32_t>(static_cast<std::int64_t>(std::floor(std::clamp(number, -1e6, 1e6) * 100 + 0.5)));
    for (int shift = 0; shift < 32; shift += 8) take((value >> shift) & 255u);
  }
  return seed;
}

std::vector<Vec> smooth(std::span<const Vec> points, int steps) {
  std::vector<Vec> out;
  if (points.size() < 2) return {points.begin(), points.end()};
  out.reserve((points.size() - 1) * static_cast<size_t>(steps) + 1);
  for (size_t i = 0; i + 1 < points.size(); ++i) {
    const Vec a = points[i > 0 ? i - 1 : 0], b = points[i], c = points[i + 1], d = points[std::min(i + 2, points.size() - 1)];
    for (int k = 0; k < steps; ++k) {
      const float t = static_cast<float>(k) / static_cast<float>(steps), t2 = t * t, t3 = t2 * t;
      out.push_back((b * 2 + (c - a) * t + (a * 2 - b * 5 + c * 4 - d) * t2 + (b * 3 - a - c * 3 + d) * t3) * 0.5f);
    }
  }
  out.push_back(points.back());
  return out;
}

std::vector<Vec> even(std::span<const Vec> points, int count) {
  std::vector<Vec> out;
  if (points.empty() || count < 2) return out;
  std::vector<float> run(points.size(), 0.0f);
  for (size_t i = 1; i < points.size(); ++i) run[i] = run[i - 1] + length(points[i] - points[i - 1]);
  size_t k = 0;
  for (int i = 0; i < count; ++i) {
    const float want = run.back() * static_cast<float>(i) / static_cast<float>(count - 1);
    while (k + 2 < points.size() && run[k + 1] < want) ++k;
    if (points.size() == 1) {
      out.push_back(points[0]);
      continue;
    }
    const float span = run[k + 1] - run[k];
    out.push_back(lerp(points[k], points[k + 1], span > 1e-9f ? std::clamp((want - run[k]) / span, 0.0f, 1.0f) : 0.0f));
  }
  return out;
}

std::vector<Vec> smooth_even(std::span<const Vec> points, int count) {
  const std::vector<Vec> fine = smooth(points, 8);
  return even(fine, count);
}

float height_at(std::span<const Vec> line, float x) {
  if (line.empty()) return 0;
  if (x <= line.front().x) return line.front().y;
  const auto after = std::lower_bound(line.begin(), line.end(), x, [](Vec p, float at) { return p.x < at; });
  if (after == line.end()) return line.back().y;
  const Vec b = *after, a = *(after - 1);
  return b.x - a.x > 1e-9f ? lerp(a.y, b.y, (x - a.x) / (b.x - a.x)) : b.y;
}

bool inside(std::span<const Vec> polygon, Vec at) {
  bool in = false;
  for (size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const Vec a = polygon[i], b = polygon[j];
    if ((a.y > at.y) != (b.y > at.y) && at.x < (b.x - a.x) * (at.y - a.y) / (b.y - a.y) + a.x) in = !in;
  }
  return in;
}

std::vector<float> cuts_at_y(std::span<const Vec> polygon, float level) {
  std::vector<float> out;
  for (size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const Vec a = polygon[i], b = polygon[j];
    if ((a.y > level) != (b.y > level)) out.push_back((b.x - a.x) * (level - a.y) / (b.y - a.y) + a.x);
  }
  std::sort(out.begin(), out.end());
  return out;
}

namespace {

float twice_area(std::span<const Vec> polygon) {
  float area = 0;
  for (size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++)
    area += polygon[j].x * polygon[i].y - polygon[i].x * polygon[j].y;
  return area;
}

float turn(Vec o, Vec a, Vec b) { return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x); }

}  // namespace

std::vector<std::uint32_t> triangulate(std::span<const Vec> polygon) {
  std::vector<std::uint32_t> left, out;
  if (polygon.size() < 3) return out;
  for (std::uint32_t i = 0; i < polygon.size(); ++i) left.push_back(i);
  if (twice_area(polygon) < 0) std::reverse(left.begin(), left.end());
  // Cuts off ears; when rounding leaves none, the flattest corner goes, so that it always ends.
  while (left.size() > 3) {
    const size_t count = left.size();
    size_t ear = count;
    for (size_t i = 0; i < count && ear == count; ++i) {
      const Vec a = polygon[left[(i + count - 1) % count]], b = polygon[left[i]], c = polygon[left[(i + 1) % count]];
      if (!(turn(a, b, c) > 0)) continue;
      bool empty = true;
      for (size_t k = 0; k < count && empty; ++k) {
        const Vec p = polygon[left[k]];
        if (p == a || p == b || p == c) continue;
        empty = !(turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0);
      }
      if (empty) ear = i;
    }
    if (ear == count) ear = 0;
    out.insert(out.end(), {left[(ear + count - 1) % count], left[ear], left[(ear + 1) % count]});
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(ear));
  }
  out.insert(out.end(), left.begin(), left.end());
  return out;
}

std::vector<Vec> moved_out(std::span<const Vec> polygon, float distance) {
  std::vector<Vec> out;
  const size_t count = polygon.size();
  if (count < 3) return {polygon.begin(), polygon.end()};
  const float side = twice_area(polygon) >= 0 ? distance : -distance;
  for (size_t i = 0; i < count; ++i) {
    const Vec before = unit(polygon[i] - polygon[(i + count - 1) % count]), after = unit(polygon[(i + 1) % count] - polygon[i]);
    const Vec sum = Vec{before.y + after.y, -before.x - after.x} * 0.5f;
    const float size = std::max(length(sum), 0.5f);
    out.push_back(polygon[i] + sum * (side / (size * size)));
  }
  return out;
}

std::vector<Vec> convex_hull(std::vector<Vec> points) {
  std::sort(points.begin(), points.end(), [](Vec a, Vec b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
  if (points.size() < 3) return points;
  std::vector<Vec> hull;
  for (int pass = 0; pass < 2; ++pass) {
    const size_t start = hull.size();
    for (const Vec p : points) {
      while (hull.size() >= start + 2 && turn(hull[hull.size() - 2], hull.back(), p) <= 1e-7f) hull.pop_back();
      hull.push_back(p);
    }
    hull.pop_back();
    std::reverse(points.begin(), points.end());
  }
  return hull;
}

namespace {

// A point on an edge of the node grid is named by its edge, so that pieces of one line meet exactly.
struct EdgeCut {
  std::uint32_t edge;
  Vec at;
};

std::uint32_t edge_name(int column, int row, bool downward, int columns) {
  return static_cast<std::uint32_t>((row * columns + column) * 2 + (downward ? 1 : 0));
}

}  // namespace

std::vector<Contour> contours(std::span<const float> nodes, int columns, int rows, float level) {
  std::vector<Contour> out;
  if (columns < 2 || rows < 2 || nodes.size() < static_cast<size_t>(columns) * static_cast<size_t>(rows)) return out;
  const auto value = [&](int x, int y) {
    return nodes[static_cast<size_t>(y) * static_cast<size_t>(columns) + static_cast<size_t>(x)];
  };
  struct Piece {
    EdgeCut a, b;
    bool used = false;
  };
  std::vector<Piece> pieces;
  for (int y = 0; y + 1 < rows; ++y) {
    for (int x = 0; x + 1 < columns; ++x) {
      const float v[4] = {value(x, y), value(x + 1, y), value(x + 1, y + 1), value(x, y + 1)};
      if (!(std::isfinite(v[0]) && std::isfinite(v[1]) && std::isfinite(v[2]) && std::isfinite(v[3]))) continue;
      const Vec corner[4] = {{static_cast<float>(x), static_cast<float>(y)},
                             {static_cast<float>(x + 1), static_cast<float>(y)},
                             {static_cast<float>(x + 1), static_cast<float>(y + 1)},
                             {static_cast<float>(x), static_cast<float>(y + 1)}};
      const std::uint32_t names[4] = {edge_name(x, y, false, columns), edge_name(x + 1, y, true, columns),
                                      edge_name(x, y + 1, false, columns), edge_name(x, y, true, columns)};
      EdgeCut cut[4];
      int count = 0;
      for (int e = 0; e < 4; ++e) {
        const float from = v[e], to = v[(e + 1) % 4];
        if ((from < level) == (to < level)) continue;
        cut[count++] = {names[e], lerp(corner[e], corner[(e + 1) % 4], (level - from) / (to - from))};
      }
      if (count == 2) pieces.push_back({cut[0], cut[1]});
      if (count == 4) {
        const bool middle_below = (v[0] + v[1] + v[2] + v[3]) / 4 < level;
        const bool joined_at_corner_0 = (v[0] < level) == middle_below;
        if (joined_at_corner_0) {
          pieces.push_back({cut[0], cut[1]});
          pieces.push_back({cut[2], cut[3]});
        } else {
          pieces.push_back({cut[3], cut[0]});
          pieces.push_back({cut[1], cut[2]});
        }
      }
    }
  }
  std::multimap<std::uint32_t, size_t> by_edge;
  for (size_t i = 0; i < pieces.size(); ++i) {
    by_edge.emplace(pieces[i].a.edge, i);
    by_edge.emplace(pieces[i].b.edge, i);
  }
  const auto follow = [&](std::uint32_t edge, EdgeCut& next) {
    const auto range = by_edge.equal_range(edge);
    for (auto it = range.first; it != range.second; ++it) {
      Piece& piece = pieces[it->second];
      if (piece.used) continue;
      piece.used = true;
      next = piece.a.edge == edge ? piece.b : piece.a;
      return true;
    }
    return false;
  };
  for (Piece& piece : pieces) {
    if (piece.used) continue;
    piece.used = true;
    std::vector<Vec> ahead{piece.a.at, piece.b.at}, behind;
    EdgeCut next = piece.b;
    while (follow(next.edge, next)) ahead.push_back(next.at);
    const bool closed = next.edge == piece.a.edge && ahead.size() > 3;
    if (!closed) {
      next = piece.a;
      while (follow(next.edge, next)) behind.push_back(next.at);
    }
    std::reverse(behind.begin(), behind.end());
    behind.insert(behind.end(), ahead.begin(), ahead.end());
    out.push_back({std::move(behind), closed});
  }
  return out;
}

void dashed_line(ImDrawList* list, std::span<const ImVec2> points, std::span<const float> pattern, ImU32 colour, float thickness,
                 float phase) {
  if (points.size() < 2) return;
  float whole = 0;
  for (const float part : pattern) whole += part;
  if (pattern.size() < 2 || !(whole > 0.5f)) {
    list->AddPolyline(points.data(), static_cast<int>(points.size()), colour, 0, thickness);
    return;
  }
  size_t part = 0;
  float left = std::fmod(phase, whole);
  if (left < 0) left += whole;
  while (left >= pattern[part]) {
    left -= pattern[part];
    part = (part + 1) % pattern.size();
  }
  left = pattern[part] - left;
  bool on = part % 2 == 0;
  list->PathClear();
  if (on) list->PathLineTo(points[0]);
  for (size_t i = 0; i + 1 < points.size(); ++i) {
    const Vec a{points[i].x, points[i].y}, b{points[i + 1].x, points[i + 1].y};
    const float run = length(b - a);
    if (!(run > 1e-4f)) continue;
    float done = 0;
    while (run - done > left) {
      done += left;
      const Vec at = lerp(a, b, done / run);
      if (on) {
        list->PathLineTo({at.x, at.y});
        list->PathStroke(colour, 0, thickness);
      } else {
        list->PathLineTo({at.x, at.y});
      }
      on = !on;
      part = (part + 1) % pattern.size();
      left = std::max(pattern[part], 0.01f);
    }
    left -= run - done;
    if (on) list->PathLineTo(points[i + 1]);
  }
  if (on) {
    list->PathStroke(colour, 0, thickness);
  } else {
    list->PathClear();
  }
}

void dashed_rect(ImDrawList* list, ImVec2 from, ImVec2 to, std::span<const float> pattern, ImU32 colour, float thickness) {
  const ImVec2 corners[5] = {from, {to.x, from.y}, to, {from.x, to.y}, from};
  dashed_line(list, corners, pattern, colour, thickness);
}

void dashed_ellipse(ImDrawList* list, ImVec2 centre, ImVec2 radius, std::span<const float> pattern, ImU32 colour,
                    float thickness) {
  constexpr int corners = 56;
  ImVec2 points[corners + 1];
  for (int i = 0; i <= corners; ++i) {
    const float angle = static_cast<float>(i) * 6.2831853f / corners;
    points[i] = {centre.x + radius.x * std::cos(angle), centre.y + radius.y * std::sin(angle)};
  }
  dashed_line(list, points, pattern, colour, thickness);
}

void hatch_between(ImDrawList* list, float top, float bottom, float gap, const std::function<float(float)>& left,
                   const std::function<float(float)>& right, ImU32 colour, float thickness) {
  if (!(gap > 0.5f)) return;
  constexpr float stroke = 4;
  for (float y = top; y <= bottom; y += gap) {
    const float from = left(y), to = right(y);
    for (float x = from; x < to - 0.5f; x += stroke) {
      const float end = std::min(to, x + stroke);
      list->AddLine({x, y + stroke / 2}, {end, y + stroke / 2 - (end - x)}, colour, thickness);
    }
  }
}

std::span<const float> dash_as_it_is() {
  static constexpr float pattern[] = {3, 3};
  return pattern;
}
std::span<const float> dash_edge_drop() {
  static constexpr float pattern[] = {6, 4};
  return pattern;
}
std::span<const float> dash_aim() {
  static constexpr float pattern[] = {3, 2};
  return pattern;
}
std::span<const float> dash_ghost_outline() {
  static constexpr float pattern[] = {4, 3};
  return pattern;
}
std::span<const float> key_dash(int key) {
  static constexpr float two[] = {7, 3}, three[] = {2, 3}, four[] = {9, 3, 2, 3}, five[] = {4, 2}, six[] = {1, 3};
  switch (key < 1 ? 0 : (key - 1) % 6) {
    case 1: return two;
    case 2: return three;
    case 3: return four;
    case 4: return five;
    case 5: return six;
  }
  return {};
}

}  // namespace shoalwright
